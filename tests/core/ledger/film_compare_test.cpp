// What films marked have in common, and what sets them apart from the good ones.
#include "core/ledger/film_cause.h"
#include "core/ledger/film_compare.h"
#include "tests/core/ledger/ledger_kit.h"

#include <algorithm>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;
using formulary::Role;

// A film with the bottles it went through, as they were.
struct Made {
    FilmTrace film;

    explicit Made(const std::string& run, const std::string& name = "Harbour")
    {
        film.film = {"f", run, "120", name, 400, ""};
        film.at = startOfTests();
        film.times.emplace();
    }
    Made& through(const std::string& batch, Role role, double wear, double standing = 0,
                  Verdict verdict = Verdict::Good)
    {
        auto solution = role == Role::Fixer ? History::fixer() : History::developer();
        solution.role = role;
        FilmBath bath;
        bath.before.batch.id = batch;
        bath.before.batch.solution = std::make_shared<formulary::Solution>(solution);
        bath.before.batch.wear = FilmsPerLitre(wear);
        bath.before.assessment.standingUsed = standing;
        bath.before.assessment.verdict = verdict;
        film.baths.push_back(bath);
        return *this;
    }
    Made& step(const std::string& kind, double planned, double real)
    {
        film.times->steps.push_back({kind, Seconds(planned), Seconds(real)});
        return *this;
    }
    Made& marked(FilmFault fault)
    {
        FilmMark mark;
        mark.fault = fault;
        film.marks.push_back(mark);
        return *this;
    }
    Made& warmth(double celsius)
    {
        film.times->temperature = Celsius(celsius);
        return *this;
    }
};

std::vector<FilmTrace> films(std::initializer_list<Made> made)
{
    std::vector<FilmTrace> all;
    for (const Made& one : made) {
        all.push_back(one.film);
    }
    return all;
}

const TraitFound* find(const std::vector<TraitFound>& found, FilmTrait trait,
                       const std::string& subject = {})
{
    const auto one = std::find_if(found.begin(), found.end(), [&](const TraitFound& each) {
        return each.trait == trait && (subject.empty() || each.subject == subject);
    });
    return one == found.end() ? nullptr : &*one;
}

} // namespace

TEST(FilmCompare, TheBottleThatOnlyTheMarkedWentThroughStandsApart)
{
    const auto marked =
        films({Made("r1").through("d1", Role::Developer, 8).through("x", Role::Fixer, 3),
               Made("r2").through("d1", Role::Developer, 9).through("x", Role::Fixer, 5)});
    const auto good =
        films({Made("r3").through("d2", Role::Developer, 1).through("x", Role::Fixer, 4),
               Made("r4").through("d2", Role::Developer, 2).through("x", Role::Fixer, 6),
               Made("r0").through("d1", Role::Developer, 2).through("x", Role::Fixer, 1)});
    const auto found = compareFilms(marked, good);
    EXPECT_EQ(found.marked, 2);
    EXPECT_EQ(found.good, 3);
    const TraitFound* bottle = find(found.apart, FilmTrait::Bottle, "d1");
    ASSERT_TRUE(bottle);
    EXPECT_EQ(bottle->role, Role::Developer);
    EXPECT_EQ(bottle->marked.with, 2);
    EXPECT_EQ(bottle->marked.known, 2);
    EXPECT_EQ(bottle->good.with, 1);
    EXPECT_EQ(bottle->good.known, 3);
    const TraitFound* worn = find(found.apart, FilmTrait::WearOver);
    ASSERT_TRUE(worn);
    EXPECT_EQ(worn->number, 8) << "the least of them";
    EXPECT_EQ(worn->good.with, 0);
    EXPECT_EQ(found.apart.front().trait, FilmTrait::WearOver) << "none against one of three";
    // All went through the same fixer: in common, but so did the good ones.
    EXPECT_FALSE(find(found.apart, FilmTrait::Bottle, "x"));
    EXPECT_TRUE(find(found.common, FilmTrait::Bottle, "x"));
    EXPECT_TRUE(find(found.common, FilmTrait::Film, "Harbour"));
    EXPECT_EQ(found.suspects, std::vector<std::string>{"d1"});
}

TEST(FilmCompare, ATraitMustBeSharedByAllOfFewAndMostOfMany)
{
    const auto one = Made("r1").through("d1", Role::Developer, 0);
    const auto other = Made("r2").through("d2", Role::Developer, 0);
    const auto good = films({Made("r3").through("d3", Role::Developer, 0)});
    EXPECT_FALSE(find(compareFilms(films({one, one, other}), good).apart, FilmTrait::Bottle));
    const auto found = compareFilms(films({one, one, one, other}), good);
    ASSERT_TRUE(find(found.apart, FilmTrait::Bottle, "d1"));
    EXPECT_EQ(find(found.apart, FilmTrait::Bottle, "d1")->marked.with, 3);
    EXPECT_EQ(find(found.apart, FilmTrait::Bottle, "d1")->marked.known, 4);
    EXPECT_FALSE(find(found.apart, FilmTrait::Bottle, "d2"));
}

TEST(FilmCompare, StandingAndAVerdictOfBeforeArePointedAtWithTheirBottles)
{
    const auto marked =
        films({Made("r1").through("d1", Role::Developer, 0, 1.1, Verdict::TestFirst),
               Made("r2").through("d2", Role::Developer, 0, 1.3, Verdict::Discard)});
    const auto good = films({Made("r3").through("d3", Role::Developer, 0, 0.4),
                             Made("r4").through("d3", Role::Developer, 0, 0.5)});
    const auto found = compareFilms(marked, good);
    ASSERT_TRUE(find(found.apart, FilmTrait::StandingOver));
    EXPECT_EQ(find(found.apart, FilmTrait::StandingOver)->number, 1.1);
    EXPECT_TRUE(find(found.apart, FilmTrait::BeyondVerdict));
    EXPECT_FALSE(find(found.apart, FilmTrait::WearOver)) << "fresh bottles say nothing";
    EXPECT_EQ(found.suspects, (std::vector<std::string>{"d1", "d2"}));
}

TEST(FilmCompare, StepsThatRanOverOrWereCutShort)
{
    const auto marked = films({Made("r1").step("develop", 600, 690).step("fix", 300, 240),
                               Made("r2").step("develop", 500, 600).step("fix", 300, 270)});
    const auto good = films({Made("r3").step("develop", 600, 604).step("fix", 300, 301),
                             Made("r4").step("develop", 600, 660).step("fix", 300, 310),
                             Made("r5").step("develop", 600, 603).step("fix", 300, 296)});
    const auto found = compareFilms(marked, good);
    const TraitFound* longer = find(found.apart, FilmTrait::StepLonger, "develop");
    ASSERT_TRUE(longer);
    EXPECT_NEAR(longer->number, 0.15, 1e-9);
    EXPECT_EQ(longer->good.with, 0);
    const TraitFound* shorter = find(found.apart, FilmTrait::StepShorter, "fix");
    ASSERT_TRUE(shorter);
    EXPECT_NEAR(shorter->number, -0.1, 1e-9);
    // A few seconds are no overrun, whatever their share.
    const auto quick = films({Made("r1").step("rinse", 20, 24)});
    EXPECT_FALSE(find(compareFilms(quick, good).apart, FilmTrait::StepLonger));
    EXPECT_TRUE(compareFilms(marked, good).suspects.empty()) << "no bottle is to blame for a clock";
}

TEST(FilmCompare, TemperatureCountsWhereItIsKnown)
{
    const auto good = films({Made("r3").warmth(20), Made("r4").warmth(20.2), Made("r5")});
    const auto cold = compareFilms(films({Made("r1").warmth(17), Made("r2").warmth(18)}), good);
    const TraitFound* colder = find(cold.apart, FilmTrait::Colder);
    ASSERT_TRUE(colder);
    EXPECT_EQ(colder->number, 18);
    EXPECT_EQ(colder->good.known, 2) << "of the third nobody knows";
    EXPECT_FALSE(find(cold.apart, FilmTrait::Warmer));
    const auto warm = compareFilms(films({Made("r1").warmth(23), Made("r2")}), good);
    ASSERT_TRUE(find(warm.apart, FilmTrait::Warmer));
    EXPECT_EQ(find(warm.apart, FilmTrait::Warmer)->marked.known, 1);
    EXPECT_FALSE(
        find(compareFilms(films({Made("r1").warmth(20.2)}), good).apart, FilmTrait::Warmer));
}

TEST(FilmCompare, WhatWasRunDifferentlyFromItsPlanComesFirst)
{
    const auto marked = films({Made("r1")
                                   .through("d1", Role::Developer, 8)
                                   .step("develop", 634, 59)
                                   .step("fix", 300, 310)
                                   .step("wash", 600, 400)
                                   .marked(FilmFault::Thin)});
    const auto good = films({Made("r3").through("d2", Role::Developer, 1).step("develop", 600, 604),
                             Made("r4").through("d2", Role::Developer, 1).step("develop", 60, 20)});
    auto found = compareFilms(marked, good, FilmFault::Thin);
    ASSERT_EQ(found.offPlan.size(), 1u) << "a short wash thins nothing";
    EXPECT_EQ(found.offPlan[0].step, "develop");
    EXPECT_EQ(found.offPlan[0].planned, Seconds(634));
    EXPECT_EQ(found.offPlan[0].real, Seconds(59));
    EXPECT_EQ(found.offPlan[0].marked.with, 1);
    ASSERT_FALSE(found.apart.empty());
    EXPECT_EQ(found.apart.front().trait, FilmTrait::StepShorter)
        << "before the bottle, that no good film went through";
    found = compareFilms(marked, {}, FilmFault::Thin);
    EXPECT_EQ(found.offPlan.size(), 1u) << "nothing good is needed to see it";
    EXPECT_TRUE(compareFilms(films({Made("r1").step("develop", 600, 604)}), {}).offPlan.empty());
}

TEST(FilmCompare, FilmsOfTheSameRunAreNoGoodOnes)
{
    const auto marked = films({Made("r1").through("d1", Role::Developer, 8)});
    const auto good = films({Made("r1").through("d1", Role::Developer, 8),
                             Made("r3").through("d2", Role::Developer, 1)});
    const auto found = compareFilms(marked, good);
    EXPECT_EQ(found.good, 1);
    const TraitFound* bottle = find(found.apart, FilmTrait::Bottle, "d1");
    ASSERT_TRUE(bottle);
    EXPECT_EQ(bottle->good.with, 0);
}

TEST(FilmCompare, OneRunIsSaidOnlyOfSeveralFilms)
{
    const auto good = films({Made("r3")});
    EXPECT_TRUE(find(compareFilms(films({Made("r1"), Made("r1")}), good).apart, FilmTrait::OneRun));
    EXPECT_FALSE(find(compareFilms(films({Made("r1")}), good).apart, FilmTrait::OneRun));
    EXPECT_FALSE(
        find(compareFilms(films({Made("r1"), Made("r2")}), good).apart, FilmTrait::OneRun));
}

TEST(FilmCompare, WithoutGoodFilmsNothingStandsApart)
{
    const auto found = compareFilms(films({Made("r1").through("d1", Role::Developer, 8)}), {});
    EXPECT_TRUE(found.apart.empty());
    EXPECT_TRUE(find(found.common, FilmTrait::Bottle, "d1"));
    EXPECT_TRUE(found.suspects.empty());
    EXPECT_TRUE(compareFilms({}, {}).common.empty());
}

TEST(FilmCompare, WhatCannotBeACauseIsNotPointedAt)
{
    const auto thin = [](const char* run) {
        return Made(run)
            .through("d1", Role::Developer, 8)
            .through("x1", Role::Fixer, 18)
            .step("fix", 300, 400)
            .marked(FilmFault::Thin);
    };
    const auto good =
        films({Made("r3").through("d2", Role::Developer, 1).through("x2", Role::Fixer, 1)});
    const auto found = compareFilms(films({thin("r1"), thin("r2")}), good);
    EXPECT_TRUE(find(found.apart, FilmTrait::Bottle, "d1"));
    EXPECT_FALSE(find(found.apart, FilmTrait::Bottle, "x1")) << "a fixer can't thin a film";
    EXPECT_EQ(found.suspects, std::vector<std::string>{"d1"});
    std::vector<std::pair<FilmTrait, NoCause>> out;
    for (const RuledOut& one : found.ruledOut) {
        EXPECT_EQ(one.fault, FilmFault::Thin);
        out.emplace_back(one.found.trait, one.why);
    }
    EXPECT_NE(std::find(out.begin(), out.end(), std::pair(FilmTrait::Bottle, NoCause::AfterImage)),
              out.end());
    EXPECT_NE(
        std::find(out.begin(), out.end(), std::pair(FilmTrait::WearOver, NoCause::AfterImage)),
        out.end());
    // The same films as not clear: now it is the fixer, and the developer is out.
    auto milky = films({thin("r1"), thin("r2")});
    for (FilmTrace& film : milky) {
        film.marks.front().fault = FilmFault::NotClear;
    }
    const auto other = compareFilms(milky, good);
    EXPECT_TRUE(find(other.apart, FilmTrait::Bottle, "x1"));
    EXPECT_FALSE(find(other.apart, FilmTrait::Bottle, "d1"));
    // What both have in common with the good ones is no cause either.
    const auto same = compareFilms(
        films({Made("r1").through("x2", Role::Fixer, 1).marked(FilmFault::Thin)}), good);
    EXPECT_FALSE(find(same.common, FilmTrait::Bottle, "x2"));
}

TEST(FilmCompare, OfSeveralMarksWhatCanCauseOneStays)
{
    const auto both = Made("r1")
                          .through("d1", Role::Developer, 8)
                          .through("x1", Role::Fixer, 18)
                          .marked(FilmFault::Thin)
                          .marked(FilmFault::NotClear);
    const auto good =
        films({Made("r3").through("d2", Role::Developer, 1).through("x2", Role::Fixer, 1)});
    const auto any = compareFilms(films({both}), good);
    EXPECT_TRUE(find(any.apart, FilmTrait::Bottle, "d1"));
    EXPECT_TRUE(find(any.apart, FilmTrait::Bottle, "x1"));
    EXPECT_TRUE(any.ruledOut.empty());
    const auto thin = compareFilms(films({both}), good, FilmFault::Thin);
    EXPECT_FALSE(find(thin.apart, FilmTrait::Bottle, "x1")) << "asked about thin alone";
}

TEST(FilmTraces, BottlesAreAsTheyWereJustBefore)
{
    History history;
    history.mix("dev", 1000);
    const auto first = history.run(1, 2);
    const auto second = history.run(20, 3);
    const auto taken = history.run(30, 1);
    history.add(31, Voided{taken, "empty reel"});
    const auto before = outlooksBefore(history.entered, {first, second, taken}, history.formulary);
    ASSERT_TRUE(before);
    ASSERT_EQ(before->size(), 2u) << "the one taken back is left out";
    EXPECT_EQ(before->at(first).batch.wear.value(), 0);
    EXPECT_EQ(before->at(second).batch.wear.value(), 2);
    EXPECT_EQ(before->at(second).batch.asOf, History::at(20));
    EXPECT_GT(*before->at(second).assessment.standingUsed,
              *before->at(first).assessment.standingUsed);
    EXPECT_EQ(before->at(second).assessment.verdict, Verdict::Good);
    RunTimes times;
    times.run = "r";
    times.steps = {{"fix", Seconds(1), Seconds(2)}};
    const auto note = history.add(40, Noted{"", times});
    ASSERT_TRUE(timesOfRun(history.entered, "r"));
    EXPECT_FALSE(timesOfRun(history.entered, "other"));
    history.add(41, Voided{note, "undone"});
    EXPECT_FALSE(timesOfRun(history.entered, "r"));
}

} // namespace ullage::ledger
