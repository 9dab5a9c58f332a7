#include "app/sheet/sheet_guess.h"

#include <QRegularExpression>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kHeadingsWithin = 30; // rows
constexpr int kMergedWithin = 2;    // rows above the headings

qsizetype columnsOf(const store::SheetTable& table)
{
    qsizetype most = 0;
    for (const QStringList& row : table.rows) {
        most = std::max(most, row.size());
    }
    return most;
}

QString cellOf(const QStringList& row, qsizetype column)
{
    return column < row.size() ? row[column] : QString();
}

int headingRowOf(const store::SheetTable& table)
{
    int best = 0;
    int bestKnown = 1; // one word may be anything
    const int rows = std::min(kHeadingsWithin, static_cast<int>(table.rows.size()));
    for (int row = 1; row <= rows; ++row) {
        int known = 0;
        for (const QString& cell : table.rows[static_cast<std::size_t>(row - 1)]) {
            known += !cell.isEmpty() && sheetFieldFromHeading(cell) ? 1 : 0;
        }
        if (known > bestKnown) {
            best = row;
            bestKnown = known;
        }
    }
    return best;
}

bool has(const std::vector<SheetColumnMeans>& columns, SheetField field)
{
    return std::any_of(columns.begin(), columns.end(),
                       [&](const SheetColumnMeans& column) { return column.field == field; });
}

std::vector<SheetColumnMeans> columnsFrom(const QStringList& headings)
{
    std::vector<SheetColumnMeans> columns;
    for (const QString& heading : headings) {
        auto field = heading.isEmpty() ? std::nullopt : sheetFieldFromHeading(heading);
        if (field && has(columns, *field)) {
            // "Bottle" and "Developer" side by side: the second says what is in the first.
            const bool contents =
                field == SheetField::BottleName && !has(columns, SheetField::Solution);
            field = contents ? std::optional(SheetField::Solution) : std::nullopt;
        }
        columns.push_back({heading, field.value_or(SheetField::Unused)});
    }
    const bool bottles = has(columns, SheetField::Solution) || has(columns, SheetField::Volume);
    const bool films = has(columns, SheetField::Film) || has(columns, SheetField::Format) ||
                       has(columns, SheetField::Kind);
    if (bottles && !films && !has(columns, SheetField::FilmsBefore)) {
        for (SheetColumnMeans& column : columns) {
            if (column.field == SheetField::Films) {
                column.field = SheetField::FilmsBefore; // a number of films beside a bottle
            }
        }
    }
    return columns;
}

bool isNumber(SheetField field)
{
    switch (field) {
    case SheetField::Capacity:
    case SheetField::Volume:
    case SheetField::FilmsBefore:
    case SheetField::Films:
    case SheetField::ExposureIndex:
    case SheetField::Temperature:
    case SheetField::Density:
    case SheetField::Factor:
    case SheetField::Seconds:
        return true;
    default:
        return false;
    }
}

// What the cells of some columns say together.
template <class Wanted, class Look>
void eachCell(const store::SheetTable& table, const SheetMapping& mapping, Wanted wanted, Look look)
{
    for (std::size_t row = static_cast<std::size_t>(mapping.headingRow); row < table.rows.size();
         ++row) {
        for (std::size_t column = 0; column < mapping.columns.size(); ++column) {
            const QString cell = cellOf(table.rows[row], static_cast<qsizetype>(column));
            if (!cell.isEmpty() && wanted(mapping.columns[column].field)) {
                look(cell);
            }
        }
    }
}

struct Signs {
    bool comma = false;
    bool point = false;
    bool either = false; ///< a number with three figures behind its only sign
};

Signs signsOf(const store::SheetTable& table, const SheetMapping& mapping)
{
    static const QRegularExpression comma(QStringLiteral(R"(\d,(\d{1,2}|\d{4,})(?!\d)|\.\d{3},)"));
    static const QRegularExpression point(QStringLiteral(R"(\d\.(\d{1,2}|\d{4,})(?!\d)|,\d{3}\.)"));
    static const QRegularExpression three(QStringLiteral(R"(^\D*\d{1,3}[.,]\d{3}(?![\d.,]))"));
    Signs signs;
    eachCell(table, mapping, isNumber, [&](const QString& cell) {
        signs.comma |= comma.match(cell).hasMatch();
        signs.point |= point.match(cell).hasMatch();
        signs.either |= three.match(cell).hasMatch();
    });
    return signs;
}

struct Days {
    bool dayFirst = false;
    bool monthFirst = false;
    bool yearFirst = false;
    bool either = false;
};

Days daysOf(const store::SheetTable& table, const SheetMapping& mapping)
{
    static const QRegularExpression figures(
        QStringLiteral(R"(^\s*(\d{1,4})\s*([./-])\s*(\d{1,2})(?:\s*[./-]\s*(\d{2,4}))?)"));
    Days days;
    const auto isDay = [](SheetField field) {
        return field == SheetField::Date || field == SheetField::Discarded;
    };
    eachCell(table, mapping, isDay, [&](const QString& cell) {
        const auto found = figures.match(cell);
        if (!found.hasMatch()) {
            return; // with a month's name, or no day at all
        }
        const int first = found.captured(1).toInt();
        const int second = found.captured(3).toInt();
        if (found.captured(1).size() == 4) {
            days.yearFirst = true;
        } else if (found.captured(2) == u"." || first > 12) {
            days.dayFirst = true;
        } else if (second > 12) {
            days.monthFirst = true;
        } else if (first != second) {
            days.either = true;
        }
    });
    return days;
}

} // namespace

QStringList headingsOf(const store::SheetTable& table, int row)
{
    QStringList headings;
    for (qsizetype column = 0; column < columnsOf(table); ++column) {
        QString heading;
        for (int at = row; at >= 1 && at >= row - kMergedWithin && heading.isEmpty(); --at) {
            heading = cellOf(table.rows[static_cast<std::size_t>(at - 1)], column).simplified();
        }
        headings << heading;
    }
    return headings;
}

SheetOpen stillOpen(const store::SheetTable& table, const SheetMapping& mapping)
{
    const Signs signs = signsOf(table, mapping);
    const Days days = daysOf(table, mapping);
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
    mapping.columns = columnsFrom(headingsOf(table, mapping.headingRow));
    const Signs signs = signsOf(table, mapping);
    mapping.decimalComma = signs.comma != signs.point
                               ? signs.comma
                               : table.delimiter == store::SheetDelimiter::Semicolon;
    const Days days = daysOf(table, mapping);
    mapping.order = days.monthFirst && !days.dayFirst ? DayOrder::MonthFirst : DayOrder::DayFirst;
    if (days.yearFirst && !days.dayFirst && !days.monthFirst && !days.either) {
        mapping.order = DayOrder::YearFirst;
    }
    guess.open = stillOpen(table, mapping);
    return guess;
}

} // namespace ullage::app
