#include "core/ledger/air_advice.h"

#include "tests/core/ledger/ledger_kit.h"

#include <gtest/gtest.h>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

const Help* find(const AirAdvice& advice, Remedy remedy)
{
    for (const Help& help : advice.helps) {
        if (help.remedy == remedy) {
            return &help;
        }
    }
    return nullptr;
}

TEST(RouteShares, addUpToAllOfIt)
{
    History history;
    history.mix("dev", 1000, "hdpe");
    history.add(3, StoodOpen{Hours(1), SquareCentimetres(60)});
    const auto batch = history.batch(60);
    const auto shares = routeShares(batch);
    double sum = 0;
    for (std::size_t i = 0; i < shares.size(); ++i) {
        sum += shares[i].share;
        if (i > 0) {
            EXPECT_GE(shares[i - 1].taken, shares[i].taken);
        }
    }
    EXPECT_NEAR(sum, 1, 1e-12);
    EXPECT_EQ(shares[0].route, Route::Wall);
    EXPECT_EQ(code(shares[0].route), "wall");
    History full;
    full.mix("dev", 500);
    EXPECT_EQ(routeShares(full.batch(30))[0].route, Route::BottleAir);
}

// What advice says must be what happens when one follows it: the same deed done as an event.
TEST(AirAdvice, isWhatTheModelSaysOfTheDeedItself)
{
    History history;
    history.mix("dev", 450, "hdpe");
    history.run(5, 1);
    const double day = 10;
    const auto batch = history.batch(day);
    const auto advice = airAdvice(
        batch, std::vector{history.formulary.vessel("glass"), history.formulary.vessel("small")});
    ASSERT_TRUE(advice);
    EXPECT_EQ(advice->discardBy, *assess(batch).discardBy);
    EXPECT_EQ(advice->helps.size(), 4U);

    const auto after = [&](Happening what, std::optional<double> air = {}) {
        History changed = history;
        changed.add(day, std::move(what), air);
        return *assess(changed.batch(day)).discardBy;
    };
    EXPECT_EQ(find(*advice, Remedy::Squeeze)->discardBy, after(Opened{}, 0));
    EXPECT_EQ(find(*advice, Remedy::SmallerBottle)->discardBy, after(Moved{"small"}));
    EXPECT_EQ(find(*advice, Remedy::SmallerBottle)->vessel->id, "small");
    EXPECT_EQ(find(*advice, Remedy::Glass)->discardBy, after(Moved{"glass"}));
    EXPECT_EQ(find(*advice, Remedy::TopUp)->discardBy, after(ToppedUp{Millilitres(580), {}}));
    EXPECT_EQ(find(*advice, Remedy::TopUp)->topUp, Millilitres(580));
    for (std::size_t i = 0; i < advice->helps.size(); ++i) {
        const Help& help = advice->helps[i];
        EXPECT_NEAR(help.gained.value(), daysBetween(advice->discardBy, help.discardBy).value(),
                    1e-12);
        if (i > 0) {
            EXPECT_GE(advice->helps[i - 1].gained, help.gained);
        }
    }
    // Half full, the fresh air of pouring over costs more than the plastic wall.
    EXPECT_LT(find(*advice, Remedy::Glass)->gained, Days(0));
    History full;
    full.mix("dev", 1020, "hdpe");
    EXPECT_GT(find(*airAdvice(full.batch(1), {}), Remedy::Glass)->gained, Days(0));
    EXPECT_EQ(code(Remedy::SmallerBottle), "smaller-bottle");
}

TEST(AirAdvice, offersOnlyWhatApplies)
{
    History full;
    full.mix("dev", 1030);
    const auto advice = airAdvice(full.batch(1), std::vector{full.formulary.vessel("small")});
    EXPECT_TRUE(advice->helps.empty()); // no air, too much for the small one, glass already
    History squeezed;
    squeezed.mix("dev", 600, "squeezed");
    EXPECT_FALSE(find(*airAdvice(squeezed.batch(1), {}), Remedy::Squeeze));
}

TEST(AirAdvice, openingCanCostMoreThanItGains)
{
    // After a month the air is used up; pouring into a bottle hardly smaller brings fresh air.
    History history;
    history.mix("dev", 500);
    history.formulary.add(History::vessel("hardly", 1000, formulary::Material::Glass, false));
    const auto advice =
        airAdvice(history.batch(25), std::vector{history.formulary.vessel("hardly")});
    EXPECT_LT(find(*advice, Remedy::SmallerBottle)->gained, Days(0));
}

TEST(AirAdvice, toppingUpRevivesButNotPastTheCalendar)
{
    History history;
    history.mix("dev", 300);
    const auto spent = history.batch(80);
    ASSERT_TRUE(spent.spentSince());
    const auto advice = airAdvice(spent, {});
    const auto* topUp = find(*advice, Remedy::TopUp);
    EXPECT_GT(topUp->gained, Days(0));
    EXPECT_LE(topUp->discardBy, addMonths(history.at(0), 6));
}

TEST(AirAdvice, nothingWithoutFiguresOrAfterTheEnd)
{
    History plain;
    plain.mix("fixer", 500);
    EXPECT_FALSE(airAdvice(plain.batch(1), {}));
    History gone;
    gone.mix("dev", 500);
    gone.add(1, Discarded{""});
    EXPECT_FALSE(airAdvice(gone.batch(2), {}));
    History found;
    found.add(0, Mixed{"dev", "glass", Millilitres(500), {}, {}, true});
    EXPECT_FALSE(airAdvice(found.batch(2), {})) << "nobody knows when it was mixed";
}

} // namespace
} // namespace ullage::ledger
