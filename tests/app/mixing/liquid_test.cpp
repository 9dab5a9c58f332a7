// Liquids have their own way through "Mix a batch".
#include "app/mixing/choice_step.h"
#include "app/mixing/dissolve_step.h"
#include "app/mixing/liquid_edit.h"
#include "app/mixing/mixing_page.h"
#include "app/mixing/mixing_words.h"
#include "app/mixing/water_step.h"
#include "app/widgets/quantity_edit.h"
#include "app/words/number_text.h"
#include "tests/app/closed_door.h"
#include "tests/app/formulary/starter.h"
#include "tests/app/words/sample_batches.h"

#include <QCheckBox>
#include <QComboBox>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>

namespace ullage::app
{

using sample::english;

namespace
{

struct KeepingDoor : ClosedDoor {
    std::vector<ledger::NewBatch> mixed;

    [[nodiscard]] chemistry::Instant now() const override { return sample::day(0); }
    std::vector<ledger::Packet> packetsAtHand() override { return {}; }
    Result<std::vector<std::string>> mixAll(const std::vector<ledger::NewBatch>& batches,
                                            ledger::When) override
    {
        mixed.insert(mixed.end(), batches.begin(), batches.end());
        return std::vector<std::string>(batches.size(), "batch");
    }
};

MixingPlan planOf(const char* solution, LiquidDilution dilution, double makes = 1000)
{
    static const auto formulary = sample::starterFormulary();
    MixingPlan plan;
    plan.solution = formulary.solution(solution);
    plan.vessel = formulary.vessel("starter-glass-1000");
    plan.makes = chemistry::Millilitres(makes);
    plan.liquid = dilution;
    return plan;
}

} // namespace

TEST(Liquid, isMeasuredAndPouredIntoMostOfItsWater)
{
    const MixingPlan plan = planOf("starter-rapid-fixer", {.parts = 4});
    ASSERT_TRUE(plan.pours());
    EXPECT_NEAR(plan.pours()->concentrate.value(), 200, 1e-9);
    const auto start = plan.start();
    ASSERT_TRUE(start);
    EXPECT_NEAR(start->advised.value(), 720, 1e-9) << "nine tenths of 800";
    EXPECT_EQ(pouringText(plan, english()),
              QStringLiteral("%1 of the liquid into %2 of water")
                  .arg(volumeText(chemistry::Millilitres(200), english()),
                       volumeText(chemistry::Millilitres(720), english())));
    EXPECT_TRUE(planProblem(plan, english()).isEmpty());
}

TEST(Liquid, anAcidIsDilutedByItsStrength)
{
    // Glacial acetic acid to 2 %.
    MixingPlan plan = planOf(
        "starter-acetic-stop",
        {.strengths = std::pair(chemistry::Strength{99.7, 1.05}, chemistry::Strength{2, 1.001})});
    ASSERT_TRUE(plan.pours());
    EXPECT_NEAR(plan.pours()->concentrate.value(), 1001 * 2 / 99.7 / 1.05, 0.01);
    plan.liquid->strengths->second.percent = 99.8;
    EXPECT_FALSE(plan.pours()) << "it never becomes stronger";
    EXPECT_FALSE(planProblem(plan, english()).isEmpty());
}

TEST(Liquid, hasNothingToShakeAndNothingToWaitFor)
{
    KeepingDoor door;
    MixingPage page(door, {});
    const auto formulary = sample::starterFormulary();
    page.begin(formulary, formulary.vessels(), {});
    page.resize(1100, 760);
    page.show();
    ChoiceStep* choice = page.choice();
    choice->solution()->setCurrentText("Rapid fixer, 1+4");
    EXPECT_TRUE(choice->liquid()->isVisibleTo(choice));
    EXPECT_FALSE(choice->powder()->isVisibleTo(choice));
    choice->liquid()->parts()->setValue(9);
    const auto go = [&] { QTest::mouseClick(page.nextButton(), Qt::LeftButton); };
    go();
    go();
    ASSERT_EQ(page.step(), MixingPage::Step::Water);
    const double makes = choice->makes()->value().value_or(0);
    EXPECT_TRUE(page.water()->headline().startsWith(
        volumeText(chemistry::Millilitres(makes * 0.9 * 0.9), english())))
        << page.water()->headline().toStdString();
    go();
    ASSERT_EQ(page.step(), MixingPage::Step::Dissolve);
    EXPECT_FALSE(page.dissolve()->clearBox()->isVisible());
    EXPECT_FALSE(page.nextButton()->isEnabled()) << "it is not in yet";
    QTest::mouseClick(page.dissolve()->pourButton(), Qt::LeftButton);
    EXPECT_TRUE(page.dissolve()->isClear());
    EXPECT_FALSE(page.inHand().contains(u'·')) << "no time to a next shake";
    for (int i = 0; i < 3; ++i)
        go();
    ASSERT_EQ(page.step(), MixingPage::Step::Done);
    ASSERT_EQ(door.mixed.size(), 1u);
    EXPECT_FALSE(door.mixed.front().dissolved) << "nothing was dissolved";
}

// In German the step was once wider than its room: the names of its fields were cut off.
TEST(Liquid, howItIsDilutedDoesNotWidenTheStep)
{
    const LiquidEdit usual(english());
    const LiquidEdit wordy(english());
    auto* words = wordy.findChild<QComboBox*>();
    words->setItemText(0, QString(80, u'm'));
    EXPECT_EQ(words->minimumSizeHint().width(),
              usual.findChild<QComboBox*>()->minimumSizeHint().width());
}

TEST(Liquid, aPowderStaysAsItWas)
{
    KeepingDoor door;
    MixingPage page(door, {});
    const auto formulary = sample::starterFormulary();
    page.begin(formulary, formulary.vessels(), {});
    page.show();
    page.choice()->solution()->setCurrentText("MQ borax developer, stock");
    EXPECT_FALSE(page.choice()->plan().liquid);
    EXPECT_FALSE(page.choice()->liquid()->isVisibleTo(page.choice()));
    EXPECT_TRUE(page.choice()->powder()->isVisibleTo(page.choice()));
}

} // namespace ullage::app
