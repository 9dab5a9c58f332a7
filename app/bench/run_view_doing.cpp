// The run as it goes: what the keys do, what is shown and heard.
#include "app/bench/run_view.h"

#include "app/bench/agitation_strip.h"
#include "app/bench/bench_words.h"
#include "app/bench/big_clock.h"
#include "app/bench/cue_panel.h"
#include "app/bench/cue_words.h"
#include "app/bench/reading_box.h"
#include "app/bench/step_list.h"
#include "app/bench/tank_side.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "core/chemistry/time_units.h"

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage::app
{

using chemistry::Seconds;
using ledger::RunPhase;

namespace
{

constexpr double kSoon = 10;   // s before the end of a step
constexpr int kAskedFor = 100; // ticks

// The button that the Tab key went to keeps the Space bar for itself.
QPushButton* tabbedButton(const QWidget* view, const QPushButton* hold)
{
    auto* button = qobject_cast<QPushButton*>(QApplication::focusWidget());
    return button && button != hold && view->isAncestorOf(button) ? button : nullptr;
}

} // namespace

QString RunView::bottle(const ledger::RunStep& step) const
{
    const auto state = m_run->state();
    const ledger::RunBath* bath = state.bath(step.batch);
    return bath ? QString::fromStdString(bath->name) : QString();
}

QStringList RunView::titles() const
{
    QStringList titles;
    for (const ledger::RunStep& step : m_run->state().sheet.steps)
        titles << stepTitle(step, bottle(step));
    return titles;
}

void RunView::space()
{
    if (!m_run)
        return;
    if (auto* button = tabbedButton(this, m_hold); button && sender() != m_hold) {
        button->click();
        return;
    }
    m_asked = 0;
    switch (m_run->phase()) {
    case RunPhase::Ready:
        m_run->start();
        break;
    case RunPhase::Running:
        m_run->hold();
        break;
    case RunPhase::Held:
        m_run->goOn();
        break;
    case RunPhase::Done:
        return;
    }
    showStep();
    emit stepChanged();
}

void RunView::enter()
{
    if (!m_run)
        return;
    if (m_reading->isOpen()) {
        m_reading->take();
        return;
    }
    if (m_run->farTooEarly() && m_asked == 0) {
        m_asked = kAskedFor;
        showClock();
        return;
    }
    m_asked = 0;
    if (m_run->phase() == RunPhase::Ready)
        m_run->start();
    else
        m_run->next();
    showStep();
    emit stepChanged();
    if (m_run->phase() == RunPhase::Done)
        emit finished();
}

void RunView::skip()
{
    if (!m_run || m_run->phase() == RunPhase::Ready)
        return;
    m_asked = 0;
    m_run->skip();
    showStep();
    emit stepChanged();
    if (m_run->phase() == RunPhase::Done)
        emit finished();
}

void RunView::back()
{
    if (!m_run)
        return;
    m_asked = 0;
    m_run->back();
    showStep();
    emit stepChanged();
}

void RunView::takeReading()
{
    if (m_run && !m_reading->isOpen())
        m_reading->open(*m_run, titles(), m_wording);
}

bool RunView::escape()
{
    if (m_reading->isOpen()) {
        m_reading->close();
        return true;
    }
    if (m_full) {
        emit fullWanted(false);
        return true;
    }
    return false;
}

// What goes into the tank now, and, before its step begins, what goes in next.
QString RunView::pourWords(const ledger::RunState& state, const QStringList& names) const
{
    QStringList lines;
    const auto& steps = state.sheet.steps;
    if (const auto& pour = steps[state.current].pour)
        lines << tr("Pour in: %1").arg(pourText(*pour, state.temperature, m_wording));
    const std::size_t next = state.current + 1;
    if (next < steps.size() && steps[next].pour)
        lines << tr("Have ready: %1: %2", "step, what is poured")
                     .arg(names[int(next)],
                          pourText(*steps[next].pour, state.temperature, m_wording));
    return lines.join(u'\n');
}

void RunView::showStep()
{
    const ledger::RunState state = m_run->state();
    const QStringList names = titles();
    std::vector<StepRow> rows;
    for (std::size_t i = 0; i < state.times.size(); ++i) {
        const ledger::StepTime& time = state.times[i];
        const bool past = time.ended.has_value();
        rows.push_back({names[int(i)], timeText(past ? time.real : time.target),
                        past && !time.skipped, time.skipped,
                        i == state.current && state.phase != RunPhase::Done});
    }
    m_list->setRows(rows);
    const QRect row = m_list->rowRect(int(state.current));
    m_scroll->ensureVisible(row.center().x(), row.center().y(), 0, row.height());
    const ledger::RunStep& step = m_run->step();
    m_title->setText(names[int(state.current)]);
    m_count->setText(tr("step %1 of %2").arg(state.current + 1).arg(rows.size()));
    m_strip->setStep(step.agitation, m_run->target());
    m_caution->setText(stepCaution(step, bottle(step)));
    m_caution->setVisible(!m_caution->text().isEmpty());
    m_pour->setText(pourWords(state, names));
    m_pour->setVisible(!m_pour->text().isEmpty());
    m_hold->setText(state.phase == RunPhase::Held ? tr("Go on") : tr("Hold"));
    m_hold->setEnabled(state.phase == RunPhase::Running || state.phase == RunPhase::Held);
    m_skip->setEnabled(m_hold->isEnabled());
    m_back->setEnabled(state.current > 0);
    m_side->setRun(state, m_wording);
    showClock();
}

// While leaving would come far too early, it never looks like the thing to do.
void RunView::showNext()
{
    const bool early = m_run->farTooEarly();
    m_asked = early ? m_asked : 0;
    const std::size_t next = m_run->current() + 1;
    const auto& steps = m_run->sheet().steps;
    if (m_run->phase() == RunPhase::Ready)
        m_next->setText(tr("Start the clock"));
    else if (m_asked > 0)
        m_next->setText(
            tr("Leave it after %1", "time in the bath").arg(timeText(m_run->elapsed())));
    else
        m_next->setText(
            nextText(next < steps.size() ? std::optional(steps[next].kind) : std::nullopt));
    const ButtonLook look = !early        ? ButtonLook::Primary
                            : m_asked > 0 ? ButtonLook::Danger
                                          : ButtonLook::Quiet;
    if (std::exchange(m_nextLook, look) != look)
        setButtonLook(m_next, look);
}

void RunView::showClock()
{
    showNext();
    const Seconds left = m_run->left();
    const RunPhase phase = m_run->phase();
    const bool over = left < Seconds(0);
    const QString of = timeText(m_run->target());
    m_clock->show(left,
                  over                       ? BigClock::State::Over
                  : phase == RunPhase::Held  ? BigClock::State::Held
                  : phase == RunPhase::Ready ? BigClock::State::Waiting
                                             : BigClock::State::Running,
                  phase == RunPhase::Held ? tr("on hold, left of %1").arg(of)
                  : over                  ? tr("over %1").arg(of)
                                          : tr("left of %1").arg(of));
    m_strip->setNow(m_run->elapsed());
    const std::size_t next = m_run->current() + 1;
    const auto& steps = m_run->sheet().steps;
    const QString then =
        next < steps.size() ? stepTitle(steps[next], bottle(steps[next])) : QString();
    const CueWords cue = m_asked > 0 ? earlyWords(*m_run) : cueWords(*m_run, then);
    m_cue->show(cue.now, cue.more, cue.mood, m_cues.visual);

    const Seconds rest = m_run->leftOfRun();
    const auto ends = chemistry::addDays(m_run->state().savedAt, chemistry::inDays(rest));
    QStringList footer{
        tr("Whole run %1 · ends about %2")
            .arg(timeText(m_run->state().sheet.whole()),
                 m_wording.locale.toString(localTime(ends).time(), QLocale::ShortFormat))};
    const auto state = m_run->state();
    for (const ledger::RunStep& s : state.sheet.steps)
        if (s.kind == ledger::StepKind::Fix && state.sheet.fixing)
            footer << fixSourceText(*state.sheet.fixing, m_wording);
    footer << tr("Nothing is counted until the run is logged");
    m_footer->setText(footer.join(u'\n'));
}

void RunView::tick()
{
    if (!m_run || m_run->phase() == RunPhase::Done)
        return;
    m_asked = std::max(0, m_asked - 1);
    showClock();
    m_reading->tick();
    sound();
}

void RunView::sound()
{
    if (m_run->phase() != RunPhase::Running)
        return;
    const auto play = [this](CueTone tone) {
        if (m_cues.sound)
            m_sounds->play(tone);
    };
    if (m_run->current() != m_heardStep) {
        m_heardStep = m_run->current();
        m_heardAgitate = m_heardSoon = m_heardOver = false;
    }
    const Seconds left = m_run->left();
    const bool agitate = m_run->cue().agitate;
    if (left <= Seconds(0)) {
        if (!m_heardOver)
            play(CueTone::StepOver);
        m_heardOver = m_heardSoon = true;
        m_heardAgitate = false;
        return;
    }
    m_heardOver = false; // a reading may have given the step more time
    if (left <= Seconds(kSoon) && !m_heardSoon && m_run->target() > Seconds(2 * kSoon))
        play(CueTone::StepSoon);
    m_heardSoon = left <= Seconds(kSoon);
    if (agitate != m_heardAgitate)
        play(agitate ? CueTone::Agitate : CueTone::Rest);
    m_heardAgitate = agitate;
}

} // namespace ullage::app
