// Quantities as people type them and as a field shows them.
//
// Reading is generous: "20,5", "20.5 C", "68F", "600ml", "20 fl oz", "1,000 ml", "9:30",
// "9.5 min", "2 1/3". A number without a unit is in the user's unit. "1.500" means fifteen hundred
// to some and one and a half to others: both are told, and a field that knows its range chooses, or
// asks. Whatever the program shows is read as what it shows.
#pragma once

#include "app/words/units.h"
#include "core/formulary/field.h"

#include <QString>

#include <optional>

namespace ullage::app
{

/// What a field is for. Values are always in the stored unit named here.
enum class QuantityKind {
    Volume,      ///< ml
    Temperature, ///< °C
    Time,        ///< s; a number alone is minutes
    Area,        ///< cm²
    Count,       ///< films; fractions allowed
    Number,      ///< no unit (a factor, a density)
    Hours,       ///< h
};

enum class ReadProblem {
    Empty,
    NotANumber,
    OtherUnit, ///< a unit that does not belong here
};

/// No film takes longer to clear (common practice, no source): where a clearing time is asked for,
/// a number alone that would be more minutes than these is seconds.
inline constexpr double kMostClearingSeconds = 15 * 60;

/// What a field of the journal is for, by its unit; a number of pieces is a count.
QuantityKind quantityKind(const formulary::FieldDescription& is);

struct ReadQuantity {
    std::optional<double> value;              ///< in the stored unit
    ReadProblem problem = ReadProblem::Empty; ///< when there is no value
    /// What it can mean as well: decimals for thousands and the other way round, and seconds for a
    /// time that is a number alone.
    std::optional<double> other = {};
    bool open = false; ///< `other` is meant as readily as `value`: where both can be, ask
};

ReadQuantity readQuantity(QuantityKind kind, const QString& text, const Wording& wording);

/// For a field: without group signs, with its unit, to the places that are useful (more of them
/// below 1, so that little is not shown as nothing); readQuantity understands it.
QString editText(QuantityKind kind, double value, const Wording& wording);

/// The same for as long as nobody types in it: volumes and areas with their group signs, as in
/// every text. It may mean two things where it is read, so a field that is typed in shows
/// editText().
QString restText(QuantityKind kind, double value, const Wording& wording);

/// The unit by itself ("ml", "°F"); empty for counts and times.
QString unitText(QuantityKind kind, const Wording& wording);

} // namespace ullage::app
