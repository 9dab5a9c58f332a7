#include "core/formulary/figures.h"

#include <gtest/gtest.h>

namespace ullage::formulary
{
namespace
{

using chemistry::Grade;

Solution plainSolution()
{
    Solution solution;
    solution.id = "s";
    solution.name = "Soup";
    return solution;
}

TEST(Figures, EveryOneIsSetAndReadInItsOwnPlace)
{
    for (const FigureBounds& figure : kFigures) {
        Solution solution = plainSolution();
        const double set = (figure.low + figure.high) / 2;
        setValue(solution, figure.figure, set);
        EXPECT_EQ(value(solution, figure.figure), set) << figure.field;
        for (const FigureBounds& other : kFigures) {
            if (other.figure != figure.figure) {
                EXPECT_EQ(value(solution, other.figure), value(plainSolution(), other.figure))
                    << figure.field << " changed " << other.field;
            }
        }
        setValue(solution, figure.figure, std::nullopt);
        EXPECT_EQ(value(solution, figure.figure).has_value(), !figure.optional) << figure.field;
        EXPECT_EQ(bounds(figure.figure).field, figure.field);
    }
}

TEST(Figures, AreHeldToTheirBoundsByCheck)
{
    for (const FigureBounds& figure : kFigures) {
        for (const double outside : {figure.low - 0.001, figure.high * 1.001}) {
            Solution solution = plainSolution();
            setValue(solution, figure.figure, outside);
            const auto fine = check(solution);
            ASSERT_FALSE(fine) << figure.field << ' ' << outside;
            EXPECT_EQ(fine.error().field, figure.field);
            EXPECT_EQ(fine.error().low, figure.low);
            EXPECT_EQ(fine.error().high, figure.high);
            EXPECT_EQ(fine.error().number, outside);
        }
    }
}

TEST(Figures, FindTheirSourceLineOrTheOneTheyShare)
{
    Solution solution = plainSolution();
    EXPECT_EQ(sourceLine(solution, Figure::KeepsHalf), "");
    solution.sources["keeping"] = "from memory of a sheet";
    EXPECT_EQ(sourceLine(solution, Figure::KeepsFull), "from memory of a sheet");
    EXPECT_EQ(sourceLine(solution, Figure::KeepsHalf), "from memory of a sheet");
    solution.sources["keeping_half"] = "Handbook, p. 3";
    EXPECT_EQ(sourceLine(solution, Figure::KeepsHalf), "Handbook, p. 3");
    solution.sources["keeping_half"] = "";
    EXPECT_EQ(sourceLine(solution, Figure::KeepsHalf), "from memory of a sheet");
    EXPECT_EQ(sourceLine(solution, Figure::Capacity), "");
}

TEST(Figures, AreGradedByHowTheirSourceLineBegins)
{
    EXPECT_EQ(gradeOf("common practice: 10 to 15"), Grade::CommonPractice);
    EXPECT_EQ(gradeOf("Common practice"), Grade::CommonPractice);
    EXPECT_EQ(gradeOf("  from memory of a sheet"), Grade::FromMemory);
    EXPECT_EQ(gradeOf("computed: 0.11 to 0.21 g a film"), Grade::Computed);
    EXPECT_EQ(gradeOf("Handbook, p. 108; computed by hand"), Grade::Published);
    EXPECT_EQ(gradeOf("Published: the leaflet"), Grade::Published);
    EXPECT_EQ(gradeOf(""), std::nullopt);
    EXPECT_EQ(gradeOf(" \t"), std::nullopt);
}

TEST(Figures, ArePublishedOnlyWhereAPublicationIsNamed)
{
    for (const char* line :
         {"Anchell, The Darkroom Cookbook, 3rd ed.", "Schumpe 1993, Chem. Eng. Sci.",
          "Handbook, pp. 12 f.", "Handbook, § 573", "NAVEDTRA 14209 ch. 10", "TM 11-2323, para 33",
          "Kodak Publication F-32", "silvergrain.com/labs", "https://example.org",
          "a sheet of 2008", "the film's leaflet"}) {
        EXPECT_TRUE(namesPublication(line)) << line;
        EXPECT_EQ(gradeOf(line), Grade::Published) << line;
    }
    for (const char* line :
         {"common", "the film's box", "my own trials; ask Ada, 3 of them", "10 to 15 films a litre",
          "own tests, 5 of 9 bottles, to 2026-11-25", "tried on 2026-11-25", "1200 ml, 24 h",
          "what the shop says. Really"}) {
        EXPECT_FALSE(namesPublication(line)) << line;
        EXPECT_EQ(gradeOf(line), std::nullopt) << line;
    }
    EXPECT_EQ(gradeOf("own tests, 3 of 4 bottles, as on p. 12"), std::nullopt);
}

TEST(Figures, AGradeIsNoBetterThanTheWorstOfWhatItStandsOn)
{
    EXPECT_EQ(lesser(Grade::Published, Grade::Computed), Grade::Computed);
    EXPECT_EQ(lesser(Grade::FromMemory, Grade::Computed), Grade::FromMemory);
    EXPECT_EQ(lesser(Grade::CommonPractice, Grade::FromMemory), Grade::FromMemory);
    EXPECT_EQ(lesser(Grade::Published, std::nullopt), std::nullopt);
}

} // namespace
} // namespace ullage::formulary
