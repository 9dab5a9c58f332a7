// The life of a run: begun, saved, found again, logged, dropped.
#include "app/bench/bench_page.h"

#include "app/bench/bench_words.h"
#include "app/bench/plan_view.h"
#include "app/bench/run_logged.h"
#include "app/bench/run_view.h"
#include "app/widgets/card.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"

#include <QLabel>
#include <QPushButton>

namespace ullage::app
{

using ledger::RunPhase;

void BenchPage::begin(const ledger::RunState& state)
{
    m_run = std::make_unique<ledger::RunClock>(state, m_clocks.steady, m_clocks.wall);
    m_view->setRun(m_run.get(), m_host->wording());
    m_banner->hide();
    showStage(Stage::Run);
    keep();
}

void BenchPage::save()
{
    if (m_run)
        written(m_keeper->saveNow(m_run->state()));
}

std::optional<PlannedRun> BenchPage::sheet() const
{
    return m_run ? std::optional(PlannedRun{m_run->state()}) : m_plan->planned();
}

void BenchPage::keep()
{
    wake();
    if (m_run)
        m_keeper->save(m_run->state());
}

void BenchPage::written(const Result<void>& done)
{
    wake();
    if (!m_run || stage() != Stage::Run)
        return;
    if (!done)
        m_view->setTrouble(tr("The run cannot be saved: a crash would lose it. %1")
                               .arg(refusalText(done.error(), m_host->wording())));
    else
        m_view->setTrouble(m_wake.state() == WakeLock::State::Unavailable
                               ? tr("The screen cannot be kept awake here: set it so yourself.")
                               : QString());
}

void BenchPage::wake()
{
    const bool running = m_run && stage() == Stage::Run;
    if (!running) {
        if (m_wake.state() != WakeLock::State::Off)
            m_wake.release();
        return;
    }
    if (m_wake.state() == WakeLock::State::Off)
        m_wake.hold(tr("A film is being developed"));
}

void BenchPage::bookChanged()
{
    save();
    m_view->setRun(nullptr, m_host->wording());
    m_run.reset();
    showStage(Stage::Plan);
    lookForRun();
    m_plan->startAnew();
}

void BenchPage::lookForRun()
{
    m_keeper.reset(); // what it was handed belongs to the book before
    m_keeper = std::make_unique<RunKeeper>(m_host->runFile(),
                                           [this](const Result<void>& done) { written(done); });
    const RunFile& file = m_keeper->file();
    m_found.reset();
    m_banner->hide();
    m_plan->setBlocked(false);
    if (file.path().isEmpty())
        return;
    auto found = file.load();
    if (!found) {
        const auto aside = file.putAside();
        showBanner(aside ? tr("A run was in hand, but its file cannot be read. It was put aside "
                              "as %1; enter what was done by hand. %2")
                               .arg(*aside, refusalText(found.error(), m_host->wording()))
                         : tr("A run was in hand, but its file %1 can neither be read nor put "
                              "aside.")
                               .arg(file.path()),
                   false);
        return;
    }
    if (!*found)
        return;
    if (isLogged(*m_host, **found)) {
        m_keeper->remove();
        return;
    }
    m_found = std::move(**found);
    // Where it would be now, had nothing happened.
    const ledger::RunClock would(*m_found, m_clocks.steady, m_clocks.wall);
    const ledger::RunState state = would.state();
    const ledger::RunBath* bath = state.bath(would.step().batch);
    const QString title =
        stepTitle(would.step(), bath ? QString::fromStdString(bath->name) : QString());
    QString text =
        tr("A run was in hand when the program ended: %1. %2, saved %3.")
            .arg(filmsLine(state.films, m_host->wording()), title,
                 momentText(m_found->savedAt, m_clocks.wall(), m_host->wording().locale));
    if (state.phase == RunPhase::Running)
        text += would.left() < chemistry::Seconds(0)
                    ? tr(" The step has run over by %1.").arg(timeText(-would.left()))
                    : tr(" There are %1 left of the step.").arg(timeText(would.left()));
    showBanner(text, true);
    m_plan->setBlocked(true);
}

void BenchPage::showBanner(const QString& text, bool canGoOn)
{
    m_bannerText->setText(text);
    m_bannerGoOn->setVisible(canGoOn);
    m_bannerLog->setVisible(canGoOn);
    m_bannerDrop->setText(canGoOn ? tr("Delete run…") : tr("Close"));
    m_banner->show();
    if (canGoOn)
        m_bannerGoOn->setFocus();
}

void BenchPage::goOn()
{
    if (!m_found)
        return;
    const ledger::RunState state = *m_found;
    m_found.reset();
    m_plan->setBlocked(false);
    begin(state);
    if (m_run->phase() == RunPhase::Done)
        ask(FinishView::Why::Finished);
}

void BenchPage::logAsFar()
{
    goOn();
    if (m_run)
        ask(m_run->phase() == RunPhase::Done ? FinishView::Why::Finished
                                             : FinishView::Why::Abandoned);
}

void BenchPage::dropFound()
{
    if (!m_found) {
        m_banner->hide();
        return;
    }
    // Dropping asks the same question: bottles that film went into are not forgotten.
    logAsFar();
}

void BenchPage::ask(FinishView::Why why)
{
    keep();
    m_finish->ask(m_run->state(), why, m_host->wording(), m_host->bottles());
    showStage(Stage::Finish);
}

void BenchPage::logRun()
{
    ledger::RunState state = m_run->state();
    const std::string notes = m_finish->notes().toStdString();
    for (ledger::RunFilm& film : state.films)
        film.notes += (film.notes.empty() || notes.empty() ? "" : "; ") + notes;
    const auto at = ledger::lastBathAt(state);
    // Marked before it is done: should the program end between the two, it is not logged twice.
    state.loggedAt = at;
    if (const auto marked = m_keeper->saveNow(state); !marked) {
        m_finish->setRefusal(refusalText(marked.error(), m_host->wording()));
        return;
    }
    const auto done = m_host->log(ledger::filmRun(state, m_finish->closings()), at);
    if (!done) {
        m_finish->setRefusal(refusalText(done.error(), m_host->wording()));
        return;
    }
    forgetRun();
    emit logged(*done);
}

void BenchPage::drop() { forgetRun(); }

void BenchPage::forgetRun()
{
    m_view->setRun(nullptr, m_host->wording());
    m_run.reset();
    if (!m_keeper->remove())
        showBanner(
            tr("The file of the run in hand could not be removed: %1").arg(m_keeper->file().path()),
            false);
    m_plan->startAnew();
    showStage(Stage::Plan);
}

void BenchPage::plan(const std::string& batch)
{
    if (stage() != Stage::Plan)
        return;
    m_plan->refresh();
    m_plan->choose(batch);
}

} // namespace ullage::app
