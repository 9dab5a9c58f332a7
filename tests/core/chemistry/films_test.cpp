#include "core/chemistry/films.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <utility>
#include <vector>

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

TEST(FilmFormats, metricSheetsAreOfferedBySize)
{
    std::vector<std::string_view> sheets;
    for (const FilmFormat& format : usualFormats()) {
        EXPECT_EQ(films(format.code), format.units) << format.code;
        EXPECT_FALSE(format.source.empty()) << format.code;
        if (sizeOf(format.code)) {
            sheets.push_back(format.code);
        }
    }
    EXPECT_EQ(sheets, (std::vector<std::string_view>{"6.5x9cm", "9x12cm", "13x18cm", "18x24cm"}));
    EXPECT_EQ(usualFormats().size(), namedFormats().size() + sheets.size());
    EXPECT_DOUBLE_EQ(films("13x18cm"), 234 / 516.128);
    EXPECT_DOUBLE_EQ(films("18x24cm"), 432 / 516.128);
}

TEST(FilmFormats, stripsGoByWidthAndLength)
{
    std::vector<std::pair<std::string_view, double>> strips;
    for (const FilmStrip& strip : filmStrips()) {
        EXPECT_FALSE(strip.source.empty()) << strip.name;
        strips.emplace_back(strip.name, strip.width);
    }
    EXPECT_EQ(strips, (std::vector<std::pair<std::string_view, double>>{
                          {"127", 4.6}, {"126", 3.5}, {"16 mm", 1.6}, {"110", 1.6}}));
    const FilmSize reel{1.6, 3048, SizeUnit::Centimetre}; // 100 ft
    EXPECT_EQ(sizeCode(reel), "1.6x3048cm");
    EXPECT_EQ(sizeOf("1.6x3048cm"), reel);
    EXPECT_DOUBLE_EQ(films("1.6x3048cm"), 1.6 * 3048 / 516.128);
    ASSERT_TRUE(stripOf(reel));
    EXPECT_EQ(stripOf(reel)->name, "16 mm");
    EXPECT_EQ(stripOf(*sizeOf("4.6x61cm"))->name, "127");
    EXPECT_FALSE(stripOf(*sizeOf("4.6x6cm"))) << "a sheet";
    EXPECT_FALSE(stripOf(*sizeOf("9x120cm")));
    EXPECT_FALSE(stripOf(*sizeOf("1.6x30in")));
}

TEST(FilmFormats, sizesAreWrittenAsTheyAreRead)
{
    for (const FilmSize& size :
         {FilmSize{6.5, 9, SizeUnit::Centimetre}, FilmSize{11, 14, SizeUnit::Inch},
          FilmSize{1.0 / 3, 0.1 + 0.2, SizeUnit::Centimetre},
          FilmSize{1000, 10'000, SizeUnit::Inch}}) {
        EXPECT_TRUE(isSize(size));
        EXPECT_EQ(sizeOf(sizeCode(size)), size) << sizeCode(size);
    }
    EXPECT_EQ(sizeCode({6.5, 9, SizeUnit::Centimetre}), "6.5x9cm");
    EXPECT_FALSE(isSize({1e-9, 9, SizeUnit::Centimetre}));
    EXPECT_FALSE(isSize({9, 10'001, SizeUnit::Centimetre}));
    EXPECT_FALSE(isSize({std::nan(""), 9, SizeUnit::Centimetre}));
    EXPECT_FALSE(sizeOf("4x5")) << "a name, not a size";
}

TEST(FilmFormats, nothingElseIsAFormat)
{
    for (const char* text :
         {"",        "135",     "135-12",   "9x12",    "x",        "9x",       "x12cm",   "9x12mm",
          "9x12cm ", " 9x12cm", "-9x12cm",  "9x-12cm", "0x12cm",   "9x0cm",    "nanx5cm", "infx5cm",
          "1e2x5cm", "9*12cm",  "1001x5cm", "4X5",     "9,5x12cm", "5x10001cm"}) {
        EXPECT_FALSE(filmsInOne(text)) << text;
    }
}

} // namespace
} // namespace ullage::chemistry
