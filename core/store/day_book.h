// Everything that happened, newest first, page by page.
#pragma once

#include "core/ledger/entry.h"
#include "core/store/day_query.h"
#include "core/store/day_texts.h"
#include "core/store/line_proof.h"
#include "core/store/sql_store.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace ullage::store
{

/// Why an entry counts as never having happened.
struct TakenBack {
    std::string voiding; ///< id of the voiding event
    chemistry::Instant at;
    std::string why;
    std::string by;
    std::int64_t entry = 0; ///< number of that voiding
};

/// One bath of a run.
struct DayBath {
    std::string event;
    std::string batch;
    std::string name; ///< the bottle's
    std::optional<TakenBack> taken;
    std::int64_t action = 0; ///< it was entered in
};

/// Entries that stand here and cannot be read, because the book's file is damaged.
struct DayHole {
    std::int64_t entries = 0; ///< 0: nobody knows how many
    chemistry::Instant newest;
    chemistry::Instant oldest;
};

/// One row of the day book.
struct DayEntry {
    DayKey key;
    ledger::Event event;                   ///< of a run: its first bath's
    std::string name;                      ///< of the bottle; the id if it never was or has none
    std::optional<ledger::Entry> thing;    ///< of the cupboard, or the can, that it is about
    std::vector<DayBath> baths;            ///< of a run that has an id, in order of entry
    std::vector<ledger::FilmRecord> films; ///< of that run
    std::optional<TakenBack> taken;        ///< of a run: when all its baths are
    std::optional<ledger::RunTimes> times; ///< of that run, if they have a line of their own
    /// Set for a mark on a film: then the film is the only one in `films`, and `event` holds its
    /// id, moment and person, and its note as one.
    std::optional<ledger::FilmMark> mark;
    /// Marks that stand on films of a run, in the order of `films`.
    std::vector<std::vector<ledger::FilmMark>> marks;
    /// A line that the row is made of cannot be read, or is not what was entered: then nothing of
    /// the row may be shown but when, in which bottle, and this.
    std::optional<Error> fault;
    std::optional<DayHole> hole; ///< it is no entry but a gap; then there is a fault, too
};

struct DayPage {
    std::vector<DayEntry> entries;
    std::optional<DayKey> last; ///< where the next page goes on
    /// There may be others. A search for words looks through so many entries at a time: then there
    /// may be fewer than asked for, or none, and `last` says how far it looked.
    bool more = false;
    bool stopped = false; ///< given up on the way; the entries are those found by then
};

struct DayTotals {
    int entries = 0;
    std::optional<chemistry::Instant> oldest;
    bool more = false; ///< with words, there are more than kMostCounted
    bool stopped = false;
    bool damaged = false; ///< not all entries can be read, and so not counted
};
/// Of a search for words no more are counted: each must be looked at.
inline constexpr int kMostCounted = 2000;

/// A row, without what goes with it, and without asking whether it is what was entered.
Result<DayEntry> dayEntry(const DayRow& row);

/// Asked between slices; true gives up.
using Stop = std::function<bool()>;

class DaySearch;
class SearchIndex;

class DayBook
{
public:
    /// `store` must outlive it and be used from the same thread; so must `index`, which may be null
    /// or of no use: a search then walks the entries.
    explicit DayBook(SqlStore& store, SearchIndex* index = nullptr);

    /// At most `limit` entries after `after`. Where some cannot be read a row says so in their
    /// place, and those below follow; looking for words fails there.
    Result<DayPage> page(const DayFilter& filter, const std::optional<DayKey>& after, int limit,
                         const Stop& stop = {});
    Result<DayTotals> count(const DayFilter& filter, const Stop& stop = {});
    /// Everyone who is said to have done something, by name.
    Result<std::vector<std::string>> people();
    /// The last `most` batches mixed, newest first.
    Result<std::vector<ledger::BatchState>> bottles(int most);
    /// The journal lines of a row and of what took it back, in order of entry; of a run those of
    /// its baths, films and their marks.
    using NumberedLine = std::pair<std::int64_t, QByteArray>; ///< number of entry and line
    Result<std::vector<NumberedLine>> lines(const DayEntry& entry);

private:
    Result<std::optional<DayKey>> sliceEnd(const DayFilter& filter,
                                           const std::optional<DayKey>& after);
    Result<std::vector<DayRow>> rows(const Query& query);
    Result<DayPage> search(const DayFilter& filter, const std::optional<DayKey>& after, int limit,
                           const Stop& stop,
                           const std::function<Result<DayEntry>(const DayRow&)>& take);
    Result<DayTotals> countFound(const DayFilter& filter, const Stop& stop);
    struct Keys;
    Result<Keys> keysAfter(const DayFilter& filter, const std::optional<DayKey>& after, int limit);
    std::vector<DayKey> readableAgain(const DayFilter& filter, const std::optional<DayKey>& after);
    Result<DayPage> pageAround(const DayFilter& filter, const std::optional<DayKey>& after,
                               int limit, const Stop& stop);
    Result<std::optional<DayEntry>> oneAt(const DayFilter& filter, const DayKey& key);
    Result<void> addAt(const DayFilter& filter, const DayKey& key, DayPage& page);
    Result<DayEntry> proven(const DayRow& row);
    Result<DayEntry> whole(const DayRow& row);
    Result<void> complete(DayEntry& entry);
    Result<void> completeMark(DayEntry& entry);
    Result<void> completeRun(DayEntry& entry, const std::string& run);
    Result<std::string> nameOf(const std::string& batch);
    Result<std::optional<ledger::Entry>> thingOf(const ledger::Event& event);
    Result<std::optional<TakenBack>> takenBack(const std::string& event);

    SqlStore& m_store;
    SearchIndex* m_index;
    DayTexts m_texts;
    LineProof m_proof;
    Statement m_name;
    Statement m_mixing;
    Statement m_thing;
    Statement m_voidings;
    Statement m_ofRun;
    Statement m_actionsOfRun;
    Statement m_people;
    Statement m_bottles;
    Statement m_lines;
};

} // namespace ullage::store
