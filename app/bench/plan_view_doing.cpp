// The plan as it is reckoned: wishes in, bottles, sheet and what stands against it out.
#include "app/bench/plan_view.h"

#include "app/bench/bath_cards.h"
#include "app/bench/bench_words.h"
#include "app/bench/plan_words.h"
#include "app/bench/sheet_words.h"
#include "app/bench/step_list.h"
#include "app/bench/tank_edit.h"
#include "app/bench/wash_edit.h"
#include "app/dialogs/leaflet_time_edit.h"
#include "app/dialogs/times_apart_box.h"
#include "app/widgets/films_edit.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/tab_order.h"
#include "app/widgets/theme.h"
#include "app/widgets/where_from_button.h"
#include "app/widgets/why_not.h"
#include "app/words/number_text.h"
#include "core/ledger/two_baths.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>

#include <algorithm>

namespace ullage::app
{

using chemistry::Celsius;
using ledger::PlanProblemCode;

ledger::LoadWishes PlanView::wishes() const
{
    ledger::LoadWishes wishes{
        .load = ledger::loadOf(m_films->films()),
        .tank = m_tank->tank(),
        .pairs = m_base->pairs(),
        .notebook = &times(),
        .films = m_films->wanted(),
        .parts = double(m_parts->value()),
        .oneShot = m_onceSaid ? std::optional(m_oneShot->isChecked()) : std::nullopt,
        .tabularGrain = m_tabular->isChecked(),
        .sheet = ledger::withWash(m_templates[std::size_t(std::max(0, m_template->currentIndex()))],
                                  m_wash->plan()),
        .washWater = m_wash->plan().water,
        .chosen = m_chosen,
        .developers = ledger::developersFor(times(), m_judged, filmsTyped())};
    if (const auto reading = m_temperature->quantity())
        wishes.temperature = *reading;
    return wishes;
}

void PlanView::refresh()
{
    m_judged = m_host->bottles();
    m_temperature->setWording(m_host->wording());
    m_base->setWording(m_host->wording());
    m_tank->setWording(m_host->wording());
    m_wash->setWording(m_host->wording());
    QStringList names;
    for (const std::string& name : formulary::filmsWithTimes(times()))
        names << QString::fromStdString(name);
    m_films->setKnownNames(names);
    reckonNow();
}

QWidget* PlanView::firstForKeys() const { return m_films->firstForKeys(); }

void PlanView::startAnew()
{
    m_chosen.clear();
    m_onceSaid = false;
    m_base->lookAgain(); // the last run's time may stand for the next
    m_films->setFilms(m_later);
    m_later.clear();
    refresh();
}

void PlanView::setBlocked(bool blocked)
{
    m_blocked = blocked;
    reckonNow();
}

void PlanView::choose(const std::string& batch)
{
    const auto sheet = wishes().sheet.steps;
    const bool two = std::any_of(sheet.begin(), sheet.end(), [](const auto& step) {
        return step.kind == ledger::StepKind::SecondFix;
    });
    for (const ledger::Judged& judged : m_judged) {
        if (judged.batch.id == batch && judged.batch.solution->role == formulary::Role::Developer)
            m_onceSaid = false;
        if (judged.batch.id == batch)
            m_chosen[{judged.batch.solution->role, two && ledger::isSecondBath(judged.batch)}] =
                batch;
    }
    reckonNow();
}

const formulary::Formulary& PlanView::times() const
{
    static const formulary::Formulary kNone;
    return m_host->formulary() ? *m_host->formulary() : kNone;
}

std::vector<formulary::FilmWanted> PlanView::filmsTyped() const
{
    std::vector<formulary::FilmWanted> films;
    for (const ledger::RunFilm& film : m_films->films())
        films.push_back({film.name, film.exposureIndex});
    return films;
}

formulary::TimeFor PlanView::timeWanted() const
{
    const ledger::Judged* developer = m_next.taken(formulary::Role::Developer);
    return {m_films->wanted(), developer ? developer->batch.solution->id : m_developer,
            double(m_parts->value())};
}

QString PlanView::firstToDo(const ledger::LoadWishes& wishes) const
{
    if (wishes.pairs.empty() && m_next.apart)
        return tr("The films want different times.\n\n"
                  "First: under “Different times in one tank” at the left, say which one rules, or "
                  "split the load.");
    if (wishes.pairs.empty())
        return !m_base->offersKnown()
                   ? tr("The steps and their times stand here once the developing time is "
                        "known.\n\nFirst: under “Leaflet time” at the left, type the time that the "
                        "film's leaflet gives for this developer, and its temperature.")
                   : tr("The steps and their times stand here once the developing time is "
                        "known.\n\nFirst: under “Leaflet time” at the left, choose the film's time "
                        "from Times, or type what its leaflet gives.");
    return tr("The steps and their times stand here as soon as films, bottles and thermometer are "
              "known.");
}

void PlanView::reckonNow()
{
    m_oneShot->setEnabled(m_parts->value() == 0);
    m_wash->setRun(m_temperature->quantity(), m_tank->tank().volume);
    ledger::LoadWishes wanted = wishes();
    m_next = ledger::nextLoad(wanted, m_judged);
    const formulary::TimeFor time = timeWanted();
    m_developer = time.developer;
    if (m_base->setWanted(time, m_next, times())) {
        wanted = wishes();
        m_next = ledger::nextLoad(wanted, m_judged);
    }
    showOnce();
    const auto runs = ledger::splitByTime(m_films->films(), m_next.filmTimes);
    m_apart->showTimes(m_next, int(runs.size()), m_host->wording());
    m_baths->show(m_next, wanted, m_host->wording());
    showSplit();
    showSheet(wanted);
    orderTabs(*this); // films and bottles come and go
}

// As the bottle taken is used, until somebody says otherwise. A dilution is always poured away.
void PlanView::showOnce()
{
    const ledger::BathChoice* developer = m_next.plan.bath(formulary::Role::Developer);
    if (m_onceSaid || !developer || m_parts->value() > 0)
        return;
    const QSignalBlocker quiet(m_oneShot);
    m_oneShot->setChecked(developer->need.oneShot);
}

void PlanView::showSplit()
{
    QStringList lines;
    for (const ledger::PlanProblem& problem : m_next.plan.problems) {
        if (problem.code == PlanProblemCode::Tank)
            lines << problemText(problem, m_next, m_host->wording());
    }
    const QStringList parts = splitTexts(m_next, m_host->wording());
    if (!parts.isEmpty())
        lines << tr("Split it into %n run(s):", nullptr, int(parts.size()));
    for (int i = 0; i < parts.size(); ++i)
        lines << QStringLiteral("%1.  %2").arg(i + 1).arg(parts[i]);
    if (!m_later.empty())
        lines << laterText(m_later, m_host->wording());
    m_split->setText(lines.join(u'\n'));
    const bool only = !m_later.empty() && lines.size() == 1;
    m_splitBox->setTitle(only ? tr("One part of the load") : tr("Too much at once"));
    m_splitBox->setVisible(!lines.isEmpty());
    if (auto* take = m_splitBox->findChild<QPushButton*>())
        take->setVisible(!parts.isEmpty());
}

void PlanView::takeFirstPart()
{
    if (m_next.plan.split.empty())
        return;
    std::vector<ledger::RunFilm> now;
    std::vector<ledger::RunFilm> later;
    auto part = m_next.plan.split.front().load;
    for (ledger::RunFilm film : m_films->films()) {
        int taken = 0;
        for (ledger::FilmCount& count : part.films) {
            if (count.format == film.format) {
                taken = std::min(film.count, int(count.count + 0.5));
                count.count -= taken;
            }
        }
        const int rest = film.count - taken;
        if (taken > 0) {
            film.count = taken;
            now.push_back(film);
        }
        if (rest > 0) {
            film.count = rest;
            later.push_back(film);
        }
    }
    takeNow(now, later);
}

void PlanView::splitByTime()
{
    const auto runs = ledger::splitByTime(m_films->films(), m_next.filmTimes);
    if (runs.size() < 2)
        return;
    std::vector<ledger::RunFilm> later;
    for (std::size_t i = 1; i < runs.size(); ++i)
        later.insert(later.end(), runs[i].begin(), runs[i].end());
    takeNow(runs.front(), later);
}

void PlanView::takeNow(const std::vector<ledger::RunFilm>& now,
                       const std::vector<ledger::RunFilm>& later)
{
    m_later.insert(m_later.begin(), later.begin(), later.end());
    m_films->setFilms(now);
}

QString PlanView::typedProblem() const
{
    for (const QString& problem :
         {m_films->problem(), m_temperature->problem(), m_base->problem(), m_wash->problem()}) {
        if (!problem.isEmpty())
            return problem;
    }
    return {};
}

std::optional<PlannedRun> PlanView::planned() const
{
    const auto films = m_films->films();
    if (!m_next.canStart() || films.empty() || !typedProblem().isEmpty())
        return std::nullopt;
    const ledger::LoadWishes wanted = wishes();
    return PlannedRun{ledger::readyRun(wanted, films, m_next, m_host->now()), m_next, m_later,
                      wanted.washWater.has_value()};
}

void PlanView::showSheet(const ledger::LoadWishes& wanted)
{
    const Wording wording = m_host->wording();
    std::vector<StepRow> rows;
    QStringList notes;
    if (m_next.sheet) {
        for (const ledger::RunStep& step : m_next.sheet->steps) {
            QString bottle;
            for (const ledger::Judged& judged : m_judged)
                if (judged.batch.id == step.batch)
                    bottle = QString::fromStdString(judged.batch.name);
            rows.push_back({stepTitle(step, bottle), timeText(step.planned), false, false, false});
            if (step.pour)
                notes << tr("%1: %2", "step, what is poured")
                             .arg(stepTitle(step, bottle),
                                  pourText(*step.pour, wanted.temperature, wording));
        }
        notes.prepend(tr("Whole run %1").arg(timeText(m_next.sheet->whole())));
        notes << timeNotes(*m_next.sheet, wanted.washWater.has_value(), wording);
    }
    const bool nothing = rows.empty();
    m_list->setRows(rows);
    m_ask->refresh();
    m_steps->setVisible(!nothing);
    m_first->setVisible(nothing);
    m_first->setText(nothing ? firstToDo(wanted) : QString());
    m_note->setText(notes.join(u'\n'));

    QString problem = typedProblem();
    const bool sheetStands = planned().has_value();
    setWhyNot(m_print, sheetStands ? QString() : tr("There are no steps to print yet."));
    if (problem.isEmpty() && m_blocked)
        problem = tr("A run is waiting to be taken up: see above.");
    // That a time is still to be given is said in the place of the steps, and is no mistake yet.
    const bool noTimeYet =
        wanted.pairs.empty() && m_next.refusal && m_next.refusal->code == ErrorCode::NoFigure;
    if (problem.isEmpty() && m_next.refusal && !m_next.plan.blocked() && !noTimeYet)
        problem = refusalText(*m_next.refusal, wording);
    if (problem.isEmpty() && m_next.plan.blocked())
        problem = problemText(m_next.plan.problems.front(), m_next, wording);
    m_problem->setText(problem);
    m_problem->setVisible(!problem.isEmpty());
    m_start->setEnabled(problem.isEmpty() && sheetStands);
    // Going on against advice stays possible, but never looks like the plain way.
    const auto& plan = m_next.plan;
    const bool against =
        plan.has(PlanProblemCode::TestFirst) || plan.has(PlanProblemCode::CapacityShort) ||
        plan.has(PlanProblemCode::Tank) || plan.has(PlanProblemCode::NotMarkedDissolved);
    m_start->setText(plan.has(PlanProblemCode::TestFirst) ? tr("To the clock without the test")
                     : against                            ? tr("To the clock all the same")
                                                          : tr("To the clock"));
    setButtonLook(m_start, against ? ButtonLook::Plain : ButtonLook::Primary);
}

void PlanView::start()
{
    const ledger::LoadWishes wanted = wishes();
    if (!m_next.canStart() || m_blocked)
        return;
    // What a bottle can still do stands on its card, and in the button.
    if (!m_question.sure(this, {.load = wanted.load}, {}, m_host->wording()))
        return;
    m_memory->remember(*wanted.tank);
    m_memory->setLastTemplate(m_template->currentText());
    const auto films = m_films->films();
    m_memory->setLastFormat(QString::fromStdString(films.front().format));
    if (const ledger::Judged* developer = m_next.taken(formulary::Role::Developer))
        m_host->setBaseTimes(developer->batch.solution->id, wanted.pairs, wanted.parts,
                             m_base->usedFor());
    emit ready(ledger::readyRun(wanted, films, m_next, m_host->now()));
}

} // namespace ullage::app
