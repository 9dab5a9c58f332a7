// The guide's steps, each by itself: what is chosen, water, dissolving, cooling.
#include "app/mixing/choice_step.h"

#include "app/charts/chart_view.h"
#include "app/dialogs/bottle_choice.h"
#include "app/mixing/blend_bar.h"
#include "app/mixing/cool_step.h"
#include "app/mixing/dissolve_step.h"
#include "app/mixing/formula_table.h"
#include "app/mixing/mixing_figures.h"
#include "app/mixing/mixing_page.h"
#include "app/mixing/water_step.h"
#include "app/mixing/weigh_list.h"
#include "app/widgets/quantity_edit.h"
#include "tests/app/mixing/mixing_kit.h"
#include "tests/app/words/sample_batches.h"

#include <QCheckBox>
#include <QComboBox>
#include <QTest>

namespace ullage::app
{

using sample::english;

TEST(WaterStep, blendsByMassAndTwoReadingsReplaceTheUsualPace)
{
    MixingDesk bench;
    bench.press();
    bench.press();
    auto* water = bench.page.water();
    EXPECT_TRUE(water->headline().endsWith(QString::fromUtf8("40\u00a0°C")));
    EXPECT_TRUE(water->bar()->accessibleName().contains("hot"));
    water->wanted()->setValue(70);
    emit water->wanted()->valueChanged();
    EXPECT_TRUE(water->bar()->accessibleName().contains("not between"));
    water->wanted()->setValue(40);
    emit water->wanted()->valueChanged();
    const double usual = *water->clock()->chart()->chart().marker;
    water->clock()->addReading(); // 20 °C in a bath of 42 °C
    EXPECT_TRUE(water->clock()->readingText().contains("One reading"));
    bench.clock += std::chrono::minutes(5);
    water->clock()->bottle()->setValue(25);
    emit water->clock()->bottle()->valueChanged();
    water->clock()->addReading();
    // τ = 5 min / ln(22/17) = 19.4 min, and from 25 °C to 40 °C takes τ·ln(17/2) = 41.5 min.
    EXPECT_TRUE(water->clock()->readingText().contains("19.4"));
    EXPECT_NEAR(*water->clock()->chart()->chart().marker, 41.5, 0.2);
    EXPECT_GT(*water->clock()->chart()->chart().marker, usual);
}

TEST(WaterStep, withoutATemperatureNoOldChartStandsOn)
{
    MixingDesk bench;
    bench.press();
    bench.press();
    auto* clock = bench.page.water()->clock();
    ASSERT_TRUE(clock->chart()->isVisible());
    clock->around()->setValue(std::nullopt);
    emit clock->around()->valueChanged();
    EXPECT_FALSE(clock->chart()->isVisible());
    EXPECT_TRUE(clock->readingText().contains("missing"));
    clock->around()->setValue(42);
    emit clock->around()->valueChanged();
    EXPECT_TRUE(clock->chart()->isVisible());
}

TEST(DissolveStep, countsDownToEachShake)
{
    chemistry::Instant clock = sample::day(0);
    DissolveStep step([&] { return clock; });
    EXPECT_FALSE(step.isPoured());
    step.pour();
    EXPECT_EQ(step.clockText(), "10:00");
    clock += std::chrono::seconds(185);
    step.tick();
    EXPECT_EQ(step.clockText(), "6:55");
    clock += std::chrono::seconds(420);
    step.tick();
    EXPECT_EQ(step.clockText(), "9:55");
    step.clearBox()->setChecked(true);
    EXPECT_TRUE(step.isClear());
    step.reset();
    EXPECT_FALSE(step.isPoured());
    EXPECT_FALSE(step.isClear());
}

TEST(ChoiceStep, aPacketOfTheCupboardSetsTheVolumeAndTellsWhatAFilmCosts)
{
    ledger::Packet packet;
    packet.id = "p1";
    packet.solution = "starter-mq-borax";
    packet.makes = chemistry::Millilitres(500);
    packet.lot = "A12";
    packet.cost = ledger::Decimal::from("6");
    packet.currency = "EUR";
    MixingDesk bench({packet});
    ChoiceStep* choice = bench.page.choice();
    EXPECT_TRUE(choice->packet()->isVisible());
    EXPECT_TRUE(choice->packet()->currentText().contains("A12"));
    const MixingPlan plan = choice->plan();
    ASSERT_TRUE(plan.packet);
    EXPECT_EQ(plan.makes, chemistry::Millilitres(500));
    const auto rows = becomesRows(plan, bench.clock, english());
    EXPECT_EQ(rows.back().value, "1.20\u00a0EUR") << "5 films in half a litre";

    choice->packet()->setCurrentIndex(1);
    EXPECT_FALSE(choice->plan().packet);
    EXPECT_FALSE(becomesRows(choice->plan(), bench.clock, english()).back().value.contains("EUR"));
    choice->packet()->setCurrentIndex(0);
    for (int i = 0; i < 3; ++i)
        bench.press();
    bench.page.dissolve()->pour();
    for (int i = 0; i < 3; ++i)
        bench.press();
    ASSERT_EQ(bench.mixed.size(), 1u);
    EXPECT_EQ(bench.mixed[0].first.packet, "p1");

    choice->solution()->setCurrentText("Metol sulfite developer");
    EXPECT_FALSE(choice->packet()->isVisibleTo(choice)) << "no packet of that is there";
}

// The weights stood there for the bottle's volume and the packet's stood above them.
TEST(ChoiceStep, whatIsWeighedIsForTheVolumeThatStandsThere)
{
    ledger::Packet packet;
    packet.id = "p1";
    packet.solution = "starter-mq-borax";
    packet.makes = chemistry::Millilitres(500);
    MixingDesk bench({packet});
    ChoiceStep* choice = bench.page.choice();
    ASSERT_EQ(choice->plan().makes, chemistry::Millilitres(500));
    const auto agree = [&] {
        const MixingPlan plan = choice->plan();
        return plan.formula && plan.formula->makes == plan.makes;
    };
    choice->raw()->setChecked(true);
    EXPECT_TRUE(agree());
    EXPECT_EQ(choice->plan().makes, chemistry::Millilitres(1000)) << "as usual for the bottle";
    EXPECT_EQ(choice->formula()->weighed(1), "100 g");
    choice->raw()->setChecked(false);
    EXPECT_EQ(choice->plan().makes, chemistry::Millilitres(500)) << "a packet is used whole";
    choice->makes()->setValue(250);
    emit choice->makes()->valueChanged();
    choice->raw()->setChecked(true);
    EXPECT_TRUE(agree());
    EXPECT_EQ(choice->formula()->weighed(1), "25 g") << "as it was typed";
}

TEST(ChoiceStep, wordsAboveTheirFieldsTakeALineEach)
{
    MixingDesk desk;
    desk.page.resize(840, 620);
    QTest::qWait(1);
    ASSERT_LT(desk.page.choice()->width(), 400) << "so they stand above";
    const QWidget* makes = desk.page.choice()->makes();
    const int row = desk.page.choice()->powder()->y() - makes->y();
    EXPECT_LT(row, makes->height() + 2 * makes->fontMetrics().height()) << "no higher than one";
}

TEST(ChoiceStep, itMakesWhatIsUsualForTheBottleAsEverywhere)
{
    MixingDesk bench;
    ChoiceStep* choice = bench.page.choice();
    const formulary::Vessel small{"small", "Small", chemistry::Millilitres(40)};
    const formulary::Vessel odd{"odd", "Odd", chemistry::Millilitres(1250)};
    for (const formulary::Vessel& vessel : {small, odd}) {
        choice->setFormulary(bench.formulary, {std::make_shared<formulary::Vessel>(vessel)}, {},
                             {});
        EXPECT_EQ(choice->plan().makes, usualVolume(vessel)) << vessel.name;
        EXPECT_LE(choice->plan().makes, vessel.capacity) << vessel.name;
    }
}

TEST(ChoiceStep, rawChemicalsAreScaledInTheirOrderForTheHydrateAtHand)
{
    MixingDesk bench;
    ChoiceStep* choice = bench.page.choice();
    ASSERT_TRUE(choice->raw()->isVisible());
    EXPECT_FALSE(choice->formula()->isVisible());
    choice->raw()->setChecked(true);
    EXPECT_TRUE(choice->formula()->isVisible());
    choice->makes()->setValue(500);
    emit choice->makes()->valueChanged();
    EXPECT_EQ(choice->formula()->weighed(0), QString::fromUtf8("1 g")) << "metol";
    EXPECT_EQ(choice->formula()->weighed(1), "50 g") << "sodium sulfite";
    EXPECT_EQ(choice->formula()->atHand(0), nullptr);
    choice->formula()->atHand(1)->setCurrentText("heptahydrate");
    // 50 g · 252.14 / 126.04
    EXPECT_EQ(choice->formula()->weighed(1), "100 g");
    const MixingPlan plan = choice->plan();
    ASSERT_TRUE(plan.formula);
    EXPECT_NEAR(plan.powder(), 1 + 100.02 + 2.5 + 1, 0.01);
    EXPECT_FALSE(plan.powderGrams);
    for (int i = 0; i < 3; ++i)
        bench.press();
    const WeighList* list = bench.page.dissolve()->list();
    ASSERT_EQ(list->count(), 4);
    EXPECT_TRUE(list->isVisible());
    EXPECT_EQ(list->box(0)->text(), "1. metol: 1 g");
    EXPECT_EQ(list->box(1)->text(), "2. sodium sulfite, heptahydrate: 100 g");

    choice->solution()->setCurrentText("PQ ascorbate developer");
    EXPECT_FALSE(choice->raw()->isVisibleTo(choice)) << "what it is made of is not known";
    EXPECT_FALSE(choice->plan().formula);
}

TEST(CoolStep, tellsWhenAWarmBottleIsCoolEnough)
{
    chemistry::Instant clock = sample::day(0);
    CoolStep step([&] { return clock; }, english());
    step.resize(500, 500);
    step.show();
    step.begin(chemistry::Millilitres(1000), chemistry::Celsius(21));
    EXPECT_FALSE(step.clock()->isVisible()) << "it is as it is used";
    step.begin(chemistry::Millilitres(1000), chemistry::Celsius(30));
    EXPECT_TRUE(step.clock()->isVisible());
    // 7 min · ln(12/2) in a bath of 18 °C
    EXPECT_NEAR(*step.box()->chart()->chart().marker, 12.5, 0.1);
    step.surroundings()->setCurrentIndex(1);
    // 155 min · ln(11/1) in a room of 19 °C
    EXPECT_NEAR(*step.box()->chart()->chart().marker, 371.7, 0.5);
    step.box()->addReading();
    clock += std::chrono::minutes(10);
    step.box()->bottle()->setValue(28);
    step.box()->addReading();
    // τ = 10 min / ln(11/9) = 49.8 min
    EXPECT_TRUE(step.box()->readingText().contains("49.8"))
        << step.box()->readingText().toStdString();
}

} // namespace ullage::app
