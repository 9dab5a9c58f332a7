#include "app/bench/plan_words.h"

#include "app/words/event_words.h"
#include "app/words/formulary_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "app/words/verdict_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

using chemistry::Films;
using chemistry::Millilitres;
using ledger::ChoiceReason;
using ledger::PlanProblemCode;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(BenchPlan)
};

QString name(const ledger::Judged& judged) { return QString::fromStdString(judged.batch.name); }

QString tankText(const ledger::TankFinding& finding, const Wording& wording)
{
    const QString format = filmFormatShort(finding.format);
    switch (finding.fault) {
    case ledger::TankFault::NoReel:
        return Words::tr("The tank has no place for %1.").arg(format);
    case ledger::TankFault::TooMany:
        return Words::tr("%1 × %2 is more than the tank has room for (%3).")
            .arg(numberText(finding.number, 1, wording.locale), format,
                 numberText(std::floor(finding.limit + 1e-9), 0, wording.locale));
    case ledger::TankFault::TooLittleSolution:
        break;
    }
    return Words::tr("These reels need %1 to be covered; the tank is filled with %2.")
        .arg(volumeText(Millilitres(finding.number), wording),
             volumeText(Millilitres(finding.limit), wording));
}

} // namespace

QString choiceText(const ledger::BathChoice& choice)
{
    switch (choice.why) {
    case ChoiceReason::OnlyOne:
        return std::any_of(choice.candidates.begin(), choice.candidates.end(),
                           [](const ledger::Candidate& c) { return c.can() && c.otherSolution; })
                   ? Words::tr("The only bottle of this developer with room for it.")
                   : Words::tr("The only one that can take this load.");
    case ChoiceReason::SameSet:
        return Words::tr("Mixed as a set with the developer.");
    case ChoiceReason::OldestThatCan:
        return Words::tr("The oldest that can still take this load.");
    case ChoiceReason::Chosen:
        return Words::tr("Your choice.");
    case ChoiceReason::MoreWorn:
        return Words::tr("The more worn goes first, the other second.");
    case ChoiceReason::SecondBefore:
        return Words::tr("It was the second bath of this one before.");
    case ChoiceReason::LeastWorn:
        return Words::tr("The least worn of the others.");
    case ChoiceReason::NoneCan:
        break;
    }
    return choice.taken ? Words::tr("None can take the whole load; this one comes nearest.")
                        : Words::tr("There is no bottle to use.");
}

QString nextBestText(const ledger::BathChoice& choice, const ledger::NextLoad& so,
                     const Wording& wording)
{
    if (!choice.next || !choice.taken)
        return {};
    const ledger::Judged& next = so.judged[choice.candidates[*choice.next].judged];
    const ledger::Judged& taken = so.judged[choice.candidates[*choice.taken].judged];
    const int days =
        int(std::lround(chemistry::daysBetween(taken.batch.mixedAt, next.batch.mixedAt).value()));
    const QString bottle = QStringLiteral("%1 (%2)").arg(name(next), bottleFacts(next, wording));
    if (days > 0)
        return Words::tr("Next best: %1, mixed %n day(s) later.", nullptr, days).arg(bottle);
    if (days < 0)
        return Words::tr("Next best: %1, mixed %n day(s) earlier.", nullptr, -days).arg(bottle);
    return Words::tr("Next best: %1.").arg(bottle);
}

QString bottleFacts(const ledger::Judged& judged, const Wording& wording)
{
    const QString volume = QStringLiteral("%1 · %2").arg(shownName(judged.batch.solution->name),
                                                         volumeText(judged.batch.volume, wording));
    if (!judged.assessment.filmsLeft)
        return volume;
    return Words::tr("%1, %2 left")
        .arg(volume, filmsLeftText(*judged.assessment.filmsLeft, wording));
}

QString candidateText(const ledger::Candidate& candidate, const ledger::NextLoad& so,
                      const Wording& wording)
{
    const ledger::Judged& judged = so.judged[candidate.judged];
    if (candidate.hindrance == ledger::Hindrance::Discard)
        return Words::tr("%1: discard").arg(name(judged));
    QString text = QStringLiteral("%1, %2").arg(name(judged), bottleFacts(judged, wording));
    if (candidate.hindrance == ledger::Hindrance::VolumeShort)
        text += Words::tr(" · too little");
    else if (candidate.hindrance == ledger::Hindrance::CapacityShort)
        text += Words::tr(" · not for the whole load");
    else if (candidate.hindrance == ledger::Hindrance::Worn)
        text += Words::tr(" · has done film");
    else if (candidate.sameSet)
        text += Words::tr(" · same set");
    return text;
}

QString problemText(const ledger::PlanProblem& problem, const ledger::NextLoad& so,
                    const Wording& wording)
{
    const QString bottle = problem.judged ? name(so.judged[*problem.judged]) : QString();
    switch (problem.code) {
    case PlanProblemCode::NoBottle:
        return Words::tr("%1: no bottle on the shelf can be used. Mix one first.")
            .arg(roleName(*problem.role));
    case PlanProblemCode::VolumeShort:
        return Words::tr("%1 holds %2; the tank needs %3 of it.")
            .arg(bottle, volumeText(Millilitres(problem.limit), wording),
                 volumeText(Millilitres(problem.number), wording));
    case PlanProblemCode::LeftOut:
        return Words::tr("%1 holds %2, the tank needs %3: planned without a bottle of the shelf.")
            .arg(bottle, volumeText(Millilitres(problem.limit), wording),
                 volumeText(Millilitres(problem.number), wording));
    case PlanProblemCode::CapacityShort:
        return Words::tr("%1 has %2 left; this load is %3.")
            .arg(bottle, filmsLeftText(Films(problem.limit), wording),
                 filmsText(Films(problem.number), wording));
    case PlanProblemCode::Tank:
        return tankText(*problem.finding, wording);
    case PlanProblemCode::TestFirst:
        for (const ledger::Reason& reason : so.judged[*problem.judged].assessment.reasons) {
            if (reason.code == problem.reason) {
                const ledger::Judged& judged = so.judged[*problem.judged];
                return Words::tr("Test %1 first: %2")
                    .arg(bottle, reasonSentence(reason, judged.batch, judged.assessment, wording));
            }
        }
        break;
    case PlanProblemCode::Discard:
        return Words::tr("%1 is to be discarded.").arg(bottle);
    case PlanProblemCode::NotMarkedDissolved:
        return problem.noBottle
                   ? Words::tr("Nobody has marked %1 as dissolved yet: look whether it is clear.")
                         .arg(bottle)
                   : Words::tr("Nobody has marked %1 as dissolved yet.").arg(bottle);
    case PlanProblemCode::Worn:
        return Words::tr("%1 has done film: for one-shot use take a fresh bottle.").arg(bottle);
    case PlanProblemCode::NoSecondBath:
        return Words::tr("No bottle for a second fixing bath: the whole time goes in the first.");
    case PlanProblemCode::ExchangeDue:
        return Words::tr("Exchange the baths: %1 takes twice as long to clear as when fresh. It is "
                         "discarded, and %2 takes its place.")
            .arg(bottle, name(so.judged[*problem.other]));
    }
    return {};
}

QStringList splitTexts(const ledger::NextLoad& so, const Wording& wording)
{
    QStringList lines;
    for (const ledger::SplitPart& part : so.plan.split) {
        QStringList bottles;
        for (const auto& bottle : {part.developer, part.fixer})
            if (bottle)
                bottles << name(so.judged[*bottle]);
        const QString load = loadText(part.load, wording.locale);
        lines << (bottles.isEmpty()
                      ? Words::tr("%1: fresh bottles are needed").arg(load)
                      : Words::tr("%1 in %2").arg(load, bottles.join(Words::tr(" and "))));
    }
    return lines;
}

} // namespace ullage::app
