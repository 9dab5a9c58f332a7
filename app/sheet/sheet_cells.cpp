#include "app/sheet/sheet_cells.h"

#include "app/sheet/sheet_headings.h"
#include "app/words/moment_text.h"
#include "app/words/quantity_words.h"

#include <QLocale>
#include <QRegularExpression>

#include <algorithm>
#include <cmath>

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

// Hours as German writes them; the rest readMoment() knows.
const MomentWords& wordsOfTimes()
{
    static const MomentWords words = [] {
        MomentWords made;
        made.fillers = {QStringLiteral("um"), QStringLiteral("gegen")};
        made.afterHour = {QStringLiteral("Uhr")};
        return made;
    }();
    return words;
}

// "1930" is a time where nothing else is asked for.
QString clockOf(const QString& typed)
{
    static const QRegularExpression together(QStringLiteral(R"(^([01]?\d|2[0-3])([0-5]\d)$)"));
    const auto found = together.match(typed);
    return found.hasMatch() ? found.captured(1) + u':' + found.captured(2) : typed;
}

// Strokes as they stand on a bottle: "|||| ||".
std::optional<int> strokes(const QString& typed)
{
    static const QRegularExpression tally(QStringLiteral(R"(^[|Il/\\ ]*[|Il][|Il/\\ ]*$)"));
    if (!tally.match(typed).hasMatch()) {
        return std::nullopt;
    }
    return static_cast<int>(typed.size() - typed.count(u' '));
}

// A figure without what people write beside it: "ca. 750 ml", "3 rolls", "ISO 400/27°".
QString bareFigure(SheetField field, QString typed)
{
    static const QRegularExpression about(
        QStringLiteral(R"(^(?:ca\.?|circa|about|approx\.?|[~≈])\s*)"),
        QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression films(
        QStringLiteral(
            R"((?<=[\d½⅓⅔¼¾])\s*(?:x|×|films?|rolls?|filmen?|rollen?|stück|stk\.?|pcs\.?)$)"),
        QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression speed(
        QStringLiteral(R"(^(?:(?:iso|asa|ei)\s*)?(\d+)(?:\s*/\s*\d+\s*°?)?(?:\s*(?:iso|asa))?$)"),
        QRegularExpression::CaseInsensitiveOption);
    typed.remove(about);
    if (field == SheetField::Films || field == SheetField::FilmsBefore) {
        if (const auto counted = strokes(typed)) {
            return QString::number(*counted);
        }
        typed.remove(films);
    } else if (field == SheetField::ExposureIndex) {
        typed.replace(speed, QStringLiteral("\\1"));
    }
    return typed;
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
    const QString said =
        column >= 0 && column < m_cells.size() ? m_cells[column].simplified() : QString();
    return saysNothing(said) ? QString() : said;
}

QStringList SheetCells::used() const
{
    QStringList all;
    for (std::size_t i = 0; i < m_mapping.columns.size(); ++i) {
        const auto column = static_cast<qsizetype>(i);
        if (m_mapping.columns[i].field != SheetField::Unused && column < m_cells.size() &&
            !saysNothing(m_cells[column])) {
            all << m_cells[column].simplified();
        }
    }
    return all;
}

std::optional<double> SheetCells::number(SheetField field, const formulary::FieldDescription& is)
{
    if (!has(field)) {
        return std::nullopt;
    }
    QString typed = bareFigure(field, text(field));
    const bool films = field == SheetField::Films || field == SheetField::FilmsBefore;
    const QuantityKind kind = films ? QuantityKind::Count : quantityKind(is); // "2 1/2" too
    const bool bare =
        std::none_of(typed.begin(), typed.end(), [](QChar c) { return c.isLetter() || c == u':'; });
    const auto column = static_cast<std::size_t>(columnOf(field));
    const QString unit = unitInHeading(m_mapping.columns[column].heading);
    const bool hasUnit = kind == QuantityKind::Volume || kind == QuantityKind::Temperature ||
                         kind == QuantityKind::Time;
    if (bare && hasUnit && !unit.isEmpty()) {
        typed.remove(u'°');
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

std::optional<SheetMoment> SheetCells::moment(SheetField field, QTime usual)
{
    const QString typed = text(field);
    if (typed.isEmpty()) {
        return std::nullopt;
    }
    const auto read = [&](const QString& day) -> std::optional<SheetMoment> {
        for (const QLocale& locale : localesFor(m_mapping.order)) {
            const ReadMoment found = readMoment(day, m_now, locale, wordsOfTimes());
            if (found.isUnderstood() && !found.now) {
                const QTime time = found.timeWritten ? found.time : usual;
                return SheetMoment{instantOf(QDateTime(found.date, time)), found.timeWritten};
            }
        }
        return std::nullopt;
    };
    const auto day = read(typed);
    if (!day) {
        refuse(field, {.code = ErrorCode::Malformed,
                       .field = std::string(sheetCode(field)),
                       .text = typed.toStdString(),
                       .allowed = "25.11.2026, 11/25/2026, 2026-11-25, 25 Nov 2026"});
        return std::nullopt;
    }
    const QString clock = text(SheetField::TimeOfDay);
    if (field != SheetField::Date || day->timeKnown || clock.isEmpty()) {
        return day;
    }
    const auto both = read(typed + u' ' + clockOf(clock));
    if (!both || !both->timeKnown) {
        refuse(SheetField::TimeOfDay, {.code = ErrorCode::Malformed,
                                       .field = std::string(sheetCode(SheetField::TimeOfDay)),
                                       .text = clock.toStdString(),
                                       .allowed = "19:30, 7:30 PM, 19 Uhr"});
        return std::nullopt;
    }
    return both;
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

} // namespace ullage::app
