#include "app/words/cautions.h"

#include <gtest/gtest.h>

namespace ullage::app
{

using formulary::Role;

TEST(Cautions, usedFixerCarriesSilverWhereverItIsThrownAway)
{
    EXPECT_TRUE(disposalCautions(Role::Fixer).contains(Cautions::silver()));
    EXPECT_TRUE(disposalCautions(Role::Fixer).contains(Cautions::licensed()));
    EXPECT_FALSE(disposalCautions(Role::Stop).contains(Cautions::silver()));
    EXPECT_TRUE(Cautions::silver().contains("40 CFR 261.24"));
    EXPECT_TRUE(Cautions::wasteCode(Role::Fixer).simplified().contains("09 01 04*"));
    EXPECT_TRUE(Cautions::wasteCode(Role::Developer).simplified().contains("09 01 01*"));
}

TEST(Cautions, everyListEndsByDeferringToThePacket)
{
    for (const Role role : {Role::Developer, Role::Stop, Role::Fixer, Role::WashAid,
                            Role::WettingAgent, Role::Other}) {
        EXPECT_EQ(mixingCautions(role).last(), Cautions::packetFirst());
        EXPECT_EQ(disposalCautions(role).last(), Cautions::packetFirst());
        EXPECT_TRUE(disposalCautions(role).contains(Cautions::septicTank()));
        EXPECT_TRUE(mixingCautions(role).contains(Cautions::noCleaners()));
        EXPECT_TRUE(mixingCautions(role).contains(Cautions::labelAndLock()));
    }
}

TEST(Cautions, eachSolutionGetsWhatIsItsOwn)
{
    EXPECT_TRUE(mixingCautions(Role::Developer).contains(Cautions::developerOnSkin()));
    EXPECT_FALSE(mixingCautions(Role::Fixer).contains(Cautions::developerOnSkin()));
    EXPECT_TRUE(mixingCautions(Role::Stop).contains(Cautions::acidIntoWater()));
    EXPECT_TRUE(mixingCautions(Role::Stop).contains(Cautions::glacialAcid()));
    EXPECT_TRUE(mixingCautions(Role::Fixer).contains(Cautions::acidAndSulfite()));
}

TEST(Cautions, thePageHoldsEveryOneOfTheLists)
{
    QStringList page;
    for (const CautionGroup& group : allCautions())
        page << group.cautions;
    for (const Role role : {Role::Developer, Role::Stop, Role::Fixer, Role::WashAid}) {
        for (const QString& caution :
             mixingCautions(role) + disposalCautions(role) + runningCautions() + storingCautions())
            EXPECT_TRUE(page.contains(caution)) << caution.toStdString();
    }
}

} // namespace ullage::app
