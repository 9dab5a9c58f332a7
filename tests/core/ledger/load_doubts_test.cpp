// Which loads look like a slip of the keys.
#include "core/ledger/load_doubts.h"

#include "run_kit.h"

namespace ullage::ledger
{
namespace
{

class LoadDoubtsTest : public testing::Test
{
protected:
    LoadDoubtsTest()
    {
        dev = shelf.mix("mq", "b1", "Dev 1");
        fix = shelf.mix("fix", "b2", "Fix 1");
        shelf.work(dev, 4);
    }
    LoadDoubts of(double films, bool oneShot = false)
    {
        const FilmRun run{.load = {{{"135-36", films}}, {}},
                          .baths = {{.batch = dev, .oneShot = oneShot}, {.batch = fix}}};
        return doubtsOf(run, shelf.judged());
    }

    RunShelf shelf;
    std::string dev;
    std::string fix;
};

TEST_F(LoadDoubtsTest, WhatABottleCanStillDoIsNotDoubted)
{
    EXPECT_FALSE(of(1).any());
    EXPECT_FALSE(of(6).any()) << "10 less the 4 it has done";
}

TEST_F(LoadDoubtsTest, MoreThanThatIsWithTheNumber)
{
    const LoadDoubts so = of(7);
    ASSERT_EQ(so.beyond.size(), 1u) << "the fixer can do 20";
    EXPECT_EQ(so.beyond[0].batch, dev);
    EXPECT_NEAR(so.beyond[0].left.value(), 6, 1e-9);
    EXPECT_FALSE(so.manyForATank);
    EXPECT_TRUE(of(7, true).beyond.empty()) << "thrown away, it is not worn";
}

TEST_F(LoadDoubtsTest, MoreThanATankTakesIsToo)
{
    EXPECT_FALSE(of(20).manyForATank);
    const LoadDoubts so = of(9999);
    EXPECT_TRUE(so.manyForATank);
    EXPECT_NEAR(so.load.value(), 9999, 1e-9);
    EXPECT_EQ(so.beyond.size(), 2u);
    const FilmRun elsewhere{.load = {{{"120", 21}}, {}}, .baths = {{.batch = "gone"}}};
    EXPECT_TRUE(doubtsOf(elsewhere, {}).manyForATank) << "whatever is known of the bottles";
}

} // namespace
} // namespace ullage::ledger
