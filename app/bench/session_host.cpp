#include "app/bench/session_host.h"

namespace ullage::app
{

SessionHost::SessionHost(Session& session, Preferences& preferences, QObject* parent)
    : RunHost(parent), m_session(&session), m_preferences(&preferences)
{
    connect(&session, &Session::changed, this, &RunHost::changed);
}

std::vector<ledger::Judged> SessionHost::judged()
{
    std::vector<ledger::Judged> all;
    if (!m_session->isOpen())
        return all;
    for (const Bottle& bottle : m_session->bottles())
        all.push_back({bottle.batch, bottle.assessment});
    return all;
}

Result<std::vector<ledger::Event>> SessionHost::events(const std::string& batch)
{
    return m_session->book().events(batch);
}

Result<std::string> SessionHost::log(const ledger::FilmRun& run, chemistry::Instant at)
{
    return m_session->doing([&](ledger::Book& book) { return book.process(run, at); });
}

Result<void> SessionHost::record(const std::string& batch, const ledger::Happening& what)
{
    return m_session->doing([&](ledger::Book& book) {
        return book.record(batch, what, {book.now(), {}});
    });
}

const formulary::Formulary* SessionHost::formulary() const
{
    return m_session->isOpen() ? &m_session->formulary() : nullptr;
}

std::vector<chemistry::TimeAtTemperature> SessionHost::baseTimes(const std::string& solution,
                                                                 double parts) const
{
    return m_preferences->baseTimes(solution, parts);
}

std::vector<formulary::FilmWanted> SessionHost::baseTimesFor(const std::string& solution,
                                                             double parts) const
{
    return m_preferences->baseTimesFor(solution, parts);
}

void SessionHost::setBaseTimes(const std::string& solution,
                               const std::vector<chemistry::TimeAtTemperature>& pairs, double parts,
                               const std::vector<formulary::FilmWanted>& films)
{
    m_preferences->setBaseTimes(solution, pairs, parts, films);
}

QString SessionHost::runFile() const
{
    return m_session->isOpen() ? m_session->path() + QStringLiteral(".run") : QString();
}

} // namespace ullage::app
