// The user's development times: one film in one developer at one dilution, with where it is from.
//
// There is no factor from one film, dilution or exposure index to another, so the notebook answers
// only with what was entered for just that; what it does not hold it does not know.
#pragma once

#include "core/chemistry/developing.h"
#include "core/chemistry/result.h"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::formulary
{

struct DevelopmentFigure {
    std::string id;
    std::string film;                    ///< its name, as the user writes it
    std::string developer;               ///< id of a solution
    std::string dilution;                ///< "stock", "1+1"; may be empty
    std::optional<double> exposureIndex; ///< 0.1 to 1 000 000; empty: not said
    /// One to 20 times of a fresh bath, each at its own temperature.
    std::vector<chemistry::TimeAtTemperature> times;
    std::string source; ///< its source line, see gradeOf(); may be empty
    std::string notes;
    std::string replaces;   ///< id of the figure this one stands in for, or empty
    bool withdrawn = false; ///< stands in for `replaces` by taking it out of the book

    friend bool operator==(const DevelopmentFigure&, const DevelopmentFigure&) = default;
};

/// Refuses empty id, film, developer or times (Missing; a withdrawn figure needs only its id and
/// the one it replaces), an exposure index, temperature or time out of range, more than 20 times
/// (OutOfRange), and two at one temperature (Conflict). Fields are named as the journal spells
/// them. Whether the developer exists is the Book's business.
Result<void> check(const DevelopmentFigure& figure);

/// What is looked for.
struct TimeQuery {
    std::string film;
    /// The developer's id and those of solutions it replaces or is replaced by: editing a
    /// solution's other figures does not lose its times (Formulary::family()).
    std::vector<std::string> developers;
    std::string dilution;
    std::optional<double> exposureIndex;
};

/// All figures of a book in order of entry. They never change once added.
class Notebook
{
public:
    [[nodiscard]] const std::vector<std::shared_ptr<const DevelopmentFigure>>& all() const
    {
        return m_figures;
    }
    /// Null for an unknown id.
    [[nodiscard]] std::shared_ptr<const DevelopmentFigure> figure(std::string_view id) const;
    /// Those that no later one replaces and that are not withdrawn, in order of entry.
    [[nodiscard]] std::vector<std::shared_ptr<const DevelopmentFigure>> current() const;

    /// The figure for a film, the last entered if there are several; null if there is none. Names
    /// and dilutions are compared without regard to letter case and spaces. With an exposure index
    /// a figure for just that one, else one that names none; without, one that names none, else
    /// the only one there is.
    [[nodiscard]] std::shared_ptr<const DevelopmentFigure> find(const TimeQuery& query) const;

    /// The id must be new; Book sees to that.
    void add(DevelopmentFigure figure);

private:
    std::vector<std::shared_ptr<const DevelopmentFigure>> m_figures;
};

} // namespace ullage::formulary
