#include "core/ledger/replenish.h"

#include "tests/core/ledger/book_kit.h"

namespace ullage::ledger
{
namespace
{

using chemistry::Films;
using chemistry::Millilitres;

class Replenished : public BookTest
{
protected:
    Replenished()
    {
        auto solution = History::developer();
        solution.id = "rep";
        solution.capacity = chemistry::FilmsPerLitre(20);
        solution.replenishPerFilm = Millilitres(80);
        EXPECT_TRUE(book->add(solution));
    }

    /// Runs film and tops up as is proposed.
    Result<std::string> runAndTopUp(const std::string& id, double days, double films,
                                    const std::string& from = {})
    {
        FilmRun request{rolls(films), {{id, {}, Millilitres(10), false, {}}}, {}, {}, {}};
        auto topUp = topUpAfter(batch(id, days), Films(films), Millilitres(10));
        EXPECT_TRUE(topUp);
        topUp->from = from;
        request.topUps.push_back(*topUp);
        return book->process(request, History::at(days));
    }
};

TEST_F(Replenished, offersTheRateForEachFilmAndMakesRoomForIt)
{
    const auto id = mix(0, "rep", 900);
    auto offer = topUpAfter(batch(id), Films(1.5), Millilitres(0));
    ASSERT_TRUE(offer);
    EXPECT_EQ(offer->volume, Millilitres(120));
    EXPECT_EQ(offer->drawn, Millilitres(0)); // 130 mL of room
    offer = topUpAfter(batch(id), Films(3), Millilitres(10));
    EXPECT_EQ(offer->volume, Millilitres(240));
    EXPECT_NEAR(offer->drawn.value(), 100, 1e-9); // room for 140
    EXPECT_FALSE(topUpAfter(batch(id), Films(0), Millilitres(0)));
    EXPECT_FALSE(topUpAfter(batch(id), Films(13), Millilitres(0))); // all of it and more
    EXPECT_FALSE(topUpAfter(batch(mix(0, "dev", 1000, "hdpe")), Films(1), Millilitres(0)));
}

TEST_F(Replenished, whatIsDueTakesTheWearAway)
{
    auto topped = History::developer();
    topped.id = "topped";
    topped.replenishPerFilm = Millilitres(50);
    topped.replenisher = "dev";
    ASSERT_TRUE(book->add(topped));
    const auto id = mix(0, "topped", 800);
    EXPECT_FALSE(replenisherDue(batch(id))) << "no film yet";
    ASSERT_TRUE(book->process({rolls(3), {{id, {}, {}, false, {}}}, {}, {}, {}}, History::at(1)));
    const auto due = replenisherDue(batch(id, 1));
    ASSERT_TRUE(due);
    EXPECT_NEAR(due->value(), 150, 1e-9);
    ASSERT_TRUE(book->topUp(id, *due, {History::at(2), {}}, {}, "dev"));
    EXPECT_NEAR(batch(id, 2).wear.value(), 0, 1e-9);
    EXPECT_FALSE(replenisherDue(batch(id, 2)));
    EXPECT_NEAR(turnovers(batch(id, 2)), 150.0 / 800, 1e-12);
    EXPECT_FALSE(replenisherDue(batch(mix(0, "rep")))) << "topped up with fresh, it owes nothing";
}

TEST_F(Replenished, withAReplenisherOfItsOwnItRestsAtNothingAndDrawsItFromItsBottle)
{
    auto topped = History::developer();
    topped.id = "topped";
    topped.replenishPerFilm = Millilitres(50);
    topped.replenisher = "dev";
    ASSERT_TRUE(book->add(topped));
    const auto id = mix(0, "topped");
    const auto bottle = mix(0, "dev", 500, "small");
    EXPECT_EQ(wearAtRest(topped), chemistry::FilmsPerLitre(0));
    EXPECT_TRUE(restHolds(topped));
    FilmRun run{rolls(2), {{id, {}, Millilitres(10), false, {}}}, {}, {}, {}};
    auto topUp = topUpAfter(batch(id), Films(2), Millilitres(10));
    ASSERT_TRUE(topUp);
    EXPECT_EQ(topUp->solution, "dev");
    topUp->drawnFrom = bottle;
    run.topUps.push_back(*topUp);
    ASSERT_TRUE(book->process(run, History::at(1)));
    EXPECT_NEAR(wear(id, 1), 0, 1e-9);
    EXPECT_NEAR(batch(bottle, 1).volume.value(), 400, 1e-9);
    ASSERT_TRUE(book->undo());
    EXPECT_NEAR(batch(bottle, 1).volume.value(), 500, 1e-9) << "undone with the run";
}

TEST_F(Replenished, isLoggedWithTheRunAndUndoneWithIt)
{
    const auto id = mix(0, "rep");
    const auto source = mix(0, "rep", 500, "small");
    const double before = batch(id).volume.value();
    ASSERT_TRUE(runAndTopUp(id, 1, 2, source));
    // 1000 − 10 lost; 160 to add, room for 40: 120 poured off first.
    EXPECT_NEAR(batch(id).volume.value(), 1030, 1e-9);
    EXPECT_NEAR(wear(id), 2 * (870.0 / 1030), 1e-9);
    EXPECT_NEAR(batch(source).volume.value(), 340, 1e-9);
    EXPECT_EQ(book->undoable()->what, "run-film");
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(batch(id).volume.value(), before);
    EXPECT_EQ(wear(id), 0);
    EXPECT_NEAR(batch(source).volume.value(), 500, 1e-9);
}

TEST_F(Replenished, comesToRestWhereItIsSaidTo)
{
    const auto id = mix(0, "rep");
    for (int film = 1; film <= 90; ++film) {
        ASSERT_TRUE(runAndTopUp(id, 0.1 * film, 1));
    }
    const double rest = wearAtRest(*batch(id).solution)->value();
    EXPECT_DOUBLE_EQ(rest, 12.5);
    EXPECT_TRUE(restHolds(*batch(id).solution));
    // The wear a film finds, after the last one's topping up, lies one film's worth lower.
    EXPECT_NEAR(wear(id), rest * (1 - 80 / 1030.0), 0.15);
    auto weak = *batch(id).solution;
    weak.replenishPerFilm = Millilitres(25); // rests at 40, and holds 20
    EXPECT_FALSE(restHolds(weak));
    EXPECT_FALSE(wearAtRest(History::developer()));
}

TEST_F(Replenished, refusesATopUpOfABottleThatWasNotInTheRun)
{
    const auto id = mix(0, "rep");
    const auto other = mix(0, "rep", 1000, "hdpe");
    FilmRun request{rolls(1), {{id, {}, {}, false, {}}}, {}, {}, {}};
    request.topUps.push_back({other, Millilitres(10), {}, {}, {}});
    expectRefused<std::string>([&] { return book->process(request, History::at(1)); },
                               ErrorCode::Conflict, "batch");
    request.topUps.front().batch = id;
    request.topUps.front().volume = Millilitres(500); // does not fit: nothing of the run stands
    expectRefused<std::string>([&] { return book->process(request, History::at(1)); },
                               ErrorCode::TooMuch, "volume_ml");
    request.baths.front().oneShot = true;
    expectRefused<std::string>([&] { return book->process(request, History::at(1)); },
                               ErrorCode::Conflict, "batch");
}

} // namespace
} // namespace ullage::ledger
