// What of an entry stands in columns of its own, for queries and tables.
#pragma once

#include "core/ledger/entry.h"

#include <cstdint>
#include <optional>
#include <string>

namespace ullage::store
{

/// Empty where an entry has no such thing.
struct EventColumns {
    std::optional<std::string> batch;
    std::optional<std::string> kind;  ///< "film-mark" for a mark
    std::optional<std::int64_t> atMs; ///< since 1970, UTC
    std::optional<double> volume;     ///< mL mixed, used (if given), filled in or drawn
    std::optional<double> films;      ///< of 80 sq in
    std::optional<std::string> run;   ///< a film's too
    std::optional<std::string> voids; ///< of a mark: the one it takes back
    std::optional<std::string> person;
    std::optional<std::string> film;      ///< of a mark
    std::optional<std::string> fromBatch; ///< what a bottle was filled from
    std::optional<std::string> toBatch;   ///< what was filled with what was drawn
    std::optional<std::string> item;      ///< of the cupboard
    std::optional<std::string> container; ///< for waste

    friend bool operator==(const EventColumns&, const EventColumns&) = default;
};

EventColumns eventColumns(const ledger::Entry& entry);

} // namespace ullage::store
