// What the Book knows and enters of the cupboard and of cans for waste.
#include "core/ledger/book.h"
#include "core/ledger/costs.h"
#include "core/ledger/line_description.h"
#include "core/ledger/statistics_reader.h"

namespace ullage::ledger
{

using chemistry::Instant;

Result<CupboardState> Book::cupboard(Instant at, std::vector<Unread>* leftOut)
{
    return cupboardState(
        *m_store, at, [&](const std::string& id, Instant then) { return m_memory.then(id, then); },
        leftOut);
}

Result<Cost> Book::cost(const std::string& batch, Instant at)
{
    const auto entered = connectedEvents(batch);
    if (!entered) {
        return tl::unexpected(entered.error());
    }
    const auto charges = readCharges(*m_store, *entered, at);
    if (!charges) {
        return tl::unexpected(charges.error());
    }
    const auto costs = costsOf(*entered, at, *charges, formulary());
    if (!costs) {
        return tl::unexpected(costs.error());
    }
    const auto found = costs->find(batch);
    if (found == costs->end()) {
        return refuse({.code = ErrorCode::UnknownId, .field = "batch", .text = batch});
    }
    return found->second;
}

Result<std::optional<Statistics>> Book::statistics(const StatisticsRequest& request)
{
    return readStatistics(*m_store, formulary(), request);
}

Result<void> Book::record(const Happening& what, Instant at)
{
    const Event event{m_newId(), {}, at, what, {}};
    const Subject subject = subjectOf(event);
    if (subject != Subject::Item && subject != Subject::Container) {
        return refuse(
            {.code = ErrorCode::NotSuitable, .field = "kind", .text = std::string(event.kind())});
    }
    return transact({.what = std::string(event.kind())}, {{event, {}}});
}

Result<std::string> Book::add(CupboardLine line)
{
    return add(std::vector<CupboardLine>{std::move(line)})
        .map([](const std::vector<std::string>& ids) { return ids.front(); });
}

Result<std::vector<std::string>> Book::add(std::vector<CupboardLine> lines)
{
    std::vector<std::string> ids;
    std::vector<Entry> entries;
    for (CupboardLine& line : lines) {
        std::visit(
            [&](auto& one) {
                if (one.id.empty()) {
                    one.id = m_newId();
                }
                ids.push_back(one.id);
                entries.push_back({std::move(one), {}});
            },
            line);
        if (auto fine = isNew(entries.back()); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    if (entries.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "id"});
    }
    const std::string what(entries.front().type());
    return transact({.what = what}, entries).map([&] { return ids; });
}

} // namespace ullage::ledger
