// Whether a vessel may be withdrawn: not while something stands in it.
#pragma once

#include "core/formulary/formulary.h"
#include "core/ledger/batch.h"
#include "core/ledger/store_port.h"

#include <set>
#include <string>

namespace ullage::ledger
{

// Forms of what is allowed where a vessel is refused.
inline constexpr const char* kEmptyVesselForm = "a vessel in which nothing stands";
inline constexpr const char* kVesselThereForm = "a vessel that was not withdrawn";

/// NotSuitable for a batch in use that stands in a vessel which was withdrawn: `vessel` names it,
/// the subject is the batch.
Result<void> standsInVessel(const Batch& batch, const formulary::Formulary& formulary);

/// The same of every batch in use, by the store; but `withdrawn` is the field, as it is the
/// withdrawal that is refused.
Result<void> vesselsAreEmpty(StorePort& store, const formulary::Formulary& formulary);

/// Ids of vessels in which batches in use stand, by the store, but for the batches in `without`.
Result<std::set<std::string>> vesselsInUse(StorePort& store, const std::set<std::string>& without);

} // namespace ullage::ledger
