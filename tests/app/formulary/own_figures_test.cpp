// What the darkroom's own tests say, beside the packet's figure.
#include "app/formulary/formulary_page.h"
#include "app/formulary/own_figures_card.h"
#include "app/widgets/where_from_button.h"
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

const QDate kOwnToday(2026, 11, 25);

ledger::OwnRecord measuredTests()
{
    ledger::OwnRecord record;
    record.capacity = chemistry::OwnFigure{22.04, 18, 27, 14, 5};
    for (int i = 1; i <= 4; ++i)
        record.tests.push_back({chemistry::FilmsPerLitre(4.0 * i), 1 + 4.0 * i / 22});
    return record;
}

ledger::OwnRecord looksAndStrips()
{
    ledger::OwnRecord record;
    record.oxygen = chemistry::OwnFigure{28, 22, 35, 7, 3};
    record.halfDays = chemistry::OwnFigure{71.4, 58, 90, 7, 3};
    record.trials = {{chemistry::Days(40), true}, {chemistry::Days(95), false}};
    record.chances = {{chemistry::Days(30), 0.98, 0.98, 0.98},
                      {chemistry::Days(140), 0.02, 0.02, 0.1}};
    return record;
}

struct OwnFiguresDoor : ClosedDoor {
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
    card.setOffers(ownOffers(fixer, measuredTests(), 9, kOwnToday, english()));
    EXPECT_FALSE(card.isHidden());
    const QString said = card.sentence();
    for (const char* part : {"14", "5", "22", "18", "27", "20"})
        EXPECT_TRUE(said.contains(QLatin1String(part))) << said.toStdString();
    const auto why = card.whereFrom()->figures();
    ASSERT_EQ(why.size(), 1u);
    EXPECT_TRUE(why.front().value.contains(QStringLiteral("22")))
        << why.front().value.toStdString();
    EXPECT_EQ(why.front().grade, chemistry::Grade::CommonPractice) << "its spread has no source";
    card.setOffers(ownOffers(fixer, {}, 9, kOwnToday, english()));
    EXPECT_TRUE(card.isHidden()) << "nothing is offered";
}

TEST(OwnFigures, showTheTestsAsDots)
{
    const auto formulary = sample::starterFormulary();
    const auto offers = ownOffers(*formulary.solution("starter-acid-fixer"), measuredTests(), 9,
                                  kOwnToday, english());
    ASSERT_EQ(offers.size(), 1u);
    ASSERT_EQ(offers.front().chart.series.size(), 3u);
    EXPECT_EQ(offers.front().chart.series.back().points.size(), 4u);
    EXPECT_TRUE(offers.front().chart.xLabels.empty()) << "round figures at its foot";
    const auto keeping = ownOffers(*formulary.solution("starter-mq-borax"), looksAndStrips(), 4,
                                   kOwnToday, english());
    ASSERT_EQ(keeping.size(), 1u);
    const auto& dots = keeping.front().chart.series.back().points;
    ASSERT_EQ(dots.size(), 2u);
    EXPECT_EQ(dots.front().y(), 1) << "passed";
    EXPECT_EQ(dots.back().y(), 0) << "failed";
}

TEST(OwnFigures, makeANewVersionWithThatSource)
{
    const auto formulary = sample::starterFormulary();
    const auto made = ownOffers(*formulary.solution("starter-acid-fixer"), measuredTests(), 9,
                                kOwnToday, english());
    ASSERT_TRUE(made.front().changed);
    EXPECT_EQ(made.front().changed->capacity, chemistry::FilmsPerLitre(22));
    EXPECT_EQ(made.front().changed->sources.at("capacity"),
              "own tests, 5 of 9 bottles, to 2026-11-25");
    ledger::OwnRecord wear;
    wear.wear = chemistry::OwnFigure{12.34, 10, 14, 8, 3};
    const formulary::Solution& developer = *formulary.solution("starter-mq-borax");
    const auto worn = ownOffers(developer, wear, 4, kOwnToday, english());
    ASSERT_TRUE(worn.front().changed);
    EXPECT_DOUBLE_EQ(worn.front().changed->wear.percent, 12.3);
    const auto kept = ownOffers(developer, looksAndStrips(), 4, kOwnToday, english());
    ASSERT_TRUE(kept.front().changed);
    EXPECT_EQ(kept.front().changed->keeping.half, chemistry::Days(71));
    EXPECT_EQ(kept.front().changed->sources.at("keeping_half"),
              "own tests, 3 of 4 bottles, to 2026-11-25");
}

TEST(OwnFigures, refuseAKeepingTimeThatTheFullBottleCannotHave)
{
    const auto formulary = sample::starterFormulary();
    auto record = looksAndStrips();
    record.halfDays->value = 0.3; // less than a full bottle takes up in its time
    OwnFiguresCard card;
    card.setOffers(
        ownOffers(*formulary.solution("starter-mq-borax"), record, 4, kOwnToday, english()));
    EXPECT_FALSE(card.isHidden()) << "it is said all the same";
    EXPECT_FALSE(card.useButton()->isEnabled());
}

TEST(OwnFigures, areShownOneAtATime)
{
    const auto formulary = sample::starterFormulary();
    auto record = looksAndStrips();
    record.wear = chemistry::OwnFigure{12.34, 10, 14, 8, 3};
    OwnFiguresCard card;
    card.setOffers(
        ownOffers(*formulary.solution("starter-mq-borax"), record, 4, kOwnToday, english()));
    EXPECT_TRUE(card.sentence().contains(QStringLiteral("12.3")));
    card.choose(ledger::OwnKind::Keeping);
    EXPECT_TRUE(card.sentence().contains(QStringLiteral("71"))) << card.sentence().toStdString();
    card.choose(ledger::OwnKind::Capacity);
    EXPECT_TRUE(card.sentence().contains(QStringLiteral("71"))) << "not offered";
}

TEST(OwnFigures, areTakenOverOnlyWhenAskedFor)
{
    OwnFiguresDoor door;
    FormularyPage page(door);
    page.setFormulary(sample::starterFormulary(), english());
    page.resize(1100, 900);
    page.show();
    page.chooseSolution("starter-acid-fixer");
    page.setOwnRecord("starter-mq-borax", measuredTests(), 9);
    auto* card = page.findChild<OwnFiguresCard*>();
    ASSERT_TRUE(card);
    EXPECT_TRUE(card->isHidden()) << "of another solution";
    page.setOwnRecord("starter-acid-fixer", measuredTests(), 9);
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
