#include "core/chemistry/keeping.h"

#include "core/chemistry/oxygen.h"
#include "tests/core/ledger/ledger_kit.h"

#include <gtest/gtest.h>

namespace ullage
{
namespace
{

using namespace chemistry;
using namespace ledger;

// Calibrated, not checked: the published six months full and two months half full of an MQ-borax
// stock fix the two limits. What is checked is that solving gives the figures first compiled for
// this model.
TEST(Keeping, mqStockCalibration)
{
    const auto limits =
        calibrate({Days(182.625), Days(60.875)}, solutionSaturation(kOxygenFactor.value));
    ASSERT_TRUE(limits);
    EXPECT_NEAR(limits->oxygen.value(), 12.81, 0.005);
    EXPECT_NEAR(limits->age.value(), 194.7, 0.05);
}

// Consistency only, since 7 cm/h was chosen knowing the published 24 h: one litre in an 8×10 in
// tray takes up 12.1 mmol in a day, and the range of the constant allows 11 to 60 hours.
TEST(Keeping, openTrayAgreesWithItsPublishedDay)
{
    const auto saturation = solutionSaturation(kOxygenFactor.value);
    const auto limits = *calibrate({Days(182.625), Days(60.875)}, saturation);
    const auto day = openUptake(Hours(24), SquareCentimetres(516), Millilitres(1000), saturation);
    EXPECT_NEAR(day.value(), 12.1, 0.05);
    EXPECT_NEAR(limits.oxygen.value(), 12.8, 0.05);
    const auto hours = [&](double exchange) {
        AirConstants constants;
        constants.trayExchange = exchange;
        return limits.oxygen / openUptake(Hours(1), SquareCentimetres(516), Millilitres(1000),
                                          saturation, constants);
    };
    EXPECT_NEAR(hours(kTrayExchange.high), 11.9, 0.05);
    EXPECT_NEAR(hours(kTrayExchange.low), 59.4, 0.05);
}

// Sulfite is not the limit: 100 g/L (0.793 mol/L) bind half a mole of oxygen each.
TEST(Keeping, sulfiteOutlastsTheDeveloper)
{
    EXPECT_NEAR(100 / 126.04 / 2 * 1000, 397, 0.5);
    EXPECT_GT(397, kOxygenLimit.high);
}

// Common practice, no source: a packaged litre does 10 to 15 films or six months, whichever first.
TEST(Keeping, packagedLitreEndsByFilmsOrByMonths)
{
    for (const double films : {10.0, 15.0}) {
        History history;
        auto packaged = History::developer();
        packaged.id = "litre";
        packaged.capacity = FilmsPerLitre(films);
        history.formulary.add(packaged);
        history.mix("litre", 1000);
        const auto six = addMonths(history.at(0), 6);
        // The model's month is 30.4375 days, so its date may lie a day beside the calendar's.
        EXPECT_EQ(assess(history.batch(0)).keepsUntil, six);
        EXPECT_NEAR(daysBetween(*assess(history.batch(0)).discardBy, six).value(), 0, 1);
        for (int film = 1; film <= films; ++film) {
            EXPECT_NE(assess(history.batch(film)).verdict, Verdict::Discard) << film;
            history.run(film, 1);
        }
        EXPECT_EQ(assess(history.batch(films)).verdict, Verdict::Discard);

        History rested;
        rested.formulary.add(packaged);
        rested.mix("litre", 1000);
        EXPECT_NE(assess(rested.batch(150)).verdict, Verdict::Discard);
        EXPECT_NE(assess(rested.batchAt(six)).verdict, Verdict::Discard);
        EXPECT_EQ(assess(rested.batchAt(six + std::chrono::milliseconds(1))).verdict,
                  Verdict::Discard);
    }
}

} // namespace
} // namespace ullage
