// Where an index leads in a search for words: rows that may hold the rarest of them, newest first.
//
// The rows are only where to look; whether they hold the words is asked of the lines themselves
// (day_texts.h), with an index as without.
#pragma once

#include "core/store/day_texts.h"
#include "core/store/search_index.h"

#include <memory>
#include <optional>
#include <vector>

namespace ullage::store
{

class DaySearch
{
public:
    /// Null where no index can lead: it is of no use or far behind, or no word has three letters.
    /// Everything given must outlive it.
    static Result<std::unique_ptr<DaySearch>> lead(SqlStore& store, DayTexts& texts,
                                                   SearchIndex& index, const DayFilter& filter,
                                                   const std::vector<FoldedWord>& words);

    struct Some {
        std::vector<DayKey> keys; ///< newest first, each once
        std::optional<DayKey> on; ///< where it goes on
        bool all = false;         ///< there are no others
    };
    /// Rows after `after`, some `wanted` of them, none left out. Empty if the index failed.
    Result<std::optional<Some>> next(const std::optional<DayKey>& after, int wanted);

private:
    explicit DaySearch(SqlStore& store, SearchIndex& index) : m_store(store), m_index(index) {}
    static Result<std::optional<std::vector<FoldedWord>>> lookedFor(DayTexts& texts,
                                                                    const FoldedWord& word);
    Result<bool> addCoded(DayTexts& texts, const DayWord& word);
    Result<Some> ofKinds(const std::optional<DayKey>& after, int wanted);

    SqlStore& m_store;
    SearchIndex& m_index;
    std::vector<FoldedWord> m_words;
    std::optional<DayFilter> m_kinds; ///< rows of kinds that are called so
    std::vector<DayKey> m_others;     ///< by codes, and what the index does not know yet
};

} // namespace ullage::store
