// Development times: edited, listed, taken out.
#include "app/charts/chart_view.h"
#include "app/formulary/figure_list.h"
#include "app/formulary/formulary_page.h"
#include "app/formulary/formulary_table.h"
#include "app/formulary/solution_form.h"
#include "app/formulary/solution_kind.h"
#include "app/formulary/solution_list.h"
#include "app/formulary/source_edit.h"
#include "app/formulary/time_editor.h"
#include "app/formulary/times_tab.h"
#include "app/formulary/vessel_editor.h"
#include "app/formulary/vessels_tab.h"
#include "app/widgets/quantity_edit.h"
#include "tests/app/closed_door.h"
#include "tests/app/formulary/tiny_book.h"
#include "tests/app/scripted_prompts.h"
#include "tests/app/words/sample_batches.h"

#include <algorithm>

namespace ullage::app
{

using sample::english;

TEST(TimesTab, listsWhatIsEnteredAndTakesItOutAfterAsking)
{
    TinyBook book;
    TimesTab tab(book.door);
    tab.setFormulary(book.formulary, english());
    tab.show();
    ASSERT_EQ(tab.table()->model()->rowCount(), 4);
    tab.table()->choose("t3");
    EXPECT_FALSE(tab.chart()->chart().series.empty());

    ScriptedPrompts answers;
    const PromptsInForce inForce(answers);
    answers.answer(false);
    tab.withdraw();
    EXPECT_EQ(book.formulary.notebook().current().size(), 4u);
    answers.answer(true);
    tab.withdraw();
    tab.setFormulary(book.formulary, english());
    EXPECT_EQ(tab.table()->model()->rowCount(), 3);
    EXPECT_TRUE(book.formulary.notebook().figure("t3")) << "nothing is deleted";
}

TEST(TimeEditor, savesWhatReplacesTheOldAndRefusesTwoTimesAtOneTemperature)
{
    TinyBook book;
    TimeEditor editor(*book.formulary.notebook().figure("t1"), book.formulary, book.door,
                      english());
    editor.show();
    EXPECT_EQ(editor.figure().times.size(), 3u);
    retype(editor.temperature(0), "20");
    EXPECT_EQ(editor.problem(), "Times: two are entered for one temperature.");
    EXPECT_FALSE(editor.saveButton()->isEnabled());
    retype(editor.temperature(0), "19");
    retype(editor.time(0), "9:00");
    editor.accept();
    const auto made = book.formulary.notebook().figure(editor.saved().toStdString());
    ASSERT_TRUE(made);
    EXPECT_EQ(made->replaces, "t1");
    EXPECT_EQ(made->times.front(),
              (chemistry::TimeAtTemperature{chemistry::Celsius(19), chemistry::Seconds(540)}));
    EXPECT_EQ(book.formulary.notebook().current().size(), 4u);
}

TEST(TimeEditor, leavesNoHalfOfAPairOutInSilence)
{
    TinyBook book;
    TimeEditor editor(*book.formulary.notebook().figure("t1"), book.formulary, book.door,
                      english());
    editor.show();
    ASSERT_EQ(editor.problem(), QString());
    const auto time = editor.time(1)->value();
    editor.time(1)->setValue(std::nullopt);
    EXPECT_EQ(editor.problem(), "A temperature without its time.");
    editor.time(1)->setValue(time);
    editor.temperature(1)->setValue(std::nullopt);
    EXPECT_EQ(editor.problem(), "A time without its temperature.");
}

TEST(TimeEditor, keepsATimeWhereItsSolutionIsNoDeveloperAnyMore)
{
    TinyBook book;
    const auto figure = *book.formulary.notebook().figure("t1");
    formulary::Solution turned = *book.formulary.solution(figure.developer);
    turned.replaces = turned.id;
    turned.id = "turned";
    turned.role = formulary::Role::Stop;
    book.formulary.add(turned);
    TimeEditor editor(figure, book.formulary, book.door, english());
    EXPECT_EQ(editor.figure().developer, figure.developer);
}

TEST(TimesTab, beginsWithTheDeveloper)
{
    TinyBook book;
    TimesTab tab(book.door);
    tab.setFormulary(book.formulary, english());
    const auto* table = tab.findChild<FormularyTable*>();
    ASSERT_NE(table, nullptr);
    QStringList heads;
    for (int column = 0; column < table->model()->columnCount(); ++column)
        heads << table->model()->headerData(column, Qt::Horizontal).toString();
    EXPECT_EQ(heads.mid(0, 4), (QStringList{"Developer", "Dilution", "Film", "EI"}));
    EXPECT_EQ(table->model()->index(0, 0).data().toString(), "MQ borax developer, stock");
    EXPECT_EQ(table->model()->index(0, 5).data().toString(), "published") << "a word, no letter";
}

TEST(FormularyTable, breaksWordsAndNoFigureWhereItIsNarrow)
{
    FormularyTable table("Times", {"Developer", "Time"}, {1}, 0);
    table.setRows({{"a", {{"MQ borax developer, stock, from the harbour", {}}, {"7:00", 420.0}}},
                   {"b", {{"Acid", {}}, {"12:00", 720.0}}}});
    table.resize(700, 300);
    table.show();
    QTest::qWait(1);
    const int low = table.rowHeight(0);
    EXPECT_EQ(table.rowHeight(1), low);
    table.resize(260, 300);
    EXPECT_EQ(table.horizontalScrollBar()->maximum(), 0);
    EXPECT_GT(table.rowHeight(0), low);
    EXPECT_EQ(table.rowHeight(1), low);
    const QFontMetrics metrics(table.font());
    EXPECT_GE(table.columnWidth(1), metrics.horizontalAdvance("12:00") + 16);
    table.sortByColumn(0, Qt::AscendingOrder);
    EXPECT_EQ(table.rowHeight(0), low) << "the height goes with the words";
    EXPECT_GT(table.rowHeight(1), low);
}

// Where a bar took room, rows broke and needed it; without it they did not break and needed none.
TEST(FormularyTable, itsColumnsAreTheSameWithABarAndWithout)
{
    FormularyTable table("Times", {"Developer", "Time"}, {1}, 0);
    table.setRows({{"a", {{"MQ borax developer, stock, from the harbour", {}}, {"7:00", 420.0}}},
                   {"b", {{"Acid", {}}, {"12:00", 720.0}}}});
    table.resize(260, 400);
    table.show();
    QTest::qWait(1);
    ASSERT_FALSE(table.verticalScrollBar()->isVisible());
    const int wide = table.columnWidth(0);
    table.resize(260, 70);
    QTest::qWait(1);
    ASSERT_TRUE(table.verticalScrollBar()->isVisible());
    EXPECT_EQ(table.columnWidth(0), wide);
}

} // namespace ullage::app
