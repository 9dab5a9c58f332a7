#include "core/ledger/agitation.h"

#include <gtest/gtest.h>

namespace ullage::ledger
{
namespace
{

using chemistry::Seconds;

Agitation beat(double first, double each, double every)
{
    return {AgitationKind::Intervals, Seconds(first), Seconds(each), Seconds(every)};
}

TEST(Agitation, OpeningSpellThenOneEveryMinute)
{
    const auto blocks = agitationBlocks(beat(30, 10, 60), Seconds(722));
    ASSERT_EQ(blocks.size(), 13u);
    EXPECT_EQ(blocks[0], (AgitationBlock{Seconds(0), Seconds(30)}));
    EXPECT_EQ(blocks[1], (AgitationBlock{Seconds(60), Seconds(70)}));
    EXPECT_EQ(blocks[12], (AgitationBlock{Seconds(720), Seconds(722)})) << "cut at the end";
}

TEST(Agitation, BeatStartsAfterTheOpeningSpell)
{
    const auto blocks = agitationBlocks(beat(60, 5, 30), Seconds(130));
    ASSERT_EQ(blocks.size(), 3u);
    EXPECT_EQ(blocks[1], (AgitationBlock{Seconds(90), Seconds(95)}));
    EXPECT_EQ(agitationBlocks(beat(0, 10, 60), Seconds(70)).front().from, Seconds(60));
}

TEST(Agitation, CueCountsToTheNextChange)
{
    const Agitation a = beat(30, 10, 60);
    const auto at = [&](double t) { return cueAt(a, Seconds(t), Seconds(722)); };
    EXPECT_TRUE(at(0).agitate);
    EXPECT_EQ(at(12).change, Seconds(18));
    EXPECT_FALSE(at(30).agitate);
    EXPECT_EQ(at(435).change, Seconds(45));
    EXPECT_TRUE(at(480).agitate);
    EXPECT_EQ(at(480).change, Seconds(10));
    EXPECT_FALSE(at(722).agitate);
    EXPECT_FALSE(at(900).change);
}

TEST(Agitation, NothingMoreAfterTheLastSpell)
{
    const auto cue = cueAt(beat(30, 10, 60), Seconds(75), Seconds(100));
    EXPECT_FALSE(cue.agitate);
    EXPECT_FALSE(cue.change);
}

TEST(Agitation, ContinuousAndNone)
{
    EXPECT_TRUE(agitationBlocks({}, Seconds(60)).empty());
    const Agitation all{AgitationKind::Continuous};
    ASSERT_EQ(agitationBlocks(all, Seconds(60)).size(), 1u);
    EXPECT_EQ(cueAt(all, Seconds(20), Seconds(60)).change, Seconds(40));
}

TEST(Agitation, RefusesABeatThatCannotBeKept)
{
    EXPECT_TRUE(check(beat(30, 10, 60)));
    EXPECT_EQ(check(beat(30, 61, 60)).error().field, "each");
    EXPECT_EQ(check(beat(30, 10, 0)).error().field, "every");
    EXPECT_EQ(check(beat(-1, 10, 60)).error().field, "first");
}

} // namespace
} // namespace ullage::ledger
