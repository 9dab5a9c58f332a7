#include "core/store/entry_row.h"

#include "core/store/event_columns.h"
#include "core/store/journal_codec.h"

namespace ullage::store
{

using namespace ledger;

namespace
{

std::optional<std::string> textIf(const Rows& row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(row.text(column));
}

std::optional<double> realIf(const Rows& row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(row.real(column));
}

EventColumns storedColumns(const Rows& row)
{
    EventColumns columns;
    columns.batch = textIf(row, 4);
    columns.kind = textIf(row, 5);
    columns.atMs = row.isNull(6) ? std::nullopt : std::optional(row.number(6));
    columns.volume = realIf(row, 7);
    columns.films = realIf(row, 8);
    columns.run = textIf(row, 9);
    columns.voids = textIf(row, 10);
    columns.person = textIf(row, 11);
    columns.film = textIf(row, 12);
    columns.fromBatch = textIf(row, 13);
    columns.toBatch = textIf(row, 14);
    columns.item = textIf(row, 15);
    columns.container = textIf(row, 16);
    return columns;
}

Result<Entry> decoded(const QByteArray& body, bool trusted)
{
    if (trusted) {
        if (auto entry = decodeStored(body)) {
            return entry;
        }
    }
    auto line = decodeLine(body); // which says what is wrong
    if (!line) {
        return tl::unexpected(line.error());
    }
    auto* entry = std::get_if<Entry>(&*line);
    return entry ? Result<Entry>(std::move(*entry))
                 : refuse({.code = ErrorCode::Conflict, .field = "type", .text = "book"});
}

} // namespace

QString EntryRow::select(const char* where)
{
    return QStringLiteral("SELECT seq, CAST(type AS BLOB), CAST(id AS BLOB), CAST(body AS BLOB), "
                          "batch, kind, at_ms, volume_ml, films, run, voids, person, film, "
                          "from_batch, to_batch, item, container FROM entry WHERE ") +
           QLatin1String(where);
}

Error EntryRow::about(Error error) const
{
    error.entry = number;
    error.entryType = QString::fromUtf8(type).toStdString();
    error.subject = QString::fromUtf8(id).toStdString();
    return error;
}

EntryRow EntryRowReader::read(const Rows& row, const std::function<void(Error)>& found) const
{
    EntryRow stored{
        .number = row.number(0), .type = row.blob(1), .id = row.blob(2), .body = row.blob(3)};
    EventColumns columns = storedColumns(row);
    stored.batch = columns.batch.value_or(std::string());
    auto entry = decoded(stored.body, m_trusted);
    if (!entry) {
        found(stored.about(entry.error()));
        return stored;
    }
    if (entry->type() != std::string_view(stored.type) ||
        entry->id() != std::string_view(stored.id)) {
        found(stored.about(
            {.code = ErrorCode::Conflict, .field = "id", .text = stored.id.toStdString()}));
        return stored;
    }
    if (auto* event = std::get_if<Event>(&entry->what)) {
        const bool mayBeSilent = std::holds_alternative<Voided>(event->what);
        if (mayBeSilent && event->batch.empty()) {
            event->batch = stored.batch; // held against what it voids by its reference
        }
    }
    if (eventColumns(*entry) != columns) {
        found(stored.about(
            {.code = ErrorCode::Conflict, .field = "kind", .text = stored.id.toStdString()}));
    }
    stored.entry = std::move(*entry);
    return stored;
}

} // namespace ullage::store
