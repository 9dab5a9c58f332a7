#include "app/sheet/sheet_cells.h"

#include "app/words/moment_text.h"
#include "app/words/quantity_words.h"

#include <QLocale>

#include <algorithm>

namespace ullage::app
{

namespace
{

// Locales in which days are written in this order, the names of their months in German and English.
std::vector<QLocale> localesFor(DayOrder order)
{
    const QLocale german(QLocale::German, QLocale::Germany);
    switch (order) {
    case DayOrder::DayFirst:
        return {german, QLocale(QLocale::English, QLocale::UnitedKingdom)};
    case DayOrder::MonthFirst:
        return {QLocale(QLocale::English, QLocale::UnitedStates)};
    case DayOrder::YearFirst:
        return {QLocale(QLocale::Swedish, QLocale::Sweden), german,
                QLocale(QLocale::English, QLocale::UnitedKingdom)};
    }
    return {german};
}

} // namespace

SheetCells::SheetCells(const QStringList& cells, int row, const SheetMapping& mapping,
                       chemistry::Instant now)
    : m_cells(cells), m_row(row), m_mapping(mapping), m_now(now)
{
}

int SheetCells::columnOf(SheetField field) const
{
    const auto found =
        std::find_if(m_mapping.columns.begin(), m_mapping.columns.end(),
                     [&](const SheetColumnMeans& column) { return column.field == field; });
    return found == m_mapping.columns.end() ? -1
                                            : static_cast<int>(found - m_mapping.columns.begin());
}

QString SheetCells::text(SheetField field) const
{
    const int column = columnOf(field);
    return column >= 0 && column < m_cells.size() ? m_cells[column].simplified() : QString();
}

QStringList SheetCells::used() const
{
    QStringList all;
    for (std::size_t i = 0; i < m_mapping.columns.size(); ++i) {
        const auto column = static_cast<qsizetype>(i);
        if (m_mapping.columns[i].field != SheetField::Unused && column < m_cells.size() &&
            !m_cells[column].isEmpty()) {
            all << m_cells[column].simplified();
        }
    }
    return all;
}

std::optional<double> SheetCells::number(SheetField field, const formulary::FieldDescription& is)
{
    QString typed = text(field);
    if (typed.isEmpty()) {
        return std::nullopt;
    }
    const QuantityKind kind = quantityKind(is);
    const bool bare =
        std::none_of(typed.begin(), typed.end(), [](QChar c) { return c.isLetter() || c == u':'; });
    const auto column = static_cast<std::size_t>(columnOf(field));
    const QString unit = unitInHeading(m_mapping.columns[column].heading);
    if (bare && !unit.isEmpty() && (!is.unit.empty())) {
        typed += u' ' + unit;
    }
    const Wording wording{{},
                          m_mapping.decimalComma
                              ? QLocale(QLocale::German, QLocale::Germany)
                              : QLocale(QLocale::English, QLocale::UnitedKingdom)};
    const ReadQuantity read = readQuantity(kind, typed, wording);
    if (!read.value) {
        refuse(field, {.code = ErrorCode::NotANumber,
                       .field = std::string(sheetCode(field)),
                       .text = typed.toStdString(),
                       .unit = std::string(is.unit)});
        return std::nullopt;
    }
    double value = *read.value;
    if (kind == QuantityKind::Time && value > kMostClearingSeconds && read.other) {
        value = *read.other; // nothing takes so many minutes to clear
    }
    const bool within = value >= is.low && value <= is.high;
    if (!within || (is.whole && value != std::floor(value))) {
        refuse(field, {.code = within ? ErrorCode::NotANumber : ErrorCode::OutOfRange,
                       .field = std::string(sheetCode(field)),
                       .text = typed.toStdString(),
                       .number = value,
                       .low = is.low,
                       .high = is.high,
                       .unit = std::string(is.unit)});
        return std::nullopt;
    }
    return value;
}

std::optional<chemistry::Instant> SheetCells::moment(SheetField field, QTime usual)
{
    const QString typed = text(field);
    if (typed.isEmpty()) {
        return std::nullopt;
    }
    const QString clock = field == SheetField::Date ? text(SheetField::TimeOfDay) : QString();
    for (const QLocale& locale : localesFor(m_mapping.order)) {
        const ReadMoment read = readMoment(typed, m_now, locale, {});
        if (read.isUnderstood() && !read.now) {
            if (!clock.isEmpty() && !read.timeWritten) {
                return momentAt(read.date, clock, locale);
            }
            return instantOf(QDateTime(read.date, read.timeWritten ? read.time : usual));
        }
    }
    refuse(field, {.code = ErrorCode::Malformed,
                   .field = std::string(sheetCode(field)),
                   .text = typed.toStdString(),
                   .allowed = "25.11.2026, 11/25/2026, 2026-11-25, 25 Nov 2026"});
    return std::nullopt;
}

std::optional<chemistry::Instant> SheetCells::momentAt(QDate day, const QString& clock,
                                                       const QLocale& locale)
{
    const ReadMoment read = readMoment(day.toString(Qt::ISODate) + u' ' + clock, m_now, locale, {});
    if (read.isUnderstood() && read.timeWritten && read.date == day) {
        return instantOf(QDateTime(day, read.time));
    }
    refuse(SheetField::TimeOfDay, {.code = ErrorCode::Malformed,
                                   .field = std::string(sheetCode(SheetField::TimeOfDay)),
                                   .text = clock.toStdString(),
                                   .allowed = "19:30, 7:30 pm"});
    return std::nullopt;
}

std::optional<bool> SheetCells::truth(SheetField field)
{
    const QString typed = text(field);
    if (typed.isEmpty()) {
        return std::nullopt;
    }
    if (saysOneOf(typed, {"yes", "y", "ok", "good", "pass", "passed", "fine", "true", "x", "1",
                          "ja", "j", "gut", "bestanden", "in ordnung", "✓"})) {
        return true;
    }
    if (saysOneOf(typed, {"no", "n", "bad", "fail", "failed", "false", "0", "nein", "schlecht",
                          "nicht bestanden", "durchgefallen"})) {
        return false;
    }
    refuse(field, {.code = ErrorCode::UnknownKind,
                   .field = std::string(sheetCode(field)),
                   .text = typed.toStdString(),
                   .allowed = "yes, no"});
    return std::nullopt;
}

void SheetCells::refuse(SheetField field, Error error)
{
    const int column = columnOf(field);
    m_refused.push_back(
        {m_row,
         column < 0 ? QString() : m_mapping.columns[static_cast<std::size_t>(column)].heading,
         text(field), std::move(error)});
}

bool saysOneOf(const QString& cell, std::initializer_list<const char*> words)
{
    QString said = cell.simplified().toLower();
    while (said.endsWith(u':') || said.endsWith(u'.')) {
        said.chop(1);
    }
    return std::any_of(words.begin(), words.end(),
                       [&](const char* word) { return said == QString::fromUtf8(word); });
}

} // namespace ullage::app
