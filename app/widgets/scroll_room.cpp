#include "app/widgets/scroll_room.h"

#include "app/widgets/theme.h"

#include <QApplication>
#include <QEvent>
#include <QLayout>
#include <QScrollBar>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kNarrowest = 240;
constexpr int kLowest = 120; // a field with its label and what is wrong with it

} // namespace

ScrollRoom::ScrollRoom(QWidget* content, QWidget* parent) : QScrollArea(parent), m_lowest(kLowest)
{
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus); // the keys belong to what is in it
    viewport()->setAutoFillBackground(false);
    setWidget(content);
    content->setAutoFillBackground(false);
    content->installEventFilter(this);
    // Tab to a field that is scrolled away brings it into sight.
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
        if (now && now != widget() && widget()->isAncestorOf(now))
            reveal(*now);
    });
}

QSize ScrollRoom::leastAt(int width) const
{
    const QSize least = widget()->minimumSizeHint().expandedTo(widget()->minimumSize());
    const int wide = std::max(width, least.width());
    const QLayout* layout = widget()->layout();
    if (layout && layout->hasHeightForWidth())
        return {wide, std::max(layout->minimumHeightForWidth(wide), least.height())};
    return {wide, least.height()};
}

QSize ScrollRoom::sizeHint() const
{
    const QSize hint = widget()->sizeHint();
    const QLayout* layout = widget()->layout();
    if (layout && layout->hasHeightForWidth())
        return {hint.width(), layout->totalHeightForWidth(hint.width())};
    return hint;
}

QSize ScrollRoom::minimumSizeHint() const
{
    const QSize wanted = sizeHint();
    return {std::min(kNarrowest, wanted.width()), std::min(m_lowest, wanted.height())};
}

void ScrollRoom::setLowest(int height)
{
    m_lowest = height;
    updateGeometry();
}

void ScrollRoom::reveal(QWidget& within)
{
    const QRect place(within.mapTo(widget(), QPoint()), within.size());
    const QRect seen(horizontalScrollBar()->value(), verticalScrollBar()->value(),
                     viewport()->width(), viewport()->height());
    if (!seen.contains(place) && !(place.height() > seen.height() && place.intersects(seen)))
        ensureWidgetVisible(&within, Space::kSmall, Space::kPage);
}

// A bar takes width, and with less width words take more height: so first without any.
void ScrollRoom::fit()
{
    if (m_fitting)
        return;
    m_fitting = true;
    const QSize room = maximumViewportSize();
    QSize size = leastAt(room.width());
    if (size.height() > room.height())
        size = leastAt(room.width() - verticalScrollBar()->sizeHint().width());
    const int below = size.width() > room.width() ? horizontalScrollBar()->sizeHint().height() : 0;
    size.setHeight(std::max(size.height(), room.height() - below));
    widget()->resize(size);
    m_fitting = false;
}

bool ScrollRoom::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == widget() && event->type() == QEvent::LayoutRequest) {
        fit();
        updateGeometry();
    }
    return QScrollArea::eventFilter(watched, event);
}

void ScrollRoom::resizeEvent(QResizeEvent* event)
{
    fit();
    QScrollArea::resizeEvent(event);
}

} // namespace ullage::app
