#include "app/dialogs/run_dialog.h"

#include "app/dialogs/base_times_edit.h"
#include "app/dialogs/film_rows.h"
#include "app/dialogs/known_times.h"
#include "app/dialogs/top_up_offers.h"
#include "app/widgets/card.h"
#include "app/widgets/factor_rows.h"
#include "app/widgets/figure_label.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/cautions.h"
#include "app/words/number_text.h"
#include "app/words/verdict_words.h"
#include "core/formulary/field_of.h"
#include "core/ledger/deed_events.h"
#include "core/ledger/entry_fields.h"

#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

using formulary::Role;

const QString kFilms = QStringLiteral("films");
const QString kTimes = QStringLiteral("times");
const QString kBaths = QStringLiteral("baths");
const QString kThermometerFigure = QStringLiteral("thermometer");
constexpr double kUsualTemperature = 20;

} // namespace

RunDialog::RunDialog(const DialogContext& context, const Bottle* first, QWidget* parent)
    : DeedDialog(context, tr("Run film"), parent)
{
    buildForm();
    buildSide();
    if (first && first->assessment.verdict != ledger::Verdict::Discard)
        m_baths->choose(*first);
    connect(m_films, &FilmRows::changed, this, &RunDialog::refresh);
    connect(m_thermometer, &QuantityEdit::valueChanged, this, &RunDialog::refresh);
    connect(m_times, &BaseTimesEdit::changed, this, &RunDialog::refresh);
    connect(m_baths, &BathTable::changed, this, &RunDialog::refresh);
    refresh();
    setDeed(tr("Log this run"));
    showFollows(Follows::WhenDatedBack);
    m_films->setFocus();
}

void RunDialog::buildForm()
{
    m_films = new FilmRows(wording(), this);
    m_films->addFilms(QStringLiteral("135-36"), 1);
    addRow(kFilms, tr("&Film: how many, which format"), m_films, Width::Half);
    m_times = new BaseTimesEdit(wording(), this);
    addRow(kTimes, tr("Film &maker's time, fresh developer"), m_times, Width::Half);
    m_thermometer =
        addQuantity(formulary::fieldOf(&ledger::RunTimes::temperature), tr("&Thermometer"));
    m_thermometer->setRequired(true);
    m_thermometer->setValue(
        preferences().lastFigure(kThermometerFigure).value_or(kUsualTemperature));
    connect(addWhen({}, {}, Width::Half), &WhenEdit::changed, this, &RunDialog::refresh);
    m_baths = new BathTable(context(), this);
    addRow(kBaths, tr("&Baths"), m_baths);
    m_topUps = new TopUpOffers(this);
    addWide(m_topUps);
}

void RunDialog::buildSide()
{
    m_develop = new Card(tr("Develop"), this);
    m_time = new FigureLabel(m_develop);
    m_time->setFont(Theme::font(TextRole::Hero));
    m_note = new PlainLabel(m_develop);
    m_note->setWordWrap(true);
    setTone(m_note, Tone::Quiet);
    m_rows = new FactorRows(m_develop);
    m_fix = new PlainLabel(m_develop);
    m_fix->setWordWrap(true);
    m_warnings = new PlainLabel(m_develop);
    m_warnings->setWordWrap(true);
    setTone(m_warnings, Tone::Near);
    for (QWidget* widget : {static_cast<QWidget*>(m_time), static_cast<QWidget*>(m_note),
                            static_cast<QWidget*>(m_rows), static_cast<QWidget*>(m_fix),
                            static_cast<QWidget*>(m_warnings)})
        m_develop->body()->addWidget(widget);
    side()->addWidget(m_develop);
    addCautions(tr("Before you pour"), runningCautions());
}

// Times are remembered for each developer: with another one, other times.
void RunDialog::developerChanged()
{
    const Bottle* developer = m_baths->chosen(Role::Developer);
    const std::string solution = developer ? developer->batch.solution->id : std::string();
    if (solution == m_developer)
        return;
    m_developer = solution;
    const QSignalBlocker quiet(m_times); // whoever asked shows the rest
    m_times->setPairs(preferences().baseTimes(solution));
    m_times->setKnown(knownTimes(session().formulary(), solution, {}, wording()));
}

// The films that the time shown was picked for, or was last used for.
std::vector<formulary::FilmWanted> RunDialog::timeFor() const
{
    if (const auto* known = m_times->chosen())
        return {known->film};
    const bool last = m_times->pairs() == preferences().baseTimes(m_developer);
    return last ? preferences().baseTimesFor(m_developer) : std::vector<formulary::FilmWanted>();
}

QString RunDialog::timeShown() const { return m_time->text(); }

// As they were at the moment given, so that a run entered late is timed by the wear of then.
const std::vector<ledger::Judged>& RunDialog::bottlesThen()
{
    const chemistry::Instant at = moment();
    if (m_thenAt == at)
        return m_then;
    m_thenAt = at;
    m_then.clear();
    for (const Bottle& bottle : session().bottles()) {
        auto then = session().book().batch(bottle.batch.id, at);
        const ledger::Batch& batch = then ? *then : bottle.batch;
        m_then.push_back({batch, ledger::assess(batch)});
    }
    return m_then;
}

ledger::NextLoad RunDialog::next()
{
    ledger::LoadWishes wishes{
        .load = m_films->load(), .pairs = m_times->pairs(), .needs = m_baths->needs()};
    wishes.developers = ledger::developersFor(session().formulary(), bottlesThen(), {});
    if (const auto reading = m_thermometer->value())
        wishes.temperature = chemistry::Celsius(*reading);
    return ledger::nextLoad(wishes, bottlesThen());
}

NextFilm RunDialog::developing(const ledger::NextLoad& next) const
{
    const ledger::Judged* developer = next.taken(Role::Developer);
    if (!developer)
        return {.note = tr("No developer is chosen.")};
    if (!m_thermometer->value())
        return {.note = tr("Read the thermometer.")};
    NextFilm film = nextFilm(*developer, next.developing,
                             chemistry::Celsius(*m_thermometer->value()), wording());
    if (m_times->pairs().empty())
        film.note = tr("times the film maker's time, once that is typed in");
    return film;
}

QString RunDialog::fixing(const ledger::NextLoad& next) const
{
    const ledger::Judged* fixer = next.taken(Role::Fixer);
    if (!fixer || !m_thermometer->value())
        return {};
    if (!next.fixing)
        return tr("Fix for twice the clearing time: test a piece of film, none is on record.");
    QString text = next.fixing->from == ledger::ClearingFrom::Tests
                       ? tr("Fix for %1, twice the clearing time.")
                       : tr("Fix for %1, twice the clearing time of the fresh solution: no test is "
                            "on record.");
    text = text.arg(timeText(next.fixing->time, TimeStep::FiveSeconds));
    if (next.fixing->raisedTo)
        text = tr("Fix for %1, the packet's shortest time: twice the clearing time would be less.")
                   .arg(timeText(next.fixing->time, TimeStep::FiveSeconds));
    if (fixer->batch.solution->tabularFactor)
        text += u' ' + tr("For tabular grains %1.")
                           .arg(timeText(next.fixingTabular->time, TimeStep::FiveSeconds));
    return text;
}

void RunDialog::addBottleWarnings(const ledger::NextLoad& next, QStringList& warnings) const
{
    using Code = ledger::PlanProblemCode;
    std::optional<std::size_t> reasoned; // of each bottle the gravest reason only
    for (const ledger::PlanProblem& problem : next.plan.problems) {
        if (!problem.judged)
            continue;
        const ledger::Judged& bottle = next.judged[*problem.judged];
        const QString name = QString::fromStdString(bottle.batch.name);
        if (problem.code == Code::NotMarkedDissolved) {
            warnings
                << tr("Nobody has marked %1 as dissolved yet: look whether it is clear.").arg(name);
        } else if (problem.reason && reasoned != problem.judged) {
            reasoned = problem.judged;
            const auto reasons = forReading(bottle.assessment.reasons);
            warnings << tr("%1: %2", "bottle, reason")
                            .arg(name, reasonSentence(reasons.front(), bottle.batch,
                                                      bottle.assessment, wording()));
        } else if (problem.code == Code::Worn) {
            warnings << tr("%1 has done film: what is thrown away after one load is taken from a "
                           "fresh bottle.")
                            .arg(name);
        } else if (problem.code == Code::CapacityShort) {
            warnings << tr("%1 has %2 left; this load is %3.")
                            .arg(name, filmsLeftText(chemistry::Films(problem.limit), wording()),
                                 filmsText(chemistry::Films(problem.number), wording()));
        }
    }
}

void RunDialog::offerTopUps()
{
    std::vector<TopUpOffers::Bath> baths;
    for (const ledger::Bath& bath : m_baths->baths()) {
        if (!bath.oneShot)
            baths.push_back({bath.batch, bath.lost, bath.airLeft});
    }
    std::vector<ledger::Judged> bottles;
    for (const Bottle& bottle : session().bottles())
        bottles.push_back({bottle.batch, bottle.assessment});
    m_topUps->setRun(baths, m_films->load().units(), bottles, wording());
}

void RunDialog::refresh()
{
    m_baths->propose(next());
    developerChanged();
    offerTopUps();
    const ledger::NextLoad load = next(); // with the times of the developer proposed
    const NextFilm film = developing(load);
    m_time->setText(film.time);
    m_time->setVisible(!film.time.isEmpty());
    QStringList notes{film.note};
    if (const auto* known = m_times->chosen(); known && !film.time.isEmpty())
        notes << (known->source.isEmpty()
                      ? tr("%1: no source given.").arg(known->name)
                      : tr("%1, source: %2.", "film, source").arg(known->name, known->source));
    else if (!m_times->pairs().empty() && !film.time.isEmpty())
        notes << tr("for %1", "what a time is for")
                     .arg(timeForText({timeFor(), m_developer, 0}, session().formulary(),
                                      wording()));
    notes.removeAll(QString());
    m_note->setText(notes.join(u'\n'));
    m_rows->setRows(film.rows);
    m_rows->setVisible(!film.rows.empty());
    m_fix->setText(fixing(load));
    m_fix->setVisible(!m_fix->text().isEmpty());
    m_warned = film.warnings;
    addBottleWarnings(load, m_warned);
    m_warnings->setText(m_warned.join(u'\n'));
    m_warnings->setVisible(!m_warned.isEmpty());
}

bool RunDialog::restIsFine()
{
    const auto fine = [&](const QString& field, const QString& problem) {
        if (!problem.isEmpty())
            showProblem(field, problem);
        return problem.isEmpty();
    };
    if (!fine(kFilms, m_films->problem()) || !fine(kTimes, m_times->problem()))
        return false;
    const QStringList problems = m_baths->problems();
    if (!problems.isEmpty())
        return fine(kBaths, problems.front());
    if (m_baths->baths().empty())
        return fine(kBaths, tr("Baths: choose at least one bottle."));
    return true;
}

ledger::FilmRun RunDialog::run() const
{
    return {m_films->load(), m_baths->baths(), {}, {}, m_topUps->topUps()};
}

std::optional<std::vector<ledger::Event>> RunDialog::wouldEnter() const
{
    if (!m_films->problem().isEmpty() || !m_baths->problems().isEmpty() || m_baths->baths().empty())
        return std::nullopt;
    return ledger::eventsOf(run(), wouldBeIds()(), moment(), wouldBeIds());
}

Result<void> RunDialog::act()
{
    const auto done =
        session().doing([&](ledger::Book& book) { return book.process(run(), moment()); });
    if (!done)
        return tl::unexpected(done.error());
    if (!m_developer.empty() && !m_times->pairs().empty()) {
        const auto* known = m_times->chosen();
        const auto parts =
            known ? formulary::partsOfDilution(known->dilution.toStdString()) : std::nullopt;
        preferences().setBaseTimes(m_developer, m_times->pairs(), parts.value_or(0), timeFor());
    }
    preferences().setLastFigure(kThermometerFigure, *m_thermometer->value());
    m_baths->remember(preferences());
    return {};
}

} // namespace ullage::app
