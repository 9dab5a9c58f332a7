// The Bench on a bare Book, without session or settings.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QObject>

#include "app/bench/run_host.h"

#include <map>
#include <utility>

namespace ullage::app
{

class BookHost : public RunHost
{
public:
    /// `book` must outlive the host.
    BookHost(ledger::Book& book, Wording wording, QString runFile, QObject* parent = nullptr);

    std::vector<ledger::Judged> judged() override;
    Result<std::vector<ledger::Event>> events(const std::string& batch) override;
    Result<std::string> log(const ledger::FilmRun& run, chemistry::Instant at) override;
    Result<void> record(const std::string& batch, const ledger::Happening& what) override;
    [[nodiscard]] chemistry::Instant now() const override { return m_book->now(); }
    [[nodiscard]] Wording wording() const override { return m_wording; }
    [[nodiscard]] QString runFile() const override { return m_runFile; }
    [[nodiscard]] const formulary::Formulary* formulary() const override
    {
        return &m_book->formulary();
    }

    [[nodiscard]] std::vector<chemistry::TimeAtTemperature>
    baseTimes(const std::string& solution, double parts = 0) const override;
    [[nodiscard]] std::vector<formulary::FilmWanted> baseTimesFor(const std::string& solution,
                                                                  double parts = 0) const override;
    void setBaseTimes(const std::string& solution,
                      const std::vector<chemistry::TimeAtTemperature>& pairs, double parts = 0,
                      const std::vector<formulary::FilmWanted>& films = {}) override;

private:
    using Key = std::pair<std::string, double>; ///< solution, parts
    std::map<Key, std::vector<chemistry::TimeAtTemperature>> m_baseTimes;
    std::map<Key, std::vector<formulary::FilmWanted>> m_baseTimesFor;
    ledger::Book* m_book;
    Wording m_wording;
    QString m_runFile;
};

inline BookHost::BookHost(ledger::Book& book, Wording wording, QString runFile, QObject* parent)
    : RunHost(parent), m_book(&book), m_wording(std::move(wording)), m_runFile(std::move(runFile))
{
}

inline std::vector<ledger::Judged> BookHost::judged()
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

inline Result<std::vector<ledger::Event>> BookHost::events(const std::string& batch)
{
    return m_book->events(batch);
}

inline Result<std::string> BookHost::log(const ledger::FilmRun& run, chemistry::Instant at)
{
    auto done = m_book->process(run, at);
    if (done)
        emit changed();
    return done;
}

inline Result<void> BookHost::record(const std::string& batch, const ledger::Happening& what)
{
    auto done = m_book->record(batch, what, {m_book->now(), {}});
    if (done)
        emit changed();
    return done;
}

inline std::vector<chemistry::TimeAtTemperature> BookHost::baseTimes(const std::string& solution,
                                                                     double parts) const
{
    const auto found = m_baseTimes.find({solution, parts});
    return found == m_baseTimes.end() ? std::vector<chemistry::TimeAtTemperature>() : found->second;
}

inline std::vector<formulary::FilmWanted> BookHost::baseTimesFor(const std::string& solution,
                                                                 double parts) const
{
    const auto found = m_baseTimesFor.find({solution, parts});
    return found == m_baseTimesFor.end() ? std::vector<formulary::FilmWanted>() : found->second;
}

inline void BookHost::setBaseTimes(const std::string& solution,
                                   const std::vector<chemistry::TimeAtTemperature>& pairs,
                                   double parts, const std::vector<formulary::FilmWanted>& films)
{
    m_baseTimes[{solution, parts}] = pairs;
    m_baseTimesFor[{solution, parts}] = films;
}

} // namespace ullage::app
