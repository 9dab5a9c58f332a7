#include "app/widgets/flow_layout.h"

#include <algorithm>

namespace ullage::app
{

FlowLayout::FlowLayout(QWidget* parent, int gap) : QLayout(parent), m_gap(gap)
{
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout()
{
    for (QLayoutItem* item : m_items)
        delete item;
}

QLayoutItem* FlowLayout::itemAt(int index) const
{
    return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index)
{
    QLayoutItem* item = itemAt(index);
    if (item)
        m_items.erase(m_items.begin() + index);
    return item;
}

int FlowLayout::heightForWidth(int width) const { return layOut(QRect(0, 0, width, 0), false); }

QSize FlowLayout::minimumSize() const
{
    QSize size;
    for (const QLayoutItem* item : m_items)
        size = size.expandedTo(item->minimumSize());
    return size;
}

void FlowLayout::setGeometry(const QRect& rect)
{
    QLayout::setGeometry(rect);
    layOut(rect, true);
}

// What stands in one row stands on one middle: words beside a field at the height of its words.
int FlowLayout::layOut(const QRect& rect, bool place) const
{
    int x = rect.left();
    int y = rect.top();
    int row = 0;
    std::vector<QLayoutItem*> inRow;
    const auto placeRow = [&] {
        for (QLayoutItem* item : inRow) {
            QRect at = item->geometry();
            at.moveTop(y + (row - at.height()) / 2);
            item->setGeometry(at);
        }
        inRow.clear();
    };
    for (QLayoutItem* item : m_items) {
        if (item->isEmpty())
            continue;
        QSize size = item->sizeHint();
        if (size.width() > rect.width() && item->hasHeightForWidth())
            size = {rect.width(), item->heightForWidth(rect.width())};
        if (x > rect.left() && x + size.width() > rect.right() + 1) {
            placeRow();
            x = rect.left();
            y += row + m_gap;
            row = 0;
        }
        if (place) {
            item->setGeometry(QRect(QPoint(x, y), size));
            inRow.push_back(item);
        }
        x += size.width() + m_gap;
        row = std::max(row, size.height());
    }
    placeRow();
    return y + row - rect.top();
}

} // namespace ullage::app
