#include "app/words/cautions.h"

#include "app/words/hazards.h"

#include <gtest/gtest.h>

namespace ullage::app
{

using formulary::Role;

namespace
{

formulary::Solution of(Role role, std::vector<std::string> chemicals = {},
                       const std::string& composition = {})
{
    formulary::Solution solution;
    solution.role = role;
    solution.chemicals = std::move(chemicals);
    if (!composition.empty())
        solution.sources["composition"] = composition;
    return solution;
}

QString mixing(const formulary::Solution& solution) { return mixingCautions(solution).join(u' '); }

const std::string kMqBorax = "metol 2, sodium sulfite 100, hydroquinone 5, borax 2 g per litre";

constexpr std::array kRoles{Role::Developer, Role::Stop,         Role::Fixer,
                            Role::WashAid,   Role::WettingAgent, Role::Other};

} // namespace

TEST(Cautions, usedFixerCarriesSilverWhereverItIsThrownAway)
{
    EXPECT_TRUE(disposalCautions(of(Role::Fixer)).contains(Cautions::silver()));
    EXPECT_TRUE(disposalCautions(of(Role::Fixer)).contains(Cautions::licensed()));
    EXPECT_FALSE(disposalCautions(of(Role::Stop)).contains(Cautions::silver()));
    EXPECT_TRUE(Cautions::silver().contains("40 CFR 261.24"));
    EXPECT_TRUE(Cautions::wasteCode(Role::Fixer).simplified().contains("09 01 04*"));
    EXPECT_TRUE(Cautions::wasteCode(Role::Developer).simplified().contains("09 01 01*"));
}

TEST(Cautions, everyListEndsByDeferringToThePacket)
{
    for (const Role role : kRoles) {
        EXPECT_EQ(mixingCautions(of(role)).last(), Cautions::packetFirst());
        EXPECT_EQ(disposalCautions(of(role)).last(), Cautions::packetFirst());
        EXPECT_TRUE(disposalCautions(of(role)).contains(Cautions::septicTank()));
        EXPECT_TRUE(mixingCautions(of(role)).contains(Cautions::noCleaners()));
        EXPECT_TRUE(mixingCautions(of(role)).contains(Cautions::labelAndLock()));
    }
}

TEST(Cautions, eachSolutionGetsWhatIsItsOwn)
{
    EXPECT_TRUE(mixingCautions(of(Role::Developer)).contains(Cautions::developerOnSkin()));
    EXPECT_FALSE(mixingCautions(of(Role::Fixer)).contains(Cautions::developerOnSkin()));
    EXPECT_TRUE(mixingCautions(of(Role::Stop)).contains(Cautions::acidIntoWater()));
    EXPECT_TRUE(mixingCautions(of(Role::Fixer)).contains(Cautions::acidAndSulfite()));
}

// A sheet for weighing out of jars said that a packet is used whole.
TEST(Cautions, onlyAPacketIsUsedWhole)
{
    const auto developer = of(Role::Developer);
    EXPECT_TRUE(mixingCautions(developer).contains(Cautions::wholePacket()));
    const QStringList jars = mixingCautions(developer, MixedFrom::RawChemicals);
    EXPECT_FALSE(jars.contains(Cautions::wholePacket()));
    EXPECT_TRUE(jars.contains(Cautions::powders()));
}

TEST(Cautions, discardingWarnsOfTheGasesAndAsksForOneCanEach)
{
    for (const Role role : kRoles)
        EXPECT_EQ(disposalCautions(of(role)).first(), Cautions::oneCanEach());
    EXPECT_TRUE(Cautions::oneCanEach().contains("sulfur dioxide"));
    EXPECT_TRUE(Cautions::oneCanEach().contains("ammonia"));
    EXPECT_TRUE(Cautions::oneCanEach().contains("One can for each kind"));
}

TEST(Cautions, nobodyEatsAndEyesAreRinsedWhereverSolutionsAreHandled)
{
    QList<QStringList> lists{runningCautions(), clearingTestCautions(), stripTestCautions(),
                             lookCautions()};
    for (const Role role : kRoles)
        lists << mixingCautions(of(role)) << toppingUpCautions(role) << disposalCautions(of(role))
              << pouringCautions(role) << filteringCautions(role);
    for (const QStringList& list : lists) {
        EXPECT_TRUE(list.contains(Cautions::noEating()));
        EXPECT_TRUE(list.contains(Cautions::eyes()));
    }
    EXPECT_TRUE(Cautions::noEating().contains("wash your hands"));
    EXPECT_TRUE(Cautions::eyes().contains("medical help"));
}

TEST(Cautions, whoSmellsFansItTowards)
{
    EXPECT_EQ(lookCautions().first(), Cautions::fanTowards());
    EXPECT_TRUE(Cautions::fanTowards().contains("never sniff"));
}

TEST(Cautions, keepingSaysInertGasAndNoFoodBottleWithoutException)
{
    for (const Role role : kRoles) {
        EXPECT_TRUE(storingCautions(role).contains(Cautions::inertGas()));
        EXPECT_TRUE(storingCautions(role).contains(Cautions::foodBottles()));
        EXPECT_TRUE(mixingCautions(of(role)).contains(Cautions::foodBottles()));
    }
    EXPECT_EQ(Cautions::foodBottles(), "Never in a food or drink bottle.");
    EXPECT_TRUE(Cautions::inertGas().contains("never lighter gas"));
    EXPECT_TRUE(storingCautions(Role::Stop).contains(Cautions::acidPressure()));
    EXPECT_FALSE(storingCautions(Role::Developer).contains(Cautions::acidPressure()));
}

TEST(Cautions, aWarmedBottleHasItsCapLoose)
{
    EXPECT_TRUE(runningCautions().contains(Cautions::warmingBath()));
    for (const Role role : kRoles)
        EXPECT_TRUE(mixingCautions(of(role)).contains(Cautions::warmingBath()))
            << "the guide warms";
    EXPECT_TRUE(Cautions::warmingBath().contains("loosen"));
}

TEST(Cautions, hazardsAreThoseOfWhatIsInIt)
{
    const auto acetic = of(Role::Stop, {"acetic acid"});
    EXPECT_TRUE(mixingCautions(acetic).contains(Cautions::glacialAcid()));
    EXPECT_TRUE(Cautions::glacialAcid().contains("vapour can catch fire"));
    for (const auto& other : {of(Role::Stop, {"citric acid"}), of(Role::Stop)}) {
        EXPECT_FALSE(mixing(other).contains("H226"));
        EXPECT_FALSE(mixing(other).contains("H314"));
    }
    const auto ascorbate = of(Role::Developer, {"phenidone", "sodium ascorbate"});
    EXPECT_FALSE(mixing(ascorbate).contains("H351"));
    EXPECT_FALSE(mixing(ascorbate).contains("H360"));

    const auto borax = of(Role::Developer, {}, kMqBorax);
    EXPECT_TRUE(mixingCautions(borax).contains(Cautions::borax()));
    EXPECT_TRUE(Cautions::borax().contains("H360"));
    EXPECT_TRUE(Cautions::borax().contains("data sheet"));
    for (const char* statement : {"H302", "H317", "H318", "H341", "H351", "H410"})
        EXPECT_TRUE(mixing(borax).contains(statement)) << statement;
    EXPECT_TRUE(mixing(of(Role::Developer, {"Hydroquinone", "Borax"})).contains("H351"));
}

// Limits: see hazards.cpp. 2 g of borax a litre are 0.2 %, 5 g of hydroquinone 0.5 %.
TEST(Cautions, aSolutionCarriesStatementsByTheShareOfWhatIsInIt)
{
    EXPECT_TRUE(hazardCautions(of(Role::Developer, {}, kMqBorax), Strength::AsMixed).isEmpty());
    const auto strong = of(Role::Developer, {}, "hydroquinone 10, borax 3 g per litre");
    EXPECT_EQ(hazardCautions(strong, Strength::AsMixed).size(), 2);
    EXPECT_TRUE(disposalCautions(strong).contains(Cautions::borax()));
    // A share that nobody knows is taken for enough.
    EXPECT_EQ(hazardCautions(of(Role::Developer, {"borax"}), Strength::AsMixed),
              QStringList{Cautions::borax()});
    // Named twice, the line with its share decides.
    EXPECT_TRUE(
        hazardCautions(of(Role::Developer, {"borax"}, kMqBorax), Strength::AsMixed).isEmpty());
}

TEST(Cautions, noListSaysAThingTwice)
{
    QList<QStringList> lists{runningCautions(), clearingTestCautions(), stripTestCautions(),
                             lookCautions()};
    for (const Role role : kRoles) {
        const auto solution = of(role, {"borax", "acetic acid", "hydroquinone", "metol"});
        lists << mixingCautions(solution) << disposalCautions(solution) << storingCautions(role)
              << toppingUpCautions(role);
    }
    QStringList page;
    for (const CautionGroup& group : allCautions())
        page << group.cautions;
    lists << page;
    for (const QStringList& list : lists)
        EXPECT_EQ(QStringList(list).removeDuplicates(), 0) << list.join(u'\n').toStdString();
}

TEST(Cautions, thePageHoldsEveryOneOfTheLists)
{
    QStringList page;
    for (const CautionGroup& group : allCautions())
        page << group.cautions;
    EXPECT_TRUE(page.contains(Cautions::redScreen()));
    for (const Role role : kRoles) {
        const auto solution = of(role, {"borax", "acetic acid", "hydroquinone", "metol"});
        for (const QString& caution : mixingCautions(solution) + disposalCautions(solution) +
                                          runningCautions() + storingCautions(role) +
                                          toppingUpCautions(role) + clearingTestCautions() +
                                          stripTestCautions() + lookCautions())
            EXPECT_TRUE(page.contains(caution)) << caution.toStdString();
    }
}

} // namespace ullage::app
