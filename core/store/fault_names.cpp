#include "core/store/fault_names.h"

#include "core/store/damage.h"
#include "core/store/each_row.h"
#include "core/store/line_proof.h"
#include "core/store/stored_moment.h"

#include <algorithm>
#include <cmath>

namespace ullage::store
{

namespace
{

// The first row, or nothing where there is none or it cannot be read.
template <class Take>
void firstRow(Result<Rows> rows, Take take)
{
    if (rows && rows->next().value_or(false)) {
        take(std::as_const(*rows));
    }
}

class Names
{
public:
    explicit Names(Connection& connection)
        : m_entry(connection,
                  QStringLiteral(
                      "SELECT e.type, e.kind, e.at_ms, e.batch, CASE WHEN json_valid(e.body) THEN "
                      "json_extract(e.body, '$.name') END FROM entry e WHERE e.seq = ?")),
          m_bottle(connection, QStringLiteral("SELECT name FROM batch WHERE id = ?")),
          m_mixing(connection, LineProof::select("e.batch = ? AND e.kind = 'mixed' "
                                                 "ORDER BY e.seq DESC LIMIT 1")),
          m_proof(connection),
          m_before(connection,
                   QStringLiteral("SELECT at_ms FROM entry WHERE seq < ? AND at_ms IS NOT NULL "
                                  "ORDER BY seq DESC LIMIT 1")),
          m_after(connection,
                  QStringLiteral("SELECT at_ms FROM entry WHERE seq > ? AND at_ms IS NOT NULL "
                                 "ORDER BY seq LIMIT 1"))
    {
    }

    std::optional<EntryName> entry(std::int64_t number)
    {
        std::optional<EntryName> found;
        std::string batch;
        firstRow(m_entry.run(number), [&](const Rows& row) {
            found = EntryName{row.text(0), row.text(1), {}, {}, {}};
            if (!row.isNull(2)) {
                found->at = instantOf(row.number(2));
            }
            batch = row.text(3);
            // Of an event it is what a bottle was called when it was mixed.
            found->name = found->type == "event" ? std::string() : row.text(4);
        });
        if (!batch.empty()) {
            found->bottle = bottle(batch);
        }
        return found;
    }

    // As it was called when it was mixed, if that is as it was entered; else as its row has it.
    std::string bottle(const std::string& batch)
    {
        std::string name;
        firstRow(m_mixing.run(batch), [&](const Rows& row) {
            const auto entry = m_proof.entry(row);
            const ledger::Event* event = entry ? entry->event() : nullptr;
            if (event && std::holds_alternative<ledger::Mixed>(event->what)) {
                name = std::get<ledger::Mixed>(event->what).name;
            }
        });
        if (name.empty()) {
            firstRow(m_bottle.run(batch), [&](const Rows& row) { name = row.text(0); });
        }
        return name.empty() ? batch : name;
    }

    Between around(std::int64_t first, std::int64_t last)
    {
        Between between;
        firstRow(m_before.run(first),
                 [&](const Rows& row) { between.from = instantOf(row.number(0)); });
        firstRow(m_after.run(last),
                 [&](const Rows& row) { between.to = instantOf(row.number(0)); });
        return between;
    }

private:
    Statement m_entry;
    Statement m_bottle;
    Statement m_mixing;
    LineProof m_proof;
    Statement m_before;
    Statement m_after;
};

std::int64_t number(const std::optional<double>& value) { return std::llround(value.value_or(0)); }

} // namespace

FaultNames namesFor(Connection& connection, std::span<const Error> faults)
{
    FaultNames names;
    Names book(connection);
    for (const Error& fault : faults) {
        const bool damaged = fault.code == ErrorCode::NotAsEntered;
        if (fault.entry > 0 && !names.entries.contains(fault.entry)) {
            if (const auto name = book.entry(fault.entry)) {
                names.entries[fault.entry] = *name;
            }
        } else if (damaged && fault.text == damage::kMissing) {
            names.missing[number(fault.low)] = book.around(number(fault.low), number(fault.high));
        } else if (fault.entry == 0 && !fault.subject.empty()) {
            // Of a fold the subject is the batch; of a table or a note there is no such batch.
            const std::string name = book.bottle(fault.subject);
            if (name != fault.subject) {
                names.bottles[fault.subject] = name;
            }
        }
    }
    return names;
}

FaultNames namesIn(const QString& path, std::span<const Error> faults)
{
    const auto names = [](const Error& fault) {
        return fault.entry > 0 || fault.code == ErrorCode::NotAsEntered;
    };
    if (std::none_of(faults.begin(), faults.end(), names)) {
        return {}; // who knows what file that is
    }
    constexpr int kPatience = 1000; // ms
    const auto book = Connection::open(path, FileMode::Read, kPatience);
    return book ? namesFor(**book, faults) : FaultNames{};
}

Between around(Connection& connection, std::int64_t first, std::int64_t last)
{
    return Names(connection).around(first, last);
}

} // namespace ullage::store
