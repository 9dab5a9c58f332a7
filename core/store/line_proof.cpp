#include "core/store/line_proof.h"

#include "core/store/each_row.h"
#include "core/store/journal_codec.h"

namespace ullage::store
{

LineProof::LineProof(Connection& connection)
    : m_connection(connection), m_one(connection, select("e.seq = ?"))
{
}

QString LineProof::columns()
{
    return QStringLiteral("e.seq, CAST(e.type AS BLOB), CAST(e.id AS BLOB), CAST(e.body AS BLOB), "
                          "e.hash, (SELECT b.hash FROM entry b WHERE b.seq < e.seq "
                          "ORDER BY b.seq DESC LIMIT 1)");
}

QString LineProof::select(const char* which)
{
    return QStringLiteral("SELECT ") + columns() + QStringLiteral(", e.batch FROM entry e WHERE ") +
           QLatin1String(which);
}

Result<std::optional<Error>> LineProof::faultOf(const Rows& row, int first)
{
    const auto hash = digestFromBytes(row.blob(first + 4));
    const auto before = digestFromBytes(row.blob(first + 5));
    const QByteArray type = row.blob(first + 1);
    const QByteArray id = row.blob(first + 2);
    if (hash &&
        m_hasher.next(before.value_or(kNothing), type, id, row.blob(first + kLine)) == *hash) {
        return std::nullopt;
    }
    // Which of the two was changed, the line or a hash, the neighbours tell.
    return stateOf(m_connection, row.number(first)).map([&](LineState state) {
        return state == LineState::Changed || state == LineState::Foreign
                   ? std::optional(notAsEntered(damageOf(state), row.number(first), type, id))
                   : std::nullopt;
    });
}

Result<std::optional<Error>> LineProof::faultOf(std::int64_t entry)
{
    std::optional<Error> fault;
    return eachRow(m_one.run(entry),
                   [&](const Rows& row) -> Result<void> {
                       auto found = faultOf(row);
                       if (!found) {
                           return tl::unexpected(found.error());
                       }
                       fault = std::move(*found);
                       return {};
                   })
        .map([&] { return fault; });
}

Error LineProof::anotherType() { return storeFailure(QStringLiteral("a line of another type")); }

Result<ledger::Entry> LineProof::entry(const Rows& row)
{
    auto fault = faultOf(row);
    if (!fault) {
        return tl::unexpected(fault.error());
    }
    if (*fault) {
        return refuse(std::move(**fault));
    }
    auto entry = decodeStored(row.blob(kLine));
    if (!entry) {
        Error error = entry.error();
        error.entry = row.number(0);
        error.entryType = QString::fromUtf8(row.blob(1)).toStdString();
        error.subject = QString::fromUtf8(row.blob(2)).toStdString();
        return refuse(std::move(error));
    }
    if (auto* event = std::get_if<ledger::Event>(&entry->what)) {
        // A voiding need not name its batch on its line; the book found out which.
        event->batch = row.text(kBatch);
        event->entry = row.number(0);
    }
    return entry;
}

} // namespace ullage::store
