// The figures of a solution as a list: label, value, source line and badge, one below another.
#pragma once

#include "app/formulary/figure_rows.h"
#include "app/widgets/wrapping_list.h"

#include <QAbstractListModel>
#include <QStyledItemDelegate>

namespace ullage::app
{

class FigureModel : public QAbstractListModel
{
    Q_OBJECT

public:
    /// Fields of FigureRow; GradeRole is a chemistry::Grade as int, invalid for none.
    enum Role { LabelRole = Qt::UserRole + 1, ValueRole, SourceRole, KnownRole, GradeRole };

    using QAbstractListModel::QAbstractListModel;

    void setRows(std::vector<FigureRow> rows);
    /// `index` from 0 to rowCount() − 1. Good until setRows().
    [[nodiscard]] const FigureRow& row(int index) const
    {
        return m_rows[static_cast<std::size_t>(index)];
    }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

private:
    std::vector<FigureRow> m_rows;
};

/// Arrow keys move along it; the chosen figure is told by figureChosen().
class FigureList : public WrappingList
{
    Q_OBJECT

public:
    explicit FigureList(QWidget* parent = nullptr);

    /// Keeps the place in the list, or takes the last row if there are fewer; tells the figure
    /// there.
    void setRows(std::vector<FigureRow> rows);
    /// The figure chosen; null for an empty list. Good until setRows().
    [[nodiscard]] const FigureRow* chosen() const;
    /// Nothing for a row that is not there.
    void choose(int row);
    /// As high as all its rows, or scrolling.
    void showWhole(bool whole);
    [[nodiscard]] bool isWhole() const { return m_whole; }

signals:
    void figureChosen(const ullage::app::Explanation& why);

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fitRows();

    FigureModel* m_model;
    bool m_whole = false;
};

} // namespace ullage::app
