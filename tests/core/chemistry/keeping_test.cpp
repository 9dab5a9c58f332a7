#include "core/chemistry/keeping.h"

#include "core/chemistry/oxygen.h"

#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

// What the equations at the head of keeping.h give, worked out apart from this code to ten digits.
// C_sat: 9.092426 mg/L / 31.998 × 0.49.
constexpr MillimolesPerLitre kSaturation{0.13923647606143907};

Enclosure glass(double capacity)
{
    return enclosure(Millilitres(capacity), 0, Millimetres(1), CubicCentimetresPerDay(0.05));
}

Standing closedUp(const Enclosure& bottle, double volume)
{
    Standing state;
    state.air = freshAir(bottle.capacity - Millilitres(volume));
    return state;
}

TEST(Enclosure, flowsAndSurfaceGoByMaterialAndSize)
{
    // 620 cm² and 64 cm² at one litre; PET: 1.8·0.062·0.2095/0.30/22.414 mmol a day.
    const auto pet =
        enclosure(Millilitres(1000), 1.8, Millimetres(0.30), CubicCentimetresPerDay(0.05));
    EXPECT_NEAR(pet.wallFlow, 0.003477023289, 1e-12);
    EXPECT_NEAR(pet.capFlow, 0.002230748639, 1e-12);
    EXPECT_NEAR(pet.surface.value(), 64, 1e-12);
    // Eight times the volume: four times the wall and the surface, the same cap.
    const auto big =
        enclosure(Millilitres(8000), 1.8, Millimetres(0.30), CubicCentimetresPerDay(0.05));
    EXPECT_NEAR(big.wallFlow / pet.wallFlow, 4, 1e-12);
    EXPECT_NEAR(big.surface.value(), 256, 1e-10);
    EXPECT_EQ(big.capFlow, pet.capFlow);
    EXPECT_EQ(glass(1000).wallFlow, 0);
}

TEST(Stand, matchesTheEquationWorkedOutApart)
{
    const auto bottle = glass(1030);
    const Closed closed{bottle, Millilitres(500), kSaturation};
    const auto month = stand(closedUp(bottle, 500), Days(30), closed);
    EXPECT_NEAR(month.taken.total().value(), 8.577298660400226, 1e-9);
    EXPECT_NEAR(month.air.total().value(), 0.26558312102578346, 1e-9);
    const auto hour = stand(closedUp(bottle, 500), Days(0.05), closed);
    EXPECT_NEAR(hour.taken.total().value(), 0.04351935195900492, 1e-11);

    const auto pet =
        enclosure(Millilitres(1030), 1.8, Millimetres(0.30), CubicCentimetresPerDay(0.05));
    const auto inPet = stand(closedUp(pet, 500), Days(30), {pet, Millilitres(500), kSaturation});
    EXPECT_NEAR(inPet.taken.total().value(), 8.69594716571638, 1e-9);
    const auto cold =
        stand(closedUp(pet, 500), Days(30), {pet, Millilitres(500), kSaturation, Celsius(5)});
    EXPECT_NEAR(cold.taken.total().value(), 8.636670598470065, 1e-9);

    const auto hdpe =
        enclosure(Millilitres(1030), 73, Millimetres(0.9), CubicCentimetresPerDay(0.05));
    const auto full = stand(closedUp(hdpe, 1030), Days(30), {hdpe, Millilitres(1030), kSaturation});
    EXPECT_NEAR(full.taken.total().value(), 1.190716841096005, 1e-9);
    const auto cool =
        stand(closedUp(hdpe, 1030), Days(30), {hdpe, Millilitres(1030), kSaturation, Celsius(5)});
    EXPECT_NEAR(cool.taken.total().value(), 0.628148826262589, 1e-9);
    EXPECT_GT(full.taken.wall.value(), 17 * full.taken.cap.value());
    EXPECT_EQ(full.taken.bottleAir.value(), 0);
}

TEST(Stand, underHalfAMillilitreOfAirEverythingGoesStraightIn)
{
    const auto bottle = glass(1000);
    const Closed closed{bottle, Millilitres(999.6), kSaturation};
    const auto state = stand(closedUp(bottle, 999.6), Days(100), closed);
    EXPECT_NEAR(state.taken.total().value(), 0.2230748639 / 0.9996, 1e-9);
    EXPECT_EQ(state.taken.bottleAir.value(), 0);
    EXPECT_EQ(stand(closedUp(bottle, 999.53), Days(1), {bottle, Millilitres(999.53), kSaturation})
                  .taken.bottleAir.value(),
              0);
    // With half a millilitre the air has its own part.
    EXPECT_GT(stand(closedUp(bottle, 999.5), Days(100), {bottle, Millilitres(999.5), kSaturation})
                  .taken.bottleAir.value(),
              0);
}

TEST(Stand, splittingAWaitChangesNothing)
{
    const auto bottle =
        enclosure(Millilitres(1030), 94, Millimetres(1), CubicCentimetresPerDay(0.05));
    const Closed closed{bottle, Millilitres(400), kSaturation, Celsius(26)};
    const auto whole = stand(closedUp(bottle, 400), Days(90), closed);
    const auto split = stand(stand(closedUp(bottle, 400), Days(0.3), closed), Days(89.7), closed);
    EXPECT_NEAR(split.taken.total().value(), whole.taken.total().value(), 1e-9);
    EXPECT_NEAR(split.taken.wall.value(), whole.taken.wall.value(), 1e-9);
    EXPECT_NEAR(split.air.total().value(), whole.air.total().value(), 1e-9);
    EXPECT_NEAR(split.aged.value(), whole.aged.value(), 1e-9);
}

TEST(Stand, oxygenIsNeitherMadeNorLost)
{
    // Glass: what left the air and what the cap let in is in the solution. The cap lets in less the
    // more oxygen the air still has: q_cap·(1 − n/n_full), and ∫n dt is τ times what was taken up.
    const auto bottle = glass(1030);
    const auto before = closedUp(bottle, 500);
    const auto after = stand(before, Days(45), {bottle, Millilitres(500), kSaturation});
    const double solubility = kSaturation.value() / 1000 / kAirOxygen.value;
    const double tau = 530 / (24 * kBottleExchange.value * bottle.surface.value() * solubility);
    const double taken = after.taken.total().value() * 0.5;
    const double came = bottle.capFlow * (45 - tau * taken / before.air.total().value());
    EXPECT_NEAR(taken + after.air.total().value(), before.air.total().value() + came, 1e-10);
}

TEST(Ageing, followsArrhenius)
{
    EXPECT_EQ(ageingFactor(Celsius(20)), 1);
    EXPECT_NEAR(ageingFactor(Celsius(30)), 3.281411273871352, 1e-12);
    EXPECT_NEAR(ageingFactor(Celsius(5)), 0.1433289904099706, 1e-13);
    AirConstants steep;
    steep.ageing = 11'500;
    EXPECT_GT(ageingFactor(Celsius(30), steep), ageingFactor(Celsius(30)));
    const auto bottle = glass(1000);
    const auto warm =
        stand(Standing(), Days(10), {bottle, Millilitres(1000), kSaturation, Celsius(30)});
    EXPECT_NEAR(warm.aged.value(), 32.81411273871352, 1e-11);
    // What is no developer ages a day in a day.
    const auto other =
        stand(Standing(), Days(10), {bottle, Millilitres(1000), kSaturation, Celsius(30), false});
    EXPECT_EQ(other.aged, Days(10));
    EXPECT_EQ(other.taken.total(), warm.taken.total());
}

TEST(OpenVessel, takesUpByItsSurface)
{
    // k·A·C_sat·h/1000 per litre: 7·516·0.13923647606·24/1000 in one litre, twice that in half.
    const auto tray = [](double volume) {
        return openUptake(Hours(24), SquareCentimetres(516), Millilitres(volume), kSaturation, 7)
            .value();
    };
    EXPECT_NEAR(tray(1000), 12.07013163681403, 1e-9);
    EXPECT_NEAR(tray(500), 24.14026327362806, 1e-9);
}

TEST(Calibration, runsTheModelBackwards)
{
    const KeepingTimes times{Days(182.625), Days(60.875)};
    const auto limits = calibrate(times, kSaturation);
    ASSERT_TRUE(limits);
    EXPECT_NEAR(limits->oxygen.value(), 24.26733461818996, 1e-8);
    EXPECT_NEAR(limits->age.value(), 188.8281764558086, 1e-7);

    // By its own limits the reference bottle is spent exactly at the two published times, the half
    // full one opened once more half way.
    const auto bottle = referenceBottle();
    for (const auto& [volume, days] : {std::pair{1000.0, 182.625}, {515.0, 60.875}}) {
        auto state = closedUp(bottle, volume);
        state.taken.pouring = kSaturation;
        const Closed closed{bottle, Millilitres(volume), kSaturation};
        double left = days;
        if (volume < 1000) {
            left = days / 2;
            state = stand(state, Days(left), closed);
            EXPECT_LT(limits->used(state), 0.7);
            state.air = freshAir(bottle.capacity - Millilitres(volume));
        }
        EXPECT_NEAR(limits->used(stand(state, Days(left), closed)), 1, 1e-12);
        EXPECT_NEAR(daysUntilSpent(state, closed, *limits).value(), left, 1e-7);
    }
}

TEST(Calibration, goesByHowOftenTheHalfFullBottleWasOpened)
{
    const KeepingTimes times{Days(182.625), Days(60.875)};
    constexpr double kOxygen[]{12.807678800341618, 24.26733461818996, 33.12704607182204,
                               39.714973071082646};
    constexpr double kAge[]{194.7468655794535, 188.8281764558086, 187.128250016243,
                            186.36594829652708};
    for (int openings = 1; openings <= 4; ++openings) {
        AirConstants constants;
        constants.halfOpenings = openings;
        const auto limits = calibrate(times, kSaturation, constants);
        ASSERT_TRUE(limits) << openings;
        EXPECT_NEAR(limits->oxygen.value(), kOxygen[openings - 1], 1e-8) << openings;
        EXPECT_NEAR(limits->age.value(), kAge[openings - 1], 1e-7) << openings;
    }
}

TEST(Calibration, aTimeInMonthsMayBeHalfAMonthOff)
{
    AirConstants constants;
    constants.fullRounding = 1;
    constants.halfRounding = 0;
    const auto shifted = calibrate({Days(182.625), Days(60.875)}, kSaturation, constants);
    EXPECT_NEAR(shifted->oxygen.value(), 19.85410571196481, 1e-8);
    EXPECT_NEAR(shifted->age.value(), 206.48608787866914, 1e-7);
    // Days that are no whole months were not rounded to them.
    const auto exact = calibrate({Days(180), Days(62)}, kSaturation, constants);
    EXPECT_EQ(exact->oxygen, calibrate({Days(180), Days(62)}, kSaturation)->oxygen);
    // The half month goes by the logarithm: in the middle lies the geometric mean.
    constants.fullRounding = 0.5;
    const auto middle = calibrate({Days(60.875), {}, {}, false}, kSaturation, constants);
    EXPECT_NEAR(middle->age.value(), 30.4375 * std::sqrt(1.5 * 2.5), 1e-9);
}

TEST(Calibration, oneFigureLeavesTheDefaultLimit)
{
    const auto limits = calibrate({Days(182.625), {}}, kSaturation);
    EXPECT_NEAR(limits->oxygen.value(), 24, 1e-12);
    EXPECT_NEAR(limits->age.value(), 188.89964731657253, 1e-7);
}

TEST(Calibration, whatIsNoDeveloperGoesByTheCalendar)
{
    const auto limits = calibrate({Days(60.875), {}, Hours(24), false}, kSaturation);
    ASSERT_TRUE(limits);
    EXPECT_FALSE(limits->airCounts());
    EXPECT_EQ(limits->age, Days(60.875));
    EXPECT_EQ(trayExchange(*limits), kTrayExchange.value);
    const auto bottle = glass(1030);
    Standing state = closedUp(bottle, 100);
    const Closed closed{bottle, Millilitres(100), kSaturation, Celsius(30), false};
    EXPECT_NEAR(daysUntilSpent(state, closed, *limits).value(), 60.875, 1e-9);
    state.taken.openVessel = MillimolesPerLitre(100);
    EXPECT_EQ(limits->used(state), 0);
    // With a half-full time of its own air counts for it too.
    const auto half = calibrate({Days(60.875), Days(30), {}, false}, kSaturation);
    EXPECT_TRUE(half->airCounts());
    EXPECT_EQ(half->oxygen, calibrate({Days(60.875), Days(30)}, kSaturation)->oxygen);
}

TEST(Calibration, aTrayTimeFixesTheExchangeOfAnOpenVessel)
{
    const auto limits = calibrate({Days(182.625), Days(60.875), Hours(24)}, kSaturation);
    ASSERT_TRUE(limits && limits->trayExchange);
    EXPECT_NEAR(*limits->trayExchange, 13.989420439013259, 1e-8);
    // A fresh litre in the tray has taken up its limit after that time.
    const auto taken = openUptake(Hours(24), SquareCentimetres(516.13), Millilitres(1000),
                                  kSaturation, trayExchange(*limits));
    EXPECT_NEAR((taken + kSaturation).value(), limits->oxygen.value(), 1e-10);
    AirConstants slow;
    slow.trayExchange = 3;
    EXPECT_EQ(trayExchange(*limits, slow), *limits->trayExchange);
    EXPECT_EQ(trayExchange(std::nullopt, slow), 3);
    EXPECT_EQ(trayExchange(*calibrate({Days(182.625), Days(60.875)}, kSaturation), slow), 3);
}

TEST(HalfFull, beginsAtTheBottleOfThePublishedTime)
{
    EXPECT_FALSE(belowHalfFull(Millilitres(515), Millilitres(1030)));
    EXPECT_TRUE(belowHalfFull(Millilitres(514), Millilitres(1030)));
    EXPECT_FALSE(belowHalfFull(Millilitres(250), Millilitres(500)));
}

TEST(Wall, letsLessThroughInTheCold)
{
    EXPECT_DOUBLE_EQ(wallFactor(Celsius(25)), 1);
    EXPECT_NEAR(wallFactor(Celsius(20)), 0.806233053428276, 1e-12);
    EXPECT_NEAR(wallFactor(Celsius(5)), 0.4033340837913365, 1e-12);
}

TEST(Calibration, refusesTimesNoLimitsCanGive)
{
    EXPECT_EQ(calibrate({Days(100), Days(100)}, kSaturation).error().field, "keeping.half_days");
    EXPECT_EQ(calibrate({Days(100), Days(120)}, kSaturation).error().code, ErrorCode::Conflict);
    // The cap alone would spend it first: no age is left.
    EXPECT_EQ(calibrate({Days(12'000), {}}, kSaturation).error().field, "keeping.full_days");
    // The half-full bottle would have to be spent by less oxygen than the full one has by then.
    EXPECT_EQ(calibrate({Days(3000), Days(1)}, kSaturation).error().field, "keeping.half_days");
}

TEST(DaysUntilSpent, isNothingOnceSpentAndRespectsTemperature)
{
    const KeepingLimits limits{MillimolesPerLitre(13), Days(200)};
    const auto bottle = glass(1030);
    auto state = closedUp(bottle, 1000);
    const Closed cool{bottle, Millilitres(1000), kSaturation, Celsius(5)};
    const Closed warm{bottle, Millilitres(1000), kSaturation, Celsius(30)};
    EXPECT_LT(daysUntilSpent(state, warm, limits).value(), 200 / 3.28);
    EXPECT_GT(daysUntilSpent(state, cool, limits).value(), 400);
    const double days = daysUntilSpent(state, cool, limits).value();
    EXPECT_NEAR(limits.used(stand(state, Days(days), cool)), 1, 1e-10);
    state.taken.openVessel = MillimolesPerLitre(13);
    EXPECT_EQ(daysUntilSpent(state, cool, limits), Days(0));
}

TEST(KeepingTime, wholeMonthsAreCalendarMonths)
{
    EXPECT_EQ(wholeMonths(Days(182.625)), 6);
    EXPECT_EQ(wholeMonths(Days(30.4375)), 1);
    EXPECT_EQ(wholeMonths(Days(365.25)), 12);
    EXPECT_FALSE(wholeMonths(Days(180)));
    EXPECT_FALSE(wholeMonths(Days(0)));
    EXPECT_FALSE(wholeMonths(Days(15.21875)));
    using namespace std::chrono;
    const Instant start = sys_days(year(2026) / 8 / 31) + hours(10);
    EXPECT_EQ(addKeepingTime(start, Days(182.625)), sys_days(year(2027) / 2 / 28) + hours(10));
    EXPECT_EQ(addKeepingTime(start, Days(180)), start + hours(24 * 180));
}

} // namespace
} // namespace ullage::chemistry
