#include "app/widgets/folding_row.h"

#include "app/widgets/theme.h"

#include <QWidget>

#include <algorithm>

namespace ullage::app
{

namespace
{

int heightOf(const QLayoutItem& item, int width, bool least)
{
    // Words that wrap cannot be squeezed; what stands in one card with them can.
    if (least)
        return item.hasHeightForWidth() ? item.minimumHeightForWidth(width)
                                        : item.minimumSize().height();
    const int wanted =
        item.hasHeightForWidth() ? item.heightForWidth(width) : item.sizeHint().height();
    return std::clamp(wanted, item.minimumSize().height(),
                      std::max(item.minimumSize().height(), item.maximumSize().height()));
}

bool growsDown(const QLayoutItem& item) { return (item.expandingDirections() & Qt::Vertical) != 0; }

} // namespace

FoldingRow::FoldingRow(QWidget* parent) : QLayout(parent)
{
    setContentsMargins(0, 0, 0, 0);
    setSpacing(Space::kGap);
}

FoldingRow::~FoldingRow()
{
    for (const Column& column : m_columns)
        delete column.item;
}

void FoldingRow::addColumn(QWidget* column, int stretch)
{
    addWidget(column);
    m_columns.back().stretch = stretch;
}

void FoldingRow::addColumn(QLayout* column, int stretch)
{
    addChildLayout(column);
    addItem(column);
    m_columns.back().stretch = stretch;
}

QLayoutItem* FoldingRow::itemAt(int index) const
{
    return index >= 0 && index < count() ? m_columns[static_cast<std::size_t>(index)].item
                                         : nullptr;
}

QLayoutItem* FoldingRow::takeAt(int index)
{
    QLayoutItem* item = itemAt(index);
    if (item)
        m_columns.erase(m_columns.begin() + index);
    return item;
}

std::vector<FoldingRow::Column> FoldingRow::shown() const
{
    std::vector<Column> columns;
    std::copy_if(m_columns.begin(), m_columns.end(), std::back_inserter(columns),
                 [](const Column& column) { return !column.item->isEmpty(); });
    return columns;
}

bool FoldingRow::foldsAt(int width) const
{
    const auto columns = shown();
    int least = (static_cast<int>(columns.size()) - 1) * spacing();
    for (const Column& column : columns)
        least += column.item->minimumSize().width();
    return columns.size() > 1 && width < least;
}

// Those without a stretch get what they want, or by one part less of it where the others need
// their least; the others share the rest by their stretches.
std::vector<int> FoldingRow::widthsAt(int width) const
{
    const auto columns = shown();
    std::vector<int> widths;
    double room = width - std::max(0, static_cast<int>(columns.size()) - 1) * spacing();
    double wanted = 0; // beyond their least, by those without a stretch
    double over = room;
    for (const Column& column : columns) {
        const int least = column.item->minimumSize().width();
        widths.push_back(least);
        over -= least;
        if (column.stretch == 0)
            wanted += std::max(0, column.item->sizeHint().width() - least);
    }
    const double part = wanted > 0 ? std::clamp(over / wanted, 0.0, 1.0) : 0;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (columns[i].stretch > 0)
            continue;
        widths[i] +=
            static_cast<int>(part * std::max(0, columns[i].item->sizeHint().width() - widths[i]));
        room -= widths[i];
    }
    shareOut(columns, room, widths);
    return widths;
}

// By stretch, but nobody gets less than the least or more than the most.
void FoldingRow::shareOut(const std::vector<Column>& columns, double room, std::vector<int>& widths)
{
    std::vector<std::size_t> open;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (columns[i].stretch > 0)
            open.push_back(i);
    }
    while (!open.empty()) {
        double stretch = 0;
        for (const std::size_t i : open)
            stretch += columns[i].stretch;
        const auto bound = std::find_if(open.begin(), open.end(), [&](std::size_t i) {
            const double share = room * columns[i].stretch / stretch;
            return share < columns[i].item->minimumSize().width() ||
                   share > columns[i].item->maximumSize().width();
        });
        if (bound == open.end()) {
            for (const std::size_t i : open)
                widths[i] = static_cast<int>(room * columns[i].stretch / stretch);
            return;
        }
        const QLayoutItem& item = *columns[*bound].item;
        const double share = room * columns[*bound].stretch / stretch;
        widths[*bound] = share < item.minimumSize().width() ? item.minimumSize().width()
                                                            : item.maximumSize().width();
        room -= widths[*bound];
        open.erase(bound);
    }
}

int FoldingRow::heightAt(int width, bool least) const
{
    const auto columns = shown();
    if (foldsAt(width)) {
        int height = std::max(0, static_cast<int>(columns.size()) - 1) * spacing();
        for (const Column& column : columns)
            height += heightOf(*column.item, width, least);
        return height;
    }
    const auto widths = widthsAt(width);
    int height = 0;
    for (std::size_t i = 0; i < columns.size(); ++i)
        height = std::max(height, heightOf(*columns[i].item, widths[i], least));
    return height;
}

int FoldingRow::heightForWidth(int width) const { return heightAt(width, false); }

int FoldingRow::minimumHeightForWidth(int width) const { return heightAt(width, true); }

QSize FoldingRow::sizeHint() const
{
    const auto columns = shown();
    int width = std::max(0, static_cast<int>(columns.size()) - 1) * spacing();
    int height = 0;
    for (const Column& column : columns) {
        width += std::max(column.item->sizeHint().width(), column.item->minimumSize().width());
        height = std::max(height, column.item->sizeHint().height());
    }
    return {width, height};
}

QSize FoldingRow::minimumSize() const
{
    int width = 0;
    for (const Column& column : shown())
        width = std::max(width, column.item->minimumSize().width());
    const int now = geometry().width() > 0 ? geometry().width() : sizeHint().width();
    return {width, heightAt(now, true)};
}

void FoldingRow::setGeometry(const QRect& rect)
{
    QLayout::setGeometry(rect);
    const auto columns = shown();
    const bool folds = foldsAt(rect.width());
    if (!folds) {
        const auto widths = widthsAt(rect.width());
        int x = rect.left();
        for (std::size_t i = 0; i < columns.size(); ++i) {
            columns[i].item->setGeometry(QRect(x, rect.top(), widths[i], rect.height()));
            x += widths[i] + spacing();
        }
    } else {
        // What is lacking or over is taken from, or given to, those that can do with it.
        int over = rect.height() - heightAt(rect.width(), false);
        const auto growing = std::count_if(columns.begin(), columns.end(),
                                           [](const Column& c) { return growsDown(*c.item); });
        int y = rect.top();
        auto left = std::max<int>(1, static_cast<int>(growing));
        for (const Column& column : columns) {
            int height = heightOf(*column.item, rect.width(), false);
            if (growing == 0 || growsDown(*column.item)) {
                const int least = heightOf(*column.item, rect.width(), true);
                const int given = over < 0 ? std::max(over, std::min(0, least - height))
                                           : (growing == 0 ? 0 : over / left--);
                height += given;
                over -= given;
            }
            column.item->setGeometry(QRect(rect.left(), y, rect.width(), height));
            y += height + spacing();
        }
    }
    if (folds != m_folded) {
        m_folded = folds;
        update(); // its least height is another now: who lays it out is to ask again
    }
}

} // namespace ullage::app
