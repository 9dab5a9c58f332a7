// How text is folded before it is compared, and divided into words.
#include "core/store/search_words.h"

#include <gtest/gtest.h>

using namespace ullage::store;

namespace
{

bool finds(const QString& word, const QString& text)
{
    return holdsWord(text, {word.toStdString(), {}, {}, {}, {}});
}

} // namespace

TEST(SearchWords, CaseIsFoldedInEveryScript)
{
    EXPECT_TRUE(finds("KLÄR", "klärbad"));
    EXPECT_TRUE(finds("klär", "KLÄRBAD"));
    EXPECT_TRUE(finds("STRASSE", "Straße"));
    EXPECT_TRUE(finds("Straße", "STRASSE"));
    EXPECT_TRUE(finds("ΣΊΣΥΦΟΣ", "Σίσυφος")) << "the last sigma is one";
    EXPECT_TRUE(finds("ПРОЯВ", "проявитель"));
}

TEST(SearchWords, MarksOnLettersCountHoweverTheyAreWritten)
{
    const QString composed = QString::fromUtf8("\xC3\xB6l"); // one letter
    const QString apart = QString::fromUtf8("o\xCC\x88"
                                            "l"); // a letter and its mark
    EXPECT_TRUE(finds(composed, apart));
    EXPECT_TRUE(finds(apart, composed));
    EXPECT_FALSE(finds("ol", composed));
    EXPECT_FALSE(finds("ol", apart));
}

TEST(SearchWords, WhatCannotBeSeenIsLeftOut)
{
    EXPECT_TRUE(finds("fixer", QString("fi") + QChar(0x200D) + "x" + QChar(0x202E) + "er"));
    EXPECT_TRUE(finds(QString("fi") + QChar(0x00AD) + "xer", "FIXER"));
}

TEST(SearchWords, NothingIsAWildcardOrAnEnd)
{
    EXPECT_FALSE(finds("f%r", "fixer"));
    EXPECT_FALSE(finds("f_xer", "fixer"));
    EXPECT_TRUE(finds("100%_", "it is 100%_ \\ clear"));
    const QString withNull = QString("be") + QChar(0) + "yond";
    EXPECT_TRUE(finds("yond", withNull));
    EXPECT_FALSE(finds("beyond", withNull));
    EXPECT_TRUE(finds(withNull, withNull));
}

TEST(SearchWords, AreDividedAtBlanksAndEachLookedForOnce)
{
    const auto words = dayWords(QString("  Fix ") + QChar(0x00A0) + "FIX\tfix 9\n" + QChar(0x200B));
    ASSERT_EQ(words.size(), 2u);
    EXPECT_EQ(words[0].text, "Fix");
    EXPECT_EQ(words[1].text, "9");
    EXPECT_TRUE(dayWords("   ").empty());
    EXPECT_EQ(dayWords(QString("a b c d e f g h i j k l m n o p q r s")).size(), 16u);
    EXPECT_EQ(QString::fromStdString(dayWords(QString(1'000'000, 'x'))[0].text).size(), 200);
}

TEST(SearchWords, TrigramsAreOfLettersNotOfBytes)
{
    const DayWord word{"Öl😀Ä", {}, {}, {}, {}};
    const auto trigrams = FoldedWord(word).trigrams();
    ASSERT_EQ(trigrams.size(), 2u);
    EXPECT_EQ(QString::fromUtf8(trigrams[0]), QString::fromUtf8("öl😀"));
    EXPECT_EQ(QString::fromUtf8(trigrams[1]), QString::fromUtf8("l😀ä"));
    const DayWord twice{"aaaaaa", {}, {}, {}, {}};
    EXPECT_EQ(FoldedWord(twice).trigrams().size(), 1u);
    const DayWord brief{"öl", {}, {}, {}, {}};
    EXPECT_TRUE(FoldedWord(brief).trigrams().empty());
}

// The cheap look before the dear one: it may say yes for nothing, never no.
TEST(SearchWords, AQuickLookNeverDenies)
{
    const QByteArray plain = R"({"text":"The Strasse is clear"})";
    const DayWord word{"STRASSE", {}, {}, {}, {}};
    const DayWord sharp{"straße", {}, {}, {}, {}};
    const DayWord other{"klar", {}, {}, {}, {}};
    EXPECT_TRUE(FoldedWord(word).mayStandIn(plain));
    EXPECT_TRUE(FoldedWord(sharp).mayStandIn(plain));
    EXPECT_FALSE(FoldedWord(other).mayStandIn(plain));
    EXPECT_TRUE(FoldedWord(other).mayStandIn(R"({"text":"kl\u0061r"})"));
    EXPECT_TRUE(FoldedWord(word).mayStandIn("{\"text\":\"Stra\xC3\x9F"
                                            "e\"}"));
}
