// What is said of a constant of the chemistry beside its figure.
#pragma once

#include <QString>

#include <string_view>

namespace ullage::app
{

/// Its unit in the user's language: "cm³ a day".
QString constantUnit(std::string_view unit);
/// Its source. What is told in words is in the user's language; publications are named as they are.
QString constantSource(std::string_view source);

} // namespace ullage::app
