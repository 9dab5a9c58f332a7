#include "core/ledger/named_error.h"

#include <utility>
#include <variant>

namespace ullage::ledger
{

Error withName(Error error, const std::vector<Event>& entered)
{
    if (error.subject.empty() || error.code == ErrorCode::NotAsEntered) {
        return error;
    }
    for (const Event& event : entered) {
        const auto* mixed = std::get_if<Mixed>(&event.what);
        if (mixed && event.batch == error.subject && !mixed->name.empty()) {
            error.subject = mixed->name;
            break;
        }
    }
    return error;
}

Error withName(Error error, const Cupboard& cupboard, const formulary::Formulary& formulary)
{
    if (error.subject.empty() || error.code == ErrorCode::NotAsEntered) {
        return error;
    }
    const auto item = cupboard.item(error.subject);
    if (item && !item->solution.empty()) {
        if (const auto solution = formulary.solution(item->solution)) {
            error.subject = solution->name;
        }
    }
    return error;
}

} // namespace ullage::ledger
