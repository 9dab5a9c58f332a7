#include "core/store/event_columns.h"

#include "core/ledger/line_description.h"

namespace ullage::store
{

using namespace ledger;

namespace
{

// Columns by the field that fills them. Where two fields share a column no line has both.
struct TextColumn {
    std::string_view field;
    std::optional<std::string> EventColumns::*column;
};
constexpr std::array<TextColumn, 9> kTexts{{{"run", &EventColumns::run},
                                            {"voids", &EventColumns::voids},
                                            {"takes_back", &EventColumns::voids},
                                            {"by", &EventColumns::person},
                                            {"film", &EventColumns::film},
                                            {"from", &EventColumns::fromBatch},
                                            {"to", &EventColumns::toBatch},
                                            {"item", &EventColumns::item},
                                            {"container", &EventColumns::container}}};

// Names of things stand in columns, other texts do not.
bool isName(const formulary::FieldDescription& is)
{
    return is.refers != formulary::Refers::Nothing || is.name == "by" || is.name == "run";
}

struct Filling {
    EventColumns& columns;

    void operator()(const formulary::FieldDescription& is, const std::string& text) const
    {
        if (text.empty() || !isName(is)) {
            return;
        }
        for (const TextColumn& one : kTexts) {
            if (one.field == is.name) {
                columns.*one.column = text;
            }
        }
    }
    void operator()(const formulary::FieldDescription& is, chemistry::Millilitres volume) const
    {
        if (is.name == "volume_ml") {
            columns.volume = volume.value();
        }
    }
    void operator()(const formulary::FieldDescription& is,
                    const std::optional<chemistry::Millilitres>& volume) const
    {
        if (volume && (is.name == "volume_ml" || is.name == "used_ml")) {
            columns.volume = volume->value();
        }
    }
    template <class Other>
    void operator()(const formulary::FieldDescription&, const Other&) const
    {
    }
};

} // namespace

EventColumns eventColumns(const Entry& entry)
{
    EventColumns columns;
    const Event* event = entry.event();
    const auto* mark = std::get_if<FilmMark>(&entry.what);
    const bool film = std::holds_alternative<FilmRecord>(entry.what);
    if (!event && !mark && !film && !std::holds_alternative<RunTimes>(entry.what)) {
        return columns;
    }
    eachEntryField(entry, Filling{columns});
    if (mark) {
        columns.kind = std::string(entry.type());
        columns.atMs = mark->at.time_since_epoch().count();
    }
    if (!event) {
        return columns;
    }
    columns.batch = event->batch.empty() ? std::nullopt : std::optional(event->batch);
    columns.kind = std::string(event->kind());
    columns.atMs = event->at.time_since_epoch().count();
    if (const auto* processed = std::get_if<Processed>(&event->what)) {
        columns.films = processed->load.units().value();
    } else if (const auto* asked = std::get_if<TestAsked>(&event->what); asked && asked->asNote) {
        // The columns say what the line says.
        columns.kind = std::string(formulary::Described<Noted>::kind);
        columns.film.reset();
    }
    return columns;
}

} // namespace ullage::store
