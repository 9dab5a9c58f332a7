// A developer with what goes with it, mixed in one go.
#include "app/mixing/mixing_set.h"

#include "app/mixing/choice_step.h"
#include "app/mixing/cool_step.h"
#include "app/mixing/formula_table.h"
#include "app/words/cautions.h"
#include "app/words/shown_names.h"
#include "tests/app/mixing/mixing_kit.h"
#include "tests/app/scripted_prompts.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QSignalSpy>

#include <algorithm>
#include <set>

namespace ullage::app
{

namespace
{

using Step = MixingPage::Step;

ledger::Packet packetOf(const char* id, const char* solution, double makes)
{
    ledger::Packet packet;
    packet.id = id;
    packet.solution = solution;
    packet.makes = chemistry::Millilitres(makes);
    return packet;
}

// From the water to the last step of one bottle; the next leads on.
void mixOne(MixingDesk& desk, int bottle)
{
    ASSERT_EQ(desk.page.step(), Step::Water);
    desk.press();
    ASSERT_EQ(desk.page.step(), Step::Dissolve);
    desk.page.dissolve(bottle)->pour();
    desk.press(2);
    ASSERT_EQ(desk.page.step(), Step::Close);
}

bool says(const MixingPage& page, const QString& words)
{
    const auto labels = page.findChildren<QLabel*>();
    return std::any_of(labels.begin(), labels.end(), [&](const QLabel* label) {
        return label->isVisible() && label->text().contains(words);
    });
}

} // namespace

TEST(MixingSet, developerAndFixerAreChosenMixedAndLoggedInOneGo)
{
    MixingDesk desk({packetOf("p-dev", "starter-mq-borax", 1000),
                     packetOf("p-fix", "starter-alkaline-fixer", 500)});
    auto& page = desk.page;
    ASSERT_TRUE(page.set()->tooBox(2)->isVisible());
    page.set()->tooBox(2)->setChecked(true);
    desk.press();
    EXPECT_EQ(page.step(), Step::Choice) << "now the fixer's";
    EXPECT_TRUE(says(page, "The fixer that goes with Dev 15"));
    const MixingPlan fixer = page.choice(2)->plan();
    EXPECT_EQ(fixer.solution->id, "starter-alkaline-fixer") << "of which a packet is here";
    EXPECT_EQ(fixer.packet->id, "p-fix");
    EXPECT_NE(fixer.vessel->id, page.choice(0)->plan().vessel->id);
    for (int i = 0; i < page.choice(2)->solution()->count(); ++i) {
        page.choice(2)->solution()->setCurrentIndex(i);
        EXPECT_EQ(page.choice(2)->plan().solution->role, formulary::Role::Fixer);
    }
    page.choice(2)->choosePacket("p-fix");
    desk.press();
    EXPECT_EQ(page.step(), Step::Safety);
    EXPECT_TRUE(says(page, Cautions::borax())) << "of the developer";
    for (const QString& caution :
         mixingCautions(*desk.formulary.solution("starter-alkaline-fixer")))
        EXPECT_TRUE(says(page, caution)) << caution.toStdString();
    desk.press();
    mixOne(desk, 0);
    EXPECT_EQ(page.nextButton()->text(), "Go on with Fix 1");
    desk.press();
    EXPECT_TRUE(desk.mixed.empty()) << "the set is logged as a whole";
    mixOne(desk, 2);
    EXPECT_EQ(page.nextButton()->text(), "Log the set");
    QSignalSpy logged(&page, &MixingPage::batchesLogged);
    desk.press();
    ASSERT_EQ(page.step(), Step::Done);
    ASSERT_EQ(desk.mixed.size(), 2u);
    EXPECT_EQ(desk.mixed[0].first.packet, "p-dev");
    EXPECT_EQ(desk.mixed[0].first.name, "Dev 15");
    EXPECT_EQ(desk.mixed[1].first.packet, "p-fix");
    EXPECT_EQ(desk.mixed[1].first.volume, chemistry::Millilitres(500));
    const QStringList both{"batch-1", "batch-2"};
    ASSERT_EQ(logged.count(), 1);
    EXPECT_EQ(logged.at(0).at(0).toStringList(), both);
    EXPECT_TRUE(page.done(0)->isVisible());
    EXPECT_TRUE(page.done(2)->isVisible());
    EXPECT_FALSE(page.done(1)->isVisible()) << "no stop bath was mixed";
    for (const MixingPlan& plan : {page.choice(0)->plan(), page.choice(2)->plan()}) {
        EXPECT_TRUE(says(page, shownName(plan.solution->name) + QStringLiteral(", ")))
            << "what it will become: " << plan.name.toStdString();
    }
    EXPECT_TRUE(says(page, "Films: 10\n")) << "of the developer, a litre";
    EXPECT_EQ(page.inHand(), "Cooling 2 bottles");
    QSignalSpy labels(&page, &MixingPage::labelsWanted);
    page.labelButton()->click();
    EXPECT_EQ(labels.at(0).at(0).toStringList(), both);
}

TEST(MixingSet, theStopBathComesBetweenThem)
{
    MixingDesk desk;
    auto& page = desk.page;
    page.set()->tooBox(1)->setChecked(true);
    page.set()->tooBox(2)->setChecked(true);
    EXPECT_EQ(page.set()->bottles(), (std::vector{0, 1, 2}));
    std::vector<formulary::Role> roles;
    for (int i = 0; i < 3; ++i) {
        ASSERT_EQ(page.step(), Step::Choice);
        roles.push_back(page.choice(i)->plan().solution->role);
        desk.press();
    }
    EXPECT_EQ(roles, (std::vector{formulary::Role::Developer, formulary::Role::Stop,
                                  formulary::Role::Fixer}));
    desk.press();
    for (const int bottle : page.set()->bottles()) {
        mixOne(desk, bottle);
        desk.press();
    }
    ASSERT_EQ(desk.mixed.size(), 3u);
    std::set<std::string> vessels;
    for (const auto& [batch, when] : desk.mixed)
        vessels.insert(batch.vessel);
    EXPECT_EQ(vessels.size(), 3u);
}

TEST(MixingSet, isOfferedWithADeveloperAlone)
{
    MixingDesk desk;
    auto& page = desk.page;
    page.set()->tooBox(2)->setChecked(true);
    page.choice()->solution()->setCurrentText("Acid fixer");
    EXPECT_FALSE(page.set()->tooBox(1)->isVisible());
    EXPECT_FALSE(page.set()->tooBox(2)->isVisible());
    EXPECT_FALSE(page.set()->isSet());
    desk.press();
    EXPECT_EQ(page.step(), Step::Safety);
}

TEST(MixingSet, needsAnEmptyBottleForEach)
{
    MixingDesk desk;
    auto& page = desk.page;
    page.begin(desk.formulary, {desk.formulary.vessel("starter-glass-1000")}, {});
    EXPECT_TRUE(page.nextButton()->isEnabled());
    page.set()->tooBox(2)->setChecked(true);
    EXPECT_FALSE(page.nextButton()->isEnabled());
    EXPECT_TRUE(says(page, "2 empty bottles"));
    page.set()->tooBox(2)->setChecked(false);
    EXPECT_TRUE(page.nextButton()->isEnabled());
}

// It stood below the window's edge: a card with words that wrap is not squeezed.
TEST(MixingSet, whatStandsInTheWayMakesThePageNoHigher)
{
    MixingDesk desk;
    auto& page = desk.page;
    page.resize(844, 648);
    page.begin(desk.formulary, {desk.formulary.vessel("starter-glass-1000")}, {});
    QApplication::processEvents();
    const int before = page.minimumSizeHint().height();
    page.set()->tooBox(2)->setChecked(true);
    QApplication::processEvents();
    ASSERT_TRUE(says(page, "2 empty bottles"));
    EXPECT_LE(page.minimumSizeHint().height(), before + 60) << "its own lines, and no more";
}

TEST(MixingSet, whatWasChosenStaysWhereOneGoesBack)
{
    MixingDesk desk;
    auto& page = desk.page;
    page.set()->tooBox(2)->setChecked(true);
    desk.press();
    ChoiceStep* fixer = page.choice(2);
    page.choice(0)->raw()->setChecked(true);
    page.choice(0)->formula()->atHand(1)->setCurrentText("heptahydrate");
    fixer->solution()->setCurrentText("Alkaline fixer");
    const QString bottle = fixer->vessel()->itemText(fixer->vessel()->count() - 1);
    fixer->vessel()->setCurrentText(bottle);
    page.back();
    EXPECT_EQ(page.step(), Step::Choice);
    EXPECT_TRUE(page.choice(0)->isVisible());
    EXPECT_TRUE(page.choice(0)->raw()->isChecked());
    desk.press();
    EXPECT_EQ(fixer->solution()->currentText(), "Alkaline fixer");
    EXPECT_EQ(fixer->vessel()->currentText(), bottle);
    page.back();
    page.choice(0)->vessel()->setCurrentText(bottle);
    desk.press();
    EXPECT_EQ(fixer->solution()->currentText(), "Alkaline fixer");
    EXPECT_NE(fixer->vessel()->currentText(), bottle) << "the developer goes into that now";
}

TEST(MixingSet, theClockToShakeByStandsInTheRailWhileTheNextIsMixed)
{
    MixingDesk desk;
    auto& page = desk.page;
    page.set()->tooBox(2)->setChecked(true);
    desk.press(3);
    mixOne(desk, 0);
    desk.press();
    ASSERT_EQ(page.step(), Step::Water);
    EXPECT_TRUE(page.inHand().startsWith("Mixing Dev 15 · ")) << page.inHand().toStdString();
    page.dissolve(0)->clearBox()->setChecked(true);
    EXPECT_EQ(page.inHand(), "Mixing Fix 1");
}

TEST(MixingSet, aRefusalLeavesAllOfItAsItWas)
{
    MixingDesk desk;
    auto& page = desk.page;
    page.set()->tooBox(2)->setChecked(true);
    desk.press(3);
    mixOne(desk, 0);
    desk.press();
    mixOne(desk, 2);
    desk.refuses = true;
    ScriptedPrompts answers;
    const PromptsInForce inForce(answers);
    desk.press();
    EXPECT_EQ(page.step(), Step::Close);
    EXPECT_TRUE(page.logged().isEmpty());
    EXPECT_EQ(answers.asked().size(), 1);
    desk.refuses = false;
    desk.press();
    EXPECT_EQ(page.logged().size(), 2);
}

} // namespace ullage::app
