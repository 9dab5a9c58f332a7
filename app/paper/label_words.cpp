#include "app/paper/label_words.h"

#include "app/words/hazards.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

struct LabelTr {
    Q_DECLARE_TR_FUNCTIONS(Label)
};

QString labelDate(chemistry::Instant moment, const Wording& wording)
{
    return yearDateText(localDate(moment), wording.locale);
}

QString mixedWords(const ledger::Batch& batch, const Wording& wording)
{
    if (batch.historyUnknown && !batch.dateKnown)
        return LabelTr::tr("found %1, mixed before that").arg(labelDate(batch.mixedAt, wording));
    return LabelTr::tr("mixed %1").arg(labelDate(batch.madeAt, wording));
}

QString discardWords(const ledger::Judged& bottle, const Wording& wording)
{
    const auto by = bottle.assessment.discardBy;
    return by ? LabelTr::tr("discard by %1").arg(labelDate(*by, wording))
              : LabelTr::tr("keeping time not known");
}

// The rule goes by films a litre; on a bottle it is said for a film in just that bottle.
QString wearWords(const ledger::Batch& batch, const Wording& wording)
{
    if (batch.usedOnce()) {
        const auto perFilm = batch.solution->oneShotPerFilm;
        return perFilm ? LabelTr::tr("used once: %1 for each film, then poured away")
                             .arg(volumeText(*perFilm, wording))
                       : LabelTr::tr("used once, then poured away");
    }
    const chemistry::Wear& wear = batch.solution->wear;
    const double litres = chemistry::litres(batch.mixedVolume).value();
    if (wear.rule != chemistry::WearRule::PerFilm || wear.percent <= 0 || litres <= 0)
        return {};
    return LabelTr::tr("add %1 % of the first time for each film before")
        .arg(numberText(wear.percent / litres, 0, wording.locale));
}

void countFilms(LabelWords& words, const ledger::Judged& bottle, const Wording& wording)
{
    const auto left = bottle.assessment.filmsLeft;
    if (!left || bottle.assessment.atLeast)
        return;
    constexpr double kRounding = 0.01; // of sums of thirds
    const double done = bottle.batch.filmsDone.value();
    const double whole = std::floor(done + left->value() + kRounding);
    if (bottle.batch.usedOnce()) {
        words.filmsInWords = LabelTr::tr("enough for %1").arg(filmsLeftText(*left, wording));
        return;
    }
    words.films = static_cast<int>(std::min(whole, 10'000.0));
    words.filmsDone = std::min(words.films, static_cast<int>(std::ceil(done - kRounding)));
    words.filmsInWords =
        LabelTr::tr("%1 of %2 done", "films")
            .arg(filmCountText(done, wording.locale), filmsText(chemistry::Films(whole), wording));
}

QString careWords(formulary::Role role)
{
    using formulary::Role;
    switch (role) {
    case Role::Developer:
        return LabelTr::tr("Gloves, eye protection: it can make skin allergic. Never mix with "
                           "cleaners. Collect the waste.");
    case Role::Fixer:
        return LabelTr::tr("Gloves, eye protection. Never mix with cleaners or acids. Carries "
                           "silver once used: collect it.");
    case Role::Stop:
        return LabelTr::tr("Gloves, eye protection. Never mix with cleaners. Can build pressure: "
                           "open slowly.");
    case Role::WashAid:
    case Role::WettingAgent:
    case Role::Other:
        break;
    }
    return LabelTr::tr("Gloves, eye protection. Never mix with cleaners.");
}

void addHazards(LabelWords& words, const formulary::Solution& solution)
{
    const auto chemicals = hazardousChemicals(solution);
    QStringList named;
    for (const HazardousChemical& chemical : chemicals) {
        named << LabelTr::tr("%1 (%2)", "chemical, its hazard statements")
                     .arg(chemical.name, chemical.statements.join(u' '));
    }
    if (named.isEmpty())
        return;
    words.contains =
        LabelTr::tr("Contains %1: see the data sheet.").arg(named.join(QStringLiteral(", ")));
    words.statements = statementsOf(chemicals);
}

} // namespace

LabelWords labelWords(const ledger::Judged& bottle, const Wording& wording)
{
    const ledger::Batch& batch = bottle.batch;
    const QString contents = shownName(batch.solution->name);
    LabelWords words;
    words.name = QString::fromStdString(batch.name);
    words.contents =
        LabelTr::tr("%1 · %2", "solution, volume").arg(contents, volumeText(batch.volume, wording));
    words.mixed = mixedWords(batch, wording);
    words.discardBy = discardWords(bottle, wording);
    words.wear = wearWords(batch, wording);
    if (batch.vessel)
        words.vessel = LabelTr::tr("in %1", "vessel").arg(shownName(batch.vessel->name));
    words.notForDrinking =
        LabelTr::tr("PHOTOGRAPHIC SOLUTION, NOT FOR DRINKING. Keep from children and animals.");
    words.care = careWords(batch.solution->role);
    countFilms(words, bottle, wording);
    addHazards(words, *batch.solution);
    words.code = QStringList{QString::fromStdString(batch.id), words.name, words.contents,
                             words.mixed, words.discardBy};
    if (!words.filmsInWords.isEmpty())
        words.code << words.filmsInWords;
    return words;
}

} // namespace ullage::app
