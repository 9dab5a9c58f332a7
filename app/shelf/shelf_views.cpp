#include "app/shelf/shelf_views.h"

#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/verdict_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ShelfViews)
};

QString utf8(const std::string& text) { return QString::fromStdString(text); }

double wearShare(const ledger::Batch& batch)
{
    return batch.solution->capacity ? batch.wear / *batch.solution->capacity : 0;
}

} // namespace

double urgency(const ledger::Assessment& assessment, const ledger::Batch& batch)
{
    const double rank = static_cast<double>(assessment.verdict == ledger::Verdict::Good         ? 0
                                            : assessment.verdict == ledger::Verdict::NearItsEnd ? 1
                                            : assessment.verdict == ledger::Verdict::TestFirst  ? 2
                                                                                               : 3);
    const double spent = std::max(wearShare(batch), assessment.standingUsed.value_or(0));
    return rank + std::clamp(spent, 0.0, 1.0) * 0.99;
}

BottleView bottleView(const ledger::Batch& batch, const ledger::Assessment& assessment,
                      const Wording& wording)
{
    BottleView view;
    view.id = utf8(batch.id);
    view.name = utf8(batch.name);
    view.mixedText = Words::tr("mixed %1").arg(dayText(batch.mixedAt, batch.asOf, wording.locale));
    view.solutionName = utf8(batch.solution->name);
    view.vesselName = utf8(batch.vessel->name);
    view.solution = static_cast<SolutionLook>(batch.solution->role);
    view.material = static_cast<BottleMaterial>(batch.vessel->material);
    view.capacityMl = batch.vessel->capacity.value();
    view.volumeMl = batch.volume.value();
    view.squeezed = batch.vessel->squeezed;
    view.airMl = batch.standing.air.volume.value();
    view.filmsDone = batch.filmsDone.value();
    view.standing = assessment.standingUsed.value_or(0);
    view.wear = wearShare(batch);
    view.verdict = static_cast<VerdictLook>(assessment.verdict);
    const ShelfLines lines = shelfLines(batch, assessment, wording);
    view.headline = lines.headline;
    view.subline = lines.subline;
    view.urgency = urgency(assessment, batch);
    return view;
}

static_assert(static_cast<int>(SolutionLook::Other) == static_cast<int>(formulary::Role::Other));
static_assert(static_cast<int>(SolutionLook::Fixer) == static_cast<int>(formulary::Role::Fixer));
static_assert(static_cast<int>(BottleMaterial::Pp) == static_cast<int>(formulary::Material::Pp));
static_assert(static_cast<int>(VerdictLook::TestFirst) ==
              static_cast<int>(ledger::Verdict::TestFirst));
static_assert(static_cast<int>(VerdictLook::NearItsEnd) ==
              static_cast<int>(ledger::Verdict::NearItsEnd));

QString shelfSummary(std::span<const BottleView> bottles,
                     std::optional<chemistry::Instant> nextExpiry, chemistry::Instant now,
                     const Wording& wording)
{
    if (bottles.empty())
        return Words::tr("no bottle in use");
    const auto count = [&](VerdictLook look) {
        return static_cast<int>(
            std::count_if(bottles.begin(), bottles.end(),
                          [&](const auto& view) { return view.verdict == look; }));
    };
    QStringList parts{Words::tr("%Ln bottle(s) in use", nullptr, static_cast<int>(bottles.size()))};
    if (const int discard = count(VerdictLook::Discard); discard > 0)
        parts << Words::tr("%Ln to discard", nullptr, discard);
    if (const int test = count(VerdictLook::TestFirst); test > 0)
        parts << Words::tr("%Ln to test", nullptr, test);
    if (nextExpiry)
        parts << Words::tr("next to expire %1").arg(dayText(*nextExpiry, now, wording.locale));
    return parts.join(QStringLiteral(" · "));
}

NextFilm nextFilm(const ledger::Batch& batch, const ledger::Assessment& assessment,
                  std::span<const chemistry::TimeAtTemperature> pairs,
                  chemistry::Celsius temperature, const Wording& wording)
{
    NextFilm next;
    const QString at = shortTemperatureText(temperature, wording);
    double total = assessment.wearFactor * batch.stripFactor.value_or(1);
    if (!pairs.empty()) {
        // The pair next to the thermometer is the one the others are told from.
        const auto nearest =
            *std::min_element(pairs.begin(), pairs.end(), [&](const auto& a, const auto& b) {
                return std::abs((a.temperature - temperature).value()) <
                       std::abs((b.temperature - temperature).value());
            });
        const auto base = chemistry::baseTime(pairs, temperature, batch.solution->q10);
        if (base) {
            next.rows.push_back({Words::tr("Film maker's time, %1")
                                     .arg(shortTemperatureText(nearest.temperature, wording)),
                                 timeText(nearest.time)});
            next.rows.push_back(
                {Words::tr("Temperature, %1").arg(temperatureText(temperature, wording)),
                 factorText(base->time / nearest.time, wording.locale)});
            next.time = timeText(base->time * total, TimeStep::FiveSeconds);
            next.note = Words::tr("at %1, for the next film").arg(at);
        } else {
            next.note = Words::tr("no time can be given at %1").arg(at);
        }
    } else {
        next.note = Words::tr("times the film maker's time; type that in at Run film");
    }
    next.rows.push_back(
        {Words::tr("Wear, %1 in %2")
             .arg(filmsText(batch.filmsDone, wording), volumeText(batch.volume, wording)),
         factorText(assessment.wearFactor, wording.locale)});
    next.rows.push_back(
        {batch.stripAt
             ? Words::tr("Strip test, %1").arg(dayText(*batch.stripAt, batch.asOf, wording.locale))
             : Words::tr("Strip test, none yet"),
         factorText(batch.stripFactor.value_or(1), wording.locale)});
    if (next.time.isEmpty())
        next.time = factorText(total, wording.locale);
    return next;
}

} // namespace ullage::app
