// The codes of what can be wrong with a book that is not what was entered.
#pragma once

namespace ullage::store
{

/// What is wrong with a book, as Error::text of NotAsEntered.
namespace damage
{
inline constexpr const char* kChanged = "changed"; ///< the line is not the one that was entered
inline constexpr const char* kHash = "hash";       ///< the line is, its hash is not
inline constexpr const char* kMissing = "missing"; ///< entries `low` to `high` are gone
inline constexpr const char* kForeign = "foreign"; ///< put in by something else
inline constexpr const char* kBefore = "before";   ///< faulty when the book first got hashes
inline constexpr const char* kBatch = "batch";   ///< the batch `subject`: other entries than it had
inline constexpr const char* kHead = "head";     ///< the book's own record of its last entry
inline constexpr const char* kNote = "note";     ///< the note named by `subject`
inline constexpr const char* kLost = "lost";     ///< `number` entries, `high` were seen before
inline constexpr const char* kForked = "forked"; ///< entry `number` is another than was seen
inline constexpr const char* kNoTable = "schema-missing"; ///< table, index or trigger `subject`
inline constexpr const char* kTable = "schema-changed";   ///< is not as the program makes it
inline constexpr const char* kExtra = "schema-foreign";   ///< is none of the program's
} // namespace damage

} // namespace ullage::store
