// What is planned for: how far ahead, and which film is thought to come besides the known work.
#pragma once

#include <optional>

namespace ullage::cupboard
{

/// How far ahead it is planned what to mix and to buy where nobody says for how long: on paper, in
/// calendars and in tables. Half a year, a convention.
inline constexpr int kWeeksAhead = 26;

/// What film is planned for besides the known work.
struct Beside {
    enum class Kind {
        Nothing,
        Usual, ///< what the last half year brought, once that is known
        Given, ///< `filmsPerDay`
    };
    Kind kind = Kind::Usual;
    double filmsPerDay = 0;
    friend bool operator==(const Beside&, const Beside&) = default;
};

/// What is planned for: some weeks, or so many films at once in place of them.
struct PlanFor {
    int weeks = 8;
    std::optional<double> films;
    Beside beside; ///< of no account where it is so many films
    friend bool operator==(const PlanFor&, const PlanFor&) = default;
};

} // namespace ullage::cupboard
