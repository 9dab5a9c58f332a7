#include "app/widgets/rail.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QAbstractButton>
#include <QButtonGroup>
#include <QEvent>
#include <QFontMetricsF>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

#include <utility>

namespace ullage::app
{

namespace
{

constexpr int kGuideLines = 2;   // for what is mixed
constexpr int kButtonInset = 16; // a quiet button's own, both sides
constexpr int kArrow = 12;       // and of one with a menu

// One page's entry; the chosen one lies on a card.
class RailButton : public QAbstractButton
{
public:
    explicit RailButton(QWidget* parent) : QAbstractButton(parent)
    {
        setCheckable(true);
        setFixedSize(Space::kRail - 24, 36);
        setAttribute(Qt::WA_Hover);
        setCursor(Qt::PointingHandCursor);
        setFocusPolicy(Qt::StrongFocus);
    }

    [[nodiscard]] QSize sizeHint() const override { return {Space::kRail - 24, 36}; }

protected:
    void paintEvent(QPaintEvent*) override
    {
        const Colours& c = colours();
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const QRectF box = QRectF(rect()).adjusted(1, 1, -1, -1);
        painter.setPen(Qt::NoPen);
        if (isChecked()) {
            painter.setBrush(c.card);
            if (Theme::instance().isDarkRoom()) // where a card is hardly lighter than its ground
                painter.setPen(c.border);
        } else if (underMouse()) {
            painter.setBrush(blend(c.rail, c.ink, 0.06));
        }
        if (isChecked() || underMouse())
            painter.drawRoundedRect(box, Space::kRadius, Space::kRadius);
        if (hasFocus()) {
            painter.setPen(QPen(c.focus, 2));
            painter.setBrush(Qt::NoBrush);
            painter.drawRoundedRect(box, Space::kRadius, Space::kRadius);
        }
        QFont font = Theme::font(TextRole::Strong);
        font.setPixelSize(15);
        font.setWeight(isChecked() ? QFont::DemiBold : QFont::Medium);
        painter.setFont(font);
        painter.setPen(isChecked() ? c.ink : c.quiet);
        painter.drawText(box.adjusted(15, 0, -8, 0), Qt::AlignVCenter | Qt::AlignLeft, text());
    }
};

} // namespace

QString pageName(Page page)
{
    switch (page) {
    case Page::Shelf:
        return Rail::tr("Shelf");
    case Page::Bench:
        return Rail::tr("Bench");
    case Page::DayBook:
        return Rail::tr("Day book");
    case Page::Cupboard:
        return Rail::tr("Cupboard");
    case Page::Formulary:
        return Rail::tr("Formulary");
    }
    return {};
}

Rail::Rail(QWidget* parent)
    : QWidget(parent), m_pages(new QButtonGroup(this)), m_standing(new PlainLabel(this)),
      m_backup(new PlainLabel(this))
{
    setFixedWidth(Space::kRail);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 18, 6, 26);
    column->setSpacing(Space::kSmall);

    auto* wordmark = new PlainLabel(QStringLiteral("Ullage"), this);
    wordmark->setFont(Theme::font(TextRole::Wordmark));
    wordmark->setContentsMargins(12, 0, 0, 0);
    column->addWidget(wordmark);
    column->addSpacing(Space::kTight);

    for (int i = 0; i < kPages; ++i) {
        auto* button = new RailButton(this);
        button->installEventFilter(this);
        m_pages->addButton(button, i);
        column->addWidget(button);
        auto* shortcut = new QShortcut(QKeySequence(Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + i)),
                                       this, nullptr, nullptr, Qt::WindowShortcut);
        connect(shortcut, &QShortcut::activated, button, &QAbstractButton::click);
    }
    m_pages->setExclusive(true);
    connect(m_pages, &QButtonGroup::idToggled, this, [this](int id, bool on) {
        if (!on)
            return;
        // The keyboard, if it is here, goes with the choice.
        if (auto* focused = focusWidget(); focused && focused->hasFocus() && isAncestorOf(focused))
            m_pages->button(id)->setFocus();
        emit pageChosen(static_cast<Page>(id));
    });

    connect(m_pages, &QButtonGroup::idPressed, this,
            [this](int id) { m_again = id == m_pages->checkedId(); });
    connect(m_pages, &QButtonGroup::idClicked, this, [this](int id) {
        if (std::exchange(m_again, false))
            emit pageChosen(static_cast<Page>(id));
    });

    column->addStretch();
    for (QLabel* line : {m_standing, m_backup}) {
        line->setFont(Theme::font(TextRole::Small));
        line->setContentsMargins(16, 0, 0, 0);
        line->setWordWrap(true);
        line->setTextFormat(Qt::PlainText);
        setTone(line, Tone::Quiet);
        column->addWidget(line);
    }
    column->setSpacing(Space::kSmall);
    setStanding({});
    retranslate();
    setPage(Page::Shelf);
}

void Rail::setPage(Page page) { m_pages->button(static_cast<int>(page))->setChecked(true); }

Page Rail::page() const { return static_cast<Page>(m_pages->checkedId()); }

// Under the pages, apart from them: it is none of them.
void Rail::setGuide(const QString& text)
{
    if (!m_guide && text.isEmpty())
        return;
    if (!m_guide) {
        m_guide = new QPushButton(this);
        m_guide->setObjectName(QStringLiteral("guide"));
        setButtonLook(m_guide, ButtonLook::Quiet);
        m_guide->setFont(Theme::font(TextRole::Small));
        connect(m_guide, &QPushButton::clicked, this, &Rail::guideRequested);
        auto* lines = static_cast<QVBoxLayout*>(layout());
        lines->insertWidget(lines->indexOf(m_pages->button(kPages - 1)) + 1, m_guide);
        setTabOrder(m_pages->button(kPages - 1), m_guide);
    }
    m_guide->ensurePolished();
    const int room = Space::kRail - 24 - kButtonInset;
    const QFontMetricsF metrics(m_guide->font());
    QStringList lines{text};
    if (metrics.horizontalAdvance(text) > room)
        lines = text.split(QStringLiteral(" · ")); // the time left is seen whole
    QStringList shown;
    for (const QString& line : lines) {
        const QStringList broken = brokenLines(line, metrics, room); // its number is seen whole
        for (const QString& part : broken.size() <= kGuideLines ? broken : QStringList{line})
            shown << oneLine(part, metrics, room);
    }
    m_guide->setText(plainCaption(shown.join(u'\n')));
    m_guide->setAccessibleName(text);
    setPlainToolTip(m_guide, text);
    m_guide->setVisible(!text.isEmpty());
}

void Rail::makeBook()
{
    m_book = new QPushButton(this);
    m_book->setObjectName(QStringLiteral("book"));
    m_book->setProperty("menu", true); // room for its arrow
    setButtonLook(m_book, ButtonLook::Quiet);
    m_book->setFont(Theme::font(TextRole::Small));
    auto* menu = new QMenu(m_book);
    m_openBook = menu->addAction(QString(), this, &Rail::openBookRequested);
    m_newBook = menu->addAction(QString(), this, &Rail::newBookRequested);
    m_book->setMenu(menu);
    auto* lines = static_cast<QVBoxLayout*>(layout());
    lines->insertWidget(lines->indexOf(m_standing), m_book);
}

void Rail::setBook(const QString& name)
{
    m_bookName = name;
    if (!m_book && name.isEmpty())
        return;
    if (!m_book) {
        makeBook();
        retranslate();
        return;
    }
    const QString text = tr("Book: %1").arg(name);
    m_book->ensurePolished();
    const int room = Space::kRail - 24 - kButtonInset - kArrow;
    const QString ending = QStringLiteral(".ullage");
    const QString shown = tr("Book: %1")
                              .arg(name.endsWith(ending) ? name.chopped(ending.size())
                                                         : name); // the room is for its name
    m_book->setText(plainCaption(oneLine(shown, QFontMetricsF(m_book->font()), room)));
    m_book->setAccessibleName(text);
    m_book->setAccessibleDescription(tr("Opens another book, or begins one"));
    setPlainToolTip(m_book, text);
    m_book->setVisible(!name.isEmpty());
}

void Rail::setStanding(const QString& text, bool trouble, const QString& more)
{
    m_standing->setText(text);
    setPlainToolTip(m_standing, more);
    m_standing->setAccessibleDescription(more);
    m_standing->setVisible(!text.isEmpty());
    setTone(m_standing, trouble ? Tone::Discard : Tone::Quiet);
}

void Rail::offerMending(bool offered)
{
    if (!offered) {
        if (m_mending)
            m_mending->hide();
        return;
    }
    if (!m_mending) {
        m_mending = new QWidget(this);
        auto* column = new QVBoxLayout(m_mending);
        column->setContentsMargins(8, 0, 0, 0);
        column->setSpacing(Space::kTight);
        m_copies = new QPushButton(m_mending);
        m_salvage = new QPushButton(m_mending);
        for (QPushButton* button : {m_copies, m_salvage}) {
            setButtonLook(button, ButtonLook::Quiet);
            button->setFont(Theme::font(TextRole::Small));
            column->addWidget(button, 0, Qt::AlignLeft);
        }
        connect(m_copies, &QPushButton::clicked, this, &Rail::copiesRequested);
        connect(m_salvage, &QPushButton::clicked, this, &Rail::salvageRequested);
        auto* lines = static_cast<QVBoxLayout*>(layout());
        lines->insertWidget(lines->indexOf(m_standing) + 1, m_mending);
        retranslate();
    }
    m_mending->show();
}

void Rail::setBackup(const QString& text, bool trouble)
{
    m_backup->setText(text);
    m_backup->setVisible(!text.isEmpty());
    setTone(m_backup, trouble ? Tone::Discard : Tone::Quiet);
}

void Rail::retranslate()
{
    setAccessibleName(tr("Pages"));
    for (int i = 0; i < kPages; ++i) {
        QAbstractButton* button = m_pages->button(i);
        const QString name = pageName(static_cast<Page>(i));
        button->setText(name);
        button->setAccessibleName(name);
        setPlainToolTip(button, QKeySequence(Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + i))
                                    .toString(QKeySequence::NativeText));
    }
    if (m_book) {
        m_openBook->setText(tr("&Open book…"));
        m_newBook->setText(tr("&New book…"));
    }
    setBook(m_bookName);
    if (m_mending) {
        m_copies->setText(tr("Restore a copy…"));
        m_salvage->setText(tr("Salvage…"));
        m_salvage->setAccessibleDescription(tr("Reads what is left of the book into a new one."));
    }
}

void Rail::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), colours().rail);
}

void Rail::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        retranslate();
    QWidget::changeEvent(event);
}

bool Rail::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        const int step = key == Qt::Key_Down ? 1 : key == Qt::Key_Up ? -1 : 0;
        if (step != 0) {
            const int next = m_pages->checkedId() + step;
            if (next >= 0 && next < kPages) {
                m_pages->button(next)->setChecked(true);
                m_pages->button(next)->setFocus(Qt::TabFocusReason);
            }
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace ullage::app
