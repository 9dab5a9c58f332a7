// A door that leads nowhere: no book is open, and whatever is done is refused. Tests open as much
// of it as they look at.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QObject>

#include "app/session/door.h"

#include <map>
#include <utility>

namespace ullage::app
{

class ClosedDoor : public Door
{
public:
    using Door::Door;

    [[nodiscard]] chemistry::Instant now() const override { return {}; }
    [[nodiscard]] Wording wording() const override
    {
        return {{}, QLocale(QLocale::English, QLocale::UnitedKingdom)};
    }
    [[nodiscard]] const formulary::Formulary* formulary() const override { return nullptr; }
    std::vector<ledger::Judged> judged() override { return {}; }
    Result<std::vector<ledger::Event>> events(const std::string&) override { return closed(); }
    std::vector<ledger::Packet> packetsAtHand() override { return {}; }
    [[nodiscard]] QString runFile() const override { return {}; }
    Result<std::string> mix(const ledger::NewBatch&, ledger::When) override { return closed(); }
    Result<std::string> log(const ledger::FilmRun&, chemistry::Instant) override
    {
        return closed();
    }
    Result<void> record(const std::string&, const ledger::Happening&) override { return closed(); }
    Result<void> add(const formulary::Solution&) override { return closed(); }
    Result<void> add(const formulary::Vessel&) override { return closed(); }
    Result<void> add(const formulary::DevelopmentFigure&) override { return closed(); }
    std::string newId() override { return "id"; }

    // As the settings remember them.
    [[nodiscard]] std::vector<chemistry::TimeAtTemperature>
    baseTimes(const std::string& solution, double parts = 0) const override
    {
        const auto found = m_baseTimes.find({solution, parts});
        return found == m_baseTimes.end() ? std::vector<chemistry::TimeAtTemperature>()
                                          : found->second.first;
    }
    [[nodiscard]] std::vector<formulary::FilmWanted> baseTimesFor(const std::string& solution,
                                                                  double parts = 0) const override
    {
        const auto found = m_baseTimes.find({solution, parts});
        return found == m_baseTimes.end() ? std::vector<formulary::FilmWanted>()
                                          : found->second.second;
    }
    void setBaseTimes(const std::string& solution,
                      const std::vector<chemistry::TimeAtTemperature>& pairs, double parts = 0,
                      const std::vector<formulary::FilmWanted>& films = {}) override
    {
        m_baseTimes[{solution, parts}] = {pairs, films};
    }

private:
    static tl::unexpected<Error> closed() { return refuse({.code = ErrorCode::ReadOnly}); }

    std::map<
        std::pair<std::string, double>, // solution, parts
        std::pair<std::vector<chemistry::TimeAtTemperature>, std::vector<formulary::FilmWanted>>>
        m_baseTimes;
};

} // namespace ullage::app
