// The one door through which pages and dialogs ask the open book and do something with it.
//
// They know neither store nor settings: what they may ask of them stands here. The window opens a
// SessionDoor; tests have doors of their own.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QObject>

#include "app/session/bottle.h"
#include "app/words/units.h"
#include "core/formulary/leaflet_time.h"
#include "core/ledger/book.h"
#include "core/ledger/film_trace.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace ullage::app
{

class Door : public QObject
{
    Q_OBJECT

public:
    using QObject::QObject;

    // Reading: refused as the Book refuses it, or because no book is open
    // ------------------------------------
    [[nodiscard]] virtual chemistry::Instant now() const = 0;
    /// Language and units, as they are set now.
    [[nodiscard]] virtual Wording wording() const = 0;
    [[nodiscard]] bool isOpen() const { return formulary() != nullptr; }
    /// Why the book can only be read; empty if it can be written.
    [[nodiscard]] virtual std::optional<Error> readOnly() const = 0;
    /// The file of the open book, as it was opened; empty for none.
    [[nodiscard]] virtual QString path() const = 0;
    /// How many entries the book has had so far: tells whether anything is new. 0 if unknown.
    [[nodiscard]] virtual std::int64_t entries() const = 0;
    /// Null while no book is open.
    [[nodiscard]] virtual const formulary::Formulary* formulary() const = 0;
    /// Batches in use, each judged, as of now, in order of mixing; none while no book is open. Good
    /// until something changes.
    virtual const std::vector<Bottle>& bottles() = 0;
    /// One of them; null if it is not in use, or unread.
    const Bottle* bottle(const std::string& batch);
    /// Batches that were in use then, in order of mixing.
    virtual std::vector<ledger::BatchState> standingAt(chemistry::Instant at) = 0;
    /// One batch as of `at`, in use or not.
    virtual Result<ledger::Batch> batch(const std::string& id, chemistry::Instant at) = 0;
    /// What one batch cost until then, as Book::cost() has it.
    virtual Result<ledger::Cost> cost(const std::string& batch, chemistry::Instant at) = 0;
    /// Names of all batches that ever were.
    virtual QStringList batchNames() = 0;
    virtual Result<std::vector<ledger::Event>> events(const std::string& batch) = 0;
    /// The same with those of every bottle that it is connected with by filling.
    virtual Result<std::vector<ledger::Event>> connectedEvents(const std::string& batch) = 0;
    /// What was entered in one action with this event, as Book::enteredWith() has it.
    virtual Result<std::vector<ledger::Event>> enteredWith(const std::string& event) = 0;
    /// Control strips read in batches of a solution and of those it replaces or is replaced by.
    virtual std::vector<ledger::StripReading> strips(const std::string& solution) = 0;
    // Films and what they went through, as store::FilmReader has them; newest first, but those of a
    // run in order of entry.
    virtual Result<std::optional<ledger::FilmTrace>> film(const std::string& id) = 0;
    virtual Result<std::vector<ledger::FilmTrace>> filmsOfBatch(const std::string& batch) = 0;
    virtual Result<std::vector<ledger::FilmTrace>> filmsOfRun(const std::string& run) = 0;
    virtual Result<std::vector<ledger::FilmTrace>> filmsBetween(chemistry::Instant from,
                                                                chemistry::Instant until) = 0;
    virtual Result<std::vector<ledger::FilmTrace>> filmsMarked() = 0;
    /// Packets of the cupboard that may be mixed from, as store::packetsAtHand() has them.
    virtual std::vector<ledger::Packet> packetsAtHand() = 0;
    /// What stands in the cupboard and in the cans, and the known work, as of now.
    virtual Result<ledger::CupboardState> cupboard() = 0;
    /// The film maker's figures last used with a solution at 1+`parts`, and the films they were
    /// for.
    [[nodiscard]] virtual std::vector<chemistry::TimeAtTemperature>
    baseTimes(const std::string& solution, double parts = 0) const = 0;
    [[nodiscard]] virtual std::vector<formulary::FilmWanted>
    baseTimesFor(const std::string& solution, double parts = 0) const = 0;
    /// A volume or temperature last used, in mL or °C, by the name of the field that asked for it;
    /// finite, but in no range.
    [[nodiscard]] virtual std::optional<double> lastFigure(const QString& name) const = 0;
    /// Where the run in hand is kept: beside the book; empty while no book is open.
    [[nodiscard]] virtual QString runFile() const = 0;

    // Doing: each is one action that undo takes back, or the formulary's, which it does not;
    // refused as the Book refuses it, or because the book can only be read
    // ---------------------------------
    /// The new batch's id.
    virtual Result<std::string> mix(const ledger::NewBatch& batch, ledger::When when) = 0;
    /// The same into a vessel that is entered with it.
    virtual Result<std::string> mixInto(const formulary::Vessel& vessel,
                                        const ledger::NewBatch& batch, ledger::When when) = 0;
    /// Several bottles at once; their ids in that order.
    virtual Result<std::vector<std::string>> mixAll(const std::vector<ledger::NewBatch>& batches,
                                                    ledger::When when) = 0;
    /// Everything of a run in one transaction; the run's id.
    virtual Result<std::string> log(const ledger::FilmRun& run, chemistry::Instant at) = 0;
    virtual Result<void> record(const std::string& batch, const ledger::Happening& what,
                                ledger::When when) = 0;
    /// With fresh solution, from another batch, or with a replenisher.
    virtual Result<void> topUp(const std::string& batch, const ledger::ToppedUp& what,
                               ledger::When when) = 0;
    /// As Book::exchangeBaths() has it.
    virtual Result<void> exchangeBaths(const std::string& first, const ledger::Discarded& going,
                                       const std::string& second, const std::string& note,
                                       ledger::When when) = 0;
    virtual Result<void> voidEvents(const std::vector<std::string>& events,
                                    const std::string& why) = 0;
    /// Takes events back and enters others in their place, with lines of their runs' films, as
    /// Book::correct() has it.
    virtual Result<void> correct(const std::vector<std::string>& events,
                                 const std::vector<ledger::Event>& instead, const std::string& why,
                                 const std::vector<ledger::FilmRecord>& films) = 0;
    virtual Result<void> markFilms(const std::vector<std::string>& films, ledger::FilmFault fault,
                                   const std::string& note) = 0;
    /// Takes marks back, or takes such a taking back.
    virtual Result<void> takeMarksBack(const std::vector<ledger::FilmMark>& marks,
                                       const std::string& why) = 0;
    /// As Book::correctMark() has it.
    virtual Result<void> correctMark(const ledger::FilmMark& mark, const std::string& why) = 0;
    virtual Result<void> add(const formulary::Solution& solution) = 0;
    virtual Result<void> add(const formulary::Vessel& vessel) = 0;
    virtual Result<void> add(const formulary::DevelopmentFigure& figure) = 0;
    /// Lines of the cupboard, given anew or withdrawn too; all or none. Their ids in that order.
    virtual Result<std::vector<std::string>> add(std::vector<ledger::CupboardLine> lines) = 0;
    /// What happened to a thing of the cupboard, or a can.
    virtual Result<void> recordOf(const ledger::Happening& what, chemistry::Instant at) = 0;
    /// One that the book has not, for what is added.
    virtual std::string newId() = 0;
    /// Remembered among the settings, not in the book.
    virtual void setBaseTimes(const std::string& solution,
                              const std::vector<chemistry::TimeAtTemperature>& pairs,
                              double parts = 0,
                              const std::vector<formulary::FilmWanted>& films = {}) = 0;
    virtual void setLastFigure(const QString& name, double value) = 0;

signals:
    /// Bottles are others than before.
    void changed();
    /// Language, locale or units are others than before, and what translates is in place: whoever
    /// asked for wording() words itself anew. What has no door has its words from Qt's own event of
    /// a change of language.
    void wordingChanged();
    /// Another book is open.
    void opened();
    /// The book is let go: whoever reads the file by another way must let go of it too.
    void closing();
    /// Why the book can only be read is no longer the same.
    void standingChanged();
};

inline const Bottle* Door::bottle(const std::string& batch)
{
    for (const Bottle& one : bottles()) {
        if (one.batch.id == batch)
            return &one;
    }
    return nullptr;
}

} // namespace ullage::app
