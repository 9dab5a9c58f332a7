#include "core/ledger/load_times.h"

#include "core/chemistry/constants.h"
#include "core/chemistry/films.h"
#include "core/chemistry/fixing.h"
#include "core/chemistry/wear.h"

#include <algorithm>
#include <cmath>

namespace ullage::ledger
{

using chemistry::Celsius;
using chemistry::Films;
using chemistry::FilmsPerLitre;
using chemistry::Seconds;
using chemistry::TimeAtTemperature;

namespace
{

int wholeFilms(Films films)
{
    return static_cast<int>(std::ceil(films.value() - chemistry::kFilmSlack));
}

double stepOf(Seconds reckoned)
{
    constexpr double kStep = 5;
    return std::abs(reckoned.value()) < kStep ? 1 : kStep;
}

} // namespace

Seconds inUse(Seconds reckoned)
{
    const double step = stepOf(reckoned);
    return Seconds(std::round(reckoned.value() / step) * step);
}

Seconds inUseAtLeast(Seconds reckoned)
{
    constexpr double kSlack = 0.01; // s: what multiplying adds to a whole figure is no need
    const double step = stepOf(reckoned);
    return Seconds(std::ceil((reckoned.value() - kSlack) / step) * step);
}

double bottleFactor(const Batch& developer, const Assessment& so)
{
    return so.wearFactor * developer.stripFactor.value_or(1);
}

Result<DevelopingFactors> developingTime(const Batch& developer, const Assessment& so,
                                         std::span<const TimeAtTemperature> pairs,
                                         Celsius temperature)
{
    if (pairs.empty()) {
        return refuse({.code = ErrorCode::NoFigure, .field = "base"});
    }
    auto base = chemistry::baseTime(pairs, temperature, developer.solution->q10);
    if (!base) {
        return tl::unexpected(base.error());
    }
    const auto away = [&](const TimeAtTemperature& pair) {
        return std::abs((pair.temperature - temperature).value());
    };
    DevelopingFactors factors{
        .nearest = *std::min_element(pairs.begin(), pairs.end(),
                                     [&](const TimeAtTemperature& a, const TimeAtTemperature& b) {
                                         return away(a) < away(b);
                                     }),
        .base = std::move(*base),
        .wear = so.wearFactor,
        .strip = developer.stripFactor.value_or(1)};
    factors.temperature = factors.base.time / factors.nearest.time;
    const double bottle = factors.wear * factors.strip;
    factors.time = factors.base.time * bottle;
    auto carried = chemistry::carriedRange(pairs, temperature, developer.solution->q10,
                                           formulary::q10Range(*developer.solution));
    if (!carried) {
        return tl::unexpected(carried.error());
    }
    if (*carried) {
        factors.carried = {(*carried)->shortest * bottle, (*carried)->longest * bottle,
                           (*carried)->fromOnePair};
    }
    return factors;
}

std::optional<FixingFactors> fixingTime(const Batch& fixer, const Assessment& so,
                                        Celsius temperature, bool tabularGrain)
{
    const formulary::Solution& solution = *fixer.solution;
    FixingFactors factors{.cold = chemistry::coldFactor(temperature)};
    factors.times = tabularGrain
                        ? solution.tabularFactor.value_or(chemistry::kTabularFixFactor.value)
                        : chemistry::kFixFactor.value;
    if (so.clearing) {
        factors.from = ClearingFrom::Tests;
        factors.clearing = so.clearing->now;
    } else if (solution.freshClearing) {
        factors.from = ClearingFrom::SolutionFigure;
        factors.clearing = solution.freshClearing;
    } else {
        return std::nullopt;
    }
    // Carried back far enough, from a worn bath that was made up with fresh, it would be nothing.
    Seconds at20 = std::max(Seconds(0), *factors.clearing * factors.times);
    if (solution.fixMin && at20 < *solution.fixMin) {
        factors.raisedTo = solution.fixMin;
        at20 = *solution.fixMin;
    }
    factors.time = at20 * factors.cold;
    return factors;
}

FixingFactors fixingTime(Seconds usersTime, Celsius temperature)
{
    FixingFactors factors{.times = 1, .cold = chemistry::coldFactor(temperature)};
    factors.time = usersTime * factors.cold;
    return factors;
}

std::vector<FilmsPerLitre> wearOfFilmsToCome(const Batch& batch, const Assessment& so, int most)
{
    std::vector<FilmsPerLitre> wears;
    if (!batch.inUse() || batch.volume.value() <= 0 || !so.filmsLeft) {
        return wears;
    }
    const int left = std::min(wholeFilms(*so.filmsLeft), most);
    for (int film = 0; film <= left; ++film) {
        wears.push_back(batch.wear + Films(film) / chemistry::litres(batch.volume));
    }
    return wears;
}

std::vector<FilmFactor> filmFactors(const Batch& developer, const Assessment& so, int most)
{
    const double strip = developer.stripFactor.value_or(1);
    std::vector<FilmFactor> films;
    const auto add = [&](FilmFactor::When when, FilmsPerLitre wear) {
        films.push_back({when, strip * chemistry::wearFactor(developer.solution->wear, wear),
                         static_cast<int>(films.size()) + 1});
    };
    for (const auto& load : developer.loads) {
        for (int film = 0; film < wholeFilms(load.units); ++film) {
            add(FilmFactor::When::Done, load.wearBefore);
        }
    }
    const int done = static_cast<int>(films.size());
    auto toCome = wearOfFilmsToCome(developer, so, std::max(most / 2, most - done));
    if (!toCome.empty()) {
        toCome.pop_back(); // where the last one ends, nothing begins
    }
    for (std::size_t i = 0; i < toCome.size(); ++i) {
        add(i == 0 ? FilmFactor::When::Next : FilmFactor::When::ToCome, toCome[i]);
    }
    const auto over = std::max(0, static_cast<int>(films.size()) - most);
    films.erase(films.begin(), films.begin() + over);
    return films;
}

double factorOfFilm(const formulary::Solution& developer, int film, chemistry::Millilitres volume)
{
    return chemistry::wearFactor(developer.wear, Films(film - 1) / chemistry::litres(volume));
}

double factorThen(const Batch& developer, const LoadDone& load)
{
    return chemistry::wearFactor(developer.solution->wear, load.wearBefore);
}

TestOutlook outlookOf(const Batch& fixer, Seconds time, Celsius temperature,
                      const std::string& film)
{
    Batch then = fixer;
    const Seconds at20 = chemistry::clearingAt20(time, temperature);
    then.tests.push_back({then.wear, at20, film});
    Assessment so;
    so.clearing = chemistry::clearing(then.tests, then.wear, fixerKnown(then));
    return {at20, *so.clearing, fixingTime(then, so, Celsius(20))->time};
}

} // namespace ullage::ledger
