// What a terminal or a message is shown of text that may hold anything.
#include "app/words/printable_text.h"

#include <QStringList>

#include <gtest/gtest.h>

using ullage::app::printable;
using ullage::app::printableLines;

TEST(PrintableText, LeavesWordsOfAnyScriptAlone)
{
    for (const QString& text :
         QStringList{"Dev 14", "Entwickler – grün", "مثبّت", "定着液", "👩‍🔬 1+n", "50 ml"}) {
        EXPECT_EQ(printable(text), text);
    }
}

TEST(PrintableText, ShowsEscapesAndLineEndsInsteadOfDoingThem)
{
    EXPECT_EQ(printable(QStringLiteral("\x1b[2J\x07")), u"\\x1b[2J\\x07");
    EXPECT_EQ(printable(QStringLiteral("a\nb\r\tc")), u"a\\nb\\r\\tc");
    EXPECT_EQ(printable(QString(QChar(0x7F)) + QChar(0x9B) + u'm'), u"\\x7f\\x9bm");
    EXPECT_EQ(printable(QString(QChar(0)) + QChar(0x2028)), u"\\x00\\u2028");
}

TEST(PrintableText, ShowsMarksOfReadingDirection)
{
    for (const int mark : {0x061C, 0x200E, 0x200F, 0x202A, 0x202E, 0x2066, 0x2069}) {
        const QString shown = printable(QStringLiteral("a") + QChar(mark) + u'b');
        EXPECT_FALSE(shown.contains(QChar(mark)));
        EXPECT_EQ(shown.size(), 8) << shown.toStdString();
    }
}

TEST(PrintableText, ReplacesHalvesOfSurrogates)
{
    EXPECT_EQ(printable(QString(QChar(0xD83D)) + u'x'), QString(QChar(0xFFFD)) + u'x');
    EXPECT_EQ(printable(QString(QChar(0xDC00))), QString(QChar(0xFFFD)));
}

TEST(PrintableText, CutsBetweenCharacters)
{
    EXPECT_EQ(printable(QStringLiteral("👍👍👍"), 2), QStringLiteral("👍👍…"));
    EXPECT_EQ(printable(QStringLiteral("abc"), 3), u"abc");
    EXPECT_EQ(printable(QString(1'000'000, u'a')).size(), 201);
}

TEST(PrintableText, KeepsTheLinesOfAMessage)
{
    const QString message = QStringLiteral("one \x1b\n") + QString(500, u'a');
    EXPECT_EQ(printableLines(message), QStringLiteral("one \\x1b\n") + QString(500, u'a'));
}
