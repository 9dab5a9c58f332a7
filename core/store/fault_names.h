// What the faults of a book are about, as people know it: what still stands beside an entry that is
// not what was entered, and what lay around entries that are gone.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>

class QString;

namespace ullage::store
{

class Connection;

/// Of one entry, by its columns: what its line says is not asked. What cannot be read is empty.
struct EntryName {
    std::string type; ///< of the line, as the journal spells it
    std::string kind; ///< of an event
    std::optional<chemistry::Instant> at;
    std::string bottle; ///< name of the batch; its id where it has none
    std::string name;   ///< of a solution, a vessel or whatever else has a name

    /// Whether there is anything by which a person knows it.
    [[nodiscard]] bool known() const { return at || !bottle.empty() || !name.empty(); }
};

/// The moments of the entries next to some that are gone; empty at an end of the book.
struct Between {
    std::optional<chemistry::Instant> from;
    std::optional<chemistry::Instant> to;
};

struct FaultNames {
    std::map<std::int64_t, EntryName> entries;  ///< by number
    std::map<std::int64_t, Between> missing;    ///< by the number of the first that is gone
    std::map<std::string, std::string> bottles; ///< by id of the batch
};

/// For what `faults` name, as far as the book on `connection` still tells; where it cannot be read,
/// that is left out.
FaultNames namesFor(Connection& connection, std::span<const Error> faults);

/// The same in a file, opened for that; nothing where it cannot be.
FaultNames namesIn(const QString& path, std::span<const Error> faults);

/// The moments around the entries `first` to `last`.
Between around(Connection& connection, std::int64_t first, std::int64_t last);

} // namespace ullage::store
