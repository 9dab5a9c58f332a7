#include "app/dialogs/run_dialog.h"

#include "app/dialogs/exchange_dialog.h"
#include "app/dialogs/leaflet_time_edit.h"
#include "app/dialogs/times_apart_box.h"
#include "app/dialogs/top_up_offers.h"
#include "app/widgets/card.h"
#include "app/widgets/factor_rows.h"
#include "app/widgets/figure_label.h"
#include "app/widgets/films_edit.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/cautions.h"
#include "app/words/event_words.h"
#include "app/words/number_text.h"
#include "app/words/verdict_words.h"
#include "core/formulary/field_of.h"
#include "core/ledger/deed_events.h"
#include "core/ledger/entry_fields.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

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

RunDialog::RunDialog(Door& door, const Bottle* first, QWidget* parent)
    : DeedDialog(door, tr("Log a run"), parent)
{
    buildForm();
    buildSide();
    if (first && first->assessment.verdict != ledger::Verdict::Discard)
        m_baths->choose(*first);
    connect(m_films, &FilmsEdit::changed, this, &RunDialog::refresh);
    connect(m_thermometer, &QuantityEdit::valueChanged, this, &RunDialog::refresh);
    connect(m_times, &LeafletTimeEdit::changed, this, &RunDialog::refresh);
    connect(m_times, &LeafletTimeEdit::dilutionPicked, this, [this](double parts) {
        const QSignalBlocker quiet(m_parts);
        m_parts->setValue(static_cast<int>(parts));
    });
    connect(m_parts, &QSpinBox::valueChanged, this, [this] {
        refresh();
        lookAheadSoon(); // what is diluted is not poured back
    });
    connect(m_apart, &TimesApartBox::ruled, m_times, &LeafletTimeEdit::rule);
    connect(m_apart, &TimesApartBox::splitWanted, this, &RunDialog::splitByTime);
    connect(m_baths, &BathTable::changed, this, &RunDialog::refresh);
    refresh();
    setDeed(tr("Log this run"));
    showFollows(Follows::WhenDatedBack);
    m_films->setFocus();
}

void RunDialog::buildForm()
{
    m_films = new FilmsEdit(wording(), this);
    QStringList names;
    for (const std::string& name : formulary::filmsWithTimes(formulary()))
        names << QString::fromStdString(name);
    m_films->setKnownNames(names);
    addRow(kFilms, tr("&Film: format, how many, exposure index, name"), m_films, Width::Half);
    m_times = new LeafletTimeEdit(
        [this](const std::string& solution, double parts) -> LeafletTimeEdit::Last {
            return {door().baseTimes(solution, parts), door().baseTimesFor(solution, parts)};
        },
        wording(), this);
    m_parts = new QSpinBox(this);
    m_parts->setRange(0, 100);
    m_parts->setPrefix(QStringLiteral("1 + "));
    m_parts->setSpecialValueText(tr("stock, undiluted"));
    m_parts->setAccessibleName(tr("Dilution of the developer"));
    auto* dilution = new PlainLabel(tr("&Dilution"), this);
    dilution->setBuddy(m_parts);
    auto* timed = new QWidget(this);
    timed->setFocusPolicy(Qt::ClickFocus); // so that a label can be its buddy
    timed->setFocusProxy(m_times);
    auto* column = new QVBoxLayout(timed);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kSmall);
    column->addWidget(m_times);
    auto* line = new QHBoxLayout;
    line->setSpacing(Space::kSmall);
    line->addWidget(dilution);
    line->addWidget(m_parts, 1);
    column->addLayout(line);
    addRow(kTimes, tr("&Leaflet time, fresh developer"), timed, Width::Half);
    m_thermometer = addFigure<chemistry::Celsius>(
        formulary::fieldOf(&ledger::RunTimes::temperature), tr("&Thermometer"));
    m_thermometer->setRequired(true);
    m_thermometer->setValue(door().lastFigure(kThermometerFigure).value_or(kUsualTemperature));
    connect(addWhen({}, {}, Width::Half), &WhenEdit::changed, this, &RunDialog::refresh);
    m_apart = new TimesApartBox(this);
    addWide(m_apart);
    m_baths = new BathTable(door(), this);
    addRow(kBaths, tr("&Baths"), m_baths);
    m_topUps = new TopUpOffers(this);
    addWide(m_topUps);
    m_laterNote = addText({});
    m_laterNote->hide();
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
    m_exchange = new QPushButton(tr("E&xchange the baths…"), m_develop);
    m_exchange->setAutoDefault(false);
    setButtonLook(m_exchange, ButtonLook::Quiet);
    connect(m_exchange, &QPushButton::clicked, this, &RunDialog::exchange);
    for (QWidget* widget : {static_cast<QWidget*>(m_time), static_cast<QWidget*>(m_note),
                            static_cast<QWidget*>(m_times->forLabel()),
                            static_cast<QWidget*>(m_rows), static_cast<QWidget*>(m_fix),
                            static_cast<QWidget*>(m_warnings), static_cast<QWidget*>(m_exchange)})
        m_develop->body()->addWidget(widget);
    side()->addWidget(m_develop);
    addCautions(tr("Before you pour"), runningCautions());
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
    for (const Bottle& bottle : door().bottles()) {
        auto then = door().batch(bottle.batch.id, at);
        const ledger::Batch& batch = then ? *then : bottle.batch;
        m_then.push_back({batch, ledger::assess(batch)});
    }
    return m_then;
}

ledger::NextLoad RunDialog::next()
{
    ledger::LoadWishes wishes{.load = ledger::loadOf(m_films->films()),
                              .pairs = m_times->pairs(),
                              .notebook = &formulary(),
                              .films = m_films->wanted(),
                              .parts = static_cast<double>(m_parts->value()),
                              .needs = m_baths->needs()};
    wishes.developers = ledger::developersFor(formulary(), bottlesThen(), m_films->wanted());
    if (const auto reading = m_thermometer->quantity())
        wishes.temperature = *reading;
    return ledger::nextLoad(wishes, bottlesThen());
}

NextFilm RunDialog::developing(const ledger::NextLoad& next) const
{
    const ledger::Judged* developer = next.taken(Role::Developer);
    if (!developer)
        return {.note = tr("No developer is chosen.")};
    if (!m_thermometer->value())
        return {.note = tr("Read the thermometer.")};
    NextFilm film = nextFilm(*developer, next.developing, *m_thermometer->quantity(), wording());
    if (m_times->pairs().empty())
        film.note = tr("times the leaflet time, once that is typed in");
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
    text = text.arg(timeText(next.fixing->time, TimeStep::AtLeastFiveSeconds));
    if (next.fixing->raisedTo)
        text = tr("Fix for %1, the packet's shortest time: twice the clearing time would be less.")
                   .arg(timeText(next.fixing->time, TimeStep::AtLeastFiveSeconds));
    if (next.fixing->baths > 1)
        text += u' ' + tr("Half of it in each of the two baths: %1.")
                           .arg(timeText(next.fixing->inEach(), TimeStep::AtLeastFiveSeconds));
    if (fixer->batch.solution->tabularFactor)
        text += u' ' + tr("For tabular grains %1.")
                           .arg(timeText(next.fixingTabular->time, TimeStep::AtLeastFiveSeconds));
    return text;
}

void RunDialog::addBottleWarnings(const ledger::NextLoad& next, QStringList& warnings) const
{
    using Code = ledger::PlanProblemCode;
    std::optional<std::size_t> reasoned; // of each bottle the gravest reason only
    for (const ledger::PlanProblem& problem : next.plan.problems) {
        if (problem.code == Code::NoSecondBath)
            warnings << tr("No bottle for a second fixing bath: the whole time goes in the first.");
        if (!problem.judged)
            continue;
        const ledger::Judged& bottle = next.judged[*problem.judged];
        const QString name = QString::fromStdString(bottle.batch.name);
        if (problem.code == Code::ExchangeDue) {
            warnings << tr("Exchange the baths: %1 takes twice as long to clear as when fresh.")
                            .arg(name);
        } else if (problem.code == Code::NotMarkedDissolved) {
            warnings
                << tr("Nobody has marked %1 as dissolved yet: look whether it is clear.").arg(name);
        } else if (problem.reason && reasoned != problem.judged) {
            reasoned = problem.judged;
            const auto reasons = forReading(bottle.assessment.reasons);
            warnings << tr("%1: %2", "bottle, reason")
                            .arg(name, reasonSentence(reasons.front(), bottle.batch,
                                                      bottle.assessment, wording()));
        } else if (problem.code == Code::Worn) {
            warnings << tr("%1 has done film: for one-shot use take a fresh bottle.").arg(name);
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
    for (const Bottle& bottle : door().bottles())
        bottles.push_back({bottle.batch, bottle.assessment});
    m_topUps->setRun(baths, ledger::loadOf(m_films->films()).units(), bottles, wording());
}

// The bottles are others afterwards; what was typed of the run stays.
void RunDialog::exchange()
{
    const Bottle* first = door().bottle(m_due);
    if (!first)
        return;
    ExchangeDialog dialog(door(), *first, this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    m_then.clear();
    m_thenAt.reset();
    m_baths->readAnew();
    refresh();
    lookAheadSoon();
}

void RunDialog::refresh()
{
    m_baths->setDilution(m_parts->value());
    ledger::NextLoad load = next();
    m_baths->propose(load);
    offerTopUps();
    if (const Bottle* developer = m_baths->chosen(Role::Developer))
        m_developer = developer->batch.solution->id;
    m_times->setWanted({m_films->wanted(), m_developer, static_cast<double>(m_parts->value())},
                       load, formulary());
    load = next(); // with the bottles proposed, and the times of that developer
    const auto runs = ledger::splitByTime(m_films->films(), load.filmTimes);
    m_apart->showTimes(load, static_cast<int>(runs.size()), wording());
    const NextFilm film = developing(load);
    m_time->setText(film.time);
    m_time->setVisible(!film.time.isEmpty());
    QStringList notes{film.note};
    if (const auto* known = m_times->chosen(); known && !film.time.isEmpty())
        notes << (known->source.isEmpty()
                      ? tr("%1: no source given.").arg(known->name)
                      : tr("%1, source: %2.", "film, source").arg(known->name, known->source));
    notes.removeAll(QString());
    m_note->setText(notes.join(u'\n'));
    m_rows->setRows(film.rows);
    m_rows->setVisible(!film.rows.empty());
    m_fix->setText(fixing(load));
    m_fix->setVisible(!m_fix->text().isEmpty());
    m_warned = film.warnings;
    addBottleWarnings(load, m_warned);
    if (!m_baths->chosen(Role::Fixer))
        m_warned << tr("No fixer is chosen: these films are counted in none.");
    m_warnings->setText(m_warned.join(u'\n'));
    m_warnings->setVisible(!m_warned.isEmpty());
    m_due.clear();
    for (const ledger::PlanProblem& problem : load.plan.problems) {
        if (problem.code == ledger::PlanProblemCode::ExchangeDue)
            m_due = load.judged[*problem.judged].batch.id;
    }
    m_exchange->setVisible(!m_due.empty());
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
    return m_question.sure(this, run(), bottlesThen(), wording());
}

ledger::FilmRun RunDialog::run() const
{
    ledger::FilmRun run = ledger::runOf(m_films->films(), m_baths->baths());
    run.topUps = m_topUps->topUps();
    return run;
}

std::optional<std::vector<ledger::Event>> RunDialog::wouldEnter() const
{
    if (!m_films->problem().isEmpty() || !m_baths->problems().isEmpty() || m_baths->baths().empty())
        return std::nullopt;
    return ledger::eventsOf(run(), wouldBeIds()(), moment(), wouldBeIds());
}

void RunDialog::splitByTime()
{
    const ledger::NextLoad load = next();
    const auto runs = ledger::splitByTime(m_films->films(), load.filmTimes);
    if (runs.size() < 2)
        return;
    std::vector<ledger::RunFilm> later;
    for (std::size_t i = 1; i < runs.size(); ++i)
        later.insert(later.end(), runs[i].begin(), runs[i].end());
    m_later.insert(m_later.begin(), later.begin(), later.end());
    m_films->setFilms(runs.front());
    showLater();
}

void RunDialog::showLater()
{
    m_laterNote->setVisible(!m_later.empty());
    m_laterNote->setText(tr("Still to be logged after this run: %1")
                             .arg(loadText(ledger::loadOf(m_later), wording().locale)));
    setDeed(m_later.empty() ? tr("Log this run") : tr("Log this run, then the next"));
}

void RunDialog::done(int result)
{
    if (result != Accepted || m_later.empty())
        return DeedDialog::done(result);
    const auto films = std::exchange(m_later, {});
    m_then.clear();
    m_thenAt.reset(); // the bottles have done film since
    m_films->setFilms(films);
    showLater();
    m_films->setFocus();
}

Result<void> RunDialog::act()
{
    const auto logged = door().log(run(), moment());
    if (!logged)
        return tl::unexpected(logged.error());
    if (!m_developer.empty() && !m_times->pairs().empty())
        door().setBaseTimes(m_developer, m_times->pairs(), m_parts->value(), m_times->usedFor());
    door().setLastFigure(kThermometerFigure, *m_thermometer->value());
    m_baths->remember();
    return {};
}

} // namespace ullage::app
