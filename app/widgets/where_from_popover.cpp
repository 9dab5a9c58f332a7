#include "app/widgets/where_from_popover.h"

#include "app/widgets/theme.h"

#include <QAbstractButton>
#include <QContextMenuEvent>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QPainter>
#include <QScreen>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kWidth = 380;
constexpr int kMargin = 16;
constexpr int kTallest = 560;

class Asker : public QObject
{
public:
    Asker(QWidget* figure, ExplanationMaker make)
        : QObject(figure), m_figure(figure), m_make(std::move(make))
    {
        setObjectName(QStringLiteral("whereFrom"));
        figure->installEventFilter(this);
        if (figure->focusPolicy() == Qt::NoFocus)
            figure->setFocusPolicy(Qt::TabFocus);
        if (!qobject_cast<QAbstractButton*>(figure))
            figure->setCursor(Qt::WhatsThisCursor);
        m_describes = figure->accessibleDescription().isEmpty();
        describe();
    }

    void setMaker(ExplanationMaker make) { m_make = std::move(make); }

    bool eventFilter(QObject* watched, QEvent* event) override
    {
        switch (event->type()) {
        case QEvent::KeyPress: {
            const int key = static_cast<QKeyEvent*>(event)->key();
            if (key == Qt::Key_F1 || key == Qt::Key_Menu || key == Qt::Key_Question)
                return ask();
            break;
        }
        case QEvent::ContextMenu:
            return ask();
        case QEvent::LanguageChange:
            describe();
            break;
        case QEvent::MouseButtonRelease:
            if (static_cast<QMouseEvent*>(event)->button() == Qt::LeftButton &&
                m_figure->rect().contains(static_cast<QMouseEvent*>(event)->pos()) &&
                !qobject_cast<QAbstractButton*>(watched))
                return ask();
            break;
        case QEvent::FocusIn:
        case QEvent::FocusOut:
            m_figure->update();
            break;
        case QEvent::Paint:
            if (m_figure->hasFocus())
                return paintFocused(watched, event);
            break;
        default:
            break;
        }
        return false;
    }

private:
    void describe()
    {
        if (m_describes)
            m_figure->setAccessibleDescription(
                WhereFromPopover::tr("Press F1 to see where this figure is from."));
    }

    bool ask()
    {
        const Explanation why = m_make();
        if (why.title.isEmpty())
            return false;
        WhereFromPopover::open(why, m_figure);
        return true;
    }

    // Labels draw no ring of their own round what has the keyboard.
    bool paintFocused(QObject* watched, QEvent* event)
    {
        if (m_painting)
            return false;
        m_painting = true;
        QCoreApplication::sendEvent(watched, event);
        m_painting = false;
        QPainter painter(m_figure);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(colours().focus, 2));
        painter.drawRoundedRect(QRectF(m_figure->rect()).adjusted(1, 1, -1, -1), 5, 5);
        return true;
    }

    QWidget* m_figure;
    ExplanationMaker m_make;
    bool m_describes = false; ///< the figure has no description of its own
    bool m_painting = false;
};

} // namespace

WhereFromPopover::WhereFromPopover(const Explanation& explanation, QWidget* parent)
    : QFrame(parent, Qt::Popup | Qt::FramelessWindowHint | Qt::NoDropShadowWindowHint),
      m_view(new ExplanationView(ExplanationView::Heading::Shown, this))
{
    setAttribute(Qt::WA_DeleteOnClose);
    setAttribute(Qt::WA_TranslucentBackground);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kMargin, kMargin - 3, kMargin, kMargin - 3);
    column->addWidget(m_view);
    m_view->setExplanation(explanation);
    setFocusProxy(m_view);
    setAccessibleName(m_view->accessibleName());
}

WhereFromPopover* WhereFromPopover::open(const Explanation& explanation, QWidget* anchor)
{
    auto* popover = new WhereFromPopover(explanation, anchor->window());
    popover->m_asked = anchor;
    popover->placeBeside(anchor);
    popover->show();
    popover->m_view->setFocus(Qt::PopupFocusReason);
    return popover;
}

void WhereFromPopover::placeBeside(QWidget* anchor)
{
    const int tall = m_view->heightFor(kWidth - 2 * kMargin) + 2 * kMargin;
    const QPoint below = anchor->mapToGlobal(QPoint(0, anchor->height() + 4));
    const QPoint above = anchor->mapToGlobal(QPoint(0, -4));
    const QScreen* screen = anchor->screen();
    const QRect room = screen ? screen->availableGeometry() : QRect(0, 0, 1280, 800);
    const int underneath = room.bottom() - below.y();
    const int overhead = above.y() - room.top();
    const bool down = underneath >= std::min(tall, kTallest) || underneath >= overhead;
    const int height = std::min({tall, kTallest, std::max(120, down ? underneath : overhead)});
    const int x = std::clamp(below.x(), room.left(), std::max(room.left(), room.right() - kWidth));
    setGeometry(x, down ? below.y() : above.y() - height, kWidth, height);
}

void WhereFromPopover::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape || event->key() == Qt::Key_F1) {
        close();
        return;
    }
    QFrame::keyPressEvent(event);
}

void WhereFromPopover::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colours().focus, 1.4));
    painter.setBrush(colours().card);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.7, 0.7, -0.7, -0.7), Space::kCardRadius,
                            Space::kCardRadius);
}

void WhereFromPopover::closeEvent(QCloseEvent* event)
{
    QFrame::closeEvent(event);
    if (m_asked)
        m_asked->setFocus(Qt::PopupFocusReason);
}

void askWhereFrom(QWidget* figure, ExplanationMaker make)
{
    for (QObject* child : figure->children()) {
        if (auto* asker = dynamic_cast<Asker*>(child)) {
            asker->setMaker(std::move(make));
            return;
        }
    }
    new Asker(figure, std::move(make));
}

} // namespace ullage::app
