#include "core/ledger/agitation.h"

#include <algorithm>
#include <cmath>

namespace ullage::ledger
{

using chemistry::Seconds;

std::string_view code(AgitationKind kind)
{
    return kAgitationCodes[static_cast<std::size_t>(kind)];
}

Result<void> check(const Agitation& agitation)
{
    if (agitation.kind != AgitationKind::Intervals) {
        return {};
    }
    return checkRange("first", agitation.first.value(), 0, 600, "s")
        .and_then([&] { return checkRange("every", agitation.every.value(), 5, 3600, "s"); })
        .and_then([&] {
            return checkRange("each", agitation.each.value(), 1, agitation.every.value(), "s");
        });
}

std::vector<AgitationBlock> agitationBlocks(const Agitation& agitation, Seconds length)
{
    std::vector<AgitationBlock> blocks;
    if (agitation.kind == AgitationKind::None || length <= Seconds(0)) {
        return blocks;
    }
    if (agitation.kind == AgitationKind::Continuous) {
        return {{Seconds(0), length}};
    }
    if (agitation.first > Seconds(0)) {
        blocks.push_back({Seconds(0), std::min(agitation.first, length)});
    }
    const double every = agitation.every.value();
    if (!(every > 0)) {
        return blocks;
    }
    // A spell that would begin as the opening one ends is left out: it would only lengthen it.
    for (double beat = std::floor(agitation.first.value() / every) + 1;
         beat * every < length.value(); ++beat) {
        const Seconds from(beat * every);
        blocks.push_back({from, std::min(from + agitation.each, length)});
    }
    return blocks;
}

AgitationCue cueAt(const Agitation& agitation, Seconds elapsed, Seconds length)
{
    if (elapsed >= length) {
        return {};
    }
    for (const AgitationBlock& block : agitationBlocks(agitation, length)) {
        if (elapsed < block.from) {
            return {false, block.from - elapsed};
        }
        if (elapsed < block.until) {
            return {true, block.until - elapsed};
        }
    }
    return {};
}

} // namespace ullage::ledger
