#include "app/sheet/sheet_known.h"

#include "core/ledger/undo_history.h"

#include <map>
#include <memory>
#include <set>

namespace ullage::app
{

namespace
{

// Of each batch those of its events that are undone, read once. What cannot be read is none: the
// import itself says so.
class UndoneEvents
{
public:
    explicit UndoneEvents(store::SqlStore& store) : m_store(&store) {}

    bool has(const std::string& id)
    {
        const auto event = m_store->event(id);
        return event && *event && of((*event)->batch).contains(id);
    }

private:
    const std::set<std::string>& of(const std::string& batch)
    {
        const auto [known, isNew] = m_undone.try_emplace(batch);
        const auto entered =
            isNew ? m_store->eventsOf(batch) : Result<std::vector<ledger::Event>>();
        if (isNew && entered) {
            const auto taken = ledger::takenBack(*entered);
            for (const ledger::Event& one : *entered) {
                const auto* voided = std::get_if<ledger::Voided>(&one.what);
                if (voided && voided->why == ledger::kUndoneReason && !taken.contains(one.id)) {
                    known->second.insert(voided->voids);
                }
            }
        }
        return known->second;
    }

    store::SqlStore* m_store;
    std::map<std::string, std::set<std::string>> m_undone;
};

} // namespace

Result<SheetKnown> knownIn(ledger::Book& book, store::SqlStore& store)
{
    const auto all = store.batches(book.now(), true);
    if (!all) {
        return tl::unexpected(all.error());
    }
    std::vector<KnownBottle> bottles;
    for (const ledger::BatchState& one : *all) {
        bottles.push_back({one.id, QString::fromStdString(one.name), one.mixedAt, one.endedAt});
    }
    const auto undone = std::make_shared<UndoneEvents>(store);
    return SheetKnown{book.formulary(), std::move(bottles), book.now(),
                      [undone](const std::string& event) { return undone->has(event); }};
}

} // namespace ullage::app
