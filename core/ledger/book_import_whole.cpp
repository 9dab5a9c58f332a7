// What no line of an import by itself can show: a film may stand before its run, a mark before its
// film, a top-up before its source, an event before the one that makes it possible.
#include "core/ledger/book_import.h"

#include "core/formulary/trimmed.h"

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

Result<void> Book::Import::judge(const GoOn& goOn)
{
    m_judged = true;
    std::size_t done = 0;
    for (const auto& [id, brought] : m_batches) {
        if (goOn && !goOn(done++, m_batches.size())) {
            return refuse({.code = ErrorCode::Cancelled});
        }
        if (auto fine = judgeBatch(id, brought); !fine) {
            return fine;
        }
    }
    if (auto fine = judgeReferences(); !fine) {
        return fine;
    }
    return findLikelySame();
}

Result<void> Book::Import::judgeBatch(const std::string& id, int brought)
{
    const auto entered = m_book->m_store->eventsOf(id);
    if (!entered) {
        return tl::unexpected(entered.error());
    }
    const std::size_t had = entered->size() - static_cast<std::size_t>(brought);
    const auto judgement = judgeBrought(*entered, had, *m_book->m_formulary);
    for (const Misfit& misfit : judgement.misfits) {
        Contradiction contradiction{.error = misfit.error,
                                    .entry = Entry{(*entered)[misfit.event], {}},
                                    .waiting = misfit.waiting};
        contradiction.error.line = lineOf((*entered)[misfit.event].id);
        if (misfit.against) {
            contradiction.against = Entry{(*entered)[*misfit.against], {}};
            contradiction.againstOurs = *misfit.against < had;
        }
        contradicts(std::move(contradiction));
    }
    if (!judgement.state) {
        if (!judgement.misfits.empty()) {
            m_unjudged.insert(id);
            return {};
        }
        return m_book->m_store->dropBatch(id);
    }
    if (had == 0 && m_bookHadEntries) {
        m_newBatches.insert(id);
    }
    const Batch& batch = *judgement.state;
    return m_book->m_store->put(
        BatchState{id, batch.name, batch.solution->id, batch.mixedAt, batch.endedAt});
}

Result<void> Book::Import::judgeReferences()
{
    const auto unknown = [&](const Entry& entry, int line, std::string_view field,
                             const std::string& id, int others) {
        contradicts({.error = {.code = ErrorCode::UnknownId,
                               .field = std::string(field),
                               .text = id,
                               .line = line,
                               .subject = entry.id()},
                     .entry = entry,
                     .waiting = others});
    };
    for (const Waiting& one : m_waiting) {
        const auto known = m_book->knows(*one.field, one.id, one.entry.type());
        if (!known) {
            return tl::unexpected(known.error());
        }
        if (!*known) {
            unknown(one.entry, one.line, one.field->name, one.id, 0);
        }
    }
    for (const auto& [batch, named] : m_named) {
        const auto known = m_book->m_store->batch(batch);
        if (!known) {
            return tl::unexpected(known.error());
        }
        if (!*known && !m_unjudged.contains(batch)) {
            unknown(named.first, named.line, named.field->name, batch, named.count - 1);
        }
    }
    return {};
}

// Two people enter the bottle they share, each in a book of their own.
Result<void> Book::Import::findLikelySame()
{
    if (!m_bookHadEntries) {
        return {};
    }
    for (const std::string& id : m_newBatches) {
        if (m_likelySame.size() >= kMostKept) {
            break;
        }
        const auto state = m_book->m_store->batch(id);
        if (!state) {
            return tl::unexpected(state.error());
        }
        const auto near = m_book->m_store->mixings((*state)->mixedAt - kSameBottleWithin,
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
                           *m_book->m_formulary)) {
                continue;
            }
            const auto other = m_book->m_store->batch(ours.batch);
            if (!other) {
                return tl::unexpected(other.error());
            }
            const int line = lineOf(theirs->id);
            if (*other && (*other)->mixedAt == ours.at && !m_settled.twoBottles.contains(line)) {
                m_likelySame.push_back({line, *theirs, ours, (*other)->name});
                break;
            }
        }
    }
    return {};
}

} // namespace ullage::ledger
