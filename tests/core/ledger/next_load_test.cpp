#include "core/ledger/next_load.h"

#include "run_kit.h"

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

const std::vector<chemistry::TimeAtTemperature> kPairs{{Celsius(20), Seconds(600)}};

LoadWishes wishes(double films)
{
    LoadWishes wanted{.load = {{{"135-36", films}}, {}},
                      .tank = Tank{"tank", Millilitres(600), {}},
                      .temperature = Celsius(20),
                      .pairs = kPairs};
    wanted.sheet = usualTemplates().front();
    return wanted;
}

// A developer and a fixer, mixed and clear.
struct DevAndFix : RunShelf {
    std::string dev = mix("mq", "b1", "Dev 1");
    std::string fix = mix("fix", "b2", "Fix 1");
};

LoadWishes diluted(double films)
{
    LoadWishes wanted = wishes(films);
    wanted.parts = 1;
    return wanted;
}

std::string name(const NextLoad& next, Role role)
{
    const Judged* taken = next.taken(role);
    return taken ? taken->batch.name : "nothing";
}

TEST(NextLoad, SaysBottlesTimesAndWhatIsLeftAtOnce)
{
    DevAndFix shelf;
    shelf.work(shelf.dev, 4);
    EXPECT_TRUE(
        shelf.book->record(shelf.fix, ClearingTested{Seconds(50), Celsius(20)}, {shelf.now, {}}));
    const NextLoad next = nextLoad(wishes(2), shelf.judged());
    EXPECT_EQ(name(next, Role::Developer), "Dev 1");
    EXPECT_EQ(next.plan.bath(Role::Developer)->why, ChoiceReason::OnlyOne);
    ASSERT_TRUE(next.developing);
    EXPECT_NEAR(next.developing->time.value(), 600 * 1.4, 1e-9);
    ASSERT_TRUE(next.fixing && next.fixingTabular);
    EXPECT_NEAR(next.fixing->time.value(), 100, 1e-9);
    EXPECT_NEAR(next.fixingTabular->time.value(), 150, 1e-9);
    ASSERT_TRUE(next.canStart());
    EXPECT_EQ(next.sheet->steps[0].kind, StepKind::PreWet);
    const BathAfter* after = next.afterwards(Role::Developer);
    ASSERT_TRUE(after && after->filmsLeft);
    EXPECT_NEAR(after->filmsLeft->value(), 4, 1e-9);
    EXPECT_NEAR(after->factor, 1.6, 1e-12);
    EXPECT_EQ(after->volume, Millilitres(1000));
}

TEST(NextLoad, ABottleThatIsUsedOnceIsPouredAwayUnlessSomebodySaysOtherwise)
{
    DevAndFix shelf;
    formulary::Solution once{.id = "once", .name = "Used once", .role = formulary::Role::Developer};
    once.oneShotPerFilm = Millilitres(300);
    ASSERT_TRUE(shelf.book->add(once));
    const auto id = shelf.mix("once", "b3", "Dev 2");
    LoadWishes wanted = wishes(2);
    EXPECT_FALSE(nextLoad(wanted, shelf.judged()).plan.bath(Role::Developer)->need.oneShot)
        << "Dev 1 is poured back";
    wanted.chosen[Role::Developer] = id;
    const auto hasPourBack = [](const NextLoad& next) {
        const auto& steps = next.sheet->steps;
        return std::any_of(steps.begin(), steps.end(), [&](const RunStep& step) {
            return step.kind == StepKind::PourBack && step.batch == next.judged.back().batch.id;
        });
    };
    NextLoad next = nextLoad(wanted, shelf.judged());
    ASSERT_TRUE(next.canStart());
    EXPECT_TRUE(next.plan.bath(Role::Developer)->need.oneShot);
    EXPECT_FALSE(hasPourBack(next));
    EXPECT_EQ(next.afterwards(Role::Developer)->volume, Millilitres(400));
    EXPECT_NEAR(next.afterwards(Role::Developer)->filmsLeft->value(), 4.0 / 3, 1e-9);
    wanted.oneShot = false;
    next = nextLoad(wanted, shelf.judged());
    EXPECT_FALSE(next.plan.bath(Role::Developer)->need.oneShot);
    EXPECT_TRUE(hasPourBack(next));
    // Too little of it for the films: 150 mL of stock at 1+3 for two that take 300 each.
    wanted.oneShot.reset();
    wanted.parts = 3;
    EXPECT_TRUE(nextLoad(wanted, shelf.judged()).plan.has(PlanProblemCode::CapacityShort));
}

TEST(NextLoad, ADilutionIsGoneAndTheRestStaysAsItIs)
{
    DevAndFix shelf;
    const NextLoad next = nextLoad(diluted(1), shelf.judged());
    const BathAfter* after = next.afterwards(Role::Developer);
    ASSERT_TRUE(after && after->filmsLeft);
    EXPECT_EQ(after->volume, Millilitres(700));
    EXPECT_NEAR(after->filmsLeft->value(), 7, 1e-9);
    EXPECT_NEAR(after->factor, 1, 1e-12);
}

TEST(NextLoad, AfterTheLoadItIsAsTheBookWillSay)
{
    DevAndFix shelf;
    const NextLoad before = nextLoad(wishes(3), shelf.judged());
    shelf.work(shelf.dev, 3);
    const auto judged = shelf.judged();
    const BathAfter* after = before.afterwards(Role::Developer);
    ASSERT_TRUE(after);
    EXPECT_NEAR(after->filmsLeft->value(), judged[0].assessment.filmsLeft->value(), 1e-9);
    EXPECT_NEAR(after->factor, bottleFactor(judged[0].batch, judged[0].assessment), 1e-12);
}

TEST(NextLoad, AFixerNobodyTestedHasNoTimeWithoutAFigure)
{
    DevAndFix shelf;
    const NextLoad next = nextLoad(wishes(1), shelf.judged());
    EXPECT_FALSE(next.fixing);
    ASSERT_TRUE(next.sheet);
    EXPECT_EQ(next.sheet->fixing->from, ClearingFrom::Nowhere) << "the template's own stands";
}

TEST(NextLoad, WithoutThermometerOrFigureItSaysWhatIsMissing)
{
    DevAndFix shelf;
    LoadWishes wanted = wishes(1);
    wanted.pairs.clear();
    EXPECT_EQ(nextLoad(wanted, shelf.judged()).developing.error().code, ErrorCode::NoFigure);
    wanted.temperature.reset();
    const NextLoad next = nextLoad(wanted, shelf.judged());
    EXPECT_EQ(next.developing.error().field, "temperature_c");
    EXPECT_EQ(next.refusal->field, "temperature_c");
    EXPECT_EQ(nextLoad(wanted, {}).developing.error().field, "developer");
    EXPECT_FALSE(next.canStart());
}

TEST(NextLoad, OneBottleIsAnsweredWhateverItsVerdict)
{
    RunShelf shelf;
    const auto dev = shelf.mix("mq", "b1", "Dev 1");
    shelf.work(dev, 9);
    EXPECT_TRUE(shelf.book->record(dev, Contaminated{"fixer"}, {shelf.now, {}}));
    const NextLoad next = nextLoadIn(shelf.judged().front(), kPairs, Celsius(20), Films(3));
    ASSERT_TRUE(next.developing);
    EXPECT_NEAR(next.developing->time.value(), 600 * 1.9, 1e-9);
    EXPECT_TRUE(next.plan.has(PlanProblemCode::Discard));
    EXPECT_TRUE(next.plan.has(PlanProblemCode::CapacityShort));
    EXPECT_EQ(name(next, Role::Developer), "Dev 1");
}

TEST(NextLoad, NoBottleIsProposedThatNobodySawClear)
{
    RunShelf shelf;
    const auto dev = shelf.mix("mq", "b1", "Dev 1", 1000, false);
    shelf.mix("fix", "b2", "Fix 1");
    NextLoad next = nextLoad(wishes(1), shelf.judged());
    EXPECT_EQ(name(next, Role::Developer), "nothing");
    ASSERT_TRUE(next.plan.has(PlanProblemCode::NotMarkedDissolved));
    EXPECT_FALSE(next.plan.has(PlanProblemCode::NoBottle));
    EXPECT_TRUE(next.plan.blocked());
    LoadWishes chosen = wishes(1);
    chosen.chosen[Role::Developer] = dev;
    next = nextLoad(chosen, shelf.judged());
    EXPECT_EQ(name(next, Role::Developer), "Dev 1") << "it can be chosen";
    EXPECT_FALSE(next.plan.blocked());
    EXPECT_TRUE(shelf.book->record(dev, Dissolved{}, {shelf.now, {}}));
    EXPECT_EQ(name(nextLoad(wishes(1), shelf.judged()), Role::Developer), "Dev 1");
}

formulary::Solution other(RunShelf& shelf)
{
    formulary::Solution made = *shelf.book->formulary().solution("mq");
    made.id = "pq";
    made.name = "PQ developer";
    EXPECT_TRUE(shelf.book->add(made));
    return made;
}

TEST(NextLoad, ADeveloperIsProposedWithinTheOneUsedLast)
{
    RunShelf shelf;
    other(shelf);
    shelf.mix("pq", "b1", "Older");
    shelf.days(2);
    const auto dev = shelf.mix("mq", "b2", "Dev 1");
    shelf.days(1);
    LoadWishes wanted = wishes(1);
    const auto propose = [&] {
        const auto judged = shelf.judged();
        wanted.developers = developersFor(shelf.book->formulary(), judged, {});
        return name(nextLoad(wanted, judged), Role::Developer);
    };
    EXPECT_EQ(propose(), "Older") << "none was used: the oldest of all";
    shelf.work(dev, 1);
    EXPECT_EQ(propose(), "Dev 1");
    shelf.mix("mq", "b3", "Dev 2");
    wanted.load.films[0].count = 10;
    EXPECT_EQ(propose(), "Dev 2") << "within it, what can take the load";
    wanted.chosen[Role::Developer] = shelf.judged()[0].batch.id;
    EXPECT_EQ(propose(), "Older") << "the user's word goes before";
}

TEST(NextLoad, ADeveloperIsProposedThatHasTheFilmsTime)
{
    RunShelf shelf;
    other(shelf);
    const auto dev = shelf.mix("mq", "b1", "Dev 1");
    shelf.work(dev, 1);
    shelf.mix("pq", "b2", "Other");
    formulary::DevelopmentFigure figure;
    figure.id = "t1";
    figure.film = "Quay 400";
    figure.developer = "pq";
    figure.dilution = "stock";
    figure.times = kPairs;
    EXPECT_TRUE(shelf.book->add(figure));
    const auto judged = shelf.judged();
    const auto& book = shelf.book->formulary();
    EXPECT_EQ(developersFor(book, judged, {{"quay 400", {}}}), (std::vector<std::string>{"pq"}));
    EXPECT_EQ(developersFor(book, judged, {{"Pier", {}}}), (std::vector<std::string>{"mq"}));
}

TEST(NextLoad, ForOneUseAWornBottleIsNotProposed)
{
    RunShelf shelf;
    const auto worn = shelf.mix("mq", "b1", "Worn");
    shelf.mix("fix", "b2", "Fix 1");
    shelf.work(worn, 1);
    LoadWishes wanted = diluted(1);
    NextLoad next = nextLoad(wanted, shelf.judged());
    EXPECT_EQ(name(next, Role::Developer), "nothing");
    EXPECT_EQ(next.plan.bath(Role::Developer)->candidates[0].hindrance, Hindrance::Worn);
    shelf.days(1);
    shelf.mix("mq", "b3", "Fresh");
    next = nextLoad(wanted, shelf.judged());
    EXPECT_EQ(name(next, Role::Developer), "Fresh");
    wanted.chosen[Role::Developer] = worn;
    next = nextLoad(wanted, shelf.judged());
    EXPECT_EQ(name(next, Role::Developer), "Worn");
    EXPECT_TRUE(next.plan.has(PlanProblemCode::Worn));
    EXPECT_FALSE(next.plan.blocked());
    wanted.parts = 0;
    wanted.chosen.clear();
    EXPECT_EQ(name(nextLoad(wanted, shelf.judged()), Role::Developer), "Worn")
        << "poured back, the oldest goes first";
}

TEST(NextLoad, SaysHowMuchOfWhatIsPoured)
{
    DevAndFix shelf;
    const NextLoad next = nextLoad(diluted(1), shelf.judged());
    ASSERT_TRUE(next.sheet);
    for (const RunStep& step : next.sheet->steps) {
        if (step.kind == StepKind::Develop) {
            EXPECT_EQ(step.pour, (Pour{Millilitres(300), Millilitres(300)}));
        } else if (step.kind == StepKind::Fix) {
            EXPECT_EQ(step.pour, (Pour{Millilitres(600), Millilitres(0)}));
        } else {
            EXPECT_FALSE(step.pour) << code(step.kind);
        }
    }
}

} // namespace
} // namespace ullage::ledger
