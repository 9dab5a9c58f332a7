// A bottle found: what is known of it is counted, and the rest stays not known.
#include "app/dialogs/found_form.h"
#include "app/dialogs/mix_dialog.h"
#include "app/shelf/shelf_views.h"
#include "app/widgets/factor_rows.h"
#include "app/words/verdict_words.h"
#include "tests/app/dialogs/dialog_driver.h"

namespace ullage::app
{

namespace
{

class FoundBottle : public testing::Test
{
protected:
    FoundBottle() : dialog(desk.door())
    {
        dialog.show();
        type(dialog, "Name on the label", "Dev old");
    }
    FoundForm& form() { return *dialog.findChild<FoundForm*>(); }
    void tick()
    {
        for (auto* box : dialog.findChildren<QCheckBox*>()) {
            if (box->text().remove(u'&').startsWith("Found bottle"))
                box->click();
        }
    }
    // What the card at the side says that it will become.
    QString becomes() const
    {
        QStringList said;
        for (const auto* rows : dialog.findChildren<FactorRows*>()) {
            if (rows->isVisible())
                said << rows->accessibleName();
        }
        return said.join('|');
    }
    const Bottle& entered()
    {
        dialog.accept();
        EXPECT_FALSE(dialog.isVisible()) << form().problemOf("mixed_on").toStdString();
        return *desk.session().bottle(dialog.mixed());
    }

    Desk desk;
    MixDialog dialog;
};

} // namespace

TEST_F(FoundBottle, isAskedOnlyWhereItWasFound)
{
    EXPECT_FALSE(form().isVisible());
    tick();
    EXPECT_TRUE(form().isVisible());
}

TEST_F(FoundBottle, leftEmptyNothingIsKnown)
{
    tick();
    const Bottle& bottle = entered();
    EXPECT_TRUE(bottle.batch.historyUnknown);
    EXPECT_FALSE(bottle.batch.dateKnown);
    EXPECT_FALSE(bottle.assessment.filmsLeft);
    EXPECT_FALSE(bottle.assessment.discardBy);
    const Wording wording = desk.preferences().wording();
    const QString said = bottleSentences(bottle.batch, bottle.assessment, wording).join('|');
    EXPECT_TRUE(said.contains("how many it has left is not known")) << said.toStdString();
    EXPECT_TRUE(said.contains("when it was mixed is not known")) << said.toStdString();
    const BottleView view = bottleView(bottle.batch, bottle.assessment, wording);
    EXPECT_TRUE(view.mixedText.startsWith("found ")) << view.mixedText.toStdString();
    EXPECT_EQ(view.subline, "films not known");
    EXPECT_FALSE(view.wear) << "and it is not drawn as if it had done none";
    EXPECT_TRUE(view.uncounted);
}

TEST_F(FoundBottle, countsFromTheDayAndTheFilmsThatAreSaid)
{
    tick();
    type(form(), "Mixed on, if it is known", "1 Oct 2026");
    EXPECT_TRUE(form().understood().contains("1 Oct 2026")) << form().understood().toStdString();
    type(form(), "Films per litre, as you guess", "4");
    const Bottle& bottle = entered();
    EXPECT_TRUE(bottle.batch.dateKnown);
    EXPECT_DOUBLE_EQ(bottle.batch.wear.value(), 4);
    EXPECT_NEAR(bottle.assessment.age.value(), 55, 1) << "1 October to 25 November";
    EXPECT_TRUE(bottle.assessment.discardBy);
    EXPECT_TRUE(bottle.assessment.filmsLeft);
    const BottleView view =
        bottleView(bottle.batch, bottle.assessment, desk.preferences().wording());
    EXPECT_TRUE(view.mixedText.startsWith("mixed 1 Oct")) << view.mixedText.toStdString();
}

TEST_F(FoundBottle, isNotPromisedTheLifeOfAFreshOne)
{
    EXPECT_TRUE(becomes().contains("Films: 10")) << becomes().toStdString();
    EXPECT_TRUE(becomes().contains("Keeps, full and closed: to "));
    tick();
    EXPECT_TRUE(becomes().contains("Films left: not known")) << becomes().toStdString();
    EXPECT_TRUE(becomes().contains("Keeps: not known"));
    EXPECT_TRUE(becomes().contains("Next film's time: at least"));
    EXPECT_FALSE(becomes().contains("First film") || becomes().contains("Tenth film") ||
                 becomes().contains("to "));
    type(form(), "Films per litre, as you guess", "4");
    EXPECT_TRUE(becomes().contains("Films left: at most 6")) << becomes().toStdString();
    EXPECT_TRUE(becomes().contains("at least ×\u00a01.40")) << becomes().toStdString();
    type(form(), "Mixed on, if it is known", "1 Oct 2026");
    EXPECT_TRUE(becomes().contains("Keeps, full and closed: to 1 Apr")) << becomes().toStdString();
}

TEST_F(FoundBottle, refusesWhatCannotBe)
{
    tick();
    const QByteArray before = desk.journal();
    for (const char* bad : {"sometime", "31 Feb 2026", "30 Nov 2026"}) {
        type(form(), "Mixed on, if it is known", bad);
        dialog.accept();
        EXPECT_TRUE(dialog.isVisible()) << bad;
        EXPECT_FALSE(form().problemOf("mixed_on").isEmpty()) << bad;
    }
    type(form(), "Mixed on, if it is known", "");
    type(form(), "Films per litre, as you guess", "-1");
    dialog.accept();
    EXPECT_FALSE(form().problemOf("assumed_films_per_litre").isEmpty());
    EXPECT_EQ(desk.journal(), before);
}

} // namespace ullage::app
