// What no line of an import by itself can show: a film may stand before its run, a mark before its
// film, a top-up before its source, an event before the one that makes it possible.
//
// One batch is judged after another, so that memory holds one of them at a time.
#pragma once

#include "core/ledger/cupboard_check.h"
#include "core/ledger/entry_check.h"
#include "core/ledger/import_findings.h"

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// What an import brought.
struct Brought {
    /// A line that names a film or a run which was not there yet.
    struct Waiting {
        Entry entry;
        int line;
        const formulary::FieldDescription* field;
        std::string id;
    };
    /// Lines that name another batch.
    struct NamesBatch {
        Entry first;
        int line;
        const formulary::FieldDescription* field;
        int count;
    };
    std::int64_t had = 0;               ///< number of the last entry before
    bool pairs = false;                 ///< fillings have to stand on both sides
    std::map<std::string, int> batches; ///< touched → events brought
    std::vector<Waiting> waiting;
    std::map<std::string, NamesBatch> named; ///< batches named by other batches' events
    CupboardTouched cupboard;                ///< things that events were about
    std::optional<int> withdrewVessel;       ///< line of the last that withdraws one
};

class ImportWhole
{
public:
    /// Asked now and then with the number of batches judged and of all to be judged; false ends the
    /// judging with Cancelled.
    using GoOn = std::function<bool(std::size_t done, std::size_t all)>;

    /// What was brought stands in the store, in the transaction under way. All must outlive it.
    ImportWhole(StorePort& store, const formulary::Formulary& formulary, const EntryCheck& check,
                const Brought& brought, ImportFindings& findings);

    /// Adds to the findings and puts where each batch stands. Fails only when the store does.
    Result<void> judge(const GoOn& goOn);
    /// Bottles that may have been entered twice, once here and once there; but for those that begin
    /// on a line of `twoBottles`. After judge().
    Result<std::vector<LikelySame>> likelySame(const std::set<int>& twoBottles);

private:
    Result<void> judgeBatch(const std::string& id, int events);
    Result<void> judgePartners();
    Result<void> judgeReferences();
    Result<void> judgeVessels();
    Result<void> judgeCupboard();
    Result<std::vector<Event>> withPartners(const std::string& id,
                                            const std::vector<Event>& entered);
    Result<void> keepState(const std::string& id, const Batch* batch);

    StorePort* m_store;
    const formulary::Formulary* m_formulary;
    const EntryCheck* m_check;
    const Brought* m_brought;
    ImportFindings* m_findings;
    std::set<std::string> m_newBatches;
    std::set<std::string> m_partners; ///< of batches touched, filled from them or into them
    std::set<std::string> m_unjudged; ///< batches that came to nothing, each told once
};

} // namespace ullage::ledger
