#include "core/ledger/entering.h"

#include "core/ledger/consequences.h"
#include "core/ledger/fillings.h"
#include "core/ledger/line_description.h"
#include "core/ledger/vessel_in_use.h"

#include <algorithm>

namespace ullage::ledger
{

Entering::Entering(StorePort& store, BookMemory& memory, const EntryCheck& check,
                   std::int64_t newest)
    : m_store(&store), m_memory(&memory), m_check(&check), m_before(newest), m_last(newest)
{
}

Result<void> Entering::enter(const Entry& entry, std::int64_t action)
{
    Entry resolved = entry;
    auto fine = check(entry).and_then([&] { return m_check->references(entry); });
    if (!fine) {
        return fine;
    }
    if (auto* event = std::get_if<Event>(&resolved.what)) {
        fine = enterEvent(*event);
    } else if (const auto* mark = std::get_if<FilmMark>(&entry.what)) {
        fine = m_check->mark(*mark);
    } else {
        const auto* vessel = std::get_if<formulary::Vessel>(&entry.what);
        m_withdrewVessel = m_withdrewVessel || (vessel && vessel->withdrawn);
        m_memory->define(entry);
    }
    return fine ? m_store->put(resolved, action).map([&] { ++m_last; }) : fine;
}

Result<void> Entering::enterEvent(Event& event)
{
    if (auto fine = m_check->notLater(event.at); !fine) {
        return fine;
    }
    if (std::holds_alternative<Voided>(event.what)) {
        return enterVoiding(event);
    }
    m_cupboard.add(event);
    if (subjectOf(event) != Subject::Batch) {
        return {};
    }
    if (const auto* mixed = std::get_if<Mixed>(&event.what); mixed && !mixed->packet.empty()) {
        if (auto fine = packetSuits(*m_store, mixed->packet); !fine) {
            return fine;
        }
    }

    const auto found = m_memory->kept(event.batch);
    if (!found) {
        return tl::unexpected(found.error());
    }
    BookMemory::Kept& kept = **found;
    const bool mixing = std::holds_alternative<Mixed>(event.what);
    const bool never = kept.entered.empty();
    if (!mixing && (m_memory->foldsLater() ? never : !kept.fold(event.batch))) {
        return refuse({.code = never ? ErrorCode::UnknownId : ErrorCode::BeforeMixing,
                       .field = never ? "batch" : "at",
                       .text = never ? event.batch : event.id,
                       .subject = event.batch});
    }
    auto fine = m_memory->foldsLater() ? Result<void>() : checkDonor(event);
    if (fine = fine.and_then([&] { return m_memory->connect(event); }); !fine) {
        return fine;
    }
    keep(kept, event);
    if (halfOf(event)) {
        m_halves.push_back(event);
    }
    BookMemory::Connected& connected = *kept.connected;
    if (m_memory->foldsLater()) {
        connected.folds.reset();
        return {};
    }
    return connected.folds && connected.folds->follows(event) ? connected.folds->apply(event)
                                                              : m_memory->refold(connected);
}

Result<void> Entering::enterVoiding(Event& event)
{
    if (auto fine = m_check->findTaken(event); !fine) {
        return fine;
    }
    const std::string& target = std::get<Voided>(event.what).voids;
    m_voided = target;
    if (event.batch.empty()) {
        return voidOfNoBatch(event);
    }
    const auto root = rootOf(*m_store, event);
    if (!root) {
        return tl::unexpected(root.error());
    }
    if (*root) {
        m_cupboard.add(**root);
    }
    const auto keptBatch = m_memory->kept(event.batch);
    if (!keptBatch) {
        return tl::unexpected(keptBatch.error());
    }
    BookMemory::Kept& kept = **keptBatch;
    if (takenBack(kept.entered).contains(target)) {
        return refuse({.code = ErrorCode::AlreadyVoided, .field = "voids", .text = target});
    }
    keep(kept, event);
    if (m_memory->foldsLater()) {
        kept.connected->folds.reset();
        return {};
    }
    if (auto fine = m_memory->refold(*kept.connected); !fine) {
        Error error = fine.error();
        error.code = ErrorCode::CannotVoid;
        error.field = "voids";
        error.text = target;
        return refuse(std::move(error));
    }
    return {};
}

// What stands in the cupboard, or a can.
Result<void> Entering::voidOfNoBatch(Event& event)
{
    const std::string& target = std::get<Voided>(event.what).voids;
    const auto about = eventsAbout(*m_store, event);
    if (!about) {
        return tl::unexpected(about.error());
    }
    if (takenBack(*about).contains(target)) {
        return refuse({.code = ErrorCode::AlreadyVoided, .field = "voids", .text = target});
    }
    const auto root = rootOf(*m_store, event);
    if (!root) {
        return tl::unexpected(root.error());
    }
    if (*root) {
        m_cupboard.add(**root);
    }
    return {};
}

void Entering::keep(BookMemory::Kept& kept, Event& event)
{
    m_touched.insert(event.batch);
    event.entry = m_last + 1;
    kept.entered.push_back(event);
}

// The bottle that a filling comes from: another one, of the same role and in being; what is poured
// into a bottle goes into one of the same solution if that is new.
Result<void> Entering::checkDonor(const Event& event)
{
    const auto half = halfOf(event);
    if (!half || half->drawn) {
        return {};
    }
    const auto no = [&](ErrorCode code, const char* allowed) {
        return refuse({.code = code,
                       .field = half->field(),
                       .text = half->donor,
                       .allowed = allowed,
                       .subject = half->donor});
    };
    if (half->donor == event.batch) {
        return no(ErrorCode::Conflict, kOtherBottleForm);
    }
    const auto from = m_memory->kept(half->donor);
    if (!from) {
        return tl::unexpected(from.error());
    }
    const Fold* donor = (*from)->fold(half->donor);
    if (!donor) {
        return no(ErrorCode::UnknownId, "");
    }
    const auto& theirs = *donor->batch().solution;
    if (const auto* mixed = std::get_if<Mixed>(&event.what)) {
        return mixed->solution == theirs.id ? Result<void>()
                                            : no(ErrorCode::Conflict, kSameSolutionForm);
    }
    const BookMemory::Kept* mine = m_memory->known(event.batch);
    const Fold* heir = mine ? mine->fold(event.batch) : nullptr;
    return heir && heir->batch().solution->role != theirs.role
               ? no(ErrorCode::Conflict, kSameKindForm)
               : Result<void>();
}

// What is refused is either new, or rests on what was taken back.
Result<void> Entering::foldWhole(const std::vector<Entry>& entries)
{
    for (const std::string& id : m_touched) {
        const auto* kept = m_memory->known(id);
        if (id.empty() || !kept || kept->connected->folds) {
            continue;
        }
        if (m_memory->refold(*kept->connected)) {
            continue;
        }
        auto misfit = firstNotFitting(m_memory->enteredIn(*kept->connected), m_memory->formulary());
        if (!misfit) {
            return m_memory->refold(*kept->connected);
        }
        const auto voiding = std::find_if(entries.begin(), entries.end(), [](const Entry& entry) {
            return entry.event() && std::holds_alternative<Voided>(entry.event()->what);
        });
        if (voiding != entries.end() && misfit->event.entry <= m_before) {
            misfit->error.code = ErrorCode::CannotVoid;
            misfit->error.field = "voids";
            misfit->error.text = std::get<Voided>(voiding->event()->what).voids;
        }
        return refuse(std::move(misfit->error));
    }
    for (const Entry& entry : entries) {
        const Event* event = entry.event();
        if (event && subjectOf(*event) == Subject::Batch) {
            if (auto fine = checkDonor(*event); !fine) {
                return fine;
            }
        }
    }
    return {};
}

Result<void> Entering::finish()
{
    return checkPairs()
        .and_then([&] { return putStates(); })
        .and_then([&] { return checkVessels(); })
        .and_then([&] { return checkCupboard(); });
}

// What goes from one bottle into another is entered on both sides or not at all.
Result<void> Entering::checkPairs()
{
    for (const Event& entered : m_halves) {
        const auto found = m_memory->kept(entered.batch);
        if (!found) {
            return tl::unexpected(found.error());
        }
        const auto all = m_memory->enteredIn(*(*found)->connected);
        for (const std::size_t lone : pairHalves(all, takenBack(all)).lone) {
            if (all[lone].id == entered.id) {
                const auto half = halfOf(entered);
                return refuse({.code = ErrorCode::Conflict,
                               .field = half->field(),
                               .text = half->other(),
                               .allowed = kOtherHalfForm,
                               .subject = half->other()});
            }
        }
    }
    return {};
}

// Of what was touched a mixing or a move may have gone into it, or a discarding was taken back.
Result<void> Entering::checkVessels()
{
    if (m_withdrewVessel) {
        return vesselsAreEmpty(*m_store, m_memory->formulary());
    }
    for (const std::string& id : m_touched) {
        const auto* kept = m_memory->known(id);
        const Fold* fold = kept && !id.empty() ? kept->fold(id) : nullptr;
        if (!fold) {
            continue;
        }
        if (auto fine = standsInVessel(fold->batch(), m_memory->formulary()); !fine) {
            return fine;
        }
    }
    return {};
}

Result<void> Entering::checkCupboard()
{
    const auto then = [&](const std::string& id, chemistry::Instant at) {
        return m_memory->then(id, at);
    };
    auto fine = goTogether(*m_store, m_cupboard, then);
    if (!fine && !m_voided.empty()) {
        return refuse({.code = ErrorCode::CannotVoid,
                       .field = "voids",
                       .text = m_voided,
                       .subject = fine.error().subject});
    }
    return fine;
}

Result<void> Entering::putStates()
{
    // What was taken back in one bottle may end another, or bring it back.
    std::set<std::string> all = m_touched;
    for (const std::string& id : m_touched) {
        const auto* kept = m_memory->known(id);
        if (kept && !id.empty()) {
            const auto& connected = kept->connected->batches;
            all.insert(connected.begin(), connected.end());
        }
    }
    for (const std::string& id : all) {
        const auto* kept = m_memory->known(id);
        if (id.empty() || !kept) {
            continue;
        }
        if (auto fine = putState(id, kept->fold(id)); !fine) {
            return fine;
        }
    }
    return {};
}

// What stands there already is not written again.
Result<void> Entering::putState(const std::string& id, const Fold* fold)
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
