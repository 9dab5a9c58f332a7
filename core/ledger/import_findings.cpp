#include "core/ledger/import_findings.h"

#include <algorithm>
#include <functional>

namespace ullage::ledger
{

void ImportFindings::add(Contradiction contradiction)
{
    ++m_count;
    const int line = contradiction.error.line;
    m_kept.emplace(line, std::move(contradiction));
    if (m_kept.size() > kMostKept) {
        m_kept.erase(std::prev(m_kept.end()));
    }
}

std::vector<Contradiction> ImportFindings::all() const
{
    std::vector<Contradiction> all;
    for (const auto& [line, contradiction] : m_kept) {
        all.push_back(contradiction);
    }
    return all;
}

void ImportFindings::stands(const std::string& id, int line)
{
    m_lines.emplace_back(std::hash<std::string>()(id), line);
}

int ImportFindings::lineOf(const std::string& id) const
{
    const std::size_t hash = std::hash<std::string>()(id);
    const auto found = std::find_if(m_lines.rbegin(), m_lines.rend(),
                                    [&](const auto& one) { return one.first == hash; });
    return found == m_lines.rend() ? 0 : found->second;
}

} // namespace ullage::ledger
