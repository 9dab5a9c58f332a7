// A table as it is shown, for a spreadsheet: headings with their units, numbers as numbers, times
// on the user's clock.
#pragma once

#include "app/words/units.h"
#include "core/chemistry/quantities.h"

#include <QByteArray>
#include <QString>
#include <QStringList>

#include <variant>
#include <vector>

class QAbstractItemView;

namespace ullage::app
{

/// Nothing for what is not known, a text, a number in the unit that its heading names, a moment. A
/// day is the text that ISO 8601 has for it.
using TableCell = std::variant<std::monostate, QString, double, chemistry::Instant>;

struct ShownTable {
    QString name; ///< "Bottles", also for the file's name
    QStringList headings;
    std::vector<std::vector<TableCell>> rows; ///< each as long as the headings
};

/// In the user's unit, and that unit's name.
double shownVolume(chemistry::Millilitres volume, const Wording& wording);
QString volumeUnitName(const Wording& wording);

/// "Volume, ml"; the name alone without a unit.
QString withUnit(const QString& name, const QString& unit);

/// CSV (RFC 4180, UTF-8), headings first. Numbers with a decimal point and without a sign for
/// thousands, moments as "2026-06-01 19:30:00" on the user's clock, of which the heading says the
/// time zone and how far from UTC. What is not finite is empty. Text that a spreadsheet would run
/// gets an apostrophe in front (core/store/csv_cell.h).
QByteArray csvOf(const ShownTable& table);

/// As csvOf() writes a moment, and the heading that belongs over such: "Mixed (Europe/Berlin,
/// UTC+01:00, UTC+02:00)", with every offset that the clock has in the year of `seen`.
QByteArray csvMoment(chemistry::Instant moment);
QString withZone(const QString& heading, chemistry::Instant seen);

/// A cell's value (a number, or a QDateTime), and a heading with its unit, where the words that are
/// shown are not what a spreadsheet can reckon with. A cell without is its words.
inline constexpr int kRawRole = 0x0100 + 200; // above Qt::UserRole and any role of our models

/// What a view shows in columns, row by row in the order shown; a column that is hidden is left
/// out.
ShownTable tableOf(const QAbstractItemView& view);

} // namespace ullage::app
