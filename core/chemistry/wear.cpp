#include "core/chemistry/wear.h"

#include "core/chemistry/films.h"

#include <cmath>

namespace ullage::chemistry
{

double wearFactor(const Wear& wear, FilmsPerLitre worn)
{
    switch (wear.rule) {
    case WearRule::None:
        return 1;
    case WearRule::PerFilm:
        return 1 + wear.percent * worn.value() / 100;
    case WearRule::Compound:
        return std::pow(1 + wear.percent / 100, worn.value());
    case WearRule::Steps: {
        double factor = 1;
        for (const WearStep& step : wear.steps) {
            if (step.from.value() <= worn.value() + kFilmSlack) {
                factor = step.factor;
            }
        }
        return factor;
    }
    }
    return 1;
}

Result<void> check(const Wear& wear)
{
    if (wear.rule == WearRule::PerFilm || wear.rule == WearRule::Compound) {
        return checkRange("wear.percent", wear.percent, 0, kMostWearPercent, "%");
    }
    if (wear.rule != WearRule::Steps) {
        return {};
    }
    if (wear.steps.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "wear.steps"});
    }
    double before = 0;
    bool first = true;
    for (const WearStep& step : wear.steps) {
        if (auto fine =
                checkRange("wear.steps.factor", step.factor, kLeastWearFactor, kMostWearFactor, "");
            !fine) {
            return fine;
        }
        if (auto fine = checkRange("wear.steps.from_films_per_litre", step.from.value(), 0,
                                   kMostWear.value(), "films/L");
            !fine) {
            return fine;
        }
        if (!first && step.from.value() <= before) {
            return refuse({.code = ErrorCode::Conflict,
                           .field = "wear.steps.from_films_per_litre",
                           .allowed = "each step above the one before it",
                           .number = step.from.value()});
        }
        first = false;
        before = step.from.value();
    }
    return {};
}

} // namespace ullage::chemistry
