#include "app/bench/run_host.h"

#include <algorithm>
#include <utility>

namespace ullage::app
{

BookHost::BookHost(ledger::Book& book, Wording wording, QString runFile, QObject* parent)
    : RunHost(parent), m_book(&book), m_wording(std::move(wording)), m_runFile(std::move(runFile))
{
}

std::vector<ledger::Judged> BookHost::judged()
{
    std::vector<ledger::Judged> all;
    auto batches = m_book->batches(m_book->now());
    if (!batches)
        return all;
    for (ledger::Batch& batch : *batches) {
        ledger::Assessment assessment = ledger::assess(batch);
        all.push_back({std::move(batch), std::move(assessment)});
    }
    return all;
}

Result<std::vector<ledger::Event>> BookHost::events(const std::string& batch)
{
    return m_book->events(batch);
}

Result<std::string> BookHost::log(const ledger::FilmRun& run, chemistry::Instant at)
{
    auto done = m_book->process(run, at);
    if (done)
        emit changed();
    return done;
}

Result<void> BookHost::record(const std::string& batch, const ledger::Happening& what)
{
    auto done = m_book->record(batch, what, {m_book->now(), {}});
    if (done)
        emit changed();
    return done;
}

std::vector<chemistry::TimeAtTemperature> BookHost::baseTimes(const std::string& solution,
                                                              double parts) const
{
    const auto found = m_baseTimes.find({solution, parts});
    return found == m_baseTimes.end() ? std::vector<chemistry::TimeAtTemperature>() : found->second;
}

std::vector<formulary::FilmWanted> BookHost::baseTimesFor(const std::string& solution,
                                                          double parts) const
{
    const auto found = m_baseTimesFor.find({solution, parts});
    return found == m_baseTimesFor.end() ? std::vector<formulary::FilmWanted>() : found->second;
}

void BookHost::setBaseTimes(const std::string& solution,
                            const std::vector<chemistry::TimeAtTemperature>& pairs, double parts,
                            const std::vector<formulary::FilmWanted>& films)
{
    m_baseTimes[{solution, parts}] = pairs;
    m_baseTimesFor[{solution, parts}] = films;
}

bool isLogged(RunHost& host, const ledger::RunState& state)
{
    if (!state.loggedAt)
        return false;
    const ledger::Load load = ledger::loadOf(state.films);
    for (const ledger::RunBath& bath : state.baths) {
        const auto events = host.events(bath.batch);
        const auto same = [&](const ledger::Event& event) {
            const auto* done = std::get_if<ledger::Processed>(&event.what);
            return done && event.at == *state.loggedAt && done->load == load;
        };
        if (events && std::any_of(events->begin(), events->end(), same))
            return true;
    }
    return false;
}

} // namespace ullage::app
