// When the last film is to be expected.
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

History developer(double volume = 1000)
{
    History history;
    history.mix("dev", volume);
    return history;
}

TEST(LastFilm, countsLoadsSinceTheFirst)
{
    auto history = developer();
    EXPECT_EQ(assess(history.batch(0)).lastFilm->loads, 10);
    // No load yet: Gamma(1, 30 d) alone. One load would have a median of 30 days.
    history.run(10, 2);
    history.run(20, 2);
    const auto so = assess(history.batch(30)); // k = 2 in 20 days, 6 films in loads of 2
    ASSERT_TRUE(so.lastFilm);
    EXPECT_EQ(so.lastFilm->loads, 3);
    const Pace pace{2, Days(20)};
    EXPECT_NEAR(so.lastFilm->early.value(), waitFor(3, pace, 0.1).value(), 1e-9);
    EXPECT_NEAR(so.lastFilm->median.value(), waitFor(3, pace, 0.5).value(), 1e-9);
    EXPECT_NEAR(so.lastFilm->late.value(), waitFor(3, pace, 0.9).value(), 1e-9);
    EXPECT_NEAR(*so.lastFilm->chanceFilmsFirst,
                chanceWithin(3, pace, daysBetween(history.at(30), *so.discardBy)), 1e-9);
}

TEST(LastFilm, looksBackAHundredAndEightyDays)
{
    History history;
    auto slow = History::developer();
    slow.id = "slow";
    slow.keeping = {Days(730.5), {}, {}};
    history.formulary.add(slow);
    history.mix("slow", 1000);
    history.run(1, 1);
    history.run(100, 1);
    history.run(250, 1);
    const auto so = assess(history.batch(300)); // since day 120: one load in 180 days
    EXPECT_NEAR(so.lastFilm->median.value(), waitFor(7, {1, Days(180)}, 0.5).value(), 1e-9);
}

TEST(LastFilm, nothingLeftNoForecast)
{
    auto history = developer();
    history.run(1, 10);
    EXPECT_FALSE(assess(history.batch(1)).lastFilm);
}

} // namespace
} // namespace ullage::ledger
