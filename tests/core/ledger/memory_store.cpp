#include "tests/core/ledger/memory_store.h"

#include "core/formulary/field_check.h"
#include "core/ledger/line_description.h"

#include <algorithm>
#include <sstream>
#include <utility>

namespace ullage::ledger
{

namespace
{

using formulary::FieldDescription;

// Writes fields one after another; an optional that is empty shows as a dash.
struct Printer {
    std::ostringstream& out;

    template <class M>
    void operator()(const FieldDescription& is, const M& member) const
    {
        if constexpr (std::is_same_v<M, std::string> || std::is_same_v<M, std::string_view>) {
            out << '"' << member << "\" ";
        } else if constexpr (std::is_same_v<M, bool>) {
            out << (member ? "yes " : "no ");
        } else if constexpr (formulary::Figurelike<M>) {
            out << formulary::detail::numberOf(member) << ' ';
        } else if constexpr (std::is_enum_v<M>) {
            out << is.codes[static_cast<std::size_t>(member)] << ' ';
        } else if constexpr (std::is_same_v<M, chemistry::Instant>) {
            out << member.time_since_epoch().count() << ' ';
        } else if constexpr (std::is_same_v<M, std::map<std::string, std::string>>) {
            for (const auto& [key, text] : member) {
                out << '"' << key << "\" \"" << text << "\" ";
            }
        } else if constexpr (formulary::detail::Optional<M>::value) {
            member ? (*this)(is, *member) : void(out << "- ");
        } else if constexpr (formulary::Structured<M>) {
            formulary::eachField(member, *this);
        } else {
            for (const auto& one : member) {
                (*this)(is, one);
            }
        }
    }
};

} // namespace

std::string printed(const Entry& entry)
{
    std::ostringstream out;
    out << entry.type() << ' ';
    eachEntryField(entry, Printer{out});
    return out.str();
}

tl::unexpected<Error> MemoryStore::failure(const std::string& text)
{
    return refuse({.code = ErrorCode::StoreFailed, .text = text});
}

Result<void> MemoryStore::call()
{
    if (m_callsLeft == 0) {
        m_callsLeft = m_lasting ? 0 : -1;
        m_failed = true;
        return failure("told to fail");
    }
    if (m_callsLeft > 0) {
        --m_callsLeft;
    }
    return {};
}

Result<void> MemoryStore::writing()
{
    if (!m_before) {
        return failure("not in a transaction");
    }
    return call();
}

std::string MemoryStore::contents() const
{
    std::ostringstream out;
    for (const Row& row : m_now.rows) {
        out << row.action << ' ' << printed(row.entry) << '\n';
    }
    for (const Action& action : m_now.actions) {
        out << action.id << ' ' << static_cast<int>(action.mode) << ' ' << action.what << ' '
            << action.subject << ' ' << action.of << ' ' << action.seat << '\n';
    }
    for (const auto& [id, state] : m_now.batches) {
        out << id << ' ' << state.name << ' ' << state.solution << ' '
            << state.mixedAt.time_since_epoch().count() << ' '
            << (state.endedAt ? state.endedAt->time_since_epoch().count() : 0) << '\n';
    }
    return out.str();
}

void MemoryStore::failFrom(int calls)
{
    failAfter(calls);
    m_lasting = true;
}

void MemoryStore::forgetFailure()
{
    m_failed = m_lasting = false;
    m_callsLeft = -1;
}

Result<void> MemoryStore::begin()
{
    if (auto fine = call(); !fine) {
        return fine;
    }
    if (m_before) {
        return failure("a transaction is open already");
    }
    m_before = m_now;
    return {};
}

Result<void> MemoryStore::commit()
{
    if (auto fine = writing(); !fine) {
        return fine;
    }
    m_before.reset();
    return {};
}

void MemoryStore::rollback()
{
    if (m_before) {
        m_now = std::move(*m_before);
        m_before.reset();
    }
}

Result<std::int64_t> MemoryStore::put(const Action& action)
{
    if (auto fine = writing(); !fine) {
        return tl::unexpected(fine.error());
    }
    m_now.actions.push_back(action);
    return m_now.actions.back().id = ++m_now.actionsEver;
}

Result<void> MemoryStore::put(const Entry& entry, std::int64_t action)
{
    if (auto fine = writing(); !fine) {
        return fine;
    }
    const bool taken = std::any_of(m_now.rows.begin(), m_now.rows.end(), [&](const Row& row) {
        return row.entry.type() == entry.type() && row.entry.id() == entry.id();
    });
    if (taken) {
        return failure("id is there already: " + entry.id());
    }
    m_now.rows.push_back({++m_now.entriesEver, action, entry});
    return {};
}

Result<void> MemoryStore::put(const BatchState& state)
{
    if (auto fine = writing(); !fine) {
        return fine;
    }
    m_now.batches[state.id] = state;
    return {};
}

Result<void> MemoryStore::dropBatch(const std::string& id)
{
    if (auto fine = writing(); !fine) {
        return fine;
    }
    m_now.batches.erase(id);
    return {};
}

} // namespace ullage::ledger
