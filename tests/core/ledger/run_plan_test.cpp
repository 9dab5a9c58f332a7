#include "run_kit.h"

#include "core/ledger/run_split.h"

namespace ullage::ledger
{
namespace
{

using chemistry::Films;
using chemistry::Millilitres;
using formulary::Role;

std::string taken(const RunPlan& plan, Role role, const std::vector<Judged>& judged)
{
    const BathChoice* choice = plan.bath(role);
    return choice && choice->taken ? judged[choice->candidates[*choice->taken].judged].batch.name
                                   : "nothing";
}

TEST(RunPlan, OldestThatCanGoesFirstAndSaysWhatComesNext)
{
    RunShelf shelf;
    shelf.mix("mq", "b1", "Dev 1");
    shelf.mix("fix", "b2", "Fix 1");
    shelf.days(10);
    shelf.mix("mq", "b3", "Dev 2");
    const auto judged = shelf.judged();
    const RunPlan plan = planRun(request(2), judged);
    EXPECT_EQ(taken(plan, Role::Developer, judged), "Dev 1");
    EXPECT_EQ(taken(plan, Role::Fixer, judged), "Fix 1");
    const BathChoice& developer = *plan.bath(Role::Developer);
    EXPECT_EQ(developer.why, ChoiceReason::OldestThatCan);
    ASSERT_TRUE(developer.next);
    EXPECT_EQ(judged[developer.candidates[*developer.next].judged].batch.name, "Dev 2");
    EXPECT_EQ(plan.bath(Role::Fixer)->why, ChoiceReason::OnlyOne);
    EXPECT_FALSE(plan.blocked());
    EXPECT_TRUE(plan.split.empty());
}

TEST(RunPlan, FixerFollowsItsSetEvenPastAnOlderOne)
{
    RunShelf shelf;
    shelf.mix("fix", "b1", "Fix old");
    shelf.days(3);
    shelf.mix("mq", "b2", "Dev 2");
    shelf.mix("fix", "b3", "Fix 2");
    const auto judged = shelf.judged();
    const RunPlan plan = planRun(request(2), judged);
    EXPECT_EQ(taken(plan, Role::Fixer, judged), "Fix 2");
    EXPECT_EQ(plan.bath(Role::Fixer)->why, ChoiceReason::SameSet);
}

TEST(RunPlan, ChosenFixerBringsItsDeveloper)
{
    RunShelf shelf;
    shelf.mix("mq", "b1", "Dev 1");
    shelf.days(3);
    shelf.mix("mq", "b2", "Dev 2");
    const std::string fixer = shelf.mix("fix", "b3", "Fix 2");
    PlanRequest wanted = request(2);
    wanted.needs[1].chosen = fixer;
    const auto judged = shelf.judged();
    const RunPlan plan = planRun(wanted, judged);
    EXPECT_EQ(taken(plan, Role::Developer, judged), "Dev 2");
    EXPECT_EQ(plan.bath(Role::Fixer)->why, ChoiceReason::Chosen);
}

TEST(RunPlan, NeverOffersOneToDiscardNotEvenWhenChosen)
{
    RunShelf shelf;
    const std::string spoilt = shelf.mix("mq", "b1", "Dev 1");
    shelf.mix("fix", "b2", "Fix 1");
    EXPECT_TRUE(shelf.book->record(spoilt, Contaminated{"fixer"}, {shelf.now, {}}));
    PlanRequest wanted = request(1);
    wanted.needs[0].chosen = spoilt;
    const auto judged = shelf.judged();
    const RunPlan plan = planRun(wanted, judged);
    EXPECT_EQ(taken(plan, Role::Developer, judged), "nothing");
    EXPECT_TRUE(plan.has(PlanProblemCode::NoBottle));
    EXPECT_TRUE(plan.blocked());
    ASSERT_EQ(plan.bath(Role::Developer)->candidates.size(), 1u) << "shown, with its hindrance";
    EXPECT_EQ(plan.bath(Role::Developer)->candidates[0].hindrance, Hindrance::Discard);
}

TEST(RunPlan, PassesOverTheOldestWhenTheLoadIsTooMuchForIt)
{
    RunShelf shelf;
    const std::string tired = shelf.mix("mq", "b1", "Dev 1");
    shelf.mix("fix", "b2", "Fix 1");
    shelf.work(tired, 9);
    shelf.days(5);
    shelf.mix("mq", "b3", "Dev 2");
    const auto judged = shelf.judged();
    EXPECT_EQ(taken(planRun(request(1), judged), Role::Developer, judged), "Dev 1");
    const RunPlan plan = planRun(request(2), judged);
    EXPECT_EQ(taken(plan, Role::Developer, judged), "Dev 2");
    EXPECT_EQ(plan.bath(Role::Developer)->why, ChoiceReason::OnlyOne);
    EXPECT_EQ(plan.bath(Role::Developer)->candidates[1].hindrance, Hindrance::CapacityShort);
    EXPECT_NEAR(plan.bath(Role::Developer)->candidates[1].has, 1, 1e-9);
}

TEST(RunPlan, NotEnoughInTheBottleBlocks)
{
    RunShelf shelf;
    shelf.mix("mq", "b1", "Dev 1", 500);
    shelf.mix("fix", "b2", "Fix 1");
    const RunPlan plan = planRun(request(1), shelf.judged());
    ASSERT_TRUE(plan.has(PlanProblemCode::VolumeShort));
    EXPECT_EQ(plan.problems.front().number, 600);
    EXPECT_EQ(plan.problems.front().limit, 500);
    EXPECT_TRUE(plan.blocked());
}

TEST(RunPlan, UndissolvedIsNotProposedAndSaidSo)
{
    RunShelf shelf;
    shelf.mix("mq", "b1", "Dev 1", 1000, false);
    shelf.mix("fix", "b2", "Fix 1");
    auto judged = shelf.judged();
    RunPlan plan = planRun(request(1), judged);
    EXPECT_EQ(taken(plan, Role::Developer, judged), "nothing");
    EXPECT_TRUE(plan.has(PlanProblemCode::NotMarkedDissolved));
    EXPECT_TRUE(plan.blocked());
    shelf.days(2);
    shelf.mix("mq", "b3", "Dev 2");
    judged = shelf.judged();
    plan = planRun(request(1), judged);
    EXPECT_EQ(taken(plan, Role::Developer, judged), "Dev 2");
    EXPECT_FALSE(plan.has(PlanProblemCode::NotMarkedDissolved));
}

TEST(RunPlan, ABottleFoundIsNotProposedBeforeItIsTested)
{
    RunShelf shelf;
    const auto found = shelf.book->mix({"mq", "b1", Millilitres(1000), "Dev found", {}, true, true},
                                       {shelf.now, {}});
    ASSERT_TRUE(found);
    shelf.mix("fix", "b2", "Fix 1");
    auto judged = shelf.judged();
    RunPlan plan = planRun(request(1), judged);
    EXPECT_EQ(taken(plan, Role::Developer, judged), "nothing");
    ASSERT_TRUE(plan.has(PlanProblemCode::TestFirst));
    EXPECT_FALSE(plan.has(PlanProblemCode::NoBottle)) << "there is one: it is to be tested";
    EXPECT_TRUE(plan.blocked());
    PlanRequest wanted = request(1);
    wanted.needs[0].chosen = *found;
    plan = planRun(wanted, judged);
    EXPECT_EQ(taken(plan, Role::Developer, judged), "Dev found") << "it can be chosen";
    EXPECT_FALSE(plan.blocked());
    EXPECT_TRUE(shelf.book->record(*found, Looked{true, "leader test"}, {shelf.now, {}}));
    judged = shelf.judged();
    EXPECT_EQ(taken(planRun(request(1), judged), Role::Developer, judged), "Dev found");
}

TEST(RunPlan, ASplitGivesNoPartToABottleThatIsNotProposed)
{
    RunShelf shelf;
    shelf.mix("mq", "b1", "Dev 1");
    shelf.mix("fix", "b2", "Fix 1");
    shelf.mix("mq", "b3", "Dev 2", 1000, false);
    const auto judged = shelf.judged();
    const RunPlan plan = planRun(request(12), judged);
    ASSERT_GE(plan.split.size(), 2u);
    for (const SplitPart& part : plan.split) {
        if (part.developer) {
            EXPECT_EQ(judged[*part.developer].batch.name, "Dev 1");
        }
    }
}

TEST(RunPlan, FilmDoneShowsThatABottleIsClear)
{
    RunShelf shelf;
    const std::string dev = shelf.mix("mq", "b1", "Dev 1", 1000, false);
    shelf.work(dev, 1);
    EXPECT_FALSE(planRun(request(1), shelf.judged()).has(PlanProblemCode::NotMarkedDissolved));
}

TEST(RunPlan, SaysWhatMustBeTestedFirst)
{
    RunShelf shelf;
    shelf.mix("mq", "b1", "Dev 1");
    const std::string fixer = shelf.mix("fix", "b2", "Fix 1");
    shelf.days(31);
    RunPlan plan = planRun(request(1), shelf.judged());
    ASSERT_TRUE(plan.has(PlanProblemCode::TestFirst));
    EXPECT_EQ(plan.problems.back().reason, ReasonCode::ClearingTestDue);
    EXPECT_EQ(plan.problems.back().role, Role::Fixer);
    EXPECT_TRUE(shelf.book->record(
        fixer, ClearingTested{chemistry::Seconds(90), chemistry::Celsius(20)}, {shelf.now, {}}));
    EXPECT_FALSE(planRun(request(1), shelf.judged()).has(PlanProblemCode::TestFirst));
}

TEST(RunPlan, SplitsALoadOverWhatIsLeft)
{
    RunShelf shelf;
    const std::string tired = shelf.mix("mq", "b1", "Dev 1");
    shelf.mix("fix", "b2", "Fix 1");
    shelf.work(tired, 8);
    shelf.days(5);
    const std::string other = shelf.mix("mq", "b3", "Dev 2");
    shelf.work(other, 7);
    const auto judged = shelf.judged();
    const RunPlan plan = planRun(request(4), judged);
    ASSERT_TRUE(plan.has(PlanProblemCode::CapacityShort));
    ASSERT_EQ(plan.split.size(), 2u);
    EXPECT_EQ(judged[*plan.split[0].developer].batch.name, "Dev 1");
    EXPECT_NEAR(plan.split[0].load.units().value(), 2, 1e-9);
    EXPECT_EQ(judged[*plan.split[1].developer].batch.name, "Dev 2");
    EXPECT_NEAR(plan.split[1].load.units().value(), 2, 1e-9);
    const RunPlan more = planRun(request(7), judged);
    ASSERT_EQ(more.split.size(), 3u);
    EXPECT_FALSE(more.split[2].developer) << "the last two need a fresh bottle";
    EXPECT_NEAR(more.split[2].load.units().value(), 2, 1e-9);
}

TEST(RunPlan, SplitsALoadThatTheTankCannotTake)
{
    RunShelf shelf;
    shelf.mix("mq", "b1", "Dev 1");
    shelf.mix("fix", "b2", "Fix 1");
    PlanRequest wanted = request(2);
    wanted.load.films.push_back({"120", 1});
    wanted.tank = Tank{"two reels",
                       Millilitres(600),
                       {{"135-36", 2, Millilitres(300)}, {"120", 1, Millilitres(500)}}};
    const auto judged = shelf.judged();
    const RunPlan plan = planRun(wanted, judged);
    EXPECT_TRUE(plan.has(PlanProblemCode::Tank));
    ASSERT_EQ(plan.split.size(), 2u);
    EXPECT_EQ(plan.split[0].load.films.size(), 1u);
}

TEST(RunPlan, OneShotCountsTheStockTaken)
{
    RunShelf shelf;
    shelf.mix("mq", "b1", "Dev 1");
    shelf.mix("fix", "b2", "Fix 1");
    PlanRequest wanted = request(2);
    wanted.needs[0] = {Role::Developer, stockNeeded(Millilitres(600), 3), true, true, {}};
    EXPECT_EQ(wanted.needs[0].volume, Millilitres(150));
    const RunPlan plan = planRun(wanted, shelf.judged());
    ASSERT_TRUE(plan.has(PlanProblemCode::CapacityShort))
        << "150 mL of stock do one film and a half";
    EXPECT_NEAR(plan.problems.front().limit, 1.5, 1e-9);
}

TEST(RunPlan, ABathThatIsNotRequiredMayBeMissing)
{
    RunShelf shelf;
    shelf.mix("mq", "b1", "Dev 1");
    shelf.mix("fix", "b2", "Fix 1");
    PlanRequest wanted = request(1);
    wanted.needs.push_back({Role::Stop, Millilitres(600), false, false, {}});
    EXPECT_TRUE(planRun(wanted, shelf.judged()).problems.empty());
    wanted.needs.back().required = true;
    EXPECT_TRUE(planRun(wanted, shelf.judged()).blocked());
}

TEST(RunPlan, ABathThatIsNotRequiredIsNotTakenFromTooSmallABottle)
{
    RunShelf shelf;
    shelf.mix("mq", "b1", "Dev 1");
    shelf.mix("fix", "b2", "Fix 1", 500);
    PlanRequest wanted = request(1);
    wanted.needs[1].required = false;
    RunPlan plan = planRun(wanted, shelf.judged());
    EXPECT_FALSE(plan.bath(Role::Fixer)->taken);
    EXPECT_FALSE(plan.blocked());
    ASSERT_EQ(plan.problems.size(), 1u);
    EXPECT_EQ(plan.problems.front().code, PlanProblemCode::LeftOut);
    EXPECT_EQ(plan.problems.front().number, 600);
    EXPECT_EQ(plan.problems.front().limit, 500);
    wanted.needs[1].chosen = shelf.judged()[1].batch.id;
    plan = planRun(wanted, shelf.judged());
    EXPECT_TRUE(plan.bath(Role::Fixer)->taken) << "as the user wants it";
    EXPECT_TRUE(plan.blocked());
}

TEST(Tank, ChecksReelsAndVolume)
{
    const Tank tank{"big", Millilitres(1000), {{"135-36", 4, Millilitres(250)}, {"120", 2, {}}}};
    EXPECT_TRUE(check(tank));
    EXPECT_TRUE(findings(tank, {{{"135-36", 2}, {"120", 1}}, {}}).empty());
    const auto many = findings(tank, {{{"135-36", 3}, {"120", 1}}, {}});
    ASSERT_EQ(many.size(), 1u);
    EXPECT_EQ(many[0].fault, TankFault::TooMany);
    EXPECT_NEAR(many[0].limit, 0.5, 1e-9);
    EXPECT_EQ(findings(tank, {{{"8x10", 1}}, {}})[0].fault, TankFault::NoReel);
    EXPECT_EQ(findings(tank, {{{"9x12cm", 1}}, {}})[0].fault, TankFault::NoReel);
    EXPECT_TRUE(findings(tank, {{{"4.6x61cm", 1}}, {}}).empty()) << "its reel is not known";
    const Tank low{"low", Millilitres(400), {{"135-36", 4, Millilitres(250)}}};
    EXPECT_EQ(findings(low, {{{"135-36", 2}}, {}})[0].fault, TankFault::TooLittleSolution);
    EXPECT_TRUE(findings({"plain", Millilitres(600), {}}, {{{"8x10", 9}}, {}}).empty());
    EXPECT_FALSE(check(Tank{"", Millilitres(600), {}}));
    EXPECT_FALSE(check(Tank{"x", Millilitres(600), {{"nonsense", 1, {}}}}));
}

} // namespace
} // namespace ullage::ledger
