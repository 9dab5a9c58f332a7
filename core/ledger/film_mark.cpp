#include "core/ledger/film_mark.h"

#include "core/formulary/codes.h"
#include "core/formulary/field_check.h"
#include "core/ledger/entry_fields.h"

#include <algorithm>

namespace ullage::formulary
{

Result<void> Described<ledger::FilmMark>::together(const ledger::FilmMark& mark)
{
    if (!mark.fault && mark.takesBack.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "mark"});
    }
    if (mark.fault && !mark.takesBack.empty()) {
        return refuse({.code = ErrorCode::Conflict,
                       .field = "takes_back",
                       .text = mark.takesBack,
                       .allowed = "mark or takes_back, not both"});
    }
    return {};
}

} // namespace ullage::formulary

namespace ullage::ledger
{

std::string_view code(FilmFault fault) { return kFilmFaultCodes[static_cast<std::size_t>(fault)]; }

std::optional<FilmFault> filmFaultFromCode(std::string_view code)
{
    return formulary::fromCode<FilmFault>(kFilmFaultCodes, code);
}

Result<void> check(const FilmMark& mark) { return formulary::checkDescribed(mark); }

std::unordered_set<std::string> takenBack(const std::vector<FilmMark>& entered)
{
    // Newest first: what takes a line back is always entered after it.
    std::unordered_set<std::string> taken;
    for (auto mark = entered.rbegin(); mark != entered.rend(); ++mark) {
        if (!mark->takesBack.empty() && !taken.contains(mark->id)) {
            taken.insert(mark->takesBack);
        }
    }
    return taken;
}

std::vector<FilmMark> standingMarks(const std::vector<FilmMark>& entered)
{
    const auto taken = takenBack(entered);
    std::vector<FilmMark> standing;
    std::copy_if(
        entered.begin(), entered.end(), std::back_inserter(standing),
        [&](const FilmMark& mark) { return mark.fault.has_value() && !taken.contains(mark.id); });
    return standing;
}

} // namespace ullage::ledger
