// The statements of the day book: which entries a filter lets through, newest first.
//
// Pages begin after a key (moment and number of entry), never after a count, so that the millionth
// row costs what the first one does. A search for words has no index to go by; it walks the entries
// in slices of a bounded number, between which it can be stopped.
#pragma once

#include "core/ledger/event.h"

#include <QString>
#include <QVariant>

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace ullage::store
{

/// A place in the day book: newest first by moment, then by order of entry.
struct DayKey {
    std::int64_t atMs = 0;
    std::int64_t seq = 0;
    friend bool operator==(const DayKey&, const DayKey&) = default;
};

/// What is looked for; all that is set must hold.
struct DayFilter {
    std::string batch;              ///< empty for all
    std::vector<std::string> kinds; ///< empty for all; "voided" is never shown by itself
    std::string person;             ///< empty for anyone
    std::optional<chemistry::Instant> from;
    std::optional<chemistry::Instant> until; ///< before that moment

    /// Words in the user's own text, in the name of the bottle, of a film or of the person; upper
    /// and lower case are the same.
    std::string text;
    /// What else counts as holding the text, because of how it is worded on the screen.
    std::vector<std::string> textKinds;
    std::vector<std::string> textSolutions; ///< ids; bottles of these

    friend bool operator==(const DayFilter&, const DayFilter&) = default;
};

struct Query {
    QString sql;
    QVariantList values;
};

/// Rows (seq, at_ms, body, batch, person) of at most `limit` entries after `after` and down to
/// `downTo`, both optional, newest first. Baths of one run are one row, that of the first bath
/// entered, unless the filter names a bottle.
Query dayRows(const DayFilter& filter, const std::optional<DayKey>& after,
              const std::optional<DayKey>& downTo, int limit);

/// The key of the `size`-th entry after `after`, whatever the words looked for: where a slice ends.
/// No row if fewer are left.
Query daySliceEnd(const DayFilter& filter, const std::optional<DayKey>& after, int size);

/// One row: how many entries there are between the keys, and the moment of the oldest.
Query dayCount(const DayFilter& filter, const std::optional<DayKey>& after,
               const std::optional<DayKey>& downTo);

} // namespace ullage::store
