// A typed text in a CSV cell: never a formula to a spreadsheet, and given back as it was typed.
#include "tests/core/store/temp_book.h"

#include "core/store/csv_cell.h"

using namespace ullage::store;

namespace
{

// A reader of one cell as RFC 4180 has it.
QByteArray contentOf(const QByteArray& cell)
{
    return cell.startsWith('"') ? cell.mid(1, cell.size() - 2).replace("\"\"", "\"") : cell;
}

} // namespace

TEST(CsvCell, LeavesPlainTextAlone)
{
    for (const char* text : {"", "Dev 1", "9x12cm", "1+2", "a=b", "'tis", "''", "über"}) {
        EXPECT_EQ(csvText(text), text);
        EXPECT_EQ(csvTyped(text), text);
    }
}

TEST(CsvCell, PutsAnApostropheBeforeWhatASpreadsheetWouldRun)
{
    EXPECT_EQ(csvText("=1+1"), "'=1+1");
    EXPECT_EQ(csvText("+49 40"), "'+49 40");
    EXPECT_EQ(csvText("-1"), "'-1");
    EXPECT_EQ(csvText("@SUM(A1)"), "'@SUM(A1)");
    EXPECT_EQ(csvText("\t=1"), "\"'\t=1\"");
    EXPECT_EQ(csvText("\r=1"), "\"'\r=1\"");
    EXPECT_EQ(csvText("＝1+1"), "'＝1+1");
    EXPECT_EQ(csvText("=HYPERLINK(\"x\",\"y\")"), "\"'=HYPERLINK(\"\"x\"\",\"\"y\"\")\"");
    EXPECT_EQ(csvText("'=1"), "''=1") << "or it could not be told from a marked one";
}

TEST(CsvCell, QuotesWhatWouldEndTheCell)
{
    EXPECT_EQ(csvText("a,b"), "\"a,b\"");
    EXPECT_EQ(csvText("a;=1"), "\"a;=1\"");
    EXPECT_EQ(csvText("a \"b\""), "\"a \"\"b\"\"\"");
    EXPECT_EQ(csvText("a\nb"), "\"a\nb\"");
    EXPECT_EQ(csvText(" a"), "\" a\"");
    EXPECT_EQ(csvText("a "), "\"a \"");
}

TEST(CsvCell, GivesBackWhatWasTyped)
{
    const QByteArrayList parts{"=",  "+", "-", "@", "'",    "\t", "\r", "\n",
                               "\"", ",", " ", "a", "ＡＢ", "＝", "1"};
    for (const QByteArray& first : parts) {
        for (const QByteArray& second : parts) {
            for (const QByteArray& third : parts) {
                const QByteArray typed = first + second + third;
                const QByteArray content = contentOf(csvText(typed));
                EXPECT_EQ(csvTyped(content), typed);
                EXPECT_FALSE(QByteArray("=+-@\t\r\n").contains(content.front()))
                    << typed.toStdString();
            }
        }
    }
}
