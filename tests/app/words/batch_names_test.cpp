#include "app/words/batch_names.h"

#include <gtest/gtest.h>

namespace ullage::app
{

using formulary::Role;

TEST(BatchNames, startsAtOne)
{
    EXPECT_EQ(nextBatchName(Role::Developer, {}), "Dev 1");
    EXPECT_EQ(nextBatchName(Role::WashAid, {}), "Wash aid 1");
}

TEST(BatchNames, followsTheHighestOfItsOwnPrefix)
{
    EXPECT_EQ(nextBatchName(Role::Developer, {"Dev 14", "Dev 9", "Fix 30"}), "Dev 15");
    EXPECT_EQ(nextBatchName(Role::Fixer, {"Dev 14", "fix 8", "Fix7"}), "Fix 9");
}

TEST(BatchNames, passesOverNamesOfTheUsersOwn)
{
    EXPECT_EQ(nextBatchName(Role::Developer, {"Dev 3 (old)", "Developer 40", "Dev", "Dev 2026-11",
                                              "Dev -5", "Dev 99999999999999999999", "Dev 2", ""}),
              "Dev 3");
}

TEST(BatchNames, proposesNothingTwice)
{
    QStringList taken;
    for (int i = 0; i < 50; ++i) {
        const QString name = nextBatchName(Role::Stop, taken);
        EXPECT_FALSE(taken.contains(name));
        taken << name;
    }
}

TEST(BatchNames, namesThePartsOfABatchAfterIt)
{
    EXPECT_EQ(partName("Dev 14", {"Dev 14"}), "Dev 14 b");
    EXPECT_EQ(partName("Dev 14", {"Dev 14", "dev 14 B"}), "Dev 14 c");
    QStringList taken;
    for (int i = 0; i < 40; ++i) {
        const QString name = partName("Dev 14", taken);
        EXPECT_FALSE(taken.contains(name, Qt::CaseInsensitive));
        taken << name;
    }
}

} // namespace ullage::app
