#include "core/chemistry/dilution.h"

#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

TEST(Dilution, partsGiveTheStrengthAskedFor)
{
    for (const double from : {99.5, 60.0, 28.0}) {
        for (const double share : {0.01, 0.3, 1.0}) {
            const auto parts = dilutionByWeight(from, from * share);
            ASSERT_TRUE(parts);
            EXPECT_NEAR(mixedPercent(parts->concentrate, from, parts->water), from * share, 1e-12);
        }
    }
}

TEST(Dilution, byVolumeNothingIsLostByWeight)
{
    const Strength glacial{99.5, 1.049};
    const Strength weak{28, 1.037};
    const auto pour = dilutionByVolume(Millilitres(1000), glacial, weak);
    ASSERT_TRUE(pour);
    const double acid = pour->concentrate.value() * glacial.density;
    const double water = pour->water.value() * 0.99821;
    EXPECT_NEAR(acid + water, 1000 * weak.density, 1e-6);
    EXPECT_NEAR(mixedPercent(acid, glacial.percent, water), weak.percent, 1e-9);
    EXPECT_GT((pour->concentrate + pour->water).value(), 1000); // the two shrink together
}

TEST(Dilution, undilutedIsPouredAsItIs)
{
    const Strength same{60, 1.06};
    const auto pour = dilutionByVolume(Millilitres(250), same, same);
    ASSERT_TRUE(pour);
    EXPECT_NEAR(pour->concentrate.value(), 250, 1e-9);
    EXPECT_NEAR(pour->water.value(), 0, 1e-9);
}

TEST(Dilution, refusesWhatCannotBe)
{
    EXPECT_EQ(dilutionByWeight(101, 28).error().field, "from");
    EXPECT_EQ(dilutionByWeight(0, 0).error().field, "from");
    EXPECT_EQ(dilutionByWeight(28, 60).error().field, "to");
    EXPECT_EQ(dilutionByWeight(28, 0).error().field, "to");
    const Strength weak{28, 1.037};
    EXPECT_EQ(dilutionByVolume(Millilitres(1000), {99.5, 10.49}, weak).error().field, "density");
    EXPECT_EQ(dilutionByVolume(Millilitres(0), {99.5, 1.049}, weak).error().field, "volume_ml");
}

} // namespace
} // namespace ullage::chemistry
