#include "app/statistics/figures_view.h"

#include "app/widgets/shown_table.h"
#include "app/widgets/table_export.h"
#include "app/widgets/theme.h"

#include <QAction>
#include <QEvent>
#include <QHeaderView>

#include <algorithm>
#include <vector>

namespace ullage::app
{

namespace
{

constexpr int kRowHeight = 34;
constexpr int kMostSpare = 70; // that a column takes of what is left beside all of them

} // namespace

/// Headings of two words or more stand in two lines where there is no room for one.
class FiguresHeader : public QHeaderView
{
public:
    explicit FiguresHeader(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {}

    void setInTwoLines(bool twoLines)
    {
        if (m_twoLines == twoLines)
            return;
        m_twoLines = twoLines;
        if (count() > 0)
            headerDataChanged(Qt::Horizontal, 0, count() - 1);
    }

protected:
    [[nodiscard]] QSize sectionSizeFromContents(int section) const override
    {
        QSize size = QHeaderView::sectionSizeFromContents(section);
        const QString title = model()->headerData(section, Qt::Horizontal).toString();
        if (!m_twoLines || !title.contains(u' '))
            return size;
        QFont font = this->font();
        font.setWeight(QFont::DemiBold);
        const QFontMetrics letters(font);
        int narrowest = letters.horizontalAdvance(title);
        const int margins = size.width() - narrowest;
        for (qsizetype at = title.indexOf(u' '); at > 0; at = title.indexOf(u' ', at + 1))
            narrowest = std::min(narrowest, std::max(letters.horizontalAdvance(title.left(at)),
                                                     letters.horizontalAdvance(title.mid(at + 1))));
        return {narrowest + margins + 2, size.height() + letters.lineSpacing()};
    }

private:
    bool m_twoLines = false;
};

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
        return static_cast<int>(Qt::AlignVCenter |
                                (column.right ? Qt::AlignRight : Qt::AlignLeft)) |
               Qt::TextWordWrap;
    return {};
}

FiguresView::FiguresView(QWidget* parent)
    : QTableView(parent), m_model(new FiguresModel(this)), m_header(new FiguresHeader(this)),
      m_export(TableExport::offer(this))
{
    setHorizontalHeader(m_header);
    setModel(m_model);
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setShowGrid(false);
    setTabKeyNavigation(false);
    setWordWrap(false);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(kRowHeight);
    m_header->setHighlightSections(false);
    m_header->setSectionResizeMode(QHeaderView::Fixed);
    setHorizontalScrollMode(ScrollPerPixel);
}

void FiguresView::setTable(const FiguresTable& table)
{
    m_model->setTable(table);
    setAccessibleName(table.title);
    fitColumns();
}

void FiguresView::resizeEvent(QResizeEvent* event)
{
    QTableView::resizeEvent(event);
    fitColumns();
}

void FiguresView::changeEvent(QEvent* event)
{
    QTableView::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange)
        fitColumns();
}

// No name or figure is cut; columns stand somewhat apart where there is room, but not so far that
// the eye loses the row.
void FiguresView::fitColumns()
{
    const int columns = m_model->columnCount();
    if (columns == 0)
        return;
    std::vector<int> widths(static_cast<std::size_t>(columns));
    int spare = 0;
    for (const bool twoLines : {false, true}) {
        m_header->setInTwoLines(twoLines);
        spare = viewport()->width();
        for (int i = 0; i < columns; ++i) {
            int& width = widths[static_cast<std::size_t>(i)];
            width = std::max(sizeHintForColumn(i), m_header->sectionSizeHint(i));
            spare -= width;
        }
        if (spare >= 0)
            break;
    }
    const int each = std::clamp(spare / columns, 0, kMostSpare);
    for (int i = 0; i < columns; ++i)
        m_header->resizeSection(i, widths[static_cast<std::size_t>(i)] + each);
}

} // namespace ullage::app
