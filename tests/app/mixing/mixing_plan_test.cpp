#include "app/mixing/mixing_plan.h"

#include "app/mixing/mixing_figures.h"
#include "app/mixing/water_step.h"
#include "core/chemistry/process_constants.h"
#include "tests/app/formulary/starter.h"
#include "tests/app/words/sample_batches.h"

namespace ullage::app
{

using sample::english;

TEST(MixingPlan, aLitrePacketInALitreBottleStartsHalfFull)
{
    const auto formulary = sample::starterFormulary();
    MixingPlan plan;
    plan.solution = formulary.solution("starter-mq-borax");
    plan.vessel = formulary.vessel("starter-glass-1000");
    plan.makes = chemistry::Millilitres(1000);
    plan.powderGrams = 111;
    const auto start = plan.start();
    ASSERT_TRUE(start);
    EXPECT_NEAR(start->advised.value(), 515, 16);
    EXPECT_TRUE(startNote(plan, *start, english()).startsWith("half a bottle"));
    EXPECT_NEAR(plan.displaced().value(), 12.2, 0.1);
    EXPECT_EQ(planProblem(plan, english()), QString());
    plan.makes = chemistry::Millilitres(2000);
    EXPECT_TRUE(planProblem(plan, english()).contains("to the brim"));
    plan.vessel.reset();
    EXPECT_FALSE(planProblem(plan, english()).isEmpty());
}

TEST(MixingPlan, theBathClockIsTheCoolingLaw)
{
    const BathClock clock{chemistry::Celsius(19), chemistry::Celsius(42), chemistry::Celsius(40),
                          chemistry::Seconds(420)};
    // 7 min · ln(23/2) = 17.1 min
    EXPECT_NEAR(clock.ready()->value() / 60, 17.1, 0.1);
    EXPECT_EQ(bathText(clock, english()), "ready in about 18 min");
    const auto chart = bathChart(clock, english());
    EXPECT_NEAR(*chart.marker, 17.1, 0.1);
    EXPECT_DOUBLE_EQ(chart.series[0].points.front().y(), 19);
    EXPECT_LE(chart.series[0].points.back().y(), 42);
    const BathClock never{chemistry::Celsius(19), chemistry::Celsius(35), chemistry::Celsius(40),
                          chemistry::Seconds(420)};
    EXPECT_TRUE(bathText(never, english()).contains("never"));
    EXPECT_FALSE(bathChart(never, english()).marker);
}

TEST(MixingPlan, aWeighedFixerNamesBothThatTakeRoom)
{
    const auto formulary = sample::starterFormulary();
    MixingPlan plan;
    plan.solution = formulary.solution("starter-acid-fixer");
    plan.vessel = formulary.vessel("starter-glass-1000");
    plan.makes = chemistry::Millilitres(1000);
    plan.formula = chemistry::Formula{
        plan.makes,
        {{"sodium-thiosulfate", "pentahydrate", 240}, {"sodium-sulfite", "anhydrous", 15}}};
    EXPECT_NEAR(plan.displaced().value(), 240 * 0.5 + 15 * 0.11, 1e-9);
    const auto named = [&] {
        return static_cast<int>(
            waterFigures(plan, {}, english()).front().lines().filter("A gram of powder").size());
    };
    EXPECT_EQ(named(), 2);
    plan.formula.reset();
    plan.powderGrams = 240;
    EXPECT_EQ(named(), 1);
}

TEST(MixingPlan, thiosulfateTakesRoomByItsFormAndInSolutionNone)
{
    const auto formulary = sample::starterFormulary();
    MixingPlan plan;
    plan.solution = formulary.solution("starter-acid-fixer");
    plan.vessel = formulary.vessel("starter-glass-1000");
    plan.makes = chemistry::Millilitres(1000);
    plan.formula = chemistry::Formula{plan.makes, {{"sodium-thiosulfate", "pentahydrate", 248.17}}};
    const double crystals = plan.displaced().value();
    // The same salt without its water of crystallisation, 90.07 g of it: that much less is added.
    plan.formula = chemistry::Formula{plan.makes, {{"sodium-thiosulfate", "anhydrous", 158.10}}};
    EXPECT_NEAR(plan.displaced().value(), crystals - 90.07 / 0.9982, 0.1);
    plan.formula = chemistry::Formula{
        plan.makes, {{"sodium-thiosulfate", {}, 400, chemistry::AmountUnit::Millilitre}}};
    EXPECT_EQ(plan.powder(), 0);
    EXPECT_EQ(plan.displaced(), chemistry::Millilitres(0)) << "not a gram, and never below nothing";
}

TEST(MixingPlan, theUsualWaterIsTheConstantThatIsShownForIt)
{
    const UsualWater fixer = usualWater(formulary::Role::Fixer);
    EXPECT_EQ(fixer.low.value(), chemistry::kFixerWater.low);
    EXPECT_EQ(fixer.high.value(), chemistry::kFixerWater.high);
    const UsualWater developer = usualWater(formulary::Role::Developer);
    EXPECT_GE(developer.low.value(), chemistry::kDeveloperWater.low);
    EXPECT_LE(developer.high.value(), chemistry::kDeveloperWater.high);
}

TEST(MixingPlan, theLateFilmIsOneThatTheBatchDoes)
{
    const auto formulary = sample::starterFormulary();
    MixingPlan plan;
    plan.solution = formulary.solution("starter-mq-borax");
    plan.vessel = formulary.vessel("starter-glass-1000");
    const auto labels = [&](double ml) {
        plan.makes = chemistry::Millilitres(ml);
        QStringList all;
        for (const FactorRow& row : becomesRows(plan, sample::day(0), english()))
            all << row.label;
        return all;
    };
    EXPECT_TRUE(labels(1000).contains("Tenth film's time"));
    EXPECT_FALSE(labels(500).contains("Tenth film's time")) << "it does five";
    EXPECT_TRUE(labels(500).contains("Last film's time, no. 5"));
}

} // namespace ullage::app
