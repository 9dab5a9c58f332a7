// Paints a row of the day book: a day's heading, or time, title and detail beside a stripe.
#pragma once

#include <QStyledItemDelegate>

namespace ullage::app
{

class DayDelegate : public QStyledItemDelegate
{
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;
};

} // namespace ullage::app
