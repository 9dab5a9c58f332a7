// Keeps copies of the open book: at the start, once a day while the window is open, and on demand.
//
// The work is done on a thread and a connection of its own; what became of it is told, and never
// stands in the way.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QObject>

#include "core/ledger/book.h"
#include "core/store/backup.h"
#include "core/store/fault_names.h"

#include <QFileSystemWatcher>
#include <QString>
#include <QStringList>
#include <QTimer>

#include <atomic>
#include <memory>
#include <optional>

class QThread;

namespace ullage::app
{

/// Where copies go.
struct CopyPlaces {
    QString own;    ///< made if need be
    QString second; ///< of the user's choice (a stick, a synced folder); empty for none. Must be
                    ///< there: an empty mount point is not the stick
    [[nodiscard]] QStringList folders() const;
};

/// How the copies of the open book stand.
struct CopyStanding {
    std::optional<chemistry::Instant> lastGood; ///< newest sound copy in the own folder
    std::optional<Error> failure;               ///< of the last one there
    std::optional<Error> secondFailure;         ///< of the last one in the second folder
    std::optional<Error> fault; ///< copies are made, but something is wrong in the book itself
    store::FaultNames names;    ///< what that is about
};

/// Copies the book at `path` to `places` before something that could spoil it. Why one of the
/// copies could not be made, as store::backUp() refuses, the own folder's before the second's; that
/// stands in nobody's way. Waits until it is done. Any thread.
std::optional<Error> copyBefore(const QString& path, const CopyPlaces& places,
                                chemistry::Instant now);

/// For the window's thread.
class CopyKeeper : public QObject
{
    Q_OBJECT

public:
    explicit CopyKeeper(ledger::Clock clock, QObject* parent = nullptr);
    ~CopyKeeper() override;

    /// Without places nothing is copied, and start() does nothing. They hold from the next copy on.
    void setPlaces(const std::optional<CopyPlaces>& places);
    [[nodiscard]] const std::optional<CopyPlaces>& places() const { return m_places; }

    /// A book is open now: says how its copies stand, makes one at once if `now`, and from then on
    /// one a day; after a failure one an hour.
    void start(const QString& path, bool now);
    /// Leaves the book alone. Copies under way are waited for a second, then given up: the next
    /// start makes them.
    void stop();
    /// Makes one; while one is being made, one more after it. Nothing while no book is open.
    void copyNow();

    [[nodiscard]] const CopyStanding& standing() const { return m_standing; }
    /// Looks whether others have made or removed copies in the own folder, as happens by itself
    /// when something changes there; nothing while one is being made.
    void lookForOthers();
    /// Looks at the clock, as happens by itself every few minutes.
    void lookAtTheClock();

signals:
    /// standing() is another.
    void changed();

private:
    void work(bool copy);
    void watchFolder();
    void take(const CopyStanding& standing);

    ledger::Clock m_clock;
    std::optional<CopyPlaces> m_places;
    QString m_path;
    CopyStanding m_standing;
    std::optional<chemistry::Instant> m_tried; ///< when a copy was last begun
    QTimer m_timer;
    QFileSystemWatcher m_folder; ///< the own one, for copies that others make
    QTimer m_settled;            ///< after a change there: more may follow
    QStringList m_names;         ///< of the files there, when they were looked at last
    QThread* m_thread = nullptr;
    std::shared_ptr<std::atomic<bool>> m_wanted; ///< false: copies begun so far are given up
    bool m_again = false;                        ///< a copy was asked for while one was made
};

} // namespace ullage::app
