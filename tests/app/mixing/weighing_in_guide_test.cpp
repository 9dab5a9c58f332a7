// A batch of raw chemicals in the guide, and what the cupboard has of them.
#include "app/mixing/choice_step.h"
#include "app/mixing/formula_table.h"
#include "app/mixing/mixing_set.h"
#include "app/mixing/weigh_list.h"
#include "app/paper/weighing_paper.h"
#include "app/widgets/quantity_edit.h"
#include "tests/app/mixing/mixing_kit.h"
#include "tests/app/scripted_prompts.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QSignalSpy>

namespace ullage::app
{

namespace
{

ledger::ItemHere jarInGuide(const char* id, const char* name, std::optional<double> left)
{
    ledger::Chemical line;
    line.id = id;
    line.name = name;
    line.grams = left;
    ledger::ItemHere here;
    here.item = itemOf(line);
    here.stock.left = left;
    here.line = line;
    return here;
}

using Jars = std::vector<ledger::ItemHere>;

// All that half a litre of the stock takes: metol 1, sulfite 50, hydroquinone 2.5, borax 1 g.
Jars enoughOfAll()
{
    return {jarInGuide("m", "metol", 25), jarInGuide("s", "sodium sulfite, dry", 500),
            jarInGuide("h", "hydroquinone", 100), jarInGuide("b", "borax", 250)};
}

struct WeighingDesk : MixingDesk {
    explicit WeighingDesk(const Jars& jars)
    {
        state.items = jars;
        page.begin(formulary, formulary.vessels(), {});
        weighHalfALitre(0);
    }
    void weighHalfALitre(int bottle)
    {
        page.choice(bottle)->raw()->setChecked(true);
        page.choice(bottle)->makes()->setValue(500);
        emit page.choice(bottle)->makes()->valueChanged();
    }
    void mixToTheEnd()
    {
        for (int left = 20; left > 0 && page.step() != MixingPage::Step::Done; --left) {
            if (page.step() == MixingPage::Step::Dissolve)
                page.dissolve(page.bottle())->pour();
            page.next();
        }
    }
    [[nodiscard]] std::vector<std::pair<std::string, double>> taken(std::size_t batch) const
    {
        std::vector<std::pair<std::string, double>> all;
        for (const auto& take : mixed.at(batch).first.takes)
            all.emplace_back(take.item, take.amount);
        return all;
    }
};

using TakenPairs = std::vector<std::pair<std::string, double>>;

} // namespace

TEST(WeighingInGuide, allThatIsWeighedLeavesTheCupboardInTheSameDeed)
{
    WeighingDesk desk(enoughOfAll());
    EXPECT_FALSE(desk.page.choice()->lacking()->isVisible());
    ScriptedPrompts answers;
    const PromptsInForce inForce(answers);
    desk.mixToTheEnd();
    ASSERT_EQ(desk.page.step(), MixingPage::Step::Done);
    EXPECT_TRUE(answers.asked().isEmpty()) << "there is enough";
    ASSERT_EQ(desk.mixed.size(), 1U);
    EXPECT_EQ(desk.taken(0), (TakenPairs{{"m", 1}, {"s", 50}, {"h", 2.5}, {"b", 1}}));
    EXPECT_TRUE(desk.mixed[0].first.packet.empty());
}

TEST(WeighingInGuide, whatLacksIsAskedAboutOnceAndTheUserDecides)
{
    Jars jars = enoughOfAll();
    jars[1] = jarInGuide("s", "sodium sulfite, dry", 20);
    WeighingDesk desk(jars);
    EXPECT_TRUE(desk.page.choice()->lacking()->isVisible());
    EXPECT_TRUE(desk.page.choice()->lacking()->text().contains("30 g"));
    ScriptedPrompts answers;
    const PromptsInForce inForce(answers);
    answers.answer(false);
    desk.press();
    EXPECT_EQ(desk.page.step(), MixingPage::Step::Choice) << "it is to be bought first";
    answers.answer(true);
    desk.mixToTheEnd();
    EXPECT_EQ(answers.asked().size(), 2);
    ASSERT_EQ(desk.page.step(), MixingPage::Step::Done);
    EXPECT_EQ(desk.taken(0), (TakenPairs{{"m", 1}, {"s", 20}, {"h", 2.5}, {"b", 1}}))
        << "what is there, and no more";
}

TEST(WeighingInGuide, whatOthersTookMeanwhileIsNotTakenTwice)
{
    WeighingDesk desk(enoughOfAll());
    desk.press(3);
    desk.page.dissolve()->pour();
    desk.state.items[1] = jarInGuide("s", "sodium sulfite, dry", 10);
    desk.mixToTheEnd();
    ASSERT_EQ(desk.page.step(), MixingPage::Step::Done);
    EXPECT_EQ(desk.taken(0), (TakenPairs{{"m", 1}, {"s", 10}, {"h", 2.5}, {"b", 1}}));
}

TEST(WeighingInGuide, aCupboardWithoutChemicalsAsksAndTakesNothing)
{
    WeighingDesk desk({});
    EXPECT_FALSE(desk.page.choice()->lacking()->isVisible());
    ScriptedPrompts answers;
    const PromptsInForce inForce(answers);
    desk.mixToTheEnd();
    EXPECT_TRUE(answers.asked().isEmpty());
    EXPECT_TRUE(desk.taken(0).empty());
}

TEST(WeighingInGuide, theFormThatIsHereIsTakenToBeAtHand)
{
    Jars jars = enoughOfAll();
    jars[1] = jarInGuide("s", "sodium sulfite, heptahydrate", 500);
    WeighingDesk desk(jars);
    EXPECT_EQ(desk.page.choice()->formula()->atHand(1)->currentText(), "heptahydrate");
    desk.mixToTheEnd();
    // 50 g · 252.14 / 126.04 = 100.02 g
    EXPECT_EQ(desk.taken(0)[1], (std::pair<std::string, double>{"s", 100}));
}

TEST(WeighingInGuide, aPacketTakesNoChemicals)
{
    WeighingDesk desk(enoughOfAll());
    desk.page.choice()->raw()->setChecked(false);
    EXPECT_EQ(desk.page.dissolve()->list()->count(), 0);
    EXPECT_FALSE(desk.page.choice()->sheetButton()->isVisible());
    desk.mixToTheEnd();
    EXPECT_TRUE(desk.taken(0).empty());
}

TEST(WeighingInGuide, theSheetHasWhatTheGuideHas)
{
    WeighingDesk desk(enoughOfAll());
    std::vector<WeighingSheet> sheets;
    QObject::connect(&desk.page, &MixingPage::weighingSheetWanted, &desk.page,
                     [&](const WeighingSheet& sheet) { sheets.push_back(sheet); });
    ASSERT_TRUE(desk.page.choice()->sheetButton()->isVisible());
    desk.page.choice()->sheetButton()->click();
    desk.press(3);
    desk.page.dissolve()->list()->sheetButton()->click();
    ASSERT_EQ(sheets.size(), 2U);
    EXPECT_EQ(sheets[0].name, "Dev 1");
    EXPECT_EQ(sheets[0].makes, chemistry::Millilitres(500));
    EXPECT_EQ(sheets[1].out.parts.size(), 4U);
    EXPECT_EQ(sheets[1].out.parts[1].here, 500);
}

// The wash of two bottles of one deed: what the first takes is gone for the second.
TEST(WeighingInGuide, twoBottlesOfASetShareWhatIsThere)
{
    WeighingDesk desk({jarInGuide("s", "sodium sulfite, dry", 60)});
    formulary::Solution fixer = *desk.formulary.solution("starter-acid-fixer");
    fixer.id = "weighed";
    fixer.name = "Weighed fixer";
    fixer.form = formulary::Form::Powder;
    fixer.sources["composition"] = "sodium thiosulfate 200, sodium sulfite 20 g per litre; ours";
    desk.formulary.add(fixer);
    desk.page.begin(desk.formulary, desk.formulary.vessels(), {});
    desk.weighHalfALitre(0);
    desk.page.set()->tooBox(2)->setChecked(true);
    ScriptedPrompts answers;
    const PromptsInForce inForce(answers);
    answers.answer(true);
    desk.press();
    ASSERT_EQ(desk.page.bottle(), 2);
    desk.page.choice(2)->solution()->setCurrentText("Weighed fixer");
    desk.weighHalfALitre(2);
    EXPECT_EQ(desk.page.set()->bottle(2).weighOut().parts[1].here, 10) << "50 of 60 g are promised";
    answers.answer(true);
    desk.mixToTheEnd();
    ASSERT_EQ(desk.mixed.size(), 2U);
    EXPECT_EQ(desk.taken(0), (TakenPairs{{"s", 50}}));
    EXPECT_EQ(desk.taken(1), (TakenPairs{{"s", 10}}));
}

} // namespace ullage::app
