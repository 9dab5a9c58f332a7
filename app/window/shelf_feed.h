// What the shelf shows of the open book, kept up to date while the shelf is seen.
#pragma once

#include <QObject>

#include "app/session/store_thread.h"
#include "app/shelf/shelf_snapshot.h"
#include "app/window/window_parts.h"

#include <atomic>
#include <memory>

namespace ullage::app
{

/// For the window's thread. All that is said of the selected bottle is read and reckoned on a
/// thread; the window waits for it for a moment, so that what is there at once is shown at once.
class ShelfFeed : public QObject
{
    Q_OBJECT

public:
    explicit ShelfFeed(const WindowParts& parts, QObject* parent = nullptr);
    ~ShelfFeed() override;

    /// The book holds something new, time has passed, or words and units are others. Nothing while
    /// the shelf is not seen: what it missed is made up for when it is.
    void refresh();
    /// Selects a bottle on the shelf, seen or not; false if it is not in use.
    bool select(const QString& id);
    /// On the shelf, until something else is done: what was just done by the last deed.
    void tellDone(const QString& text);
    /// The same of what was just undone there, with the way to undo what was done before it.
    void tellUndone(const ledger::Action& undone);

    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Handed;

    void bookOpened();
    void bookClosing();
    void showShelf();
    void showSelected(const QString& id);
    void showUnread(const QString& id);
    void forgetDone();
    void take(int turn, const std::shared_ptr<Handed>& handed);
    [[nodiscard]] BottleSnapshot snapshotOf(const Bottle& bottle);

    WindowParts m_parts;
    std::unique_ptr<StoreThread> m_thread; ///< gone before what its jobs tell
    std::shared_ptr<std::atomic<int>> m_turn = std::make_shared<std::atomic<int>>(0);
    QString m_shown;         ///< the bottle that is told of now
    std::int64_t m_done = 0; ///< the deed told to be done; 0 for none
    bool m_stale = true;     ///< to be made when the shelf is seen
    bool m_filling = false;  ///< the page chooses while it is filled; told of once it is
    bool m_told = false;     ///< that something could not be read, of this book
};

} // namespace ullage::app
