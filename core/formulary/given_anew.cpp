#include "core/formulary/given_anew.h"

namespace ullage::formulary
{

void GivenAnew::add(const std::string& id, const std::string& replaces, bool withdrawn)
{
    const std::size_t place = m_lines.size();
    std::size_t family = m_families.size();
    if (const auto earlier = m_at.find(replaces); earlier != m_at.end()) {
        m_lines[earlier->second].replaced = true;
        family = m_lines[earlier->second].family;
    } else {
        m_families.emplace_back();
    }
    m_families[family].push_back(place);
    m_lines.push_back({id, family, withdrawn, false});
    m_at.emplace(id, place);
}

std::optional<std::size_t> GivenAnew::standingOf(std::size_t family) const
{
    const auto& places = m_families[family];
    for (auto place = places.rbegin(); place != places.rend(); ++place) {
        if (!m_lines[*place].replaced && !m_lines[*place].withdrawn) {
            return *place;
        }
    }
    return std::nullopt;
}

std::vector<std::size_t> GivenAnew::standing() const
{
    std::vector<std::size_t> found;
    for (std::size_t family = 0; family < m_families.size(); ++family) {
        if (const auto place = standingOf(family)) {
            found.push_back(*place);
        }
    }
    return found;
}

std::optional<std::size_t> GivenAnew::standsFor(const std::string& id) const
{
    const auto known = m_at.find(id);
    return known == m_at.end() ? std::nullopt : standingOf(m_lines[known->second].family);
}

bool GivenAnew::isWithdrawn(const std::string& id) const
{
    return m_at.contains(id) && !standsFor(id);
}

std::vector<std::string> GivenAnew::family(const std::string& id) const
{
    const auto known = m_at.find(id);
    if (known == m_at.end()) {
        return {id};
    }
    std::vector<std::string> ids;
    for (const std::size_t place : m_families[m_lines[known->second].family]) {
        ids.push_back(m_lines[place].id);
    }
    return ids;
}

} // namespace ullage::formulary
