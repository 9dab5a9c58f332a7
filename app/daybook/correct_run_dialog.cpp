#include "app/daybook/correct_run_dialog.h"

#include "app/daybook/film_form.h"
#include "app/words/film_words.h"
#include "core/formulary/leaflet_time.h"
#include "core/ledger/fillings.h"

#include <algorithm>
#include <map>

namespace ullage::app
{

using namespace ledger;

namespace
{

bool sameCounts(const Load& a, const Load& b)
{
    std::map<std::string, double> counts;
    for (const FilmCount& film : a.films)
        counts[film.format] += film.count;
    for (const FilmCount& film : b.films)
        counts[film.format] -= film.count;
    return a.area == b.area && std::all_of(counts.begin(), counts.end(),
                                           [](const auto& one) { return one.second == 0; });
}

} // namespace

CorrectRunDialog::CorrectRunDialog(Door& door, const QString& what, std::vector<Event> entered,
                                   QWidget* parent)
    : CorrectingDialog(door, what, std::move(entered), parent),
      m_film(new FilmForm(door.wording(), this, FilmForm::Bottles::All)), m_newRun(door.newId())
{
    addKinds({HappeningKind::Film}, {});
    QStringList names;
    for (const std::string& name : formulary::filmsWithTimes(formulary()))
        names << QString::fromStdString(name);
    m_film->setKnownNames(names);
    readFilms();
    addWide(m_film);
    heed(m_film);
    WhenEdit* when = addWhenAndWhy();
    fillBottles();
    m_film->setRun(filmsOf(m_rows), first().load.area, bathsEntered());
    m_were = m_film->films();
    connect(when, &WhenEdit::changed, this, [this] {
        fillBottles();
        lookAheadSoon();
    });
    showFollows(Follows::Always);
    m_film->firstForKeys()->setFocus();
}

const Processed& CorrectRunDialog::first() const
{
    return std::get<Processed>(entered().front().what);
}

const Processed* CorrectRunDialog::bathOf(const Event& event) const
{
    const auto* bath = std::get_if<Processed>(&event.what);
    const bool ours = event.id == entered().front().id || (bath && bath->run == first().run);
    return ours ? bath : nullptr;
}

std::vector<Bath> CorrectRunDialog::bathsEntered() const
{
    std::vector<Bath> baths;
    for (const Event& event : entered()) {
        if (const Processed* bath = bathOf(event))
            baths.push_back(
                {event.batch, bath->used, bath->lost, bath->oneShot, event.airLeft, bath->second});
    }
    return baths;
}

// A run by its area has no films.
void CorrectRunDialog::readFilms()
{
    if (first().load.area)
        return;
    auto films =
        first().run.empty() ? Result<std::vector<FilmTrace>>() : door().filmsOfRun(first().run);
    if (films)
        m_rows = runFilmRows(first().load, *films);
    else
        m_unread = films.error();
}

// Those it was entered with first; besides, only what stood then can have had film go through it.
void CorrectRunDialog::fillBottles()
{
    std::vector<BathRows::Bottle> bottles;
    const auto add = [&](const std::string& id, const std::string& name,
                         const std::string& solution) {
        const auto of = formulary().solution(solution);
        bottles.push_back({QString::fromStdString(id), QString::fromStdString(name),
                           of && of->role == formulary::Role::Fixer});
        m_roles[id] = of ? of->role : formulary::Role::Other;
    };
    const auto baths = bathsEntered();
    for (const Bath& bath : baths) {
        if (const auto bottle = door().batch(bath.batch, std::max(door().now(), moment())))
            add(bath.batch, bottle->name, bottle->solution->id);
    }
    for (const BatchState& state : door().standingAt(moment())) {
        const bool there = std::any_of(baths.begin(), baths.end(),
                                       [&](const Bath& bath) { return bath.batch == state.id; });
        if (!there)
            add(state.id, state.name, state.solution);
    }
    m_film->setBottles({}, bottles);
}

RunFilmsNow CorrectRunDialog::filmsNow() const
{
    return {m_were, m_film->films(), m_film->origins()};
}

std::string CorrectRunDialog::runId(const FilmRun& run) const
{
    const bool named = std::any_of(run.films.begin(), run.films.end(), [](const FilmRecord& film) {
        return !film.name.empty() || film.exposureIndex || !film.notes.empty();
    });
    const bool needed = first().run.empty() && (named || run.baths.size() > 1);
    return needed ? m_newRun : first().run;
}

std::vector<Bath> CorrectRunDialog::inTurn(const std::vector<Bath>& baths) const
{
    const auto before = bathsEntered();
    std::vector<Bath> all;
    std::vector<Bath> come;
    for (const Bath& bath : baths) {
        const bool stays = std::any_of(before.begin(), before.end(),
                                       [&](const Bath& one) { return one.batch == bath.batch; });
        (stays ? all : come).push_back(bath);
    }
    for (const Bath& bath : come) {
        const auto role = m_roles.at(bath.batch);
        const auto later = std::find_if(
            all.begin(), all.end(), [&](const Bath& one) { return m_roles.at(one.batch) > role; });
        all.insert(later, bath);
    }
    return all;
}

// What nobody changed stays as it was, a load that differed between the baths too.
Processed CorrectRunDialog::corrected(const Bath& bath, const FilmRun& run,
                                      const Processed* was) const
{
    Processed now{run.load, bath.used, bath.lost, bath.oneShot, runId(run), bath.second};
    if (sameCounts(run.load, first().load))
        now.load = was ? was->load : first().load;
    if (was && was->oneShot && now.oneShot)
        now.lost = was->lost; // not asked for
    return now;
}

std::optional<std::vector<Event>> CorrectRunDialog::instead() const
{
    const auto run = m_film->run();
    if (!run)
        return std::nullopt;
    const auto at = correctedMoment();
    const auto was = entered().front().at;
    const auto newId = wouldBeIds();
    std::vector<Event> all;
    for (const Bath& bath : inTurn(run->baths)) {
        const auto same = std::find_if(entered().begin(), entered().end(), [&](const Event& one) {
            return one.batch == bath.batch && bathOf(one);
        });
        const bool stays = same != entered().end();
        const auto then = !stays || same->at == was ? at : same->at;
        all.push_back({newId(), bath.batch, then,
                       corrected(bath, *run, stays ? bathOf(*same) : nullptr), bath.airLeft});
    }
    for (const Event& other : entered()) {
        if (bathOf(other))
            continue;
        Event again = other;
        again.id = newId();
        again.entry = 0;
        if (other.at == was)
            again.at = at;
        all.push_back(std::move(again));
    }
    return all;
}

std::vector<FilmRecord> CorrectRunDialog::filmLines() const
{
    const auto run = m_film->run();
    const std::string id = run ? runId(*run) : std::string();
    return id.empty() || first().load.area ? std::vector<FilmRecord>()
                                           : runFilmLines(m_rows, filmsNow(), id);
}

// What was entered with the run of a bottle that it did not go through.
QString CorrectRunDialog::problemOfGone() const
{
    const auto run = m_film->run();
    if (!run)
        return {};
    const auto isGone = [&](const std::string& batch) {
        const auto goes = [&](const Bath& bath) { return bath.batch == batch; };
        const auto before = bathsEntered();
        return std::any_of(before.begin(), before.end(), goes) &&
               std::none_of(run->baths.begin(), run->baths.end(), goes);
    };
    for (const Event& other : entered()) {
        const auto half = halfOf(other);
        if (bathOf(other) || !isGone(half && half->drawn ? half->heir : other.batch))
            continue;
        const std::string& batch = half && half->drawn ? half->heir : other.batch;
        const auto bottle = door().batch(batch, std::max(door().now(), moment()));
        return tr("%1 was topped up along with this run. Take that entry back first, or leave the "
                  "bottle ticked.")
            .arg(QString::fromStdString(bottle ? bottle->name : batch));
    }
    return {};
}

bool CorrectRunDialog::restIsFine()
{
    QString films = m_film->problem();
    QString baths = m_film->problemOfBaths();
    if (films.isEmpty()) {
        if (const FilmRecord* marked = markedAndGone(m_rows, filmsNow()))
            films = tr("“%1” is marked. Take the mark back first, or leave the film in.")
                        .arg(filmText(*marked, wording().locale));
    }
    if (baths.isEmpty())
        baths = problemOfGone();
    if (!films.isEmpty())
        showProblem(QStringLiteral("films"), films);
    else if (!baths.isEmpty())
        showProblem(QStringLiteral("baths"), baths);
    return films.isEmpty() && baths.isEmpty() && sureOfLoad();
}

// By what the bottles could do before it; what was entered once was meant.
bool CorrectRunDialog::sureOfLoad()
{
    const auto run = m_film->run();
    if (!run)
        return true; // what is missing is said where it is entered
    FilmRun asked = *run;
    std::vector<Judged> then;
    const auto before =
        std::min(correctedMoment(), entered().front().at) - std::chrono::milliseconds(1);
    const auto was = bathsEntered();
    const bool more = run->load.units() > first().load.units();
    std::erase_if(asked.baths, [&](const Bath& bath) {
        const auto same = [&](const Bath& one) { return one.batch == bath.batch; };
        return !more && std::any_of(was.begin(), was.end(), same);
    });
    if (asked.baths.empty())
        return true;
    for (const Bath& bath : asked.baths) {
        if (const auto bottle = door().batch(bath.batch, before))
            then.push_back({*bottle, assess(*bottle)});
    }
    return m_question.sure(this, asked, then, wording());
}

Result<void> CorrectRunDialog::act()
{
    return m_unread ? refuse(*m_unread) : CorrectingDialog::act();
}

} // namespace ullage::app
