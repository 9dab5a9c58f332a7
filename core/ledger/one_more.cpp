#include "core/ledger/one_more.h"

#include "core/ledger/batch.h"
#include "core/ledger/run_state.h"
#include "core/ledger/verdict.h"

#include <algorithm>

namespace ullage::ledger
{

namespace
{

using chemistry::Instant;

// The last of what happened that is a load, of this run if one is named.
Result<std::optional<Event>> lastLoad(Book& book, const std::string& batch, Instant now,
                                      const std::string& run = {})
{
    auto entered = book.connectedEvents(batch);
    if (!entered) {
        return tl::unexpected(entered.error());
    }
    const auto all = happened(std::move(*entered));
    const auto found = std::find_if(all.rbegin(), all.rend(), [&](const Event& event) {
        const auto* load = std::get_if<Processed>(&event.what);
        return event.batch == batch && event.at <= now && load && (run.empty() || load->run == run);
    });
    return found == all.rend() ? std::nullopt : std::optional(*found);
}

Bath bathOf(const Event& event)
{
    const auto& load = std::get<Processed>(event.what);
    return {event.batch, load.used, load.lost, load.oneShot, event.airLeft, load.second};
}

std::optional<OneMoreHindrance> hindranceOf(const Batch& batch, const Bath& bath)
{
    if (!batch.inUse()) {
        return OneMoreHindrance::Gone;
    }
    // A film that went through is told, also where a test was due before it.
    if (assess(batch).verdict == Verdict::Discard) {
        return OneMoreHindrance::Discard;
    }
    const bool lacks = bath.lost > batch.volume || (bath.oneShot && bath.used > batch.volume);
    return lacks ? std::optional(OneMoreHindrance::VolumeShort) : std::nullopt;
}

// All baths of the run among the bottles that stood when it went through, in order of entry.
Result<std::vector<Event>> bathsOf(Book& book, const Event& last)
{
    const std::string& run = std::get<Processed>(last.what).run;
    if (run.empty()) {
        return std::vector{last};
    }
    // A bottle that the load used up was still there just before.
    const auto then = book.batches(last.at - std::chrono::milliseconds(1));
    if (!then) {
        return tl::unexpected(then.error());
    }
    std::vector<Event> baths;
    for (const Batch& batch : *then) {
        const auto bath = lastLoad(book, batch.id, last.at, run);
        if (!bath) {
            return tl::unexpected(bath.error());
        }
        if (*bath) {
            baths.push_back(**bath);
        }
    }
    std::stable_sort(baths.begin(), baths.end(),
                     [](const Event& a, const Event& b) { return a.entry < b.entry; });
    return baths;
}

} // namespace

Result<OneMore> oneMore(Book& book, const std::string& batch, Instant now)
{
    if (const auto known = book.batch(batch, now); !known) {
        return tl::unexpected(known.error());
    }
    const auto last = lastLoad(book, batch, now);
    if (!last) {
        return tl::unexpected(last.error());
    }
    OneMore made;
    if (!*last || std::get<Processed>((*last)->what).load.films.empty()) {
        made.hindrance = OneMoreHindrance::NothingDone;
        made.batch = batch;
        return made;
    }
    RunFilm film;
    film.format = std::get<Processed>((*last)->what).load.films.front().format;
    made.run = runOf({film}, {});
    const auto baths = bathsOf(book, **last);
    if (!baths) {
        return tl::unexpected(baths.error());
    }
    for (const Event& event : *baths) {
        Bath bath = bathOf(event);
        const auto state = book.batch(bath.batch, now);
        if (!state) {
            return tl::unexpected(state.error());
        }
        if (const auto hindrance = hindranceOf(*state, bath); hindrance && !made.hindrance) {
            made.hindrance = hindrance;
            made.batch = bath.batch;
        }
        if (bath.used && *bath.used > state->volume) {
            bath.used.reset(); // all that is there
        }
        made.run.baths.push_back(bath);
    }
    return made;
}

} // namespace ullage::ledger
