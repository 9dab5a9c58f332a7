// What is weighed out for a batch of raw chemicals: what each part takes from the cupboard, and
// what the cupboard lacks of it.
#pragma once

#include "core/cupboard/chemical_kind.h"
#include "core/ledger/book.h"
#include "core/ledger/cupboard_state.h"

#include <string>
#include <vector>

namespace ullage::cupboard
{

using ledger::NewBatch;

/// One part of the formula, held against the cupboard.
struct WeighedPart {
    chemistry::Ingredient part; ///< as scales show it (chemistry::asWeighed())
    /// Something of it stands in the cupboard.
    bool kept = false;
    /// It is not known of everything how much is left: there may be more than `here`.
    bool uncounted = false;
    double here = 0;  ///< g of it that are left for this part
    double lacks = 0; ///< g that are missing; 0 where it is not known, and of what is no weight
    std::vector<NewBatch::Take> takes; ///< in g; no more than is there
};

struct WeighOut {
    std::vector<WeighedPart> parts; ///< in the order of addition
    bool keepsChemicals = false;    ///< the cupboard has raw chemicals at all

    /// The cupboard is kept for raw chemicals and has too little of one.
    [[nodiscard]] bool isLacking() const;
    /// All that leaves the cupboard, each thing once.
    [[nodiscard]] std::vector<NewBatch::Take> takes() const;
};

/// `formula`: as it is to be weighed. `items`: what stands there (CupboardState::items); of several
/// of one chemical the first to end is emptied first. What `promised` says is gone already: of a
/// bottle that is mixed in the same deed.
WeighOut weighOut(const chemistry::Formula& formula, const std::vector<ledger::ItemHere>& items,
                  const NamesOfPart& names = {}, const std::vector<NewBatch::Take>& promised = {});

/// The form of this part's salt that the cupboard has, where it does not have the part's own; empty
/// for a part without forms, and where there is nothing of it or all that there is suits it.
std::string_view otherFormHere(const chemistry::Ingredient& part,
                               const std::vector<ledger::ItemHere>& items,
                               const NamesOfPart& names = {});

} // namespace ullage::cupboard
