#include "app/widgets/edge_fade.h"

#include "app/widgets/theme.h"

#include <QAbstractScrollArea>
#include <QEvent>
#include <QLinearGradient>
#include <QPainter>
#include <QScrollBar>

#include <utility>

namespace ullage::app
{

namespace
{

constexpr int kHeight = 22; // more than a line

} // namespace

EdgeFade::EdgeFade(QAbstractScrollArea& area, Qt::Edge edge, FadeGround ground,
                   std::function<bool(Qt::Edge)> cuts)
    : QWidget(&area), m_area(area), m_edge(edge), m_ground(ground), m_cuts(std::move(cuts))
{
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
    area.viewport()->installEventFilter(this);
    const QScrollBar* bar = area.verticalScrollBar();
    connect(bar, &QScrollBar::valueChanged, this, &EdgeFade::place);
    connect(bar, &QScrollBar::rangeChanged, this, &EdgeFade::place);
    place();
}

void EdgeFade::place()
{
    const QScrollBar* bar = m_area.verticalScrollBar();
    const QRect seen = m_area.viewport()->geometry();
    const bool upper = m_edge == Qt::TopEdge;
    setGeometry(seen.left(), upper ? seen.top() : seen.bottom() + 1 - kHeight, seen.width(),
                kHeight);
    const bool more = upper ? bar->value() > bar->minimum() : bar->value() < bar->maximum();
    setVisible(more && (!m_cuts || m_cuts(m_edge)));
    if (isVisible())
        raise();
}

bool EdgeFade::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Resize || event->type() == QEvent::Move)
        place();
    return QWidget::eventFilter(watched, event);
}

void EdgeFade::paintEvent(QPaintEvent*)
{
    QColor ground = m_ground == FadeGround::Card ? colours().card : colours().paper;
    QLinearGradient fade(0, m_edge == Qt::TopEdge ? height() : 0, 0,
                         m_edge == Qt::TopEdge ? 0 : height());
    fade.setColorAt(1, ground);
    ground.setAlpha(0);
    fade.setColorAt(0, ground);
    QPainter(this).fillRect(rect(), fade);
}

void fadeEdges(QAbstractScrollArea& area, FadeGround ground, std::function<bool(Qt::Edge)> cuts)
{
    for (const Qt::Edge edge : {Qt::TopEdge, Qt::BottomEdge})
        new EdgeFade(area, edge, ground, cuts);
}

} // namespace ullage::app
