// The statements of the day book: which entries a filter lets through, newest first.
//
// Pages begin after a key (moment and number of entry), never after a count, so that the millionth
// row costs what the first one does. Words are no part of a statement (day_texts.h).
#pragma once

#include "core/ledger/event.h"
#include "core/store/search_words.h"
#include "core/store/statement.h"

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

/// True of an entry, called `alias` in the statement, that is not shown: a run's in a bottle that
/// was taken back, while the run was entered anew under the same id, as by a correction: in the
/// same bottle, or by another action in any. The run stands where it was entered anew.
QString enteredAnew(const QString& alias);

/// What is looked for; all that is set must hold.
struct DayFilter {
    std::string batch;              ///< empty for all
    std::vector<std::string> kinds; ///< empty for all; "voided" is never shown by itself
    std::string person;             ///< empty for anyone
    std::optional<chemistry::Instant> from;
    std::optional<chemistry::Instant> until; ///< before that moment

    /// Each must stand in the row (day_texts.h), or be what one of its codes is called.
    std::vector<DayWord> words;

    friend bool operator==(const DayFilter&, const DayFilter&) = default;
};

struct Query {
    QString sql;
    QVariantList values;
};

/// A row as its first line's columns have it.
struct DayRow {
    std::int64_t seq = 0;
    std::int64_t atMs = 0;
    QByteArray body;
    std::string batch;
    std::string id;
    std::string kind;
    std::string run;
    std::string film;
    std::string voids;

    [[nodiscard]] DayKey key() const { return {atMs, seq}; }
};

/// The columns that dayRow() reads, of an entry called e.
inline const QString kDayRowColumns =
    QStringLiteral("e.seq, e.at_ms, e.body, e.batch, e.id, e.kind, e.run, e.film, e.voids");
DayRow dayRow(const Rows& rows);

/// At most `limit` rows after `after`, newest first, whatever words are looked for. Baths of one
/// run are one row, that of the first bath entered, unless the filter names a bottle.
Query dayRows(const DayFilter& filter, const std::optional<DayKey>& after, int limit);

/// Only the keys of the next `limit` entries after `after`, as the indexes alone have them, so that
/// they can be had where the entries cannot be read; kinds are not looked at. Newest first, or else
/// from the oldest on.
enum class DayOrder { NewestFirst, OldestFirst };
Query dayKeys(const DayFilter& filter, const std::optional<DayKey>& after, int limit,
              DayOrder order = DayOrder::NewestFirst);

/// Those of these rows that the filter lets through, whatever words are looked for; in no order.
Query dayRowsOf(const DayFilter& filter, const std::vector<DayKey>& keys);

/// The key of the `size`-th entry after `after`: where a slice ends. No row if fewer are left.
Query daySliceEnd(const DayFilter& filter, const std::optional<DayKey>& after, int size);

/// One row: how many entries there are between the keys, and the moment of the oldest, whatever
/// words are looked for.
Query dayCount(const DayFilter& filter, const std::optional<DayKey>& after,
               const std::optional<DayKey>& downTo);

} // namespace ullage::store
