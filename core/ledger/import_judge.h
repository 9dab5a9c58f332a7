// Judges one batch into which events were brought: are they possible together with what was there?
#pragma once

#include "core/ledger/batch.h"

#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// An event that was brought in and does not fit. Places are those in the list judged.
struct Misfit {
    std::size_t event = 0;
    std::optional<std::size_t> against; ///< what it stands against, where it is one event
    Error error;
    int waiting = 0; ///< other brought events that nothing can be said of
};

struct BatchJudgement {
    /// In the order found. Without them, what was brought and what was there go together.
    std::vector<Misfit> misfits;
    /// Where the batch stands if nothing is unfit; empty if its mixing never happened.
    std::optional<Batch> state;
};

/// `entered` in order of entry: the first `had` were there before, the others were brought. Fields
/// must have passed checkFields(). What was there is never at fault as long as it went together by
/// itself. `gone`: ids of halves of fillings that never happened, because their other half was
/// taken back in another batch.
BatchJudgement judgeBrought(const std::vector<Event>& entered, std::size_t had,
                            const formulary::Formulary& formulary,
                            const std::set<std::string>& gone = {});

/// Judges the fillings among the brought events of one batch: whether they have their other half
/// (asked for if `pairs`), and whether the other bottle is another one, of the same role or
/// solution, and in being. `all`: the events of this batch and of those it was filled from or drawn
/// into, in order of entry, those up to number `had` being there before. Places are those in `all`.
std::vector<Misfit> judgeFillings(const std::string& batch, const std::vector<Event>& all,
                                  std::int64_t had, bool pairs,
                                  const formulary::Formulary& formulary);

} // namespace ullage::ledger
