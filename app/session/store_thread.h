// A thread with a connection of its own to the open book, for reading what may take a while.
//
// Jobs run one after another. What they find they hand to the window's thread themselves.
#pragma once

#include <QThread>

#include "core/ledger/book.h"
#include "core/store/search_index.h"
#include "core/store/sql_store.h"

#include <QString>

#include <atomic>
#include <functional>
#include <memory>

namespace ullage::app
{

/// Reads only: the connection may not write. Made and told from the window's thread.
class StoreThread
{
public:
    using Job = std::function<void(store::SqlStore&)>;
    using Failed = std::function<void(const Error&)>;

    StoreThread();
    /// Waits for the job in hand, after asking it to stop.
    ~StoreThread();
    StoreThread(const StoreThread&) = delete;
    StoreThread& operator=(const StoreThread&) = delete;

    /// Lets go of the book before and reads this one from now on. Waits as the destructor does, so
    /// that nothing holds the old file when it returns; jobs still waiting are dropped, unheard.
    /// Empty for none: all jobs are then dropped.
    /// `indexes` is the folder of the caches for searches; empty for none.
    void setBook(const QString& path, const QString& indexes = {});
    /// `job` and `failed` (the book cannot be opened, as SqlStore::open() refuses) are called on
    /// the thread; at most one of them, and neither for a job that is dropped. What they capture
    /// must live as long as the thread.
    void post(Job job, Failed failed);
    /// For jobs: the Book over their connection, with what was entered up to now. It is for
    /// reading, and of use until the job ends.
    Result<ledger::Book*> book();
    /// For jobs: the index of the book in hand, null if there is none of use.
    store::SearchIndex* index();
    /// For jobs: the folder of the indexes.
    [[nodiscard]] const QString& indexes() const { return m_indexes; }
    /// For jobs: whether to give up. Any thread.
    [[nodiscard]] bool stopping() const { return m_stopping; }

private:
    QThread m_thread;
    std::unique_ptr<QObject> m_worker; ///< lives on the thread; takes the jobs
    std::atomic<bool> m_stopping = false;
    QString m_path;    ///< used on the thread only
    QString m_indexes; ///< used on the thread only, as all below
    std::unique_ptr<store::SqlStore> m_store;
    std::unique_ptr<ledger::Book> m_book; ///< over m_store
    std::unique_ptr<store::SearchIndex> m_index;
};

} // namespace ullage::app
