// Mixing: how much water to start with, how warm, and when to look whether it has dissolved.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

namespace ullage::chemistry
{

/// Volume that a dissolved powder adds, by its main constituents; sources: kSulfiteDisplacement,
/// kThiosulfateDisplacement. Grams 0 or more.
Millilitres displacement(double gramsSulfite, double gramsThiosulfateCrystals);
/// Likewise for anhydrous sodium thiosulfate: as its crystals, less the water that they bring along
/// (computed from kThiosulfateDisplacement and the molar masses).
Millilitres anhydrousThiosulfate(double grams);

struct StartVolume {
    Millilitres advised;
    Millilitres least;       ///< half of the final volume
    Millilitres most;        ///< three quarters of it, or less if the powder would not fit
    bool halfBottle = false; ///< advised because the bottle is mixed in, half full
    bool tight = false;      ///< not even the least leaves room; advised is all that fits
};

/// Water to start with for `makes` mL in a vessel of `capacity`, when the powder displaces
/// `displaced`: ½ to ¾ of the final volume, and never more than the vessel less displacement and
/// kMixingRoom. A vessel that the batch all but fills is the bottle itself and is started half
/// full, to be shaken. Not rounded. Refuses a vessel that cannot hold the batch and a batch of
/// nothing (TooMuch), and a powder that leaves no room for water (NotEnough). Sources: kStartShare,
/// kMixingRoom, kHalfBottle.
Result<StartVolume> startVolume(Millilitres makes, Millilitres capacity, Millilitres displaced);

/// Water to pour a liquid into, when `makes` takes so much of it: most of the water that is added
/// in all (kLiquidStart), never more than the vessel has room for beside the liquid. Not rounded.
/// Refuses what does not go into the vessel, a batch of nothing, and a liquid that leaves no room
/// for water (TooMuch).
Result<StartVolume> startForLiquid(Millilitres makes, Millilitres capacity, Millilitres liquid);

/// The next time to shake or stir and look, every kDissolvingCheck from mixing on; after `now`.
Instant nextDissolvingCheck(Instant mixed, Instant now);

} // namespace ullage::chemistry
