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

std::vector<std::shared_ptr<const Vessel>> Formulary::currentVessels() const
{
    std::vector<std::shared_ptr<const Vessel>> current;
    for (const std::size_t place : m_vesselsGiven.standing()) {
        current.push_back(m_vessels[place]);
    }
    return current;
}

std::shared_ptr<const Vessel> Formulary::vesselNow(const std::string& id) const
{
    const auto place = m_vesselsGiven.standsFor(id);
    return place ? m_vessels[*place] : nullptr;
}

std::vector<std::string> Formulary::family(const std::string& id) const
{
    std::vector<std::string> members{id};
    const auto isMember = [&](const std::string& one) {
        return std::find(members.begin(), members.end(), one) != members.end();
    };
    for (std::size_t before = 0; before != members.size();) {
        before = members.size();
        for (const auto& solution : m_solutions) {
            if (solution->replaces.empty()) {
                continue;
            }
            if (isMember(solution->id) && !isMember(solution->replaces)) {
                members.push_back(solution->replaces);
            } else if (isMember(solution->replaces) && !isMember(solution->id)) {
                members.push_back(solution->id);
            }
        }
    }
    return members;
}

void Formulary::add(Solution solution)
{
    m_solutionAt.emplace(solution.id, m_solutions.size());
    m_solutions.push_back(std::make_shared<const Solution>(std::move(solution)));
}

void Formulary::add(Vessel vessel)
{
    m_vesselsGiven.add(vessel);
    m_vesselAt.emplace(vessel.id, m_vessels.size());
    m_vessels.push_back(std::make_shared<const Vessel>(std::move(vessel)));
}

void Formulary::add(DevelopmentFigure figure) { m_notebook.add(std::move(figure)); }

} // namespace ullage::formulary
