// Which bottle for which bath, and which empty bottle for a new batch: plain rules on plain values.
#pragma once

#include "app/session/door.h"

#include <vector>

namespace ullage::app
{

/// Bottles of a role, those to take first in front: usable ones (verdict not Discard) before the
/// others, then those known to be clear, and among them the oldest, so that nothing grows old
/// behind a newer one. They point into `bottles`.
std::vector<const Bottle*> bottlesFor(formulary::Role role, const std::vector<Bottle>& bottles);

/// The bottles as they were then, in order of mixing: those in use now if that is within a minute
/// of now, else those that stood then, as far as they can be read.
std::vector<Bottle> bottlesAt(Door& door, chemistry::Instant at);

/// A vessel for a new batch, and how it stands to it.
struct VesselChoice {
    std::shared_ptr<const formulary::Vessel> vessel;
    const Bottle* holds = nullptr; ///< the batch in it, if any
};

/// Every vessel: empty ones first, and among them those that hold `volume`, then those too small;
/// of those alike walls of glass and PET before those that let air through, then the smallest, of
/// those too small the largest. They point into `bottles`.
std::vector<VesselChoice> vesselsFor(chemistry::Millilitres volume,
                                     const formulary::Formulary& formulary,
                                     const std::vector<Bottle>& bottles);

/// The vessels that hold nothing, in the formulary's order.
std::vector<std::shared_ptr<const formulary::Vessel>>
freeVessels(const formulary::Formulary& formulary, const std::vector<Bottle>& bottles);

/// What a new batch in this vessel would most likely be: as many quarters of a litre as it holds,
/// if that is nine tenths of it or more, else all it holds (common practice, no source).
chemistry::Millilitres usualVolume(const formulary::Vessel& vessel);

} // namespace ullage::app
