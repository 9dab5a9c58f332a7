#include "core/formulary/figures.h"

#include <algorithm>
#include <cctype>
#include <regex>
#include <utility>

namespace ullage::formulary
{

namespace
{

template <class Q>
std::optional<double> plain(const std::optional<Q>& quantity)
{
    return quantity ? std::optional(quantity->value()) : std::nullopt;
}

template <class Q>
void put(std::optional<Q>& quantity, std::optional<double> value)
{
    quantity = value ? std::optional(Q(*value)) : std::nullopt;
}

bool begins(std::string_view text, std::string_view words)
{
    return text.size() >= words.size() &&
           std::equal(words.begin(), words.end(), text.begin(), [](char word, char letter) {
               return word == std::tolower(static_cast<unsigned char>(letter));
           });
}

} // namespace

const FigureBounds& bounds(Figure figure) { return kFigures[static_cast<std::size_t>(figure)]; }

std::optional<double> value(const Solution& solution, Figure figure)
{
    switch (figure) {
    case Figure::Capacity:
        return plain(solution.capacity);
    case Figure::KeepsFull:
        return plain(solution.keeping.full);
    case Figure::KeepsHalf:
        return plain(solution.keeping.half);
    case Figure::KeepsTray:
        return plain(solution.keeping.tray);
    case Figure::Q10:
        return solution.q10;
    case Figure::OxygenFactor:
        return solution.oxygenFactor;
    case Figure::Silver:
        return solution.silverPerFilm;
    case Figure::Bromide:
        return solution.bromidePerFilm;
    case Figure::FreshClearing:
        return plain(solution.freshClearing);
    case Figure::SilverLimit:
        return plain(solution.silverLimit);
    case Figure::TabularFactor:
        return solution.tabularFactor;
    case Figure::Replenish:
        return plain(solution.replenishPerFilm);
    }
    return std::nullopt;
}

void setValue(Solution& solution, Figure figure, std::optional<double> value)
{
    const Solution defaults;
    switch (figure) {
    case Figure::Capacity:
        return put(solution.capacity, value);
    case Figure::KeepsFull:
        return put(solution.keeping.full, value);
    case Figure::KeepsHalf:
        return put(solution.keeping.half, value);
    case Figure::KeepsTray:
        return put(solution.keeping.tray, value);
    case Figure::Q10:
        solution.q10 = value.value_or(defaults.q10);
        return;
    case Figure::OxygenFactor:
        solution.oxygenFactor = value.value_or(defaults.oxygenFactor);
        return;
    case Figure::Silver:
        solution.silverPerFilm = value.value_or(defaults.silverPerFilm);
        return;
    case Figure::Bromide:
        solution.bromidePerFilm = value.value_or(defaults.bromidePerFilm);
        return;
    case Figure::FreshClearing:
        return put(solution.freshClearing, value);
    case Figure::SilverLimit:
        return put(solution.silverLimit, value);
    case Figure::TabularFactor:
        solution.tabularFactor = value;
        return;
    case Figure::Replenish:
        return put(solution.replenishPerFilm, value);
    }
}

std::string sourceLine(const Solution& solution, std::string_view key, std::string_view shared)
{
    for (const std::string_view wanted : {key, shared}) {
        const auto found = solution.sources.find(std::string(wanted));
        if (!wanted.empty() && found != solution.sources.end() && !found->second.empty()) {
            return found->second;
        }
    }
    return {};
}

std::string sourceLine(const Solution& solution, Figure figure)
{
    const FigureBounds& known = bounds(figure);
    return sourceLine(solution, known.source, known.shared);
}

bool namesPublication(std::string_view sourceLine)
{
    static const std::regex kSigns(
        "(^|[^0-9])(1[5-9]|20)[0-9][0-9]([,;:.)]|$)" // a year, no day and no measure
        "|(^|[^a-z])(pp?\\.|ch(ap)?\\.|chapter|para|vol\\.) {0,3}[0-9]"
        "|\xC2\xA7|[0-9](st|nd|rd|th) ed|publication|leaflet|data ?sheet"
        "|://|[a-z]\\.[a-z]{2,10}/",
        std::regex::ECMAScript | std::regex::icase);
    return std::regex_search(sourceLine.begin(), sourceLine.end(), kSigns);
}

std::optional<chemistry::Grade> gradeOf(std::string_view sourceLine)
{
    const auto start = sourceLine.find_first_not_of(" \t");
    if (start == std::string_view::npos) {
        return std::nullopt;
    }
    const std::string_view line = sourceLine.substr(start);
    if (begins(line, "common practice")) {
        return chemistry::Grade::CommonPractice;
    }
    if (begins(line, "from memory")) {
        return chemistry::Grade::FromMemory;
    }
    if (begins(line, "computed")) {
        return chemistry::Grade::Computed;
    }
    const bool published =
        begins(line, "published") || (!begins(line, "own tests") && namesPublication(line));
    return published ? std::optional(chemistry::Grade::Published) : std::nullopt;
}

std::optional<chemistry::Grade> lesser(std::optional<chemistry::Grade> a,
                                       std::optional<chemistry::Grade> b)
{
    if (!a || !b) {
        return std::nullopt;
    }
    return std::max(*a, *b);
}

} // namespace ullage::formulary
