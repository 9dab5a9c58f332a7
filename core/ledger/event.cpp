#include "core/ledger/event.h"

#include "core/chemistry/films.h"

#include <cmath>
#include <limits>

namespace ullage::ledger
{

namespace
{

constexpr double kMost = 1'000'000; // mL; a figure beyond any darkroom's bottle
template <class... Ts>
struct Overloaded : Ts... {
    using Ts::operator()...;
};
template <class... Ts>
Overloaded(Ts...) -> Overloaded<Ts...>;

Result<void> needs(const std::string& text, const char* field)
{
    return text.empty() ? refuse({.code = ErrorCode::Missing, .field = field}) : Result<void>{};
}

// Volumes that must be there: above 0. The smallest double stands for "more than nothing".
Result<void> positive(const char* field, double value, double high, const char* unit)
{
    return checkRange(field, value, std::numeric_limits<double>::min(), high, unit);
}

Result<void> checkLoad(const Load& load)
{
    if (load.area && !load.films.empty()) {
        return refuse({.code = ErrorCode::Conflict,
                       .field = "area_cm2",
                       .allowed = "either films or area_cm2"});
    }
    if (load.area) {
        return positive("area_cm2", load.area->value(), kMost, "cm²");
    }
    if (load.films.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "films"});
    }
    for (const FilmCount& film : load.films) {
        if (!chemistry::filmsInOne(film.format)) {
            return refuse({.code = ErrorCode::UnknownKind,
                           .field = "films.format",
                           .text = film.format,
                           .allowed = "135-36, 135-24, 120, 220, 4x5, 5x7, 8x10, or a sheet with "
                                      "its unit such as 9x12cm or 11x14in"});
        }
        if (auto fine = positive("films.count", film.count, 10'000, ""); !fine) {
            return fine;
        }
        if (film.count != std::floor(film.count)) {
            return refuse({.code = ErrorCode::OutOfRange,
                           .field = "films.count",
                           .allowed = "whole pieces; a cut film by its area",
                           .number = film.count,
                           .low = 1,
                           .high = 10'000});
        }
    }
    return {};
}

Result<void> checkWhat(const Happening& happening)
{
    using R = Result<void>;
    return std::visit(
        Overloaded{
            [](const Mixed& e) -> R {
                if (auto fine = needs(e.solution, "solution"); !fine) {
                    return fine;
                }
                if (auto fine = needs(e.vessel, "vessel"); !fine) {
                    return fine;
                }
                return positive("volume_ml", e.volume.value(), kMost, "ml");
            },
            [](const Processed& e) -> R {
                if (auto fine = checkLoad(e.load); !fine) {
                    return fine;
                }
                if (e.used) {
                    if (auto fine = positive("used_ml", e.used->value(), kMost, "ml"); !fine) {
                        return fine;
                    }
                }
                return checkRange("lost_ml", e.lost.value(), 0, kMost, "ml");
            },
            [](const ToppedUp& e) -> R {
                return positive("volume_ml", e.volume.value(), kMost, "ml");
            },
            [](const Drawn& e) -> R {
                return positive("volume_ml", e.volume.value(), kMost, "ml");
            },
            [](const Moved& e) -> R { return needs(e.vessel, "vessel"); },
            [](const StoodOpen& e) -> R {
                if (auto fine = positive("hours", e.time.value(), 87'600, "h"); !fine) {
                    return fine;
                }
                return positive("area_cm2", e.surface.value(), kMost, "cm²");
            },
            [](const StoredAt& e) -> R {
                return checkRange("temperature_c", e.temperature.value(), 0, 45, "°C");
            },
            [](const ClearingTested& e) -> R {
                if (auto fine = checkRange("seconds", e.time.value(), 1, 7200, "s"); !fine) {
                    return fine;
                }
                return checkRange("temperature_c", e.temperature.value(), 0, 45, "°C");
            },
            [](const StripTested& e) -> R {
                if (e.density) {
                    if (auto fine = checkRange("density", *e.density, 0, 10, ""); !fine) {
                        return fine;
                    }
                }
                return e.factor ? checkRange("factor", *e.factor, 0.1, 10, "") : R{};
            },
            [](const Noted& e) -> R { return needs(e.text, "text"); },
            [](const Voided& e) -> R { return needs(e.voids, "voids"); },
            [](const OpenedPacket& e) -> R { return needs(e.packet, "packet"); },
            [](const auto&) -> R { return {}; },
        },
        happening);
}

} // namespace

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

bool opens(const Happening& what)
{
    return std::visit(Overloaded{
                          [](const Mixed&) { return true; },
                          [](const Processed&) { return true; },
                          [](const ToppedUp&) { return true; },
                          [](const Drawn&) { return true; },
                          [](const Moved&) { return true; },
                          [](const Opened&) { return true; },
                          [](const StoodOpen&) { return true; },
                          [](const ClearingTested&) { return true; },
                          [](const StripTested&) { return true; },
                          [](const auto&) { return false; },
                      },
                      what);
}

Result<void> checkFields(const Event& event)
{
    if (auto fine = needs(event.id, "id"); !fine) {
        return fine;
    }
    const bool aboutBatch = !std::holds_alternative<OpenedPacket>(event.what) &&
                            !std::holds_alternative<Voided>(event.what);
    if (aboutBatch) {
        if (auto fine = needs(event.batch, "batch"); !fine) {
            return fine;
        }
    }
    if (event.airLeft) {
        if (auto fine = checkRange("air_ml", event.airLeft->value(), 0, kMost, "ml"); !fine) {
            return fine;
        }
    }
    return checkWhat(event.what);
}

} // namespace ullage::ledger
