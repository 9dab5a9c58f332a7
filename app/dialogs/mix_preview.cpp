#include "app/dialogs/mix_preview.h"

#include "core/chemistry/wear.h"

namespace ullage::app
{

bool MixPreview::bottleCostsTime() const
{
    if (!discardBy || !keepsUntil)
        return false;
    const auto lost = chemistry::daysBetween(*discardBy, *keepsUntil);
    constexpr double kTenth = 0.1;
    return lost > (*inThisBottle + lost) * kTenth;
}

Result<MixPreview> previewMix(const formulary::Solution& solution, const formulary::Vessel& vessel,
                              chemistry::Millilitres volume, chemistry::Instant at)
{
    formulary::Formulary formulary;
    formulary.add(solution);
    formulary.add(vessel);
    const ledger::Event mixed{
        "preview", "preview", at, ledger::Mixed{solution.id, vessel.id, volume}, {}};
    if (auto fine = ledger::checkFields(mixed); !fine)
        return tl::unexpected(fine.error());
    ledger::Fold fold(formulary);
    if (auto fine = fold.apply(mixed); !fine)
        return tl::unexpected(fine.error());
    const ledger::Assessment so = ledger::assess(fold.batch());
    MixPreview preview;
    preview.films = so.filmsLeft;
    preview.firstFactor = so.wearFactor;
    constexpr int kTenth = 10;
    if (so.filmsLeft && so.filmsLeft->value() >= kTenth - 1e-9)
        preview.tenthFactor = chemistry::wearFactor(solution.wear, chemistry::Films(kTenth - 1) /
                                                                       chemistry::litres(volume));
    preview.keepsUntil = so.keepsUntil;
    preview.discardBy = so.discardBy;
    if (so.discardBy)
        preview.inThisBottle = chemistry::daysBetween(at, *so.discardBy);
    return preview;
}

} // namespace ullage::app
