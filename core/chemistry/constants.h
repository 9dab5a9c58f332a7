// Every figure of the model that comes from outside, with its range, unit, source and grade.
//
// Simplifications: each constant is one number for all temperatures and solutions; the range is the
// spread of what is published, not a standard deviation. Where range and value coincide, the source
// gives no spread.
#pragma once

#include <array>
#include <cmath>
#include <optional>
#include <string_view>

namespace ullage::chemistry
{

/// How far a figure can be believed.
enum class Grade {
    Published,      ///< read in the source named
    Computed,       ///< computed from published figures
    CommonPractice, ///< what people do, no published source
    FromMemory,     ///< recalled from the source named, not read again
};

struct Constant {
    std::string_view name; ///< stable code, also the key of its explanation in the window
    double value = 0;
    double low = 0;
    double high = 0;
    std::string_view unit;
    Grade grade = Grade::Published;
    std::string_view source;
};

/// A place in the range of a constant, in its logarithm: 0 the low end, 1 the high end, without one
/// the value itself.
using Place = std::optional<double>;

/// The constant there. What has no range, or one that begins at nothing, stays at its value.
inline double at(const Constant& constant, Place place)
{
    if (!place || constant.low <= 0 || constant.low == constant.high) {
        return constant.value;
    }
    return constant.low * std::pow(constant.high / constant.low, *place);
}

inline constexpr Constant kFilmArea{
    "film-area",
    516.128,
    516.128,
    516.128,
    "cm²",
    Grade::Published,
    "80 sq in: Anchell, The Darkroom Cookbook, 3rd ed. 2008, p. 108"};
inline constexpr Constant kOxygenFactor{
    "oxygen-factor",
    0.49,
    0.49,
    1.0,
    "",
    Grade::Computed,
    "Schumpe 1993, Chem. Eng. Sci. 48, 153, for 100 g/L sodium sulfite; 1 is fresh water"};
inline constexpr Constant kAirOxygen{"air-oxygen",
                                     8.508e-3,
                                     8.508e-3,
                                     8.508e-3,
                                     "mmol/mL",
                                     Grade::Computed,
                                     "humid air at 20 °C, 101.325 kPa"};
inline constexpr Constant kOxygenInAir{"oxygen-in-air",
                                       0.2095,
                                       0.2095,
                                       0.2095,
                                       "atm",
                                       Grade::Computed,
                                       "volume share of oxygen in dry air"};
inline constexpr Constant kMolarVolume{"molar-volume",
                                       22.414,
                                       22.414,
                                       22.414,
                                       "cm³/mmol",
                                       Grade::Computed,
                                       "ideal gas at 0 °C and 1 atm"};
inline constexpr Constant kOxygenMass{
    "oxygen-mass", 31.998, 31.998, 31.998, "mg/mmol", Grade::Computed, "molar mass of oxygen"};
inline constexpr Constant kCapLeak{"cap-leak",
                                   0.05,
                                   0.01,
                                   0.25,
                                   "cm³/day",
                                   Grade::CommonPractice,
                                   "no source for 0.05; the range is that of screw caps: Systech "
                                   "Illinois figures in gasworld 2003955"};
inline constexpr Constant kBottleExchange{"bottle-exchange",
                                          2,
                                          1,
                                          3,
                                          "cm/h",
                                          Grade::Published,
                                          "Cole 2010, small still lakes 1.5 to 3.1"};
inline constexpr Constant kTrayExchange{
    "tray-exchange",
    7,
    3,
    15,
    "cm/h",
    Grade::Published,
    "median of open water under convective cooling, Tellus B 66, 22827, 2014; used where no tray "
    "time is published"};
inline constexpr Constant kAgeing{"ageing",
                                  10'560,
                                  9'620,
                                  11'500,
                                  "K",
                                  Grade::Computed,
                                  "fitted to the accelerated ageing of a developer at 72 to 92 °C, "
                                  "Chapman 1997, Quality Engineering 10(1), 137; developers only"};
/// What a wall lets through goes by e^(−this/T). Measured on LDPE, assumed for the others.
inline constexpr Constant kWallWarmth{"wall-warmth",
                                      3'765,
                                      3'765,
                                      3'765,
                                      "K",
                                      Grade::Published,
                                      "31.3 kJ/mol for oxygen in LDPE: Polymer International 30, "
                                      "109, 1993"};
inline constexpr Constant kWallTemperature{"wall-temperature",
                                           25,
                                           25,
                                           25,
                                           "°C",
                                           Grade::Published,
                                           "what the permeabilities are for: Biosystems "
                                           "Engineering, Food Package Engineering, Table 11.2"};
inline constexpr Constant kReferenceTemperature{
    "reference-temperature", 20, 20, 20, "°C", Grade::CommonPractice, "the trade's working point"};
inline constexpr Constant kWallArea{"wall-area",
                                    620,
                                    620,
                                    620,
                                    "cm² for 1 L",
                                    Grade::Computed,
                                    "area of a round bottle, grows with volume to the power 2/3"};
inline constexpr Constant kSurface{"surface",
                                   64,
                                   64,
                                   64,
                                   "cm² for 1 L",
                                   Grade::Computed,
                                   "level surface in a round bottle, volume to the power 2/3"};
inline constexpr Constant kOxygenLimit{
    "oxygen-limit",
    24,
    13,
    40,
    "mmol/L",
    Grade::CommonPractice,
    "no source: as an MQ-borax stock, where only the keeping time of a full bottle is known; the "
    "range is that of a half-full bottle never opened again, or three times"};
inline constexpr Constant kHalfOpenings{
    "half-openings",
    2,
    1,
    4,
    "openings",
    Grade::CommonPractice,
    "no source: a bottle is half full because somebody poured from it"};
inline constexpr Constant kTimeRounding{"time-rounding",
                                        0.5,
                                        0.5,
                                        0.5,
                                        "months",
                                        Grade::CommonPractice,
                                        "no source: keeping times given in whole months"};
inline constexpr Constant kCalendarNear{"calendar-near",
                                        2,
                                        2,
                                        2,
                                        "days",
                                        Grade::CommonPractice,
                                        "no source: a date of the model so near to the calendar's "
                                        "is the calendar's"};
inline constexpr Constant kMonth{"month", 30.4375,         30.4375,      30.4375,
                                 "days",  Grade::Computed, "365.25 / 12"};
inline constexpr Constant kQ10{
    "q10",
    1.9,
    1.5,
    3.0,
    "",
    Grade::Published,
    "metol-hydroquinone: 1.86 to 1.96 from Kodak publication F-32, MQ borax stock row; 2.07 Clerc "
    "§ 573; other rows of F-32 from 1.5 to 3.0"};
inline constexpr Constant kQ10Ascorbate{
    "q10-ascorbate",
    2.5,
    2.3,
    3.0,
    "",
    Grade::Published,
    "phenidone-ascorbate: 2.27 and 2.84 from Kodak publication F-32, rotary tube, 68 to 75 °F"};
inline constexpr Constant kFixDoubling{
    "fix-doubling",
    10,
    10,
    10,
    "°C",
    Grade::Published,
    "fixing takes twice as long 10 °C colder: TM 11-2323, para 33"};
inline constexpr Constant kFixFactor{"fix-factor",
                                     2,
                                     2,
                                     2,
                                     "",
                                     Grade::Published,
                                     "fix for twice the clearing time: NAVEDTRA 14209, ch. 10"};
inline constexpr Constant kTabularFixFactor{"tabular-fix-factor",
                                            3,
                                            3,
                                            3,
                                            "",
                                            Grade::CommonPractice,
                                            "three times for tabular grains, no published source"};
inline constexpr Constant kDiscardDoubling{
    "discard-doubling",
    2,
    2,
    2,
    "",
    Grade::Published,
    "discard when the clearing time has doubled: NAVEDTRA 14209, ch. 10"};

inline constexpr Constant kFixerCapacityAcid{
    "fixer-capacity-acid",
    20,
    20,
    20,
    "films/L",
    Grade::Published,
    "if the maker gives none: Anchell, The Darkroom Cookbook, 3rd ed. 2008, p. 108"};
inline constexpr Constant kFixerCapacityAlkaline{
    "fixer-capacity-alkaline",
    25,
    25,
    25,
    "films/L",
    Grade::Published,
    "if the maker gives none: Anchell, The Darkroom Cookbook, 3rd ed. 2008, p. 108"};
inline constexpr Constant kFixerKeeping{
    "fixer-keeping",
    60.875,
    60.875,
    60.875,
    "days",
    Grade::Published,
    "working strength, two months at most: Anchell, The Darkroom Cookbook, 3rd ed. 2008, p. 108"};
inline constexpr Constant kSilverPerFilm{"silver-per-film",
                                         0.15,
                                         0.11,
                                         0.21,
                                         "g",
                                         Grade::Computed,
                                         "silver that fixing takes from film"};
inline constexpr Constant kBromidePerFilm{"bromide-per-film",
                                          50,
                                          40,
                                          60,
                                          "mg as KBr",
                                          Grade::Published,
                                          "what developing frees: Replenishing system, "
                                          "silvergrain.com/labs, 40 to 60 mg for 80 sq in"};
inline constexpr Constant kSilverWaste{"silver-waste",
                                       0.005,
                                       0.005,
                                       0.005,
                                       "g/L",
                                       Grade::Published,
                                       "hazardous at or above: US 40 CFR 261.24, code D011"};

/// A wall material of bottles. Permeability of oxygen in cm³·mm/(m²·day·atm).
struct WallConstant {
    std::string_view material;
    Constant permeability;
    Constant thickness; ///< mm
};

inline constexpr std::string_view kPermeabilitySource =
    "Biosystems Engineering, Food Package Engineering, Table 11.2; laboratory-bottle permeability "
    "chart";
inline constexpr std::string_view kThicknessSource = "common practice, no source";

inline constexpr std::array<WallConstant, 5> kWalls{{
    {"glass",
     {"permeability", 0, 0, 0, "cm³·mm/(m²·day·atm)", Grade::Published, kPermeabilitySource},
     {"wall", 1, 1, 1, "mm", Grade::CommonPractice, kThicknessSource}},
    {"pet",
     {"permeability", 1.8, 1.2, 2.4, "cm³·mm/(m²·day·atm)", Grade::Published, kPermeabilitySource},
     {"wall", 0.30, 0.30, 0.30, "mm", Grade::CommonPractice, kThicknessSource}},
    {"hdpe",
     {"permeability", 73, 39, 98, "cm³·mm/(m²·day·atm)", Grade::Published, kPermeabilitySource},
     {"wall", 0.9, 0.9, 0.9, "mm", Grade::CommonPractice, kThicknessSource}},
    {"ldpe",
     {"permeability", 197, 118, 236, "cm³·mm/(m²·day·atm)", Grade::Published, kPermeabilitySource},
     {"wall", 1.0, 1.0, 1.0, "mm", Grade::CommonPractice, kThicknessSource}},
    {"pp",
     {"permeability", 94, 59, 98, "cm³·mm/(m²·day·atm)", Grade::Published, kPermeabilitySource},
     {"wall", 1.0, 1.0, 1.0, "mm", Grade::CommonPractice, kThicknessSource}},
}};

} // namespace ullage::chemistry
