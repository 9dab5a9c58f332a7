// What an import found wrong so far, and on which lines its events stand.
#pragma once

#include "core/ledger/contradiction.h"

#include <cstddef>
#include <deque>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace ullage::ledger
{

class ImportFindings
{
public:
    /// Contradictions that are kept; further ones are only counted.
    static constexpr std::size_t kMostKept = 500;

    void add(Contradiction contradiction);
    /// All that were found.
    [[nodiscard]] int count() const { return m_count; }
    /// Those on the first lines, in order of lines.
    [[nodiscard]] std::vector<Contradiction> all() const;
    /// The one on the first line; there must be one.
    [[nodiscard]] const Contradiction& first() const { return m_kept.begin()->second; }

    /// An event of this id stands on `line`.
    void stands(const std::string& id, int line);
    /// The last line on which an event of this id stands; 0 if none does.
    [[nodiscard]] int lineOf(const std::string& id) const;

private:
    int m_count = 0;
    std::multimap<int, Contradiction> m_kept;        ///< by line
    std::deque<std::pair<std::size_t, int>> m_lines; ///< hash of an event's id → its line
};

} // namespace ullage::ledger
