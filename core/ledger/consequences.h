// What would follow if something else had happened: a batch judged without it and with it, by the
// same fold and the same verdict. Nothing is written.
#pragma once

#include "core/ledger/batch.h"
#include "core/ledger/verdict.h"

#include <optional>
#include <vector>

namespace ullage::ledger
{

/// A batch as of a moment, and what to make of it then.
struct Outlook {
    Batch batch;
    Assessment assessment;
};

struct Consequences {
    std::optional<Outlook> before; ///< empty: not mixed by then
    std::optional<Outlook> after;  ///< empty: it would never have been mixed
};

/// Judges `batch` as of `now` as it stands, and with `extra` entered after all of `entered`.
/// Voidings among `extra` take back what they name. Refuses what the Book would refuse for this
/// batch (CannotVoid where `extra` takes something back that events of `entered` need); whether ids
/// of other things exist is not looked at. `entered` are the events of the batch and of all it is
/// connected with by filling, in order of entry.
Result<Consequences> consequencesOf(const std::string& batch, const std::vector<Event>& entered,
                                    const std::vector<Event>& extra, chemistry::Instant now,
                                    const formulary::Formulary& formulary);

/// An event that does not go together with those before it, and why.
struct DoesNotFit {
    Event event;
    Error error;
};
/// The first in the order in which they happened; empty if all go together. `entered` as above,
/// with what is to be entered after all of it.
std::optional<DoesNotFit> firstNotFitting(const std::vector<Event>& entered,
                                          const formulary::Formulary& formulary);

} // namespace ullage::ledger
