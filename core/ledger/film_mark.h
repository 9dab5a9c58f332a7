// What is wrong with a film's negatives, as somebody found it on the drying line.
//
// A mark is a line of its own, like an event: it is never edited. Taking one back is another line
// that names it, and that one can be taken back in turn, so that undo and redo work as elsewhere.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_set>
#include <vector>

namespace ullage::ledger
{

enum class FilmFault { Thin, Dense, Stained, NotClear, Uneven };
inline constexpr std::array<std::string_view, 5> kFilmFaultCodes{"thin", "dense", "stained",
                                                                 "not-clear", "uneven"};
std::string_view code(FilmFault fault);
std::optional<FilmFault> filmFaultFromCode(std::string_view code);

struct FilmMark {
    std::string id;
    std::string film; ///< id of a film
    chemistry::Instant at;
    std::optional<FilmFault> fault; ///< empty for one that takes another back
    std::string takesBack;          ///< id of a mark on the same film, or empty
    std::string note;               ///< what was seen, or why it is taken back
    std::string by;                 ///< who, or empty
};

/// Refuses an empty id or film (Missing), and both (Conflict) or neither (Missing) of fault and
/// takesBack; fields are named as the journal spells them. Whether film and mark exist is the
/// Book's business.
Result<void> check(const FilmMark& mark);

/// Ids of the marks that were taken back; `entered` in order of entry. One that takes back and was
/// itself taken back takes nothing back.
std::unordered_set<std::string> takenBack(const std::vector<FilmMark>& entered);

/// The marks that stand, in order of entry.
std::vector<FilmMark> standingMarks(const std::vector<FilmMark>& entered);

} // namespace ullage::ledger
