#include "core/cupboard/needs.h"

#include "core/chemistry/films.h"
#include "core/chemistry/keeping.h"

#include <algorithm>
#include <limits>

namespace ullage::cupboard
{

using chemistry::Films;
using chemistry::Instant;
using chemistry::kFilmSlack;
using chemistry::Millilitres;

namespace
{

constexpr double kEndless = std::numeric_limits<double>::infinity();

/// A bottle as the walk goes on.
struct Live {
    std::size_t stretch;
    double left; ///< films
    Instant until;
};

struct Load {
    Instant at;
    double films;
};

/// The walk of one solution.
class Walk
{
public:
    Walk(const PlanRequest& request, const PlannedSolution& solution)
        : m_request(request), m_solution(solution)
    {
        m_plan.solution = solution.id;
        for (const PlannedBottle& bottle : request.bottles) {
            if (bottle.solution == solution.id) {
                stand(bottle);
            }
        }
        for (const PlannedPacket& packet : request.packets) {
            if (packet.solution == solution.id) {
                m_packets.push_back(packet);
            }
        }
    }

    void go(const std::vector<Load>& loads)
    {
        for (const Load& load : loads) {
            m_plan.needed += Films(load.films);
            double rest = load.films;
            while (rest > kFilmSlack) {
                const double film = std::min(1.0, rest);
                serve(load.at, film);
                rest -= film;
            }
        }
        for (const Live& live : m_live) {
            end(live);
        }
    }

    [[nodiscard]] const SolutionPlan& plan() const { return m_plan; }
    /// How many were bought, and by when the first.
    [[nodiscard]] const std::optional<ToBuy>& toBuy() const { return m_toBuy; }
    [[nodiscard]] std::optional<Instant> firstMissing() const { return m_firstMissing; }

private:
    void stand(const PlannedBottle& bottle)
    {
        const double left = bottle.filmsLeft ? bottle.filmsLeft->value() : kEndless;
        const Instant until = bottle.discardBy.value_or(Instant::max());
        if (until < m_request.now || left < kLeastFilm.value() - kFilmSlack) {
            return;
        }
        m_live.push_back({m_plan.stretches.size(), left, until});
        m_plan.stretches.push_back({.kind = StretchKind::Stands,
                                    .of = bottle.batch,
                                    .from = m_request.now,
                                    .to = m_request.until});
    }

    [[nodiscard]] static bool serves(const Live& live, Instant at)
    {
        return live.until >= at && live.left >= kLeastFilm.value() - kFilmSlack;
    }

    // Of those that can, the one that ends first.
    [[nodiscard]] Live* serving(Instant at)
    {
        Live* best = nullptr;
        for (Live& live : m_live) {
            if (serves(live, at) && (!best || live.until < best->until)) {
                best = &live;
            }
        }
        return best;
    }

    void serve(Instant at, double film)
    {
        Live* live = serving(at);
        const bool fromShelf = live && m_plan.stretches[live->stretch].kind == StretchKind::Stands;
        if (!fromShelf && !m_plan.runsOutAt) {
            m_plan.runsOutAt = at;
        }
        if (!live) {
            live = mixed(at) ? serving(at) : nullptr;
        }
        if (!live) {
            buy(at);
            live = serving(at);
        }
        if (!live) { // it keeps or does less than a film takes: said as missing, bought once
            m_plan.missing += Films(film);
            m_firstMissing = m_firstMissing.value_or(at);
            return;
        }
        Stretch& stretch = m_plan.stretches[live->stretch];
        stretch.films += Films(film);
        live->left -= film;
        stretch.to = at;
        if (stretch.kind == StretchKind::Missing) {
            m_plan.missing += Films(film);
            m_firstMissing = m_firstMissing.value_or(at);
        }
    }

    // What would not keep until then is mixed when it is needed.
    [[nodiscard]] Instant ahead(Instant at) const
    {
        const Instant before = std::max(m_request.now, at - kAhead);
        return endOf(before) < at ? at : before;
    }

    [[nodiscard]] Instant endOf(Instant mixed) const
    {
        return m_solution.keeps ? chemistry::addKeepingTime(mixed, *m_solution.keeps)
                                : Instant::max();
    }

    [[nodiscard]] double filmsIn(Millilitres volume) const
    {
        if (m_solution.oneShot) {
            return volume / *m_solution.oneShot;
        }
        return m_solution.capacity ? (*m_solution.capacity * chemistry::litres(volume)).value()
                                   : kEndless;
    }

    void add(StretchKind kind, const std::string& of, Instant from, Millilitres volume)
    {
        m_live.push_back({m_plan.stretches.size(), filmsIn(volume), endOf(from)});
        m_plan.stretches.push_back({.kind = kind,
                                    .of = of,
                                    .from = from,
                                    .to = m_request.until,
                                    .films = {},
                                    .volume = volume});
    }

    [[nodiscard]] Millilitres volumeFrom(const PlannedPacket& packet) const
    {
        const Millilitres left = packet.makes * packet.share;
        return packet.liquid ? std::min(m_solution.usual, left) : left;
    }

    // From the packet that ends first; opened liquids end sooner, so they come first by themselves.
    bool mixed(Instant at)
    {
        const Instant when = ahead(at);
        PlannedPacket* best = nullptr;
        for (PlannedPacket& packet : m_packets) {
            const bool usable = filmsIn(volumeFrom(packet)) >= kLeastFilm.value() &&
                                packet.until.value_or(Instant::max()) >= when;
            if (usable && (!best || packet.until.value_or(Instant::max()) <
                                        best->until.value_or(Instant::max()))) {
                best = &packet;
            }
        }
        if (!best) {
            return false;
        }
        const Millilitres volume = volumeFrom(*best);
        if (best->liquid) {
            best->share -= volume / best->makes;
            if (!best->opened && best->keepsOpened) {
                best->until = std::min(best->until.value_or(Instant::max()),
                                       chemistry::addDays(when, *best->keepsOpened));
            }
            best->opened = true;
        } else {
            best->share = 0;
        }
        add(StretchKind::Mix, best->item, when, volume);
        return true;
    }

    // What is missing is planned with as if it were bought, so that it is known how much of it.
    void buy(Instant at)
    {
        if (!m_toBuy) {
            ToBuy first{.solution = m_solution.id, .makes = m_solution.usual, .by = ahead(at)};
            for (const Bought& bought : m_request.bought) {
                if (bought.solution == m_solution.id) {
                    first.makes = bought.makes;
                    first.each = bought.cost;
                    first.currency = bought.currency;
                }
            }
            if (const double films = filmsIn(first.makes); films < kEndless) {
                first.does = Films(films);
            }
            m_toBuy = std::move(first);
        }
        // What one packet makes is mixed in bottles of the usual volume.
        if (m_boughtLeft.value() <= kFilmSlack) {
            ++m_toBuy->packets;
            m_boughtLeft = m_toBuy->makes;
        }
        const Millilitres volume =
            std::min(m_boughtLeft, std::max(m_solution.usual, Millilitres(1)));
        m_boughtLeft -= volume;
        add(StretchKind::Missing, {}, ahead(at), volume);
    }

    void end(const Live& live)
    {
        Stretch& stretch = m_plan.stretches[live.stretch];
        const bool spent = live.left < kLeastFilm.value() - kFilmSlack;
        if (spent) {
            return; // with the film that spent it
        }
        stretch.to = std::min(m_request.until, live.until);
        stretch.expires = live.until < m_request.until;
        if (stretch.expires && live.left != kEndless) {
            stretch.unused = Films(live.left);
        }
    }

    const PlanRequest& m_request;
    const PlannedSolution& m_solution;
    std::vector<PlannedPacket> m_packets;
    std::vector<Live> m_live;
    SolutionPlan m_plan;
    std::optional<ToBuy> m_toBuy;
    Millilitres m_boughtLeft;
    std::optional<Instant> m_firstMissing;
};

bool looksAt(const PlanRequest& request, const PlannedWork& work)
{
    return work.at >= request.now && work.at <= request.until && work.films.value() > kFilmSlack;
}

std::vector<Load> loadsOf(const PlanRequest& request, const std::string& solution)
{
    const bool every =
        std::find(request.also.begin(), request.also.end(), solution) != request.also.end();
    std::vector<Load> loads;
    for (const PlannedWork& work : request.work) {
        const std::string& developer = work.developer.empty() ? request.developer : work.developer;
        if (looksAt(request, work) && (every || developer == solution)) {
            loads.push_back({work.at, work.films.value()});
        }
    }
    std::stable_sort(loads.begin(), loads.end(),
                     [](const Load& a, const Load& b) { return a.at < b.at; });
    return loads;
}

Result<void> checkRequest(const PlanRequest& request)
{
    const auto known = [&](const std::string& id) {
        return std::any_of(request.solutions.begin(), request.solutions.end(),
                           [&](const PlannedSolution& one) { return one.id == id; });
    };
    for (const PlannedWork& work : request.work) {
        const std::string& developer = work.developer.empty() ? request.developer : work.developer;
        if (!looksAt(request, work)) {
            continue;
        }
        if (developer.empty()) {
            return refuse({.code = ErrorCode::Missing, .field = "developer", .subject = work.name});
        }
        if (!known(developer)) {
            return refuse({.code = ErrorCode::UnknownId, .field = "developer", .text = developer});
        }
    }
    for (const std::string& id : request.also) {
        if (!known(id)) {
            return refuse({.code = ErrorCode::UnknownId, .field = "solution", .text = id});
        }
    }
    return {};
}

} // namespace

ledger::Money costOfFilm(const ToBuy& toBuy)
{
    ledger::Money price;
    if (!toBuy.each || !toBuy.does || toBuy.does->value() <= 0) {
        return price;
    }
    price.add(*toBuy.each, toBuy.currency);
    return price.forEachOf(toBuy.does->value());
}

Result<Plan> planNeeds(const PlanRequest& request)
{
    if (auto fine = checkRequest(request); !fine) {
        return tl::unexpected(fine.error());
    }
    Plan plan;
    std::optional<Instant> missing;
    for (const PlannedSolution& solution : request.solutions) {
        const auto loads = loadsOf(request, solution.id);
        if (loads.empty()) {
            continue;
        }
        Walk walk(request, solution);
        walk.go(loads);
        plan.solutions.push_back(walk.plan());
        if (const auto first = walk.firstMissing()) {
            missing = std::min(missing.value_or(*first), *first);
        }
        if (const auto& toBuy = walk.toBuy()) {
            plan.toBuy.push_back(*toBuy);
            if (toBuy->each) {
                plan.cost.add(*toBuy->each, toBuy->currency, toBuy->packets);
            } else {
                plan.costKnown = false;
            }
        }
    }
    std::stable_sort(plan.toBuy.begin(), plan.toBuy.end(),
                     [](const ToBuy& a, const ToBuy& b) { return a.by < b.by; });
    for (const PlannedWork& work : request.work) {
        if (looksAt(request, work) && (!missing || work.at < *missing)) {
            plan.enoughUntil = std::max(plan.enoughUntil.value_or(work.at), work.at);
        }
    }
    return plan;
}

std::vector<PlannedWork> workAtPace(const PlanRequest& request, double filmsPerDay, Films load)
{
    std::vector<PlannedWork> found;
    const double span = chemistry::daysBetween(request.now, request.until).value();
    double known = 0;
    for (const PlannedWork& work : request.work) {
        known += looksAt(request, work) ? work.films.value() : 0;
    }
    const double beside = filmsPerDay - (span > 0 ? known / span : 0);
    if (span <= 0 || beside <= 0 || load.value() <= 0) {
        return found;
    }
    const double between = load.value() / beside;
    for (double day = between; day <= span; day += between) {
        found.push_back(
            {chemistry::addDays(request.now, chemistry::Days(day)), load, {}, {}, true});
    }
    return found;
}

} // namespace ullage::cupboard
