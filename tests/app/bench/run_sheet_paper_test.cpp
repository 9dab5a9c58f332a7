// The run sheet on paper: of the plan as it stands, and of the run in hand.
#include "app/bench/run_sheet_paper.h"

#include "bench_kit.h"

#include "app/words/number_text.h"

#include <QPushButton>

namespace ullage::app
{
namespace
{

using chemistry::Celsius;
using chemistry::Seconds;

PaperDocument sheetPaperOf(const Bench& bench, const BenchPage& page)
{
    return runSheetPaper(*page.sheet(),
                         {QStringLiteral("home"), bench.shelf.now, bench.host.wording()});
}

const PaperTable& sheetTable(const PaperDocument& document, std::size_t which)
{
    for (const PaperBlock& block : document.blocks) {
        if (const auto* table = std::get_if<PaperTable>(&block); table && which-- == 0)
            return *table;
    }
    throw std::out_of_range("no such table");
}

QStringList sheetLines(const PaperDocument& document)
{
    QStringList lines;
    for (const PaperBlock& block : document.blocks) {
        if (const auto* words = std::get_if<PaperWords>(&block))
            lines << QString(words->text).replace(u'\u00a0', u' ');
        else if (const auto* table = std::get_if<PaperTable>(&block)) {
            for (const QStringList& row : table->rows)
                lines << row.join(QStringLiteral(" | ")).replace(u'\u00a0', u' ');
        }
    }
    return lines;
}

} // namespace

TEST(RunSheetPaper, HoldsWhatThePlanSays)
{
    Bench bench;
    bench.host.setBaseTimes("mq", {{Celsius(20), Seconds(840)}}, 1);
    BenchPage& page = bench.open();
    dilutionBox(page)->setValue(1);
    ASSERT_TRUE(page.sheet());
    const PaperDocument document = sheetPaperOf(bench, page);
    const PaperTable& steps = sheetTable(document, 1);
    const PlannedRun planned = *page.sheet();
    const auto& sheet = planned.run.sheet;
    ASSERT_EQ(steps.rows.size(), sheet.steps.size());
    EXPECT_TRUE(steps.columns[0].tick);
    for (std::size_t i = 0; i < steps.rows.size(); ++i) {
        EXPECT_EQ(steps.rows[i][2], timeText(sheet.steps[i].planned));
        EXPECT_TRUE(steps.rows[i][3].isEmpty()) << "room to write on";
    }
    const QString words = sheetLines(document).join(u'\n');
    for (const char* said :
         {"Film | 135-36", "Thermometer | 20 °C", "Develop in Dev 14 | 14:00",
          "300 ml stock + 300 ml water, 20 °C", "first 30 s, then 10 s every minute",
          "Dev 14 | Developer | 300 ml | poured away | 700 ml",
          "Fix 9 | Fixer | 600 ml | back into it", "Developer can make skin allergic for good.",
          "Develop 14:00 = 14:00"})
        EXPECT_TRUE(words.contains(QString::fromUtf8(said))) << said << " in\n"
                                                             << words.toStdString();
}

TEST(RunSheetPaper, SaysFirstWhatSpeaksAgainstIt)
{
    Bench bench;
    bench.shelf.days(40); // a clearing test is due
    BenchPage& page = bench.open();
    const PaperDocument document = sheetPaperOf(bench, page);
    const auto* first = std::get_if<PaperWords>(&document.blocks.front());
    ASSERT_TRUE(first);
    EXPECT_TRUE(first->bold);
    EXPECT_TRUE(first->text.contains(QStringLiteral("Test Fix 9 first")))
        << first->text.toStdString();
}

TEST(RunSheetPaper, IsNotOfferedWhileThereAreNoSteps)
{
    Bench bench(false); // no leaflet time yet
    BenchPage& page = bench.open();
    const auto* print = qobject_cast<QPushButton*>(bench.find("printSheet"));
    ASSERT_TRUE(print);
    EXPECT_FALSE(print->isEnabled());
    EXPECT_EQ(print->accessibleDescription(), QStringLiteral("There are no steps to print yet."));
    EXPECT_FALSE(page.sheet());
}

TEST(RunSheetPaper, IsAskedForByItsButtonAndOfARunInHandToo)
{
    Bench bench;
    BenchPage& page = bench.open();
    int asked = 0;
    QObject::connect(&page, &BenchPage::printWanted, &page, [&] { ++asked; });
    bench.click("printSheet");
    EXPECT_EQ(asked, 1);
    const QStringList planned = sheetTable(sheetPaperOf(bench, page), 1).rows[1];
    bench.click("start");
    ASSERT_TRUE(page.run());
    EXPECT_EQ(sheetTable(sheetPaperOf(bench, page), 1).rows[1], planned);
}

TEST(RunSheetPaper, StandsOnOneSheet)
{
    Bench bench;
    const PaperDocument document = sheetPaperOf(bench, bench.open());
    EXPECT_EQ(paperPages(document, {210, 297}).size(), 1U);
    EXPECT_EQ(paperPages(document, {215.9, 279.4}).size(), 1U);
}

} // namespace ullage::app
