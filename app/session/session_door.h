// The door to the open book of the window.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QObject>

#include "app/session/door.h"
#include "app/session/preferences.h"
#include "app/session/session.h"

#include <type_traits>

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
    [[nodiscard]] std::optional<Error> readOnly() const override;
    [[nodiscard]] QString path() const override;
    [[nodiscard]] std::int64_t entries() const override;
    [[nodiscard]] const formulary::Formulary* formulary() const override;
    const std::vector<Bottle>& bottles() override;
    std::vector<ledger::BatchState> standingAt(chemistry::Instant at) override;
    Result<ledger::Batch> batch(const std::string& id, chemistry::Instant at) override;
    Result<ledger::Cost> cost(const std::string& batch, chemistry::Instant at) override;
    QStringList batchNames() override;
    Result<std::vector<ledger::Event>> events(const std::string& batch) override;
    Result<std::vector<ledger::Event>> connectedEvents(const std::string& batch) override;
    Result<std::vector<ledger::Event>> enteredWith(const std::string& event) override;
    std::vector<ledger::StripReading> strips(const std::string& solution) override;
    Result<std::optional<ledger::FilmTrace>> film(const std::string& id) override;
    Result<std::vector<ledger::FilmTrace>> filmsOfBatch(const std::string& batch) override;
    Result<std::vector<ledger::FilmTrace>> filmsOfRun(const std::string& run) override;
    Result<std::vector<ledger::FilmTrace>> filmsBetween(chemistry::Instant from,
                                                        chemistry::Instant until) override;
    Result<std::vector<ledger::FilmTrace>> filmsMarked() override;
    std::vector<ledger::Packet> packetsAtHand() override;
    Result<ledger::CupboardState> cupboard() override;
    [[nodiscard]] std::vector<chemistry::TimeAtTemperature>
    baseTimes(const std::string& solution, double parts = 0) const override;
    [[nodiscard]] std::vector<formulary::FilmWanted> baseTimesFor(const std::string& solution,
                                                                  double parts = 0) const override;
    [[nodiscard]] std::optional<double> lastFigure(const QString& name) const override;
    [[nodiscard]] QString runFile() const override;

    Result<std::string> mix(const ledger::NewBatch& batch, ledger::When when) override;
    Result<std::string> mixInto(const formulary::Vessel& vessel, const ledger::NewBatch& batch,
                                ledger::When when) override;
    Result<std::vector<std::string>> mixAll(const std::vector<ledger::NewBatch>& batches,
                                            ledger::When when) override;
    Result<std::string> log(const ledger::FilmRun& run, chemistry::Instant at) override;
    Result<void> record(const std::string& batch, const ledger::Happening& what,
                        ledger::When when) override;
    Result<void> topUp(const std::string& batch, const ledger::ToppedUp& what,
                       ledger::When when) override;
    Result<void> exchangeBaths(const std::string& first, const ledger::Discarded& going,
                               const std::string& second, const std::string& note,
                               ledger::When when) override;
    Result<void> voidEvents(const std::vector<std::string>& events,
                            const std::string& why) override;
    Result<void> correct(const std::vector<std::string>& events,
                         const std::vector<ledger::Event>& instead, const std::string& why,
                         const std::vector<ledger::FilmRecord>& films) override;
    Result<void> markFilms(const std::vector<std::string>& films, ledger::FilmFault fault,
                           const std::string& note) override;
    Result<void> correctMark(const ledger::FilmMark& mark, const std::string& why) override;
    Result<void> takeMarksBack(const std::vector<ledger::FilmMark>& marks,
                               const std::string& why) override;
    Result<void> add(const formulary::Solution& solution) override { return addThis(solution); }
    Result<void> add(const formulary::Vessel& vessel) override { return addThis(vessel); }
    Result<void> add(const formulary::DevelopmentFigure& figure) override
    {
        return addThis(figure);
    }
    Result<std::vector<std::string>> add(std::vector<ledger::CupboardLine> lines) override;
    Result<void> recordOf(const ledger::Happening& what, chemistry::Instant at) override;
    std::string newId() override { return m_session->newId(); }
    void setBaseTimes(const std::string& solution,
                      const std::vector<chemistry::TimeAtTemperature>& pairs, double parts = 0,
                      const std::vector<formulary::FilmWanted>& films = {}) override;
    void setLastFigure(const QString& name, double value) override;

private:
    /// What is asked of an open book; refused while none is.
    template <class Question>
    auto ask(Question question) -> std::invoke_result_t<Question, Session&>
    {
        if (!m_session->isOpen())
            return refuse({.code = ErrorCode::Missing, .field = "book"});
        return question(*m_session);
    }
    template <class Deed>
    auto doing(Deed deed) -> std::invoke_result_t<Deed, ledger::Book&>
    {
        return ask([&](Session& session) { return session.doing(deed); });
    }
    template <class What>
    Result<void> addThis(const What& what)
    {
        return doing([&](ledger::Book& book) { return book.add(what); });
    }

    Session* m_session;
    Preferences* m_preferences;
};

} // namespace ullage::app
