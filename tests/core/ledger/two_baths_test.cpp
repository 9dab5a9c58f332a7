// Fixing in two baths, from the template to the tally.
#include "core/ledger/two_baths.h"

#include "run_kit.h"

#include "core/ledger/next_load.h"
#include "core/ledger/run_state.h"
#include "core/ledger/wash_plan.h"

#include <algorithm>

namespace ullage::ledger
{
namespace
{

using chemistry::Celsius;
using chemistry::Films;
using chemistry::Millilitres;
using chemistry::Seconds;
using formulary::Role;

BathPlace second() { return {Role::Fixer, true}; }

RunTemplate twoBaths() { return usualTemplates().back(); }

struct Pair : RunShelf {
    std::string dev = mix("mq", "b1", "Dev 1");
    std::string one = mix("fix", "b2", "Fix 1");
    std::string two = mix("fix", "b3", "Fix 2");

    void run(const std::string& first, const std::string& then, double films)
    {
        EXPECT_TRUE(book->process({{{{"120", films}}, {}},
                                   {{first, Millilitres(600), {}, false, {}},
                                    {then, Millilitres(600), {}, false, {}, true}},
                                   {},
                                   {}},
                                  now));
    }
    void test(const std::string& fixer, double seconds)
    {
        EXPECT_TRUE(book->record(fixer, ClearingTested{Seconds(seconds), Celsius(20)}, {now, {}}));
    }
    LoadWishes wishes(double films = 2)
    {
        LoadWishes wanted{.load = {{{"120", films}}, {}},
                          .tank = Tank{"tank", Millilitres(600), {}},
                          .temperature = Celsius(20),
                          .pairs = {{Celsius(20), Seconds(600)}}};
        wanted.sheet = twoBaths();
        return wanted;
    }
    NextLoad next() { return nextLoad(wishes(), judged()); }
};

std::string taken(const NextLoad& next, BathPlace place)
{
    const Judged* bottle = next.taken(place);
    return bottle ? bottle->batch.name : "nothing";
}

const RunStep* step(const RunSheet& sheet, StepKind kind)
{
    const auto found = std::find_if(sheet.steps.begin(), sheet.steps.end(),
                                    [&](const RunStep& one) { return one.kind == kind; });
    return found == sheet.steps.end() ? nullptr : &*found;
}

TEST(TwoBaths, TheMoreWornGoesFirstAndItsPartnerSecond)
{
    Pair shelf;
    shelf.run(shelf.two, shelf.one, 2); // Fix 2 is the first of them, though mixed later
    shelf.mix("fix", "b4", "Fix 3");
    const NextLoad next = shelf.next();
    EXPECT_EQ(taken(next, Role::Fixer), "Fix 2");
    EXPECT_EQ(next.plan.bath(Role::Fixer)->why, ChoiceReason::MoreWorn);
    EXPECT_EQ(taken(next, second()), "Fix 1") << "not the fresh one";
    EXPECT_EQ(next.plan.bath(second())->why, ChoiceReason::SecondBefore);
    EXPECT_EQ(next.plan.bath(second())->candidates.size(), 2u) << "one bottle is not both";
}

TEST(TwoBaths, BeforeThereWasAPairTheLeastWornIsSecond)
{
    Pair shelf;
    shelf.work(shelf.one, 3);
    shelf.work(shelf.two, 1);
    shelf.mix("fix", "b4", "Fix 3");
    const NextLoad next = shelf.next();
    EXPECT_EQ(taken(next, Role::Fixer), "Fix 1");
    EXPECT_EQ(taken(next, second()), "Fix 3");
    EXPECT_EQ(next.plan.bath(second())->why, ChoiceReason::LeastWorn);
}

TEST(TwoBaths, WhoeverChoosesOneOfThemGetsTheOtherForTheOther)
{
    Pair shelf;
    shelf.run(shelf.one, shelf.two, 2);
    LoadWishes wanted = shelf.wishes();
    wanted.chosen[second()] = shelf.one;
    NextLoad next = nextLoad(wanted, shelf.judged());
    EXPECT_EQ(taken(next, second()), "Fix 1");
    EXPECT_EQ(taken(next, Role::Fixer), "Fix 2");
    wanted.chosen[Role::Fixer] = shelf.one; // both: the first has it
    next = nextLoad(wanted, shelf.judged());
    EXPECT_EQ(taken(next, Role::Fixer), "Fix 1");
    EXPECT_EQ(taken(next, second()), "Fix 2");
}

TEST(TwoBaths, EachHasHalfOfTheTime)
{
    Pair shelf;
    shelf.test(shelf.one, 60);
    NextLoad next = shelf.next();
    ASSERT_TRUE(next.sheet && next.fixing);
    // Clears in the first, and stays as long again in the second.
    EXPECT_EQ(step(*next.sheet, StepKind::Fix)->planned, Seconds(60));
    EXPECT_EQ(step(*next.sheet, StepKind::SecondFix)->planned, Seconds(60));
    EXPECT_EQ(step(*next.sheet, StepKind::SecondFix)->batch, shelf.two);
    EXPECT_EQ(step(*next.sheet, StepKind::SecondFix)->rule(), TemperatureRule::Fixer);
    EXPECT_EQ(next.fixing->time, Seconds(120));
    EXPECT_EQ(next.fixing->inEach(), Seconds(60));
    LoadWishes tabular = shelf.wishes();
    tabular.tabularGrain = true;
    next = nextLoad(tabular, shelf.judged());
    EXPECT_EQ(step(*next.sheet, StepKind::Fix)->planned, Seconds(90)) << "three times 60, halved";
}

TEST(TwoBaths, WithoutAClearingTimeTheTemplateSharesItsOwn)
{
    Pair shelf;
    LoadWishes wanted = shelf.wishes();
    for (TemplateStep& line : wanted.sheet.steps) {
        line.time = line.kind == StepKind::Fix         ? Seconds(180)
                    : line.kind == StepKind::SecondFix ? Seconds(240)
                                                       : line.time;
    }
    NextLoad next = nextLoad(wanted, shelf.judged());
    EXPECT_EQ(step(*next.sheet, StepKind::Fix)->planned, Seconds(180));
    EXPECT_EQ(step(*next.sheet, StepKind::SecondFix)->planned, Seconds(240));
    wanted.chosen[second()] = kNoBottle;
    next = nextLoad(wanted, shelf.judged());
    EXPECT_EQ(step(*next.sheet, StepKind::Fix)->planned, Seconds(420)) << "all of it in the first";
    EXPECT_FALSE(step(*next.sheet, StepKind::SecondFix));
}

TEST(TwoBaths, WithOneFixerItSaysSoAndFixesInThat)
{
    RunShelf shelf;
    shelf.mix("mq", "b1", "Dev 1");
    const auto fix = shelf.mix("fix", "b2", "Fix 1");
    EXPECT_TRUE(shelf.book->record(fix, ClearingTested{Seconds(60), Celsius(20)}, {shelf.now, {}}));
    LoadWishes wanted{.load = {{{"120", 1}}, {}},
                      .tank = Tank{"tank", Millilitres(600), {}},
                      .temperature = Celsius(20),
                      .pairs = {{Celsius(20), Seconds(600)}}};
    wanted.sheet = twoBaths();
    const NextLoad next = nextLoad(wanted, shelf.judged());
    ASSERT_TRUE(next.canStart());
    EXPECT_TRUE(next.plan.has(PlanProblemCode::NoSecondBath));
    EXPECT_EQ(step(*next.sheet, StepKind::Fix)->planned, Seconds(120));
    const auto& steps = next.sheet->steps;
    EXPECT_EQ(std::count_if(steps.begin(), steps.end(),
                            [](const RunStep& s) { return s.kind == StepKind::PourBack; }),
              2)
        << "developer and fixer";
}

TEST(TwoBaths, TheRunIsLoggedWithTheSecondAsSecond)
{
    Pair shelf;
    const LoadWishes wanted = shelf.wishes(5);
    const NextLoad next = nextLoad(wanted, shelf.judged());
    ASSERT_TRUE(next.canStart());
    ASSERT_TRUE(next.afterwards(second()) && next.afterwards(Role::Fixer));
    EXPECT_NEAR(next.afterwards(Role::Fixer)->filmsLeft->value(), 15, 1e-9);
    EXPECT_NEAR(next.afterwards(second())->filmsLeft->value(), 19, 1e-9);
    const RunState state = readyRun(wanted, {{"120", 5, "", {}, ""}}, next, shelf.now);
    const FilmRun run = filmRun(state, {{.batch = shelf.dev, .lost = Millilitres(0)},
                                        {.batch = shelf.one, .lost = Millilitres(0)},
                                        {.batch = shelf.two, .lost = Millilitres(0)}});
    ASSERT_TRUE(shelf.book->process(run, shelf.now));
    const auto judged = shelf.judged();
    EXPECT_NEAR(judged[1].batch.wear.value(), 5, 1e-9);
    EXPECT_NEAR(judged[2].batch.wear.value(), 1, 1e-9);
    EXPECT_TRUE(isSecondBath(judged[2].batch));
    EXPECT_TRUE(goesBefore(judged[1].batch, judged[2].batch));
}

TEST(TwoBaths, ALoadIsTooMuchForTheSecondByAFifthOfIt)
{
    Pair shelf;
    shelf.run(shelf.one, shelf.two, 2);
    shelf.work(shelf.two, 18); // 1.6 films a litre are left in it; it is the more worn now
    LoadWishes wanted = shelf.wishes(5);
    wanted.chosen[second()] = shelf.two;
    const NextLoad next = nextLoad(wanted, shelf.judged());
    EXPECT_FALSE(next.plan.has(PlanProblemCode::CapacityShort)) << "it feels one film";
}

TEST(TwoBaths, SaysWhenToExchangeAndWhatComesThen)
{
    Pair shelf;
    shelf.test(shelf.one, 60);
    shelf.run(shelf.one, shelf.two, 4);
    EXPECT_FALSE(exchangeDue(shelf.judged()));
    shelf.test(shelf.one, 125);
    const auto judged = shelf.judged();
    const auto due = exchangeDue(judged);
    ASSERT_TRUE(due);
    EXPECT_EQ(judged[due->first].batch.name, "Fix 1");
    EXPECT_EQ(judged[due->second].batch.name, "Fix 2");
    NextLoad next = shelf.next();
    ASSERT_TRUE(next.plan.has(PlanProblemCode::ExchangeDue));
    EXPECT_FALSE(next.plan.blocked());
    EXPECT_EQ(taken(next, Role::Fixer), "Fix 2") << "the spent one is not offered";

    ASSERT_TRUE(shelf.book->exchangeBaths(shelf.one, {"collected", {}}, shelf.two, "first now",
                                          {shelf.now, {}}));
    shelf.mix("fix", "b4", "Fix 3");
    next = shelf.next();
    EXPECT_FALSE(next.plan.has(PlanProblemCode::ExchangeDue));
    EXPECT_EQ(taken(next, Role::Fixer), "Fix 2");
    EXPECT_EQ(taken(next, second()), "Fix 3") << "the fresh one becomes the second";
}

TEST(TwoBaths, AFixerUsedAloneIsNotTheFirstOfOthersBaths)
{
    Pair shelf;
    shelf.run(shelf.one, shelf.two, 2);
    shelf.days(1);
    const auto alone = shelf.mix("fix", "b4", "Fix 3");
    shelf.test(alone, 60);
    shelf.work(alone, 4);
    shelf.test(alone, 125);
    EXPECT_FALSE(exchangeDue(shelf.judged())) << "Fix 2 is the second of Fix 1";
    ASSERT_TRUE(shelf.book->record(shelf.one, Discarded{"collected", {}}, {shelf.now, {}}));
    const auto judged = shelf.judged();
    const auto due = exchangeDue(judged);
    ASSERT_TRUE(due) << "Fix 2 is nobody's any more";
    EXPECT_EQ(judged[due->first].batch.name, "Fix 3");
    EXPECT_EQ(judged[due->second].batch.name, "Fix 2");
}

TEST(TwoBaths, ATemplateHasTheSecondAfterTheFirst)
{
    RunTemplate sheet = twoBaths();
    EXPECT_EQ(sheet.id, "two-baths");
    EXPECT_TRUE(check(sheet));
    std::erase_if(sheet.steps, [](const TemplateStep& s) { return s.kind == StepKind::Fix; });
    ASSERT_FALSE(check(sheet));
    EXPECT_EQ(check(sheet).error().text, "second-fix");
}

TEST(TwoBaths, TheWashingChosenComesAfterBoth)
{
    RunTemplate sheet = twoBaths();
    const auto place = std::find_if(sheet.steps.begin(), sheet.steps.end(),
                                    [](const auto& s) { return s.kind == StepKind::SecondFix; });
    sheet.steps.insert(place, {StepKind::Rinse, Seconds(30), 1, {}});
    const RunTemplate washed = withWash(sheet, {.kind = WashKind::Running});
    ASSERT_TRUE(check(washed));
    std::vector<StepKind> kinds;
    for (const TemplateStep& s : washed.steps) {
        kinds.push_back(s.kind);
    }
    const auto rinse = std::find(kinds.begin(), kinds.end(), StepKind::Rinse);
    const auto fix = std::find(kinds.begin(), kinds.end(), StepKind::SecondFix);
    const auto wash = std::find(kinds.begin(), kinds.end(), StepKind::Wash);
    EXPECT_LT(rinse, fix) << "what stands between the baths stays there";
    EXPECT_LT(fix, wash);
}

} // namespace
} // namespace ullage::ledger
