// What a batch would become if it were mixed so: the same fold and verdict as for a real one.
#pragma once

#include "core/chemistry/developing.h"
#include "core/ledger/verdict.h"

#include <optional>
#include <span>

namespace ullage::ledger
{

/// What is known of a bottle that is not freshly mixed; see Mixed.
struct KnownBefore {
    bool historyUnknown = false;
    std::optional<chemistry::Instant> mixedOn;
    std::optional<chemistry::FilmsPerLitre> assumed;
    std::optional<chemistry::Films> filmsBefore;
};

struct MixPreview {
    bool atLeast = false; ///< its history is not known: what it did is the least, what is left most
    std::optional<chemistry::Films> films; ///< still to do; empty without a capacity or an estimate
    double firstFactor = 1;                ///< of wear on the first load's time
    std::optional<double> tenthFactor;     ///< on the tenth's, if it can do ten and is new
    std::optional<chemistry::Seconds> firstTime;  ///< at 20 °C, where the maker's time is known
    std::optional<chemistry::Seconds> tenthTime;  ///< likewise
    std::optional<chemistry::Instant> keepsUntil; ///< as published, in a full bottle
    std::optional<chemistry::Instant> discardBy;  ///< standing in this bottle, untouched
    std::optional<chemistry::Days> inThisBottle;  ///< from mixing to discardBy

    /// The bottle takes more than a tenth off the published keeping time (a convention).
    [[nodiscard]] bool bottleCostsTime() const;
};

/// `pairs`: the film maker's times for this developer, if known. Refuses what the Book would refuse
/// of the mixing alone: a volume out of its field's range (OutOfRange) or over the capacity
/// (TooMuch). Whether the vessel is free is not looked at.
Result<MixPreview> previewMix(const formulary::Solution& solution, const formulary::Vessel& vessel,
                              chemistry::Millilitres volume, chemistry::Instant at,
                              std::span<const chemistry::TimeAtTemperature> pairs = {},
                              const KnownBefore& known = {});

} // namespace ullage::ledger
