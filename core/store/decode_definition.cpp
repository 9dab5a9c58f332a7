#include "core/store/decode_parts.h"

#include <algorithm>

namespace ullage::store
{

using namespace chemistry;

namespace
{

constexpr std::array<std::string_view, 4> kRuleCodes{"none", "per-film", "compound", "steps"};

Wear decodeWear(Fields fields)
{
    Wear wear;
    wear.rule = static_cast<WearRule>(fields.choice("rule", kRuleCodes));
    if (wear.rule == WearRule::PerFilm || wear.rule == WearRule::Compound) {
        wear.percent = fields.number("percent");
    }
    if (wear.rule == WearRule::Steps) {
        const QJsonArray steps = fields.list("steps");
        for (const auto& step : steps) {
            Fields one = fields.element("steps", step);
            const FilmsPerLitre from(one.number("from_films_per_litre"));
            wear.steps.push_back({from, one.number("factor")});
        }
        if (steps.isEmpty()) {
            fields.refuseWith({.code = ErrorCode::Missing}, "steps");
        }
        // The rule asks for the highest step reached, in whatever order they are written.
        std::stable_sort(wear.steps.begin(), wear.steps.end(),
                         [](const WearStep& a, const WearStep& b) { return a.from < b.from; });
    }
    return wear;
}

formulary::Keeping decodeKeeping(Fields fields)
{
    formulary::Keeping keeping;
    keeping.full = fields.quantityIf<Days>("full_days");
    keeping.half = fields.quantityIf<Days>("half_days");
    keeping.tray = fields.quantityIf<Hours>("tray_hours");
    return keeping;
}

} // namespace

formulary::Solution decodeSolution(Fields& fields)
{
    formulary::Solution solution;
    solution.id = fields.text("id");
    solution.name = fields.text("name");
    solution.role = static_cast<formulary::Role>(fields.choice("role", formulary::kRoleCodes));
    solution.capacity = fields.quantityIf<FilmsPerLitre>("capacity_films_per_litre");
    if (fields.has("wear")) {
        solution.wear = decodeWear(fields.inner("wear"));
    }
    if (fields.has("keeping")) {
        solution.keeping = decodeKeeping(fields.inner("keeping"));
    }
    solution.q10 = fields.numberIf("q10").value_or(solution.q10);
    solution.oxygenFactor = fields.numberIf("oxygen_factor").value_or(solution.oxygenFactor);
    solution.silverPerFilm = fields.numberIf("silver_g_per_film").value_or(0);
    solution.bromidePerFilm = fields.numberIf("bromide_mg_per_film").value_or(0);
    solution.freshClearing = fields.quantityIf<Seconds>("fresh_clearing_s");
    solution.silverLimit = fields.quantityIf<GramsPerLitre>("silver_limit_g_per_litre");
    solution.tabularFactor = fields.numberIf("tabular_factor");
    solution.replenishPerFilm = fields.quantityIf<Millilitres>("replenish_ml_per_film");
    solution.replaces = fields.textIf("replaces");
    if (fields.has("sources")) {
        fields.texts("sources", solution.sources);
    }
    return solution;
}

formulary::Vessel decodeVessel(Fields& fields)
{
    formulary::Vessel vessel;
    vessel.id = fields.text("id");
    vessel.name = fields.text("name");
    vessel.capacity = Millilitres(fields.number("capacity_ml"));
    vessel.material =
        static_cast<formulary::Material>(fields.choice("material", formulary::kMaterialCodes));
    vessel.squeezed = fields.truthIf("squeezed").value_or(false);
    vessel.wall = fields.quantityIf<Millimetres>("wall_mm");
    vessel.permeability = fields.numberIf("permeability");
    vessel.capLeak = fields.quantityIf<CubicCentimetresPerDay>("cap_cm3_day");
    return vessel;
}

ledger::FilmRecord decodeFilm(Fields& fields)
{
    ledger::FilmRecord film;
    film.id = fields.text("id");
    film.run = fields.text("run");
    film.format = fields.textIf("format");
    film.name = fields.textIf("name");
    film.exposureIndex = fields.numberIf("ei");
    film.notes = fields.textIf("notes");
    return film;
}

ledger::Packet decodePacket(Fields& fields)
{
    ledger::Packet packet;
    packet.id = fields.text("id");
    packet.solution = fields.text("solution");
    packet.makes = fields.quantityIf<Millilitres>("makes_ml");
    packet.lot = fields.textIf("lot");
    packet.bought = fields.dateIf("bought");
    packet.useBy = fields.dateIf("use_by");
    packet.cost = fields.numberIf("cost");
    packet.currency = fields.textIf("currency");
    return packet;
}

ledger::Chemical decodeChemical(Fields& fields)
{
    ledger::Chemical chemical;
    chemical.name = fields.text("name");
    chemical.id = fields.has("id") ? fields.text("id") : chemical.name;
    chemical.cas = fields.textIf("cas");
    chemical.grams = fields.numberIf("grams");
    return chemical;
}

formulary::DevelopmentFigure decodeFigure(Fields& fields)
{
    formulary::DevelopmentFigure figure;
    figure.id = fields.text("id");
    figure.film = fields.text("film");
    figure.developer = fields.text("developer");
    figure.dilution = fields.textIf("dilution");
    figure.exposureIndex = fields.numberIf("ei");
    figure.withdrawn = fields.truthIf("withdrawn").value_or(false);
    if (fields.has("times") || !figure.withdrawn) {
        const QJsonArray times = fields.list("times");
        for (const auto& time : times) {
            Fields one = fields.element("times", time);
            const Celsius temperature(one.number("temperature_c"));
            figure.times.push_back({temperature, Seconds(one.number("seconds"))});
        }
    }
    figure.source = fields.textIf("source");
    figure.notes = fields.textIf("notes");
    figure.replaces = fields.textIf("replaces");
    return figure;
}

ledger::FilmMark decodeMark(Fields& fields)
{
    ledger::FilmMark mark;
    mark.id = fields.text("id");
    mark.film = fields.text("film");
    mark.at = fields.moment("at");
    if (fields.has("mark")) {
        mark.fault = static_cast<ledger::FilmFault>(fields.choice("mark", ledger::kFilmFaultCodes));
    }
    mark.takesBack = fields.textIf("takes_back");
    mark.note = fields.textIf("note");
    mark.by = fields.textIf("by");
    return mark;
}

} // namespace ullage::store
