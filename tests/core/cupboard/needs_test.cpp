#include "core/cupboard/needs.h"

#include "core/cupboard/needs_request.h"
#include "tests/core/ledger/ledger_kit.h"

namespace ullage::cupboard
{
namespace
{

using chemistry::Days;
using chemistry::Films;
using chemistry::FilmsPerLitre;
using chemistry::Instant;
using chemistry::Millilitres;
using ledger::Decimal;
using ledger::History;

Instant day(double days) { return History::at(days); }

// What is expected of each is worked out by hand beside it.
class NeedsTest : public testing::Test
{
protected:
    PlanRequest request;

    NeedsTest()
    {
        request.now = day(0);
        request.until = day(50);
        request.solutions = {{"dev", FilmsPerLitre(10), Days(20), {}, Millilitres(1000)},
                             {"fix", FilmsPerLitre(5), Days(60), {}, Millilitres(1000)}};
        request.developer = "dev";
    }
    void work(double at, double films, const std::string& developer = {})
    {
        request.work.push_back({day(at), Films(films), developer, {}});
    }
    Plan plan()
    {
        auto found = planNeeds(request);
        EXPECT_TRUE(found) << found.error().field;
        return found.value_or(Plan());
    }
};

void expectStretch(const Stretch& is, StretchKind kind, const std::string& of, double from,
                   double to, double films, double volume)
{
    EXPECT_EQ(is.kind, kind);
    EXPECT_EQ(is.of, of);
    EXPECT_EQ(is.from, day(from)) << of;
    EXPECT_EQ(is.to, day(to)) << of;
    EXPECT_NEAR(is.films.value(), films, 1e-9) << of;
    EXPECT_NEAR(is.volume.value(), volume, 1e-9) << of;
}

TEST_F(NeedsTest, aBottleThatExpiresMidwayAndAnOpenedConcentrate)
{
    request.also = {"fix"};
    request.bottles = {{"Dev 1", "dev", Films(6), day(10)}};
    // 300 of 500 mL left of the first, which makes 5 times as much; the second is not opened yet.
    request.packets = {{.item = "p1", .solution = "dev", .makes = Millilitres(1000)},
                       {.item = "c2",
                        .solution = "fix",
                        .liquid = true,
                        .makes = Millilitres(2500),
                        .keepsOpened = Days(15)},
                       {.item = "c1",
                        .solution = "fix",
                        .liquid = true,
                        .makes = Millilitres(2500),
                        .share = 0.6,
                        .until = day(20),
                        .keepsOpened = Days(180),
                        .opened = true}};
    request.bought = {{"dev", Millilitres(1000), Decimal::from("8.40"), "EUR"},
                      {"fix", Millilitres(2500), Decimal::from("9.9"), "EUR"}};
    work(44, 8); // in any order
    work(3, 4);
    work(14, 4);
    work(28, 4);
    const Plan found = plan();
    ASSERT_EQ(found.solutions.size(), 2U);

    // Day 3: Dev 1 does four of its six. Day 14: it has been over for four days with two left, so
    // the packet is mixed on day 13; it does four, and four on day 28, and is over on day 33 with
    // two left. Day 44: nothing is here.
    const SolutionPlan& dev = found.solutions[0];
    EXPECT_EQ(dev.needed, Films(20));
    EXPECT_EQ(dev.runsOutAt, day(14));
    EXPECT_EQ(dev.missing, Films(8));
    ASSERT_EQ(dev.stretches.size(), 3U);
    expectStretch(dev.stretches[0], StretchKind::Stands, "Dev 1", 0, 10, 4, 0);
    EXPECT_TRUE(dev.stretches[0].expires);
    EXPECT_EQ(dev.stretches[0].unused, Films(2));
    expectStretch(dev.stretches[1], StretchKind::Mix, "p1", 13, 33, 8, 1000);
    EXPECT_TRUE(dev.stretches[1].expires);
    EXPECT_EQ(dev.stretches[1].unused, Films(2));
    expectStretch(dev.stretches[2], StretchKind::Missing, "", 43, 50, 8, 1000);
    EXPECT_FALSE(dev.stretches[2].expires);

    // A litre does five. Day 3: a litre of c1 on day 2 does four. Day 14: one film of that, and the
    // last half litre of c1, mixed on day 13, does three (2.5 and the film that ends it). Day 28: a
    // litre of c2 on day 27, which ends the rest of it on day 42; four films. Day 44: one film of
    // that litre, and the other seven have nothing, for c2 is over.
    const SolutionPlan& fix = found.solutions[1];
    EXPECT_EQ(fix.runsOutAt, day(3));
    EXPECT_EQ(fix.missing, Films(7));
    ASSERT_EQ(fix.stretches.size(), 5U);
    expectStretch(fix.stretches[0], StretchKind::Mix, "c1", 2, 14, 5, 1000);
    expectStretch(fix.stretches[1], StretchKind::Mix, "c1", 13, 14, 3, 500);
    expectStretch(fix.stretches[2], StretchKind::Mix, "c2", 27, 44, 5, 1000);
    expectStretch(fix.stretches[3], StretchKind::Missing, "", 43, 44, 5, 1000);
    expectStretch(fix.stretches[4], StretchKind::Missing, "", 43, 50, 2, 1000);

    // Two of the three litres that one concentrate makes are enough.
    ASSERT_EQ(found.toBuy.size(), 2U);
    for (const ToBuy& one : found.toBuy) {
        EXPECT_EQ(one.packets, 1) << one.solution;
        EXPECT_EQ(one.by, day(43)) << one.solution;
    }
    ASSERT_EQ(found.cost.sums().size(), 1U);
    EXPECT_EQ(found.cost.sums().at("EUR").text(), "18.30");
    EXPECT_TRUE(found.costKnown);
    // 8.40 for the ten films of a litre; 9.90 for 2.5 litres of five each, 12.5 films: 0.792.
    for (const ToBuy& one : found.toBuy) {
        const auto film = costOfFilm(one).sums();
        ASSERT_EQ(film.size(), 1U) << one.solution;
        EXPECT_EQ(film.at("EUR").text(), one.solution == "dev" ? "0.84" : "0.79");
    }
    EXPECT_EQ(found.enoughUntil, day(28));
}

TEST_F(NeedsTest, enoughIsHere)
{
    request.bottles = {{"late", "dev", Films(10), day(100)}, {"soon", "dev", Films(3), day(30)}};
    work(5, 4);
    work(60, 4); // after the plan
    const Plan found = plan();
    ASSERT_EQ(found.solutions.size(), 1U);
    const auto& dev = found.solutions.front();
    EXPECT_FALSE(dev.runsOutAt);
    EXPECT_EQ(dev.missing, Films(0));
    expectStretch(dev.stretches[0], StretchKind::Stands, "late", 0, 50, 1, 0);
    expectStretch(dev.stretches[1], StretchKind::Stands, "soon", 0, 5, 3, 0);
    EXPECT_TRUE(found.toBuy.empty());
    EXPECT_TRUE(found.cost.empty());
    EXPECT_EQ(found.enoughUntil, day(5));
}

TEST_F(NeedsTest, aShoppingListForSomeFilms)
{
    request.bought = {{"dev", Millilitres(1000), Decimal::from("8.40"), "EUR"}};
    work(0, 25);
    const Plan found = plan();
    ASSERT_EQ(found.toBuy.size(), 1U);
    EXPECT_EQ(found.toBuy.front().packets, 3) << "ten films a packet";
    EXPECT_EQ(found.toBuy.front().by, day(0)) << "never before now";
    EXPECT_EQ(found.cost.sums().at("EUR").text(), "25.20");
    EXPECT_FALSE(found.enoughUntil);
    request.bought.clear();
    EXPECT_FALSE(plan().costKnown);
}

TEST_F(NeedsTest, whatIsPouredAwayGoesByItsVolume)
{
    request.solutions = {{"dev", {}, {}, Millilitres(250), Millilitres(1000)}};
    work(1, 6);
    const Plan found = plan();
    const auto& dev = found.solutions.front();
    ASSERT_EQ(dev.stretches.size(), 2U);
    EXPECT_EQ(dev.stretches[0].films, Films(4));
    EXPECT_EQ(dev.stretches[1].films, Films(2));
}

TEST_F(NeedsTest, whatKeepsForHoursIsMixedWhenItIsNeeded)
{
    request.solutions.front().keeps = Days(0.5);
    request.packets = {{.item = "p1", .solution = "dev", .makes = Millilitres(1000)}};
    work(3, 2);
    const Plan found = plan();
    const auto& dev = found.solutions.front();
    ASSERT_EQ(dev.stretches.size(), 1U);
    expectStretch(dev.stretches[0], StretchKind::Mix, "p1", 3, 3.5, 2, 1000);
}

TEST_F(NeedsTest, workNeedsADeveloperThatIsKnown)
{
    request.developer.clear();
    work(1, 2);
    EXPECT_EQ(planNeeds(request).error().field, "developer");
    request.work.front().developer = "nobody";
    EXPECT_EQ(planNeeds(request).error().code, ErrorCode::UnknownId);
}

TEST_F(NeedsTest, paceComesBesideTheKnownWork)
{
    // Known is 4 films in 51 days; the rest of 0.2 a day comes in loads of two.
    request.until = day(51);
    work(10, 4);
    const auto beside = workAtPace(request, 0.2, Films(2));
    ASSERT_EQ(beside.size(), 3U);
    EXPECT_NEAR(chemistry::daysBetween(request.now, beside[0].at).value(), 2 / (0.2 - 4.0 / 51),
                1e-6);
    EXPECT_TRUE(workAtPace(request, 0.07, Films(2)).empty());
}

// Half a film a day; the known work of 5 films in 50 days is a tenth of one, so 5 films come
// besides every 12.5 days: on days 12.5, 25, 37.5 and 50. Of the 6 films left in Dev 1 they take
// five and, with the known work on day 25, the last. The packet mixed the day before does 9 more
// then and one on day 37.5; for the other 4, and the 5 of day 50, one is to be bought.
TEST_F(NeedsTest, aPlanAtAPace)
{
    request.bottles = {{"Dev 1", "dev", Films(6), day(40)}};
    request.packets = {{.item = "p1", .solution = "dev", .makes = Millilitres(1000)}};
    work(25, 5);
    request = withPace(std::move(request), {Beside::Kind::Given, 0.5}, {.load = Films(5)});
    ASSERT_EQ(request.work.size(), 5U);
    EXPECT_FALSE(request.work[1].atPace) << "what is known goes first";
    EXPECT_TRUE(request.work[2].atPace);
    const Plan so = plan();
    ASSERT_EQ(so.solutions.size(), 1U);
    EXPECT_NEAR(so.solutions[0].needed.value(), 25, 1e-9);
    ASSERT_EQ(so.solutions[0].stretches.size(), 3U);
    expectStretch(so.solutions[0].stretches[0], StretchKind::Stands, "Dev 1", 0, 25, 6, 0);
    expectStretch(so.solutions[0].stretches[1], StretchKind::Mix, "p1", 24, 37.5, 10, 1000);
    expectStretch(so.solutions[0].stretches[2], StretchKind::Missing, "", 36.5, 50, 9, 1000);
    EXPECT_EQ(so.solutions[0].runsOutAt, day(25));
    EXPECT_NEAR(so.solutions[0].missing.value(), 9, 1e-9);
    ASSERT_EQ(so.toBuy.size(), 1U);
    EXPECT_EQ(so.toBuy[0].packets, 1);
    EXPECT_EQ(so.toBuy[0].by, day(36.5));
    EXPECT_EQ(so.enoughUntil, day(25));
}

TEST_F(NeedsTest, aPaceComesInWholeFilms)
{
    const auto made = withPace(request, {Beside::Kind::Given, 0.2}, {.load = Films(1.86)});
    ASSERT_EQ(made.work.size(), 5U) << "10 films in 50 days";
    EXPECT_EQ(made.work[0].films, Films(2));
    EXPECT_EQ(withPace(request, {Beside::Kind::Given, 0.2}, {.load = Films(0.3)}).work[0].films,
              Films(1));
}

TEST_F(NeedsTest, nothingIsPlannedByAPaceThatIsNotKnown)
{
    FilmPace usual{.filmsPerDay = 1, .load = Films(2), .loads = FilmPace::kLeastLoads - 1};
    EXPECT_TRUE(withPace(request, {}, usual).work.empty());
    usual.loads = FilmPace::kLeastLoads;
    EXPECT_EQ(withPace(request, {}, usual).work.size(), 25U);
    EXPECT_TRUE(withPace(request, {Beside::Kind::Nothing, 1}, usual).work.empty());
}

TEST(KnownWork, comesAgainByItsRule)
{
    ledger::Work course;
    course.id = "w";
    course.at = day(1);
    course.rule = "FREQ=WEEKLY;INTERVAL=2";
    course.films = Films(4);
    ledger::Work once = course;
    once.rule = "every 2 weeks"; // not understood: once
    once.at = day(2);
    const auto found = knownWork({course, once}, day(0), day(30));
    ASSERT_EQ(found.size(), 4U);
    EXPECT_EQ(found[0].at, day(1));
    EXPECT_EQ(found[1].at, day(2));
    EXPECT_EQ(found[3].at, day(29));
}

TEST(NeedsRequest, takesWhatTheShelfAndTheCupboardSay)
{
    History history;
    history.mix("dev", 1000);
    history.run(1, 4);
    ledger::Packet packet;
    packet.id = "p";
    packet.solution = "dev";
    packet.makes = Millilitres(1000);
    ledger::CupboardState cupboard;
    ledger::ItemHere here;
    here.item = ledger::itemOf(packet);
    here.stock.left = 1;
    cupboard.items = {here};
    ledger::Packet usedUp = packet;
    usedUp.id = "earlier";
    usedUp.cost = Decimal::from("7.90");
    packet.cost = Decimal::from("8.40");
    packet.currency = "EUR";
    cupboard.packets = {usedUp, packet};
    const auto made = needsOf({history.batch(2)}, history.formulary, cupboard, day(2), day(30));
    ASSERT_EQ(made.bottles.size(), 1U);
    EXPECT_EQ(made.bottles[0].filmsLeft, ledger::assess(history.batch(2)).filmsLeft);
    EXPECT_EQ(made.bottles[0].discardBy, ledger::assess(history.batch(2)).discardBy);
    ASSERT_EQ(made.packets.size(), 1U);
    EXPECT_EQ(made.packets[0].share, 1);
    ASSERT_EQ(made.bought.size(), 2U);
    EXPECT_EQ(made.bought.back().cost->text(), "8.40");
    EXPECT_EQ(made.developer, "dev");
    EXPECT_TRUE(made.also.empty());
    const auto pace = filmPace({history.batch(2)}, day(2));
    EXPECT_NEAR(pace.filmsPerDay, 2.0 / 31 * 4, 1e-9);
    EXPECT_EQ(pace.load, Films(4));
    EXPECT_FALSE(pace.isKnown()) << "one load";
}

// It was taken for one that does film without end.
TEST(NeedsRequest, aBottleOfUnknownHistoryIsNotCountedOn)
{
    History history;
    history.mix("dev", 1000);
    auto found = history.batch(2);
    EXPECT_EQ(needsOf({found}, history.formulary, {}, day(2), day(30)).bottles.size(), 1U);
    found.historyUnknown = true;
    found.filmsKnown = false;
    ASSERT_FALSE(ledger::assess(found).filmsLeft);
    EXPECT_TRUE(needsOf({found}, history.formulary, {}, day(2), day(30)).bottles.empty());
}

} // namespace
} // namespace ullage::cupboard
