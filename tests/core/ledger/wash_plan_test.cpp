#include "core/ledger/wash_plan.h"

#include <gtest/gtest.h>

namespace ullage::ledger
{
namespace
{

using chemistry::Millilitres;
using chemistry::Seconds;
using enum StepKind;

std::vector<StepKind> kinds(const RunTemplate& sheet)
{
    std::vector<StepKind> all;
    for (const TemplateStep& step : sheet.steps) {
        all.push_back(step.kind);
    }
    return all;
}

RunTemplate washed(WashKind kind)
{
    const auto made = withWash(usualTemplates().front(), {.kind = kind});
    EXPECT_TRUE(check(made)) << int(kind);
    return made;
}

TEST(WashPlan, putsThePublishedWaysInPlaceOfTheTemplatesWashing)
{
    EXPECT_EQ(washed(WashKind::AsTemplate), usualTemplates().front());
    const std::vector before{PreWet, Develop, PourBack, WaterStop, Fix, PourBack};
    const auto with = [&](std::vector<StepKind> wash) {
        auto all = before;
        all.insert(all.end(), wash.begin(), wash.end());
        all.push_back(WettingAgent);
        return all;
    };
    const auto running = washed(WashKind::Running);
    EXPECT_EQ(kinds(running), with({Wash}));
    EXPECT_EQ(running.steps[6].time, Seconds(30 * 60));
    const auto changes = washed(WashKind::Changes);
    EXPECT_EQ(kinds(changes), with({FillAndDump}));
    EXPECT_EQ(changes.steps[6].time, Seconds(20 * 60));
    EXPECT_EQ(changes.steps[6].changes, 7); // a full change each three minutes
    const auto aid = washed(WashKind::Aid);
    EXPECT_EQ(kinds(aid), with({Rinse, WashAid, Wash}));
    EXPECT_EQ(aid.steps[6].time, Seconds(30));
    EXPECT_EQ(aid.steps[7].time, Seconds(120));
    EXPECT_EQ(aid.steps[8].time, Seconds(300));
}

TEST(WashPlan, countsFillingsAndWhatTheyLeave)
{
    const WashPlan plan{.kind = WashKind::FillAndDump,
                        .fills = 4,
                        .each = Seconds(90),
                        .filling = Millilitres(475),
                        .carried = Millilitres(25)};
    const auto made = withWash(usualTemplates().front(), plan);
    EXPECT_EQ(made.steps[6].kind, FillAndDump);
    EXPECT_EQ(made.steps[6].changes, 4);
    EXPECT_EQ(made.steps[6].time, Seconds(360));
    EXPECT_NEAR(*shareLeft(plan), 0.05 * 0.05 * 0.05 * 0.05, 1e-15);
    EXPECT_FALSE(shareLeft({.kind = WashKind::Running}));
}

TEST(WashPlan, takesThePouringBackOfTheWashAidWithIt)
{
    RunTemplate sheet = usualTemplates().front();
    sheet.steps.insert(sheet.steps.begin() + 8, {PourBack, Seconds(20), 1, {}});
    ASSERT_EQ(sheet.steps[7].kind, WashAid);
    const auto made = withWash(sheet, {.kind = WashKind::Running});
    EXPECT_EQ(kinds(made), kinds(washed(WashKind::Running)));
}

TEST(WashPlan, findsItsPlaceInATemplateWithoutWashing)
{
    RunTemplate sheet{"mine", {}, {{Fix, Seconds(300), 1, {}}, {WettingAgent, Seconds(60), 1, {}}}};
    EXPECT_EQ(kinds(withWash(sheet, {.kind = WashKind::Running})),
              (std::vector{Fix, Wash, WettingAgent}));
    sheet.steps.pop_back();
    EXPECT_EQ(kinds(withWash(sheet, {.kind = WashKind::Running})), (std::vector{Fix, Wash}));
}

// The tap may be colder than the baths.
TEST(WashPlan, coldTapLengthensWashAndFillings)
{
    RunTemplate sheet{"mine", {}, {{Fix, Seconds(300), 1, {}}}};
    for (const WashKind kind : {WashKind::Running, WashKind::FillAndDump}) {
        SheetRequest request{.sheet = withWash(sheet, {.kind = kind}),
                             .temperature = chemistry::Celsius(20)};
        const auto usual = makeSheet(request)->steps.back();
        EXPECT_EQ(usual.source, TimeSource::Template);
        request.washWater = chemistry::Celsius(12);
        const auto cold = makeSheet(request)->steps.back();
        EXPECT_EQ(cold.planned, usual.planned * 3);
        EXPECT_EQ(cold.source, TimeSource::ColdWash);
        EXPECT_EQ(makeSheet(request)->steps.front().planned, Seconds(300)); // the fixer is warm
        request.washWater = chemistry::Celsius(9);
        EXPECT_FALSE(makeSheet(request));
    }
}

} // namespace
} // namespace ullage::ledger
