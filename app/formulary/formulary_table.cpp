#include "app/formulary/formulary_table.h"

#include "app/widgets/plain_text.h"
#include "app/widgets/shown_table.h"
#include "app/widgets/table_export.h"
#include "app/widgets/theme.h"

#include <QHeaderView>
#include <QPainter>
#include <QSortFilterProxyModel>
#include <QStyledItemDelegate>

#include <algorithm>

namespace ullage::app
{

namespace
{

// The style sheet insets chosen cells only; here all are alike.
class CellDelegate : public QStyledItemDelegate
{
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    static constexpr int kInset = 8;

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const QFontMetrics metrics(option.font);
        return {metrics.horizontalAdvance(index.data().toString()) + 2 * kInset + 2, 36};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override
    {
        painter->save();
        if (option.state & QStyle::State_Selected)
            painter->fillRect(option.rect, colours().selected);
        painter->setFont(option.font);
        painter->setPen(colours().ink);
        const QRect line = option.rect.adjusted(kInset, 0, -kInset, 0);
        painter->drawText(line, index.data(Qt::TextAlignmentRole).toInt(),
                          oneLine(index.data().toString(), option.fontMetrics, line.width()));
        painter->setPen(QPen(colours().hairline, 1));
        painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
        painter->restore();
    }
};

} // namespace

void FormularyTableModel::setColumns(const QStringList& columns, const QList<int>& numbers)
{
    beginResetModel();
    m_columns = columns;
    m_numbers = numbers;
    endResetModel();
}

void FormularyTableModel::setUnits(const QMap<int, QString>& units) { m_units = units; }

void FormularyTableModel::setRows(std::vector<Row> rows)
{
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

int FormularyTableModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int FormularyTableModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

QVariant FormularyTableModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    const Cell& cell = row.cells[static_cast<std::size_t>(index.column())];
    switch (role) {
    case Qt::DisplayRole:
        return cell.text;
    case Qt::ToolTipRole:
        return plainToolTip(cell.text);
    case SortRole:
        return cell.sort.isValid() ? cell.sort : QVariant(cell.text);
    case IdRole:
        return row.id;
    case kRawRole:
        return cell.raw;
    case Qt::TextAlignmentRole:
        return static_cast<int>(
            Qt::AlignVCenter |
            (m_numbers.contains(index.column()) ? Qt::AlignRight : Qt::AlignLeft));
    default:
        return {};
    }
}

QVariant FormularyTableModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::DisplayRole)
        return m_columns.value(section);
    if (role == kRawRole)
        return withUnit(m_columns.value(section), m_units.value(section));
    if (role == Qt::TextAlignmentRole)
        return static_cast<int>(Qt::AlignVCenter |
                                (m_numbers.contains(section) ? Qt::AlignRight : Qt::AlignLeft));
    return {};
}

FormularyTable::FormularyTable(const QString& name, const QStringList& columns,
                               const QList<int>& numbers, int stretched, QWidget* parent)
    : QTableView(parent), m_model(new FormularyTableModel(this)), m_stretched(stretched)
{
    m_model->setColumns(columns, numbers);
    auto* sorted = new QSortFilterProxyModel(this);
    sorted->setSourceModel(m_model);
    sorted->setSortRole(FormularyTableModel::SortRole);
    sorted->setSortCaseSensitivity(Qt::CaseInsensitive);
    sorted->setSortLocaleAware(true);
    setModel(sorted);
    setItemDelegate(new CellDelegate(this));
    setAccessibleName(name);
    TableExport::offer(this);
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setShowGrid(false);
    setTabKeyNavigation(false);
    setWordWrap(false);
    setFrameShape(QFrame::NoFrame);
    setStyleSheet(QStringLiteral("QTableView { border: none; }"));
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(36);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    setHorizontalScrollMode(ScrollPerPixel);
    horizontalHeader()->setMinimumSectionSize(60);
    setSortingEnabled(true);
    horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
    connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) {
                if (current.isValid())
                    emit rowChosen(current.data(FormularyTableModel::IdRole).toString());
            });
    connect(this, &QTableView::activated, this, [this](const QModelIndex& index) {
        emit rowOpened(index.data(FormularyTableModel::IdRole).toString());
    });
}

void FormularyTable::setRows(std::vector<FormularyTableModel::Row> rows)
{
    const QString before = chosen();
    m_model->setRows(std::move(rows));
    fitColumns();
    choose(before);
    if (!currentIndex().isValid() && model()->rowCount() > 0)
        setCurrentIndex(model()->index(0, 0));
}

void FormularyTable::resizeEvent(QResizeEvent* event)
{
    QTableView::resizeEvent(event);
    fitColumns();
}

void FormularyTable::fitColumns()
{
    int wanted = 0;
    for (int column = 0; column < model()->columnCount(); ++column)
        wanted += std::max(sizeHintForColumn(column), horizontalHeader()->sectionSizeHint(column));
    const auto mode =
        wanted <= viewport()->width() ? QHeaderView::Stretch : QHeaderView::ResizeToContents;
    if (horizontalHeader()->sectionResizeMode(m_stretched) != mode)
        horizontalHeader()->setSectionResizeMode(m_stretched, mode);
}

QString FormularyTable::chosen() const
{
    return currentIndex().data(FormularyTableModel::IdRole).toString();
}

void FormularyTable::choose(const QString& id)
{
    for (int row = 0; row < model()->rowCount(); ++row) {
        const QModelIndex index = model()->index(row, 0);
        if (index.data(FormularyTableModel::IdRole).toString() == id)
            setCurrentIndex(index);
    }
}

} // namespace ullage::app
