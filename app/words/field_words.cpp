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
    {"area_cm2", QT_TRANSLATE_NOOP("FieldWords", "Area")},
    {"at", QT_TRANSLATE_NOOP("FieldWords", "When")},
    {"base", QT_TRANSLATE_NOOP("FieldWords", "Leaflet time")},
    {"base temperature", QT_TRANSLATE_NOOP("FieldWords", "Leaflet temperature")},
    {"base time", QT_TRANSLATE_NOOP("FieldWords", "Leaflet time")},
    {"batch", QT_TRANSLATE_NOOP("FieldWords", "Bottle")},
    {"bromide_mg_per_film", QT_TRANSLATE_NOOP("FieldWords", "Bromide per film")},
    {"cap_cm3_day", QT_TRANSLATE_NOOP("FieldWords", "Leak of the cap")},
    {"capacity_films_per_litre", QT_TRANSLATE_NOOP("FieldWords", "Capacity")},
    {"capacity_ml", QT_TRANSLATE_NOOP("FieldWords", "Holds")},
    {"density", QT_TRANSLATE_NOOP("FieldWords", "Density")},
    {"developer", QT_TRANSLATE_NOOP("FieldWords", "Developer")},
    {"ei", QT_TRANSLATE_NOOP("FieldWords", "Exposure index")},
    {"factor", QT_TRANSLATE_NOOP("FieldWords", "Factor")},
    {"film", QT_TRANSLATE_NOOP("FieldWords", "Film")},
    {"films", QT_TRANSLATE_NOOP("FieldWords", "Films")},
    {"films.count", QT_TRANSLATE_NOOP("FieldWords", "Number of films")},
    {"films.format", QT_TRANSLATE_NOOP("FieldWords", "Film format")},
    {"fresh_clearing_s", QT_TRANSLATE_NOOP("FieldWords", "Clearing time when fresh")},
    {"from", QT_TRANSLATE_NOOP("FieldWords", "Taken from")},
    {"hours", QT_TRANSLATE_NOOP("FieldWords", "Hours open")},
    {"how", QT_TRANSLATE_NOOP("FieldWords", "How it was discarded")},
    {"id", QT_TRANSLATE_NOOP("FieldWords", "Id")},
    {"keeping.full_days", QT_TRANSLATE_NOOP("FieldWords", "Keeps, full bottle")},
    {"keeping.half_days", QT_TRANSLATE_NOOP("FieldWords", "Keeps, half full")},
    {"keeping.tray_hours", QT_TRANSLATE_NOOP("FieldWords", "Keeps, open tray")},
    {"lost_ml", QT_TRANSLATE_NOOP("FieldWords", "Volume lost")},
    {"mark", QT_TRANSLATE_NOOP("FieldWords", "Mark")},
    {"material", QT_TRANSLATE_NOOP("FieldWords", "Material")},
    {"name", QT_TRANSLATE_NOOP("FieldWords", "Name")},
    {"note", QT_TRANSLATE_NOOP("FieldWords", "Note")},
    {"oxygen_factor", QT_TRANSLATE_NOOP("FieldWords", "Oxygen it dissolves")},
    {"packet", QT_TRANSLATE_NOOP("FieldWords", "Packet")},
    {"permeability", QT_TRANSLATE_NOOP("FieldWords", "Permeability of the wall")},
    {"q10", QT_TRANSLATE_NOOP("FieldWords", "Q10")},
    {"replenish_ml_per_film", QT_TRANSLATE_NOOP("FieldWords", "Top-up per film")},
    {"replaces", QT_TRANSLATE_NOOP("FieldWords", "In place of")},
    {"seconds", QT_TRANSLATE_NOOP("FieldWords", "Clearing time")},
    {"silver_g_per_film", QT_TRANSLATE_NOOP("FieldWords", "Silver per film")},
    {"silver_limit_g_per_litre", QT_TRANSLATE_NOOP("FieldWords", "Silver limit")},
    {"solution", QT_TRANSLATE_NOOP("FieldWords", "Solution")},
    {"tabular_factor", QT_TRANSLATE_NOOP("FieldWords", "Fixing factor for tabular grains")},
    {"takes_back", QT_TRANSLATE_NOOP("FieldWords", "Mark taken back")},
    {"temperature", QT_TRANSLATE_NOOP("FieldWords", "Temperature")},
    {"temperature_c", QT_TRANSLATE_NOOP("FieldWords", "Temperature")},
    {"text", QT_TRANSLATE_NOOP("FieldWords", "Note")},
    {"times", QT_TRANSLATE_NOOP("FieldWords", "Times")},
    {"times.seconds", QT_TRANSLATE_NOOP("FieldWords", "Leaflet time")},
    {"times.temperature_c", QT_TRANSLATE_NOOP("FieldWords", "Leaflet temperature")},
    {"type", QT_TRANSLATE_NOOP("FieldWords", "Type of line")},
    {"used_ml", QT_TRANSLATE_NOOP("FieldWords", "Volume used")},
    {"vessel", QT_TRANSLATE_NOOP("FieldWords", "Bottle")},
    {"voids", QT_TRANSLATE_NOOP("FieldWords", "Entry")},
    {"volume_ml", QT_TRANSLATE_NOOP("FieldWords", "Volume")},
    {"wall_mm", QT_TRANSLATE_NOOP("FieldWords", "Wall")},
    {"wear.percent", QT_TRANSLATE_NOOP("FieldWords", "Percent per film")},
    {"wear.steps", QT_TRANSLATE_NOOP("FieldWords", "Steps")},
    {"wear.steps.factor", QT_TRANSLATE_NOOP("FieldWords", "Factor of a step")},
    {"wear.steps.from_films_per_litre", QT_TRANSLATE_NOOP("FieldWords", "Start of a step")},
    {"why", QT_TRANSLATE_NOOP("FieldWords", "Why")},
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
