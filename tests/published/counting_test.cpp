#include "core/chemistry/constants.h"
#include "core/chemistry/films.h"

#include <cmath>
#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

constexpr double kSquareInch = 2.54 * 2.54; // cm², by definition of the inch

// Crabtree and Hart 1929 count by feet of 35 mm film, others by sheets; ABC der Röntgentechnik
// (scan 340) prints the area of twelve sheets of 40×40 cm as 1.92 m².
TEST(Counting, twelveSheetsAreThePrintedArea)
{
    const double films = 12 * filmsInOne("40x40cm")->value();
    EXPECT_NEAR(films * 80 * kSquareInch / 1e4, 1.92, 0.005); // m²
}

// Two rules that owe each other nothing. NAVEDTRA 14209, ch. 10, Life of a Fixing Bath: 200 prints
// of 8x10 in to the US gallon. Studio Light, 1923: one gross of cabinet prints (4¼ by 6½ in, from
// memory) to 32 oz. In films a litre they must be the same.
TEST(Counting, twoRulesForPrintsInAFixerAgree)
{
    const double gallon = 231 * std::pow(2.54, 3); // mL, by definition
    const FilmsPerLitre navy =
        Films(filmsInOne("8x10")->value() * 200) / litres(Millilitres(gallon));
    const FilmsPerLitre studio =
        Films(filmsInOne("4.25x6.5in")->value() * 144) / litres(Millilitres(gallon / 4));
    EXPECT_NEAR(navy / studio, 1, 0.05);
}

} // namespace
} // namespace ullage::chemistry
