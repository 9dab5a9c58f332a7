// What was ever typed about a row of the day book, gathered from all the lines that it is made of:
// one answer to "does this row hold these words?", whether an index led to it or not.
//
// Of an event: its line, those that took it back, its bottle's name and solution, its packet. Of a
// run: the same of every bath, its films and their marks. Of a mark: its line, those that took it
// back, and its film.
#pragma once

#include "core/store/day_query.h"
#include "core/store/search_words.h"
#include "core/store/sql_store.h"

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace ullage::store
{

class DayTexts
{
public:
    /// `store` must outlive it.
    explicit DayTexts(SqlStore& store);

    /// Whether the row holds every one of the words, in its text or by its codes.
    Result<bool> holds(const DayRow& row, const std::vector<FoldedWord>& words);
    /// All that was typed about the row, folded; empty for a row that is never shown.
    Result<QByteArray> textOf(const DayRow& row);
    /// The rows whose text the entries after `after` up to `last` have a part in. Rows of a bottle
    /// that was named anew are among them.
    Result<std::vector<DayRow>> rowsTouched(std::int64_t after, std::int64_t last);
    /// The rows that these entries have a part in; `count` is how many entries they were.
    Result<std::vector<DayRow>> rowsTouchedBy(Statement& entries, const QVariantList& values,
                                              int* count = nullptr);
    /// The name of a solution, folded; empty if there is none.
    Result<QByteArray> solutionName(const std::string& id);

private:
    struct Bottle {
        QByteArray text; ///< folded: what it was ever called, and its solutions' names
        std::set<std::string> solutions;
    };
    struct Lines {
        std::vector<QByteArray> bodies;
        std::set<std::string> batches;
    };
    Result<Lines> linesOf(const DayRow& row);
    Result<const Bottle*> bottle(const std::string& batch);
    void forgetSome();
    Result<bool> mayHold(const Lines& lines, const FoldedWord& word);
    Result<bool> reallyHolds(const DayRow& row, const Lines& lines,
                             const std::vector<FoldedWord>& words);
    using RowsBySeq = std::map<std::int64_t, DayRow>;
    Result<void> touch(const DayRow& entry, RowsBySeq& rows);
    Result<void> addRowOf(const DayRow& event, RowsBySeq& rows);
    Result<void> addFirst(Statement& statement, const std::string& of, RowsBySeq& rows);

    Statement m_voidings;
    Statement m_ofRun;
    Statement m_filmOf;
    Statement m_item;
    Statement m_mixings;
    Statement m_solution;
    Statement m_entries;
    Statement m_firstBath;
    Statement m_voided;
    Statement m_mark;
    Statement m_runOfFilm;
    Statement m_ofBatch;
    std::map<std::string, Bottle> m_bottles;
    std::map<std::string, QByteArray> m_solutions;
};

} // namespace ullage::store
