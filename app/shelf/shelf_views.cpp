#include "app/shelf/shelf_views.h"

#include "app/words/moment_text.h"
#include "app/words/shown_names.h"
#include "app/words/verdict_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ShelfViews)
};

QString utf8(const std::string& text) { return QString::fromStdString(text); }

// Of a solution without a capacity film uses up no share that could be told.
std::optional<double> wearShare(const ledger::Batch& batch)
{
    if (batch.historyUnknown && !batch.filmsKnown)
        return std::nullopt;
    const auto capacity = formulary::capacityOf(*batch.solution);
    return capacity ? batch.wear / *capacity : 0;
}

} // namespace

// By the verdict alone: a hand finds a bottle by its place, which must not change with every film.
int urgency(const ledger::Assessment& assessment)
{
    switch (assessment.shown) {
    case ledger::Verdict::Good:
        return 0;
    case ledger::Verdict::Resting:
        return 1;
    case ledger::Verdict::NearItsEnd:
        return 2;
    case ledger::Verdict::TestFirst:
        return 3;
    case ledger::Verdict::Discard:
        break;
    }
    return 4;
}

BottleView bottleView(const ledger::Batch& batch, const ledger::Assessment& assessment,
                      const Wording& wording)
{
    BottleView view;
    view.id = utf8(batch.id);
    view.name = utf8(batch.name);
    // Of a bottle found only the day that it was found may be known.
    const bool dateKnown = !batch.historyUnknown || batch.dateKnown;
    view.mixedDate = dayText(dateKnown ? batch.madeAt : batch.mixedAt, batch.asOf, wording.locale);
    view.mixedText =
        (dateKnown ? Words::tr("mixed %1") : Words::tr("found %1")).arg(view.mixedDate);
    view.solutionName = shownName(batch.solution->name);
    view.vesselName = shownName(batch.vessel->name);
    view.solution = batch.solution->role;
    view.material = batch.vessel->material;
    view.capacityMl = batch.vessel->capacity.value();
    view.volumeMl = batch.volume.value();
    view.squeezed = batch.vessel->squeezed;
    view.airMl = batch.standing.air.volume.value();
    view.filmsDone = batch.filmsDone.value();
    view.uncounted = assessment.atLeast;
    view.standing = assessment.standingUsed.value_or(0);
    view.wear = wearShare(batch);
    view.verdict = assessment.shown;
    const ShelfLines lines = shelfLines(batch, assessment, wording);
    view.headline = lines.headline;
    view.subline = lines.subline;
    view.urgency = urgency(assessment);
    return view;
}

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
        parts << Words::tr("next to discard %1").arg(dayText(*nextExpiry, now, wording.locale));
    return parts.join(QStringLiteral(" · "));
}

QString clockBehindText(chemistry::Instant newest, chemistry::Instant now, const Wording& wording)
{
    constexpr auto kOutOfStep = std::chrono::minutes(10); // between two computers' clocks
    if (newest <= now + kOutOfStep)
        return {};
    return Words::tr(
               "Is this computer's clock right? It says %1; the newest entry is of %2. What lies "
               "after the clock's time is kept, and shown again when it has come.")
        .arg(momentText(now, now, wording.locale), momentText(newest, now, wording.locale));
}

} // namespace ullage::app
