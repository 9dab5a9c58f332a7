// Where it is from what a bottle can still do, and what film has left in it.
#include "app/words/explain_parts.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/source_words.h"
#include "core/chemistry/process_constants.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

using formulary::Figure;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Explanations)
};

bool anyLoad(const ledger::Batch& batch, bool (*is)(const ledger::LoadDone&))
{
    return std::any_of(batch.loads.begin(), batch.loads.end(), is);
}

bool wasSecond(const ledger::LoadDone& load) { return load.felt < load.units; }
bool wasPouredAway(const ledger::LoadDone& load) { return load.oneShot; }

ExplainedConstant capacity(const formulary::Solution& solution, const Wording& wording)
{
    if (solution.capacity || solution.role != formulary::Role::Fixer)
        return explained(solution, Figure::Capacity, wording);
    const bool alkaline = solution.fixerKind == formulary::FixerKind::Alkaline;
    return explained(alkaline ? Words::tr("Capacity of an alkaline fixer")
                              : Words::tr("Capacity of an acid fixer"),
                     alkaline ? chemistry::kFixerCapacityAlkaline : chemistry::kFixerCapacityAcid,
                     wording.locale);
}

ExplainedConstant forAFilm(const formulary::Solution& solution, const Wording& wording)
{
    const auto line = solution.sources.find("one_shot_ml_per_film");
    const std::string source = line == solution.sources.end() ? std::string() : line->second;
    return {Words::tr("For a film, used once"),
            volumeText(*solution.oneShotPerFilm, wording),
            {},
            sourceOnly(source),
            formulary::gradeOf(source)};
}

// What was in the bottle when a load came, by the load: the share of it that the bottle felt.
void addLoads(const ledger::Batch& batch, std::optional<chemistry::Instant> since, bool felt,
              const Wording& wording, Explanation& why)
{
    std::vector<const ledger::LoadDone*> loads;
    for (const ledger::LoadDone& load : batch.loads) {
        if (!load.oneShot && (!since || load.at >= *since))
            loads.push_back(&load);
    }
    constexpr std::size_t kShown = 6;
    const std::size_t first = loads.size() > kShown ? loads.size() - kShown : 0;
    for (std::size_t i = first; i < loads.size(); ++i) {
        const ledger::LoadDone& load = *loads[i];
        const auto then =
            std::find_if(batch.trace.rbegin(), batch.trace.rend(), [&](const auto& at) {
                return at.at <= load.at && at.wear == load.wearBefore;
            });
        if (then == batch.trace.rend())
            continue;
        why.inputs.push_back({dayText(load.at, batch.asOf, wording.locale),
                              Words::tr("%1 in %2", "films, volume")
                                  .arg(filmsText(felt ? load.felt : load.units, wording),
                                       volumeText(then->volume, wording))});
    }
    if (first > 0)
        why.notes << Words::tr("Before them %n load(s) more.", nullptr, static_cast<int>(first));
}

} // namespace

QString wearNow(const ledger::Batch& batch, const QLocale& locale)
{
    return Words::tr("%1 films per litre").arg(numberText(batch.wear.value(), 2, locale));
}

QString leastText(const QString& text, const ledger::Batch& batch)
{
    return batch.inDoubt() ? Words::tr("at least %1", "figure").arg(text) : text;
}

void addDoubt(const ledger::Batch& batch, Explanation& why)
{
    if (batch.historyUnknown)
        why.notes << Words::tr("Its history is not known: what was counted is a minimum.");
    else if (batch.pouredUnknown)
        why.notes << Words::tr(
            "Something from a bottle of unknown history is in it: what was counted is a minimum.");
}

Explanation explainFilmsLeft(const ledger::Batch& batch, const ledger::Assessment& so,
                             const Wording& wording)
{
    Explanation why;
    why.title = Words::tr("Films left");
    why.value = so.filmsLeft ? filmsLeftText(*so.filmsLeft, wording) : Words::tr("not known");
    why.inputs = {{Words::tr("Films done"), leastText(filmsText(batch.filmsDone, wording), batch)}};
    if (batch.usedOnce()) {
        why.equation = Words::tr("Films left = volume in the bottle ÷ volume that a film takes: it "
                                 "is poured away after use. One film is 80 square inches: a 135-36 "
                                 "or a 120.");
        why.constants = {forAFilm(*batch.solution, wording)};
    } else {
        why.equation = Words::tr("Films left = (capacity − films per litre done) × litres in the "
                                 "bottle. One film is 80 square inches: a 135-36 or a 120.");
        why.inputs.push_back({Words::tr("That is now"), wearNow(batch, wording.locale)});
        why.constants = {capacity(*batch.solution, wording)};
        if (anyLoad(batch, wasSecond))
            why.notes << Words::tr("As the second of two fixing baths it wears by a fifth for each "
                                   "film: films left are those of a first bath.");
        addDoubt(batch, why);
    }
    why.inputs.push_back({Words::tr("In the bottle"), volumeText(batch.volume, wording)});
    why.constants.push_back(explained(Words::tr("One film"), chemistry::kFilmArea, wording.locale));
    gradeByConstants(why);
    return why;
}

Explanation explainCarried(BottleFigure figure, const ledger::Batch& batch, const Wording& wording)
{
    Explanation why;
    const bool silver = figure == BottleFigure::Silver;
    const auto measured = silver ? batch.silverMeasuredAt : std::nullopt;
    const QString amount =
        silver
            ? Words::tr("%1 g per litre").arg(plainNumber(batch.silver.value(), wording.locale))
            : Words::tr("%1 mg per litre").arg(plainNumber(batch.bromide.value(), wording.locale));
    why.title = silver ? Words::tr("Silver in it") : Words::tr("Bromide in it");
    why.value = measured ? amount : leastText(amount, batch);
    why.equation =
        measured ? Words::tr("What was measured, and what every film since then has left: films ÷ "
                             "litres at that time × grams for a film.")
        : silver ? Words::tr("Every film leaves its silver: films ÷ litres at that time × grams "
                             "for a film. Topping up dilutes it, drawing off does not.")
                 : Words::tr("Every film leaves its bromide: films ÷ litres at that time × "
                             "milligrams for a film. Topping up dilutes it, drawing off does not.");
    if (measured)
        why.inputs.push_back(
            {Words::tr("Measured"), fullDateText(localDate(*measured), wording.locale)});
    else
        why.inputs.push_back({Words::tr("Films done"), filmsText(batch.filmsDone, wording)});
    why.inputs.push_back({Words::tr("In the bottle now"), volumeText(batch.volume, wording)});
    addLoads(batch, measured, silver, wording, why);
    why.constants = {
        explained(*batch.solution, silver ? Figure::Silver : Figure::Bromide, wording)};
    if (silver && batch.solution->silverLimit)
        why.constants.push_back(explained(*batch.solution, Figure::SilverLimit, wording));
    if (silver && anyLoad(batch, wasSecond))
        why.notes << Words::tr("As the second of two fixing baths it gets a fifth of a film's "
                               "silver.");
    if (anyLoad(batch, wasPouredAway))
        why.notes << Words::tr("What was poured away after use took its share along.");
    if (std::any_of(batch.fillings.begin(), batch.fillings.end(),
                    [](const ledger::Filling& filling) { return filling.into; }))
        why.notes << Words::tr("What came with a filling from another bottle is counted in.");
    if (!measured)
        addDoubt(batch, why);
    if (silver)
        why.notes << (measured
                          ? Words::tr("What came since was counted: a film leaves 0.11 to 0.21 g.")
                          : Words::tr("Counted, not measured: a film leaves 0.11 to 0.21 g."));
    gradeByConstants(why);
    return why;
}

} // namespace ullage::app
