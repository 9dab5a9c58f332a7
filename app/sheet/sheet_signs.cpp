#include "app/sheet/sheet_signs.h"

#include "app/sheet/sheet_headings.h"
#include "app/sheet/sheet_kind.h"

#include <QRegularExpression>

#include <algorithm>

namespace ullage::app
{

namespace
{

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

bool isVolume(SheetField field)
{
    return field == SheetField::Volume || field == SheetField::Capacity;
}

// What the cells of some columns say together.
template <class Wanted, class Look>
void eachCell(const store::SheetTable& table, const SheetMapping& mapping, Wanted wanted, Look look)
{
    for (std::size_t row = static_cast<std::size_t>(mapping.headingRow); row < table.rows.size();
         ++row) {
        for (std::size_t column = 0; column < mapping.columns.size(); ++column) {
            const QString cell = table.rows[row].value(static_cast<qsizetype>(column));
            if (!cell.isEmpty() && wanted(mapping.columns[column].field)) {
                look(cell, mapping.columns[column]);
            }
        }
    }
}

} // namespace

SheetSigns signsOf(const store::SheetTable& table, const SheetMapping& mapping)
{
    static const QRegularExpression comma(QStringLiteral(R"(\d,(\d{1,2}|\d{4,})(?!\d)|\.\d{3},)"));
    static const QRegularExpression point(QStringLiteral(R"(\d\.(\d{1,2}|\d{4,})(?!\d)|,\d{3}\.)"));
    static const QRegularExpression three(
        QStringLiteral(R"(^\D*\d{1,3}([.,])\d{3}(?![\d.,])\s*(.*)$)"));
    SheetSigns signs;
    const auto look = [&](const QString& cell, const SheetColumnMeans& column) {
        signs.comma |= comma.match(cell).hasMatch();
        signs.point |= point.match(cell).hasMatch();
        const auto found = three.match(cell);
        if (!found.hasMatch()) {
            return;
        }
        const bool isComma = found.captured(1) == u",";
        const QString said = unitInHeading(found.captured(2));
        const QString unit = said.isEmpty() ? unitInHeading(column.heading) : said;
        if (isVolume(column.field) && (unit == u"ml" || unit == u"l")) {
            const bool decimals = unit == u"l";
            signs.comma |= isComma == decimals;
            signs.point |= isComma != decimals;
        } else {
            signs.either = true;
        }
    };
    eachCell(table, mapping, isNumber, look);
    return signs;
}

SheetDays daysOf(const store::SheetTable& table, const SheetMapping& mapping)
{
    static const QRegularExpression figures(
        QStringLiteral(R"((?<!\d)(\d{1,4})\s*([./-])\s*(\d{1,2})(?:\s*[./-]\s*(\d{2,4}))?)"));
    SheetDays days;
    const auto isDay = [](SheetField field) {
        return field == SheetField::Date || field == SheetField::Discarded;
    };
    eachCell(table, mapping, isDay, [&](const QString& cell, const SheetColumnMeans&) {
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

bool cellsFit(SheetField field, const QString& heading, const QStringList& cells)
{
    static const QRegularExpression ofTheDay(
        QStringLiteral(R"(^(?:1[3-9]|2[0-3])[:.h]?[0-5]\d|\d\s*(?:[ap]\.?m\b|uhr))"),
        QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression strokes(QStringLiteral(R"(^[|I/ ]+$)"));
    const auto any = [&](const auto& says) {
        return std::any_of(cells.begin(), cells.end(), says);
    };
    if (cells.isEmpty()) {
        return true;
    }
    if (field == SheetField::Kind) {
        return any([](const QString& cell) { return rowKindFrom(cell).has_value(); });
    }
    if (field == SheetField::TimeOfDay) {
        const bool certain = heading.contains(QLatin1String("uhr"), Qt::CaseInsensitive) ||
                             heading.contains(QLatin1String("day"), Qt::CaseInsensitive);
        return certain || any([](const QString& cell) { return ofTheDay.match(cell).hasMatch(); });
    }
    return !isNumber(field) || any([](const QString& cell) {
        return std::any_of(cell.begin(), cell.end(), [](QChar c) { return c.isNumber(); }) ||
               strokes.match(cell).hasMatch();
    });
}

} // namespace ullage::app
