#include "run_kit.h"

#include "core/ledger/run_sheet.h"

#include <cmath>

namespace ullage::ledger
{
namespace
{

using chemistry::Celsius;
using chemistry::Seconds;

struct Bench : RunShelf {
    std::string dev = mix("mq", "b1", "Dev 1");
    std::string fix = mix("fix", "b2", "Fix 1");
    std::vector<Judged> all;

    SheetRequest sheet(bool oneShot = false)
    {
        all = judged();
        return {usualTemplates()[0],
                Celsius(20),
                {{Celsius(20), Seconds(570)}},
                {{&all[0], oneShot}, {&all[1], false}},
                false};
    }
};

std::vector<StepKind> kinds(const RunSheet& sheet)
{
    std::vector<StepKind> found;
    for (const RunStep& step : sheet.steps) {
        found.push_back(step.kind);
    }
    return found;
}

const RunStep& step(const RunSheet& sheet, StepKind kind)
{
    for (const RunStep& step : sheet.steps) {
        if (step.kind == kind) {
            return step;
        }
    }
    throw std::out_of_range("no such step");
}

TEST(RunSheet, StepsOfTheUsualRun)
{
    Bench bench;
    const auto sheet = makeSheet(bench.sheet());
    ASSERT_TRUE(sheet);
    using enum StepKind;
    EXPECT_EQ(kinds(*sheet), (std::vector{PreWet, Develop, PourBack, WaterStop, Fix, PourBack,
                                          Rinse, WashAid, Wash, WettingAgent}));
    EXPECT_EQ(sheet->steps[2].batch, bench.dev);
    EXPECT_EQ(sheet->steps[5].batch, bench.fix);
    EXPECT_EQ(sheet->steps[0].changes, 3);
    EXPECT_EQ(step(*sheet, Fix).caution, StepCaution::Fixer);
    EXPECT_EQ(sheet->steps[2].caution, StepCaution::PourBack);
}

TEST(RunSheet, DevelopingTimeWithWearStripAndTemperature)
{
    Bench bench;
    bench.work(bench.dev, 3);
    ASSERT_TRUE(bench.book->record(bench.dev, StripTested{{}, 1.1, true}, {bench.now, {}}));
    SheetRequest request = bench.sheet();
    request.temperature = Celsius(21);
    const auto sheet = makeSheet(request);
    ASSERT_TRUE(sheet);
    const DevelopingFactors& f = *sheet->developing;
    EXPECT_NEAR(f.temperature, std::pow(1.9, -0.1), 1e-12);
    EXPECT_NEAR(f.wear, 1.3, 1e-12);
    EXPECT_NEAR(f.strip, 1.1, 1e-12);
    EXPECT_NEAR(f.time.value(), 570 * std::pow(1.9, -0.1) * 1.3 * 1.1, 1e-9);
    EXPECT_EQ(step(*sheet, StepKind::Develop).planned, inUse(f.time)) << "as every page shows it";
    EXPECT_EQ(step(*sheet, StepKind::Develop).source, TimeSource::Developing);
}

TEST(RunSheet, FixingTimeFromTestsElseFigureElseTheUsers)
{
    Bench bench;
    auto sheet = makeSheet(bench.sheet());
    EXPECT_EQ(step(*sheet, StepKind::Fix).planned, Seconds(390));
    EXPECT_EQ(step(*sheet, StepKind::Fix).source, TimeSource::UserFigure);
    EXPECT_FALSE(sheet->fixing->clearing);
    ASSERT_TRUE(
        bench.book->record(bench.fix, ClearingTested{Seconds(195), Celsius(20)}, {bench.now, {}}));
    sheet = makeSheet(bench.sheet());
    EXPECT_EQ(step(*sheet, StepKind::Fix).planned, Seconds(390));
    EXPECT_EQ(step(*sheet, StepKind::Fix).source, TimeSource::ClearingTest);
    SheetRequest cold = bench.sheet();
    cold.temperature = Celsius(15);
    cold.tabularGrain = true;
    sheet = makeSheet(cold);
    EXPECT_NEAR(sheet->fixing->time.value(), 195 * 3 * std::pow(2, 0.5), 1e-9);
}

TEST(RunSheet, FilmIsNeverFixedForLessThanWasReckoned)
{
    Bench bench;
    ASSERT_TRUE(
        bench.book->record(bench.fix, ClearingTested{Seconds(66), Celsius(20)}, {bench.now, {}}));
    const auto sheet = makeSheet(bench.sheet());
    EXPECT_EQ(sheet->fixing->time, Seconds(132));
    EXPECT_EQ(step(*sheet, StepKind::Fix).planned, Seconds(135));
}

TEST(RunSheet, SolutionFigureStandsInForATest)
{
    Bench bench;
    formulary::Solution solution = *bench.book->formulary().solution("fix");
    solution.id = "fix-2";
    solution.freshClearing = Seconds(120);
    ASSERT_TRUE(bench.book->add(solution));
    bench.mix("fix-2", "b3", "Fix 2");
    SheetRequest request = bench.sheet();
    request.baths[1].judged = &bench.all[2];
    const auto sheet = makeSheet(request);
    EXPECT_EQ(step(*sheet, StepKind::Fix).planned, Seconds(240));
    EXPECT_EQ(step(*sheet, StepKind::Fix).source, TimeSource::SolutionFigure);
}

TEST(RunSheet, OneShotIsNotPouredBack)
{
    Bench bench;
    const auto sheet = makeSheet(bench.sheet(true));
    ASSERT_TRUE(sheet);
    EXPECT_EQ(sheet->steps.size(), 9u);
    EXPECT_EQ(sheet->steps[2].kind, StepKind::WaterStop);
    EXPECT_EQ(sheet->steps[4].batch, bench.fix) << "the fixer still is";
}

TEST(RunSheet, AcidStopWithoutABottleIsNotPouredBackIntoTheDeveloper)
{
    Bench bench;
    SheetRequest request = bench.sheet();
    request.sheet = usualTemplates()[1];
    const auto sheet = makeSheet(request);
    ASSERT_TRUE(sheet);
    EXPECT_EQ(sheet->steps[3].kind, StepKind::AcidStop);
    EXPECT_TRUE(sheet->steps[3].batch.empty());
    EXPECT_EQ(sheet->steps[4].kind, StepKind::Fix);
}

TEST(RunSheet, NoFigureNoTime)
{
    Bench bench;
    SheetRequest request = bench.sheet();
    request.pairs.clear();
    EXPECT_EQ(makeSheet(request).error().code, ErrorCode::NoFigure);
    request = bench.sheet();
    request.baths.erase(request.baths.begin());
    EXPECT_EQ(makeSheet(request).error().field, "developer");
    request = bench.sheet();
    request.temperature = Celsius(12);
    EXPECT_EQ(makeSheet(request).error().code, ErrorCode::OutOfRange);
}

TEST(RunSheet, ColdWaterLengthensTheRunningWash)
{
    Bench bench;
    EXPECT_EQ(step(*makeSheet(bench.sheet()), StepKind::Wash).planned, Seconds(300));
    EXPECT_EQ(step(*makeSheet(bench.sheet()), StepKind::Wash).source, TimeSource::Template);
    SheetRequest cold = bench.sheet();
    cold.temperature = Celsius(14);
    const auto sheet = makeSheet(cold);
    ASSERT_TRUE(sheet);
    EXPECT_EQ(step(*sheet, StepKind::Wash).planned, Seconds(900));
    EXPECT_EQ(step(*sheet, StepKind::Wash).source, TimeSource::ColdWash);
    EXPECT_EQ(step(*sheet, StepKind::Rinse).planned, Seconds(60));
}

TEST(RunSheet, TemplatesAreChecked)
{
    for (const RunTemplate& sheet : usualTemplates()) {
        EXPECT_TRUE(check(sheet)) << sheet.id;
    }
    RunTemplate bad = usualTemplates()[0];
    bad.steps[0].time = Seconds(0);
    EXPECT_EQ(check(bad).error().field, "time_s");
    bad = usualTemplates()[0];
    bad.steps[0].kind = StepKind::PourBack;
    EXPECT_FALSE(check(bad));
    bad.steps.clear();
    EXPECT_FALSE(check(bad));
    bad = usualTemplates()[0];
    bad.steps.push_back(bad.steps[4]);
    EXPECT_EQ(check(bad).error().text, "fix");
    for (const auto code : kStepCodes) {
        EXPECT_EQ(ullage::ledger::code(*stepFromCode(code)), code);
    }
    EXPECT_FALSE(stepFromCode("tea"));
}

} // namespace
} // namespace ullage::ledger
