// What the Book has read of its store and keeps in memory: the formulary, and the batches that were
// touched or looked at, with what their events come to.
//
// Bottles that were filled from one another are read, folded and forgotten together.
#pragma once

#include "core/ledger/can_stock.h"
#include "core/ledger/fold_together.h"
#include "core/ledger/store_port.h"
#include "core/ledger/strip_record.h"

#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// A batch that is not shown, because something in it is not what was entered or does not go
/// together: what is known of it all the same.
struct Unread {
    std::string batch;
    std::string name;
    std::string solution;
    std::size_t place = 0; ///< how many of those that are shown stand before it
    Error why;
};

class BookMemory
{
public:
    /// Bottles connected by filling, at any remove.
    struct Connected {
        std::set<std::string> batches;
        std::optional<FoldTogether> folds; ///< empty until folded
    };
    /// One batch.
    struct Kept {
        std::vector<Event> entered; ///< in order of entry
        std::shared_ptr<Connected> connected;
        /// Null once its mixing is voided.
        [[nodiscard]] const Fold* fold(const std::string& batch) const
        {
            return connected->folds ? connected->folds->of(batch) : nullptr;
        }
    };

    /// Knows nothing before read(). `store` must outlive it.
    explicit BookMemory(StorePort& store);

    /// Reads the formulary anew and forgets all batches.
    Result<void> read();
    /// Forgets the batches: what is needed is read again.
    void forget() { m_kept.clear(); }

    [[nodiscard]] const formulary::Formulary& formulary() const { return *m_formulary; }
    /// Takes over what others may name from now on.
    void define(const Entry& entry);

    /// Each as Book has it.
    Result<Batch> batch(const std::string& id, chemistry::Instant at);
    /// What a batch held then, as canStock() asks for it; empty for one that was not mixed.
    Result<std::optional<PouredBatch>> then(const std::string& id, chemistry::Instant at);
    Result<std::vector<Batch>> batches(chemistry::Instant at, bool ended,
                                       std::vector<Unread>* unread);
    Result<std::vector<Batch>> batchesSince(chemistry::Instant from, chemistry::Instant at,
                                            formulary::Role role, std::vector<Unread>* unread);
    Result<std::vector<StripReading>> strips(const std::string& solution, chemistry::Instant at,
                                             std::size_t most);
    Result<std::vector<Event>> connectedEvents(const std::string& batch);

    /// A batch with its events folded, read if it was not; without events if the store has none.
    Result<Kept*> kept(const std::string& batch);
    /// While only what comes of all that is being entered must fit: what is kept and not folded
    /// stays so.
    void foldLater(bool later) { m_later = later; }
    [[nodiscard]] bool foldsLater() const { return m_later; }
    /// What is kept of it, as it is; null if nothing is.
    [[nodiscard]] const Kept* known(const std::string& batch) const;
    /// UnknownId for a batch that is not mixed.
    Result<std::string> nameOf(const std::string& batch);
    [[nodiscard]] std::vector<Event> enteredIn(const Connected& connected) const;
    /// Folds all their events anew; on failure they stay without folds.
    Result<void> refold(Connected& connected);
    /// Connects the bottle of `event`, which is kept, with the one that it names the filling with:
    /// from then on the two are folded together.
    Result<void> connect(const Event& event);

private:
    Result<Kept*> load(const std::string& batch);
    Result<void> read(const std::string& batch, std::vector<std::string>& next);
    Result<Batch> lookedAt(const BatchState& state, chemistry::Instant at);
    void forgetConnected(const std::string& batch);

    StorePort* m_store;
    std::unique_ptr<formulary::Formulary> m_formulary; ///< folds point to it
    std::map<std::string, Kept> m_kept;
    bool m_later = false;
};

} // namespace ullage::ledger
