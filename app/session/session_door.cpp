#include "app/session/session_door.h"

namespace ullage::app
{

using chemistry::Instant;

SessionDoor::SessionDoor(Session& session, Preferences& preferences, QObject* parent)
    : Door(parent), m_session(&session), m_preferences(&preferences)
{
    connect(&session, &Session::changed, this, &Door::changed);
    connect(&session, &Session::opened, this, &Door::opened);
    connect(&session, &Session::closing, this, &Door::closing);
    connect(&session, &Session::standingChanged, this, &Door::standingChanged);
}

std::optional<Error> SessionDoor::readOnly() const { return m_session->readOnly(); }

QString SessionDoor::path() const { return m_session->isOpen() ? m_session->path() : QString(); }

std::int64_t SessionDoor::entries() const { return m_session->isOpen() ? m_session->entries() : 0; }

const std::vector<Bottle>& SessionDoor::bottles()
{
    static const std::vector<Bottle> none;
    return m_session->isOpen() ? m_session->bottles() : none;
}

std::vector<ledger::BatchState> SessionDoor::standingAt(Instant at)
{
    return m_session->isOpen() ? m_session->standingAt(at) : std::vector<ledger::BatchState>();
}

Result<ledger::Batch> SessionDoor::batch(const std::string& id, Instant at)
{
    return ask([&](Session& session) { return session.book().batch(id, at); });
}

Result<ledger::Cost> SessionDoor::cost(const std::string& batch, Instant at)
{
    return ask([&](Session& session) { return session.book().cost(batch, at); });
}

QStringList SessionDoor::batchNames()
{
    return m_session->isOpen() ? m_session->batchNames() : QStringList();
}

Result<std::vector<ledger::Event>> SessionDoor::events(const std::string& batch)
{
    return ask([&](Session& session) { return session.book().events(batch); });
}

Result<std::vector<ledger::Event>> SessionDoor::connectedEvents(const std::string& batch)
{
    return ask([&](Session& session) { return session.book().connectedEvents(batch); });
}

Result<std::vector<ledger::Event>> SessionDoor::enteredWith(const std::string& event)
{
    return ask([&](Session& session) { return session.book().enteredWith(event); });
}

std::vector<ledger::StripReading> SessionDoor::strips(const std::string& solution)
{
    return m_session->isOpen() ? m_session->strips(solution) : std::vector<ledger::StripReading>();
}

std::vector<ledger::Packet> SessionDoor::packetsAtHand()
{
    return m_session->isOpen() ? m_session->packetsAtHand() : std::vector<ledger::Packet>();
}

Result<ledger::CupboardState> SessionDoor::cupboard()
{
    return ask([&](Session& session) { return session.book().cupboard(session.now()); });
}

Result<std::vector<std::string>> SessionDoor::add(std::vector<ledger::CupboardLine> lines)
{
    return doing([&](ledger::Book& book) { return book.add(std::move(lines)); });
}

Result<void> SessionDoor::recordOf(const ledger::Happening& what, Instant at)
{
    return doing([&](ledger::Book& book) { return book.record(what, at); });
}

Result<std::optional<ledger::FilmTrace>> SessionDoor::film(const std::string& id)
{
    return ask([&](Session& session) { return session.films().film(id); });
}

Result<std::vector<ledger::FilmTrace>> SessionDoor::filmsOfBatch(const std::string& batch)
{
    return ask([&](Session& session) { return session.films().ofBatch(batch); });
}

Result<std::vector<ledger::FilmTrace>> SessionDoor::filmsOfRun(const std::string& run)
{
    return ask([&](Session& session) { return session.films().ofRun(run); });
}

Result<std::vector<ledger::FilmTrace>> SessionDoor::filmsBetween(Instant from, Instant until)
{
    return ask([&](Session& session) { return session.films().between(from, until); });
}

Result<std::vector<ledger::FilmTrace>> SessionDoor::filmsMarked()
{
    return ask([&](Session& session) { return session.films().marked(); });
}

Result<std::string> SessionDoor::mix(const ledger::NewBatch& batch, ledger::When when)
{
    return doing([&](ledger::Book& book) { return book.mix(batch, when); });
}

Result<std::string> SessionDoor::mixInto(const formulary::Vessel& vessel,
                                         const ledger::NewBatch& batch, ledger::When when)
{
    return doing([&](ledger::Book& book) { return book.mix(batch, vessel, when); });
}

Result<std::vector<std::string>> SessionDoor::mixAll(const std::vector<ledger::NewBatch>& batches,
                                                     ledger::When when)
{
    return doing([&](ledger::Book& book) { return book.mix(batches, when); });
}

Result<std::string> SessionDoor::log(const ledger::FilmRun& run, Instant at)
{
    return doing([&](ledger::Book& book) { return book.process(run, at); });
}

Result<void> SessionDoor::record(const std::string& batch, const ledger::Happening& what,
                                 ledger::When when)
{
    return doing([&](ledger::Book& book) { return book.record(batch, what, when); });
}

Result<void> SessionDoor::topUp(const std::string& batch, const ledger::ToppedUp& what,
                                ledger::When when)
{
    return doing([&](ledger::Book& book) {
        return book.topUp(batch, what.volume, when, what.from, what.solution);
    });
}

Result<void> SessionDoor::exchangeBaths(const std::string& first, const ledger::Discarded& going,
                                        const std::string& second, const std::string& note,
                                        ledger::When when)
{
    return doing(
        [&](ledger::Book& book) { return book.exchangeBaths(first, going, second, note, when); });
}

Result<void> SessionDoor::voidEvents(const std::vector<std::string>& events, const std::string& why)
{
    return doing([&](ledger::Book& book) { return book.voidEvents(events, why); });
}

Result<void> SessionDoor::correct(const std::vector<std::string>& events,
                                  const std::vector<ledger::Event>& instead, const std::string& why,
                                  const std::vector<ledger::FilmRecord>& films)
{
    return doing([&](ledger::Book& book) { return book.correct(events, instead, why, films); });
}

Result<void> SessionDoor::markFilms(const std::vector<std::string>& films, ledger::FilmFault fault,
                                    const std::string& note)
{
    return doing([&](ledger::Book& book) { return book.markFilms(films, fault, note); });
}

Result<void> SessionDoor::correctMark(const ledger::FilmMark& mark, const std::string& why)
{
    return doing([&](ledger::Book& book) { return book.correctMark(mark, why); });
}

Result<void> SessionDoor::takeMarksBack(const std::vector<ledger::FilmMark>& marks,
                                        const std::string& why)
{
    return doing([&](ledger::Book& book) { return book.takeMarksBack(marks, why); });
}

const formulary::Formulary* SessionDoor::formulary() const
{
    return m_session->isOpen() ? &m_session->formulary() : nullptr;
}

std::vector<chemistry::TimeAtTemperature> SessionDoor::baseTimes(const std::string& solution,
                                                                 double parts) const
{
    return m_preferences->baseTimes(solution, parts);
}

std::vector<formulary::FilmWanted> SessionDoor::baseTimesFor(const std::string& solution,
                                                             double parts) const
{
    return m_preferences->baseTimesFor(solution, parts);
}

void SessionDoor::setBaseTimes(const std::string& solution,
                               const std::vector<chemistry::TimeAtTemperature>& pairs, double parts,
                               const std::vector<formulary::FilmWanted>& films)
{
    m_preferences->setBaseTimes(solution, pairs, parts, films);
}

std::optional<double> SessionDoor::lastFigure(const QString& name) const
{
    return m_preferences->lastFigure(name);
}

void SessionDoor::setLastFigure(const QString& name, double value)
{
    m_preferences->setLastFigure(name, value);
}

QString SessionDoor::runFile() const
{
    return m_session->isOpen() ? m_session->path() + QStringLiteral(".run") : QString();
}

} // namespace ullage::app
