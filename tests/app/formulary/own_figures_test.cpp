// What the darkroom's own tests say, beside the packet's figure.
#include "app/formulary/formulary_page.h"
#include "app/formulary/own_figures_card.h"
#include "tests/app/closed_door.h"
#include "tests/app/formulary/starter.h"
#include "tests/app/scripted_prompts.h"
#include "tests/app/words/sample_batches.h"

#include <QPushButton>
#include <QTest>

namespace ullage::app
{

using sample::english;

namespace
{

ledger::OwnRecord measured()
{
    ledger::OwnRecord record;
    record.capacity = chemistry::OwnFigure{22.04, 18, 27, 14, 5};
    for (int i = 1; i <= 4; ++i)
        record.tests.push_back({chemistry::FilmsPerLitre(4.0 * i), 1 + 4.0 * i / 22});
    return record;
}

struct KeepingDoor : ClosedDoor {
    std::vector<formulary::Solution> added;
    int made = 0;

    std::string newId() override { return "made-" + std::to_string(++made); }
    using ClosedDoor::add;
    Result<void> add(const formulary::Solution& solution) override
    {
        added.push_back(solution);
        return {};
    }
};

} // namespace

TEST(OwnFigures, areSaidBesideThePackets)
{
    const auto formulary = sample::starterFormulary();
    const formulary::Solution& fixer = *formulary.solution("starter-acid-fixer");
    OwnFiguresCard card;
    card.setRecord(fixer, measured(), 9, english());
    EXPECT_FALSE(card.isHidden());
    const QString said = card.sentence();
    for (const char* part : {"14", "5", "22", "18", "27", "20"})
        EXPECT_TRUE(said.contains(QLatin1String(part))) << said.toStdString();
    const ChartSpec chart = ownFigureChart(measured(), english());
    ASSERT_EQ(chart.series.size(), 3u);
    EXPECT_EQ(chart.series.back().points.size(), 4u) << "the tests as dots";
    card.setRecord(fixer, {}, 9, english());
    EXPECT_TRUE(card.isHidden()) << "nothing is offered";
}

TEST(OwnFigures, makeANewVersionWithThatSource)
{
    const auto formulary = sample::starterFormulary();
    const auto made =
        withOwnFigure(*formulary.solution("starter-acid-fixer"), measured(), 9, "2026-11-25");
    ASSERT_TRUE(made);
    EXPECT_EQ(made->capacity, chemistry::FilmsPerLitre(22));
    EXPECT_EQ(made->sources.at("capacity"), "own tests, 5 of 9 bottles, to 2026-11-25");
    ledger::OwnRecord wear;
    wear.wear = chemistry::OwnFigure{12.34, 10, 14, 8, 3};
    const auto developer =
        withOwnFigure(*formulary.solution("starter-mq-borax"), wear, 4, "2026-11-25");
    ASSERT_TRUE(developer);
    EXPECT_DOUBLE_EQ(developer->wear.percent, 12.3);
}

TEST(OwnFigures, areTakenOverOnlyWhenAskedFor)
{
    KeepingDoor door;
    FormularyPage page(door);
    page.setFormulary(sample::starterFormulary(), english());
    page.resize(1100, 900);
    page.show();
    page.chooseSolution("starter-acid-fixer");
    page.setOwnRecord("starter-mq-borax", measured(), 9);
    auto* card = page.findChild<OwnFiguresCard*>();
    ASSERT_TRUE(card);
    EXPECT_TRUE(card->isHidden()) << "of another solution";
    page.setOwnRecord("starter-acid-fixer", measured(), 9);
    ASSERT_FALSE(card->isHidden());
    ScriptedPrompts answers;
    const PromptsInForce inForce(answers);
    answers.answer(false);
    QTest::mouseClick(card->useButton(), Qt::LeftButton);
    EXPECT_TRUE(door.added.empty());
    answers.answer(true);
    QTest::mouseClick(card->useButton(), Qt::LeftButton);
    ASSERT_EQ(door.added.size(), 1u);
    EXPECT_EQ(door.added.front().replaces, "starter-acid-fixer");
    EXPECT_EQ(door.added.front().capacity, chemistry::FilmsPerLitre(22));
}

} // namespace ullage::app
