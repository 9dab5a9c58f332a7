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
    EXPECT_NEAR(navy.value(), 52.8, 0.05); // 200 ÷ 3.785 L
}

// Areas as tables of sizes print them, and the square foot of NIST SP 811, 929.0304 cm²: capacities
// told "for three square feet" are for 5.4 films.
TEST(Counting, printedAreas)
{
    EXPECT_NEAR(filmsInArea(SquareCentimetres(516.13)).value(), 1, 1e-5);
    EXPECT_NEAR(filmsInArea(SquareCentimetres(129.03)).value(), filmsInOne("4x5")->value(), 1e-5);
    EXPECT_NEAR(filmsInArea(SquareCentimetres(3 * 929.0304)).value(), 5.4, 1e-9);
    EXPECT_NEAR(filmsInOne("12x36in")->value(), 5.4, 1e-9);
}

// Fixing Prints, analogue-photography.org: about fifty 8x10 in (20 by 25 cm) to the litre of the
// first bath. By the inches that is the navy's rule within its "about", by the centimetres less.
TEST(Counting, aThirdRuleForPrintsIsAboutTheSame)
{
    const double gallon = 231 * std::pow(2.54, 3); // mL, by definition
    const FilmsPerLitre navy =
        Films(filmsInOne("8x10")->value() * 200) / litres(Millilitres(gallon));
    EXPECT_NEAR(navy.value() / (50 * filmsInOne("8x10")->value()), 1, 0.06);
    EXPECT_LT(filmsInOne("20x25cm")->value(), filmsInOne("8x10")->value());
}

// Fixer Capacity, brodie-tyrrell.org/wiki: one roll is 80 square inches, as a 135-36, a 120, half a
// 220, four sheets of 4x5 and one of 8x10 are.
TEST(Counting, whatIsOneRoll)
{
    EXPECT_EQ(filmsInOne("135-36"), Films(1));
    EXPECT_EQ(filmsInOne("120"), Films(1));
    EXPECT_EQ(*filmsInOne("220") / 2, Films(1));
    EXPECT_EQ(*filmsInOne("4x5") * 4, Films(1));
    EXPECT_EQ(filmsInOne("8x10"), Films(1));
    EXPECT_NEAR(filmsInOne("8x10in")->value(), 1, 1e-12) << "by its size too";
}

} // namespace
} // namespace ullage::chemistry
