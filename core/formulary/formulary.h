// All solutions, vessels and development times of a book, by id.
#pragma once

#include "core/formulary/given_anew.h"
#include "core/formulary/notebook.h"
#include "core/formulary/solution.h"
#include "core/formulary/vessel.h"

#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace ullage::formulary
{

/// Solutions and vessels never change once added; batches hold shared pointers to them, so that a
/// copy of the formulary is cheap and what it names outlives it. Nothing is checked here.
class Formulary
{
public:
    /// Null for an unknown id.
    [[nodiscard]] std::shared_ptr<const Solution> solution(const std::string& id) const;
    [[nodiscard]] std::shared_ptr<const Vessel> vessel(const std::string& id) const;

    /// In order of entry.
    [[nodiscard]] const std::vector<std::shared_ptr<const Solution>>& solutions() const
    {
        return m_solutions;
    }
    [[nodiscard]] const std::vector<std::shared_ptr<const Vessel>>& vessels() const
    {
        return m_vessels;
    }

    /// Solutions to choose from: those that no later one replaces, in order of entry.
    [[nodiscard]] std::vector<std::shared_ptr<const Solution>> currentSolutions() const;

    /// Vessels to choose from: those that stand (given_anew.h), in the order in which the first
    /// of their lines was entered.
    [[nodiscard]] std::vector<std::shared_ptr<const Vessel>> currentVessels() const;
    /// The vessel as it was given last, by the id of any of its lines; null for an unknown id and
    /// for one that was withdrawn.
    [[nodiscard]] std::shared_ptr<const Vessel> vesselNow(const std::string& id) const;
    /// Withdrawn, so that nothing can stand in it any more.
    [[nodiscard]] bool isWithdrawnVessel(const std::string& id) const
    {
        return m_vesselsGiven.isWithdrawn(id);
    }

    /// `id` and every solution that it replaces or is replaced by, at any remove; `id` comes first,
    /// known or not.
    [[nodiscard]] std::vector<std::string> family(const std::string& id) const;

    /// The user's development times.
    [[nodiscard]] const Notebook& notebook() const { return m_notebook; }

    /// The ids must be new; Book sees to that.
    void add(Solution solution);
    void add(Vessel vessel);
    void add(DevelopmentFigure figure);

private:
    std::vector<std::shared_ptr<const Solution>> m_solutions;
    std::vector<std::shared_ptr<const Vessel>> m_vessels;
    Notebook m_notebook;
    std::unordered_map<std::string, std::size_t> m_solutionAt;
    std::unordered_map<std::string, std::size_t> m_vesselAt;
    GivenAnew m_vesselsGiven;
};

} // namespace ullage::formulary
