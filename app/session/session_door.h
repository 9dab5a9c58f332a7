// The door to the open book of the window.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QObject>

#include "app/session/door.h"
#include "app/session/preferences.h"
#include "app/session/session.h"

namespace ullage::app
{

class SessionDoor : public Door
{
    Q_OBJECT

public:
    /// Both must outlive the door.
    SessionDoor(Session& session, Preferences& preferences, QObject* parent = nullptr);

    [[nodiscard]] chemistry::Instant now() const override { return m_session->now(); }
    [[nodiscard]] Wording wording() const override { return m_preferences->wording(); }
    [[nodiscard]] const formulary::Formulary* formulary() const override;
    std::vector<ledger::Judged> judged() override;
    Result<std::vector<ledger::Event>> events(const std::string& batch) override;
    std::vector<ledger::Packet> packetsAtHand() override { return m_session->packetsAtHand(); }
    [[nodiscard]] std::vector<chemistry::TimeAtTemperature>
    baseTimes(const std::string& solution, double parts = 0) const override;
    [[nodiscard]] std::vector<formulary::FilmWanted> baseTimesFor(const std::string& solution,
                                                                  double parts = 0) const override;
    [[nodiscard]] QString runFile() const override;

    Result<std::string> mix(const ledger::NewBatch& batch, ledger::When when) override;
    Result<std::string> log(const ledger::FilmRun& run, chemistry::Instant at) override;
    Result<void> record(const std::string& batch, const ledger::Happening& what) override;
    Result<void> add(const formulary::Solution& solution) override { return addThis(solution); }
    Result<void> add(const formulary::Vessel& vessel) override { return addThis(vessel); }
    Result<void> add(const formulary::DevelopmentFigure& figure) override
    {
        return addThis(figure);
    }
    std::string newId() override { return m_session->newId(); }
    void setBaseTimes(const std::string& solution,
                      const std::vector<chemistry::TimeAtTemperature>& pairs, double parts = 0,
                      const std::vector<formulary::FilmWanted>& films = {}) override;

private:
    template <class What>
    Result<void> addThis(const What& what)
    {
        return m_session->doing([&](ledger::Book& book) { return book.add(what); });
    }

    Session* m_session;
    Preferences* m_preferences;
};

} // namespace ullage::app
