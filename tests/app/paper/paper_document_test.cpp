#include "app/paper/paper_document.h"

#include "app/paper/paper_paint.h"
#include "tests/app/paper/paper_reader.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage::app
{

using namespace testing;

namespace
{

PaperTable longTable(int rows)
{
    PaperTable table;
    table.columns = {{"Bottle"}, {"Contents"}, {"Volume", true}};
    for (int i = 0; i < rows; ++i)
        table.rows.push_back({QStringLiteral("Dev %1").arg(i + 1),
                              QStringLiteral("MQ borax developer, stock"),
                              QStringLiteral("%1 ml").arg(1000 + i)});
    table.rows.push_back({"Together", "", "many ml"});
    table.total = true;
    return table;
}

QString wordsOf(const std::vector<PaperPage>& pages)
{
    QStringList words;
    for (const PaperPage& page : pages) {
        for (const LabelLine& line : page.lines)
            words << line.text;
    }
    return words.join(u' ');
}

void expectInside(const std::vector<PaperPage>& pages, const QSizeF& sheet)
{
    const QRectF inside(kPaperMargin - 0.2, kPaperMargin - 0.2,
                        sheet.width() - 2 * kPaperMargin + 0.4,
                        sheet.height() - 2 * kPaperMargin + 1.5);
    for (const PaperPage& page : pages) {
        for (const LabelLine& line : page.lines) {
            const double right = line.baseline.x() + textWidth(line.text, line.letters);
            EXPECT_TRUE(inside.contains(line.baseline)) << line.text.toStdString();
            EXPECT_LE(right, inside.right()) << line.text.toStdString();
        }
        for (const PaperStroke& stroke : page.strokes) {
            for (const QPointF& point : stroke.points)
                EXPECT_TRUE(inside.contains(point));
        }
    }
}

} // namespace

TEST(PaperDocument, aLongTableGoesOnUnderItsHeadingAgainAndLosesNothing)
{
    PaperDocument document{"The shelf", "home · as of 7 Dec 2026", {longTable(120)}, 4};
    for (const PaperSize size : {PaperSize::A4, PaperSize::Letter}) {
        const auto pages = paperPages(document, sheetOf(size));
        ASSERT_GE(pages.size(), 3U);
        expectInside(pages, sheetOf(size));
        const QString words = wordsOf(pages);
        EXPECT_EQ(words.count("Bottle"), int(pages.size()));
        for (int i = 0; i < 120; ++i)
            EXPECT_EQ(words.count(QStringLiteral("%1 ml").arg(1000 + i)), 1);
        EXPECT_TRUE(words.contains(QStringLiteral("Page 1 of %1").arg(pages.size())));
    }
}

// A day lost its year to the next line although the names beside it had room to spare.
TEST(PaperDocument, figuresAndDaysStayWholeWhereNamesCanBeBroken)
{
    PaperTable table;
    table.columns = {{"Flasche"},     {"Inhalt"},        {"Volumen", true},
                     {"Übrig", true}, {"Entsorgen bis"}, {"Zustand"}};
    table.rows = {{"Wash aid 8", "MQ borax developer, stock, replenished since summer", "1,880 ml",
                   "20 films", "18 Dec 2026", "Near its end of days"},
                  {"Dev 25", "Harbour developer, topped up every second week", "940 ml", "1¾ films",
                   "14 Apr 2027", "Good"}};
    const PaperDocument document{"The shelf", "home", {table}, 4};
    const auto pages = paperPages(document, sheetOf(PaperSize::A4));
    expectInside(pages, sheetOf(PaperSize::A4));
    QStringList lines;
    for (const LabelLine& line : pages.front().lines)
        lines << line.text;
    for (const char* whole : {"18 Dec 2026", "14 Apr 2027", "20 films", "1¾ films", "1,880 ml"})
        EXPECT_TRUE(lines.contains(QString::fromUtf8(whole))) << whole;
}

// Names that hold a figure took the room of days and figures, and all of them were broken.
TEST(PaperDocument, figuresAndDaysStayWholeBeforeNamesThatHoldFigures)
{
    PaperTable table;
    table.columns = {{"Flasche"},     {"Inhalt"},        {"Volumen", true},
                     {"Übrig", true}, {"Entsorgen bis"}, {"Zustand"}};
    table.rows = {{"Wässerungshilfe 8", "Schnellfixierbad, 1+4", "1.916 ml", "26 Filme",
                   "12. Dez. 2026", "Bald am Ende"},
                  {"Fix 15 von oben links", "MQ-Borax-Entwickler, Stammlösung", "952 ml",
                   "nicht bekannt", "10. Jan. 2027", "Erst prüfen"}};
    const auto pages = paperPages({"Das Regal", "hier", {table}, 4}, sheetOf(PaperSize::A4));
    expectInside(pages, sheetOf(PaperSize::A4));
    QStringList lines;
    for (const LabelLine& line : pages.front().lines)
        lines << line.text;
    for (const char* whole : {"12. Dez. 2026", "10. Jan. 2027", "26 Filme", "nicht bekannt"})
        EXPECT_TRUE(lines.contains(QString::fromUtf8(whole))) << whole;
}

// Sums of money were broken in their middle where a table has too many columns for its letters.
TEST(PaperDocument, aTableOfManyColumnsHasSmallerLettersBeforeAWordIsBroken)
{
    PaperTable table;
    table.columns = {
        {"", false, true}, {"Packungen", true},   {"Wovon"},         {"Jede ergibt", true},
        {"Bis"},           {"Jede kostet", true}, {"Je Film", true}, {"Alle", true}};
    table.rows = {{"", "12", "MQ-Borax-Entwickler, Stammlösung", "5.000\u00a0ml", "10. Dez. 2026",
                   "nicht bekannt", "0,072\u00a0EUR", "126,40\u00a0EUR"}};
    const auto pages = paperPages({"Einkaufsliste", "hier", {table}, 4}, sheetOf(PaperSize::A4));
    expectInside(pages, sheetOf(PaperSize::A4));
    QStringList lines;
    for (const LabelLine& line : pages.front().lines)
        lines << line.text;
    for (const char* whole : {"Packungen", "10. Dez. 2026", "nicht bekannt", "5.000\u00a0ml",
                              "0,072\u00a0EUR", "126,40\u00a0EUR"})
        EXPECT_TRUE(lines.contains(QString::fromUtf8(whole))) << whole;
}

TEST(PaperDocument, aColumnForAPencilHasRoomForIt)
{
    PaperTable table;
    table.columns = {{"Step"}, {"Took", false, false, true}, {"Agitation"}};
    table.rows = {{"Develop in Dev 14", "", "first 30 s, then 10 s every minute"}};
    const auto pages = paperPages({"Run sheet", "home", {table}, 3.3}, sheetOf(PaperSize::A4));
    const auto& lines = pages.front().lines;
    const auto of = [&](const char* words) {
        return std::find_if(lines.begin(), lines.end(),
                            [&](const LabelLine& line) { return line.text == words; });
    };
    ASSERT_TRUE(of("Took") != lines.end() && of("Agitation") != lines.end());
    EXPECT_GE(of("Agitation")->baseline.x() - of("Took")->baseline.x(), 16);
}

TEST(PaperDocument, aCurveStaysWithinThePageWithAllItsFigures)
{
    PaperChart chart;
    chart.title = "Films per litre";
    chart.curves = {{"done", {{0, 0}, {5, 3}, {10, 10}}, false},
                    {"capacity", {{0, 10}, {10, 10}}, true}};
    chart.xMax = 10;
    chart.yMax = 10;
    chart.xTicks = {{0, "30 December 2025"}, {10, "30 December 2026"}};
    chart.yTicks = {{0, "0"}, {10, "10"}};
    const auto pages = paperPages({"Dev 1", "home", {chart, chart}, 3.3}, sheetOf(PaperSize::A4));
    expectInside(pages, sheetOf(PaperSize::A4));
    EXPECT_EQ(wordsOf(pages).count("30 December"), 4);
}

TEST(PaperDocument, longWordsAreBrokenAndNeverCut)
{
    PaperTable table = longTable(1);
    table.rows[0][0] = QString(150, u'W');
    table.rows[0][1] = QStringLiteral("a very long name of a solution ").repeated(12).trimmed();
    const PaperDocument document{QString(90, u'M'), {}, {table}, 4};
    const auto pages = paperPages(document, sheetOf(PaperSize::A4));
    expectInside(pages, sheetOf(PaperSize::A4));
    EXPECT_EQ(wordsOf(pages).count(u'W'), 150);
    EXPECT_EQ(wordsOf(pages).count(u'M'), 90);
    EXPECT_EQ(wordsOf(pages).count("solution"), 12);
}

TEST(PaperDocument, aPageHasItsSizeAndItsMarginsOnPaperToo)
{
    constexpr int kDpi = 100;
    const PaperDocument document{"The shelf", "home", {longTable(5), PaperBlank{"Received by"}}, 4};
    for (const PaperSize size : {PaperSize::A4, PaperSize::Letter}) {
        const QSizeF sheet = sheetOf(size);
        const QImage page = rendered(documentPdf(document, size), 0, kDpi);
        ASSERT_FALSE(page.isNull());
        EXPECT_NEAR(toMillimetres(page.width(), kDpi), sheet.width(), 0.4);
        EXPECT_NEAR(toMillimetres(page.height(), kDpi), sheet.height(), 0.4);
        const QRect dark = darkIn(page);
        EXPECT_NEAR(toMillimetres(dark.left(), kDpi), kPaperMargin, 0.8);
        EXPECT_LE(toMillimetres(dark.right(), kDpi), sheet.width() - kPaperMargin + 0.4);
        EXPECT_GE(toMillimetres(dark.top(), kDpi), kPaperMargin - 0.4);
        EXPECT_LE(toMillimetres(dark.bottom(), kDpi), sheet.height() - kPaperMargin + 1);
        // Black and white: nothing has a colour.
        bool grey = true;
        for (int y = 0; y < page.height() && grey; ++y) {
            for (int x = 0; x < page.width() && grey; ++x) {
                const QRgb colour = page.pixel(x, y);
                grey = qRed(colour) == qGreen(colour) && qGreen(colour) == qBlue(colour);
            }
        }
        EXPECT_TRUE(grey);
    }
}

} // namespace ullage::app
