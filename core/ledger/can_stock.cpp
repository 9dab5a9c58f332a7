#include "core/ledger/can_stock.h"

#include "core/ledger/batch.h"

#include <algorithm>
#include <map>

namespace ullage::ledger
{

using chemistry::Millilitres;

namespace
{

constexpr double kCanSlack = 1e-9;

struct CanFolding {
    const Container& can;
    const BatchThen& batchThen;
    /// Of a batch that was discarded into this can: what was poured in by name, not yet counted as
    /// a part of it.
    std::map<std::string, double> namedOf;
    CanStock stock;

    Result<void> pour(const Event& event, const std::string& batch, Millilitres volume,
                      std::optional<double> silver)
    {
        const Millilitres room = can.capacity - stock.volume;
        if (volume.value() > room.value() + kCanSlack) {
            return refuse({.code = ErrorCode::TooMuch,
                           .field = "volume_ml",
                           .text = event.id,
                           .allowed = can.name,
                           .number = volume.value(),
                           .low = 0,
                           .high = room.value(),
                           .unit = "ml",
                           .subject = can.name});
        }
        if (volume.value() <= kCanSlack) {
            return {};
        }
        stock.volume += volume;
        stock.silver += silver.value_or(0);
        stock.silverAtLeast = stock.silverAtLeast || !silver;
        stock.poured.push_back({event.id, event.at, batch, volume, silver});
        if (!stock.fullAt && stock.filled(can) >= kFullShare) {
            stock.fullAt = event.at;
        }
        return {};
    }

    Result<void> discarded(const Event& event)
    {
        const auto batch = batchThen(event.batch, event.at);
        if (!batch) {
            return tl::unexpected(batch.error());
        }
        if (!*batch) {
            return {}; // taken back with its mixing
        }
        const Millilitres rest(std::max(0.0, (*batch)->volume.value() - namedOf[event.batch]));
        return pour(event, event.batch, rest, rest.value() / 1000 * (*batch)->silver.value());
    }

    Result<void> poured(const Event& event, const PouredIn& what)
    {
        std::optional<double> silver;
        if (!what.from.empty()) {
            const auto batch = batchThen(what.from, event.at);
            // The can stands, whatever happened to the book's entries about the bottle.
            if (!batch && batch.error().code != ErrorCode::NotAsEntered) {
                return tl::unexpected(batch.error());
            }
            if (batch && *batch) {
                silver = what.volume.value() / 1000 * (*batch)->silver.value();
            }
        }
        return pour(event, what.from, what.volume, silver);
    }

    void handed(const Event& event, const HandedOver& what)
    {
        const Millilitres volume = what.volume.value_or(stock.volume);
        const double share = stock.volume.value() <= 0 ? 0 : std::min(1.0, volume / stock.volume);
        stock.handed.push_back(
            {event.id, event.at, what.to, volume, stock.silver * share, what.document});
        stock.silver -= stock.silver * share;
        stock.volume -= std::min(volume, stock.volume);
        if (stock.volume.value() <= kCanSlack) {
            stock.volume = Millilitres(0);
            stock.silverAtLeast = false;
        }
        if (stock.filled(can) < kFullShare) {
            stock.fullAt.reset();
        }
    }
};

} // namespace

double CanStock::filled(const Container& can) const { return volume / can.capacity; }

Result<CanStock> canStock(const Container& can, const std::vector<Event>& entered,
                          const BatchThen& batchThen, chemistry::Instant until)
{
    const auto gone = takenBack(entered);
    std::vector<const Event*> stood;
    std::map<std::string, chemistry::Instant> ends;
    for (const Event& event : entered) {
        if (gone.contains(event.id) || event.at > until) {
            continue;
        }
        stood.push_back(&event);
        if (std::holds_alternative<Discarded>(event.what)) {
            ends[event.batch] = event.at;
        }
    }
    std::stable_sort(stood.begin(), stood.end(),
                     [](const Event* a, const Event* b) { return a->at < b->at; });
    CanFolding folding{can, batchThen, {}, {}};
    for (const Event* event : stood) {
        const auto* poured = std::get_if<PouredIn>(&event->what);
        const auto end = poured ? ends.find(poured->from) : ends.end();
        if (end != ends.end() && event->at >= end->second) {
            folding.namedOf[poured->from] += poured->volume.value();
        }
    }
    for (const Event* event : stood) {
        Result<void> fine;
        if (std::holds_alternative<Discarded>(event->what)) {
            fine = folding.discarded(*event);
        } else if (const auto* poured = std::get_if<PouredIn>(&event->what)) {
            fine = folding.poured(*event, *poured);
        } else if (const auto* handed = std::get_if<HandedOver>(&event->what)) {
            folding.handed(*event, *handed);
        }
        if (!fine) {
            return tl::unexpected(fine.error());
        }
    }
    return std::move(folding.stock);
}

CanTotals totalsBetween(const CanStock& stock, chemistry::Instant from, chemistry::Instant until)
{
    CanTotals totals;
    for (const PouredDone& poured : stock.poured) {
        if (poured.at >= from && poured.at < until) {
            totals.poured += poured.volume;
        }
    }
    for (const HandedOverDone& handed : stock.handed) {
        if (handed.at >= from && handed.at < until) {
            totals.handed += handed.volume;
            totals.silverHanded += handed.silver;
        }
    }
    return totals;
}

// What is handed over leaves less in the can, but of everything, until it is empty.
std::vector<std::string> batchesInside(const CanStock& stock)
{
    std::vector<std::string> inside;
    double volume = 0;
    auto handed = stock.handed.begin();
    const auto handOver = [&](chemistry::Instant until) {
        for (; handed != stock.handed.end() && handed->at < until; ++handed) {
            volume -= handed->volume.value();
            if (volume <= kCanSlack) {
                volume = 0;
                inside.clear();
            }
        }
    };
    for (const PouredDone& poured : stock.poured) {
        handOver(poured.at);
        volume += poured.volume.value();
        if (!poured.batch.empty() &&
            std::find(inside.begin(), inside.end(), poured.batch) == inside.end()) {
            inside.push_back(poured.batch);
        }
    }
    handOver(chemistry::Instant::max());
    return inside;
}

Waste wasteOf(formulary::Role role)
{
    switch (role) {
    case formulary::Role::Developer:
        return Waste::Developer;
    case formulary::Role::Fixer:
        return Waste::Fixer;
    case formulary::Role::Stop:
        return Waste::Stop;
    case formulary::Role::WashAid:
    case formulary::Role::WettingAgent:
        return Waste::Wash;
    case formulary::Role::Other:
        break;
    }
    return Waste::Other;
}

namespace
{

bool contains(const formulary::Solution& solution, std::string_view word)
{
    return std::any_of(
        solution.chemicals.begin(), solution.chemicals.end(),
        [&](const std::string& name) { return name.find(word) != std::string::npos; });
}

// Developers hold sulfite and are alkaline, fixers hold thiosulfate, stop baths are acid. A fixer's
// own acid stands beside its thiosulfate without harm, and is not counted (common
// practice, no source).
struct Nature {
    bool acid = false;
    bool alkaline = false;
    bool freesSulfurDioxide = false; ///< with acid
    bool freesAmmonia = false;       ///< with alkali
};

Nature natureOf(const formulary::Solution& solution)
{
    const bool fixer = solution.role == formulary::Role::Fixer;
    const bool developer = solution.role == formulary::Role::Developer;
    Nature is;
    is.acid = solution.role == formulary::Role::Stop;
    is.alkaline = developer || (fixer && solution.fixerKind == formulary::FixerKind::Alkaline);
    is.freesSulfurDioxide =
        fixer || developer || contains(solution, "sulfite") || contains(solution, "thiosulfate");
    is.freesAmmonia = contains(solution, "ammonium");
    return is;
}

Nature natureOf(Waste waste)
{
    Nature is;
    is.acid = waste == Waste::Stop;
    is.alkaline = waste == Waste::Developer;
    is.freesSulfurDioxide = waste == Waste::Developer || waste == Waste::Fixer;
    return is;
}

} // namespace

std::vector<PouringDoubt> pouringDoubts(const formulary::Solution& solution, const Container& can,
                                        const std::vector<const formulary::Solution*>& inside)
{
    std::vector<PouringDoubt> doubts;
    if (wasteOf(solution.role) != can.holds) {
        doubts.push_back(PouringDoubt::OtherKind);
    }
    std::vector<Nature> others{natureOf(can.holds)};
    for (const auto* other : inside) {
        others.push_back(natureOf(*other));
    }
    const Nature one = natureOf(solution);
    const auto meets = [&](auto what, auto with) {
        return std::any_of(others.begin(), others.end(), [&](const Nature& other) {
            return (one.*what && other.*with) || (one.*with && other.*what);
        });
    };
    if (meets(&Nature::acid, &Nature::freesSulfurDioxide)) {
        doubts.push_back(PouringDoubt::SulfurDioxide);
    }
    if (meets(&Nature::alkaline, &Nature::freesAmmonia)) {
        doubts.push_back(PouringDoubt::Ammonia);
    }
    return doubts;
}

} // namespace ullage::ledger
