#include "core/ledger/own_record.h"

#include "core/chemistry/films.h"
#include "core/chemistry/wear.h"
#include "core/formulary/implied.h"
#include "core/ledger/strip_record.h"

#include <algorithm>
#include <cmath>

namespace ullage::ledger
{

using chemistry::FilmsPerLitre;
using formulary::Role;

namespace
{

constexpr double kFreshWear =
    1 + chemistry::kFilmSlack; // up to here a clearing test is a fresh one

std::vector<chemistry::WornClearing> clearingsOf(const Batch& batch)
{
    std::vector<chemistry::WornClearing> found;
    for (std::size_t i = 0; i < batch.tests.size() && !batch.historyUnknown; ++i) {
        const chemistry::ClearingTest& test = batch.tests[i];
        const auto fresh =
            std::find_if(batch.tests.begin(), batch.tests.end(), [&](const auto& other) {
                return other.film == test.film && other.wear.value() <= kFreshWear;
            });
        const bool itsOwn = batch.testMarks[i].at >= batch.mixedAt;
        if (itsOwn && test.wear.value() > kFreshWear && fresh != batch.tests.end()) {
            found.push_back({test.wear, test.at20, fresh->at20, test.film});
        }
    }
    return found;
}

StripRecord stripsOf(const std::vector<Batch>& batches)
{
    std::vector<StripReading> readings;
    for (const Batch& batch : batches) {
        for (const StripDone& strip : batch.strips) {
            if (strip.at >= batch.mixedAt) {
                readings.push_back({batch.id, batch.name, strip});
            }
        }
    }
    return stripRecord(std::move(readings));
}

std::vector<chemistry::StripMeasure> measuresOf(const Batch& batch, const StripRecord& record)
{
    std::vector<chemistry::StripMeasure> found;
    const auto reference = referenceStrip(record, batch.id);
    if (!reference) {
        return found;
    }
    for (const StripDone& strip : batch.strips) {
        if (strip.at >= batch.mixedAt && strip.density > 0) {
            found.push_back(
                {strip.wear,
                 chemistry::wearFactor(batch.solution->wear, strip.wear) * strip.factorBefore,
                 strip.density, record.readings[*reference].strip.density});
        }
    }
    return found;
}

// A bottle that films have worn fails by them too: it says nothing of air.
constexpr double kWornLittle = 0.8;

// The last pass and the first failure say where its end lay; what is between them adds nothing.
std::vector<chemistry::KeepingTrial> trialsOf(const Batch& batch)
{
    if (batch.inDoubt()) {
        return {}; // how much air and age it had is not known
    }
    const auto capacity = formulary::capacityOf(*batch.solution);
    std::optional<chemistry::KeepingTrial> passed;
    std::optional<chemistry::KeepingTrial> failed;
    for (const StandingTrial& trial : batch.trials) {
        if (capacity && trial.wear >= *capacity * kWornLittle) {
            continue;
        }
        const chemistry::KeepingTrial seen{trial.oxygen, trial.agePart, trial.passed};
        if (trial.passed) {
            passed = seen;
        } else if (!failed) {
            failed = seen;
        }
    }
    std::vector<chemistry::KeepingTrial> found;
    for (const auto& trial : {passed, failed}) {
        if (trial) {
            found.push_back(*trial);
        }
    }
    return found;
}

chemistry::Days halfFullDays(const formulary::Solution& solution, double limit)
{
    return *formulary::halfTimeFor(solution, chemistry::MillimolesPerLitre(limit));
}

// Over what is worth looking at: from half of the span's lower end to twice its upper one.
void addChances(const formulary::Solution& solution, OwnRecord& made)
{
    constexpr int kPoints = 24;
    const double first = made.oxygen->low / 2;
    const double last = made.oxygen->high * 2;
    for (int i = 0; i <= kPoints; ++i) {
        const double oxygen = first * std::pow(last / first, static_cast<double>(i) / kPoints);
        const chemistry::KeepingTrial pass{chemistry::MillimolesPerLitre(oxygen), 0, true};
        const auto by = [&](double limit) {
            return chemistry::trialChance(pass, chemistry::MillimolesPerLitre(limit));
        };
        made.chances.push_back({halfFullDays(solution, oxygen), by(made.oxygen->value),
                                by(made.oxygen->low), by(made.oxygen->high)});
    }
}

void addKeeping(const formulary::Solution& solution, const std::vector<Batch>& batches,
                OwnRecord& made)
{
    const auto limits = formulary::keepingLimits(solution);
    if (!limits || !limits->airCounts()) {
        return;
    }
    std::vector<std::vector<chemistry::KeepingTrial>> all;
    for (const Batch& batch : batches) {
        all.push_back(trialsOf(batch));
        for (const chemistry::KeepingTrial& trial : all.back()) {
            // The limit that it would just have reached its end by; none where age had spent it.
            const double limit = trial.oxygen.value() / std::max(0.0, 1 - trial.agePart);
            made.trials.push_back({halfFullDays(solution, limit), trial.passed});
        }
    }
    made.oxygen = chemistry::ownOxygenLimit(all, limits->oxygen);
    if (!made.oxygen) {
        return;
    }
    made.halfDays = made.oxygen;
    for (double* value : {&made.halfDays->value, &made.halfDays->low, &made.halfDays->high}) {
        *value = halfFullDays(solution, *value).value();
    }
    addChances(solution, made);
}

} // namespace

const std::optional<chemistry::OwnFigure>& OwnRecord::of(OwnKind kind) const
{
    switch (kind) {
    case OwnKind::Capacity:
        return capacity;
    case OwnKind::Wear:
        return wear;
    default:
        return halfDays;
    }
}

OwnRecord ownRecord(const formulary::Solution& solution, const std::vector<Batch>& batches)
{
    OwnRecord made;
    if (solution.role == Role::Fixer) {
        std::vector<std::vector<chemistry::WornClearing>> all;
        for (const Batch& batch : batches) {
            all.push_back(clearingsOf(batch));
            for (const chemistry::WornClearing& test : all.back()) {
                made.tests.push_back({test.wear, test.at20 / test.fresh});
            }
        }
        if (const auto published = formulary::capacityOf(solution)) {
            made.capacity = chemistry::ownFixerCapacity(all, *published);
        }
    }
    const bool perFilm = solution.wear.rule == chemistry::WearRule::PerFilm;
    if (solution.role == Role::Developer && perFilm && solution.wear.percent > 0) {
        const StripRecord record = stripsOf(batches);
        std::vector<std::vector<chemistry::StripMeasure>> all;
        for (const Batch& batch : batches) {
            all.push_back(measuresOf(batch, record));
            for (const chemistry::StripMeasure& strip : all.back()) {
                made.tests.push_back({strip.wear, strip.wanted()});
            }
        }
        made.wear = chemistry::ownDeveloperWear(all, solution.wear.percent);
    }
    addKeeping(solution, batches, made);
    return made;
}

} // namespace ullage::ledger
