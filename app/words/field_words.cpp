#include "app/words/field_words.h"

#include <QCoreApplication>

#include <iterator>

namespace ullage::app
{

namespace
{

struct FieldName {
    const char* field;
    const char* name;
};

constexpr FieldName kNames[] = {
    {"air_ml", QT_TRANSLATE_NOOP("FieldWords", "Air left")},
    {"amount", QT_TRANSLATE_NOOP("FieldWords", "Amount")},
    {"area_cm2", QT_TRANSLATE_NOOP("FieldWords", "Area")},
    {"assumed_films_per_litre", QT_TRANSLATE_NOOP("FieldWords", "Films per litre, as guessed")},
    {"at", QT_TRANSLATE_NOOP("FieldWords", "When")},
    {"base", QT_TRANSLATE_NOOP("FieldWords", "Leaflet time")},
    {"base temperature", QT_TRANSLATE_NOOP("FieldWords", "Leaflet temperature")},
    {"base time", QT_TRANSLATE_NOOP("FieldWords", "Leaflet time")},
    {"batch", QT_TRANSLATE_NOOP("FieldWords", "Bottle")},
    {"bought", QT_TRANSLATE_NOOP("FieldWords", "Bought")},
    {"bromide_mg_per_film", QT_TRANSLATE_NOOP("FieldWords", "Bromide per film")},
    {"by", QT_TRANSLATE_NOOP("FieldWords", "By")},
    {"cap_cm3_day", QT_TRANSLATE_NOOP("FieldWords", "Leak of the cap")},
    {"capacity_films_per_litre", QT_TRANSLATE_NOOP("FieldWords", "Capacity")},
    {"capacity_ml", QT_TRANSLATE_NOOP("FieldWords", "Holds")},
    {"cas", QT_TRANSLATE_NOOP("FieldWords", "CAS number")},
    {"chemicals", QT_TRANSLATE_NOOP("FieldWords", "Chemicals")},
    {"code", QT_TRANSLATE_NOOP("FieldWords", "Code")},
    {"container", QT_TRANSLATE_NOOP("FieldWords", "Can")},
    {"cost", QT_TRANSLATE_NOOP("FieldWords", "Price")},
    {"currency", QT_TRANSLATE_NOOP("FieldWords", "Currency")},
    {"density", QT_TRANSLATE_NOOP("FieldWords", "Density")},
    {"developer", QT_TRANSLATE_NOOP("FieldWords", "Developer")},
    {"dilution", QT_TRANSLATE_NOOP("FieldWords", "Dilution")},
    {"document", QT_TRANSLATE_NOOP("FieldWords", "Document")},
    {"ei", QT_TRANSLATE_NOOP("FieldWords", "Exposure index")},
    {"factor", QT_TRANSLATE_NOOP("FieldWords", "Factor")},
    {"film", QT_TRANSLATE_NOOP("FieldWords", "Film")},
    {"films", QT_TRANSLATE_NOOP("FieldWords", "Films")},
    {"films.count", QT_TRANSLATE_NOOP("FieldWords", "Number of films")},
    {"films.format", QT_TRANSLATE_NOOP("FieldWords", "Film format")},
    {"films_before", QT_TRANSLATE_NOOP("FieldWords", "Films done before")},
    {"fix_min_s", QT_TRANSLATE_NOOP("FieldWords", "Shortest fixing time")},
    {"fixer_kind", QT_TRANSLATE_NOOP("FieldWords", "Kind of fixer")},
    {"for", QT_TRANSLATE_NOOP("FieldWords", "For")},
    {"form", QT_TRANSLATE_NOOP("FieldWords", "Comes as")},
    {"format", QT_TRANSLATE_NOOP("FieldWords", "Film format")},
    {"fresh_clearing_s", QT_TRANSLATE_NOOP("FieldWords", "Clearing time when fresh")},
    {"from", QT_TRANSLATE_NOOP("FieldWords", "Taken from")},
    {"grams", QT_TRANSLATE_NOOP("FieldWords", "Grams")},
    {"hazards", QT_TRANSLATE_NOOP("FieldWords", "Hazard statements")},
    {"history", QT_TRANSLATE_NOOP("FieldWords", "History")},
    {"holds", QT_TRANSLATE_NOOP("FieldWords", "What it is for")},
    {"hours", QT_TRANSLATE_NOOP("FieldWords", "Hours open")},
    {"how", QT_TRANSLATE_NOOP("FieldWords", "How it was discarded")},
    {"id", QT_TRANSLATE_NOOP("FieldWords", "Id")},
    {"item", QT_TRANSLATE_NOOP("FieldWords", "Thing in the cupboard")},
    {"keeping", QT_TRANSLATE_NOOP("FieldWords", "Keeping")},
    {"keeping.full_days", QT_TRANSLATE_NOOP("FieldWords", "Keeps, full bottle")},
    {"keeping.half_days", QT_TRANSLATE_NOOP("FieldWords", "Keeps, half full")},
    {"keeping.tray_hours", QT_TRANSLATE_NOOP("FieldWords", "Keeps, open tray")},
    {"kind", QT_TRANSLATE_NOOP("FieldWords", "Kind of entry")},
    {"lost_ml", QT_TRANSLATE_NOOP("FieldWords", "Volume lost")},
    {"lot", QT_TRANSLATE_NOOP("FieldWords", "Lot")},
    {"makes_ml", QT_TRANSLATE_NOOP("FieldWords", "Makes")},
    {"mark", QT_TRANSLATE_NOOP("FieldWords", "Mark")},
    {"material", QT_TRANSLATE_NOOP("FieldWords", "Material")},
    {"method", QT_TRANSLATE_NOOP("FieldWords", "By what")},
    {"mixed_on", QT_TRANSLATE_NOOP("FieldWords", "Mixed on")},
    {"name", QT_TRANSLATE_NOOP("FieldWords", "Name")},
    {"note", QT_TRANSLATE_NOOP("FieldWords", "Note")},
    {"notes", QT_TRANSLATE_NOOP("FieldWords", "Notes")},
    {"of", QT_TRANSLATE_NOOP("FieldWords", "What it stands for")},
    {"one_shot", QT_TRANSLATE_NOOP("FieldWords", "One-shot")},
    {"one_shot_ml_per_film", QT_TRANSLATE_NOOP("FieldWords", "For each film, used once")},
    {"opened_days", QT_TRANSLATE_NOOP("FieldWords", "Keeps once opened")},
    {"oxygen_factor", QT_TRANSLATE_NOOP("FieldWords", "Oxygen it dissolves")},
    {"packet", QT_TRANSLATE_NOOP("FieldWords", "Packet")},
    {"passed", QT_TRANSLATE_NOOP("FieldWords", "Passed")},
    {"permeability", QT_TRANSLATE_NOOP("FieldWords", "Permeability of the wall")},
    {"place", QT_TRANSLATE_NOOP("FieldWords", "Place")},
    {"q10", QT_TRANSLATE_NOOP("FieldWords", "Q10")},
    {"replaces", QT_TRANSLATE_NOOP("FieldWords", "In place of")},
    {"replenish_ml_per_film", QT_TRANSLATE_NOOP("FieldWords", "Top-up per film")},
    {"replenisher", QT_TRANSLATE_NOOP("FieldWords", "Replenisher")},
    {"role", QT_TRANSLATE_NOOP("FieldWords", "What it does")},
    {"rule", QT_TRANSLATE_NOOP("FieldWords", "How often")},
    {"run", QT_TRANSLATE_NOOP("FieldWords", "Run")},
    {"second", QT_TRANSLATE_NOOP("FieldWords", "Second fixing bath")},
    {"seconds", QT_TRANSLATE_NOOP("FieldWords", "Clearing time")},
    {"silver_g_per_film", QT_TRANSLATE_NOOP("FieldWords", "Silver per film")},
    {"silver_g_per_litre", QT_TRANSLATE_NOOP("FieldWords", "Silver measured")},
    {"silver_limit_g_per_litre", QT_TRANSLATE_NOOP("FieldWords", "Silver limit")},
    {"solution", QT_TRANSLATE_NOOP("FieldWords", "Solution")},
    {"source", QT_TRANSLATE_NOOP("FieldWords", "Where it is from")},
    {"sources", QT_TRANSLATE_NOOP("FieldWords", "Where the figures are from")},
    {"squeezed", QT_TRANSLATE_NOOP("FieldWords", "Air is always squeezed out")},
    {"steps", QT_TRANSLATE_NOOP("FieldWords", "Steps of the run")},
    {"steps.planned_s", QT_TRANSLATE_NOOP("FieldWords", "Planned time")},
    {"steps.real_s", QT_TRANSLATE_NOOP("FieldWords", "Real time")},
    {"steps.step", QT_TRANSLATE_NOOP("FieldWords", "Step")},
    {"tabular_factor", QT_TRANSLATE_NOOP("FieldWords", "Fixing factor for tabular grains")},
    {"takes_back", QT_TRANSLATE_NOOP("FieldWords", "Mark taken back")},
    {"tank", QT_TRANSLATE_NOOP("FieldWords", "Tank")},
    {"tank_ml", QT_TRANSLATE_NOOP("FieldWords", "Volume in the tank")},
    {"temperature", QT_TRANSLATE_NOOP("FieldWords", "Temperature")},
    {"temperature_c", QT_TRANSLATE_NOOP("FieldWords", "Temperature")},
    {"text", QT_TRANSLATE_NOOP("FieldWords", "Note")},
    {"times", QT_TRANSLATE_NOOP("FieldWords", "Times")},
    {"times.seconds", QT_TRANSLATE_NOOP("FieldWords", "Leaflet time")},
    {"times.temperature_c", QT_TRANSLATE_NOOP("FieldWords", "Leaflet temperature")},
    {"to", QT_TRANSLATE_NOOP("FieldWords", "Goes to")},
    {"turnover_limit", QT_TRANSLATE_NOOP("FieldWords", "Replenisher at most")},
    {"type", QT_TRANSLATE_NOOP("FieldWords", "Type of line")},
    {"unit", QT_TRANSLATE_NOOP("FieldWords", "Counted in")},
    {"use_by", QT_TRANSLATE_NOOP("FieldWords", "Use by")},
    {"used_ml", QT_TRANSLATE_NOOP("FieldWords", "Volume used")},
    {"vessel", QT_TRANSLATE_NOOP("FieldWords", "Bottle")},
    {"voids", QT_TRANSLATE_NOOP("FieldWords", "Entry")},
    {"volume_ml", QT_TRANSLATE_NOOP("FieldWords", "Volume")},
    {"wall_mm", QT_TRANSLATE_NOOP("FieldWords", "Wall")},
    {"wear", QT_TRANSLATE_NOOP("FieldWords", "Wear")},
    {"wear.percent", QT_TRANSLATE_NOOP("FieldWords", "Percent per film")},
    {"wear.rule", QT_TRANSLATE_NOOP("FieldWords", "Time for each film")},
    {"wear.steps", QT_TRANSLATE_NOOP("FieldWords", "Steps")},
    {"wear.steps.factor", QT_TRANSLATE_NOOP("FieldWords", "Factor of a step")},
    {"wear.steps.from_films_per_litre", QT_TRANSLATE_NOOP("FieldWords", "Start of a step")},
    {"what", QT_TRANSLATE_NOOP("FieldWords", "What was looked at")},
    {"why", QT_TRANSLATE_NOOP("FieldWords", "Why")},
    {"withdrawn", QT_TRANSLATE_NOOP("FieldWords", "Withdrawn")},
};

} // namespace

QString fieldName(const std::string& field)
{
    for (const FieldName& known : kNames) {
        if (field == known.field) {
            return QCoreApplication::translate("FieldWords", known.name);
        }
    }
    return QString::fromStdString(field);
}

} // namespace ullage::app
