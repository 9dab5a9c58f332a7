#include "core/ledger/can_stock.h"

#include "tests/core/ledger/ledger_kit.h"

namespace ullage::ledger
{
namespace
{

using chemistry::GramsPerLitre;
using chemistry::Millilitres;

class CanStockTest : public testing::Test
{
protected:
    Container can{"can", "Fixer can", Waste::Fixer, Millilitres(5000)};
    std::vector<Event> entered;

    std::string add(double days, Happening what, const std::string& batch = {})
    {
        const std::string id = "e" + std::to_string(entered.size());
        entered.push_back({id, batch, History::at(days), std::move(what), {}});
        return id;
    }
    /// "f" holds 800 mL with 3 g/L.
    static Result<std::optional<PouredBatch>> then(const std::string& batch, chemistry::Instant)
    {
        return batch == "f" ? std::optional(PouredBatch{Millilitres(800), GramsPerLitre(3)})
                            : std::nullopt;
    }
    Result<CanStock> fold(double days = 100)
    {
        return canStock(can, entered, then, History::at(days));
    }
};

TEST_F(CanStockTest, aDiscardingPoursAllThatWasLeftWithItsSilver)
{
    add(1, Discarded{"to the can", "can"}, "f");
    const auto stock = fold();
    ASSERT_TRUE(stock);
    EXPECT_EQ(stock->volume, Millilitres(800));
    EXPECT_NEAR(stock->silver, 2.4, 1e-12);
    EXPECT_FALSE(stock->silverAtLeast);
    EXPECT_EQ(fold(0.5)->volume, Millilitres(0));
    ASSERT_EQ(stock->poured.size(), 1U);
    EXPECT_EQ(stock->poured.front().batch, "f");
}

TEST_F(CanStockTest, whatWasPouredInByNameIsNotPouredTwice)
{
    add(1, Discarded{"to the can", "can"}, "f");
    const auto pouring = add(1, PouredIn{"can", Millilitres(500), "f"});
    EXPECT_EQ(fold()->volume, Millilitres(800));
    EXPECT_NEAR(fold()->silver, 2.4, 1e-12);
    EXPECT_EQ(fold()->poured.size(), 2U);
    add(2, Voided{pouring, "it was all of it"});
    EXPECT_EQ(fold()->volume, Millilitres(800));
    EXPECT_EQ(fold()->poured.size(), 1U);
}

TEST_F(CanStockTest, whatWasPouredBeforeTheEndCountsByItself)
{
    add(1, PouredIn{"can", Millilitres(200), "f"});
    add(2, Discarded{"to the can", "can"}, "f");
    EXPECT_EQ(fold()->volume, Millilitres(1000));
}

TEST_F(CanStockTest, tellsWhatWentThroughItInATime)
{
    add(1, PouredIn{"can", Millilitres(1000), "f"}); // 3 g of silver
    add(10, HandedOver{"can", "a collector", Millilitres(400), "no. 7"});
    add(20, PouredIn{"can", Millilitres(500), {}});
    const auto stock = fold();
    const auto early = totalsBetween(*stock, History::at(0), History::at(15));
    EXPECT_EQ(early.poured, Millilitres(1000));
    EXPECT_EQ(early.handed, Millilitres(400));
    EXPECT_NEAR(early.silverHanded, 3 * 0.4, 1e-12);
    const auto late = totalsBetween(*stock, History::at(20), History::at(30));
    EXPECT_EQ(late.poured, Millilitres(500)) << "the first moment is part of it";
    EXPECT_EQ(late.handed, Millilitres(0));
    EXPECT_EQ(totalsBetween(*stock, History::at(0), History::at(20)).poured, Millilitres(1000))
        << "the last is not";
}

TEST_F(CanStockTest, whatIsInsideIsForgottenOnceItWasEmpty)
{
    add(1, PouredIn{"can", Millilitres(300), "f"});
    add(2, HandedOver{"can", {}, Millilitres(100), {}});
    add(3, PouredIn{"can", Millilitres(300), "g"});
    add(4, PouredIn{"can", Millilitres(100), "f"});
    EXPECT_EQ(batchesInside(*fold()), (std::vector<std::string>{"f", "g"}));
    add(5, HandedOver{"can", {}, {}, {}});
    EXPECT_TRUE(batchesInside(*fold()).empty());
    add(6, PouredIn{"can", Millilitres(100), "h"});
    EXPECT_EQ(batchesInside(*fold()), (std::vector<std::string>{"h"}));
}

TEST_F(CanStockTest, ofUnknownSilverItIsTheLeast)
{
    add(1, PouredIn{"can", Millilitres(1000), "f"});
    add(2, PouredIn{"can", Millilitres(1000), {}});
    EXPECT_EQ(fold()->volume, Millilitres(2000));
    EXPECT_NEAR(fold()->silver, 3, 1e-12);
    EXPECT_TRUE(fold()->silverAtLeast);
    add(3, PouredIn{"can", Millilitres(3000.5), {}});
    const auto refused = fold();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::TooMuch);
    EXPECT_EQ(refused.error().high, 3000);
    EXPECT_EQ(refused.error().text, "e2");
}

TEST_F(CanStockTest, ofABottleThatCannotBeReadTheSilverIsNotKnown)
{
    add(1, PouredIn{"can", Millilitres(200), "f"}); // 0.6 g
    add(2, PouredIn{"can", Millilitres(300), "torn"});
    const auto then = [](const std::string& batch, chemistry::Instant at) {
        return batch == "torn" ? Result<std::optional<PouredBatch>>(
                                     refuse({.code = ErrorCode::NotAsEntered, .text = "changed"}))
                               : CanStockTest::then(batch, at);
    };
    const auto stock = canStock(can, entered, then, History::at(100));
    ASSERT_TRUE(stock);
    EXPECT_EQ(stock->volume, Millilitres(500));
    EXPECT_NEAR(stock->silver, 0.6, 1e-12);
    EXPECT_TRUE(stock->silverAtLeast);
}

TEST_F(CanStockTest, isFullUntilItIsHandedOver)
{
    add(1, PouredIn{"can", Millilitres(2000), "f"});
    add(2, PouredIn{"can", Millilitres(2500), {}});
    EXPECT_FALSE(fold(1)->fullAt);
    EXPECT_EQ(fold()->fullAt, History::at(2));
    add(3, HandedOver{"can", "the yard", Millilitres(1500), "note 12"});
    EXPECT_FALSE(fold()->fullAt);
    EXPECT_EQ(fold()->volume, Millilitres(3000));
    EXPECT_NEAR(fold()->silver, 4, 1e-12) << "two thirds of 6 g are left";
    EXPECT_NEAR(fold()->handed.front().silver, 2, 1e-12);
    EXPECT_EQ(fold()->handed.front().document, "note 12");
    add(4, HandedOver{"can", "the yard", {}, {}});
    EXPECT_EQ(fold()->volume, Millilitres(0));
    EXPECT_EQ(fold()->silver, 0);
    EXPECT_FALSE(fold()->silverAtLeast);
    EXPECT_EQ(fold()->handed.back().volume, Millilitres(3000));
}

TEST_F(CanStockTest, theReceiversMeasureMayBeMoreThanTheBooks)
{
    add(1, PouredIn{"can", Millilitres(1000), {}});
    add(2, HandedOver{"can", "the yard", Millilitres(1200), {}});
    EXPECT_EQ(fold()->volume, Millilitres(0));
    EXPECT_EQ(fold()->handed.front().volume, Millilitres(1200));
}

TEST(PouringDoubts, warnOfWhatMustNotMeet)
{
    using formulary::Role;
    using Doubts = std::vector<PouringDoubt>;
    const auto solution = [](Role role, std::vector<std::string> chemicals = {}) {
        formulary::Solution made;
        made.role = role;
        made.chemicals = std::move(chemicals);
        return made;
    };
    const auto can = [](Waste holds) { return Container{"c", "Can", holds, Millilitres(1)}; };
    EXPECT_EQ(pouringDoubts(solution(Role::Fixer), can(Waste::Fixer), {}), Doubts());
    EXPECT_EQ(pouringDoubts(solution(Role::Developer), can(Waste::Developer), {}), Doubts());
    EXPECT_EQ(pouringDoubts(solution(Role::Stop), can(Waste::Fixer), {}),
              (Doubts{PouringDoubt::OtherKind, PouringDoubt::SulfurDioxide}));
    const auto rapid = solution(Role::Fixer, {"ammonium thiosulfate"});
    EXPECT_EQ(pouringDoubts(rapid, can(Waste::Developer), {}),
              (Doubts{PouringDoubt::OtherKind, PouringDoubt::Ammonia}));
    EXPECT_EQ(pouringDoubts(solution(Role::Developer), can(Waste::Other), {&rapid}),
              (Doubts{PouringDoubt::OtherKind, PouringDoubt::Ammonia}));
    EXPECT_EQ(pouringDoubts(solution(Role::WettingAgent), can(Waste::Wash), {}), Doubts());
}

} // namespace
} // namespace ullage::ledger
