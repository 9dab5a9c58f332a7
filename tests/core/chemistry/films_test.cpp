#include "core/chemistry/films.h"

#include <gtest/gtest.h>
#include <limits>

namespace ullage::chemistry
{
namespace
{

double films(std::string_view code) { return filmsInOne(code).value_or(Films(-1)).value(); }

TEST(FilmFormats, countAsTheConventionSays)
{
    EXPECT_EQ(films("135-36"), 1);
    EXPECT_EQ(films("120"), 1);
    EXPECT_DOUBLE_EQ(films("135-24"), 2.0 / 3);
    EXPECT_EQ(films("220"), 2);
    EXPECT_EQ(films("4x5"), 0.25);
    EXPECT_EQ(films("5x7"), 35.0 / 80);
    EXPECT_EQ(films("8x10"), 1);
    EXPECT_EQ(namedFormats().size(), 7U);
}

TEST(FilmFormats, sheetsWithTheirUnitGoByArea)
{
    EXPECT_DOUBLE_EQ(films("9x12cm"), 108 / 516.128);
    EXPECT_DOUBLE_EQ(films("6.5x9cm"), 58.5 / 516.128);
    EXPECT_DOUBLE_EQ(films("11x14in"), 154.0 / 80);
    EXPECT_DOUBLE_EQ(films("8x10in"), 1);
    EXPECT_DOUBLE_EQ(filmsInArea(SquareCentimetres(516.128)).value(), 1);
}

TEST(FilmFormats, nothingElseIsAFormat)
{
    for (const char* text :
         {"",        "135",     "135-12",  "9x12",    "x",        "9x",     "x12cm",
          "9x12mm",  "9x12cm ", " 9x12cm", "-9x12cm", "9x-12cm",  "0x12cm", "9x0cm",
          "nanx5cm", "infx5cm", "1e2x5cm", "9*12cm",  "1001x5cm", "4X5",    "9,5x12cm"}) {
        EXPECT_FALSE(filmsInOne(text)) << text;
    }
}

} // namespace
} // namespace ullage::chemistry
