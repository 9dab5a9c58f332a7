#include "app/formulary/figure_list.h"
#include "app/formulary/formulary_page.h"
#include "app/formulary/formulary_table.h"
#include "app/formulary/implied_charts.h"
#include "app/formulary/solution_card.h"
#include "app/formulary/solution_form.h"
#include "app/formulary/solution_kind.h"
#include "app/formulary/solution_list.h"
#include "app/formulary/source_edit.h"
#include "app/formulary/time_editor.h"
#include "app/formulary/times_tab.h"
#include "app/formulary/vessel_editor.h"
#include "app/formulary/vessels_tab.h"
#include "app/widgets/explanation_view.h"
#include "app/widgets/quantity_edit.h"
#include "app/words/figure_words.h"
#include "tests/app/closed_door.h"
#include "tests/app/formulary/starter.h"
#include "tests/app/formulary/tiny_book.h"
#include "tests/app/scripted_prompts.h"
#include "tests/app/words/sample_batches.h"

#include <QLabel>
#include <QListView>
#include <QScrollBar>
#include <QTest>

#include <algorithm>

namespace ullage::app
{

using formulary::Figure;
using sample::english;

TEST(FormularyPage, showsTheChosenSolutionAndExplainsTheChosenFigure)
{
    TinyBook book;
    FormularyPage page(book.door);
    page.setFormulary(book.formulary, english());
    page.resize(1100, 760);
    page.show();
    EXPECT_EQ(page.chosenSolution(), "starter-mq-borax");
    auto* figures = only<FigureList>(&page);
    const QString capacity = figures->model()->index(0, 0).data(FigureModel::ValueRole).toString();
    EXPECT_TRUE(capacity.startsWith("10 film") && capacity.endsWith("per litre"))
        << capacity.toStdString();
    EXPECT_EQ(figures->model()->index(0, 0).data(FigureModel::GradeRole).toInt(),
              static_cast<int>(chemistry::Grade::CommonPractice));
    const auto views = page.findChildren<ExplanationView*>();
    auto* why = *std::find_if(views.begin(), views.end(),
                              [](const auto* view) { return view->isVisible(); });
    figures->setFocus();
    QTest::keyClick(figures, Qt::Key_Down);
    EXPECT_EQ(why->explanation().title, figures->chosen()->why.title);
    EXPECT_TRUE(why->toPlainText().contains(figures->chosen()->why.value));
}

TEST(FormularyPage, whatStandsBesideTheFiguresIsNeverSqueezed)
{
    TinyBook book;
    FormularyPage page(book.door);
    page.setFormulary(book.formulary, english());
    page.resize(1084, 620);
    page.show();
    QTest::qWait(1);
    auto* charts = only<ImpliedCharts>(&page);
    for (const auto* label : charts->findChildren<QLabel*>()) {
        if (label->isVisible() && label->wordWrap()) {
            EXPECT_GE(label->height(), label->heightForWidth(label->width()))
                << label->text().toStdString();
        }
    }
    for (auto* view : page.findChildren<ExplanationView*>()) {
        if (view->isVisible()) {
            EXPECT_EQ(view->verticalScrollBar()->maximum(), 0) << "the column scrolls, not it";
        }
    }
}

TEST(FormularyPage, theKeyboardMovesFromSolutionToSolutionPastTheHeadings)
{
    TinyBook book;
    FormularyPage page(book.door);
    page.setFormulary(book.formulary, english());
    page.show();
    auto* list = only<SolutionList>(&page)->findChild<QListView*>();
    list->setFocus();
    QStringList seen{page.chosenSolution()};
    for (std::size_t i = 1; i < book.formulary.currentSolutions().size(); ++i) {
        QTest::keyClick(list, Qt::Key_Down);
        seen << page.chosenSolution();
    }
    EXPECT_EQ(seen.removeDuplicates(), 0);
    EXPECT_EQ(seen.last(), "starter-wetting-agent");
}

TEST(FormularyPage, aFigureWithoutASourceSaysSo)
{
    formulary::Solution solution = *sample::formularyWithTimes().solution("starter-mq-borax");
    solution.sources.erase("capacity");
    const auto rows = figureRows(solution, english());
    EXPECT_EQ(rows[0].source, "no source given");
    EXPECT_EQ(rows[0].grade, std::nullopt);
    EXPECT_TRUE(rows[0].spoken().contains("no source given"));
    solution.sources["capacity"] = "a notice on the wall";
    const auto noticed = figureRows(solution, english());
    EXPECT_EQ(noticed[0].grade, std::nullopt) << "it names no publication";
    EXPECT_TRUE(noticed[0].spoken().endsWith("not graded: a notice on the wall"));
}

TEST(FormularyPage, saysHowASolutionIsUsed)
{
    formulary::Solution solution = *sample::formularyWithTimes().solution("starter-rapid-fixer");
    solution.oneShotPerFilm = chemistry::Millilitres(150);
    solution.fixerKind = formulary::FixerKind::Alkaline;
    solution.fixMin = chemistry::Seconds(150);
    solution.turnoverLimit = 2.5;
    solution.sources["fix_min_s"] = "common practice: as the packet has it";
    QStringList said;
    for (const FigureRow& row : figureRows(solution, english())) {
        said << row.label + ": " + row.value;
        if (row.label == "Shortest fixing time") {
            EXPECT_EQ(row.grade, chemistry::Grade::CommonPractice);
            EXPECT_TRUE(row.why.lines().join(u' ').contains("as the packet has it"));
        }
    }
    for (const char* line :
         {"For a film, used once: 150\u00a0ml", "Kind of fixer: alkaline",
          "Shortest fixing time: 2:30", "Replenisher at most: 2.5 times its volume"})
        EXPECT_TRUE(said.contains(line)) << line << " in " << said.join("; ").toStdString();
    // What is not said has no row.
    formulary::Solution plain = *sample::formularyWithTimes().solution("starter-mq-borax");
    for (const FigureRow& row : figureRows(plain, english()))
        EXPECT_NE(row.label, "Shortest fixing time");
}

TEST(SolutionEditor, changesNothingUntilSomethingIsTyped)
{
    TinyBook book;
    for (const auto& solution : book.formulary.solutions()) {
        SolutionEditor editor(SolutionEditor::Purpose::Edit, *solution, book.door, english());
        EXPECT_EQ(editor.form()->solution(), *solution) << solution->id;
        EXPECT_EQ(editor.form()->showProblem(), QString()) << solution->id;
        EXPECT_FALSE(editor.saveButton()->isEnabled()) << "nothing is changed";
    }
}

TEST(SolutionEditor, savesANewSolutionThatReplacesTheOld)
{
    TinyBook book;
    const auto old = book.formulary.solution("starter-mq-borax");
    const formulary::Solution before = *old;
    SolutionEditor editor(SolutionEditor::Purpose::Edit, *old, book.door, english());
    editor.show();
    retype(editor.form()->figure(Figure::Capacity), "12");
    SourceEdit* source = editor.form()->source("capacity");
    retype(source->text(), "a handbook, p. 4");
    source->grade()->setCurrentText(gradeName(chemistry::Grade::Published));
    QTest::mouseClick(editor.saveButton(), Qt::LeftButton);
    ASSERT_EQ(editor.result(), QDialog::Accepted);
    const auto made = book.formulary.solution(editor.saved().toStdString());
    ASSERT_TRUE(made);
    EXPECT_EQ(made->replaces, "starter-mq-borax");
    EXPECT_EQ(made->capacity, chemistry::FilmsPerLitre(12));
    EXPECT_EQ(formulary::sourceLine(*made, Figure::Capacity), "a handbook, p. 4");
    EXPECT_EQ(made->keeping, before.keeping);
    EXPECT_EQ(*old, before) << "what is mixed keeps its figures";

    FormularyPage page(book.door);
    page.setFormulary(book.formulary, english());
    page.chooseSolution(editor.saved());
    EXPECT_EQ(page.chosenSolution(), editor.saved());
}

TEST(SolutionEditor, asksHowItComesAndWhatReplenishesIt)
{
    TinyBook book;
    const auto old = book.formulary.solution("starter-mq-borax");
    SolutionEditor editor(SolutionEditor::Purpose::Edit, *old, book.door, english());
    editor.show();
    SolutionKind* kind = editor.form()->kind();
    EXPECT_LT(kind->replenisher()->findData("starter-mq-borax"), 0) << "not with itself";
    kind->form()->setCurrentIndex(static_cast<int>(formulary::Form::Liquid));
    const int with = kind->replenisher()->findData("starter-mq-borax-replenisher");
    ASSERT_GT(with, 0);
    kind->replenisher()->setCurrentIndex(with);
    EXPECT_FALSE(editor.saveButton()->isEnabled()) << "it needs its rate";
    retype(editor.form()->figure(Figure::Replenish), "30");
    ASSERT_TRUE(editor.saveButton()->isEnabled()) << editor.form()->showProblem().toStdString();
    const formulary::Solution made = editor.form()->solution();
    EXPECT_EQ(made.form, formulary::Form::Liquid);
    EXPECT_EQ(made.replenisher, "starter-mq-borax-replenisher");
    EXPECT_EQ(made.replenishPerFilm, chemistry::Millilitres(30));
}

TEST(SolutionEditor, asksForTheGradeOfANewSource)
{
    TinyBook book;
    formulary::Solution blank;
    blank.role = formulary::Role::Developer;
    SolutionEditor editor(SolutionEditor::Purpose::New, blank, book.door, english());
    editor.show();
    retype(editor.form()->name(), "Harbour developer");
    retype(editor.form()->figure(Figure::Capacity), "8");
    EXPECT_TRUE(editor.saveButton()->isEnabled()) << "a figure may have no source";
    SourceEdit* source = editor.form()->source("capacity");
    retype(source->text(), "a notice on the wall");
    EXPECT_FALSE(editor.saveButton()->isEnabled());
    EXPECT_EQ(editor.form()->showProblem(), "Capacity: say where it is from.");
    source->grade()->setCurrentText(gradeName(chemistry::Grade::CommonPractice));
    EXPECT_TRUE(editor.saveButton()->isEnabled());
    editor.accept();
    const auto made = book.formulary.solution(editor.saved().toStdString());
    ASSERT_TRUE(made);
    EXPECT_EQ(made->sources.at("capacity"), "common practice: a notice on the wall");
}

TEST(SourceEdit, givesBackWhatIsNotTouchedAndNamesWhatIsPublished)
{
    SourceEdit edit("Capacity");
    edit.show();
    for (const char* line : {"", " a handbook ", "common practice of this darkroom",
                             "from memory: a leaflet", "published: computed tables"}) {
        edit.setLine(line);
        EXPECT_EQ(edit.line(), line);
        EXPECT_EQ(edit.problem(), QString());
    }
    edit.setLine("common practice: ten films");
    EXPECT_EQ(edit.text()->text(), "ten films");
    edit.grade()->setCurrentText(gradeName(chemistry::Grade::Published));
    EXPECT_EQ(edit.line(), "published: ten films");
    retype(edit.text(), "a book of 1929");
    EXPECT_EQ(edit.line(), "a book of 1929") << "it names itself";
    retype(edit.text(), "");
    EXPECT_EQ(edit.problem(), "Capacity: name the published source.");
    retype(edit.text(), "computed tables");
    EXPECT_EQ(edit.line(), "published: computed tables");
}

TEST(SolutionEditor, aCopyReplacesNothing)
{
    TinyBook book;
    SolutionEditor editor(SolutionEditor::Purpose::Copy,
                          *book.formulary.solution("starter-mq-borax"), book.door, english());
    editor.accept();
    ASSERT_FALSE(editor.saved().isEmpty());
    EXPECT_TRUE(book.formulary.solution(editor.saved().toStdString())->replaces.empty());
}

TEST(SolutionEditor, namesFieldValueAndRangeOfWhatIsWrong)
{
    TinyBook book;
    SolutionEditor editor(SolutionEditor::Purpose::Edit,
                          *book.formulary.solution("starter-mq-borax"), book.door, english());
    editor.show();
    retype(editor.form()->figure(Figure::Capacity), "5000");
    QString problem = editor.form()->showProblem();
    for (const char* part : {"Capacity", "5000", "1000"})
        EXPECT_TRUE(problem.contains(part)) << problem.toStdString();
    EXPECT_FALSE(editor.saveButton()->isEnabled());
    editor.accept();
    EXPECT_TRUE(editor.saved().isEmpty());

    retype(editor.form()->figure(Figure::Capacity), "10");
    retype(editor.form()->figure(Figure::KeepsHalf), "9");
    problem = editor.form()->showProblem();
    EXPECT_TRUE(problem.startsWith("Keeps, half full: it must be shorter"))
        << problem.toStdString();
}

TEST(SolutionEditor, readsStepsAsItWritesThem)
{
    const std::vector<chemistry::WearStep> steps{{chemistry::FilmsPerLitre(5), 1.15},
                                                 {chemistry::FilmsPerLitre(10), 1.3}};
    EXPECT_EQ(stepsText(steps, english()), "5: 1.15; 10: 1.3");
    EXPECT_EQ(readSteps("5: 1.15; 10: 1.3", english()), steps);
    EXPECT_FALSE(readSteps("5 1.15", english()));
    EXPECT_FALSE(readSteps("five: 1.15", english()));
}

} // namespace ullage::app
