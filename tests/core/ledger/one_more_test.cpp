// One more film as the last one: same baths, same way; asked about where that cannot be.
#include "core/ledger/one_more.h"

#include "run_kit.h"

namespace ullage::ledger
{
namespace
{

using chemistry::Millilitres;

class OneMoreTest : public testing::Test
{
protected:
    OneMoreTest()
    {
        dev = shelf.mix("mq", "b1", "Dev 1");
        fix = shelf.mix("fix", "b2", "Fix 1");
        shelf.days(1);
    }
    void run(const Load& load, const std::vector<Bath>& baths)
    {
        ASSERT_TRUE(shelf.book->process({.load = load, .baths = baths}, shelf.now));
    }
    void runBoth(const std::string& format = "120", double count = 2)
    {
        run({{{format, count}, {"135-36", 1}}, {}},
            {{dev, Millilitres(600), Millilitres(20), false, Millilitres(30)},
             {fix, {}, Millilitres(10), false, {}, true}});
    }
    OneMore more(const std::string& batch)
    {
        auto made = oneMore(*shelf.book, batch, shelf.now);
        EXPECT_TRUE(made);
        return *made;
    }

    RunShelf shelf;
    std::string dev;
    std::string fix;
};

TEST_F(OneMoreTest, GoesThroughTheSameBathsInTheSameWay)
{
    runBoth();
    shelf.days(1);
    for (const std::string& batch : {dev, fix}) {
        const OneMore made = more(batch);
        EXPECT_FALSE(made.hindrance);
        EXPECT_EQ(made.run.load, (Load{{{"120", 1}}, {}})) << "one piece, of the first format";
        ASSERT_EQ(made.run.films.size(), 1u);
        EXPECT_EQ(made.run.films[0].format, "120");
        ASSERT_EQ(made.run.baths.size(), 2u);
        EXPECT_EQ(made.run.baths[0].batch, dev);
        EXPECT_EQ(made.run.baths[0].used, Millilitres(600));
        EXPECT_EQ(made.run.baths[0].lost, Millilitres(20));
        EXPECT_EQ(made.run.baths[0].airLeft, Millilitres(30));
        EXPECT_FALSE(made.run.baths[0].second);
        EXPECT_EQ(made.run.baths[1].batch, fix);
        EXPECT_FALSE(made.run.baths[1].used);
        EXPECT_TRUE(made.run.baths[1].second);
        EXPECT_TRUE(shelf.book->process(made.run, shelf.now));
    }
    EXPECT_NEAR(shelf.book->batch(dev, shelf.now)->filmsDone.value(), 5, 1e-9);
}

TEST_F(OneMoreTest, TheLastLoadThatStandsCounts)
{
    runBoth("120");
    shelf.days(1);
    run({{{"4x5in", 4}}, {}}, {{dev, Millilitres(300), {}, false, {}}});
    EXPECT_EQ(more(dev).run.load.films[0].format, "4x5in");
    EXPECT_EQ(more(dev).run.baths.size(), 1u);
    EXPECT_EQ(more(fix).run.load.films[0].format, "120") << "of the fixer that was another";
    EXPECT_EQ(more(fix).run.baths.size(), 2u);
    ASSERT_TRUE(shelf.book->undo());
    EXPECT_EQ(more(dev).run.load.films[0].format, "120") << "taken back, it never was";
}

TEST_F(OneMoreTest, WhatHasDoneNothingIsAsked)
{
    EXPECT_EQ(more(dev).hindrance, OneMoreHindrance::NothingDone);
    run({{}, chemistry::SquareCentimetres(500)}, {{.batch = dev}});
    EXPECT_EQ(more(dev).hindrance, OneMoreHindrance::NothingDone) << "an area has no pieces";
    EXPECT_FALSE(oneMore(*shelf.book, "nobody", shelf.now));
}

TEST_F(OneMoreTest, ABathThatIsGoneOrUnfitIsAsked)
{
    runBoth();
    shelf.days(1);
    shelf.work(fix, 6);
    ASSERT_EQ(assess(*shelf.book->batch(fix, shelf.now)).verdict, Verdict::TestFirst);
    EXPECT_FALSE(more(dev).hindrance) << "a film that went through is told";
    ASSERT_TRUE(shelf.book->record(fix, Looked{false, "smells", {}}, {shelf.now, {}}));
    EXPECT_EQ(more(dev).hindrance, OneMoreHindrance::Discard);
    EXPECT_EQ(more(dev).batch, fix);
    ASSERT_TRUE(shelf.book->record(fix, Discarded{"collected", {}}, {shelf.now, {}}));
    shelf.days(1);
    EXPECT_EQ(more(dev).hindrance, OneMoreHindrance::Gone);
    EXPECT_EQ(more(dev).batch, fix);
}

TEST_F(OneMoreTest, VolumesGoByWhatIsThere)
{
    run({{{"120", 1}}, {}}, {{dev, Millilitres(600), Millilitres(150), false, {}}});
    ASSERT_TRUE(shelf.book->drawOff(dev, Millilitres(500), "given away", {shelf.now, {}}));
    OneMore made = more(dev);
    EXPECT_FALSE(made.hindrance);
    EXPECT_FALSE(made.run.baths[0].used) << "all that is there";
    ASSERT_TRUE(shelf.book->process(made.run, shelf.now));
    ASSERT_TRUE(shelf.book->drawOff(dev, Millilitres(100), "given away", {shelf.now, {}}));
    EXPECT_EQ(more(dev).hindrance, OneMoreHindrance::VolumeShort) << "100 left, 150 were lost";
    const std::string other = shelf.mix("mq", "b3", "Dev 2");
    shelf.days(1);
    run({{{"120", 1}}, {}}, {{other, Millilitres(400), {}, true, {}}});
    EXPECT_FALSE(more(other).hindrance);
    run({{{"120", 1}}, {}}, {{other, Millilitres(400), {}, true, {}}});
    EXPECT_EQ(more(other).hindrance, OneMoreHindrance::VolumeShort)
        << "thrown away, it must be enough";
}

} // namespace
} // namespace ullage::ledger
