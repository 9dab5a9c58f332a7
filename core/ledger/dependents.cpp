#include "core/ledger/dependents.h"

#include "core/ledger/references.h"

#include <algorithm>
#include <utility>

namespace ullage::ledger
{

namespace
{

constexpr const char* kBatch = "batch ";
constexpr const char* kRun = "run ";

// Whether the book gives a name of a batch or a run; other names go with an entry's own id.
Result<bool> inBook(StorePort& store, const std::string& name)
{
    if (name.starts_with(kBatch)) {
        return store.batch(name.substr(std::string_view(kBatch).size()))
            .map([](const std::optional<BatchState>& found) { return found.has_value(); });
    }
    return name.starts_with(kRun) ? store.hasRun(name.substr(std::string_view(kRun).size()))
                                  : Result<bool>(false);
}

} // namespace

std::vector<std::string> namesGiven(const Entry& entry)
{
    std::vector<std::string> names{std::string(entry.type()) + ' ' + entry.id()};
    if (const Event* event = entry.event()) {
        const auto* processed = std::get_if<Processed>(&event->what);
        if (std::holds_alternative<Mixed>(event->what)) {
            names.push_back(kBatch + event->batch);
        } else if (processed && !processed->run.empty()) {
            names.push_back(kRun + processed->run);
        }
    }
    return names;
}

std::vector<std::string> namesNeeded(const Entry& entry)
{
    using formulary::Refers;
    std::vector<std::string> names;
    const bool mixing = entry.event() && std::holds_alternative<Mixed>(entry.event()->what);
    eachReference(entry, [&](const formulary::FieldDescription& is, const std::string& id) {
        if (is.refers == Refers::Run) {
            names.push_back(kRun + id);
        } else if (is.refers == Refers::Same) {
            names.push_back(std::string(entry.type()) + ' ' + id);
        } else if (is.refers == Refers::Batch && !(mixing && is.name == "batch")) {
            names.push_back(kBatch + id);
        }
        for (const std::string_view type : typesNamed(is.refers)) {
            names.push_back(std::string(type) + ' ' + id);
        }
    });
    return names;
}

Result<std::set<int>> withDependents(std::set<int> leftOut, StorePort& store,
                                     const ThroughJournal& journal)
{
    std::set<std::string> lost;
    const auto lose = [&](const Entry& entry) -> Result<void> {
        // The book has an entry of this id, be it another one: whoever needs it takes that.
        const auto known = store.sameContent(entry);
        if (!known) {
            return tl::unexpected(known.error());
        }
        if (*known) {
            return {};
        }
        for (std::string& name : namesGiven(entry)) {
            const auto has = inBook(store, name);
            if (!has) {
                return tl::unexpected(has.error());
            }
            if (!*has) {
                lost.insert(std::move(name));
            }
        }
        return {};
    };
    if (leftOut.empty()) {
        return leftOut;
    }
    auto fine = journal([&](const Entry& entry, int line) {
        return leftOut.contains(line) ? lose(entry) : Result<void>{};
    });
    while (fine && !lost.empty()) {
        fine = journal([&](const Entry& entry, int line) -> Result<void> {
            if (!leftOut.contains(line)) {
                for (const std::string& name : namesGiven(entry)) {
                    lost.erase(name);
                }
            }
            return {};
        });
        if (!fine) {
            break;
        }
        const std::set<std::string> gone = std::exchange(lost, {});
        fine = journal([&](const Entry& entry, int line) -> Result<void> {
            const auto needed = namesNeeded(entry);
            const bool waits =
                !leftOut.contains(line) &&
                std::any_of(needed.begin(), needed.end(),
                            [&](const std::string& name) { return gone.contains(name); });
            if (!waits) {
                return {};
            }
            leftOut.insert(line);
            return lose(entry);
        });
    }
    return fine ? Result<std::set<int>>(std::move(leftOut)) : tl::unexpected(fine.error());
}

} // namespace ullage::ledger
