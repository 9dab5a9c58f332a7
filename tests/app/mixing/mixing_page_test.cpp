#include "app/mixing/mixing_page.h"

#include "app/mixing/choice_step.h"
#include "app/mixing/dissolve_step.h"
#include "app/mixing/mixing_figures.h"
#include "app/mixing/mixing_step_list.h"
#include "app/mixing/water_step.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/where_from_button.h"
#include "app/words/cautions.h"
#include "tests/app/mixing/mixing_kit.h"
#include "tests/app/scripted_prompts.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>

namespace ullage::app
{

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

TEST(MixingPage, tabGoesThroughTheFirstStepAsItIsLaidOut)
{
    MixingDesk bench;
    ChoiceStep* choice = bench.page.choice();
    const std::vector<QWidget*> laidOut{choice->makes(), choice->powder(), choice->vessel(),
                                        choice->name(), choice->raw()};
    std::vector<QWidget*> byTab;
    for (QWidget* stop = choice->solution()->nextInFocusChain(); stop != choice->solution();
         stop = stop->nextInFocusChain()) {
        if (std::find(laidOut.begin(), laidOut.end(), stop) != laidOut.end())
            byTab.push_back(stop);
    }
    EXPECT_EQ(byTab, laidOut);
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

} // namespace ullage::app
