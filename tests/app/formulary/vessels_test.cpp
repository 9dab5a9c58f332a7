// Vessels: edited, given anew, retired, listed.
#include "app/dialogs/bottle_choice.h"
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
#include "app/widgets/explanation_view.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/quantity_edit.h"
#include "app/words/shown_names.h"
#include "tests/app/closed_door.h"
#include "tests/app/formulary/tiny_book.h"
#include "tests/app/scripted_prompts.h"
#include "tests/app/words/sample_batches.h"

#include <QTest>

#include <algorithm>

namespace ullage::app
{

using sample::english;

TEST(VesselEditor, savesABottleAndShowsWhatItLetsIn)
{
    TinyBook book;
    VesselEditor editor(book.door, english());
    editor.show();
    EXPECT_FALSE(editor.saveButton()->isEnabled());
    retype(editor.name(), "Brown 1");
    retype(editor.capacity(), "1 l");
    if (!editor.capacity()->isValid())
        retype(editor.capacity(), "1000");
    editor.material()->setCurrentIndex(static_cast<int>(formulary::Material::Hdpe));
    const QString usual = only<ExplanationView>(&editor)->explanation().value;
    retype(editor.wall(), "1.8");
    EXPECT_NE(only<ExplanationView>(&editor)->explanation().value, usual);
    retype(editor.wall(), "50");
    EXPECT_FALSE(editor.saveButton()->isEnabled());
    EXPECT_TRUE(editor.problem().contains("Wall"));
    retype(editor.wall(), "");
    editor.accept();
    const auto made = book.formulary.vessels().back();
    EXPECT_EQ(made->name, "Brown 1");
    EXPECT_EQ(made->material, formulary::Material::Hdpe);
    EXPECT_EQ(made->capacity, chemistry::Millilitres(1000));
    EXPECT_FALSE(made->wall);
}

TEST(VesselEditor, givesABottleAnewWithOtherFigures)
{
    TinyBook book;
    const auto start = book.formulary.vessel("starter-hdpe-5000");
    ASSERT_TRUE(start);
    VesselEditor editor(*start, book.door, english());
    editor.show();
    EXPECT_EQ(editor.name()->text(), shownName(start->name));
    EXPECT_EQ(editor.vessel().capacity, start->capacity);
    EXPECT_FALSE(editor.saveButton()->isEnabled()) << "nothing is changed yet";
    retype(editor.capacity(), "4900");
    ASSERT_TRUE(editor.saveButton()->isEnabled()) << editor.problem().toStdString();
    editor.accept();
    const auto made = book.formulary.vessel(editor.saved().toStdString());
    ASSERT_TRUE(made);
    EXPECT_EQ(made->replaces, start->id);
    EXPECT_EQ(made->name, start->name) << "a translated name stays as it is in the book";
    EXPECT_EQ(made->capacity, chemistry::Millilitres(4900));
    EXPECT_EQ(book.formulary.vessel(start->id)->capacity, start->capacity) << "nothing is changed";
    EXPECT_EQ(book.formulary.vesselNow(start->id)->id, made->id);
}

TEST(VesselsTab, editsAndRetiresTheChosenBottle)
{
    TinyBook book;
    VesselsTab tab(book.door);
    tab.setFormulary(book.formulary, english());
    tab.show();
    const int all = tab.table()->model()->rowCount();
    tab.table()->choose("starter-hdpe-5000");
    tab.edit();
    auto* editor = only<VesselEditor>(&tab);
    ASSERT_NE(editor, nullptr);
    retype(editor->capacity(), "4900");
    editor->accept();
    const QString saved = editor->saved();
    tab.setFormulary(book.formulary, english());
    EXPECT_EQ(tab.table()->model()->rowCount(), all) << "in the other's place, not beside it";
    EXPECT_EQ(tab.table()->chosen(), saved);

    ScriptedPrompts answers;
    const PromptsInForce inForce(answers);
    // While something stands in it, under the line it was put there by, it is not even asked.
    ledger::Judged full;
    full.batch.id = "dev-1";
    full.batch.name = "Dev 1";
    full.batch.vessel = book.formulary.vessel("starter-hdpe-5000");
    book.door.standing = {full};
    tab.retire();
    ASSERT_EQ(answers.asked().size(), 1);
    EXPECT_TRUE(answers.asked().front().contains("Dev 1 stands in"))
        << answers.asked().front().toStdString();
    EXPECT_TRUE(book.formulary.vesselNow("starter-hdpe-5000"));

    book.door.standing.clear();
    tab.retire(); // goes back
    EXPECT_TRUE(book.formulary.vesselNow("starter-hdpe-5000"));
    answers.answer(true);
    tab.retire();
    EXPECT_FALSE(book.formulary.vesselNow("starter-hdpe-5000"));
    EXPECT_TRUE(book.formulary.vessel(saved.toStdString())) << "nothing is deleted";
    tab.setFormulary(book.formulary, english());
    EXPECT_EQ(tab.table()->model()->rowCount(), all - 1);
    for (const VesselChoice& choice : vesselsFor(chemistry::Millilitres(500), book.formulary, {}))
        EXPECT_FALSE(book.formulary.isWithdrawnVessel(choice.vessel->id)) << "it is not offered";
}

// Names are broken between words; figures never.
TEST(VesselsTab, showsWholeNamesHoweverNarrow)
{
    TinyBook book;
    VesselsTab tab(book.door);
    tab.setFormulary(book.formulary, english());
    tab.show();
    const auto* table = tab.table();
    const QFontMetricsF metrics(table->font());
    for (const int width : {500, 1200}) {
        tab.resize(width, 400);
        QTest::qWait(0);
        for (int row = 0; row < table->model()->rowCount(); ++row) {
            for (int column = 0; column < table->model()->columnCount(); ++column) {
                const QString text = table->model()->index(row, column).data().toString();
                const double room = table->columnWidth(column) - 16;
                const QStringList lines = brokenLines(text, metrics, room);
                EXPECT_GE(table->rowHeight(row), 36 + 17 * (lines.size() - 1));
                for (const QString& line : lines)
                    EXPECT_LE(metrics.horizontalAdvance(line), room)
                        << line.toStdString() << " at " << width;
                const bool figure = column == 1 || column == 3 || column == 4;
                EXPECT_TRUE(!figure || lines.size() == 1) << text.toStdString();
            }
        }
    }
}

TEST(VesselsTab, sortsByTheRawFlow)
{
    TinyBook book;
    VesselsTab tab(book.door);
    tab.setFormulary(book.formulary, english());
    tab.table()->sortByColumn(3, Qt::DescendingOrder);
    EXPECT_EQ(tab.table()->model()->index(0, 0).data(FormularyTableModel::IdRole),
              "starter-hdpe-5000");
}

} // namespace ullage::app
