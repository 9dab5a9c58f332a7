#include "app/widgets/shown_table.h"

#include "app/charts/chart_table_dialog.h"
#include "app/charts/chart_table_model.h"
#include "app/formulary/formulary_table.h"
#include "app/widgets/table_export.h"
#include "tests/app/gallery/samples.h"
#include "tests/app/scripted_prompts.h"
#include "tests/app/time_zone.h"

#include <QAction>
#include <QFile>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTreeWidget>

#include <gtest/gtest.h>

#include <limits>

namespace ullage::app
{

namespace
{

using namespace std::chrono_literals;

// 1 June 2026, 17:30 UTC
const chemistry::Instant kEvening =
    std::chrono::sys_days(std::chrono::year{2026} / 6 / 1) + 17h + 30min;

QByteArray readBack(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

QAction* exportEntryOf(const QWidget& view)
{
    return view.actions().isEmpty() ? nullptr : view.actions().front();
}

} // namespace

TEST(ShownTable, WritesNumbersPlainAndTimesOnTheUsersClock)
{
    const InZone zone("Europe/Berlin");
    ShownTable table;
    table.name = "Bottles";
    table.headings = {"Bottle", withUnit("Volume", "ml"), "Mixed"};
    table.rows = {{QString("Dev, 1"), 1234567.25, kEvening},
                  {QString("Dev \"2\""), -0.5, std::monostate()},
                  {QString("Fix\n3"), std::numeric_limits<double>::infinity(), kEvening + 24h}};
    EXPECT_EQ(csvOf(table),
              "Bottle,\"Volume, ml\",\"Mixed (Europe/Berlin, UTC+01:00, UTC+02:00)\"\r\n"
              "\"Dev, 1\",1234567.25,2026-06-01 19:30:00\r\n"
              "\"Dev \"\"2\"\"\",-0.5,\r\n"
              "\"Fix\n3\",,2026-06-02 19:30:00\r\n");
}

TEST(ShownTable, SaysOneOffsetWhereTheClockIsNeverPutForward)
{
    const InZone zone("Asia/Kolkata");
    EXPECT_EQ(withZone("When", kEvening), "When (Asia/Kolkata, UTC+05:30)");
    EXPECT_EQ(csvMoment(kEvening), "2026-06-01 23:00:00");
}

TEST(ShownTable, NoTextIsRunByASpreadsheet)
{
    ShownTable table;
    table.headings = {"=A1"};
    for (const char* text : {"=1+1", "+2", "-3", "@SUM(A1)"})
        table.rows.push_back({QString(text)});
    EXPECT_EQ(csvOf(table), "'=A1\r\n'=1+1\r\n'+2\r\n'-3\r\n'@SUM(A1)\r\n");
}

TEST(ShownTable, IsWhatAViewShowsInItsOrder)
{
    FormularyTable view("Bottles", {"Bottle", "Holds", "EI"}, {1}, 0);
    view.setUnits({{1, "ml"}});
    view.setRows({{"a", {{"Amber", {}}, {"1,000 ml", 1000.0, 1000.0}, {"any", 0}}},
                  {"b", {{"Clear", {}}, {"500 ml", 500.0, 500.0}, {"—", 0, QVariant(QString())}}}});
    view.sortByColumn(1, Qt::AscendingOrder);
    EXPECT_EQ(csvOf(tableOf(view)), "Bottle,\"Holds, ml\",EI\r\nClear,500,\r\nAmber,1000,any\r\n");
    view.setColumnHidden(2, true);
    EXPECT_EQ(csvOf(tableOf(view)), "Bottle,\"Holds, ml\"\r\nClear,500\r\nAmber,1000\r\n");
}

TEST(ShownTable, OfAChartHasTheFiguresBehindTheWords)
{
    ChartTableModel model(samples::timeForEachFilm());
    QTableView view;
    view.setModel(&model);
    const QByteArrayList lines = csvOf(tableOf(view)).split('\n');
    ASSERT_EQ(lines.size(), 14);
    EXPECT_EQ(lines[0], "film,\"done, min\",\"next, min\",\"to come, min\"\r");
    EXPECT_EQ(lines[1], "1,9.5,,\r");
}

TEST(TableExport, AsksForAFileAndTellsWhatWasWritten)
{
    ScriptedPrompts asked;
    const PromptsInForce force(asked);
    const QTemporaryDir folder;
    QTreeWidget view;
    view.setHeaderLabels({"What"});
    view.setAccessibleName("Films, newest first");
    new QTreeWidgetItem(&view, {"Harbour"});
    QAction* entry = TableExport::offer(&view);
    EXPECT_EQ(view.contextMenuPolicy(), Qt::ActionsContextMenu) << "by the menu key as well";

    entry->trigger(); // goes back
    EXPECT_EQ(asked.asked().size(), 1);
    EXPECT_EQ(asked.asked().front(), "Export a table|films-newest-first.csv");
    asked.answer(folder.filePath("films"));
    entry->trigger();
    EXPECT_EQ(readBack(folder.filePath("films.csv")), "What\r\nHarbour\r\n");
    EXPECT_TRUE(asked.asked().back().contains("1 row")) << asked.asked().back().toStdString();
}

TEST(TableExport, SaysWhyNothingCouldBeWritten)
{
    ScriptedPrompts asked;
    const PromptsInForce force(asked);
    const QTemporaryDir folder;
    const QString file = folder.filePath("missing/films.csv");
    asked.answer(file);
    ShownTable table;
    table.headings = QStringList{"What"};
    TableExport::run(nullptr, table);
    ASSERT_EQ(asked.asked().size(), 2);
    EXPECT_TRUE(asked.asked().back().contains("could not be"))
        << asked.asked().back().toStdString();
    EXPECT_FALSE(QFile::exists(file));
}

TEST(TableExport, IsOfferedByTheTableOfAChart)
{
    ScriptedPrompts asked;
    const PromptsInForce force(asked);
    const QTemporaryDir folder;
    ChartTableDialog dialog(samples::timeForEachFilm());
    asked.answer(folder.filePath("times.csv"));
    for (QPushButton* button : dialog.findChildren<QPushButton*>()) {
        if (button->text() == "E&xport…")
            button->click();
    }
    EXPECT_TRUE(readBack(folder.filePath("times.csv")).startsWith("film,"));
    EXPECT_NE(exportEntryOf(*dialog.findChild<QTableView*>()), nullptr);
}

} // namespace ullage::app
