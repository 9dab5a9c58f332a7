// What the Book checks before anything is entered.
#include "core/ledger/book.h"

#include <algorithm>

namespace ullage::ledger
{

Result<void> Book::enter(const Entry& entry, std::int64_t action)
{
    Entry resolved = entry;
    Result<void> fine;
    if (auto* event = std::get_if<Event>(&resolved.what)) {
        fine = enterEvent(*event);
    } else if (const auto* solution = std::get_if<formulary::Solution>(&entry.what)) {
        fine = check(*solution);
        if (fine && !solution->replaces.empty() && !m_formulary->solution(solution->replaces)) {
            fine = refuse(
                {.code = ErrorCode::UnknownId, .field = "replaces", .text = solution->replaces});
        }
        if (fine) {
            m_formulary->add(*solution);
        }
    } else if (const auto* vessel = std::get_if<formulary::Vessel>(&entry.what)) {
        fine = check(*vessel).map([&] { m_formulary->add(*vessel); });
    } else if (const auto* film = std::get_if<FilmRecord>(&entry.what)) {
        fine = check(*film);
    } else if (const auto* packet = std::get_if<Packet>(&entry.what)) {
        fine = check(*packet);
        if (fine && !m_formulary->solution(packet->solution)) {
            fine = refuse(
                {.code = ErrorCode::UnknownId, .field = "solution", .text = packet->solution});
        }
    } else if (const auto* chemical = std::get_if<Chemical>(&entry.what)) {
        fine = check(*chemical);
    } else if (const auto* figure = std::get_if<formulary::DevelopmentFigure>(&entry.what)) {
        fine = enterFigure(*figure);
    } else if (const auto* mark = std::get_if<FilmMark>(&entry.what)) {
        fine = enterMark(*mark);
    }
    if (!fine) {
        return fine;
    }
    return m_store->put(resolved, action);
}

Result<void> Book::enterFigure(const formulary::DevelopmentFigure& figure)
{
    if (auto fine = check(figure); !fine) {
        return fine;
    }
    if (!m_formulary->solution(figure.developer)) {
        return refuse(
            {.code = ErrorCode::UnknownId, .field = "developer", .text = figure.developer});
    }
    if (!figure.replaces.empty() && !m_formulary->notebook().figure(figure.replaces)) {
        return refuse({.code = ErrorCode::UnknownId, .field = "replaces", .text = figure.replaces});
    }
    m_formulary->add(figure);
    return {};
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

// In an import the film may be a line still to come; what is taken back stands before.
Result<void> Book::enterMark(const FilmMark& mark)
{
    if (auto fine = check(mark).and_then([&] { return notLater(mark.at); }); !fine) {
        return fine;
    }
    if (!m_deferred) {
        const auto film = m_store->film(mark.film);
        if (!film) {
            return tl::unexpected(film.error());
        }
        if (!*film) {
            return refuse({.code = ErrorCode::UnknownId, .field = "film", .text = mark.film});
        }
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
    if (auto fine = checkFields(event); !fine) {
        return fine;
    }
    if (auto fine = notLater(event.at); !fine) {
        return fine;
    }
    if (std::holds_alternative<Voided>(event.what)) {
        return enterVoid(event);
    }
    if (const auto* opened = std::get_if<OpenedPacket>(&event.what)) {
        return needPacket(opened->packet);
    }
    if (auto fine = checkReferences(event); !fine) {
        return fine;
    }

    const auto found = kept(event.batch);
    if (!found) {
        return tl::unexpected(found.error());
    }
    Kept& kept = **found;
    const bool mixing = std::holds_alternative<Mixed>(event.what);
    if (!kept.fold && !mixing && !m_deferred) {
        const bool never = kept.entered.empty();
        return refuse({.code = never ? ErrorCode::UnknownId : ErrorCode::BeforeMixing,
                       .field = never ? "batch" : "at",
                       .text = never ? event.batch : event.id,
                       .subject = event.batch});
    }
    m_touched.insert(event.batch);
    kept.entered.push_back(event);
    if (m_deferred && m_deferred->batches.contains(event.batch)) {
        return {};
    }
    if (!kept.fold) {
        kept.fold.emplace(*m_formulary);
    }
    return unlessDeferred(kept.fold->follows(event) ? kept.fold->apply(event) : refold(kept),
                          event.batch);
}

// In an import an event that does not fit may be made possible by a line still to come.
Result<void> Book::unlessDeferred(Result<void> fine, const std::string& batch)
{
    if (fine || !m_deferred) {
        return fine;
    }
    m_deferred->batches.insert(batch);
    return {};
}

// Judges a batch whose events are all there; `culprit` is the event that does not fit.
Result<void> Book::settle(Kept& kept, const std::string& batch, std::string& culprit)
{
    const auto live = happened(kept.entered);
    kept.fold.reset();
    const bool mixed =
        std::any_of(kept.entered.begin(), kept.entered.end(),
                    [](const Event& event) { return std::holds_alternative<Mixed>(event.what); });
    if (!mixed) {
        culprit = kept.entered.front().id;
        return refuse(
            {.code = ErrorCode::UnknownId, .field = "batch", .text = batch, .subject = batch});
    }
    if (live.empty()) {
        return {};
    }
    Fold fold(*m_formulary);
    for (const Event& event : live) {
        if (auto fine = fold.apply(event); !fine) {
            culprit = event.id;
            return fine;
        }
    }
    kept.fold = std::move(fold);
    return {};
}

Result<void> Book::checkReferences(const Event& event)
{
    if (const auto* mixed = std::get_if<Mixed>(&event.what); mixed && !mixed->packet.empty()) {
        return needPacket(mixed->packet);
    }
    if (const auto* filled = std::get_if<ToppedUp>(&event.what); filled && !filled->from.empty()) {
        if (m_deferred) {
            m_deferred->sources.emplace_back(event.id, filled->from);
        } else if (const auto source = nameOf(filled->from); !source) {
            Error error = source.error();
            error.field = "from";
            return refuse(std::move(error));
        }
    }
    return {};
}

Result<void> Book::needPacket(const std::string& packet)
{
    const auto known = m_store->hasPacket(packet);
    if (!known) {
        return tl::unexpected(known.error());
    }
    return *known ? Result<void>{}
                  : refuse({.code = ErrorCode::UnknownId, .field = "packet", .text = packet});
}

Result<void> Book::enterVoid(Event& event)
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
    const auto keptBatch = kept(taken.batch);
    if (!keptBatch) {
        return tl::unexpected(keptBatch.error());
    }
    Kept& kept = **keptBatch;
    if (takenBack(kept.entered).contains(target)) {
        return refuse({.code = ErrorCode::AlreadyVoided, .field = "voids", .text = target});
    }
    m_touched.insert(taken.batch);
    kept.entered.push_back(event);
    if (taken.batch.empty() || (m_deferred && m_deferred->batches.contains(taken.batch))) {
        return {}; // a packet's event, of which nothing is folded; or judged later
    }
    if (m_deferred) {
        return unlessDeferred(refold(kept), taken.batch);
    }
    if (auto fine = refold(kept); !fine) {
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
    for (const std::string& id : m_touched) {
        const auto found = m_kept.find(id);
        if (id.empty() || found == m_kept.end()) {
            continue;
        }
        const auto& fold = found->second.fold;
        if (!fold) {
            if (auto fine = m_store->dropBatch(id); !fine) {
                return fine;
            }
            continue;
        }
        const Batch& batch = fold->batch();
        const BatchState state{id, batch.name, batch.solution->id, batch.mixedAt, batch.endedAt};
        if (auto fine = m_store->put(state); !fine) {
            return fine;
        }
    }
    return {};
}

} // namespace ullage::ledger
