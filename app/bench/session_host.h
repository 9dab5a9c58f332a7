// The Bench on the open book of the window.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QObject>

#include "app/bench/run_host.h"
#include "app/session/preferences.h"
#include "app/session/session.h"

namespace ullage::app
{

class SessionHost : public RunHost
{
    Q_OBJECT

public:
    /// Both must outlive the host.
    SessionHost(Session& session, Preferences& preferences, QObject* parent = nullptr);

    /// Nothing while no book is open.
    std::vector<ledger::Judged> judged() override;
    Result<std::vector<ledger::Event>> events(const std::string& batch) override;
    Result<std::string> log(const ledger::FilmRun& run, chemistry::Instant at) override;
    Result<void> record(const std::string& batch, const ledger::Happening& what) override;
    [[nodiscard]] chemistry::Instant now() const override { return m_session->now(); }
    [[nodiscard]] Wording wording() const override { return m_preferences->wording(); }
    [[nodiscard]] const formulary::Formulary* formulary() const override;
    [[nodiscard]] std::vector<chemistry::TimeAtTemperature>
    baseTimes(const std::string& solution, double parts = 0) const override;
    [[nodiscard]] std::vector<formulary::FilmWanted> baseTimesFor(const std::string& solution,
                                                                  double parts = 0) const override;
    void setBaseTimes(const std::string& solution,
                      const std::vector<chemistry::TimeAtTemperature>& pairs, double parts = 0,
                      const std::vector<formulary::FilmWanted>& films = {}) override;
    /// Beside the book; empty while no book is open.
    [[nodiscard]] QString runFile() const override;

private:
    Session* m_session;
    Preferences* m_preferences;
};

} // namespace ullage::app
