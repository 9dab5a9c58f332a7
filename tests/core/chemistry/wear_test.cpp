#include "core/chemistry/wear.h"

#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

double factor(const Wear& wear, double films) { return wearFactor(wear, FilmsPerLitre(films)); }

const Wear kSteps{WearRule::Steps,
                  0,
                  {{FilmsPerLitre(2), 1.1}, {FilmsPerLitre(4), 1.25}, {FilmsPerLitre(6), 1.5}}};

TEST(Wear, perFilmIsAdditiveOnTheFirstFilmsTime)
{
    const Wear wear{WearRule::PerFilm, 10, {}};
    EXPECT_EQ(factor(wear, 0), 1);
    EXPECT_DOUBLE_EQ(factor(wear, 9), 1.9); // the tenth film in one litre
    EXPECT_DOUBLE_EQ(factor(wear, 2.0 / 3), 1 + 0.1 * 2 / 3);
}

TEST(Wear, compoundIsOnTheTimeBefore)
{
    const Wear wear{WearRule::Compound, 10, {}};
    EXPECT_EQ(factor(wear, 0), 1);
    EXPECT_NEAR(factor(wear, 9), 2.357947691, 1e-12); // 1.1⁹
    EXPECT_NEAR(factor(wear, 0.5), 1.0488088481701516, 1e-14);
}

TEST(Wear, stepsTakeTheHighestReached)
{
    EXPECT_EQ(factor(kSteps, 0), 1);
    EXPECT_EQ(factor(kSteps, 1.999), 1);
    EXPECT_EQ(factor(kSteps, 2), 1.1);
    EXPECT_EQ(factor(kSteps, 3.999), 1.1);
    EXPECT_EQ(factor(kSteps, 4), 1.25);
    EXPECT_EQ(factor(kSteps, 60), 1.5);
    // Six thirds are two films, however they add up.
    EXPECT_EQ(factor(kSteps, 1.0 / 3 + 1.0 / 3 + 1.0 / 3 + 1.0 / 3 + 1.0 / 3 + 1.0 / 3 - 1e-12),
              1.1);
}

TEST(Wear, noneNeverChangesTheTime) { EXPECT_EQ(factor({}, 50), 1); }

TEST(Wear, refusesWhatNoMakerMeans)
{
    EXPECT_TRUE(check(Wear{}));
    EXPECT_TRUE(check(kSteps));
    EXPECT_TRUE(check(Wear{WearRule::PerFilm, 0, {}}));
    EXPECT_TRUE(check(Wear{WearRule::Compound, 100, {}}));
    EXPECT_EQ(check(Wear{WearRule::PerFilm, -0.1, {}}).error().field, "wear.percent");
    EXPECT_EQ(check(Wear{WearRule::Compound, 100.1, {}}).error().high, 100);
    EXPECT_EQ(check(Wear{WearRule::PerFilm, NAN, {}}).error().code, ErrorCode::NotFinite);
    EXPECT_EQ(check(Wear{WearRule::Steps, 0, {}}).error().code, ErrorCode::Missing);

    Wear wrong = kSteps;
    wrong.steps[1].from = FilmsPerLitre(2);
    EXPECT_EQ(check(wrong).error().code, ErrorCode::Conflict);
    wrong = kSteps;
    wrong.steps[0].factor = 0.05;
    EXPECT_EQ(check(wrong).error().field, "wear.steps.factor");
    wrong = kSteps;
    wrong.steps[0].from = FilmsPerLitre(-1);
    EXPECT_EQ(check(wrong).error().field, "wear.steps.from_films_per_litre");
}

} // namespace
} // namespace ullage::chemistry
