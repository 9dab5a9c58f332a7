#include "app/sheet/sheet_guess.h"

#include "app/sheet/sheet_headings.h"
#include "app/sheet/sheet_kind.h"
#include "app/sheet/sheet_signs.h"
#include "app/words/formulary_words.h"
#include "core/chemistry/films.h"

#include <QRegularExpression>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kHeadingsWithin = 30;         // rows
constexpr int kMergedWithin = 2;            // rows above the headings
constexpr std::size_t kRowsLookedAt = 1000; // for what a column is

qsizetype columnsOf(const store::SheetTable& table)
{
    qsizetype most = 0;
    for (const QStringList& row : table.rows) {
        most = std::max(most, row.size());
    }
    return most;
}

QString bareUnit(QString heading)
{
    static const QRegularExpression around(QStringLiteral(R"(^[(\[]\s*|\s*[)\]]$)"));
    return heading.remove(around);
}

bool isFilmFormat(const QString& cell)
{
    static const QRegularExpression width(QStringLiteral(R"(^1?35(?:\s*mm)?$)"),
                                          QRegularExpression::CaseInsensitiveOption);
    return width.match(cell).hasMatch() || chemistry::filmsInOne(readFilmFormat(cell)).has_value();
}

std::optional<SheetField> fieldOf(const QString& heading)
{
    const auto field = sheetFieldFromHeading(heading);
    return field ? field : sheetFieldFromLooseHeading(heading);
}

// The heading of one column: a cell that says nothing by itself belongs to the merged one above it.
QString headingAt(const store::SheetTable& table, int row, qsizetype column)
{
    QString heading;
    for (int at = row; at >= 1 && at >= row - kMergedWithin; --at) {
        const QString cell =
            table.rows[static_cast<std::size_t>(at - 1)].value(column).simplified();
        if (cell.isEmpty()) {
            continue;
        }
        const bool unit = at == row && isUnitAlone(cell);
        if (heading.isEmpty()) {
            heading = cell;
            if (!unit && (at < row || fieldOf(cell))) {
                break;
            }
        } else if (isUnitAlone(heading)) {
            if (fieldOf(cell)) {
                heading = cell + QStringLiteral(" (") + bareUnit(heading) + u')';
                break;
            }
        } else if (const QString both = cell + u' ' + heading; fieldOf(both)) {
            heading = both;
            break;
        }
    }
    return heading;
}

int headingRowOf(const store::SheetTable& table)
{
    int best = 0;
    int bestKnown = 1; // one word may be anything
    const int rows = std::min(kHeadingsWithin, static_cast<int>(table.rows.size()));
    const qsizetype columns = columnsOf(table);
    for (int row = 1; row <= rows; ++row) {
        int known = 0;
        for (qsizetype column = 0; column < columns; ++column) {
            const QString heading = headingAt(table, row, column);
            known += !heading.isEmpty() && fieldOf(heading) ? 1 : 0;
        }
        if (known > bestKnown) {
            best = row;
            bestKnown = known;
        }
    }
    return best;
}

// What the cells of a column say, without those that say nothing.
QStringList cellsOf(const store::SheetTable& table, int headingRow, qsizetype column)
{
    QStringList cells;
    const auto first = static_cast<std::size_t>(headingRow);
    const std::size_t end = std::min(table.rows.size(), first + kRowsLookedAt);
    for (std::size_t row = first; row < end; ++row) {
        const QString cell = table.rows[row].value(column);
        if (!saysNothing(cell) &&
            std::none_of(table.rows[row].begin(), table.rows[row].end(), isTotal)) {
            cells << cell.simplified();
        }
    }
    return cells;
}

// Gives the columns their fields, each field once.
class Columns
{
public:
    Columns(const store::SheetTable& table, int headingRow)
    {
        const QStringList headings = headingsOf(table, headingRow);
        for (qsizetype i = 0; i < headings.size(); ++i) {
            m_columns.push_back({headings[i], SheetField::Unused});
            m_cells.push_back(cellsOf(table, headingRow, i));
        }
    }

    std::vector<SheetColumnMeans> guess()
    {
        each(sheetFieldFromHeading);
        each(sheetFieldFromLooseHeading);
        // By what the others have left.
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            if (isSizeOfSomething(m_columns[i].heading)) {
                m_columns[i].field = sizeOf(m_columns[i].heading, m_cells[i]);
            }
        }
        const bool bottles = has(SheetField::Solution) || has(SheetField::Volume);
        const bool films =
            has(SheetField::Film) || has(SheetField::Format) || has(SheetField::Kind);
        if (bottles && !films && !has(SheetField::FilmsBefore)) {
            for (SheetColumnMeans& column : m_columns) {
                if (column.field == SheetField::Films) {
                    column.field = SheetField::FilmsBefore; // a number of films beside a bottle
                }
            }
        }
        return std::move(m_columns);
    }

private:
    template <class Read>
    void each(Read read)
    {
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            SheetColumnMeans& column = m_columns[i];
            const bool asked = column.field == SheetField::Unused && !column.heading.isEmpty() &&
                               !isSizeOfSomething(column.heading);
            const auto field = asked ? read(column.heading) : std::nullopt;
            if (field) {
                column.field = wanted(*field, column.heading, m_cells[i]);
            }
        }
    }

    [[nodiscard]] SheetField wanted(SheetField field, const QString& heading,
                                    const QStringList& cells) const
    {
        const auto isFormat = [](const QString& cell) { return !sheetFormatFrom(cell).empty(); };
        if (field == SheetField::Kind && !has(SheetField::Format) &&
            !cellsFit(field, heading, cells) && std::any_of(cells.begin(), cells.end(), isFormat)) {
            return SheetField::Format; // "Type" of a film
        }
        // "Bottle" and "Developer" side by side: the second says what is in the first. So does
        // "Inhalt" without figures, and a kind that is none of a row's.
        const bool contents = (field == SheetField::BottleName && has(field)) ||
                              ((field == SheetField::Volume || field == SheetField::Kind) &&
                               !cellsFit(field, heading, cells));
        if (contents) {
            return has(SheetField::Solution) ? SheetField::Unused : SheetField::Solution;
        }
        return has(field) || !cellsFit(field, heading, cells) ? SheetField::Unused : field;
    }

    // Of a film where the cells are formats; beside a volume it is how much the bottle holds.
    [[nodiscard]] SheetField sizeOf(const QString& heading, const QStringList& cells) const
    {
        if (!cells.isEmpty() && std::all_of(cells.begin(), cells.end(), isFilmFormat)) {
            return has(SheetField::Format) ? SheetField::Unused : SheetField::Format;
        }
        for (const SheetField field : {SheetField::Volume, SheetField::Capacity}) {
            if (!has(field) && cellsFit(field, heading, cells)) {
                return field;
            }
        }
        return SheetField::Unused;
    }

    [[nodiscard]] bool has(SheetField field) const
    {
        return std::any_of(m_columns.begin(), m_columns.end(),
                           [&](const SheetColumnMeans& column) { return column.field == field; });
    }

    std::vector<SheetColumnMeans> m_columns;
    std::vector<QStringList> m_cells;
};

} // namespace

QStringList headingsOf(const store::SheetTable& table, int row)
{
    QStringList headings;
    for (qsizetype column = 0; column < columnsOf(table); ++column) {
        headings << headingAt(table, row, column);
    }
    return headings;
}

SheetOpen stillOpen(const store::SheetTable& table, const SheetMapping& mapping)
{
    const SheetSigns signs = signsOf(table, mapping);
    const SheetDays days = daysOf(table, mapping);
    SheetOpen open;
    open.encoding = table.encodingOpen;
    open.delimiter = table.delimiterOpen;
    open.decimal = (signs.comma && signs.point) || (!signs.comma && !signs.point && signs.either);
    open.days =
        (days.dayFirst && days.monthFirst) || (days.either && !days.dayFirst && !days.monthFirst);
    return open;
}

SheetGuess guessMapping(const store::SheetTable& table)
{
    SheetGuess guess;
    SheetMapping& mapping = guess.mapping;
    mapping.reading = {table.encoding, table.delimiter};
    mapping.headingRow = headingRowOf(table);
    mapping.columns = Columns(table, mapping.headingRow).guess();
    const SheetSigns signs = signsOf(table, mapping);
    mapping.decimalComma = signs.comma != signs.point
                               ? signs.comma
                               : table.delimiter == store::SheetDelimiter::Semicolon;
    const SheetDays days = daysOf(table, mapping);
    mapping.order = days.monthFirst && !days.dayFirst ? DayOrder::MonthFirst : DayOrder::DayFirst;
    if (days.yearFirst && !days.dayFirst && !days.monthFirst && !days.either) {
        mapping.order = DayOrder::YearFirst;
    }
    guess.open = stillOpen(table, mapping);
    return guess;
}

} // namespace ullage::app
