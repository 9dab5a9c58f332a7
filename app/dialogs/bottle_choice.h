// Which bottle for which bath, and which empty bottle for a new batch: plain rules on plain values.
#pragma once

#include "app/session/session.h"

#include <vector>

namespace ullage::app
{

/// Bottles in use of a role, those to take first in front: usable ones (verdict not Discard) before
/// the others, and among them the oldest, so that nothing grows old behind a newer one.
std::vector<const Bottle*> bottlesFor(formulary::Role role, const std::vector<Bottle>& bottles);

/// A vessel for a new batch, and how it stands to it.
struct VesselChoice {
    std::shared_ptr<const formulary::Vessel> vessel;
    const Bottle* holds = nullptr; ///< the batch in it, if any
};

/// Every vessel: empty ones first, and among them those that hold `volume`, then those too small;
/// of those alike walls that keep air out before walls that let it through, then the smallest.
std::vector<VesselChoice> vesselsFor(chemistry::Millilitres volume,
                                     const formulary::Formulary& formulary,
                                     const std::vector<Bottle>& bottles);

/// What a new batch of this solution would most likely be: the volume that fits the vessel, a whole
/// litre or half litre where one is near, else all the vessel holds.
chemistry::Millilitres usualVolume(const formulary::Vessel& vessel);

} // namespace ullage::app
