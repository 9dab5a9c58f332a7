// Quantities as people type them and as a field shows them.
//
// Reading is generous where the meaning is certain ("20,5", "20.5 C", "68F", "600ml", "20 fl oz",
// "9:30", "9.5 min", "2 1/3") and refuses where it is not: "1.500" means fifteen hundred to some
// and one and a half to others. A number without a unit is in the user's unit.
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
    Ambiguous, ///< could be a group or a decimal sign
    OtherUnit, ///< a unit that does not belong here
};

/// What a field of the journal is for, by its unit; a number of pieces is a count.
QuantityKind quantityKind(const formulary::FieldDescription& is);

struct ReadQuantity {
    std::optional<double> value;              ///< in the stored unit
    ReadProblem problem = ReadProblem::Empty; ///< when there is no value
};

ReadQuantity readQuantity(QuantityKind kind, const QString& text, const Wording& wording);

/// For a field: without group signs, with its unit, to the places that are useful (more of them
/// below 1, so that little is not shown as nothing); readQuantity understands it.
QString editText(QuantityKind kind, double value, const Wording& wording);

/// The unit by itself ("ml", "°F"); empty for counts and times.
QString unitText(QuantityKind kind, const Wording& wording);

} // namespace ullage::app
