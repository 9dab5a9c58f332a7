// Published and customary figures of washing, mixing, control strips and replenishment. Constants
// of the keeping model and of fixing are in constants.h, where Constant is explained.
#pragma once

#include "core/chemistry/constants.h"

namespace ullage::chemistry
{

// Washing
// ------------------------------------------------------------------------------------------

inline constexpr std::string_view kArmyWash = "US Army SS0509, lesson 1";
inline constexpr std::string_view kNavyWash = "NAVEDTRA 14209, ch. 10";

inline constexpr Constant kWashRunning{"wash-running",   30,       30, 30, "min",
                                       Grade::Published, kArmyWash};
inline constexpr Constant kWashChanges{"wash-changes",   20,       20, 20, "min",
                                       Grade::Published, kNavyWash};
inline constexpr Constant kWashChangeEvery{"wash-change-every", 3,        3, 3, "min",
                                           Grade::Published,    kNavyWash};
inline constexpr Constant kWashRinse{"wash-rinse", 30, 30, 30, "s", Grade::Published, kArmyWash};
inline constexpr Constant kWashAid{"wash-aid", 2, 2, 2, "min", Grade::Published, kArmyWash};
inline constexpr Constant kWashAfterAid{"wash-after-aid", 5,        5, 5, "min",
                                        Grade::Published, kArmyWash};
inline constexpr Constant kWetting{"wetting", 1, 1, 1, "min", Grade::Published, kArmyWash};
/// Three sources: the largest is used. TM 11-2323, para 33 d, doubles for prints at 50 °F; MD0954,
/// para 3-34, makes it 1.4 from 40 to 69 °F.
inline constexpr Constant kColdWash{
    "cold-wash", 3, 2, 3, "", Grade::Published, "10 to 15 °C against 21 to 24 °C: T.O. 33B-1-1"};
inline constexpr Constant kReticulation{"reticulation", 8, 8, 8, "°C", Grade::Published,
                                        "T.O. 33B-1-1"};
inline constexpr Constant kHypoHalving{"hypo-halving",
                                       1,
                                       1,
                                       1,
                                       "min",
                                       Grade::Published,
                                       "an average negative in running water: NAVEDTRA 14209, "
                                       "ch. 10"};
inline constexpr Constant kThiosulfateLeft{"thiosulfate-left",
                                           0.014,
                                           0.014,
                                           0.014,
                                           "g/m²",
                                           Grade::Published,
                                           "of the ion: ISO 18901, as 36 CFR 1238.14 (c) has it"};

// Mixing
// -------------------------------------------------------------------------------------------

inline constexpr std::string_view kNavyMixing = "NAVEDTRA 14209, ch. 9";

/// Share of the final volume to start with.
inline constexpr Constant kStartShare{"start-share",    0.75,       0.5, 0.75, "",
                                      Grade::Published, kNavyMixing};
inline constexpr Constant kMixingRoom{"mixing-room",
                                      0.05,
                                      0.05,
                                      0.05,
                                      "of the vessel",
                                      Grade::CommonPractice,
                                      "room to stir, no published source"};
inline constexpr Constant kHalfBottle{"half-bottle",
                                      0.5,
                                      0.5,
                                      0.5,
                                      "of the bottle",
                                      Grade::CommonPractice,
                                      "room to shake, no published source"};
/// Of the water that a liquid is diluted with, to pour it into.
inline constexpr Constant kLiquidStart{"liquid-start",
                                       0.9,
                                       0.75,
                                       0.95,
                                       "of the water",
                                       Grade::CommonPractice,
                                       "most of the water, no published source"};
inline constexpr Constant kSulfiteDisplacement{
    "sulfite-displacement",
    0.11,
    0.11,
    0.11,
    "mL/g",
    Grade::Computed,
    "anhydrous sodium sulfite, from densities of its solutions"};
inline constexpr Constant kThiosulfateDisplacement{
    "thiosulfate-displacement",
    0.5,
    0.5,
    0.5,
    "mL/g",
    Grade::Computed,
    "crystalline sodium thiosulfate, from densities of its solutions"};
/// Value: the usual middle for packaged powders.
inline constexpr Constant kDeveloperWater{"developer-water", 40,         32, 52, "°C",
                                          Grade::Published,  kNavyMixing};
/// What packets of developer usually ask for, within the range above.
inline constexpr Constant kPackagedDeveloperWater{
    "packaged-developer-water", 40, 38, 41, "°C", Grade::CommonPractice, "no published source"};
inline constexpr Constant kFixerWater{
    "fixer-water", 27, 20, 27, "°C", Grade::Published, "not much above: NAVEDTRA 14209, ch. 9"};
inline constexpr Constant kOtherWater{"other-water",        20, 18, 24, "°C", Grade::CommonPractice,
                                      "no published source"};
inline constexpr Constant kDissolvingCheck{
    "dissolving-check", 10, 10, 10, "min", Grade::CommonPractice, "no published source"};
inline constexpr Constant kStirredBath{
    "stirred-bath",
    7,
    5,
    12,
    "min for 1 L",
    Grade::Computed,
    "a glass bottle in a stirred water bath; replaced by two thermometer readings"};
inline constexpr Constant kRoomAir{"room-air",
                                   155,
                                   155,
                                   155,
                                   "min for 1 L",
                                   Grade::Computed,
                                   "a glass bottle cooling in room air"};

// Control strips
// -----------------------------------------------------------------------------------

inline constexpr Constant kMovingRange{"moving-range",
                                       1.128,
                                       1.128,
                                       1.128,
                                       "",
                                       Grade::Published,
                                       "d2 for pairs: NIST/SEMATECH e-Handbook 6.3.2.2"};
inline constexpr Constant kSigmas{
    "sigmas", 3, 3, 3, "", Grade::Published, "NIST/SEMATECH e-Handbook 6.3.2.2"};
inline constexpr Constant kRunOnOneSide{"run-on-one-side",
                                        8,
                                        8,
                                        8,
                                        "",
                                        Grade::Published,
                                        "Western Electric rules: NIST/SEMATECH e-Handbook 6.3.2"};
/// d ln(density) / d ln(time). 1 corrects least; films that shoulder off want more.
inline constexpr Constant kStripResponse{
    "strip-response", 1, 0.5, 1, "", Grade::CommonPractice, "assumed, no published source"};
inline constexpr std::string_view kOwnSpread = "common practice, no published source";
/// How far a clearing test strays, as a share of the fresh time.
inline constexpr Constant kOwnClearing{"own-clearing",        0.1,       0.1, 0.1, "",
                                       Grade::CommonPractice, kOwnSpread};
/// How far the factor on the time that a strip asks for strays.
inline constexpr Constant kOwnStrip{"own-strip",           0.05,      0.05, 0.05, "",
                                    Grade::CommonPractice, kOwnSpread};
/// How far the end of a bottle strays, as a share of what spends it.
inline constexpr Constant kOwnTrial{"own-trial",           0.15,      0.15, 0.15, "",
                                    Grade::CommonPractice, kOwnSpread};
/// How often a good bottle is failed, or a spent one passed, by mistake.
inline constexpr Constant kOwnMistake{"own-mistake",         0.02,      0.02, 0.02, "",
                                      Grade::CommonPractice, kOwnSpread};
inline constexpr Constant kStripMost{"strip-most",
                                     1.3,
                                     1.3,
                                     1.3,
                                     "",
                                     Grade::CommonPractice,
                                     "a larger correction asks for a cause, not for time"};

} // namespace ullage::chemistry
