// Bytes of a spreadsheet as a table.
#include "core/store/sheet_table.h"

#include <gtest/gtest.h>

namespace ullage::store
{
namespace
{

SheetTable tableOf(const QByteArray& bytes, const SheetAsked& asked = {})
{
    auto table = readTable(bytes, asked);
    EXPECT_TRUE(table) << table.error().text;
    return table ? *table : SheetTable{};
}

QByteArray utf16(const QString& text, bool little, bool mark)
{
    QByteArray bytes;
    const auto put = [&](char16_t unit) {
        const char low = static_cast<char>(unit & 0xff);
        const char high = static_cast<char>(unit >> 8);
        bytes += little ? low : high;
        bytes += little ? high : low;
    };
    if (mark) {
        put(0xfeff);
    }
    for (const QChar c : text) {
        put(c.unicode());
    }
    return bytes;
}

TEST(SheetTable, IsReadInWhateverEncodingItCameIn)
{
    const QString text = QStringLiteral("Gefäß;Größe\nBraune Flasche;1 l\n");
    const QStringList heading{QStringLiteral("Gefäß"), QStringLiteral("Größe")};
    EXPECT_EQ(tableOf(text.toUtf8()).rows[0], heading);
    EXPECT_EQ(tableOf("\xef\xbb\xbf" + text.toUtf8()).rows[0], heading);
    for (const bool little : {true, false}) {
        for (const bool mark : {true, false}) {
            const SheetTable table = tableOf(utf16(text, little, mark));
            EXPECT_EQ(table.rows[0], heading) << little << mark;
            EXPECT_FALSE(table.encodingOpen);
        }
    }
    const SheetTable old = tableOf(text.toLatin1());
    EXPECT_EQ(old.rows[0], heading) << old.encoding;
    EXPECT_EQ(tableOf(text.toLatin1(), {.encoding = "windows-1252"}).rows[0], heading);
    EXPECT_NE(tableOf(text.toLatin1(), {.encoding = "IBM850"}).rows[0], heading);
}

TEST(SheetTable, FindsTheDelimiterBesideDecimalCommas)
{
    const SheetTable table = tableOf("a;b;c\n1,5;2,5;3,5\n1,5;2,5;3,5\n");
    EXPECT_EQ(table.delimiter, SheetDelimiter::Semicolon);
    EXPECT_FALSE(table.delimiterOpen);
    EXPECT_EQ(tableOf("a\tb\n1,5\t2\n").delimiter, SheetDelimiter::Tab);
    EXPECT_EQ(tableOf("a|b\n1|2\n").delimiter, SheetDelimiter::Bar);
    EXPECT_EQ(tableOf("a,b\n1,2\n").delimiter, SheetDelimiter::Comma);
    EXPECT_TRUE(tableOf("a;b,c\n1;2,3\n").delimiterOpen);
    EXPECT_EQ(tableOf("a;b,c\n", {.delimiter = SheetDelimiter::Comma}).rows[0],
              (QStringList{"a;b", "c"}));
}

TEST(SheetTable, UnderstandsQuotesAndLinesWithin)
{
    const SheetTable table =
        tableOf("name,notes\r\n\"Dev, 1\",\"said \"\"good\"\"\nand went\"\r\nDev 2,\r\n");
    ASSERT_EQ(table.rows.size(), 3u);
    EXPECT_EQ(table.rows[1], (QStringList{"Dev, 1", "said \"good\"\nand went"}));
    EXPECT_EQ(table.rows[2], (QStringList{"Dev 2", ""}));
    EXPECT_EQ(tableOf("5\" reel,x\n").rows[0][0], "5\" reel") << "a quote within is a quote";
}

TEST(SheetTable, TakesOffTheApostropheThatKeepsACellFromRunning)
{
    EXPECT_EQ(tableOf("a,b\n'=1+1,'tis\n").rows[1], (QStringList{"=1+1", "'tis"}));
}

TEST(SheetTable, RefusesWhatIsNoSheet)
{
    EXPECT_EQ(readTable("").error().code, ErrorCode::Missing);
    EXPECT_EQ(readTable(",,\n\n").error().code, ErrorCode::Missing);
    EXPECT_EQ(readTable(QByteArray("a,b\0c\n", 6), {.encoding = "UTF-8"}).error().code,
              ErrorCode::BadEncoding);
    EXPECT_EQ(readTable("\xff\xfe\xff", {.encoding = "UTF-8"}).error().code,
              ErrorCode::BadEncoding);
    EXPECT_EQ(readTable("a", {.encoding = "no such"}).error().code, ErrorCode::UnknownKind);
    EXPECT_EQ(readTable(QByteArray(static_cast<int>(kMostSheetRows) + 2, '\n') + "a").error().code,
              ErrorCode::TooLong);
}

TEST(SheetTable, ALineThatOnlyNamesTheDelimiterIsNoRow)
{
    const SheetTable table = tableOf("sep=|\r\na;b|c\r\nd;e|f\r\n");
    EXPECT_EQ(table.delimiter, SheetDelimiter::Bar);
    EXPECT_FALSE(table.delimiterOpen);
    EXPECT_EQ(table.rows, (std::vector<QStringList>{{"a;b", "c"}, {"d;e", "f"}}));
    EXPECT_EQ(tableOf("sep=|\na;b|c\n", {{}, SheetDelimiter::Semicolon}).rows,
              (std::vector<QStringList>{{"a", "b|c"}}));
}

} // namespace
} // namespace ullage::store
