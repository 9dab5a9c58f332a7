#include "core/formulary/notebook.h"

#include "core/chemistry/constants.h"
#include "core/formulary/field_check.h"
#include "core/formulary/leaflet_time.h"
#include "core/formulary/notebook_fields.h"

#include <algorithm>
#include <iterator>
#include <unordered_set>

namespace ullage::formulary
{

Result<void> Described<DevelopmentFigure>::together(const DevelopmentFigure& figure)
{
    if (figure.times.empty()) {
        return {}; // withdrawn
    }
    // Asking for a temperature that is entered can fail only for what is wrong with the pairs.
    const auto tried =
        chemistry::baseTime(figure.times, figure.times.front().temperature, chemistry::kQ10.value);
    return tried ? Result<void>{} : refuse(tried.error());
}

Result<void> check(const DevelopmentFigure& figure) { return checkDescribed(figure); }

std::shared_ptr<const DevelopmentFigure> Notebook::figure(std::string_view id) const
{
    const auto found = std::find_if(m_figures.begin(), m_figures.end(),
                                    [&](const auto& figure) { return figure->id == id; });
    return found == m_figures.end() ? nullptr : *found;
}

std::vector<std::shared_ptr<const DevelopmentFigure>> Notebook::current() const
{
    std::unordered_set<std::string> replaced;
    for (const auto& figure : m_figures) {
        replaced.insert(figure->replaces);
    }
    std::vector<std::shared_ptr<const DevelopmentFigure>> current;
    std::copy_if(
        m_figures.begin(), m_figures.end(), std::back_inserter(current),
        [&](const auto& figure) { return !figure->withdrawn && !replaced.contains(figure->id); });
    return current;
}

std::shared_ptr<const DevelopmentFigure> Notebook::find(const TimeQuery& query) const
{
    auto fitting = current();
    std::erase_if(fitting, [&](const auto& figure) {
        return bareName(figure->film) != bareName(query.film) ||
               bareName(figure->dilution) != bareName(query.dilution) ||
               std::find(query.developers.begin(), query.developers.end(), figure->developer) ==
                   query.developers.end();
    });
    const auto lastWith = [&](std::optional<double> index) {
        const auto found = std::find_if(fitting.rbegin(), fitting.rend(), [&](const auto& figure) {
            return figure->exposureIndex == index;
        });
        return found == fitting.rend() ? nullptr : *found;
    };
    if (auto exact = lastWith(query.exposureIndex)) {
        return exact;
    }
    if (query.exposureIndex) {
        return lastWith(std::nullopt);
    }
    return fitting.size() == 1 ? fitting.front() : nullptr;
}

void Notebook::add(DevelopmentFigure figure)
{
    m_figures.push_back(std::make_shared<const DevelopmentFigure>(std::move(figure)));
}

} // namespace ullage::formulary
