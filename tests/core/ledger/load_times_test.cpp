#include "core/ledger/load_times.h"

#include "core/chemistry/films.h"
#include "tests/core/ledger/ledger_kit.h"

#include <algorithm>
#include <cmath>

namespace ullage::ledger
{

namespace
{

using chemistry::Celsius;
using chemistry::FilmsPerLitre;
using chemistry::Millilitres;
using chemistry::Seconds;
using chemistry::TimeAtTemperature;

const std::vector<TimeAtTemperature> kPairs{{Celsius(20), Seconds(600)},
                                            {Celsius(24), Seconds(420)}};

TEST(LoadTimes, AReckonedTimeIsRoundedInOnePlace)
{
    EXPECT_EQ(inUse(Seconds(741.2)), Seconds(740)) << "12:20 on every page";
    EXPECT_EQ(inUse(Seconds(742.5)), Seconds(745));
    EXPECT_EQ(inUse(Seconds(3.2)), Seconds(3)) << "never to nothing";
}

TEST(LoadTimes, WhatMustNotFallShortIsRoundedUp)
{
    EXPECT_EQ(inUseAtLeast(Seconds(132)), Seconds(135));
    EXPECT_EQ(inUseAtLeast(Seconds(135)), Seconds(135));
    EXPECT_EQ(inUseAtLeast(Seconds(135.000001)), Seconds(135)) << "a product's last digits";
    EXPECT_EQ(inUseAtLeast(Seconds(3.2)), Seconds(4));
}

TEST(LoadTimes, ADevelopingTimeIsTheProductOfItsFactors)
{
    History history;
    history.mix("dev", 1000);
    history.run(1, 4);
    history.add(2, StripTested{{}, 1.1, true});
    const Batch batch = history.batch(3);
    const auto so = assess(batch);
    const auto time = developingTime(batch, so, kPairs, Celsius(21));
    ASSERT_TRUE(time);
    EXPECT_EQ(time->nearest, kPairs[0]);
    EXPECT_NEAR(time->temperature, std::pow(0.7, 0.25), 1e-12) << "straight in the logarithm";
    EXPECT_NEAR(time->wear, 1.4, 1e-12);
    EXPECT_NEAR(time->strip, 1.1, 1e-12);
    EXPECT_NEAR(time->time.value(), 600 * std::pow(0.7, 0.25) * 1.4 * 1.1, 1e-9);
    EXPECT_NEAR(bottleFactor(batch, so), 1.4 * 1.1, 1e-12);
    EXPECT_NEAR(time->base.time.value() * bottleFactor(batch, so), time->time.value(), 1e-9);
}

TEST(LoadTimes, ASingleTimeIsCarriedWithTheRangeOfItsQ10)
{
    History history;
    history.mix("dev", 1000);
    history.run(1, 4);
    const Batch batch = history.batch(3);
    const auto so = assess(batch);
    const std::vector<TimeAtTemperature> one{kPairs[0]};
    const auto time = developingTime(batch, so, one, Celsius(22));
    ASSERT_TRUE(time && time->carried);
    EXPECT_TRUE(time->carried->fromOnePair);
    // An MQ developer, 1.5 to 3.0 published; worn by 1.4.
    EXPECT_NEAR(time->carried->longest.value(), 600 * 1.4 * std::pow(1.5, -0.2), 1e-9);
    EXPECT_NEAR(time->carried->shortest.value(), 600 * 1.4 * std::pow(3.0, -0.2), 1e-9);
    EXPECT_FALSE(developingTime(batch, so, one, Celsius(20))->carried);
    EXPECT_FALSE(developingTime(batch, so, kPairs, Celsius(22))->carried);
    const auto beyond = developingTime(batch, so, kPairs, Celsius(26));
    ASSERT_TRUE(beyond->carried);
    EXPECT_FALSE(beyond->carried->fromOnePair);
}

TEST(LoadTimes, AFixingTimeIsNeverUnderThePackets)
{
    History history;
    auto fixer = History::fixer();
    fixer.id = "quick";
    fixer.fixMin = Seconds(120);
    history.formulary.add(fixer);
    history.mix("quick", 1000);
    history.add(1, ClearingTested{Seconds(30), Celsius(20)});
    const Batch batch = history.batch(1);
    const auto so = assess(batch);
    const auto raised = fixingTime(batch, so, Celsius(10));
    EXPECT_EQ(raised->raisedTo, Seconds(120));
    EXPECT_NEAR(raised->time.value(), 240, 1e-9) << "and the cold on top of that";
    const auto tabular = fixingTime(batch, so, Celsius(20), true);
    EXPECT_EQ(tabular->raisedTo, Seconds(120));
    history.add(2, ClearingTested{Seconds(70), Celsius(20)});
    const Batch later = history.batch(2);
    const auto own = fixingTime(later, assess(later), Celsius(20));
    EXPECT_FALSE(own->raisedTo);
    EXPECT_NEAR(own->time.value(), 140, 1e-9);
}

TEST(LoadTimes, WithoutAFigureOrFarOffItThereIsNoDevelopingTime)
{
    History history;
    history.mix("dev", 1000);
    const Batch batch = history.batch(1);
    const auto so = assess(batch);
    const auto none = developingTime(batch, so, {}, Celsius(20));
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::NoFigure);
    EXPECT_FALSE(developingTime(batch, so, kPairs, Celsius(5)));
}

TEST(LoadTimes, AFixingTimeIsByTheTestsElseByTheFigureElseTheUsers)
{
    History history;
    auto fixer = History::fixer();
    fixer.id = "known";
    fixer.freshClearing = Seconds(40);
    history.formulary.add(fixer);
    history.mix("known", 1000);
    const Batch untested = history.batch(1);
    const auto fresh = fixingTime(untested, assess(untested), Celsius(20));
    ASSERT_TRUE(fresh);
    EXPECT_EQ(fresh->from, ClearingFrom::SolutionFigure);
    EXPECT_EQ(fresh->time, Seconds(80));

    history.add(2, ClearingTested{Seconds(50), Celsius(20)});
    const Batch tested = history.batch(3);
    const auto now = fixingTime(tested, assess(tested), Celsius(10));
    ASSERT_TRUE(now);
    EXPECT_EQ(now->from, ClearingFrom::Tests);
    EXPECT_NEAR(now->time.value(), 50 * 2 * 2, 1e-9) << "twice the time for 10 °C less";
    const auto tabular = fixingTime(tested, assess(tested), Celsius(25), true);
    EXPECT_NEAR(tabular->time.value(), 50 * 3, 1e-9) << "and none taken off for warmth";

    History nothing;
    nothing.mix("fixer", 1000);
    const Batch unknown = nothing.batch(1);
    EXPECT_FALSE(fixingTime(unknown, assess(unknown), Celsius(20)));
    const FixingFactors users = fixingTime(Seconds(300), Celsius(10));
    EXPECT_EQ(users.from, ClearingFrom::Nowhere);
    EXPECT_NEAR(users.time.value(), 600, 1e-9);
}

TEST(LoadTimes, EveryFilmHasItsFactor)
{
    History history;
    history.mix("dev", 1000);
    history.run(1, 2);
    history.run(2, 1.5);
    const Batch batch = history.batch(3);
    const auto films = filmFactors(batch, assess(batch), 40);
    ASSERT_EQ(films.size(), 2U + 2U + 7U) << "6.5 are left of 10";
    using When = FilmFactor::When;
    const std::vector<std::pair<When, double>> expected{
        {When::Done, 1.0},  {When::Done, 1.0},    {When::Done, 1.2},   {When::Done, 1.2},
        {When::Next, 1.35}, {When::ToCome, 1.45}, {When::ToCome, 1.55}};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_EQ(films[i].when, expected[i].first) << i;
        EXPECT_NEAR(films[i].factor, expected[i].second, 1e-12) << i;
    }
    EXPECT_EQ(filmFactors(batch, assess(batch), 3).size(), 3U);
    const auto wears = wearOfFilmsToCome(batch, assess(batch), 40);
    ASSERT_EQ(wears.size(), 8U);
    EXPECT_NEAR(wears.front().value(), batch.wear.value(), 1e-12);
    EXPECT_NEAR(wears.back().value() - wears.front().value(), 7, 1e-12);
}

// A developer topped up for a year has done more than a chart can show: its next film is what it is
// looked at for.
TEST(LoadTimes, OfALongLifeTheLastFilmsAreKept)
{
    History history;
    history.mix("dev", 1000);
    for (int week = 1; week <= 25; ++week) {
        history.run(week, 2, {}, 20);
        history.add(week + 0.1, ToppedUp{Millilitres(20), {}, {}});
        history.add(week + 0.2, Drawn{Millilitres(200), {}, {}});
        history.add(week + 0.3, ToppedUp{Millilitres(200), {}, {}});
    }
    const Batch batch = history.batch(26);
    const auto films = filmFactors(batch, assess(batch), 10);
    ASSERT_EQ(films.size(), 10U);
    using When = FilmFactor::When;
    const auto next = std::find_if(films.begin(), films.end(),
                                   [](const auto& one) { return one.when == When::Next; });
    ASSERT_NE(next, films.end());
    EXPECT_EQ(next->film, 51);
    EXPECT_GE(next - films.begin(), 5);
    for (std::size_t i = 0; i < films.size(); ++i) {
        EXPECT_EQ(films[i].film, films[0].film + static_cast<int>(i));
        EXPECT_EQ(films[i].when == When::Done, films[i].film <= 50);
    }
}

TEST(LoadTimes, AnEndedBottleHasNoFilmsToCome)
{
    History history;
    history.mix("dev", 1000);
    history.run(1, 2);
    history.add(2, Discarded{});
    const Batch batch = history.batch(3);
    EXPECT_TRUE(wearOfFilmsToCome(batch, assess(batch), 40).empty());
    EXPECT_EQ(filmFactors(batch, assess(batch), 40).size(), 2U);
}

TEST(LoadTimes, AFilmsFactorGoesByTheFilmsBeforeIt)
{
    const auto developer = *History().formulary.solution("dev");
    EXPECT_NEAR(factorOfFilm(developer, 1, chemistry::Millilitres(1000)), 1, 1e-12);
    EXPECT_NEAR(factorOfFilm(developer, 10, chemistry::Millilitres(1000)), 1.9, 1e-12);
    EXPECT_NEAR(factorOfFilm(developer, 10, chemistry::Millilitres(500)), 2.8, 1e-12);
}

TEST(LoadTimes, AClearingTestIsJudgedAsTheBookWillJudgeIt)
{
    History history;
    history.mix("fixer", 1000);
    history.add(1, ClearingTested{Seconds(40), Celsius(20)});
    const Batch before = history.batch(2);
    const TestOutlook outlook = outlookOf(before, Seconds(60), Celsius(10));
    EXPECT_NEAR(outlook.at20.value(), 30, 1e-9);
    history.add(2, ClearingTested{Seconds(60), Celsius(10)});
    const Batch batch = history.batch(3);
    const auto so = assess(batch);
    EXPECT_EQ(outlook.clearing.now, so.clearing->now);
    EXPECT_EQ(outlook.clearing.fresh, so.clearing->fresh);
    EXPECT_EQ(outlook.fixing, fixingTime(batch, so, Celsius(20))->time);
}

} // namespace
} // namespace ullage::ledger
