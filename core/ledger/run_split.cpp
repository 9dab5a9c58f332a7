#include "core/ledger/run_split.h"

#include "core/chemistry/films.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace ullage::ledger
{

using chemistry::Films;
using chemistry::Millilitres;
using formulary::Role;

namespace
{

struct Piece {
    std::string format;
    double count; ///< 1, or the odd part that is left of a broken count
    Films units;
};

std::vector<Piece> pieces(const Load& load)
{
    std::vector<Piece> all;
    for (const FilmCount& film : load.films) {
        const Films one = chemistry::filmsInOne(film.format).value_or(Films(1));
        double left = film.count;
        for (; left > chemistry::kFilmSlack; left -= 1) {
            const double count = std::min(1.0, left);
            all.push_back({film.format, count, one * count});
        }
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Piece& a, const Piece& b) { return a.units > b.units; });
    return all;
}

void put(Load& load, const Piece& piece)
{
    for (FilmCount& film : load.films) {
        if (film.format == piece.format) {
            film.count += piece.count;
            return;
        }
    }
    load.films.push_back({piece.format, piece.count});
}

// What is left in each bottle while the parts are dealt out. No figure means no end.
class Stock
{
public:
    Stock(const PlanRequest& request, const std::vector<Judged>& judged) : m_judged(&judged)
    {
        for (const BathNeed& need : request.needs) {
            // A second bath feels a fifth: it is the first that a load is dealt out by.
            if ((need.role == Role::Developer || need.role == Role::Fixer) && !need.second) {
                addAll(need);
            }
        }
    }

    // The oldest with room for `units`, the partner's set first.
    [[nodiscard]] std::optional<std::size_t> best(Role role, Films units,
                                                  std::optional<std::size_t> partner) const
    {
        std::optional<std::size_t> found;
        const auto better = [&](std::size_t a, std::size_t b) {
            const auto set = [&](std::size_t i) {
                return partner && mixedAsSet((*m_judged)[i].batch, (*m_judged)[*partner].batch);
            };
            return std::tuple(!set(a), (*m_judged)[a].batch.mixedAt) <
                   std::tuple(!set(b), (*m_judged)[b].batch.mixedAt);
        };
        for (const auto& [index, left] : m_left) {
            const bool fits = left + Films(chemistry::kFilmSlack) >= units;
            if ((*m_judged)[index].batch.solution->role == role && fits &&
                (!found || better(index, *found))) {
                found = index;
            }
        }
        return found;
    }

    [[nodiscard]] bool asked(Role role) const
    {
        return std::find(m_roles.begin(), m_roles.end(), role) != m_roles.end();
    }
    [[nodiscard]] Films left(std::optional<std::size_t> index) const
    {
        return index ? m_left.at(*index) : Films(std::numeric_limits<double>::infinity());
    }
    void use(std::optional<std::size_t> index, Films units)
    {
        if (index) {
            m_left.at(*index) -= units;
        }
    }

private:
    void addAll(const BathNeed& need)
    {
        m_roles.push_back(need.role);
        for (std::size_t i = 0; i < m_judged->size(); ++i) {
            const Judged& judged = (*m_judged)[i];
            if (judged.batch.inUse() && judged.batch.solution->role == need.role &&
                (proposable(judged) || judged.batch.id == need.chosen) &&
                judged.assessment.verdict != Verdict::Discard &&
                judged.batch.volume >= need.volume &&
                !(need.oneShot && judged.batch.wear.value() > chemistry::kFilmSlack)) {
                m_left[i] = filmsItCanDo(judged, need)
                                .value_or(Films(std::numeric_limits<double>::infinity()));
            }
        }
    }

    const std::vector<Judged>* m_judged;
    std::map<std::size_t, Films> m_left;
    std::vector<Role> m_roles;
};

bool fitsTank(const std::optional<Tank>& tank, const Load& load)
{
    return !tank || findings(*tank, load).empty();
}

} // namespace

std::optional<Films> filmsItCanDo(const Judged& judged, const BathNeed& need)
{
    const Batch& batch = judged.batch;
    const bool some = need.oneShot && need.volume.value() > 0;
    const Millilitres part = some ? need.volume : batch.volume;
    const auto perFilm = batch.solution->oneShotPerFilm;
    if (perFilm && (need.oneShot || batch.usedOnce())) {
        return Films(part / *perFilm);
    }
    const auto capacity = formulary::capacityOf(*batch.solution);
    if (!capacity || (batch.historyUnknown && !batch.filmsKnown)) {
        return std::nullopt;
    }
    const Films left = (*capacity - batch.wear) * chemistry::litres(part);
    return std::max(left, Films(0));
}

std::vector<SplitPart> splitLoad(const PlanRequest& request, const std::vector<Judged>& judged)
{
    if (request.load.area) {
        return {};
    }
    std::vector<Piece> left = pieces(request.load);
    Stock stock(request, judged);
    std::vector<SplitPart> parts;
    while (!left.empty()) {
        SplitPart part;
        const Films first = left.front().units;
        if (stock.asked(Role::Developer)) {
            part.developer = stock.best(Role::Developer, first, std::nullopt);
        }
        if (stock.asked(Role::Fixer)) {
            part.fixer = stock.best(Role::Fixer, first, part.developer);
        }
        std::vector<Piece> later;
        for (const Piece& piece : left) {
            Load with = part.load;
            put(with, piece);
            const bool enough =
                stock.left(part.developer) + Films(chemistry::kFilmSlack) >= piece.units &&
                stock.left(part.fixer) + Films(chemistry::kFilmSlack) >= piece.units;
            // A piece that fits no tank alone still needs a part, or this would never end.
            if (part.load.films.empty() || (enough && fitsTank(request.tank, with))) {
                part.load = with;
                stock.use(part.developer, piece.units);
                stock.use(part.fixer, piece.units);
            } else {
                later.push_back(piece);
            }
        }
        parts.push_back(part);
        left = later;
    }
    return parts.size() < 2 ? std::vector<SplitPart>{} : parts;
}

} // namespace ullage::ledger
