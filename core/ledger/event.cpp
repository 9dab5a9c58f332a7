#include "core/ledger/event.h"

#include "core/chemistry/films.h"
#include "core/formulary/field_check.h"
#include "core/ledger/line_description.h"

namespace ullage::formulary
{

using namespace ledger;

Result<void> Described<FilmCount>::together(const FilmCount& film)
{
    if (chemistry::filmsInOne(film.format)) {
        return {};
    }
    return refuse({.code = ErrorCode::UnknownKind,
                   .field = "format",
                   .text = film.format,
                   .allowed = "135-36, 135-24, 120, 220, 4x5, 5x7, 8x10, or a sheet with its unit "
                              "such as 9x12cm or 11x14in"});
}

Result<void> Described<Mixed>::together(const Mixed& mixed)
{
    if (!mixed.historyUnknown && (mixed.mixedOn || mixed.assumed)) {
        return refuse({.code = ErrorCode::Conflict,
                       .field = mixed.mixedOn ? "mixed_on" : "assumed_films_per_litre",
                       .allowed = "with \"history\": \"unknown\""});
    }
    if (mixed.historyUnknown && !mixed.from.empty()) {
        return refuse({.code = ErrorCode::Conflict,
                       .field = "history",
                       .text = "unknown",
                       .allowed = "either from or history"});
    }
    return {};
}

Result<void> Described<Processed>::together(const Processed& processed)
{
    const Load& load = processed.load;
    if (load.area && !load.films.empty()) {
        return refuse({.code = ErrorCode::Conflict,
                       .field = "area_cm2",
                       .allowed = "either films or area_cm2"});
    }
    if (!load.area && load.films.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "films"});
    }
    return {};
}

Result<void> Described<ToppedUp>::together(const ToppedUp& filled)
{
    if (!filled.from.empty() && !filled.solution.empty()) {
        return refuse({.code = ErrorCode::Conflict,
                       .field = "solution",
                       .text = filled.solution,
                       .allowed = "either from or solution"});
    }
    return {};
}

} // namespace ullage::formulary

namespace ullage::ledger
{

chemistry::Films Load::units() const
{
    if (area) {
        return chemistry::filmsInArea(*area);
    }
    chemistry::Films sum;
    for (const FilmCount& film : films) {
        sum += chemistry::filmsInOne(film.format).value_or(chemistry::Films(0)) * film.count;
    }
    return sum;
}

std::string_view Event::kind() const { return kKindCodes[what.index()]; }

bool opens(const Happening& what)
{
    return std::visit(
        [](const auto& kind) {
            return formulary::Described<std::remove_cvref_t<decltype(kind)>>::open;
        },
        what);
}

Result<void> checkFields(const Event& event)
{
    Result<void> fine;
    Result<void> built;
    eachEventField(event, [&](const formulary::FieldDescription& is, const auto& member) {
        if (fine) {
            fine = formulary::checkField(is, member, is.presence == formulary::Presence::Required);
        }
        if (built) {
            built = formulary::checkBuilt(is, member);
        }
    });
    if (!fine) {
        return fine;
    }
    const auto* mixed = std::get_if<Mixed>(&event.what);
    if (mixed && mixed->mixedOn && *mixed->mixedOn > event.at) {
        return refuse({.code = ErrorCode::Conflict,
                       .field = "mixed_on",
                       .allowed = "no later than it was found"});
    }
    return std::visit(
        [&](const auto& what) -> Result<void> {
            using Kind = formulary::Described<std::remove_cvref_t<decltype(what)>>;
            if constexpr (requires { Kind::together(what); }) {
                if (auto together = Kind::together(what); !together) {
                    return together;
                }
            }
            if (!Kind::built) {
                return refuse({.code = ErrorCode::NotBuilt,
                               .field = "kind",
                               .text = std::string(Kind::kind)});
            }
            return built;
        },
        event.what);
}

} // namespace ullage::ledger
