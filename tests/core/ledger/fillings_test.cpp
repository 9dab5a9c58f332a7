// Halves of fillings, and which belong together.
#include "core/ledger/fillings.h"

#include "tests/core/ledger/bottles_kit.h"

#include <gtest/gtest.h>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

TEST(Fillings, everyHalfFindsItsOwnOtherHalf)
{
    Bottles shelf;
    shelf.fresh("a", 0, 500);
    shelf.fresh("b", 0, 100);
    shelf.pour("a", "b", 1, 50);
    shelf.pour("a", "b", 1, 50); // entered twice
    shelf.happen("a", 2, Drawn{Millilitres(10), "spilled", {}});
    const auto& all = shelf.entered;
    ASSERT_EQ(all.size(), 7u);
    EXPECT_EQ(otherHalf(all, all[2], {}), &all[3]);
    EXPECT_EQ(otherHalf(all, all[3], {}), &all[2]);
    EXPECT_EQ(otherHalf(all, all[5], {}), &all[4]);
    EXPECT_EQ(otherHalf(all, all[6], {}), nullptr) << "poured away, not into a bottle";
    EXPECT_EQ(otherHalf(all, all[2], {all[3].id, all[5].id}), nullptr) << "taken back already";
    EXPECT_EQ(otherHalf(all, all[4], {all[2].id, all[3].id}), &all[5]);
}

} // namespace
} // namespace ullage::ledger
