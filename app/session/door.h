// The one door through which pages ask the open book and do something with it.
//
// A page knows neither store nor settings: what it may ask of them stands here. The window opens a
// SessionDoor; tests have doors of their own.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QObject>

#include "app/words/units.h"
#include "core/formulary/leaflet_time.h"
#include "core/ledger/book.h"
#include "core/ledger/run_plan.h"

#include <QString>

#include <vector>

namespace ullage::app
{

class Door : public QObject
{
    Q_OBJECT

public:
    using QObject::QObject;

    // Reading ------------------------------------------------------------------------------------
    [[nodiscard]] virtual chemistry::Instant now() const = 0;
    /// Language and units, as they are set now.
    [[nodiscard]] virtual Wording wording() const = 0;
    /// Null while no book is open.
    [[nodiscard]] virtual const formulary::Formulary* formulary() const = 0;
    /// Batches in use, each judged, as of now; none while no book is open.
    virtual std::vector<ledger::Judged> judged() = 0;
    virtual Result<std::vector<ledger::Event>> events(const std::string& batch) = 0;
    /// Packets of the cupboard that no batch has used.
    virtual std::vector<ledger::Packet> packetsAtHand() = 0;
    /// The film maker's figures last used with a solution at 1+`parts`, and the films they were
    /// for.
    [[nodiscard]] virtual std::vector<chemistry::TimeAtTemperature>
    baseTimes(const std::string& solution, double parts = 0) const = 0;
    [[nodiscard]] virtual std::vector<formulary::FilmWanted>
    baseTimesFor(const std::string& solution, double parts = 0) const = 0;
    /// Where the run in hand is kept: beside the book; empty while no book is open.
    [[nodiscard]] virtual QString runFile() const = 0;

    // Doing: each is one action that undo takes back, or the formulary's, which it does not;
    // refused as the Book refuses it, or because the book can only be read
    // ---------------------------------
    /// The new batch's id.
    virtual Result<std::string> mix(const ledger::NewBatch& batch, ledger::When when) = 0;
    /// Everything of a run in one transaction; the run's id.
    virtual Result<std::string> log(const ledger::FilmRun& run, chemistry::Instant at) = 0;
    /// Now.
    virtual Result<void> record(const std::string& batch, const ledger::Happening& what) = 0;
    virtual Result<void> add(const formulary::Solution& solution) = 0;
    virtual Result<void> add(const formulary::Vessel& vessel) = 0;
    virtual Result<void> add(const formulary::DevelopmentFigure& figure) = 0;
    /// One that the book has not, for what is added.
    virtual std::string newId() = 0;
    /// Remembered among the settings, not in the book.
    virtual void setBaseTimes(const std::string& solution,
                              const std::vector<chemistry::TimeAtTemperature>& pairs,
                              double parts = 0,
                              const std::vector<formulary::FilmWanted>& films = {}) = 0;

signals:
    /// Bottles, units or locale are others than before.
    void changed();
};

} // namespace ullage::app
