#include "core/store/integrity.h"

#include "core/store/book_schema.h"
#include "core/store/chain.h"
#include "core/store/content_check.h"
#include "core/store/each_row.h"
#include "core/store/interruptibly.h"
#include "core/store/read_view.h"

#include <set>

namespace ullage::store
{

namespace
{

class Check
{
public:
    Check(SqlStore& store, const Watch& watch)
        : m_store(&store), m_connection(&store.connection()), m_watch(&watch)
    {
    }

    Result<BookCheck> all()
    {
        const auto view = ReadView::open(*m_connection);
        if (!view) {
            return tl::unexpected(view.error());
        }
        const auto count = m_connection->number(QStringLiteral("SELECT max(seq) FROM entry"));
        m_each = count ? *count : 0;
        for (const auto part : {&Check::file, &Check::schema, &Check::chain, &Check::content}) {
            const auto done = (this->*part)();
            if (!done && done.error().code != ErrorCode::StoreFailed) {
                return tl::unexpected(done.error());
            }
            if (!done) {
                found(done.error()); // it cannot be read on; the other parts may tell more
            }
        }
        if (*m_watch) {
            (void)(*m_watch)({1, 1}); // nothing is left to stop
        }
        for (const Error& fault : m_store->faults()) {
            if (fault.text == damage::kLost || fault.text == damage::kForked) {
                found(fault);
            }
        }
        m_check.names = namesFor(*m_connection, m_check.findings);
        return std::move(m_check);
    }

private:
    void found(Error error)
    {
        // Each reading of the file meets the same damage again.
        if (error.code == ErrorCode::StoreFailed && !m_told.insert(error.text).second) {
            return;
        }
        if (m_check.findings.size() < kMostFaults) {
            m_check.findings.push_back(std::move(error));
        } else {
            ++m_check.unlisted;
        }
    }

    // Progress of one of the three readings of all entries: SQLite's own, the chain's, the folds'.
    [[nodiscard]] Watch part(int place) const
    {
        constexpr int kReadings = 3;
        if (!*m_watch) {
            return {};
        }
        return [this, place](const Progress& progress) {
            return (*m_watch)(
                {std::min(progress.done, m_each) + place * m_each, kReadings * m_each});
        };
    }

    // What SQLite itself has to say. By itself it would not stop before the end.
    Result<void> file()
    {
        return interruptibly(*m_connection, part(0), [this] { return pages(); });
    }

    Result<void> pages()
    {
        Statement pages(*m_connection, QStringLiteral("PRAGMA integrity_check"));
        auto fine = eachRow(pages.run(), [&](const Rows& row) -> Result<void> {
            if (row.text(0) != "ok") {
                found(storeFailure(QString::fromStdString(row.text(0))));
            }
            return {};
        });
        if (!fine) {
            found(fine.error());
        }
        Statement keys(*m_connection, QStringLiteral("PRAGMA foreign_key_check"));
        return eachRow(keys.run(), [&](const Rows& row) -> Result<void> {
            found(storeFailure(QStringLiteral("a row of table %1 points nowhere")
                                   .arg(QString::fromStdString(row.text(0)))));
            return {};
        });
    }

    Result<void> schema()
    {
        return compareSchema(*m_connection).map([&](const std::vector<Error>& faults) {
            for (const Error& fault : faults) {
                found(fault);
            }
        });
    }

    Result<void> chain()
    {
        return verifyChain(*m_connection, part(1)).map([&](const ChainReport& report) {
            m_check.entries = report.end.entries;
            for (const Error& fault : report.faults) {
                found(fault);
            }
        });
    }

    Result<void> content()
    {
        const auto keep = [this](Error error) { found(std::move(error)); };
        return checkContent(*m_connection, true, keep, part(2)).map([&](const ContentCheck& check) {
            m_check.events = check.events;
            m_check.batches = check.batches;
            if (check.entries != m_check.entries) {
                found(storeFailure(QStringLiteral("an index does not list every entry")));
            }
        });
    }

    SqlStore* m_store;
    Connection* m_connection;
    const Watch* m_watch;
    BookCheck m_check;
    std::set<std::string> m_told; ///< what the store failed with
    std::int64_t m_each = 0;      ///< entries, as far as that is known beforehand
};

} // namespace

Result<BookCheck> checkBook(SqlStore& store, const Watch& watch)
{
    return Check(store, watch).all();
}

} // namespace ullage::store
