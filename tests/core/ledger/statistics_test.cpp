// Statistics on small histories, with figures reckoned by hand.
#include "core/ledger/statistics.h"

#include "tests/core/ledger/ledger_kit.h"

namespace ullage::ledger
{

namespace
{

using std::chrono::year_month;

year_month monthInUtc(chemistry::Instant at)
{
    const std::chrono::year_month_day day(std::chrono::floor<std::chrono::days>(at));
    return day.year() / day.month();
}

chemistry::Instant startInUtc(std::chrono::year_month_day day)
{
    return std::chrono::sys_days(day);
}

// The tests' days count from 1 June 2026.
StatisticsSum sumOf(Period period = {}, bool bottles = false)
{
    return {period, {monthInUtc, startInUtc}, bottles};
}

Cost costing(const char* amount, const char* currency = "EUR")
{
    Cost cost;
    cost.money.add(*Decimal::from(amount), currency);
    return cost;
}
const Cost kUnknownCost{{}, false};

std::string eurOf(const Cost& cost)
{
    const auto sums = cost.money.sums();
    return sums.contains("EUR") ? sums.at("EUR").text() : std::string();
}

Purchase purchase(const char* day, const char* price)
{
    Purchase made;
    made.bought = day;
    made.currency = "EUR";
    if (price) {
        made.price = Decimal::from(price);
    }
    return made;
}

// So many films each, by persons named so; discarded at the end.
Batch endedWith(const std::vector<std::pair<const char*, double>>& loads, double ends)
{
    History history;
    history.mix("dev", 1000);
    double day = 1;
    for (const auto& [who, films] : loads) {
        history.run(day++, films);
        history.entered.back().by = who;
    }
    history.add(ends, Discarded{});
    return history.batch(100);
}

EndCause causeOf(const History& history, double days)
{
    const Batch batch = history.batch(days);
    return endCause(batch, assess(batch)).value();
}

} // namespace

TEST(Statistics, FilmsByMonthAreThoseDeveloped)
{
    History dev;
    dev.mix("dev", 1000);
    dev.run(0, 2);  // 1 June
    dev.run(29, 3); // 30 June
    dev.run(95, 1); // 4 September
    History fix;
    fix.mix("fixer", 1000);
    fix.run(29, 5); // not counted again
    auto sum = sumOf();
    sum.add(dev.batch(100), kUnknownCost);
    sum.add(fix.batch(100), kUnknownCost);
    const Statistics so = sum.result();
    ASSERT_EQ(so.months.size(), 4u) << "months without film between are there";
    EXPECT_EQ(so.months[0].month, std::chrono::year(2026) / 6);
    EXPECT_DOUBLE_EQ(so.months[0].films.value(), 5);
    EXPECT_DOUBLE_EQ(so.months[1].films.value(), 0);
    EXPECT_DOUBLE_EQ(so.months[2].films.value(), 0);
    EXPECT_DOUBLE_EQ(so.months[3].films.value(), 1);
    EXPECT_DOUBLE_EQ(so.developed.value(), 6);
    ASSERT_EQ(so.solutions.size(), 2u);
    EXPECT_EQ(so.solutions[0].solution, "dev");
    EXPECT_DOUBLE_EQ(so.solutions[0].films.value(), 6);
    EXPECT_DOUBLE_EQ(so.solutions[1].films.value(), 5);
    EXPECT_EQ(so.solutions[0].ended, 0);
    EXPECT_EQ(so.ends, (std::array<int, kEndCauses>{}));
}

TEST(Statistics, ABottleEndsForTheGravestReasonAgainstIt)
{
    History films;
    films.mix("dev", 1000);
    films.run(10, 10); // all it can do
    films.add(11, Discarded{});
    EXPECT_EQ(causeOf(films, 20), EndCause::Films);

    History usedUp;
    usedUp.mix("dev", 1000);
    usedUp.add(5, Processed{Load{{{"120", 1}}, {}}, {}, chemistry::Millilitres(0), true, {}});
    EXPECT_EQ(causeOf(usedUp, 20), EndCause::Films) << "one-shot";

    History time;
    time.mix("dev", 1000);
    time.run(10, 1);
    time.add(200, Discarded{}); // keeps 182.6 days
    EXPECT_EQ(causeOf(time, 250), EndCause::Time);

    History test;
    test.mix("dev", 1000);
    test.run(10, 10);
    test.add(11, Looked{false, "colour"});
    test.add(12, Discarded{});
    EXPECT_EQ(causeOf(test, 20), EndCause::Test);

    History accident;
    accident.mix("dev", 1000);
    accident.add(11, Looked{false, "colour"});
    accident.add(12, Contaminated{"fixer"});
    accident.add(12, Discarded{});
    EXPECT_EQ(causeOf(accident, 20), EndCause::Accident);

    History early;
    early.mix("dev", 1000);
    early.run(2, 1);
    early.add(3, Discarded{});
    EXPECT_EQ(causeOf(early, 20), EndCause::Early);

    History open;
    open.mix("dev", 1000);
    EXPECT_FALSE(endCause(open.batch(5), assess(open.batch(5))));
}

TEST(Statistics, LivesAreThoseThatEnded)
{
    auto sum = sumOf();
    for (const double days : {20.0, 50.0}) {
        History one;
        one.mix("dev", 1000);
        for (int film = 0; film < days / 10; ++film) {
            one.run(10 + film, 1); // 2 and 5 films of 10
        }
        one.add(days, Discarded{});
        sum.add(one.batch(100), kUnknownCost);
    }
    History open;
    open.mix("dev", 1000);
    open.run(10, 1);
    sum.add(open.batch(100), kUnknownCost);
    const Statistics so = sum.result();
    ASSERT_EQ(so.solutions.size(), 1u);
    EXPECT_EQ(so.solutions[0].ended, 2);
    EXPECT_DOUBLE_EQ(so.solutions[0].meanLife.value(), 35);
    EXPECT_DOUBLE_EQ(so.solutions[0].meanFilms.value(), 3.5);
    EXPECT_DOUBLE_EQ(so.solutions[0].films.value(), 8);
    EXPECT_EQ(so.ends[static_cast<std::size_t>(EndCause::Early)], 2);
}

TEST(Statistics, ThePeriodCutsFilmsAndEnds)
{
    History one;
    one.mix("dev", 1000);
    one.run(10, 2);
    one.run(20, 3);
    one.add(30, Discarded{});
    auto sum = sumOf({History::at(15), History::at(30)});
    sum.add(one.batch(100), kUnknownCost);
    EXPECT_DOUBLE_EQ(sum.result().developed.value(), 3);
    EXPECT_EQ(sum.result().solutions[0].ended, 0) << "the end of the period is not in it";
    auto later = sumOf({History::at(30), {}});
    later.add(one.batch(100), kUnknownCost);
    ASSERT_EQ(later.result().months.size(), 1u) << "that of the end";
    EXPECT_DOUBLE_EQ(later.result().months[0].films.value(), 0);
    EXPECT_EQ(later.result().solutions[0].ended, 1);
}

TEST(Statistics, AFilmCostsWhatItsBottleCost)
{
    auto sum = sumOf();
    for (const double films : {8.0, 2.0}) {
        History one;
        one.mix("dev", 1000);
        one.run(10, films);
        one.add(20, Discarded{});
        sum.add(one.batch(100), costing("4"));
    }
    History unpriced;
    unpriced.mix("dev", 1000);
    unpriced.run(10, 5);
    unpriced.add(20, Discarded{});
    sum.add(unpriced.batch(100), kUnknownCost);
    History open; // its films are not known yet
    open.mix("dev", 1000);
    open.run(10, 1);
    sum.add(open.batch(100), costing("4"));
    History other;
    other.mix("dev", 1000);
    other.run(10, 4);
    other.add(20, Discarded{});
    sum.add(other.batch(100), costing("10", "GBP"));
    History part; // only a part of it is known
    part.mix("dev", 1000);
    part.run(10, 5);
    part.add(20, Discarded{});
    sum.add(part.batch(100), {costing("9").money, false});
    const Statistics so = sum.result();
    const auto& costs = so.costs;
    ASSERT_EQ(costs.size(), 2u) << "currencies are not added up";
    EXPECT_EQ(costs[0].currency, "GBP");
    EXPECT_EQ(costs[0].perFilm.text(), "2.50");
    EXPECT_EQ(costs[1].currency, "EUR");
    EXPECT_EQ(costs[1].perFilm.text(), "0.80"); // 8 for 10
    EXPECT_EQ(costs[1].batches, 2);
    EXPECT_EQ(so.costUnknown, 2) << "what is not known is no part of it, and said";
    EXPECT_EQ(so.inUse, 1);
    EXPECT_EQ(eurOf(so.inUseCost), "4");
}

TEST(Statistics, MonthsAddUpFilmsBottlesAndMoney)
{
    auto sum = sumOf();
    sum.add(endedWith({{"Ada", 2}}, 40), costing("8.40")); // 2 June, ended 11 July
    sum.add(endedWith({{"Ada", 3}}, 45), kUnknownCost);
    sum.add(purchase("2026-06-30", "9.80"));
    sum.add(purchase("2026-06-01", nullptr));
    sum.add(purchase("2026-08-31", "5"));
    sum.add(purchase("", "1"));
    const Statistics so = sum.result();
    ASSERT_EQ(so.months.size(), 3u) << "June to August";
    EXPECT_EQ(so.months[0].mixed, 2);
    EXPECT_EQ(so.months[0].ended, 0);
    EXPECT_EQ(so.months[0].bought.sums().at("EUR").text(), "9.80");
    EXPECT_EQ(so.months[0].unpriced, 1);
    EXPECT_EQ(so.months[1].ended, 2);
    EXPECT_EQ(eurOf(so.months[1].cost), "8.40");
    EXPECT_FALSE(so.months[1].cost.whole);
    EXPECT_TRUE(so.months[2].cost.whole);
    EXPECT_EQ(so.mixed, 2);
    EXPECT_EQ(so.ended, 2);
    EXPECT_EQ(eurOf(so.cost), "8.40");
    EXPECT_EQ(so.bought.sums().at("EUR").text(), "14.80");
    EXPECT_EQ(so.unpriced, 1);
    EXPECT_EQ(so.boughtUndated, 1) << "it belongs to no month";
    EXPECT_EQ(eurOf(so.solutions[0].cost), "8.40");
}

TEST(Statistics, PersonsBearBottlesThatEndedByTheirFilms)
{
    auto sum = sumOf();
    sum.add(endedWith({{"Ada", 2}, {"Ben", 1}, {"", 1}, {"Ada", 2}}, 20), costing("10.00"));
    History open;
    open.mix("dev", 1000);
    open.run(1, 5);
    open.entered.back().by = "Ben";
    sum.add(open.batch(100), costing("7"));
    sum.add(endedWith({}, 10), costing("3.00"));
    const Statistics so = sum.result();
    ASSERT_EQ(so.people.size(), 3u);
    EXPECT_EQ(so.people[0].person, "Ben");
    EXPECT_DOUBLE_EQ(so.people[0].films.value(), 6);
    EXPECT_EQ(so.people[1].person, "Ada");
    EXPECT_EQ(so.people[2].person, "") << "whom nobody named comes last";
    // 10 by 2, 1, 1 and 2 of 6, each end rounded: 3.33, 1.67, 1.67, 3.33.
    EXPECT_EQ(eurOf(so.people[0].cost), "1.67");
    EXPECT_EQ(eurOf(so.people[1].cost), "6.66");
    EXPECT_EQ(eurOf(so.people[2].cost), "1.67");
    EXPECT_EQ(eurOf(so.withoutFilm), "3.00") << "no person bears what did no film";
    Cost all = so.withoutFilm;
    for (const PersonSum& one : so.people) {
        all += one.cost;
    }
    EXPECT_EQ(all, so.cost);
}

TEST(Statistics, ListsOfBottlesAreKeptWhereAskedFor)
{
    const Batch batch = endedWith({{"", 2}}, 40);
    auto sum = sumOf({History::at(30), {}}, true);
    sum.add(batch, costing("8.40"));
    const Statistics so = sum.result();
    EXPECT_TRUE(so.mixedBottles.empty()) << "before the period";
    ASSERT_EQ(so.endedBottles.size(), 1u);
    EXPECT_EQ(so.endedBottles[0].batch, "b");
    EXPECT_DOUBLE_EQ(so.endedBottles[0].films.value(), 2);
    EXPECT_EQ(eurOf(so.endedBottles[0].cost), "8.40");
    auto without = sumOf();
    without.add(batch, costing("8.40"));
    EXPECT_TRUE(without.result().endedBottles.empty());
}

} // namespace ullage::ledger
