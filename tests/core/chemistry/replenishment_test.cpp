#include "core/chemistry/replenishment.h"

#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

TEST(Replenishment, comesToRestAtAThousandOverTheRate)
{
    EXPECT_DOUBLE_EQ(steadyWear(Millilitres(70)).value(), 1000.0 / 70);
    EXPECT_EQ(topUpFor(FilmsPerLitre(10)), Millilitres(100));
    for (const double volume : {500.0, 1000.0, 4000.0}) {
        const auto curve =
            wearWhileToppingUp(FilmsPerLitre(0), Millilitres(volume), Millilitres(80), 2000);
        EXPECT_NEAR(curve.back().value(), 12.5, 1e-6) << volume;
        for (std::size_t i = 1; i < curve.size(); ++i) {
            ASSERT_GE(curve[i], curve[i - 1]);
        }
    }
    // From above it falls to the same place.
    EXPECT_NEAR(wearWhileToppingUp(FilmsPerLitre(40), Millilitres(1000), Millilitres(80), 2000)
                    .back()
                    .value(),
                12.5, 1e-6);
}

TEST(Replenishment, firstFilmsByHand)
{
    const auto curve = wearWhileToppingUp(FilmsPerLitre(2), Millilitres(500), Millilitres(50), 2);
    EXPECT_DOUBLE_EQ(curve[0].value(), 4);           // 2 + 1/0.5
    EXPECT_DOUBLE_EQ(curve[1].value(), 4 * 0.9 + 2); // diluted by a tenth, one more film
}

TEST(Replenishment, withoutToppingUpItOnlyRises)
{
    const auto curve = wearWhileToppingUp(FilmsPerLitre(0), Millilitres(1000), Millilitres(0), 10);
    EXPECT_DOUBLE_EQ(curve.back().value(), 10);
}

} // namespace
} // namespace ullage::chemistry
