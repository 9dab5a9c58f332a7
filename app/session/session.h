// One open book and its window: owns the store and the Book, and says when anything changed.
//
// Every change goes through doing(), undo() or redo(). What others write to the same file is looked
// for from time to time, and whether it still is the same file. A book that is damaged, or that may
// not be written, is open for reading: then every change is refused with the reason. Nothing here
// knows a widget.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QObject>

#include "app/session/bottle.h"
#include "app/session/copy_keeper.h"
#include "app/session/presence.h"
#include "app/session/seat.h"
#include "core/ledger/book.h"
#include "core/store/film_reader.h"
#include "core/store/progress.h"

#include <QString>
#include <QStringList>
#include <QTimer>

#include <atomic>
#include <map>
#include <memory>
#include <optional>
#include <type_traits>
#include <vector>

namespace ullage::app
{

struct SessionOptions {
    ledger::Clock clock;              ///< the system's if empty
    ledger::IdMaker newId;            ///< UUIDs if empty
    QString starter;                  ///< journal that a new book begins with; empty for none
    int lookMs = 2000;                ///< how often others' changes are looked for
    std::optional<CopyPlaces> copies; ///< where copies go; none are made if empty
    QString lastSeen;                 ///< folder that remembers how far books had come; or none
    QString seats;                    ///< folder for the seats of windows (seat.h); or none
    QString machine;                  ///< name that their names begin with
    int idleMs = 20'000;              ///< after so long without a change the log is folded
    /// Opening looks at the pages for so long; of what takes longer, they are looked at on a
    /// thread.
    int quickCheckMs = 40;
    /// Reads the whole book at `path`, on a thread, after it was opened; what it finds wrong.
    /// Asked through `watch` whether to go on.
    std::function<Result<void>(const QString& path, const store::Watch& watch)> wholeCheck;
    store::VolumeProbe volume = store::volumeOf;
    store::LockTableReader locks = store::systemLockTable;
};

class Session : public QObject
{
    Q_OBJECT

public:
    explicit Session(SessionOptions options, QObject* parent = nullptr);
    ~Session() override;

    /// Opens the book at `path`, or makes it. The book open before is let go only when that
    /// succeeded.
    Result<void> open(const QString& path);
    /// Lets the book go, after any copy under way. A check under way is stopped.
    void close();
    [[nodiscard]] bool isOpen() const { return m_book != nullptr; }
    /// Why the book can only be read: BookDamaged, BookMoved, ReadOnly.
    [[nodiscard]] const std::optional<Error>& readOnly() const { return m_readOnly; }
    /// What the check in the background found wrong in a book that can be written all the same.
    [[nodiscard]] const std::optional<Error>& fault() const { return m_fault; }
    /// What a fault of the open book is about, as people know it.
    [[nodiscard]] store::FaultNames namesOf(const Error& fault) const;
    /// Who else has the book open, as far as that is known; empty for nobody.
    [[nodiscard]] const QStringList& elsewhere() const { return m_elsewhere; }
    [[nodiscard]] const QString& path() const { return m_path; }
    /// The file's name.
    [[nodiscard]] QString bookName() const;
    /// Whose deeds undo takes back here; empty for nobody's.
    [[nodiscard]] std::string seat() const { return m_seat ? m_seat->name().toStdString() : ""; }

    [[nodiscard]] ledger::Book& book() { return *m_book; }
    /// Who does what is done from now on, in this book and the next ones; empty for nobody.
    void setPerson(const QString& name);
    [[nodiscard]] const formulary::Formulary& formulary() const { return m_book->formulary(); }
    [[nodiscard]] chemistry::Instant now() const { return m_options.clock(); }
    [[nodiscard]] const QString& lastSeen() const { return m_options.lastSeen; }
    [[nodiscard]] std::string newId() const { return m_options.newId(); }

    /// Batches in use as of now, in order of mixing. Kept until something changes or a minute
    /// passes; a failure is told by failed() and leaves what was known.
    const std::vector<Bottle>& bottles();
    /// Those of them that are not what was entered, and so not among bottles().
    const std::vector<ledger::Unread>& unread();
    /// One of bottles(); null if it is not in use, or unread.
    const Bottle* bottle(const QString& id);
    /// Names of all batches that ever were.
    QStringList batchNames();
    /// Control strips read in batches of a solution and of those it replaces or is replaced by.
    /// Kept as bottles() are; a failure is told by failed() and gives none.
    const std::vector<ledger::StripReading>& strips(const std::string& solution);
    /// Packets of the cupboard that no batch has used; a failure is told by failed().
    std::vector<ledger::Packet> packetsAtHand();
    /// Batches that were in use then, in order of mixing; a failure is told by failed().
    std::vector<ledger::BatchState> standingAt(chemistry::Instant at);

    /// Films of the open book and what they went through; of use until the book is let go.
    [[nodiscard]] store::FilmReader films() { return {*m_store, m_book->formulary()}; }
    /// The moment of the newest entry by time, also where it lies after now; empty for an empty
    /// book. A failure is told by failed().
    std::optional<chemistry::Instant> newest();
    /// How many entries the book has had so far: tells whether anything is new. 0 if unknown.
    [[nodiscard]] std::int64_t entries() { return m_store->lastEntry().value_or(0); }

    /// Does something with the Book and tells everyone if it succeeded.
    template <class Deed>
    auto doing(Deed deed) -> std::invoke_result_t<Deed, ledger::Book&>
    {
        lookAtPlace();
        if (m_readOnly)
            return tl::unexpected(*m_readOnly);
        auto done = deed(*m_book);
        tellIf(done.has_value());
        return done;
    }
    /// The last deed of this window; what others did is taken back from the day book.
    Result<void> undo();
    Result<void> redo();

    /// Copies of the open book.
    [[nodiscard]] CopyKeeper& copies() { return m_copies; }

    /// The book is being written by someone else (an import on a thread): looks at once.
    void lookForChanges();

signals:
    /// The book holds something new, or time has passed.
    void changed();
    /// Another book is open.
    void opened();
    /// Who else has the book open, why it can only be read, or what is wrong in it, is no longer
    /// the same.
    void standingChanged();
    /// The book is let go: whoever reads the file by another way must let go of it too.
    void closing();
    /// Something went wrong that no caller waits for.
    void failed(const ullage::Error& error);

private:
    struct Opened {
        std::unique_ptr<store::SqlStore> store;
        std::optional<Error> readOnly;
        bool checked = false; ///< all pages were looked at
    };
    Result<Opened> openStore(const QString& path);
    Result<void> takeSeat(ledger::Book& book, const QString& path);
    void tellIf(bool done);
    void lookAtPlace();
    void lookAround();
    void foldLog();
    void foldInBackground();
    void checkInBackground(bool quick);
    void onThread(std::function<void()> work);
    void setReadOnly(std::optional<Error> why);

    SessionOptions m_options;
    std::unique_ptr<store::SqlStore> m_store;
    std::unique_ptr<ledger::Book> m_book;
    std::unique_ptr<Presence> m_presence;
    std::unique_ptr<Seat> m_seat;
    std::optional<Error> m_readOnly;
    std::optional<Error> m_fault;
    std::shared_ptr<std::atomic<bool>> m_checking; ///< false: the check is to stop
    QStringList m_elsewhere;
    QString m_path;
    std::string m_person;
    std::vector<Bottle> m_bottles;
    std::map<std::string, std::vector<ledger::StripReading>> m_strips;
    bool m_stale = true;
    std::vector<ledger::Unread> m_unread;
    std::size_t m_unreadTold = 0; ///< how many there were when that was said last
    QTimer m_look;
    QTimer m_minute;
    CopyKeeper m_copies;
    QTimer m_idle;
};

} // namespace ullage::app
