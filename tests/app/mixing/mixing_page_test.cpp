#include "app/mixing/mixing_page.h"

#include "app/charts/chart_view.h"
#include "app/dialogs/bottle_choice.h"
#include "app/mixing/blend_bar.h"
#include "app/mixing/choice_step.h"
#include "app/mixing/cool_step.h"
#include "app/mixing/dissolve_step.h"
#include "app/mixing/formula_table.h"
#include "app/mixing/mixing_figures.h"
#include "app/mixing/mixing_step_list.h"
#include "app/mixing/water_step.h"
#include "app/mixing/weigh_list.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/where_from_button.h"
#include "app/words/cautions.h"
#include "core/chemistry/process_constants.h"
#include "tests/app/mixing/mixing_kit.h"
#include "tests/app/scripted_prompts.h"
#include "tests/app/words/sample_batches.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

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

TEST(MixingPage, asksBeforeItLogsABottleThatIsAllButEmpty)
{
    ScriptedPrompts answers;
    const PromptsInForce inForce(answers);
    MixingDesk bench;
    auto& page = bench.page;
    page.choice()->makes()->setValue(50);
    for (const auto step :
         {MixingPage::Step::Safety, MixingPage::Step::Water, MixingPage::Step::Dissolve}) {
        bench.press();
        ASSERT_EQ(page.step(), step);
    }
    page.dissolve()->pour();
    bench.press();
    bench.press();
    ASSERT_EQ(page.step(), MixingPage::Step::Close);
    bench.press();
    EXPECT_EQ(page.step(), MixingPage::Step::Close) << "it was a slip of the keys";
    EXPECT_EQ(answers.asked().size(), 1);
    EXPECT_TRUE(bench.mixed.empty());
    answers.answer(true);
    bench.press();
    EXPECT_EQ(page.step(), MixingPage::Step::Done) << "it was meant";
}

TEST(MixingPage, leadsThroughSevenStepsAndLogsAtTheEnd)
{
    MixingDesk bench;
    auto& page = bench.page;
    EXPECT_EQ(page.choice()->plan().name, "Dev 15");
    bench.press();
    EXPECT_EQ(page.step(), MixingPage::Step::Safety);
    bench.press();
    EXPECT_EQ(page.step(), MixingPage::Step::Water);
    bench.press();
    EXPECT_EQ(page.step(), MixingPage::Step::Dissolve);
    EXPECT_FALSE(page.nextButton()->isEnabled()) << "the powder is not in yet";
    QTest::mouseClick(page.dissolve()->pourButton(), Qt::LeftButton);
    page.dissolve()->clearBox()->setChecked(true);
    bench.press();
    bench.press();
    EXPECT_EQ(page.step(), MixingPage::Step::Close);
    EXPECT_TRUE(bench.mixed.empty()) << "nothing is logged before the last step";
    bench.press();
    EXPECT_EQ(page.step(), MixingPage::Step::Done);
    ASSERT_EQ(bench.mixed.size(), 1u);
    const auto& [batch, when] = bench.mixed[0];
    EXPECT_EQ(batch.solution, "starter-mq-borax");
    EXPECT_EQ(batch.vessel, "starter-glass-1000");
    EXPECT_EQ(batch.volume, chemistry::Millilitres(1000));
    EXPECT_EQ(batch.name, "Dev 15");
    EXPECT_FALSE(when.airLeft || batch.airLeft);
    EXPECT_TRUE(batch.dissolved) << "in the same deed, so that one undo takes both back";
    QSignalSpy finished(&page, &MixingPage::finished);
    bench.press();
    EXPECT_EQ(finished.at(0).at(0).toString(), "batch-1");
}

TEST(MixingPage, noPageSaysACautionTwice)
{
    MixingDesk bench;
    const auto times = [&bench](const QString& caution) {
        qsizetype found = 0;
        for (const auto* label : bench.page.findChildren<QLabel*>())
            found += label->isVisible() ? label->text().count(caution) : 0;
        return found;
    };
    for (int i = 0; i < 3; ++i) {
        EXPECT_EQ(times(Cautions::noCleaners()), 1) << static_cast<int>(bench.page.step());
        EXPECT_EQ(times(Cautions::borax()), 1) << static_cast<int>(bench.page.step());
        bench.press();
    }
}

TEST(MixingPage, whatIsNotClearIsLoggedAndNotMarked)
{
    MixingDesk bench;
    for (int i = 0; i < 3; ++i)
        bench.press();
    bench.page.dissolve()->pour();
    for (int i = 0; i < 3; ++i)
        bench.press();
    ASSERT_EQ(bench.mixed.size(), 1u);
    EXPECT_FALSE(bench.mixed[0].first.dissolved);
}

TEST(MixingPage, tellsElsewhereWhatIsInHandWithItsClock)
{
    MixingDesk bench;
    EXPECT_EQ(bench.page.inHand(), QString()) << "nothing has been begun";
    bench.press();
    EXPECT_EQ(bench.page.inHand(), "Mixing Dev 15");
    bench.press();
    bench.press();
    bench.page.dissolve()->pour();
    bench.wait(16);
    EXPECT_EQ(bench.page.inHand(), "Mixing Dev 15 · 9:44");
    bench.wait(600);
    EXPECT_EQ(bench.page.inHand(), "Mixing Dev 15 · shake now");
    bench.page.dissolve()->clearBox()->setChecked(true);
    EXPECT_EQ(bench.page.inHand(), "Mixing Dev 15 · clear");
    bench.press();
    bench.press();
    QSignalSpy logged(&bench.page, &MixingPage::batchesLogged);
    bench.press();
    ASSERT_EQ(logged.count(), 1);
    EXPECT_EQ(logged.at(0).at(0).toStringList(), QStringList("batch-1"));
    EXPECT_EQ(bench.page.inHand(), "Cooling Dev 15") << "it was filled up warm";
}

TEST(MixingPage, powderThatTakesOtherRoomIsReckonedAnewThoughItWeighsTheSame)
{
    MixingDesk bench;
    formulary::Solution fixer = *bench.formulary.solution("starter-acid-fixer");
    fixer.id = "weighed";
    fixer.name = "Weighed fixer";
    fixer.sources["composition"] = "sodium thiosulfate 60, sodium sulfite 40 g per litre; ours";
    bench.formulary.add(fixer);
    bench.page.begin(bench.formulary, bench.formulary.vessels(), {});
    ChoiceStep* choice = bench.page.choice();
    choice->solution()->setCurrentText("Weighed fixer");
    ASSERT_TRUE(choice->raw()->isVisible());
    choice->raw()->setChecked(true);
    bench.press();
    bench.press();
    EXPECT_NEAR(bench.page.water()->plan().displaced().value(), 60 * 0.5 + 40 * 0.11, 1e-9);
    bench.page.back();
    bench.page.back();
    choice->raw()->setChecked(false);
    choice->powder()->setValue(100);
    emit choice->powder()->valueChanged();
    bench.press();
    bench.press();
    EXPECT_NEAR(bench.page.water()->plan().displaced().value(), 100 * 0.5, 1e-9);
}

// The machine's clock is set back by a year and forward by two while the powder dissolves.
TEST(MixingPage, theShakesAreCountedByAClockThatNeverJumps)
{
    MixingDesk bench;
    auto steady = std::chrono::milliseconds(5000);
    MixingPage page(bench.door, [&] { return steady; });
    page.dissolve()->pour();
    const QString begin = page.dissolve()->clockText();
    bench.clock -= std::chrono::hours(24 * 365);
    page.dissolve()->tick();
    EXPECT_EQ(page.dissolve()->clockText(), begin);
    steady += std::chrono::minutes(4);
    bench.clock += std::chrono::hours(24 * 730);
    page.dissolve()->tick();
    EXPECT_EQ(page.dissolve()->clockText(), "6:00");
}

TEST(MixingPage, aRefusalLeavesEverythingAsItWas)
{
    MixingDesk bench;
    for (int i = 0; i < 3; ++i)
        bench.press();
    bench.page.dissolve()->pour();
    for (int i = 0; i < 2; ++i)
        bench.press();
    bench.refuses = true;
    ScriptedPrompts answers;
    const PromptsInForce inForce(answers);
    bench.press();
    EXPECT_EQ(bench.page.step(), MixingPage::Step::Close);
    EXPECT_TRUE(bench.page.logged().isEmpty());
    bench.refuses = false;
    bench.press();
    EXPECT_EQ(bench.page.step(), MixingPage::Step::Done);
}

TEST(MixingPage, backAndTheStepListGoBackOnly)
{
    MixingDesk bench;
    bench.press();
    bench.press();
    auto* list = bench.page.findChild<MixingStepList*>();
    QTest::keyClick(list, Qt::Key_Up);
    EXPECT_EQ(bench.page.step(), MixingPage::Step::Safety);
    emit list->stepWanted(0);
    EXPECT_EQ(bench.page.step(), MixingPage::Step::Choice);
    QSignalSpy finished(&bench.page, &MixingPage::finished);
    bench.page.back();
    EXPECT_TRUE(finished.at(0).at(0).toString().isEmpty());
}

TEST(MixingPage, aPacketThatDoesNotFitStopsAtTheFirstStep)
{
    MixingDesk bench;
    bench.page.choice()->makes()->setFocus();
    bench.page.choice()->makes()->selectAll();
    QTest::keyClicks(bench.page.choice()->makes(), "2000");
    EXPECT_FALSE(bench.page.nextButton()->isEnabled());
    bench.page.next();
    EXPECT_EQ(bench.page.step(), MixingPage::Step::Choice);
}

TEST(MixingPage, everyFigureOfAStepCanBeAsked)
{
    MixingDesk bench;
    auto* ask = bench.page.findChild<WhereFromButton*>();
    const auto find = [&](const char* title) {
        for (const Explanation& why : ask->figures())
            if (why.title == QString::fromUtf8(title))
                return why;
        return Explanation{};
    };
    EXPECT_TRUE(ask->isVisible());
    EXPECT_TRUE(find("Capacity").value.startsWith("10 film"));
    bench.press();
    EXPECT_FALSE(ask->isVisible()) << "safety has no figures";
    bench.press();
    const Explanation start = find("Water to begin with");
    EXPECT_TRUE(bench.page.water()->headline().startsWith(start.value));
    EXPECT_TRUE(start.lines().join('|').contains("NAVEDTRA 14209"));
    EXPECT_EQ(start.grade, chemistry::Grade::CommonPractice) << "room to stir has no source";
    // 60 and 15 °C to 40 °C: 25/45 of the weight is hot, 515 ml × 992.2 × 0.5556 ÷ 983.2 = 289 ml
    EXPECT_TRUE(find("Hot and cold water").value.contains("289"))
        << find("Hot and cold water").value.toStdString();
    EXPECT_EQ(find("Hot and cold water").grade, chemistry::Grade::Computed);
    Explanation clock = find("The bottle in its bath");
    EXPECT_TRUE(clock.lines().join('|').contains("cube root"));
    auto* box = bench.page.water()->clock();
    box->addReading();
    bench.wait(300);
    box->bottle()->setValue(box->bottle()->value().value() + 8);
    box->addReading();
    clock = find("The bottle in its bath");
    EXPECT_TRUE(clock.constants.empty());
    EXPECT_TRUE(clock.lines().join('|').contains("two readings of your own"));
    bench.press();
    EXPECT_TRUE(find("Shake and look every").value.startsWith("10"));
}

TEST(MixingPage, waterHotterThanTheTableReadIsFromMemory)
{
    MixingDesk bench;
    bench.press();
    bench.press();
    auto* water = bench.page.water();
    water->hot()->setValue(80);
    const auto figures = bench.page.findChild<WhereFromButton*>()->figures();
    const auto blend = std::find_if(figures.begin(), figures.end(), [](const Explanation& why) {
        return why.title == "Hot and cold water";
    });
    ASSERT_NE(blend, figures.end());
    EXPECT_EQ(blend->grade, chemistry::Grade::FromMemory);
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
