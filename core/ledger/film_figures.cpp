#include "core/ledger/film_figures.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <set>

namespace ullage::ledger
{

TraitCount countOf(const FilmTraces& films, const FilmHas& has)
{
    TraitCount counted;
    for (const FilmTrace& film : films) {
        const auto found = has(film);
        counted.known += found ? 1 : 0;
        counted.with += found && *found ? 1 : 0;
    }
    return counted;
}

std::optional<OffPlan> stepsOf(const FilmTrace& film, const std::string& kind)
{
    OffPlan sum{.step = kind};
    for (const StepDone& step : film.times ? film.times->steps : std::vector<StepDone>()) {
        if (step.kind == kind) {
            sum.planned += step.planned;
            sum.real += step.real;
        }
    }
    return sum.planned.value() > 0 ? std::optional(sum) : std::nullopt;
}

std::optional<double> overPlan(const FilmTrace& film, const std::string& kind)
{
    const auto sum = stepsOf(film, kind);
    if (!sum) {
        return std::nullopt;
    }
    const double off = (sum->real - sum->planned).value();
    return std::abs(off) < kStepOffLeast.value() ? 0 : sum->share();
}

FilmTraces fromOtherRuns(const FilmTraces& good, const FilmTraces& marked)
{
    std::set<std::string> runs;
    for (const FilmTrace& film : marked) {
        runs.insert(film.film.run);
    }
    runs.erase(std::string());
    FilmTraces kept;
    std::copy_if(good.begin(), good.end(), std::back_inserter(kept),
                 [&](const FilmTrace& film) { return runs.count(film.film.run) == 0; });
    return kept;
}

std::optional<double> medianOf(const FilmTraces& films, const FilmFigure& figure)
{
    std::vector<double> all;
    for (const FilmTrace& film : films) {
        if (const auto value = figure(film)) {
            all.push_back(*value);
        }
    }
    if (all.empty()) {
        return std::nullopt;
    }
    std::sort(all.begin(), all.end());
    return (all[(all.size() - 1) / 2] + all[all.size() / 2]) / 2;
}

} // namespace ullage::ledger
