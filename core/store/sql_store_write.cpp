// What SqlStore appends.
#include "core/store/journal_codec.h"
#include "core/store/sql_statements.h"

namespace ullage::store
{

using namespace ledger;

namespace
{

// The columns of an event that queries need; empty where it has no such thing.
struct Columns {
    std::optional<std::string> batch;
    std::optional<std::string> kind;
    std::optional<std::int64_t> atMs;
    std::optional<double> volume;
    std::optional<double> films;
    std::optional<std::string> run;
    std::optional<std::string> voids;
};

std::optional<std::string> unlessEmpty(const std::string& text)
{
    return text.empty() ? std::nullopt : std::optional(text);
}

Columns columnsOf(const Entry& entry)
{
    Columns columns;
    if (const auto* film = std::get_if<FilmRecord>(&entry.what)) {
        columns.run = film->run;
    }
    const Event* event = entry.event();
    if (!event) {
        return columns;
    }
    columns.batch = unlessEmpty(event->batch);
    columns.kind = std::string(event->kind());
    columns.atMs = event->at.time_since_epoch().count();
    if (const auto* mixed = std::get_if<Mixed>(&event->what)) {
        columns.volume = mixed->volume.value();
    } else if (const auto* processed = std::get_if<Processed>(&event->what)) {
        columns.films = processed->load.units().value();
        columns.run = unlessEmpty(processed->run);
        if (processed->used) {
            columns.volume = processed->used->value();
        }
    } else if (const auto* filled = std::get_if<ToppedUp>(&event->what)) {
        columns.volume = filled->volume.value();
    } else if (const auto* drawn = std::get_if<Drawn>(&event->what)) {
        columns.volume = drawn->volume.value();
    } else if (const auto* voided = std::get_if<Voided>(&event->what)) {
        columns.voids = voided->voids;
    }
    return columns;
}

std::int64_t milliseconds(chemistry::Instant at) { return at.time_since_epoch().count(); }

} // namespace

Result<std::int64_t> SqlStore::put(const Action& action)
{
    const std::optional<std::int64_t> of = action.of == 0 ? std::nullopt : std::optional(action.of);
    const auto rows =
        m_statements->putAction.run(static_cast<int>(action.mode), action.what, action.subject, of);
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    return m_statements->putAction.lastId();
}

Result<void> SqlStore::put(const Entry& entry, std::int64_t action)
{
    const Columns columns = columnsOf(entry);
    return m_statements->putEntry
        .run(std::string(entry.type()), entry.id(), action, columns.batch, columns.kind,
             columns.atMs, columns.volume, columns.films, columns.run, columns.voids, encode(entry))
        .map([](const Rows&) {});
}

Result<void> SqlStore::put(const BatchState& state)
{
    const auto ended = state.endedAt ? std::optional(milliseconds(*state.endedAt)) : std::nullopt;
    return m_statements->putBatch
        .run(state.id, state.name, state.solution, milliseconds(state.mixedAt), ended)
        .map([](const Rows&) {});
}

Result<void> SqlStore::dropBatch(const std::string& id)
{
    return m_statements->dropBatch.run(id).map([](const Rows&) {});
}

} // namespace ullage::store
