// Every reason, on both sides of its limit.
#include "core/ledger/verdict.h"

#include "core/chemistry/pace.h"
#include "tests/core/ledger/ledger_kit.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

bool has(const Assessment& so, ReasonCode code)
{
    return std::any_of(so.reasons.begin(), so.reasons.end(),
                       [&](const Reason& reason) { return reason.code == code; });
}

double number(const Assessment& so, ReasonCode code, std::string_view name)
{
    for (const Reason& reason : so.reasons) {
        if (reason.code == code) {
            return reason.number(name);
        }
    }
    ADD_FAILURE() << "no such reason";
    return -1;
}

History developer(double volume = 1000)
{
    History history;
    history.mix("dev", volume);
    return history;
}
History fixer()
{
    History history;
    history.mix("fixer", 1000);
    return history;
}

TEST(Verdict, freshIsGoodWithoutReasons)
{
    const auto so = assess(developer().batch(1));
    EXPECT_EQ(so.verdict, Verdict::Good);
    EXPECT_TRUE(so.reasons.empty());
    EXPECT_EQ(so.age, Days(1));
    EXPECT_EQ(so.wearFactor, 1);
    EXPECT_DOUBLE_EQ(so.filmsLeft->value(), 10);
    EXPECT_EQ(so.meanLoad, Films(1));
}

TEST(Verdict, aLiquidHasNothingToDissolve)
{
    auto liquid = developer().batch(0.01);
    auto solution = *liquid.solution;
    solution.form = formulary::Form::Liquid;
    liquid.solution = std::make_shared<const formulary::Solution>(solution);
    EXPECT_TRUE(knownClear(liquid));
    EXPECT_EQ(assess(liquid).shown, Verdict::Good);
    EXPECT_FALSE(assess(liquid).lookAt);
}

TEST(Verdict, whatIsNotKnownToBeClearRests)
{
    auto history = developer();
    const double minute = 1.0 / 1440;
    auto so = assess(history.batch(12 * minute));
    EXPECT_EQ(so.shown, Verdict::Resting);
    EXPECT_EQ(so.verdict, Verdict::Good) << "the report's verdict is one of the four";
    ASSERT_TRUE(so.lookAt);
    EXPECT_EQ(*so.lookAt, history.at(0) + std::chrono::minutes(20)) << "every ten minutes";
    so = assess(history.batch(2));
    EXPECT_EQ(so.shown, Verdict::Resting) << "time alone clears nothing";
    EXPECT_FALSE(so.lookAt) << "but nobody stands beside it any more";
    history.add(2, Dissolved{});
    so = assess(history.batch(2));
    EXPECT_EQ(so.shown, Verdict::Good);
    EXPECT_FALSE(so.lookAt);
}

TEST(Verdict, filmOrATestShowsThatItIsClear)
{
    auto run = developer();
    run.run(1, 1);
    EXPECT_EQ(assess(run.batch(1)).shown, Verdict::Good);
    auto looked = developer();
    looked.add(1, Looked{true, "leader test"});
    EXPECT_EQ(assess(looked.batch(1)).shown, Verdict::Good);
    auto tested = fixer();
    tested.add(1, ClearingTested{Seconds(60), Celsius(20)});
    EXPECT_EQ(assess(tested.batch(1)).shown, Verdict::Good);
}

TEST(Verdict, restingHidesNothingGraver)
{
    auto spoilt = developer();
    spoilt.add(1, Contaminated{""});
    EXPECT_EQ(assess(spoilt.batch(1)).shown, Verdict::Discard);
    EXPECT_EQ(assess(fixer().batch(31)).shown, Verdict::TestFirst);
    auto little = developer(100); // one film left: near its end, and not clear yet
    EXPECT_EQ(assess(little.batch(1)).verdict, Verdict::NearItsEnd);
    EXPECT_EQ(assess(little.batch(1)).shown, Verdict::Resting);
}

TEST(Verdict, contaminatedOrFailedIsDiscard)
{
    auto dirty = developer();
    dirty.add(1, Contaminated{"fixer"});
    EXPECT_EQ(assess(dirty.batch(1)).reasons.front().code, ReasonCode::Contaminated);
    EXPECT_EQ(assess(dirty.batch(1)).verdict, Verdict::Discard);
    auto failed = developer();
    const auto look = failed.add(1, Looked{false, "colour"});
    failed.add(2, Looked{true, "colour"});
    EXPECT_EQ(assess(failed.batch(2)).verdict, Verdict::Discard);
    EXPECT_TRUE(has(assess(failed.batch(2)), ReasonCode::TestFailed));
    failed.add(3, Voided{look, "wrong bottle"});
    EXPECT_EQ(assess(failed.batch(3)).verdict, Verdict::Good);
    auto strip = developer();
    strip.add(1, StripTested{{}, {}, false});
    EXPECT_TRUE(has(assess(strip.batch(1)), ReasonCode::TestFailed));
}

TEST(Verdict, capacityHasThreeLimits)
{
    auto history = developer();
    history.run(0, 7.99);
    EXPECT_FALSE(has(assess(history.batch(0)), ReasonCode::CapacityNear));
    history.run(0, 0.01); // 8 films/L: 80 %
    auto so = assess(history.batch(0));
    EXPECT_TRUE(has(so, ReasonCode::CapacityNear));
    EXPECT_EQ(so.verdict, Verdict::NearItsEnd);
    EXPECT_NEAR(number(so, ReasonCode::CapacityNear, "wear"), 8, 1e-12);
    EXPECT_NEAR(so.wearFactor, 1.8, 1e-12);

    history.run(0, 1.75);
    so = assess(history.batch(0)); // a quarter film left exactly
    EXPECT_FALSE(has(so, ReasonCode::LessThanQuarterFilm));
    EXPECT_EQ(so.verdict, Verdict::NearItsEnd);
    history.run(0, 0.01);
    so = assess(history.batch(0));
    EXPECT_TRUE(has(so, ReasonCode::LessThanQuarterFilm));
    EXPECT_FALSE(has(so, ReasonCode::CapacityReached));
    EXPECT_EQ(so.verdict, Verdict::Discard);
    EXPECT_NEAR(number(so, ReasonCode::LessThanQuarterFilm, "films_left"), 0.24, 1e-9);
    history.run(0, 0.24);
    so = assess(history.batch(0));
    EXPECT_TRUE(has(so, ReasonCode::CapacityReached));
    EXPECT_EQ(number(so, ReasonCode::CapacityReached, "capacity"), 10);
    EXPECT_EQ(so.filmsLeft, Films(0));
}

TEST(Verdict, thirdsAddUpToTheCapacity)
{
    auto history = developer();
    for (int i = 0; i < 15; ++i) {
        history.add(0, Processed{Load{{{"135-24", 1}}, {}}, {}, Millilitres(0), false, {}});
    }
    EXPECT_TRUE(has(assess(history.batch(0)), ReasonCode::CapacityReached));
}

TEST(Verdict, filmsLeftAgainstTheMeanLoad)
{
    auto history = developer();
    history.run(0, 3);
    history.run(0, 3.01);
    auto so = assess(history.batch(0)); // 3.99 left, mean 3.005
    EXPECT_FALSE(has(so, ReasonCode::FilmsFew));
    EXPECT_DOUBLE_EQ(so.meanLoad.value(), 3.005);
    auto even = developer();
    even.run(0, 5);
    so = assess(even.batch(0)); // 5 left, mean 5
    EXPECT_TRUE(has(so, ReasonCode::FilmsFew));
    EXPECT_EQ(so.verdict, Verdict::NearItsEnd);
    EXPECT_EQ(number(so, ReasonCode::FilmsFew, "mean_load"), 5);
    // A small bottle, no load yet: the mean counts as 1.
    EXPECT_TRUE(has(assess(developer(100).batch(0)), ReasonCode::FilmsFew));
    EXPECT_FALSE(has(assess(developer(101).batch(0)), ReasonCode::FilmsFew));
}

TEST(Verdict, calendarIsHard)
{
    History history;
    auto lasting = History::developer();
    lasting.id = "six-months";
    lasting.keeping.half.reset();
    history.formulary.add(lasting);
    history.mix("six-months", 1030);
    const Instant six = addMonths(history.at(0), 6);
    // A bottle fuller than the reference keeps longer by the model; the calendar stays.
    auto so = assess(history.batchAt(six));
    EXPECT_EQ(so.keepsUntil, six);
    EXPECT_NE(so.verdict, Verdict::Discard);
    so = assess(history.batchAt(six + std::chrono::hours(36)));
    EXPECT_EQ(so.verdict, Verdict::Discard);
    EXPECT_DOUBLE_EQ(number(so, ReasonCode::PastKeeping, "days_over"), 1.5);
    EXPECT_EQ(number(so, ReasonCode::PastKeeping, "full_days"), 182.625);
    EXPECT_FALSE(has(so, ReasonCode::StandingSpent)); // said already, by the calendar
}

TEST(Verdict, silverLimitIsTheUsersChoice)
{
    const auto judged = [](double films, std::optional<double> limit) {
        History history;
        auto own = History::fixer();
        own.id = "own";
        if (limit) {
            own.silverLimit = GramsPerLitre(*limit);
        }
        history.formulary.add(own);
        history.mix("own", 1000);
        history.run(0, films);
        return assess(history.batch(0));
    };
    EXPECT_FALSE(has(judged(4, {}), ReasonCode::SilverOverLimit));
    EXPECT_FALSE(has(judged(4, 0.6), ReasonCode::SilverOverLimit)); // at it, not over it
    const auto over = judged(4.01, 0.6);
    EXPECT_EQ(over.verdict, Verdict::Discard);
    EXPECT_NEAR(number(over, ReasonCode::SilverOverLimit, "silver"), 0.6015, 1e-12);
}

TEST(Verdict, clearingTimeDoubledIsDiscard)
{
    const auto judged = [](double seconds) {
        auto history = fixer();
        history.add(0, ClearingTested{Seconds(60), Celsius(20)});
        history.run(0, 4);
        history.add(0, ClearingTested{Seconds(seconds), Celsius(20)});
        return assess(history.batch(0));
    };
    EXPECT_EQ(judged(119.9).verdict, Verdict::Good);
    const auto doubled = judged(120);
    EXPECT_EQ(doubled.verdict, Verdict::Discard);
    EXPECT_EQ(number(doubled, ReasonCode::ClearingDoubled, "last_s"), 120);
    EXPECT_EQ(number(doubled, ReasonCode::ClearingDoubled, "fresh_s"), 60);
}

TEST(Verdict, standingHasTwoLimits)
{
    const auto history = developer(500);
    const auto spent = *assess(history.batch(0)).spentAt;
    EXPECT_EQ(assess(history.batch(0)).discardBy, spent);
    const auto before = assess(history.batchAt(spent - std::chrono::minutes(1)));
    EXPECT_EQ(before.verdict, Verdict::NearItsEnd);
    EXPECT_TRUE(has(before, ReasonCode::StandingNear));
    const auto after = assess(history.batchAt(spent + std::chrono::minutes(1)));
    EXPECT_EQ(after.verdict, Verdict::TestFirst);
    EXPECT_NEAR(number(after, ReasonCode::StandingSpent, "standing"), 1, 1e-4);
    EXPECT_NEAR(*after.agePart + *after.airPart, *after.standingUsed, 1e-12);
    // Spent already: the date is the moment it rose, not now.
    EXPECT_LT(daysBetween(spent, *after.discardBy).value(), 1e-6);

    // 80 %: the moment is found on the model itself, then judged on both sides.
    double low = 0;
    double high = daysBetween(history.at(0), spent).value();
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2;
        (*history.batch(middle).standingUsed() < 0.8 ? low : high) = middle;
    }
    EXPECT_FALSE(has(assess(history.batch(low - 0.001)), ReasonCode::StandingNear));
    EXPECT_TRUE(has(assess(history.batch(high + 0.001)), ReasonCode::StandingNear));
}

TEST(Verdict, fourteenDaysToTheDateAreNear)
{
    const auto history = developer();
    const auto discardBy = *assess(history.batch(0)).discardBy;
    const auto so = assess(history.batchAt(discardBy - std::chrono::hours(24 * 14)));
    EXPECT_TRUE(has(so, ReasonCode::DiscardSoon));
    EXPECT_NEAR(number(so, ReasonCode::DiscardSoon, "days"), 14, 1e-6);
    EXPECT_FALSE(has(assess(history.batchAt(discardBy - std::chrono::hours(24 * 14 + 1))),
                     ReasonCode::DiscardSoon));
}

TEST(Verdict, fixersAskForAClearingTest)
{
    auto history = fixer();
    EXPECT_FALSE(has(assess(history.batch(29.99)), ReasonCode::ClearingTestDue));
    EXPECT_TRUE(has(assess(history.batch(30)), ReasonCode::ClearingTestDue));
    EXPECT_EQ(assess(history.batch(30)).verdict, Verdict::TestFirst);
    history.run(1, 4.99);
    EXPECT_FALSE(has(assess(history.batch(1)), ReasonCode::ClearingTestDue));
    history.run(1, 0.01);
    auto so = assess(history.batch(1));
    EXPECT_TRUE(has(so, ReasonCode::ClearingTestDue));
    EXPECT_NEAR(number(so, ReasonCode::ClearingTestDue, "films_since"), 5, 1e-9);
    EXPECT_EQ(number(so, ReasonCode::ClearingTestDue, "days_since"), 1);
    history.add(2, ClearingTested{Seconds(60), Celsius(20)});
    EXPECT_FALSE(has(assess(history.batch(31.99)), ReasonCode::ClearingTestDue));
    EXPECT_TRUE(has(assess(history.batch(32)), ReasonCode::ClearingTestDue));
    EXPECT_FALSE(has(assess(developer().batch(40)), ReasonCode::ClearingTestDue));
}

TEST(Verdict, aPassedTestClearsTheModelButNeverDiscard)
{
    auto history = developer(500);
    const double spent = daysBetween(history.at(0), *assess(history.batch(0)).spentAt).value();
    history.add(spent + 1, Looked{true, "leader test"});
    const auto so = assess(history.batch(spent + 1));
    EXPECT_FALSE(has(so, ReasonCode::StandingSpent));
    EXPECT_EQ(so.verdict, Verdict::NearItsEnd); // s ≥ 0.8 still is
    EXPECT_TRUE(has(assess(history.batch(spent + 15.01)), ReasonCode::StandingSpent));
    history.add(spent + 2, Contaminated{""});
    history.add(spent + 3, Looked{true, "colour"});
    EXPECT_EQ(assess(history.batch(spent + 3)).verdict, Verdict::Discard);
}

TEST(Verdict, reasonsAreListedGravestFirst)
{
    auto history = developer(500);
    history.run(1, 5); // 10 films/L
    history.add(150, Contaminated{""});
    const auto so = assess(history.batch(150));
    std::vector<ReasonCode> codes;
    for (const Reason& reason : so.reasons) {
        codes.push_back(reason.code);
    }
    EXPECT_EQ(codes, (std::vector{ReasonCode::Contaminated, ReasonCode::CapacityReached,
                                  ReasonCode::LessThanQuarterFilm, ReasonCode::StandingSpent,
                                  ReasonCode::CapacityNear, ReasonCode::FilmsFew,
                                  ReasonCode::StandingNear, ReasonCode::DiscardSoon}));
    EXPECT_EQ(code(ReasonCode::LessThanQuarterFilm), "less-than-quarter-film");
    EXPECT_EQ(code(ReasonCode::DiscardSoon), "discard-soon");
    EXPECT_EQ(code(Verdict::NearItsEnd), "near-its-end");
    EXPECT_EQ(verdictOf(ReasonCode::SilverOverLimit), Verdict::Discard);
    EXPECT_EQ(verdictOf(ReasonCode::StandingSpent), Verdict::TestFirst);
    EXPECT_EQ(verdictOf(ReasonCode::HistoryUnknown), Verdict::TestFirst);
    EXPECT_EQ(verdictOf(ReasonCode::CapacityNear), Verdict::NearItsEnd);
}

TEST(Verdict, withoutFiguresThereIsNothingToJudgeBy)
{
    History history;
    formulary::Solution plain;
    plain.id = "plain";
    plain.name = "Stop bath";
    history.formulary.add(plain);
    history.mix("plain", 1000);
    history.run(1, 100);
    const auto so = assess(history.batch(900));
    EXPECT_EQ(so.verdict, Verdict::Good);
    EXPECT_FALSE(so.filmsLeft || so.standingUsed || so.discardBy || so.lastFilm || so.clearing);
}

} // namespace
} // namespace ullage::ledger
