// Enters the entries of one transaction, each checked against those before it; then what only all
// of them show, and where the batches touched stand now.
#pragma once

#include "core/ledger/book_memory.h"
#include "core/ledger/cupboard_check.h"
#include "core/ledger/entry_check.h"

#include <cstdint>
#include <set>
#include <string>
#include <vector>

namespace ullage::ledger
{

class Entering
{
public:
    /// All must outlive it. `newest` is the number of the store's last entry before.
    Entering(StorePort& store, BookMemory& memory, const EntryCheck& check, std::int64_t newest);

    /// Puts an entry under an action. What it means for its batch is in the memory at once: after a
    /// refusal that has to be read again.
    Result<void> enter(const Entry& entry, std::int64_t action);
    /// After entries were entered while the memory folds later: whether what comes of all of them
    /// fits.
    Result<void> foldWhole(const std::vector<Entry>& entries);
    /// What goes from one bottle into another must be entered on both sides, no batch in use
    /// stands in a vessel that was withdrawn, and what was taken from the cupboard or poured into
    /// a can goes together (goTogether()). Puts where each batch that was touched, or is
    /// connected with one, stands now.
    Result<void> finish();

private:
    Result<void> enterEvent(Event& event);
    Result<void> enterVoiding(Event& event);
    Result<void> checkDonor(const Event& event);
    Result<void> checkPairs();
    Result<void> checkVessels();
    Result<void> checkCupboard();
    Result<void> voidOfNoBatch(Event& event);
    Result<void> putStates();
    Result<void> putState(const std::string& id, const Fold* fold);
    void keep(BookMemory::Kept& kept, Event& event);

    StorePort* m_store;
    BookMemory* m_memory;
    const EntryCheck* m_check;
    std::int64_t m_before;           ///< that of the last entry before the transaction
    std::int64_t m_last;             ///< number of the entry before the next one
    std::set<std::string> m_touched; ///< batches changed
    bool m_withdrewVessel = false;
    CupboardTouched m_cupboard;  ///< things that events were about
    std::string m_voided;        ///< the last event that was taken back
    std::vector<Event> m_halves; ///< of fillings
};

} // namespace ullage::ledger
