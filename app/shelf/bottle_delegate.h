// Paints one bottle of the shelf with its tally, its verdict and what is left.
#pragma once

#include <QStyledItemDelegate>

namespace ullage::app
{

enum class ShelfLayout {
    Roomy,   ///< a bottle with its words below the shelf
    Compact, ///< a small bottle with its words beside it, for many
};

class BottleDelegate : public QStyledItemDelegate
{
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void setLayout(ShelfLayout layout, const QSize& cell);
    [[nodiscard]] ShelfLayout layout() const { return m_layout; }

    /// Height of a cell that shows bottles at `scale`.
    static int cellHeight(ShelfLayout layout, double scale = 1);
    /// From the top of a cell down to the board the bottles stand on.
    [[nodiscard]] int boardOffset() const;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;

private:
    ShelfLayout m_layout = ShelfLayout::Roomy;
    QSize m_cell{180, 320};
};

} // namespace ullage::app
