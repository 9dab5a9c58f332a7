#include "core/ledger/mix_preview.h"

#include "core/ledger/load_times.h"

namespace ullage::ledger
{

bool MixPreview::bottleCostsTime() const
{
    if (!discardBy || !keepsUntil) {
        return false;
    }
    const auto lost = chemistry::daysBetween(*discardBy, *keepsUntil);
    constexpr double kTenth = 0.1;
    return lost > (*inThisBottle + lost) * kTenth;
}

Result<MixPreview> previewMix(const formulary::Solution& solution, const formulary::Vessel& vessel,
                              chemistry::Millilitres volume, chemistry::Instant at,
                              std::span<const chemistry::TimeAtTemperature> pairs,
                              const KnownBefore& known)
{
    formulary::Formulary formulary;
    formulary.add(solution);
    formulary.add(vessel);
    Mixed what{solution.id, vessel.id, volume};
    what.historyUnknown = known.historyUnknown;
    what.mixedOn = known.mixedOn;
    what.assumed = known.assumed;
    what.filmsBefore = known.filmsBefore;
    const Event mixed{"preview", "preview", at, what, {}};
    if (auto fine = checkFields(mixed); !fine) {
        return tl::unexpected(fine.error());
    }
    Fold fold(formulary);
    if (auto fine = fold.apply(mixed); !fine) {
        return tl::unexpected(fine.error());
    }
    const Batch& batch = fold.batch();
    const Assessment so = assess(batch);
    MixPreview preview;
    preview.atLeast = so.atLeast;
    preview.films = so.filmsLeft;
    preview.firstFactor = bottleFactor(batch, so);
    constexpr int kTenth = 10;
    if (so.filmsLeft && so.filmsLeft->value() >= kTenth - 1e-9 && batch.filmsDone.value() == 0 &&
        !so.atLeast) {
        preview.tenthFactor = factorOfFilm(solution, kTenth, volume);
    }
    if (const auto first = developingTime(batch, so, pairs, chemistry::Celsius(20))) {
        preview.firstTime = first->time;
        if (preview.tenthFactor) {
            preview.tenthTime = first->base.time * *preview.tenthFactor;
        }
    }
    preview.keepsUntil = so.keepsUntil;
    preview.discardBy = so.discardBy;
    if (so.discardBy) {
        preview.inThisBottle = chemistry::daysBetween(at, *so.discardBy);
    }
    return preview;
}

} // namespace ullage::ledger
