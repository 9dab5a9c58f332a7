#include "core/store/event_columns.h"

namespace ullage::store
{

using namespace ledger;

namespace
{

std::optional<std::string> unlessEmpty(const std::string& text)
{
    return text.empty() ? std::nullopt : std::optional(text);
}

} // namespace

EventColumns eventColumns(const Entry& entry)
{
    EventColumns columns;
    if (const auto* film = std::get_if<FilmRecord>(&entry.what)) {
        columns.run = film->run;
    }
    if (const auto* mark = std::get_if<FilmMark>(&entry.what)) {
        columns.kind = std::string(entry.type());
        columns.atMs = mark->at.time_since_epoch().count();
        columns.voids = unlessEmpty(mark->takesBack);
        columns.person = unlessEmpty(mark->by);
        columns.film = mark->film;
    }
    const Event* event = entry.event();
    if (!event) {
        return columns;
    }
    columns.batch = unlessEmpty(event->batch);
    columns.kind = std::string(event->kind());
    columns.person = unlessEmpty(event->by);
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
        columns.fromBatch = unlessEmpty(filled->from);
    } else if (const auto* drawn = std::get_if<Drawn>(&event->what)) {
        columns.volume = drawn->volume.value();
    } else if (const auto* voided = std::get_if<Voided>(&event->what)) {
        columns.voids = voided->voids;
    } else if (const auto* opened = std::get_if<OpenedPacket>(&event->what)) {
        columns.item = unlessEmpty(opened->packet);
    }
    return columns;
}

} // namespace ullage::store
