// How whoever waits for a long piece of work follows it, and stops it.
#pragma once

#include "core/chemistry/result.h"

#include <cstdint>
#include <functional>

namespace ullage::store
{

struct Progress {
    std::int64_t done = 0;
    std::int64_t all = 0; ///< 0 while that is not known
};

/// Called now and then by the thread that works, or by one beside it while that one waits; never
/// twice at a time. False stops the work, which then leaves everything
/// as it was and returns Cancelled.
using Watch = std::function<bool(const Progress&)>;

/// Cancelled if `watch` says to stop. An empty one lets everything go on.
inline Result<void> goOn(const Watch& watch, const Progress& progress)
{
    return !watch || watch(progress) ? Result<void>{} : refuse({.code = ErrorCode::Cancelled});
}

/// Pieces of work between two calls: often enough for a person, seldom enough to cost nothing.
inline constexpr std::int64_t kPiecesUnwatched = 1024;

} // namespace ullage::store
