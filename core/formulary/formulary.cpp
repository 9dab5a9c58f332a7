#include "core/formulary/formulary.h"

#include <algorithm>
#include <iterator>
#include <unordered_set>

namespace ullage::formulary
{

namespace
{

template <class T>
std::shared_ptr<const T> find(const std::vector<std::shared_ptr<const T>>& all,
                              const std::unordered_map<std::string, std::size_t>& at,
                              const std::string& id)
{
    const auto found = at.find(id);
    return found == at.end() ? nullptr : all[found->second];
}

} // namespace

std::shared_ptr<const Solution> Formulary::solution(const std::string& id) const
{
    return find(m_solutions, m_solutionAt, id);
}

std::shared_ptr<const Vessel> Formulary::vessel(const std::string& id) const
{
    return find(m_vessels, m_vesselAt, id);
}

std::vector<std::shared_ptr<const Solution>> Formulary::currentSolutions() const
{
    std::unordered_set<std::string> replaced;
    for (const auto& solution : m_solutions) {
        replaced.insert(solution->replaces);
    }
    std::vector<std::shared_ptr<const Solution>> current;
    std::copy_if(m_solutions.begin(), m_solutions.end(), std::back_inserter(current),
                 [&](const auto& solution) { return !replaced.contains(solution->id); });
    return current;
}

void Formulary::add(Solution solution)
{
    m_solutionAt.emplace(solution.id, m_solutions.size());
    m_solutions.push_back(std::make_shared<const Solution>(std::move(solution)));
}

void Formulary::add(Vessel vessel)
{
    m_vesselAt.emplace(vessel.id, m_vessels.size());
    m_vessels.push_back(std::make_shared<const Vessel>(std::move(vessel)));
}

} // namespace ullage::formulary
