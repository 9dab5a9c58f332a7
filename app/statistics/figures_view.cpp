#include "app/statistics/figures_view.h"

#include "app/widgets/shown_table.h"
#include "app/widgets/table_export.h"
#include "app/widgets/theme.h"

#include <QAction>
#include <QHeaderView>

namespace ullage::app
{

namespace
{

constexpr int kRowHeight = 34;
constexpr int kLeastColumn = 60;

} // namespace

void FiguresModel::setTable(const FiguresTable& table)
{
    beginResetModel();
    m_table = table;
    endResetModel();
}

int FiguresModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_table.rows.size());
}

int FiguresModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_table.columns.size());
}

QVariant FiguresModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const auto row = static_cast<std::size_t>(index.row());
    const auto column = static_cast<std::size_t>(index.column());
    const FiguresCell& cell = m_table.rows[row][column];
    switch (role) {
    case Qt::DisplayRole:
        return cell.text;
    case kRawRole:
        return cell.raw;
    case Qt::FontRole:
        if (m_table.total && row + 1 == m_table.rows.size())
            return Theme::font(TextRole::Strong);
        return {};
    case Qt::TextAlignmentRole:
        return static_cast<int>(Qt::AlignVCenter |
                                (m_table.columns[column].right ? Qt::AlignRight : Qt::AlignLeft));
    default:
        return {};
    }
}

QVariant FiguresModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount())
        return {};
    const FiguresColumn& column = m_table.columns[static_cast<std::size_t>(section)];
    if (role == Qt::DisplayRole)
        return column.title;
    if (role == Qt::TextAlignmentRole)
        return static_cast<int>(Qt::AlignVCenter | (column.right ? Qt::AlignRight : Qt::AlignLeft));
    return {};
}

FiguresView::FiguresView(QWidget* parent)
    : QTableView(parent), m_model(new FiguresModel(this)), m_export(TableExport::offer(this))
{
    setModel(m_model);
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setShowGrid(false);
    setTabKeyNavigation(false);
    setWordWrap(false);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(kRowHeight);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setMinimumSectionSize(kLeastColumn);
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    setHorizontalScrollMode(ScrollPerPixel);
}

// The names take what room the figures leave.
void FiguresView::setTable(const FiguresTable& table)
{
    m_model->setTable(table);
    setAccessibleName(table.title);
    if (m_model->columnCount() > 0)
        horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
}

} // namespace ullage::app
