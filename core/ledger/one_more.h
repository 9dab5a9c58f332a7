// One more film as the last one: what a bottle did last, done once more without asking.
#pragma once

#include "core/ledger/book.h"

#include <optional>
#include <string>

namespace ullage::ledger
{

/// Why it has to be asked what went through.
enum class OneMoreHindrance {
    NothingDone, ///< no film has gone through it yet, or it was entered as an area
    Gone,        ///< a bath of that load is not in use any more
    Discard,     ///< a bath is to be discarded
    VolumeShort, ///< there is less in a bottle than was lost of it or thrown away then
};

struct OneMore {
    /// One piece of the format that stood first in that load, through the same baths in the same
    /// way, with the same lost and, of what is poured back, as much used as is there.
    FilmRun run;
    std::optional<OneMoreHindrance> hindrance;
    std::string batch; ///< that the hindrance is about
};

/// The load is the last by time that stands, not later than `now`; what topped it up is not done
/// again. UnknownId for a batch that was not mixed by then.
Result<OneMore> oneMore(Book& book, const std::string& batch, chemistry::Instant now);

} // namespace ullage::ledger
