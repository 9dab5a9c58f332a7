// Schema step 5: a book that has no hashes gets them.
#include "core/store/chain.h"
#include "core/store/chain_growth.h"
#include "core/store/content_check.h"
#include "core/store/copies.h"
#include "core/store/each_row.h"
#include "core/store/journal_reader.h"

#include <QUuid>

#include <algorithm>
#include <set>

namespace ullage::store
{

namespace
{

constexpr int kPiece = 1000; // entries read before they are written
constexpr const char* kLines =
    "SELECT seq, CAST(type AS BLOB), CAST(id AS BLOB), CAST(body AS BLOB) "
    "FROM entry WHERE seq > ? ORDER BY seq LIMIT ?";
constexpr const char* kByBatch =
    "SELECT batch, CAST(type AS BLOB), CAST(id AS BLOB), CAST(body AS BLOB) "
    "FROM entry WHERE batch IS NOT NULL ORDER BY batch, seq";

class FirstHashes
{
public:
    explicit FirstHashes(Connection& connection)
        : m_connection(&connection), m_growth(connection),
          m_put(connection, QStringLiteral("UPDATE entry SET hash = ? WHERE seq = ?")),
          m_putBatch(connection,
                     QStringLiteral("UPDATE batch SET entries = ?, hash = ? WHERE id = ?"))
    {
    }

    Result<void> all()
    {
        return putBookId()
            .and_then([&] { return sumNotes(); })
            .and_then([&] { return findFaulty(); })
            .and_then([&] { return hashLines(); })
            .and_then([&] { return hashBatches(); });
    }

private:
    // A book that was copied before has one, by which its copies are found.
    Result<void> putBookId()
    {
        const auto had = bookId(*m_connection);
        if (!had) {
            return tl::unexpected(had.error());
        }
        const QString id =
            had->isEmpty() ? QUuid::createUuid().toString(QUuid::WithoutBraces) : *had;
        return m_growth.putNote(kBookIdNote, id.toUtf8());
    }

    // What it keeps of the journal it came from goes out with every export. Other notes get their
    // sum when they are written next.
    Result<void> sumNotes()
    {
        std::vector<std::pair<QByteArray, QByteArray>> notes;
        Statement rows(*m_connection, QStringLiteral("SELECT CAST(key AS BLOB), CAST(value AS BLOB)"
                                                     " FROM note WHERE key = ?"));
        auto fine =
            eachRow(rows.run(QByteArray(kHeaderNote)), [&](const Rows& row) -> Result<void> {
                notes.emplace_back(row.blob(0), row.blob(1));
                return {};
            });
        for (const auto& [key, value] : notes) {
            if (fine) {
                fine = m_growth.putNote(key, value);
            }
        }
        return fine;
    }

    // One line an entry or batch, for people and other programs: number, type, id.
    Result<void> findFaulty()
    {
        QByteArray list;
        const auto found = [&](const Error& error) {
            const QByteArray number = QByteArray::number(qlonglong{error.entry});
            const QByteArray line = number + ' ' + QByteArray::fromStdString(error.entryType) +
                                    ' ' + QByteArray::fromStdString(error.subject) + '\n';
            const bool again =
                error.entry > 0 ? !m_faulty.insert(error.entry).second : list.contains('\n' + line);
            if (!again && m_listed++ < kMostFaults) {
                list += line;
            }
        };
        return checkContent(*m_connection, false, found, {}).and_then([&](const ContentCheck&) {
            return list.isEmpty() ? Result<void>{} : m_growth.putNote(kFaultyNote, list);
        });
    }

    Result<void> hashLines()
    {
        struct Hashed {
            std::int64_t entry;
            Digest hash;
        };
        std::vector<Hashed> piece;
        Statement lines(*m_connection, QString::fromLatin1(kLines));
        do {
            piece.clear();
            auto fine = eachRow(lines.run(m_head.entry, kPiece), [&](const Rows& row) {
                const std::int64_t entry = row.number(0);
                LineHasher& hasher = m_growth.hasher();
                const Digest hash =
                    m_faulty.contains(entry)
                        ? hasher.nextFaulty(m_head.hash, row.blob(1), row.blob(2), row.blob(3))
                        : hasher.next(m_head.hash, row.blob(1), row.blob(2), row.blob(3));
                m_head = {entry, hash};
                piece.push_back({entry, hash});
                return Result<void>{};
            });
            for (std::size_t i = 0; fine && i < piece.size(); ++i) {
                fine = m_put.run(piece[i].hash, piece[i].entry).map([](const Rows&) {});
            }
            if (!fine) {
                return fine;
            }
        } while (!piece.empty());
        return m_head.entry > 0 ? m_growth.putNote(kHeadNote, headText(m_head)) : Result<void>{};
    }

    Result<void> hashBatches()
    {
        std::string batch;
        BatchChain chain;
        const auto put = [&] {
            return m_putBatch.run(chain.entries, chain.hash, batch).map([](const Rows&) {});
        };
        Statement rows(*m_connection, QString::fromLatin1(kByBatch));
        auto fine = eachRow(rows.run(), [&](const Rows& row) -> Result<void> {
            const std::string next = row.text(0);
            if (chain.entries > 0 && next != batch) {
                if (auto done = put(); !done) {
                    return done;
                }
                chain = {};
            }
            batch = next;
            chain = {chain.entries + 1,
                     m_growth.hasher().next(chain.hash, row.blob(1), row.blob(2), row.blob(3))};
            return {};
        });
        return fine && chain.entries > 0 ? put() : fine;
    }

    Connection* m_connection;
    ChainGrowth m_growth;
    Statement m_put;
    Statement m_putBatch;
    std::set<std::int64_t> m_faulty;
    std::size_t m_listed = 0;
    ChainHead m_head;
};

} // namespace

Result<void> beginChain(Connection& connection) { return FirstHashes(connection).all(); }

} // namespace ullage::store
