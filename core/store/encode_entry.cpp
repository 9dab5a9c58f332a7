#include "core/store/instant_text.h"
#include "core/store/journal_codec.h"
#include "core/store/line_writer.h"

namespace ullage::store
{

using namespace chemistry;
using namespace ledger;

namespace
{

QByteArray joined(const QByteArrayList& values) { return '[' + values.join(',') + ']'; }

QByteArray wearText(const Wear& wear)
{
    LineWriter line;
    switch (wear.rule) {
    case WearRule::None:
        return line.text("rule", "none").object();
    case WearRule::PerFilm:
        return line.text("rule", "per-film").number("percent", wear.percent).object();
    case WearRule::Compound:
        return line.text("rule", "compound").number("percent", wear.percent).object();
    case WearRule::Steps:
        break;
    }
    QByteArrayList steps;
    for (const WearStep& step : wear.steps) {
        steps += LineWriter()
                     .number("from_films_per_litre", step.from.value())
                     .number("factor", step.factor)
                     .object();
    }
    return line.text("rule", "steps").raw("steps", joined(steps)).object();
}

void write(LineWriter& line, const formulary::Solution& solution)
{
    line.text("name", solution.name)
        .text("role", code(solution.role))
        .quantityIf("capacity_films_per_litre", solution.capacity)
        .raw("wear", wearText(solution.wear));
    const formulary::Keeping& keeping = solution.keeping;
    if (keeping.full || keeping.half || keeping.tray) {
        line.raw("keeping", LineWriter()
                                .quantityIf("full_days", keeping.full)
                                .quantityIf("half_days", keeping.half)
                                .quantityIf("tray_hours", keeping.tray)
                                .object());
    }
    line.number("q10", solution.q10)
        .number("oxygen_factor", solution.oxygenFactor)
        .number("silver_g_per_film", solution.silverPerFilm)
        .number("bromide_mg_per_film", solution.bromidePerFilm)
        .quantityIf("fresh_clearing_s", solution.freshClearing)
        .quantityIf("silver_limit_g_per_litre", solution.silverLimit)
        .numberIf("tabular_factor", solution.tabularFactor)
        .quantityIf("replenish_ml_per_film", solution.replenishPerFilm)
        .textIf("replaces", solution.replaces);
    if (!solution.sources.empty()) {
        LineWriter sources;
        for (const auto& [figure, source] : solution.sources) {
            sources.text(figure, source);
        }
        line.raw("sources", sources.object());
    }
}

void write(LineWriter& line, const formulary::Vessel& vessel)
{
    line.text("name", vessel.name)
        .number("capacity_ml", vessel.capacity.value())
        .text("material", code(vessel.material))
        .truth("squeezed", vessel.squeezed)
        .quantityIf("wall_mm", vessel.wall)
        .numberIf("permeability", vessel.permeability)
        .quantityIf("cap_cm3_day", vessel.capLeak);
}

void write(LineWriter& line, const FilmRecord& film)
{
    line.text("run", film.run)
        .textIf("format", film.format)
        .textIf("name", film.name)
        .numberIf("ei", film.exposureIndex)
        .textIf("notes", film.notes);
}

void write(LineWriter& line, const FilmMark& mark)
{
    line.text("film", mark.film)
        .text("at", instantText(mark.at).toStdString())
        .textIf("mark", mark.fault ? code(*mark.fault) : std::string_view())
        .textIf("takes_back", mark.takesBack)
        .textIf("note", mark.note)
        .textIf("by", mark.by);
}

void write(LineWriter& line, const Packet& packet)
{
    line.text("solution", packet.solution)
        .quantityIf("makes_ml", packet.makes)
        .textIf("lot", packet.lot)
        .textIf("bought", packet.bought)
        .textIf("use_by", packet.useBy)
        .numberIf("cost", packet.cost)
        .textIf("currency", packet.currency);
}

void write(LineWriter& line, const Chemical& chemical)
{
    line.text("name", chemical.name).textIf("cas", chemical.cas).numberIf("grams", chemical.grams);
}

void write(LineWriter& line, const formulary::DevelopmentFigure& figure)
{
    line.text("film", figure.film)
        .text("developer", figure.developer)
        .textIf("dilution", figure.dilution)
        .numberIf("ei", figure.exposureIndex);
    if (!figure.times.empty()) {
        QByteArrayList times;
        for (const TimeAtTemperature& time : figure.times) {
            times += LineWriter()
                         .number("temperature_c", time.temperature.value())
                         .number("seconds", time.time.value())
                         .object();
        }
        line.raw("times", joined(times));
    }
    line.textIf("source", figure.source)
        .textIf("notes", figure.notes)
        .textIf("replaces", figure.replaces)
        .truthIf("withdrawn", figure.withdrawn ? std::optional(true) : std::nullopt);
}

// What a kind of event says besides what all say.
void writeWhat(LineWriter& line, const Mixed& what)
{
    line.text("solution", what.solution)
        .text("vessel", what.vessel)
        .number("volume_ml", what.volume.value())
        .textIf("name", what.name)
        .textIf("packet", what.packet)
        .textIf("history", what.historyUnknown ? "unknown" : "");
}

void writeWhat(LineWriter& line, const Processed& what)
{
    if (!what.load.films.empty()) {
        QByteArrayList films;
        for (const FilmCount& film : what.load.films) {
            films += LineWriter().text("format", film.format).number("count", film.count).object();
        }
        line.raw("films", joined(films));
    }
    line.quantityIf("area_cm2", what.load.area)
        .quantityIf("used_ml", what.used)
        .numberIf("lost_ml",
                  what.lost.value() == 0 ? std::nullopt : std::optional(what.lost.value()))
        .truthIf("one_shot", what.oneShot ? std::optional(true) : std::nullopt)
        .textIf("run", what.run);
}

void writeWhat(LineWriter& line, const ToppedUp& what)
{
    line.number("volume_ml", what.volume.value()).textIf("from", what.from);
}
void writeWhat(LineWriter& line, const Drawn& what)
{
    line.number("volume_ml", what.volume.value()).textIf("why", what.why);
}
void writeWhat(LineWriter& line, const Moved& what) { line.text("vessel", what.vessel); }
void writeWhat(LineWriter&, const Opened&) {}
void writeWhat(LineWriter& line, const StoodOpen& what)
{
    line.number("hours", what.time.value()).number("area_cm2", what.surface.value());
}
void writeWhat(LineWriter& line, const StoredAt& what)
{
    line.number("temperature_c", what.temperature.value());
}
void writeWhat(LineWriter& line, const ClearingTested& what)
{
    line.number("seconds", what.time.value()).number("temperature_c", what.temperature.value());
}
void writeWhat(LineWriter& line, const StripTested& what)
{
    line.numberIf("density", what.density)
        .numberIf("factor", what.factor)
        .truthIf("passed", what.passed);
}
void writeWhat(LineWriter& line, const Looked& what)
{
    line.truthIf("passed", what.passed).textIf("why", what.why);
}
void writeWhat(LineWriter& line, const Contaminated& what) { line.textIf("why", what.why); }
void writeWhat(LineWriter&, const Dissolved&) {}
void writeWhat(LineWriter& line, const Noted& what) { line.text("text", what.text); }
void writeWhat(LineWriter& line, const Discarded& what) { line.textIf("how", what.how); }
void writeWhat(LineWriter& line, const Voided& what)
{
    line.text("voids", what.voids).textIf("why", what.why);
}
void writeWhat(LineWriter& line, const OpenedPacket& what) { line.text("packet", what.packet); }

void write(LineWriter& line, const Event& event)
{
    line.textIf("batch", event.batch)
        .text("kind", event.kind())
        .text("at", instantText(event.at).toStdString());
    std::visit([&line](const auto& what) { writeWhat(line, what); }, event.what);
    line.quantityIf("air_ml", event.airLeft).textIf("by", event.by);
}

} // namespace

QByteArray encode(const Entry& entry)
{
    if (!entry.body.empty()) {
        return QByteArray::fromStdString(entry.body);
    }
    LineWriter line;
    line.text("type", entry.type()).text("id", entry.id());
    std::visit([&line](const auto& what) { write(line, what); }, entry.what);
    return line.object();
}

QByteArray defaultHeader()
{
    return LineWriter()
        .text("type", "book")
        .text("format", "ullage-journal")
        .number("version", kJournalVersion)
        .object();
}

} // namespace ullage::store
