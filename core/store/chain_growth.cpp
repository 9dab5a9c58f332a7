#include "core/store/chain_growth.h"

#include "core/store/each_row.h"

namespace ullage::store
{

ChainGrowth::ChainGrowth(const Connection& connection)
    : m_row(connection, QStringLiteral("SELECT entries, hash FROM batch WHERE id = ?")),
      m_lines(connection, QStringLiteral("SELECT CAST(type AS BLOB), CAST(id AS BLOB), "
                                         "CAST(body AS BLOB) FROM entry WHERE batch = ? "
                                         "ORDER BY seq")),
      m_update(connection, QStringLiteral("UPDATE batch SET entries = ?, hash = ? WHERE id = ?")),
      m_putNote(connection, QStringLiteral("INSERT INTO note (key, value, sum) VALUES (?, ?, ?) "
                                           "ON CONFLICT (key) DO UPDATE SET "
                                           "value = excluded.value, sum = excluded.sum")),
      m_last(connection)
{
}

Result<void> ChainGrowth::begin()
{
    end();
    return m_last.read().map([&](const ChainHead& head) { m_head = head; });
}

void ChainGrowth::end()
{
    m_batches.clear();
    m_growing = nullptr;
    m_grown = false;
}

Result<Digest> ChainGrowth::next(QByteArrayView type, QByteArrayView id, QByteArrayView body,
                                 const std::optional<std::string>& batch)
{
    m_next = m_hasher.next(m_head.hash, type, id, body);
    m_growing = nullptr;
    if (batch) {
        auto known = m_batches.find(*batch);
        if (known == m_batches.end()) {
            const auto stands = read(*batch);
            if (!stands) {
                return tl::unexpected(stands.error());
            }
            known = m_batches.emplace(*batch, *stands).first;
        }
        m_growing = &known->second;
        m_batchNext = m_hasher.next(m_growing->hash, type, id, body);
    }
    return m_next;
}

void ChainGrowth::entered(std::int64_t entry)
{
    m_head = {entry, m_next};
    m_grown = true;
    if (m_growing) {
        ++m_growing->entries;
        m_growing->hash = m_batchNext;
    }
}

const BatchChain* ChainGrowth::touched(const std::string& batch) const
{
    const auto known = m_batches.find(batch);
    return known == m_batches.end() ? nullptr : &known->second;
}

Result<BatchChain> ChainGrowth::settled(const std::string& batch)
{
    if (const auto known = m_batches.find(batch); known != m_batches.end()) {
        const BatchChain chain = known->second;
        m_batches.erase(known); // the row has it from now on
        m_growing = nullptr;
        return chain;
    }
    return read(batch);
}

// From its row, or from its entries where it has none: its mixing was taken back, or not yet read.
Result<BatchChain> ChainGrowth::read(const std::string& batch)
{
    BatchChain chain;
    bool kept = false;
    auto fine = eachRow(m_row.run(batch), [&](const Rows& row) -> Result<void> {
        const auto hash = digestFromBytes(row.blob(1));
        kept = hash && !row.isNull(0);
        if (kept) {
            chain = {row.number(0), *hash};
        }
        return {};
    });
    if (fine && !kept) {
        fine = eachRow(m_lines.run(batch), [&](const Rows& row) -> Result<void> {
            ++chain.entries;
            chain.hash = m_hasher.next(chain.hash, row.blob(0), row.blob(1), row.blob(2));
            return {};
        });
    }
    return fine.map([&] { return chain; });
}

Result<void> ChainGrowth::close()
{
    for (const auto& [batch, chain] : m_batches) {
        const auto done = m_update.run(chain.entries, chain.hash, batch);
        if (!done) {
            return tl::unexpected(done.error());
        }
    }
    return m_grown ? putNote(kHeadNote, headText(m_head)) : Result<void>{};
}

Result<void> ChainGrowth::putNote(const QByteArray& key, const QByteArray& value)
{
    return m_putNote.run(key, value, noteSum(m_hasher, key, value)).map([](const Rows&) {});
}

Digest noteSum(LineHasher& hasher, const QByteArray& key, const QByteArray& value)
{
    return hasher.next(kNothing, "note", key, value);
}

} // namespace ullage::store
