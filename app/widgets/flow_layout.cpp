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

QSize FlowLayout::sizeIn(const QLayoutItem& item, int width) const
{
    const QSize size = item.sizeHint();
    return size.width() > width && item.hasHeightForWidth()
               ? QSize(width, item.heightForWidth(width))
               : size;
}

bool FlowLayout::fitsOneRow(int width) const
{
    int used = -m_gap;
    for (const QLayoutItem* item : m_items)
        used += item->isEmpty() ? 0 : item->sizeHint().width() + m_gap;
    return used <= width;
}

int FlowLayout::layOut(const QRect& rect, bool place) const
{
    const bool broken = m_second && !fitsOneRow(rect.width());
    std::vector<QLayoutItem*> row;
    int used = -m_gap;
    int y = rect.top();
    const auto finish = [&] {
        if (row.empty())
            return;
        const auto wide = std::count_if(row.begin(), row.end(), [](const QLayoutItem* item) {
            return item->expandingDirections() & Qt::Horizontal;
        });
        const int spare = std::max(0, rect.width() - used);
        int height = 0;
        for (const QLayoutItem* item : row)
            height = std::max(height, sizeIn(*item, rect.width()).height());
        int x = rect.left();
        for (QLayoutItem* item : row) {
            QSize size = sizeIn(*item, rect.width());
            if (item->expandingDirections() & Qt::Horizontal)
                size.setWidth(std::clamp(size.width() + spare / static_cast<int>(wide),
                                         size.width(),
                                         std::max(size.width(), item->maximumSize().width())));
            // Words beside a field stand at the height of its words.
            if (place)
                item->setGeometry(QRect(QPoint(x, y + (height - size.height()) / 2), size));
            x += size.width() + m_gap;
        }
        y += height + m_gap;
        row.clear();
        used = -m_gap;
    };
    for (QLayoutItem* item : m_items) {
        if (item->isEmpty())
            continue;
        const int width = sizeIn(*item, rect.width()).width();
        if (used + m_gap + width > rect.width() || (broken && item->widget() == m_second))
            finish();
        row.push_back(item);
        used += m_gap + width;
    }
    finish();
    return std::max(0, y - m_gap - rect.top());
}

} // namespace ullage::app
