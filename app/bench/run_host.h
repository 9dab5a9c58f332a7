// What the Bench needs of the open book.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QObject>

#include "app/words/units.h"
#include "core/formulary/leaflet_time.h"
#include "core/ledger/book.h"
#include "core/ledger/run_plan.h"
#include "core/ledger/run_state.h"

#include <QString>

#include <vector>

namespace ullage::app
{

class RunHost : public QObject
{
    Q_OBJECT

public:
    using QObject::QObject;

    /// Batches in use, each judged, as of now.
    virtual std::vector<ledger::Judged> judged() = 0;
    virtual Result<std::vector<ledger::Event>> events(const std::string& batch) = 0;
    /// Everything of a run in one transaction; the run's id.
    virtual Result<std::string> log(const ledger::FilmRun& run, chemistry::Instant at) = 0;
    virtual Result<void> record(const std::string& batch, const ledger::Happening& what) = 0;
    [[nodiscard]] virtual chemistry::Instant now() const = 0;
    [[nodiscard]] virtual Wording wording() const = 0;
    /// For the notebook's times; null while no book is open.
    [[nodiscard]] virtual const formulary::Formulary* formulary() const = 0;
    /// The film maker's figures last used with a solution at 1+`parts`, and the films they were
    /// for.
    [[nodiscard]] virtual std::vector<chemistry::TimeAtTemperature>
    baseTimes(const std::string& solution, double parts = 0) const = 0;
    [[nodiscard]] virtual std::vector<formulary::FilmWanted>
    baseTimesFor(const std::string& solution, double parts = 0) const = 0;
    virtual void setBaseTimes(const std::string& solution,
                              const std::vector<chemistry::TimeAtTemperature>& pairs,
                              double parts = 0,
                              const std::vector<formulary::FilmWanted>& films = {}) = 0;
    /// Where the run in hand is kept: beside the book.
    [[nodiscard]] virtual QString runFile() const = 0;

signals:
    /// Bottles, units or locale are others than before.
    void changed();
};

/// Whether the book holds this run already: the program may have ended between logging a run and
/// forgetting it.
bool isLogged(RunHost& host, const ledger::RunState& state);

} // namespace ullage::app
