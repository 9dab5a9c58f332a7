#include "core/ledger/entry_check.h"

#include "core/ledger/references.h"

#include <algorithm>

namespace ullage::ledger
{

EntryCheck::EntryCheck(StorePort& store, BookMemory& memory, Clock clock)
    : m_store(&store), m_memory(&memory), m_clock(std::move(clock))
{
}

// Solutions and vessels of an event are looked up by the fold, which in an import comes after all
// lines; marks and events that are taken back go each by its own rules. In an import a film, a run
// or another batch may be a line still to come: that is for `later`.
Result<void> EntryCheck::references(const Entry& entry, const Later& later) const
{
    using formulary::Refers;
    Result<void> fine;
    eachReference(entry, [&](const formulary::FieldDescription& is, const std::string& id) {
        const bool byFold = entry.event() && (is.refers == Refers::Solution ||
                                              is.refers == Refers::Vessel || is.name == "batch");
        const bool byItsOwn = is.refers == Refers::Event || is.refers == Refers::FilmMark;
        if (!fine || byFold || byItsOwn) {
            return;
        }
        if (later && is.refers == Refers::Batch) {
            later(is, id);
            return;
        }
        const auto known = knows(is, id, entry.type());
        if (!known) {
            fine = tl::unexpected(known.error());
        } else if (!*known && later && (is.refers == Refers::Film || is.refers == Refers::Run)) {
            later(is, id);
        } else if (!*known) {
            fine =
                refuse({.code = ErrorCode::UnknownId, .field = std::string(is.name), .text = id});
        }
    });
    return fine;
}

Result<bool> EntryCheck::knows(const formulary::FieldDescription& field, const std::string& id,
                               std::string_view type) const
{
    using formulary::Refers;
    switch (field.refers) {
    case Refers::Solution:
        return m_memory->formulary().solution(id) != nullptr;
    case Refers::Batch: {
        if (m_memory->foldsLater()) { // what is folded in between may not fit
            return m_memory->kept(id).map(
                [](const BookMemory::Kept* found) { return !found->entered.empty(); });
        }
        const auto name = m_memory->nameOf(id);
        const bool unknown = !name && name.error().code == ErrorCode::UnknownId;
        return name || unknown ? Result<bool>(name.has_value()) : tl::unexpected(name.error());
    }
    case Refers::Run:
        return m_store->hasRun(id);
    case Refers::Same:
        return m_store->has(type, id);
    default:
        break;
    }
    for (const std::string_view one : typesNamed(field.refers)) {
        if (field.refers == Refers::Kind && id == one) {
            return true;
        }
        if (auto known = m_store->has(one, id); !known || *known) {
            return known;
        }
    }
    return false;
}

Result<void> EntryCheck::notLater(chemistry::Instant at) const
{
    const auto ahead = chemistry::daysBetween(m_clock(), at);
    if (ahead <= chemistry::Days(1)) {
        return {};
    }
    return refuse({.code = ErrorCode::InFuture,
                   .field = "at",
                   .number = ahead.value(),
                   .high = 1,
                   .unit = "days"});
}

// What is taken back stands before.
Result<void> EntryCheck::mark(const FilmMark& mark) const
{
    if (auto fine = notLater(mark.at); !fine) {
        return fine;
    }
    if (mark.takesBack.empty()) {
        return {};
    }
    const auto entered = m_store->marksOf(mark.film);
    if (!entered) {
        return tl::unexpected(entered.error());
    }
    const bool known = std::any_of(entered->begin(), entered->end(), [&](const FilmMark& other) {
        return other.id == mark.takesBack;
    });
    if (!known) {
        return refuse(
            {.code = ErrorCode::UnknownId, .field = "takes_back", .text = mark.takesBack});
    }
    if (takenBack(*entered).contains(mark.takesBack)) {
        return refuse(
            {.code = ErrorCode::AlreadyVoided, .field = "takes_back", .text = mark.takesBack});
    }
    return {};
}

// What a voiding takes back; its batch is that one's.
Result<void> EntryCheck::findTaken(Event& voiding) const
{
    const std::string& target = std::get<Voided>(voiding.what).voids;
    const auto found = m_store->event(target);
    if (!found) {
        return tl::unexpected(found.error());
    }
    if (!*found) {
        return refuse({.code = ErrorCode::UnknownId, .field = "voids", .text = target});
    }
    const Event& taken = **found;
    if (!voiding.batch.empty() && voiding.batch != taken.batch) {
        return refuse({.code = ErrorCode::Conflict,
                       .field = "batch",
                       .text = voiding.batch,
                       .allowed = taken.batch});
    }
    voiding.batch = taken.batch;
    return {};
}

} // namespace ullage::ledger
