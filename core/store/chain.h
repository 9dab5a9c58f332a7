// The chain: every entry carries a hash over the one before it and its own line.
//
// So a line that was changed, removed or put in by others is found and named. Each batch besides
// keeps the number of its entries and a hash over their lines, so that a fold can tell whether what
// it was given is what was entered, without reading the whole book.
#pragma once

#include "core/store/connection.h"
#include "core/store/damage.h"
#include "core/store/digest.h"
#include "core/store/progress.h"
#include "core/store/statement.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace ullage::store
{

/// How far a book has come: the number of its last entry and that entry's hash.
struct ChainHead {
    std::int64_t entry = 0;
    Digest hash = kNothing;
    friend bool operator==(const ChainHead&, const ChainHead&) = default;
};

/// "70 ab12…"; nothing if it is not such a text.
QByteArray headText(const ChainHead& head);
std::optional<ChainHead> headFromText(const QByteArray& text);

/// The schema step that brought it.
inline constexpr int kChainStep = 5;

// Notes that a book keeps of itself.
inline constexpr const char* kBookIdNote = "book-id"; ///< a UUID, made with the book
inline constexpr const char* kHeadNote = "head";      ///< headText() after the last action
inline constexpr const char* kFaultyNote = "faulty";  ///< found before the book got hashes

/// NotAsEntered about the whole book or about one of its entries.
Error notAsEntered(const char* what);
Error notAsEntered(const char* what, std::int64_t entry, const QByteArray& type,
                   const QByteArray& id);

enum class LineState {
    AsEntered,
    HashChanged, ///< the line is sound, its hash is not
    Changed,
    Foreign,
    FaultyBefore, ///< was faulty when the book first got hashes, and is as it was then
};

/// The code of what is wrong with such a line; null for AsEntered.
const char* damageOf(LineState state);

/// One entry as it stands in the book.
struct StoredLine {
    std::int64_t entry = 0;
    QByteArray type;
    QByteArray id;
    QByteArray body;
    LineState state = LineState::AsEntered;
    /// Whether it may be shown as what was entered.
    [[nodiscard]] bool sound() const
    {
        return state == LineState::AsEntered || state == LineState::HashChanged;
    }
};

struct ChainVisitor {
    /// Every entry in order of entry, sound or not; a refusal ends the walk.
    std::function<Result<void>(const StoredLine&)> line;
    /// Everything that is wrong, in order.
    std::function<void(Error)> fault;
    Watch watch;
};

struct ChainEnd {
    std::int64_t entries = 0;
    ChainHead head; ///< of the last entry that is there
};

/// Walks the whole chain, from one moment's view of the book. Any part of the visitor may be empty.
/// StoreFailed where the store cannot be read on, Cancelled, or what `line` refused with.
Result<ChainEnd> walkChain(Connection& connection, const ChainVisitor& visitor);

struct ChainReport {
    ChainEnd end;
    std::vector<Error> faults; ///< the first kMostFaults of them
};
inline constexpr std::size_t kMostFaults = 1000;

/// Whether the book on `connection` is what was entered: its chain, its record of the last entry,
/// and the notes it keeps. What was seen of it before is not asked (last_seen.h).
Result<ChainReport> verifyChain(Connection& connection, const Watch& watch = {});

/// Reads the head of a book and whether it is sound, from two entries. Prepared once; for whoever
/// asks often.
class LastEntries
{
public:
    explicit LastEntries(const Connection& connection);
    /// NotAsEntered if the last entry does not follow the one before, or if the book's own record
    /// of it says otherwise. Asked within a transaction or a ReadView: others may write meanwhile.
    Result<ChainHead> read();

private:
    Statement m_last;
    Statement m_record;
    LineHasher m_hasher;
};

/// What became of one entry, looked up by its neighbours; for single lines that no fold covers.
Result<LineState> stateOf(Connection& connection, std::int64_t entry);

/// Part of schema step 5, in its transaction: gives an id and hashes to a book that has none. Lines
/// that are faulty are listed in the note kFaultyNote, and never hashed as sound.
Result<void> beginChain(Connection& connection);

} // namespace ullage::store
