#include "app/session/store_thread.h"

namespace ullage::app
{

StoreThread::StoreThread() : m_worker(std::make_unique<QObject>())
{
    m_worker->moveToThread(&m_thread);
    m_thread.start();
}

StoreThread::~StoreThread()
{
    setBook({});
    m_thread.quit();
    m_thread.wait();
}

void StoreThread::setBook(const QString& path, const QString& indexes)
{
    m_stopping = true;
    QMetaObject::invokeMethod(
        m_worker.get(),
        [this, path, indexes] {
            m_index.reset(); // a connection is closed where it was opened
            m_book.reset();
            m_store.reset();
            m_path = path;
            m_indexes = indexes;
        },
        Qt::BlockingQueuedConnection);
    m_stopping = false;
}

void StoreThread::post(Job job, Failed failed)
{
    QMetaObject::invokeMethod(
        m_worker.get(),
        [this, job = std::move(job), failed = std::move(failed)] {
            if (m_stopping || m_path.isEmpty())
                return;
            if (!m_store) {
                auto opened = store::SqlStore::open(m_path, {.access = store::Access::Read});
                if (!opened) {
                    failed(opened.error());
                    return;
                }
                m_store = std::move(*opened);
            }
            job(*m_store);
        },
        Qt::QueuedConnection);
}

Result<ledger::Book*> StoreThread::book()
{
    if (m_book) {
        return m_book->refresh().map([this](bool) { return m_book.get(); });
    }
    const auto now = [] {
        return std::chrono::time_point_cast<std::chrono::milliseconds>(
            std::chrono::system_clock::now());
    };
    auto opened = ledger::Book::open(*m_store, now, [] { return std::string(); });
    if (!opened)
        return tl::unexpected(opened.error());
    m_book = std::move(*opened);
    return m_book.get();
}

store::SearchIndex* StoreThread::index()
{
    if (m_index && m_index->isSpent())
        m_index.reset();
    if (!m_index && m_store)
        m_index = store::SearchIndex::open(*m_store, m_indexes);
    return m_index.get();
}

} // namespace ullage::app
