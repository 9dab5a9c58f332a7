#include "core/formulary/implied.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace ullage::formulary
{
namespace
{

using namespace chemistry;

Solution developer()
{
    Solution solution;
    solution.id = "mq";
    solution.name = "MQ borax developer";
    solution.role = Role::Developer;
    solution.capacity = FilmsPerLitre(10);
    solution.wear = {WearRule::PerFilm, 10, {}};
    solution.keeping = {Days(182.625), Days(60.875), Hours(24)};
    return solution;
}

std::optional<Days> timeAt(const std::vector<KeepingPoint>& curve, Millilitres volume)
{
    const auto found = std::find_if(curve.begin(), curve.end(),
                                    [&](const auto& point) { return point.volume == volume; });
    return found == curve.end() ? std::nullopt : std::optional(found->time);
}

TEST(KeepingCurve, InGlassRunsThroughThePublishedPoints)
{
    const auto curve = keepingCurve(developer(), Material::Glass, 12);
    ASSERT_EQ(curve.size(), 13u);
    EXPECT_NEAR(timeAt(curve, kFullFilling)->value(), 182.625, 1e-6);
    EXPECT_NEAR(timeAt(curve, kHalfFilling)->value(), 60.875, 1e-6);
}

TEST(KeepingCurve, FallsWithTheFillingAndPolyethyleneNeverBeatsGlass)
{
    const auto glass = keepingCurve(developer(), Material::Glass, 20);
    const auto plastic = keepingCurve(developer(), Material::Hdpe, 20);
    ASSERT_EQ(glass.size(), plastic.size());
    for (std::size_t i = 0; i < glass.size(); ++i) {
        EXPECT_EQ(glass[i].volume, plastic[i].volume);
        EXPECT_LT(plastic[i].time, glass[i].time);
        if (i > 0) {
            EXPECT_LT(glass[i].volume, glass[i - 1].volume);
            EXPECT_LE(glass[i].time, glass[i - 1].time);
            EXPECT_LE(plastic[i].time, plastic[i - 1].time);
        }
    }
}

TEST(KeepingCurve, IsEmptyWithoutAKeepingTime)
{
    Solution solution = developer();
    solution.keeping = {};
    EXPECT_TRUE(keepingCurve(solution, Material::Glass, 12).empty());
    EXPECT_FALSE(trayTime(solution));
    EXPECT_FALSE(limitsRange(solution));
}

TEST(KeepsFor, NeverPassesThePublishedTime)
{
    Vessel bottle;
    bottle.capacity = kReferenceCapacity;
    const auto brimful = keepsFor(developer(), bottle, Millilitres(1030));
    ASSERT_TRUE(brimful);
    EXPECT_EQ(brimful->value(), 182.625);
}

// The half-full bottle of the published time was opened once more; left alone it keeps longer.
TEST(KeepsFor, ShorterTheOftenerItIsOpened)
{
    Vessel bottle;
    bottle.capacity = kReferenceCapacity;
    const auto half = [&](std::optional<int> openings) {
        return keepsFor(developer(), bottle, kHalfFilling, openings)->value();
    };
    EXPECT_NEAR(half(2), 60.875, 1e-6);
    EXPECT_EQ(half({}), half(2));
    EXPECT_GT(half(1), 1.5 * half(2));
    EXPECT_LT(half(4), half(2));
    EXPECT_NEAR(keepsFor(developer(), bottle, kFullFilling)->value(), 182.625, 1e-6);
    // What is no developer keeps by the calendar.
    Solution stop = developer();
    stop.role = Role::Stop;
    stop.keeping.half.reset();
    EXPECT_NEAR(keepsFor(stop, bottle, Millilitres(60), 9)->value(), 182.625, 1e-9);
}

TEST(KeepsFor, LongerWhereTheAirIsSqueezedOut)
{
    Vessel bottle;
    bottle.capacity = kReferenceCapacity;
    Vessel squeezed = bottle;
    squeezed.squeezed = true;
    EXPECT_GT(keepsFor(developer(), squeezed, Millilitres(300)),
              keepsFor(developer(), bottle, Millilitres(300)));
}

// The entered 24 h are not asked, so that the two can be compared: within a factor of two.
TEST(HalfTimeFor, IsTheTimeThatCalibrationFindsTheLimitFrom)
{
    for (const double days : {45.0, 60.875, 90.0}) {
        Solution solution = developer();
        solution.keeping.half = Days(days);
        const auto limit = keepingLimits(solution)->oxygen;
        EXPECT_NEAR(halfTimeFor(developer(), limit)->value(), days, 1e-6);
    }
    EXPECT_LT(halfTimeFor(developer(), MillimolesPerLitre(15)),
              halfTimeFor(developer(), MillimolesPerLitre(30)));
}

TEST(HalfTimeFor, GoesByAirAloneWhereTheFullBottleWouldNotKeep)
{
    // A full bottle takes up about one and a half in its time: no age can be solved from less.
    const auto one = halfTimeFor(developer(), MillimolesPerLitre(1));
    const auto two = halfTimeFor(developer(), MillimolesPerLitre(2));
    ASSERT_TRUE(one);
    ASSERT_TRUE(two);
    EXPECT_GT(one->value(), 0);
    EXPECT_LT(*one, *two);
    Solution fixer = developer();
    fixer.role = Role::Fixer;
    fixer.keeping.half.reset();
    EXPECT_FALSE(halfTimeFor(fixer, MillimolesPerLitre(10))) << "air does not count";
}

TEST(TrayTime, OfAPublishedDayIsADayWithinAFactorOfTwo)
{
    const auto time = trayTime(developer());
    ASSERT_TRUE(time);
    // 24.267 − 0.139 mmol at 7 cm/h: the model page's 48 hours.
    EXPECT_NEAR(time->value(), 47.96372721947403, 1e-6);
    // A tray for a print of 8 × 10 in, the inch being 2.54 cm.
    EXPECT_NEAR(kTraySurface.value(), 8 * 10 * 2.54 * 2.54, 0.5);
    EXPECT_EQ(kTrayVolume.value(), 1000) << "with a litre in it";
    Solution other = developer();
    other.keeping.tray = Hours(1);
    EXPECT_EQ(*trayTime(other), *time);
    other.keeping.half.reset();
    other.role = Role::Fixer;
    EXPECT_FALSE(trayTime(other)) << "air does not count";
    AirConstants slow;
    slow.trayExchange = kTrayExchange.low;
    AirConstants fast;
    fast.trayExchange = kTrayExchange.high;
    EXPECT_GT(*trayTime(developer(), slow), *time);
    EXPECT_LT(*trayTime(developer(), fast), *time);
}

TEST(LimitsRange, HoldsTheLimitsAndWhatTheTwoBottlesTakeUp)
{
    const auto range = limitsRange(developer());
    ASSERT_TRUE(range);
    EXPECT_LT(range->oxygenLow, range->limits.oxygen);
    EXPECT_GT(range->oxygenHigh, range->limits.oxygen);
    // Never reopened, and reopened three times: 12.8 and 39.7 by the usual constants.
    EXPECT_LT(range->oxygenLow.value(), 12.9);
    EXPECT_GT(range->oxygenHigh.value(), 39.7);
    EXPECT_LE(range->ageLow, range->limits.age);
    EXPECT_GE(range->ageHigh, range->limits.age);
    // Both bottles are spent at their published time: N/N_c + t/L0 = 1.
    ASSERT_TRUE(range->halfTakesUp);
    EXPECT_NEAR(range->fullTakesUp / range->limits.oxygen + Days(182.625) / range->limits.age, 1,
                1e-9);
    EXPECT_NEAR(*range->halfTakesUp / range->limits.oxygen + Days(60.875) / range->limits.age, 1,
                1e-9);
}

TEST(LimitsRange, WithoutAHalfFullTimeTheOxygenLimitIsTheModelsOwn)
{
    Solution solution = developer();
    solution.keeping.half.reset();
    const auto range = limitsRange(solution);
    ASSERT_TRUE(range);
    EXPECT_NEAR(range->limits.oxygen.value(), kOxygenLimit.value, 1e-9);
    EXPECT_EQ(range->oxygenLow.value(), kOxygenLimit.low);
    EXPECT_EQ(range->oxygenHigh.value(), kOxygenLimit.high);
    EXPECT_FALSE(range->halfTakesUp);
    // A stop bath is not spent by air, whatever the constants.
    solution.role = Role::Stop;
    const auto still = limitsRange(solution);
    ASSERT_TRUE(still);
    EXPECT_FALSE(std::isfinite(still->limits.oxygen.value()));
    EXPECT_FALSE(std::isfinite(still->oxygenLow.value()));
    EXPECT_EQ(still->limits.age, Days(182.625));
    EXPECT_NEAR(still->ageLow.value(), 182.625 - 15.21875, 1e-9);
    EXPECT_NEAR(still->ageHigh.value(), 182.625 + 15.21875, 1e-9);
}

TEST(WearCurve, GivesOneFactorAFilm)
{
    const auto curve = wearCurve(developer());
    ASSERT_EQ(curve.size(), 10u);
    EXPECT_EQ(curve.front().factor, 1);
    EXPECT_NEAR(curve.back().factor, 1.9, 1e-12);
    Solution once = developer();
    once.capacity = FilmsPerLitre(0.5);
    EXPECT_EQ(wearCurve(once).size(), 1u);
    once.capacity.reset();
    EXPECT_EQ(wearCurve(once).size(), 10u);
    once.capacity = FilmsPerLitre(1000);
    EXPECT_LE(wearCurve(once).size(), 60u);
}

TEST(Flows, ThroughGlassThereIsOnlyTheCap)
{
    Vessel bottle;
    bottle.capacity = Millilitres(1000);
    bottle.material = Material::Glass;
    EXPECT_EQ(flows(bottle).wall, 0);
    EXPECT_NEAR(flows(bottle).cap, 0.05 / 22.414, 1e-12);
    bottle.material = Material::Hdpe;
    // 73 cm³·mm/(m²·day·atm) · 0.062 m² · 0.2095 atm / 0.9 mm / 22.414 cm³/mmol
    // at 25 °C; at 20 °C 0.806 of it.
    EXPECT_NEAR(flows(bottle).wall,
                73 * 0.062 * 0.2095 / 0.9 / 22.414 * std::exp(-3765 * (1 / 293.15 - 1 / 298.15)),
                1e-9);
}

} // namespace
} // namespace ullage::formulary
