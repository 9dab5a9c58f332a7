#include "app/charts/chart_table_model.h"

#include "app/charts/chart_figures.h"
#include "app/widgets/shown_table.h"

namespace ullage::app
{

ChartTableModel::ChartTableModel(const ChartSpec& spec, QObject* parent)
    : QAbstractTableModel(parent), m_spec(spec), m_x(allX(spec))
{
    for (std::size_t i = 0; i < spec.series.size(); ++i) {
        if (spec.series[i].inFigures)
            m_columns.push_back(i);
    }
}

int ChartTableModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_x.size());
}

int ChartTableModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : 1 + static_cast<int>(m_columns.size());
}

QVariant ChartTableModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant(index.column() == 0 ? Qt::AlignLeft | Qt::AlignVCenter
                                            : Qt::AlignRight | Qt::AlignVCenter);
    const double x = m_x[static_cast<std::size_t>(index.row())];
    if (role == kRawRole)
        return raw(index.column(), x);
    if (role != Qt::DisplayRole)
        return {};
    if (index.column() == 0)
        return xText(m_spec, x, QLocale());
    const auto& series = m_spec.series[m_columns[static_cast<std::size_t>(index.column() - 1)]];
    const QString text = seriesText(m_spec, series, x, QLocale());
    return text.isEmpty() ? QStringLiteral("–") : text;
}

// What a spreadsheet can reckon with; "–" is nothing to it.
QVariant ChartTableModel::raw(int column, double x) const
{
    if (column == 0) {
        if (m_spec.x == ChartX::Dates)
            return chartDate(x).toString(Qt::ISODate);
        return m_spec.x == ChartX::Numbers ? QVariant(x) : QVariant();
    }
    const auto& series = m_spec.series[m_columns[static_cast<std::size_t>(column - 1)]];
    if (const auto number = seriesNumber(m_spec, series, x))
        return *number;
    return seriesText(m_spec, series, x, QLocale());
}

QVariant ChartTableModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if ((role != Qt::DisplayRole && role != kRawRole) || orientation != Qt::Horizontal ||
        section < 0 || section >= columnCount())
        return {};
    if (section == 0)
        return m_spec.xName;
    const QString& name = m_spec.series[m_columns[static_cast<std::size_t>(section - 1)]].name;
    return role == kRawRole ? withUnit(name, yUnitName(m_spec)) : name;
}

} // namespace ullage::app
