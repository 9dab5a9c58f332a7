// An index of what people typed into a book, so that a search need not walk the entries.
//
// It stands in a cache file outside the book, in WAL mode, and can always be done without: whatever
// is wrong with it (damaged, of a newer program, locked, not to be written, behind, of another
// course of the same book) is said as "no answer", and the search walks. It holds the trigrams of
// the folded text of each row (day_texts.h) and where the row stands; words that the program shows
// are not in it. Rows that change get another document: what an index names is only where to look.
//
// A file is never removed while this process may have it open. One that is damaged is left for a
// new one with the next number in its name.
#pragma once

#include "core/store/day_query.h"
#include "core/store/progress.h"
#include "core/store/sql_store.h"

#include <memory>
#include <optional>
#include <vector>

namespace ullage::store
{

class SearchIndex
{
public:
    /// The index of the book in `folder`, for reading; null if there is none of use.
    static std::unique_ptr<SearchIndex> open(SqlStore& book, const QString& folder);
    ~SearchIndex();

    /// The number of the last entry that it knows of. Empty if it is of no use to this book.
    std::optional<std::int64_t> upTo(SqlStore& book);
    /// It failed once, or a newer file has taken its place: open another.
    [[nodiscard]] bool isSpent() const;

    /// How many documents hold all trigrams of one of these words (where they are many: some of
    /// each), counted up to `most`.
    std::optional<int> count(const std::vector<FoldedWord>& words, int most);
    struct Found {
        std::vector<DayKey> keys; ///< of rows, newest first, each once
        bool all = false;         ///< there are no others
    };
    /// Rows older than `after` of documents that hold the same of one of these words; at least
    /// `wanted`, if there are as many, and none left out that is newer than the last one given.
    std::optional<Found> newest(const std::vector<FoldedWord>& words,
                                const std::optional<DayKey>& after, int wanted);

private:
    friend class SearchKeeper;
    SearchIndex(std::unique_ptr<Connection> connection, QString file);
    bool bad();

    std::unique_ptr<Connection> m_connection;
    QString m_file;
    bool m_failed = false;
    struct Statements;
    std::unique_ptr<Statements> m_statements;
};

/// Brings the index up to the book; makes it where there is none, anew where it is of no use.
class SearchKeeper
{
public:
    enum class Outcome {
        UpToDate,
        Stopped, ///< given up on the way; what was done stays, and the next time goes on there
        Busy,    ///< somebody else is at it
        Failed,  ///< it cannot be kept here: the folder, the disk
    };
    /// A refusal is the book's; what is wrong with the cache is an outcome. Stopped by the watch it
    /// keeps what it has done.
    static Result<Outcome> catchUp(SqlStore& book, const QString& folder, const Watch& watch = {});
};

/// The file that holds the book's index now, whether it is there or not.
QString searchIndexFile(SqlStore& book, const QString& folder);

} // namespace ullage::store
