#include "core/store/field_order.h"

#include <array>
#include <utility>

namespace ullage::store
{

namespace
{

using Name = std::string_view;

constexpr std::array<Name, 3> kBook{"type", "format", "version"};
constexpr std::array<Name, 17> kSolution{"type",
                                         "id",
                                         "name",
                                         "role",
                                         "capacity_films_per_litre",
                                         "wear",
                                         "keeping",
                                         "q10",
                                         "oxygen_factor",
                                         "silver_g_per_film",
                                         "bromide_mg_per_film",
                                         "fresh_clearing_s",
                                         "silver_limit_g_per_litre",
                                         "tabular_factor",
                                         "replenish_ml_per_film",
                                         "replaces",
                                         "sources"};
constexpr std::array<Name, 9> kVessel{"type",        "id",           "name",
                                      "capacity_ml", "material",     "squeezed",
                                      "wall_mm",     "permeability", "cap_cm3_day"};
constexpr std::array<Name, 7> kFilm{"type", "id", "run", "format", "name", "ei", "notes"};
constexpr std::array<Name, 9> kPacket{"type",   "id",     "solution", "makes_ml", "lot",
                                      "bought", "use_by", "cost",     "currency"};
constexpr std::array<Name, 5> kChemical{"type", "id", "name", "cas", "grams"};
constexpr std::array<Name, 11> kFigure{"type",  "id",     "film",  "developer", "dilution", "ei",
                                       "times", "source", "notes", "replaces",  "withdrawn"};
constexpr std::array<Name, 8> kMark{"type", "id", "film", "at", "mark", "takes_back", "note", "by"};
// No two kinds disagree about the order of the fields they share, so one list serves them all.
constexpr std::array<Name, 30> kEvent{
    "type",     "id",     "batch",  "kind",      "at",      "solution",
    "vessel",   "films",  "hours",  "area_cm2",  "seconds", "temperature_c",
    "density",  "factor", "passed", "volume_ml", "used_ml", "lost_ml",
    "one_shot", "run",    "name",   "packet",    "history", "from",
    "text",     "voids",  "why",    "how",       "air_ml",  "by"};

constexpr std::array<std::pair<Name, std::span<const Name>>, 9> kOrders{{
    {"book", kBook},
    {"solution", kSolution},
    {"vessel", kVessel},
    {"film", kFilm},
    {"packet", kPacket},
    {"chemical", kChemical},
    {"event", kEvent},
    {"development-time", kFigure},
    {"film-mark", kMark},
}};

} // namespace

std::span<const std::string_view> fieldOrder(std::string_view type)
{
    for (const auto& [name, order] : kOrders) {
        if (name == type) {
            return order;
        }
    }
    return {};
}

} // namespace ullage::store
