#include "app/formulary/formulary_table.h"

#include "app/widgets/plain_text.h"
#include "app/widgets/shown_table.h"
#include "app/widgets/table_export.h"
#include "app/widgets/theme.h"

#include <QEvent>
#include <QHeaderView>
#include <QPainter>
#include <QResizeEvent>
#include <QScrollBar>
#include <QSortFilterProxyModel>
#include <QStyledItemDelegate>

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage::app
{

namespace
{

constexpr int kInset = 8;
constexpr int kRowHeight = 36;
constexpr int kLineHeight = 17; // what a row is taller for each line more
constexpr int kMostLines = 5;   // a longer text ends with an ellipsis; the tool tip has it all
constexpr int kWidestWord = 220;
constexpr int kWidestLeast = 700; // what a folded page has in the smallest window
constexpr int kRowsSeen = 8;
constexpr int kSpare = 4;     // so that the last of those needs no bar
constexpr int kSortMark = 16; // beside the heading that the rows are sorted by

int roundedUp(double width) { return static_cast<int>(std::ceil(width)); }

QStringList linesOf(const QString& text, const QFontMetricsF& metrics, double width)
{
    QStringList lines = brokenLines(text, metrics, width);
    if (lines.size() > kMostLines)
        lines = lines.mid(0, kMostLines - 1) << lines.mid(kMostLines - 1).join(u' ');
    return lines;
}

// The style sheet insets chosen cells only; here all are alike.
class CellDelegate : public QStyledItemDelegate
{
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override
    {
        painter->save();
        if (option.state & QStyle::State_Selected)
            painter->fillRect(option.rect, colours().selected);
        painter->setFont(option.font);
        painter->setPen(colours().ink);
        QRect line = option.rect.adjusted(kInset, 0, -kInset, 0);
        const QFontMetricsF metrics(option.font);
        const QStringList lines = linesOf(index.data().toString(), metrics, line.width());
        const auto more = static_cast<int>(lines.size()) - 1;
        line.setHeight(line.height() - more * kLineHeight);
        for (const QString& text : lines) {
            painter->drawText(line, index.data(Qt::TextAlignmentRole).toInt(),
                              oneLine(text, metrics, line.width()));
            line.translate(0, kLineHeight);
        }
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
    : QTableView(parent), m_model(new FormularyTableModel(this)), m_numbers(numbers),
      m_stretched(stretched)
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
    verticalHeader()->setDefaultSectionSize(kRowHeight);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    setHorizontalScrollMode(ScrollPerPixel);
    setVerticalScrollMode(ScrollPerPixel);
    horizontalHeader()->setMinimumSectionSize(60);
    setSortingEnabled(true);
    horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
    connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) {
                if (current.isValid())
                    emit rowChosen(current.data(FormularyTableModel::IdRole).toString());
            });
    connect(sorted, &QAbstractItemModel::layoutChanged, this, &FormularyTable::fitRows);
    connect(this, &QTableView::activated, this, [this](const QModelIndex& index) {
        emit rowOpened(index.data(FormularyTableModel::IdRole).toString());
    });
}

void FormularyTable::setRows(std::vector<FormularyTableModel::Row> rows)
{
    const QString before = chosen();
    m_model->setRows(std::move(rows));
    measure();
    choose(before);
    if (!currentIndex().isValid() && model()->rowCount() > 0)
        setCurrentIndex(model()->index(0, 0));
}

QSize FormularyTable::minimumSizeHint() const
{
    int width = verticalScrollBar()->sizeHint().width();
    for (const Width& column : m_widths)
        width += column.least;
    return {std::min(width, kWidestLeast),
            horizontalHeader()->sizeHint().height() + m_seenHeight + kSpare};
}

void FormularyTable::changeEvent(QEvent* event)
{
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        measure();
}

void FormularyTable::resizeEvent(QResizeEvent* event)
{
    QTableView::resizeEvent(event);
    if (roomOfColumns() != m_fitted)
        fitColumns();
}

void FormularyTable::measure()
{
    const QFontMetricsF metrics(font());
    const QFontMetricsF headings(Theme::font(TextRole::CardTitle));
    m_widths.clear();
    for (int column = 0; column < model()->columnCount(); ++column) {
        const QString title = model()->headerData(column, Qt::Horizontal).toString();
        const int heading = roundedUp(headings.horizontalAdvance(title)) + 2 * kInset + kSortMark;
        double wanted = 0;
        double word = 0;
        for (int row = 0; row < model()->rowCount(); ++row) {
            const QString text = model()->index(row, column).data().toString();
            wanted = std::max(wanted, metrics.horizontalAdvance(text));
            for (const QString& one : text.split(u' '))
                word = std::max(word, metrics.horizontalAdvance(one));
        }
        const bool breaks = !m_numbers.contains(column);
        const int whole = roundedUp(wanted) + 2 * kInset + 2;
        const int least = std::min(whole, roundedUp(word) + 2 * kInset + 2);
        m_widths.push_back({std::max(heading, whole),
                            std::max(heading, breaks ? std::min(least, kWidestWord) : whole)});
    }
    updateGeometry();
    fitColumns();
}

// The widest give first: what is short stays on one line.
std::vector<int> FormularyTable::widthsIn(int room) const
{
    std::vector<int> widths;
    int over = -room;
    for (const Width& column : m_widths) {
        widths.push_back(column.wanted);
        over += column.wanted;
    }
    if (over < 0)
        widths[static_cast<std::size_t>(m_stretched)] -= over;
    while (over > 0) {
        std::size_t widest = widths.size();
        for (std::size_t i = 0; i < widths.size(); ++i) {
            if (widths[i] > m_widths[i].least &&
                (widest == widths.size() || widths[i] > widths[widest]))
                widest = i;
        }
        if (widest == widths.size())
            break;
        --widths[widest];
        --over;
    }
    return widths;
}

// With room for a bar that may not be there: else rows that break for it need it, and rows that do
// not break do without, in turn and without end.
int FormularyTable::roomOfColumns() const
{
    return width() - 2 * frameWidth() - verticalScrollBar()->sizeHint().width();
}

void FormularyTable::fitColumns()
{
    if (m_widths.empty())
        return;
    m_fitted = roomOfColumns();
    int column = 0;
    for (const int width : widthsIn(m_fitted))
        horizontalHeader()->resizeSection(column++, width);
    fitRows();
    updateGeometries(); // else its bars are of the columns before until it is idle
}

void FormularyTable::fitRows()
{
    const QFontMetricsF metrics(font());
    int seen = 0;
    for (int row = 0; row < model()->rowCount(); ++row) {
        qsizetype lines = 1;
        for (int column = 0; column < model()->columnCount(); ++column) {
            const double width = columnWidth(column) - 2 * kInset;
            lines = std::max(
                lines,
                linesOf(model()->index(row, column).data().toString(), metrics, width).size());
        }
        const int height = kRowHeight + (static_cast<int>(lines) - 1) * kLineHeight;
        verticalHeader()->resizeSection(row, height);
        if (row < kRowsSeen)
            seen += height;
    }
    if (std::exchange(m_seenHeight, seen) != seen)
        updateGeometry();
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
