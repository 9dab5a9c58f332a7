#include "app/session/session_door.h"

namespace ullage::app
{

SessionDoor::SessionDoor(Session& session, Preferences& preferences, QObject* parent)
    : Door(parent), m_session(&session), m_preferences(&preferences)
{
    connect(&session, &Session::changed, this, &Door::changed);
}

std::vector<ledger::Judged> SessionDoor::judged()
{
    std::vector<ledger::Judged> all;
    if (!m_session->isOpen())
        return all;
    for (const Bottle& bottle : m_session->bottles())
        all.push_back({bottle.batch, bottle.assessment});
    return all;
}

Result<std::vector<ledger::Event>> SessionDoor::events(const std::string& batch)
{
    return m_session->book().events(batch);
}

Result<std::string> SessionDoor::mix(const ledger::NewBatch& batch, ledger::When when)
{
    return m_session->doing([&](ledger::Book& book) { return book.mix(batch, when); });
}

Result<std::string> SessionDoor::log(const ledger::FilmRun& run, chemistry::Instant at)
{
    return m_session->doing([&](ledger::Book& book) { return book.process(run, at); });
}

Result<void> SessionDoor::record(const std::string& batch, const ledger::Happening& what)
{
    return m_session->doing([&](ledger::Book& book) {
        return book.record(batch, what, {book.now(), {}});
    });
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

QString SessionDoor::runFile() const
{
    return m_session->isOpen() ? m_session->path() + QStringLiteral(".run") : QString();
}

} // namespace ullage::app
