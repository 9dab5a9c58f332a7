// Films in one tank that want different times.
#include "app/dialogs/base_times_edit.h"
#include "app/dialogs/run_dialog.h"
#include "app/widgets/films_edit.h"
#include "tests/app/dialogs/dialog_driver.h"
#include "tests/app/dialogs/run_film_fixture.h"
#include "tests/app/scripted_prompts.h"

#include <QPushButton>

namespace ullage::app
{

// Two films of the notebook with times of their own.
class RunTwoTimes : public RunFilm
{
protected:
    RunTwoTimes()
    {
        enter("t1", "Quay 400", 585);
        enter("t2", "Lantern 100", 450);
    }
    void enter(const char* id, const char* film, double seconds)
    {
        formulary::DevelopmentFigure figure;
        figure.id = id;
        figure.film = film;
        figure.developer = "starter-mq-borax";
        figure.dilution = "stock";
        figure.times = {{chemistry::Celsius(20), chemistry::Seconds(seconds)}};
        EXPECT_TRUE(desk.session().doing([&](ledger::Book& book) { return book.add(figure); }));
    }
    static void twoFilms(RunDialog& dialog)
    {
        dialog.findChild<FilmsEdit*>()->setFilms(
            {{"135-36", 1, "Quay 400", {}, {}}, {"120", 1, "Lantern 100", {}, {}}});
    }
    static QPushButton* button(const RunDialog& dialog, const QString& text)
    {
        QCoreApplication::processEvents(); // buttons come and go
        for (auto* button : dialog.findChildren<QPushButton*>()) {
            if (button->text().startsWith(text) && button->isVisible())
                return button;
        }
        ADD_FAILURE() << text.toStdString();
        return nullptr;
    }
};

TEST_F(RunTwoTimes, areSaidAndOneRules)
{
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    type(dialog, "Name of the film", "Quay 400");
    EXPECT_EQ(dialog.timeShown(), "9:45") << "the row that fits is taken by itself";
    twoFilms(dialog);
    const auto* said = dialog.findChild<QLabel*>("timesApart");
    ASSERT_TRUE(said && said->isVisible());
    EXPECT_TRUE(said->text().contains("Quay 400: 9:45")) << said->text().toStdString();
    EXPECT_TRUE(said->text().contains("Lantern 100: 7:30"));
    EXPECT_FALSE(dialog.timeShown().contains(u':')) << "neither is taken by itself";
    button(dialog, "All for 7:30, as Lantern 100")->click();
    EXPECT_EQ(dialog.timeShown(), "7:30");
    EXPECT_TRUE(said->isVisible());
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible());
    EXPECT_EQ(desk.session().films().ofBatch(dev)->size(), 2u);
}

TEST_F(RunTwoTimes, areSplitAndLoggedOneAfterTheOther)
{
    RunDialog dialog(desk.door(), nullptr);
    dialog.show();
    twoFilms(dialog);
    button(dialog, "Split into 2 run")->click();
    EXPECT_EQ(dialog.timeShown(), "9:45");
    button(dialog, "Log this run, then the next")->click();
    ASSERT_TRUE(dialog.isVisible()) << "the other is still to be logged";
    EXPECT_EQ(named<QLineEdit>(dialog, "Name of the film")->text(), "Lantern 100");
    EXPECT_EQ(dialog.timeShown(), "8:15") << "450 s in a developer that has done one film";
    button(dialog, "Log this run")->click();
    EXPECT_FALSE(dialog.isVisible());
    const auto films = desk.session().films().ofBatch(dev);
    ASSERT_EQ(films->size(), 2u);
    EXPECT_NE((*films)[0].film.run, (*films)[1].film.run);
}

} // namespace ullage::app
