// The writing side of the chain: hashes for what is entered.
#pragma once

#include "core/store/chain.h"
#include "core/store/statement.h"

#include <optional>
#include <string>
#include <unordered_map>

namespace ullage::store
{

/// Entries of one batch, in order of entry: how many, and a hash over their lines.
struct BatchChain {
    std::int64_t entries = 0;
    Digest hash = kNothing;
    friend bool operator==(const BatchChain&, const BatchChain&) = default;
};

class ChainGrowth
{
public:
    explicit ChainGrowth(const Connection& connection);

    /// At the start of a transaction: takes the head as it stands. NotAsEntered if the last entry
    /// is not the one that was entered last: nothing is added to a book that lost something.
    Result<void> begin();
    /// The transaction is over, either way.
    void end();

    /// What the next entry will be hashed to.
    Result<Digest> next(QByteArrayView type, QByteArrayView id, QByteArrayView body,
                        const std::optional<std::string>& batch);
    /// That entry was entered and got this number.
    void entered(std::int64_t entry);

    /// What this transaction knows of a batch; nothing if it did not touch it.
    [[nodiscard]] const BatchChain* touched(const std::string& batch) const;
    /// The batch's chain, reckoned from its entries if it is not kept anywhere. Its row is about to
    /// be written with it.
    Result<BatchChain> settled(const std::string& batch);
    void dropped(const std::string& batch) { m_batches.erase(batch); }

    /// Before the commit: writes what is not yet in the book.
    Result<void> close();

    Result<void> putNote(const QByteArray& key, const QByteArray& value);

    [[nodiscard]] const ChainHead& head() const { return m_head; }
    LineHasher& hasher() { return m_hasher; }

private:
    Result<BatchChain> read(const std::string& batch);

    LineHasher m_hasher;
    Statement m_row;
    Statement m_lines;
    Statement m_update;
    Statement m_putNote;
    LastEntries m_last;
    ChainHead m_head;
    Digest m_next = kNothing;
    bool m_grown = false;
    std::unordered_map<std::string, BatchChain> m_batches;
    BatchChain* m_growing = nullptr;
    Digest m_batchNext = kNothing;
};

/// The hash that a note is kept with.
Digest noteSum(LineHasher& hasher, const QByteArray& key, const QByteArray& value);

} // namespace ullage::store
