#include "core/formulary/source_line.h"

#include "core/formulary/figures.h"

#include <gtest/gtest.h>

namespace ullage::formulary
{

using chemistry::Grade;

TEST(SourceLine, keepsASentenceThatSaysItsGradeItself)
{
    for (const char* line : {"common practice of this darkroom", "from memory of a handbook",
                             "computed from two figures", "Common practice, no source",
                             "a handbook", "a handbook, p. 4"}) {
        const SourceLine source = splitSource(line);
        EXPECT_EQ(source.text, line);
        EXPECT_EQ(source.grade, gradeOf(line));
        EXPECT_EQ(joinSource(source), line);
    }
}

TEST(SourceLine, takesTheWordsAwayWhereAColonPartsThem)
{
    EXPECT_EQ(splitSource("common practice: ten films"),
              (SourceLine{Grade::CommonPractice, "ten films"}));
    EXPECT_EQ(splitSource(" Published : computed tables, p. 4 "),
              (SourceLine{Grade::Published, "computed tables, p. 4"}));
    EXPECT_EQ(splitSource("from memory"), (SourceLine{Grade::FromMemory, ""}));
    EXPECT_EQ(splitSource("  "), (SourceLine{std::nullopt, ""}));
}

TEST(SourceLine, everyGradeAndTextComeBackAsTheyWent)
{
    for (const Grade grade :
         {Grade::Published, Grade::Computed, Grade::CommonPractice, Grade::FromMemory}) {
        for (const char* text :
             {"a handbook, p. 4", "", "common practice", "computed: twice", "from memory of it",
              "published", "published: so", "Computed tables", ": odd", "ein Handbuch"}) {
            // A published source without a name is no line that says so.
            const SourceLine source{grade, text};
            const std::string line = joinSource(source);
            EXPECT_EQ(gradeOf(line), grade) << line;
            EXPECT_EQ(splitSource(line), source) << line;
        }
    }
    EXPECT_EQ(joinSource({std::nullopt, ""}), "");
    EXPECT_EQ(joinSource({Grade::Published, "a handbook, p. 4"}), "a handbook, p. 4");
    EXPECT_EQ(joinSource({Grade::Published, "a handbook"}), "published: a handbook");
    EXPECT_EQ(joinSource({std::nullopt, "a notice"}), "a notice");
    EXPECT_EQ(joinSource({Grade::CommonPractice, "ten films"}), "common practice: ten films");
    EXPECT_EQ(joinSource({Grade::Published, "computed tables"}), "published: computed tables");
}

} // namespace ullage::formulary
