#include "core/store/salvage_copy.h"

#include <algorithm>
#include <limits>

namespace ullage::store
{

bool SalvageCopy::agrees(Wreck* damaged, std::int64_t number)
{
    if (!agreesUntil) {
        agreesUntil = std::numeric_limits<std::int64_t>::max();
        const std::int64_t last = damaged ? std::min(damaged->last(), pages->last()) : 0;
        std::int64_t same = 0;
        for (std::int64_t each = 1; each <= last; ++each) {
            const auto here = damaged->nameOf(each);
            const auto there = here ? pages->nameOf(each) : std::nullopt;
            if (here && there && *here != *there && damaged->entry(each)) {
                agreesUntil = same;
                break;
            }
            same = here && there && *here == *there ? each : same;
        }
    }
    return number <= *agreesUntil;
}

std::vector<SalvageCopy> openCopies(const std::vector<Copy>& copies, const QString& fresh)
{
    std::vector<SalvageCopy> opened;
    for (const Copy& copy : copies) {
        auto scratch = scratchFor(fresh);
        if (copy.state == CopyState::Unreadable || !scratch) {
            continue;
        }
        auto pages = Wreck::open(copy.path, scratch->path());
        if (pages && (*pages)->last() > 0) {
            opened.push_back({copy.path, std::move(*scratch), std::move(*pages)});
        }
    }
    return opened;
}

} // namespace ullage::store
