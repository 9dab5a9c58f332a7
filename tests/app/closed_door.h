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
    [[nodiscard]] std::optional<Error> readOnly() const override
    {
        return Error{.code = ErrorCode::ReadOnly};
    }
    [[nodiscard]] QString path() const override { return {}; }
    [[nodiscard]] std::int64_t entries() const override { return 0; }
    [[nodiscard]] const formulary::Formulary* formulary() const override { return nullptr; }
    const std::vector<Bottle>& bottles() override { return m_noBottles; }
    std::vector<ledger::BatchState> standingAt(chemistry::Instant) override { return {}; }
    Result<ledger::Batch> batch(const std::string&, chemistry::Instant) override
    {
        return closed();
    }
    Result<ledger::Cost> cost(const std::string&, chemistry::Instant) override { return closed(); }
    QStringList batchNames() override { return {}; }
    Result<std::vector<ledger::Event>> events(const std::string&) override { return closed(); }
    Result<std::vector<ledger::Event>> connectedEvents(const std::string&) override
    {
        return closed();
    }
    Result<std::vector<ledger::Event>> enteredWith(const std::string&) override { return closed(); }
    std::vector<ledger::StripReading> strips(const std::string&) override { return {}; }
    Result<std::optional<ledger::FilmTrace>> film(const std::string&) override { return closed(); }
    Result<std::vector<ledger::FilmTrace>> filmsOfBatch(const std::string&) override
    {
        return closed();
    }
    Result<std::vector<ledger::FilmTrace>> filmsOfRun(const std::string&) override
    {
        return closed();
    }
    Result<std::vector<ledger::FilmTrace>> filmsBetween(chemistry::Instant,
                                                        chemistry::Instant) override
    {
        return closed();
    }
    Result<std::vector<ledger::FilmTrace>> filmsMarked() override { return closed(); }
    std::vector<ledger::Packet> packetsAtHand() override { return {}; }
    Result<ledger::CupboardState> cupboard() override { return closed(); }
    [[nodiscard]] QString runFile() const override { return {}; }
    Result<std::string> mix(const ledger::NewBatch&, ledger::When) override { return closed(); }
    Result<std::string> mixInto(const formulary::Vessel&, const ledger::NewBatch&,
                                ledger::When) override
    {
        return closed();
    }
    Result<std::vector<std::string>> mixAll(const std::vector<ledger::NewBatch>&,
                                            ledger::When) override
    {
        return closed();
    }
    Result<std::string> log(const ledger::FilmRun&, chemistry::Instant) override
    {
        return closed();
    }
    Result<void> record(const std::string&, const ledger::Happening&, ledger::When) override
    {
        return closed();
    }
    Result<void> topUp(const std::string&, const ledger::ToppedUp&, ledger::When) override
    {
        return closed();
    }
    Result<void> exchangeBaths(const std::string&, const ledger::Discarded&, const std::string&,
                               const std::string&, ledger::When) override
    {
        return closed();
    }
    Result<void> voidEvents(const std::vector<std::string>&, const std::string&) override
    {
        return closed();
    }
    Result<void> correct(const std::vector<std::string>&, const std::vector<ledger::Event>&,
                         const std::string&, const std::vector<ledger::FilmRecord>&) override
    {
        return closed();
    }
    Result<void> markFilms(const std::vector<std::string>&, ledger::FilmFault,
                           const std::string&) override
    {
        return closed();
    }
    Result<void> correctMark(const ledger::FilmMark&, const std::string&) override
    {
        return closed();
    }
    Result<void> takeMarksBack(const std::vector<ledger::FilmMark>&, const std::string&) override
    {
        return closed();
    }
    Result<void> add(const formulary::Solution&) override { return closed(); }
    Result<void> add(const formulary::Vessel&) override { return closed(); }
    Result<void> add(const formulary::DevelopmentFigure&) override { return closed(); }
    Result<std::vector<std::string>> add(std::vector<ledger::CupboardLine>) override
    {
        return closed();
    }
    Result<void> recordOf(const ledger::Happening&, chemistry::Instant) override
    {
        return closed();
    }
    std::string newId() override { return "id"; }

    // As the settings remember them.
    [[nodiscard]] std::optional<double> lastFigure(const QString& name) const override
    {
        const auto found = m_lastFigures.find(name);
        return found == m_lastFigures.end() ? std::nullopt : std::optional(found->second);
    }
    void setLastFigure(const QString& name, double value) override { m_lastFigures[name] = value; }
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

    const std::vector<Bottle> m_noBottles{};
    std::map<QString, double> m_lastFigures;
    std::map<
        std::pair<std::string, double>, // solution, parts
        std::pair<std::vector<chemistry::TimeAtTemperature>, std::vector<formulary::FilmWanted>>>
        m_baseTimes;
};

} // namespace ullage::app
