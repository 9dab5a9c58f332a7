#include "core/ledger/import_whole.h"

#include "core/formulary/trimmed.h"
#include "core/ledger/fillings.h"
#include "core/ledger/fold_together.h"
#include "core/ledger/import_judge.h"
#include "core/ledger/vessel_in_use.h"

#include <algorithm>

namespace ullage::ledger
{

namespace
{

// As people write names twice: blanks around them and capitals do not tell two things apart.
bool alike(std::string_view one, std::string_view other)
{
    one = formulary::trimmed(one);
    other = formulary::trimmed(other);
    const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : c; };
    return !one.empty() && std::equal(one.begin(), one.end(), other.begin(), other.end(),
                                      [&](char a, char b) { return lower(a) == lower(b); });
}

bool sameThing(const Mixed& one, const Mixed& other, const formulary::Formulary& formulary)
{
    const auto oneSolution = formulary.solution(one.solution);
    const auto otherSolution = formulary.solution(other.solution);
    if (!oneSolution || !otherSolution ||
        (one.solution != other.solution && !alike(oneSolution->name, otherSolution->name))) {
        return false;
    }
    const auto oneVessel = formulary.vessel(one.vessel);
    const auto otherVessel = formulary.vessel(other.vessel);
    return one.vessel == other.vessel || alike(one.name, other.name) ||
           (oneVessel && otherVessel && alike(oneVessel->name, otherVessel->name));
}

} // namespace

ImportWhole::ImportWhole(StorePort& store, const formulary::Formulary& formulary,
                         const EntryCheck& check, const Brought& brought, ImportFindings& findings)
    : m_store(&store), m_formulary(&formulary), m_check(&check), m_brought(&brought),
      m_findings(&findings)
{
}

Result<void> ImportWhole::judge(const GoOn& goOn)
{
    std::size_t done = 0;
    for (const auto& [id, brought] : m_brought->batches) {
        if (goOn && !goOn(done++, m_brought->batches.size())) {
            return refuse({.code = ErrorCode::Cancelled});
        }
        if (auto fine = judgeBatch(id, brought); !fine) {
            return fine;
        }
    }
    return judgePartners()
        .and_then([&] { return judgeReferences(); })
        .and_then([&] { return judgeVessels(); })
        .and_then([&] { return judgeCupboard(); });
}

Result<void> ImportWhole::judgeBatch(const std::string& id, int events)
{
    const auto entered = m_store->eventsOf(id);
    if (!entered) {
        return tl::unexpected(entered.error());
    }
    const std::size_t had = entered->size() - static_cast<std::size_t>(events);
    const auto all = withPartners(id, *entered);
    if (!all) {
        return tl::unexpected(all.error());
    }
    std::set<std::string> gone;
    if (!all->empty()) {
        for (const std::size_t place : pairHalves(*all, takenBack(*all)).gone) {
            gone.insert((*all)[place].id);
        }
        for (const Misfit& misfit :
             judgeFillings(id, *all, m_brought->had, m_brought->pairs, *m_formulary)) {
            Contradiction contradiction{.error = misfit.error,
                                        .entry = Entry{(*all)[misfit.event], {}}};
            contradiction.error.line = m_findings->lineOf((*all)[misfit.event].id);
            m_findings->add(std::move(contradiction));
        }
    }
    const auto judgement = judgeBrought(*entered, had, *m_formulary, gone);
    for (const Misfit& misfit : judgement.misfits) {
        Contradiction contradiction{.error = misfit.error,
                                    .entry = Entry{(*entered)[misfit.event], {}},
                                    .waiting = misfit.waiting};
        contradiction.error.line = m_findings->lineOf((*entered)[misfit.event].id);
        if (misfit.against) {
            contradiction.against = Entry{(*entered)[*misfit.against], {}};
            contradiction.againstOurs = *misfit.against < had;
        }
        m_findings->add(std::move(contradiction));
    }
    if (!judgement.state) {
        if (!judgement.misfits.empty()) {
            m_unjudged.insert(id);
            return {};
        }
        return keepState(id, nullptr);
    }
    if (had == 0 && m_brought->had > 0) {
        m_newBatches.insert(id);
    }
    return keepState(id, &*judgement.state);
}

Result<void> ImportWhole::keepState(const std::string& id, const Batch* batch)
{
    return batch ? m_store->put(BatchState{id, batch->name, batch->solution->id, batch->mixedAt,
                                           batch->endedAt})
                 : m_store->dropBatch(id);
}

// Nothing for a bottle that has none.
Result<std::vector<Event>> ImportWhole::withPartners(const std::string& id,
                                                     const std::vector<Event>& entered)
{
    auto others = m_store->filledWith(id);
    if (!others) {
        return tl::unexpected(others.error());
    }
    std::set<std::string> partners(others->begin(), others->end());
    bool halves = !partners.empty();
    for (const Event& event : entered) {
        if (const auto half = halfOf(event)) {
            halves = true;
            partners.insert(half->other());
        }
    }
    std::vector<Event> all;
    if (!halves) {
        return all;
    }
    all = entered;
    partners.erase(id);
    for (const std::string& other : partners) {
        const auto theirs = m_store->eventsOf(other);
        if (!theirs) {
            return theirs;
        }
        all.insert(all.end(), theirs->begin(), theirs->end());
        if (!m_brought->batches.contains(other)) {
            m_partners.insert(other);
        }
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Event& a, const Event& b) { return a.entry < b.entry; });
    return all;
}

// Taking back half of a filling may end a bottle of which nothing was brought, or bring it back.
Result<void> ImportWhole::judgePartners()
{
    for (const std::string& id : m_partners) {
        const auto entered = m_store->eventsOf(id);
        if (!entered) {
            return tl::unexpected(entered.error());
        }
        if (entered->empty()) {
            continue; // told where names are looked up
        }
        const auto all = withPartners(id, *entered);
        if (!all) {
            return tl::unexpected(all.error());
        }
        FoldTogether folds(*m_formulary, {}, FoldDepth::Volumes);
        if (auto fine = folds.applyAll(*all); !fine) {
            m_findings->add({.error = fine.error()});
            continue;
        }
        const Fold* fold = folds.of(id);
        if (auto fine = keepState(id, fold ? &fold->batch() : nullptr); !fine) {
            return fine;
        }
    }
    return {};
}

Result<void> ImportWhole::judgeReferences()
{
    const auto unknown = [&](const Entry& entry, int line, std::string_view field,
                             const std::string& id, int others) {
        m_findings->add({.error = {.code = ErrorCode::UnknownId,
                                   .field = std::string(field),
                                   .text = id,
                                   .line = line,
                                   .subject = entry.id()},
                         .entry = entry,
                         .waiting = others});
    };
    for (const Brought::Waiting& one : m_brought->waiting) {
        const auto known = m_check->knows(*one.field, one.id, one.entry.type());
        if (!known) {
            return tl::unexpected(known.error());
        }
        if (!*known) {
            unknown(one.entry, one.line, one.field->name, one.id, 0);
        }
    }
    for (const auto& [batch, named] : m_brought->named) {
        const auto known = m_store->batch(batch);
        if (!known) {
            return tl::unexpected(known.error());
        }
        // One whose mixing was taken back was there; whether it may be named is judged beside it.
        const auto was = m_store->eventsOf(batch);
        if (!was) {
            return tl::unexpected(was.error());
        }
        const bool mixed = std::any_of(was->begin(), was->end(), [](const Event& event) {
            return std::holds_alternative<Mixed>(event.what);
        });
        if (!*known && !mixed && !m_unjudged.contains(batch)) {
            unknown(named.first, named.line, named.field->name, batch, named.count - 1);
        }
    }
    return {};
}

// Whichever of the two was brought: the withdrawal of a vessel, or what stands in it.
Result<void> ImportWhole::judgeVessels()
{
    const auto& vessels = m_formulary->vessels();
    if (std::none_of(vessels.begin(), vessels.end(),
                     [](const auto& vessel) { return vessel->withdrawn; })) {
        return {};
    }
    auto fine = vesselsAreEmpty(*m_store, *m_formulary);
    if (!fine && fine.error().code == ErrorCode::NotSuitable) {
        Error error = fine.error();
        error.line = m_brought->withdrewVessel.value_or(0);
        m_findings->add({.error = std::move(error)});
        return {};
    }
    return fine;
}

// By bottles that go together: what is wrong with one is told of it.
Result<void> ImportWhole::judgeCupboard()
{
    if (m_findings->count() > 0) {
        return {};
    }
    auto fine = goTogether(*m_store, m_brought->cupboard, batchThen(*m_store, *m_formulary));
    if (!fine &&
        (fine.error().code == ErrorCode::NotEnough || fine.error().code == ErrorCode::TooMuch ||
         fine.error().code == ErrorCode::AfterEnd)) {
        Error error = fine.error();
        error.line = m_findings->lineOf(error.text);
        m_findings->add({.error = std::move(error)});
        return {};
    }
    return fine;
}

// Two people enter the bottle they share, each in a book of their own.
Result<std::vector<LikelySame>> ImportWhole::likelySame(const std::set<int>& twoBottles)
{
    std::vector<LikelySame> found;
    for (const std::string& id : m_newBatches) {
        if (found.size() >= ImportFindings::kMostKept) {
            break;
        }
        const auto state = m_store->batch(id);
        if (!state) {
            return tl::unexpected(state.error());
        }
        const auto near = m_store->mixings((*state)->mixedAt - kSameBottleWithin,
                                           (*state)->mixedAt + kSameBottleWithin);
        if (!near) {
            return tl::unexpected(near.error());
        }
        const auto theirs = std::find_if(near->begin(), near->end(), [&](const Event& event) {
            return event.batch == id && event.at == (*state)->mixedAt;
        });
        for (const Event& ours : *near) {
            if (theirs == near->end() || m_newBatches.contains(ours.batch) || ours.batch == id ||
                !sameThing(std::get<Mixed>(theirs->what), std::get<Mixed>(ours.what),
                           *m_formulary)) {
                continue;
            }
            const auto other = m_store->batch(ours.batch);
            if (!other) {
                return tl::unexpected(other.error());
            }
            const int line = m_findings->lineOf(theirs->id);
            if (*other && (*other)->mixedAt == ours.at && !twoBottles.contains(line)) {
                found.push_back({line, *theirs, ours, (*other)->name});
                break;
            }
        }
    }
    return found;
}

} // namespace ullage::ledger
