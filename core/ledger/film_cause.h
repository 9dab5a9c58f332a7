// What can make negatives what they are marked as, and what cannot: a fixer comes after the image
// and takes nothing of it, so it is no reason for thin negatives, however worn it was.
//
// A table of what every bath, step and figure can do at all, never how likely it is. Where people
// disagree it says that it can: a cause that is left out is never looked at.
#pragma once

#include "core/ledger/film_compare.h"

#include <array>
#include <optional>
#include <span>
#include <string_view>

namespace ullage::ledger
{

/// Why something is no cause of a mark.
enum class NoCause {
    AfterImage,   ///< comes after the image is developed and takes nothing of it
    NoFixing,     ///< has no part in dissolving what was not developed
    Later,        ///< comes when the image is made and cleared
    OtherWay,     ///< does the contrary
    Enough,       ///< more than enough of it changes nothing
    AllAlike,     ///< does the same to the whole film
    NeverSpoilt,  ///< standing does not spoil it
    PlainWater,   ///< water before the developer neither adds density nor takes it
    ExposureOnly, ///< exposure changes density and nothing else
};
inline constexpr std::array<std::string_view, 9> kNoCauseCodes{
    "after-image", "no-fixing",    "later",       "other-way",    "enough",
    "all-alike",   "never-spoilt", "plain-water", "exposure-only"};
std::string_view code(NoCause why);

/// One line of the table: a trait, of a bath or a step where it is about one.
struct CauseRow {
    FilmTrait trait{};
    std::optional<formulary::Role> role{}; ///< of a bath
    std::string_view step{};               ///< of a step: its code
    /// Empty where it can be a cause; in the order of FilmFault.
    std::array<std::optional<NoCause>, kFilmFaultCodes.size()> against{};
    std::string_view source;
};

/// The whole table: every trait, with every role or step of the program for those that have one.
std::span<const CauseRow> causeTable();

/// Why this is no cause of the mark; empty where it can be one, and for steps and baths that the
/// table does not know.
std::optional<NoCause> whyNot(FilmFault fault, const TraitFound& trait);

} // namespace ullage::ledger
