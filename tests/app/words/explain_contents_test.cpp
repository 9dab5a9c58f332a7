// "Where from?" of bottles that came or are used in other ways than mixed, poured out and back.
#include "app/words/explanations.h"

#include "tests/app/words/sample_batches.h"

#include <gtest/gtest.h>

namespace ullage::app
{
namespace
{

using namespace chemistry;
using sample::Bottle;
using sample::day;
using sample::english;

// All that is said of one figure, in lines.
QString saidOf(BottleFigure figure, const ledger::Batch& batch)
{
    return explain(figure, batch, ledger::assess(batch), english()).lines().join(u'\n');
}

ledger::Batch withSolution(ledger::Batch batch, void (*change)(formulary::Solution&))
{
    auto solution = *batch.solution;
    change(solution);
    batch.solution = std::make_shared<const formulary::Solution>(solution);
    return batch;
}

TEST(ExplainContents, WhatIsUsedOnceGoesByItsVolume)
{
    Bottle bottle;
    bottle.happen(day(1), ledger::Processed{
                              {.films = {{"135-36", 1}}}, Millilitres(250), Millilitres(0), true});
    const auto batch = withSolution(bottle.at(day(2)), [](formulary::Solution& solution) {
        solution.oneShotPerFilm = Millilitres(250);
        solution.sources["one_shot_ml_per_film"] = "common practice, no source: a quarter litre";
    });
    const QString said = saidOf(BottleFigure::FilmsLeft, batch);
    EXPECT_TRUE(said.contains("volume in the bottle ÷ volume that a film takes"))
        << said.toStdString();
    EXPECT_TRUE(said.contains("For a film, used once: 250\u00a0ml")) << said.toStdString();
    EXPECT_TRUE(said.contains("a quarter litre"));
    EXPECT_FALSE(said.contains("capacity"));
    EXPECT_TRUE(saidOf(BottleFigure::Bromide, batch).contains("took its share along"));
}

TEST(ExplainContents, AFixerWithoutAFigureHasThatOfItsKind)
{
    const auto acid = withSolution(
        Bottle("fix").at(day(1)), [](formulary::Solution& solution) { solution.capacity.reset(); });
    EXPECT_TRUE(saidOf(BottleFigure::FilmsLeft, acid).contains("Capacity of an acid fixer: 20"));
    const auto alkaline = withSolution(acid, [](formulary::Solution& solution) {
        solution.fixerKind = formulary::FixerKind::Alkaline;
    });
    EXPECT_TRUE(
        saidOf(BottleFigure::FilmsLeft, alkaline).contains("Capacity of an alkaline fixer: 25"));
}

TEST(ExplainContents, SilverThatWasMeasuredIsNotCounted)
{
    Bottle fixer("fix");
    fixer.films(1, 2);
    EXPECT_TRUE(saidOf(BottleFigure::Silver, fixer.at(day(4))).contains("Counted, not measured"));
    fixer.happen(day(5), ledger::Measured{GramsPerLitre(2.5), "test paper"});
    fixer.films(6, 1);
    const QString said = saidOf(BottleFigure::Silver, fixer.at(day(9)));
    EXPECT_TRUE(said.contains("What was measured, and what every film since"))
        << said.toStdString();
    EXPECT_TRUE(said.contains("Measured: 6 June 2026")) << said.toStdString();
    EXPECT_TRUE(said.contains("7 Jun")) << said.toStdString();
    EXPECT_FALSE(said.contains("2 Jun") || said.contains("3 Jun")) << said.toStdString();
    EXPECT_FALSE(said.contains("Counted, not measured"));
}

TEST(ExplainContents, TheSecondOfTwoBathsFeelsAFifth)
{
    Bottle fixer("fix");
    ledger::Processed run{{.films = {{"135-36", 2}}}, Millilitres(600)};
    run.second = true;
    fixer.happen(day(1), run);
    const auto batch = fixer.at(day(2));
    EXPECT_TRUE(saidOf(BottleFigure::FilmsLeft, batch).contains("wears by a fifth for each film"));
    const QString silver = saidOf(BottleFigure::Silver, batch);
    EXPECT_TRUE(silver.contains("a fifth of a film's silver")) << silver.toStdString();
    EXPECT_FALSE(saidOf(BottleFigure::Bromide, batch).contains("fifth"))
        << "all of the bromide comes along";
}

TEST(ExplainContents, OfABottleFoundEverythingIsTheLeast)
{
    Bottle bottle;
    ledger::Mixed found{"mq", "b1", Millilitres(500), "Dev old"};
    found.historyUnknown = true;
    const auto batch = bottle.replaceMixing(found).at(day(3));
    for (const auto figure :
         {BottleFigure::StandingUsed, BottleFigure::AgePart, BottleFigure::AirPart,
          BottleFigure::Bromide, BottleFigure::WearFactor}) {
        const QString said = saidOf(figure, batch);
        EXPECT_TRUE(said.contains("at least ")) << said.toStdString();
        EXPECT_TRUE(said.contains("what was counted is a minimum")) << said.toStdString();
    }
    for (const auto figure : {BottleFigure::KeepsUntil, BottleFigure::DiscardBy}) {
        const QString said = saidOf(figure, batch);
        EXPECT_TRUE(said.contains("Found: 1 June 2026")) << said.toStdString();
        EXPECT_TRUE(said.contains("When it was mixed is not known.")) << said.toStdString();
        EXPECT_FALSE(said.contains("Mixed: "));
    }
    EXPECT_FALSE(saidOf(BottleFigure::AgePart, Bottle().at(day(3))).contains("at least"));
}

TEST(ExplainContents, ReplenisherMovesTheDayOnFromWhichItKeeps)
{
    auto batch = Bottle().at(day(60));
    EXPECT_FALSE(saidOf(BottleFigure::KeepsUntil, batch).contains("Counts from"));
    batch.keepsFrom = Days(20);
    const QString said = saidOf(BottleFigure::KeepsUntil, batch);
    EXPECT_TRUE(said.contains("Mixed: 1 June 2026")) << said.toStdString();
    EXPECT_TRUE(said.contains("Counts from: 21 June 2026")) << said.toStdString();
    EXPECT_TRUE(said.contains("replenisher moves on the day")) << said.toStdString();
    batch.keepsFrom = Days(-20);
    EXPECT_TRUE(saidOf(BottleFigure::KeepsUntil, batch).contains("Something older was poured in"));
}

TEST(ExplainContents, StandingOpenNamesTheExchangeOfATray)
{
    Bottle bottle;
    EXPECT_FALSE(saidOf(BottleFigure::AirPart, bottle.at(day(2))).contains("open tray"));
    bottle.happen(day(1), ledger::StoodOpen{Hours(2), SquareCentimetres(60)});
    const QString said = saidOf(BottleFigure::AirPart, bottle.at(day(2)));
    EXPECT_TRUE(said.contains("Air to solution, open tray: 7\u00a0cm/h")) << said.toStdString();
    const auto published = withSolution(bottle.at(day(2)), [](formulary::Solution& solution) {
        solution.keeping.tray = Hours(24);
    });
    EXPECT_TRUE(saidOf(BottleFigure::AirPart, published).contains("Keeps, open tray: 24"));
}

} // namespace
} // namespace ullage::app
