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

// The tests' days count from 1 June 2026.
StatisticsSum sumOf(Period period = {}) { return {period, monthInUtc}; }

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
    sum.add(dev.batch(100), {});
    sum.add(fix.batch(100), {});
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
        sum.add(one.batch(100), {});
    }
    History open;
    open.mix("dev", 1000);
    open.run(10, 1);
    sum.add(open.batch(100), {});
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
    sum.add(one.batch(100), {});
    EXPECT_DOUBLE_EQ(sum.result().developed.value(), 3);
    EXPECT_EQ(sum.result().solutions[0].ended, 0) << "the end of the period is not in it";
    auto later = sumOf({History::at(30), {}});
    later.add(one.batch(100), {});
    EXPECT_TRUE(later.result().months.empty());
    EXPECT_EQ(later.result().solutions[0].ended, 1);
}

TEST(Statistics, AFilmCostsWhatItsBottleCost)
{
    Packet packet{.id = "p", .solution = "dev", .makes = chemistry::Millilitres(5000)};
    EXPECT_FALSE(priceOf(packet, chemistry::Millilitres(1000))) << "no cost, no price";
    packet.cost = Decimal::from("20");
    packet.currency = "EUR";
    EXPECT_DOUBLE_EQ(priceOf(packet, chemistry::Millilitres(1000))->amount, 4);
    EXPECT_DOUBLE_EQ(priceOf(packet, chemistry::Millilitres(9000))->amount, 20) << "no more";
    packet.makes.reset();
    EXPECT_DOUBLE_EQ(priceOf(packet, chemistry::Millilitres(1000))->amount, 20);

    auto sum = sumOf();
    for (const double films : {8.0, 2.0}) {
        History one;
        one.mix("dev", 1000);
        one.run(10, films);
        one.add(20, Discarded{});
        sum.add(one.batch(100), Price{4, "EUR"});
    }
    History unpriced;
    unpriced.mix("dev", 1000);
    unpriced.run(10, 5);
    unpriced.add(20, Discarded{});
    sum.add(unpriced.batch(100), {});
    History open; // its films are not known yet
    open.mix("dev", 1000);
    open.run(10, 1);
    sum.add(open.batch(100), Price{4, "EUR"});
    History other;
    other.mix("dev", 1000);
    other.run(10, 4);
    other.add(20, Discarded{});
    sum.add(other.batch(100), Price{10, "GBP"});
    const auto costs = sum.result().costs;
    ASSERT_EQ(costs.size(), 2u) << "currencies are not added up";
    EXPECT_EQ(costs[0].currency, "GBP");
    EXPECT_DOUBLE_EQ(costs[0].perFilm, 2.5);
    EXPECT_EQ(costs[1].currency, "EUR");
    EXPECT_DOUBLE_EQ(costs[1].perFilm, 0.8); // 8 for 10
    EXPECT_EQ(costs[1].batches, 2);
}

} // namespace ullage::ledger
