#include "core/chemistry/constants.h"
#include "core/chemistry/films.h"

#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

constexpr double kSquareInch = 2.54 * 2.54; // cm², by definition of the inch

// Anchell, The Darkroom Cookbook, 3rd ed., p. 108: the counting unit is 80 sq in; arithmetic.
TEST(Counting, eightyInchesSquareIsOneFilm)
{
    EXPECT_NEAR(80 * kSquareInch, 516.13, 0.005);
    EXPECT_EQ(kFilmArea.value, 516.13);
    EXPECT_NEAR(filmsInArea(SquareCentimetres(80 * kSquareInch)).value(), 1, 1e-5);
}

TEST(Counting, sheetsByTheirArea)
{
    EXPECT_NEAR(filmsInOne("8x10")->value() * kFilmArea.value, 516.13, 0.005);
    EXPECT_NEAR(filmsInOne("4x5")->value() * kFilmArea.value, 129.03, 0.005);
    EXPECT_NEAR(filmsInOne("5x7")->value(), 35.0 / 80, 1e-12);
}

TEST(Counting, threeSquareFeetAreFivePointFourFilms)
{
    EXPECT_NEAR(filmsInArea(SquareCentimetres(3 * 144 * kSquareInch)).value(), 5.4, 0.0001);
    EXPECT_NEAR(filmsInOne("12x12in")->value() * 3, 5.4, 1e-12);
}

// NAVEDTRA 14209, ch. 10, Life of a Fixing Bath: 200 prints of 8x10 in to the US gallon.
TEST(Counting, printsInAFixerAsFilmsPerLitre)
{
    const double gallon = 231 * std::pow(2.54, 3); // mL, by definition
    const FilmsPerLitre published =
        Films(filmsInOne("8x10")->value() * 200) / litres(Millilitres(gallon));
    EXPECT_NEAR(published.value(), 52.8, 0.05);
}

} // namespace
} // namespace ullage::chemistry
