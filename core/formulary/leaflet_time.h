// Which of the user's development times a load calls for: a time belongs to its film, developer,
// dilution and exposure index, and is never carried from one to another.
#pragma once

#include "core/formulary/formulary.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::formulary
{

/// A film that a time is wanted for.
struct FilmWanted {
    std::string name;                    ///< empty: not said
    std::optional<double> exposureIndex; ///< empty: not said
    friend bool operator==(const FilmWanted&, const FilmWanted&) = default;
};

/// What a leaflet time is for.
struct TimeFor {
    std::vector<FilmWanted> films; ///< of one load
    std::string developer;         ///< id of a solution
    double parts = 0;              ///< 1+n; 0 for stock
    friend bool operator==(const TimeFor&, const TimeFor&) = default;
};

/// A film's name or a dilution as names are compared: without blanks, ASCII letters in lower case;
/// names in other scripts match as they are written.
std::string bareName(std::string_view text);

/// Whether two names of a film are one: letter case and blanks do not count.
bool sameFilm(std::string_view a, std::string_view b);

/// The n of "1+n"; 0 for "stock" and for an empty text; empty where it says neither.
std::optional<double> partsOfDilution(std::string_view dilution);

/// What a film wants, by the notebook.
struct FilmTime {
    FilmWanted film;
    std::shared_ptr<const DevelopmentFigure> figure; ///< null: the notebook has none for just this
};

/// For every named film of a load the figure that exactTime() takes for it alone; a film wanted
/// twice at one exposure index stands there once. In their order.
std::vector<FilmTime> filmTimes(const Formulary& formulary, const TimeFor& wanted);

/// The figure entered for just this: this film, this developer (or one that it replaces or is
/// replaced by), this dilution, and this exposure index or none named. A dilution that the
/// developer's own name ends with counts as undiluted. Of several films every named one must have
/// one, all with the same times. The last entered where there are several; null where there is none
/// or no film is named.
std::shared_ptr<const DevelopmentFigure> exactTime(const Formulary& formulary,
                                                   const TimeFor& wanted);

/// Whether a time typed or taken for `before` may stand for `now`: nothing that was said has become
/// something else. Naming a film, its exposure index or the developer for the first time changes
/// nothing.
bool stillFor(const TimeFor& before, const TimeFor& now);

/// Solutions that have a time for any of these films at any dilution; as they were entered, no id
/// twice.
std::vector<std::string> developersWithTimes(const Formulary& formulary,
                                             const std::vector<FilmWanted>& films);

/// Names of the films that have a time, each once as last written, in alphabetical order.
std::vector<std::string> filmsWithTimes(const Formulary& formulary);

} // namespace ullage::formulary
