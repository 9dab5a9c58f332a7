#include "app/bench/cue_words.h"

#include "app/bench/bench_words.h"
#include "app/bench/big_clock.h"
#include "app/words/number_text.h"

#include <QCoreApplication>
#include <QStringList>

namespace ullage::app
{

using chemistry::Seconds;
using ledger::RunPhase;
using ledger::StepKind;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(BenchCues)
};

// Nothing is asked of the hands until the step is over.
QString waiting(StepKind kind, const QString& left)
{
    return kind == StepKind::Wash ? Words::tr("Let the water run for %1").arg(left)
                                  : Words::tr("Let it stand for %1").arg(left);
}

// A step that is going on and has time left.
CueWords going(const ledger::RunClock& run)
{
    CueWords words;
    QStringList more;
    const auto cue = run.cue();
    const auto water = run.water();
    const bool pouringBack = run.step().kind == StepKind::PourBack;
    if (!pouringBack)
        more << agitationText(run.step().agitation);
    const QString change =
        water.next ? Words::tr("change the water in %1").arg(clockText(*water.next)) : QString();
    const bool waterFirst = water.next && !(cue.change && *cue.change < *water.next);
    if (pouringBack) {
        words.now = Words::tr("Pour back now");
        words.mood = CuePanel::Mood::Act;
    } else if (water.change) {
        words.now = Words::tr("Change the water now");
        words.mood = CuePanel::Mood::Act;
        more << change;
    } else if (cue.agitate) {
        words.now = cue.change ? Words::tr("Agitate now, %1 more").arg(clockText(*cue.change))
                               : Words::tr("Agitate now");
        words.mood = CuePanel::Mood::Act;
        more << change;
    } else if (waterFirst) {
        words.now = Words::tr("Change the water in %1").arg(clockText(*water.next));
        if (cue.change)
            more << Words::tr("agitate in %1").arg(clockText(*cue.change));
    } else if (cue.change) {
        words.now = Words::tr("Agitate in %1").arg(clockText(*cue.change));
        more << change;
    } else {
        words.now = waiting(run.step().kind, clockText(run.left()));
    }
    more.removeAll(QString());
    words.more = more.join(QStringLiteral(" · "));
    return words;
}

} // namespace

CueWords cueWords(const ledger::RunClock& run, const QString& then)
{
    const QString scheme = agitationText(run.step().agitation);
    if (run.phase() == RunPhase::Ready)
        return {Words::tr("Ready: pour, then start"), scheme, CuePanel::Mood::Calm};
    if (run.phase() == RunPhase::Held)
        return {Words::tr("On hold: the film is still in the bath"), scheme, CuePanel::Mood::Calm};
    if (run.left() <= Seconds(0))
        return {Words::tr("Time is up: next step"), then, CuePanel::Mood::Urgent};
    CueWords words = going(run);
    if (!then.isEmpty()) {
        const QString next = Words::tr("then: %1", "next step").arg(then);
        words.more = words.more.isEmpty() ? next : words.more + QStringLiteral(" · ") + next;
    }
    return words;
}

CueWords earlyWords(const ledger::RunClock& run)
{
    return {Words::tr("Only %1 of %2", "time in the bath, time planned")
                .arg(timeText(run.elapsed()), timeText(run.target())),
            Words::tr("Press it once more to leave this step all the same"),
            CuePanel::Mood::Urgent};
}

} // namespace ullage::app
