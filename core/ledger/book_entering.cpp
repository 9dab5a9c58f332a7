// What the Book checks before anything is entered.
#include "core/ledger/book.h"

#include "core/ledger/fillings.h"
#include "core/ledger/references.h"

#include <algorithm>

namespace ullage::ledger
{

Result<void> Book::enter(const Entry& entry, std::int64_t action)
{
    Entry resolved = entry;
    auto fine = check(entry).and_then([&] { return checkReferences(entry); });
    if (!fine) {
        return fine;
    }
    if (auto* event = std::get_if<Event>(&resolved.what)) {
        fine = enterEvent(*event);
    } else if (const auto* mark = std::get_if<FilmMark>(&entry.what)) {
        fine = enterMark(*mark);
    } else {
        define(entry);
    }
    return fine ? m_store->put(resolved, action).map([&] { ++m_put; }) : fine;
}

// Takes over what others may name from now on.
void Book::define(const Entry& entry)
{
    std::visit(
        [&](const auto& what) {
            if constexpr (requires { m_formulary->add(what); }) {
                m_formulary->add(what);
            }
        },
        entry.what);
}

// Solutions and vessels of an event are looked up by the fold, which in an import comes after all
// lines; marks and events that are taken back go each by its own rules. In an import a film, a run
// or another batch may be a line still to come: that is for `later`.
Result<void> Book::checkReferences(const Entry& entry, const Later& later)
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

Result<bool> Book::knows(const formulary::FieldDescription& field, const std::string& id,
                         std::string_view type)
{
    using formulary::Refers;
    switch (field.refers) {
    case Refers::Solution:
        return m_formulary->solution(id) != nullptr;
    case Refers::Batch: {
        if (m_whole) { // what is folded in between may not fit
            return kept(id).map([](const Kept* found) { return !found->entered.empty(); });
        }
        const auto name = nameOf(id);
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

Result<void> Book::notLater(chemistry::Instant at) const
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
Result<void> Book::enterMark(const FilmMark& mark)
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

Result<void> Book::enterEvent(Event& event)
{
    if (auto fine = notLater(event.at); !fine) {
        return fine;
    }
    if (std::holds_alternative<Voided>(event.what)) {
        return enterVoid(event);
    }
    if (subjectOf(event) != Subject::Batch) {
        return {};
    }

    const auto found = kept(event.batch);
    if (!found) {
        return tl::unexpected(found.error());
    }
    Kept& kept = **found;
    const bool mixing = std::holds_alternative<Mixed>(event.what);
    const bool never = kept.entered.empty();
    if (!mixing && (m_whole ? never : !kept.fold(event.batch))) {
        return refuse({.code = never ? ErrorCode::UnknownId : ErrorCode::BeforeMixing,
                       .field = never ? "batch" : "at",
                       .text = never ? event.batch : event.id,
                       .subject = event.batch});
    }
    auto fine = m_whole ? Result<void>() : checkDonor(event);
    if (fine = fine.and_then([&] { return connect(event); }); !fine) {
        return fine;
    }
    m_touched.insert(event.batch);
    event.entry = m_newest.number + m_put + 1;
    kept.entered.push_back(event);
    if (halfOf(event)) {
        m_halves.push_back(event);
    }
    Connected& connected = *kept.connected;
    if (m_whole) {
        connected.folds.reset();
        return {};
    }
    return connected.folds && connected.folds->follows(event) ? connected.folds->apply(event)
                                                              : refold(connected);
}

// What a voiding takes back; its batch is that one's.
Result<void> Book::findTaken(Event& event)
{
    const std::string& target = std::get<Voided>(event.what).voids;
    const auto found = m_store->event(target);
    if (!found) {
        return tl::unexpected(found.error());
    }
    if (!*found) {
        return refuse({.code = ErrorCode::UnknownId, .field = "voids", .text = target});
    }
    const Event& taken = **found;
    if (!event.batch.empty() && event.batch != taken.batch) {
        return refuse({.code = ErrorCode::Conflict,
                       .field = "batch",
                       .text = event.batch,
                       .allowed = taken.batch});
    }
    event.batch = taken.batch;
    return {};
}

Result<void> Book::enterVoid(Event& event)
{
    if (auto fine = findTaken(event); !fine) {
        return fine;
    }
    const std::string& target = std::get<Voided>(event.what).voids;
    const auto keptBatch = kept(event.batch);
    if (!keptBatch) {
        return tl::unexpected(keptBatch.error());
    }
    Kept& kept = **keptBatch;
    if (takenBack(kept.entered).contains(target)) {
        return refuse({.code = ErrorCode::AlreadyVoided, .field = "voids", .text = target});
    }
    m_touched.insert(event.batch);
    event.entry = m_newest.number + m_put + 1;
    kept.entered.push_back(event);
    if (event.batch.empty()) {
        return {}; // a packet's event, of which nothing is folded
    }
    if (m_whole) {
        kept.connected->folds.reset();
        return {};
    }
    if (auto fine = refold(*kept.connected); !fine) {
        Error error = fine.error();
        error.code = ErrorCode::CannotVoid;
        error.field = "voids";
        error.text = target;
        return refuse(std::move(error));
    }
    return {};
}

Result<void> Book::putStates()
{
    // What was taken back in one bottle may end another, or bring it back.
    std::set<std::string> all = m_touched;
    for (const std::string& id : m_touched) {
        const auto found = m_kept.find(id);
        if (found != m_kept.end() && !id.empty()) {
            const auto& connected = found->second.connected->batches;
            all.insert(connected.begin(), connected.end());
        }
    }
    for (const std::string& id : all) {
        const auto found = m_kept.find(id);
        if (id.empty() || found == m_kept.end()) {
            continue;
        }
        if (auto fine = putState(id, found->second.fold(id)); !fine) {
            return fine;
        }
    }
    return {};
}

// What stands there already is not written again.
Result<void> Book::putState(const std::string& id, const Fold* fold)
{
    if (!m_touched.contains(id)) {
        const auto there = m_store->batch(id);
        if (!there) {
            return tl::unexpected(there.error());
        }
        const bool same = fold ? *there && (*there)->endedAt == fold->batch().endedAt : !*there;
        if (same) {
            return {};
        }
    }
    if (!fold) {
        return m_store->dropBatch(id);
    }
    const Batch& batch = fold->batch();
    return m_store->put(
        BatchState{id, batch.name, batch.solution->id, batch.mixedAt, batch.endedAt});
}

} // namespace ullage::ledger
