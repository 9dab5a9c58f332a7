#include "app/shelf/shelf_snapshot.h"

#include "app/shelf/shelf_charts.h"
#include "tests/app/words/sample_batches.h"

namespace ullage::app
{

using namespace sample;

TEST(ShelfSnapshot, thePastIsWhatTheEventsSayOfEachMoment)
{
    const Bottle bottle = Bottle().films(1, 4).films(20, 2);
    const auto batch = bottle.at(day(40));
    const auto moments = pastMoments(batch);
    const auto past = pastOf(batch, bottle.events(), bottle.formulary());
    ASSERT_EQ(past.size(), moments.size());
    for (std::size_t i = 0; i < past.size(); ++i) {
        const auto then = bottle.at(moments[i]);
        EXPECT_EQ(past[i].asOf, moments[i]);
        EXPECT_DOUBLE_EQ(past[i].filmsDone.value(), then.filmsDone.value()) << i;
        EXPECT_EQ(ledger::assess(past[i]).standingUsed, ledger::assess(then).standingUsed) << i;
    }
    EXPECT_DOUBLE_EQ(past.back().filmsDone.value(), 6);
}

TEST(ShelfSnapshot, theShelfIsTheBottlesAndWhatTheyComeTo)
{
    const auto fresh = Bottle().films(1, 1).at(day(12));
    const auto spent = Bottle().films(1, 10).at(day(12));
    const ShelfSnapshot shelf{
        {{fresh, ledger::assess(fresh)}, {spent, ledger::assess(spent)}}, day(12), day(12)};
    const auto shown = shelfShown(shelf, english());
    ASSERT_EQ(shown.bottles.size(), 2u);
    EXPECT_DOUBLE_EQ(shown.bottles[1].filmsDone, 10);
    EXPECT_TRUE(shown.summary.contains("in use · 1 to discard")) << shown.summary.toStdString();
    EXPECT_TRUE(shelfShown({{}, {}, day(12)}, english()).summary.isEmpty());
}

TEST(ShelfSnapshot, aClockThatIsBehindIsSaidFirst)
{
    const auto batch = Bottle().at(day(12));
    const ShelfSnapshot shelf{{{batch, ledger::assess(batch)}}, day(40), day(12)};
    EXPECT_TRUE(shelfShown(shelf, english()).summary.startsWith("Is this computer's clock right?"));
}

TEST(ShelfSnapshot, theFirstOfTwoFixingBathsSaysWhenItIsExchanged)
{
    Bottle bottle("fix");
    bottle.films(1, 4);
    const auto said = [&](int at) {
        const auto batch = bottle.at(day(at));
        const BottleSnapshot snapshot{
            {batch, ledger::assess(batch)}, bottle.events(), {}, {}, KnownTimes{},
            chemistry::Celsius(20),         "Fix 2"};
        return selectedBottle(snapshot, bottle.formulary(), english()).reasons.join('|');
    };
    EXPECT_TRUE(said(6).contains("exchange it for Fix 2 when a leader takes 120\u00a0s"))
        << said(6).toStdString();
    bottle.happen(day(7), ledger::ClearingTested{chemistry::Seconds(130), chemistry::Celsius(20)});
    EXPECT_TRUE(said(8).startsWith("Exchange the baths: discard it, let Fix 2"))
        << said(8).toStdString();
}

TEST(ShelfSnapshot, allThatIsSaidOfABottleIsMadeFromIt)
{
    const Bottle bottle = Bottle().films(1, 4);
    const auto batch = bottle.at(day(10));
    BottleSnapshot snapshot{{batch, ledger::assess(batch)}, bottle.events(), {}, {}, KnownTimes{},
                            chemistry::Celsius(20)};
    snapshot.times.pairs = {{chemistry::Celsius(20), chemistry::Seconds(570)}};
    snapshot.times.lastUsed = true;
    const auto selected = selectedBottle(snapshot, bottle.formulary(), english());
    EXPECT_EQ(selected.nextTime, "13:20"); // 9:30 × 1.40 = 798 s
    EXPECT_TRUE(selected.left);
    EXPECT_TRUE(selected.air);
    EXPECT_FALSE(selected.help.isEmpty());
    EXPECT_TRUE(selected.hasStrips);
    EXPECT_FALSE(selected.stripWords.isEmpty()) << "what to do first";
    EXPECT_TRUE(selected.cost.isEmpty());
    const auto figures = selected.figures.size();

    ledger::Cost cost;
    cost.money.add(*ledger::Decimal::from("8.40"), "EUR");
    snapshot.cost = cost;
    const auto paid = selectedBottle(snapshot, bottle.formulary(), english());
    EXPECT_EQ(paid.cost, "Cost 8.40\u00a0EUR so far, 2.10\u00a0EUR for each film done.");
    ASSERT_EQ(paid.figures.size(), figures + 1);
    EXPECT_EQ(paid.figures.back().value, "8.40\u00a0EUR");
}

} // namespace ullage::app
