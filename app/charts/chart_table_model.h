// The figures of a chart as a table.
#pragma once

#include "app/charts/chart.h"

#include <QAbstractTableModel>

namespace ullage::app
{

/// A row for every x of allX(), a column for each series in the figures, worded as in the read-out.
class ChartTableModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    explicit ChartTableModel(const ChartSpec& spec, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    [[nodiscard]] QVariant raw(int column, double x) const;

    ChartSpec m_spec;
    std::vector<double> m_x;
    std::vector<std::size_t> m_columns; ///< which series
};

} // namespace ullage::app
