// What vouches for a bottle of which little is known.
#include "core/ledger/verdict.h"

#include "core/chemistry/pace.h"
#include "tests/core/ledger/ledger_kit.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

bool has(const Assessment& so, ReasonCode code)
{
    return std::any_of(so.reasons.begin(), so.reasons.end(),
                       [&](const Reason& reason) { return reason.code == code; });
}

// "known" is a fixer whose fresh clearing time its maker gives.
History found(const std::string& solution)
{
    History history;
    auto known = History::fixer();
    known.id = "known";
    known.freshClearing = Seconds(70);
    history.formulary.add(known);
    history.add(0, Mixed{solution, "glass", Millilitres(1000), {}, {}, true});
    return history;
}

TEST(Verdict, unknownHistoryIsTestedFirst)
{
    auto history = found("dev");
    EXPECT_EQ(assess(history.batch(0)).verdict, Verdict::TestFirst);
    EXPECT_TRUE(has(assess(history.batch(0)), ReasonCode::HistoryUnknown));
    history.add(1, Looked{true, "leader test"});
    EXPECT_EQ(assess(history.batch(1)).verdict, Verdict::Good);
    EXPECT_FALSE(has(assess(history.batch(14.99)), ReasonCode::HistoryUnknown));
    EXPECT_TRUE(has(assess(history.batch(15)), ReasonCode::HistoryUnknown));
    history.run(2, 1.99);
    EXPECT_FALSE(has(assess(history.batch(2)), ReasonCode::HistoryUnknown));
    history.run(2, 0.01);
    EXPECT_TRUE(has(assess(history.batch(2)), ReasonCode::HistoryUnknown));
}

TEST(Verdict, stripsAndGoodClearingTestsVouchToo)
{
    auto strip = found("dev");
    strip.add(1, StripTested{{}, {}, true});
    EXPECT_EQ(assess(strip.batch(2)).verdict, Verdict::Good);
    // A test that neither passed nor failed says nothing.
    auto reading = found("dev");
    reading.add(1, StripTested{1.2, {}, {}});
    EXPECT_EQ(assess(reading.batch(2)).verdict, Verdict::TestFirst);
    auto cleared = found("known");
    cleared.add(1, ClearingTested{Seconds(60), Celsius(20)});
    EXPECT_EQ(assess(cleared.batch(2)).verdict, Verdict::Good);
    // No test of a bottle found is a fresh one, so by itself it compares with nothing.
    auto alone = found("fixer");
    alone.add(1, ClearingTested{Seconds(60), Celsius(20)});
    EXPECT_EQ(assess(alone.batch(2)).verdict, Verdict::TestFirst);
    // A developer is not vouched for by a clearing test.
    auto odd = found("dev");
    odd.add(1, ClearingTested{Seconds(60), Celsius(20)});
    EXPECT_EQ(assess(odd.batch(2)).verdict, Verdict::TestFirst);
}

TEST(Verdict, aPassVouchesForItsTimeThoughALaterTestFails)
{
    auto bottle = found("known");
    bottle.add(1, ClearingTested{Seconds(60), Celsius(20)});
    bottle.add(2, ClearingTested{Seconds(150), Celsius(20)});
    const auto so = assess(bottle.batch(3));
    EXPECT_TRUE(has(so, ReasonCode::ClearingDoubled));
    EXPECT_FALSE(has(so, ReasonCode::HistoryUnknown));
    EXPECT_TRUE(has(assess(bottle.batch(15)), ReasonCode::HistoryUnknown));
}

} // namespace
} // namespace ullage::ledger
