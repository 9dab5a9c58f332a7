#include "core/ledger/own_record.h"

#include "core/chemistry/films.h"
#include "core/chemistry/wear.h"
#include "core/ledger/strip_record.h"

#include <algorithm>

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

} // namespace

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
    return made;
}

} // namespace ullage::ledger
