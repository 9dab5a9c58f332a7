#include "core/store/sound_lines.h"

#include "core/store/chain.h"
#include "core/store/damage.h"
#include "core/store/journal_codec.h"

namespace ullage::store
{

Result<void> forEachSoundLine(Connection& connection, const TakeSoundLine& take,
                              std::vector<Error>* faults)
{
    std::optional<Error> first;
    const auto fault = [&](Error error) {
        if (!faults && error.text == damage::kBefore) {
            return; // as it was entered, if it can be read at all
        }
        if (!faults) {
            first = first ? first : std::optional(std::move(error));
        } else if (faults->size() < kMostFaults) {
            faults->push_back(std::move(error));
        }
    };
    const auto line = [&](const StoredLine& stored) -> Result<void> {
        if (first) {
            return refuse(*first);
        }
        // One that was faulty from the first goes out as it was entered, if it is a line at all.
        const bool legible =
            stored.state == LineState::FaultyBefore && decodeStored(stored.body).has_value();
        if (stored.sound() || legible) {
            return take(stored.body);
        }
        return faults ? Result<void>{}
                      : refuse(notAsEntered(damageOf(stored.state), stored.entry, stored.type,
                                            stored.id));
    };
    auto walked = walkChain(connection, {.line = line, .fault = fault, .watch = {}});
    if (!walked) {
        return tl::unexpected(walked.error());
    }
    return first ? refuse(*first) : Result<void>{};
}

} // namespace ullage::store
