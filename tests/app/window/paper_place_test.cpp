#include "app/window/paper_place.h"

#include "app/shelf/shelf_page.h"
#include "app/widgets/theme.h"
#include "app/window/main_window.h"
#include "tests/app/desk.h"
#include "tests/app/light_of.h"
#include "tests/app/scripted_prompts.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLineEdit>
#include <QPrintPreviewDialog>
#include <QPrintPreviewWidget>
#include <QProgressDialog>
#include <QStyle>
#include <QStyleOptionFrame>
#include <QTest>

namespace ullage::app
{

namespace
{

class PaperPlaceTest : public ::testing::Test
{
protected:
    PaperPlaceTest()
    {
        dev = desk.mix("starter-mq-borax", desk.session().formulary().vessels()[0]->id, 1000,
                       "Dev 1");
        desk.run(dev, 2);
        QObject::connect(&place, &PaperPlace::shown, &place,
                         [this](const PaperDocument& document) { shown.push_back(document); });
    }
    // Made on a thread: waits for its preview.
    void printed(PaperKind kind)
    {
        const std::size_t before = shown.size();
        place.print(kind);
        EXPECT_EQ(shown.size(), before) << "the window waits for nothing";
        EXPECT_TRUE(QTest::qWaitFor([&] { return shown.size() > before; }, 20'000));
    }
    void closePreviews()
    {
        for (QPrintPreviewDialog* dialog : window.findChildren<QPrintPreviewDialog*>())
            dialog->reject();
    }

    Desk desk;
    MainWindow window;
    PaperPlace place{WindowParts{window, desk.session(), desk.preferences(), desk.door()}};
    std::string dev;
    std::vector<PaperDocument> shown;
};

} // namespace

TEST_F(PaperPlaceTest, everyPageIsShownBeforeItIsPrinted)
{
    for (const PaperKind kind : {PaperKind::Shelf, PaperKind::Shopping, PaperKind::HandOver})
        printed(kind);
    ASSERT_EQ(shown.size(), 3U);
    EXPECT_EQ(window.findChildren<QPrintPreviewDialog*>().size(), 3);
    const auto* table = std::get_if<PaperTable>(&shown[0].blocks.front());
    ASSERT_TRUE(table);
    ASSERT_EQ(table->rows.size(), 1U);
    EXPECT_EQ(table->rows[0][0], "Dev 1");
    closePreviews();
}

TEST_F(PaperPlaceTest, thePreviewsZoomIsReadWhole)
{
    printed(PaperKind::Shelf);
    auto* preview = window.findChild<QPrintPreviewDialog*>();
    ASSERT_NE(preview, nullptr);
    auto* zoom = preview->findChild<QComboBox*>();
    ASSERT_NE(zoom, nullptr);
    ASSERT_NE(zoom->lineEdit(), nullptr);
    QStyleOptionFrame option;
    option.initFrom(zoom->lineEdit());
    const int room = zoom->style()
                         ->subElementRect(QStyle::SE_LineEditContents, &option, zoom->lineEdit())
                         .width();
    EXPECT_GE(room, zoom->fontMetrics().horizontalAdvance(QStringLiteral("863.8%")));
    closePreviews();
}

TEST_F(PaperPlaceTest, noPageIsWhiteWhileTheScreenIsRed)
{
    Theme::instance().setDarkRoom(true);
    printed(PaperKind::Shelf);
    auto* pages = window.findChild<QPrintPreviewWidget*>();
    ASSERT_NE(pages, nullptr);
    const Light light = lightOf(*pages);
    Theme::instance().setDarkRoom(false);
    EXPECT_EQ(light.others, 0);
    EXPECT_LT(light.red, 100);
    EXPECT_GT(lightOf(*pages).others, 200) << "paper is white else";
    closePreviews();
}

TEST_F(PaperPlaceTest, aShoppingListSaysWhatItIsPlannedFor)
{
    printed(PaperKind::Shopping);
    EXPECT_TRUE(shown[0].under.contains("26 week")) << shown[0].under.toStdString();
    place.setPlanFor([] { return cupboard::PlanFor{.weeks = 8, .films = 20, .beside = {}}; });
    printed(PaperKind::Shopping);
    EXPECT_TRUE(shown[1].under.endsWith("for 20 films")) << shown[1].under.toStdString();
    closePreviews();
}

TEST_F(PaperPlaceTest, aCardIsThatOfTheBottleChosenOrItIsSaidThatNoneIs)
{
    ScriptedPrompts prompts;
    const PromptsInForce inForce(prompts);
    place.print(PaperKind::Card);
    EXPECT_TRUE(shown.empty());
    EXPECT_EQ(prompts.asked().size(), 1);
    window.shelf()->actions()->setBottle(QString::fromStdString(dev));
    printed(PaperKind::Card);
    ASSERT_EQ(shown.size(), 1U);
    EXPECT_EQ(shown[0].title, "Dev 1");
    closePreviews();
}

TEST_F(PaperPlaceTest, aReportIsOfTheMonthThatIsChosen)
{
    ScriptedPrompts prompts;
    const PromptsInForce inForce(prompts);
    place.print(PaperKind::Month); // gone back from
    EXPECT_TRUE(shown.empty());
    prompts.answerWay(1);
    printed(PaperKind::Month);
    ASSERT_EQ(shown.size(), 1U);
    EXPECT_EQ(shown[0].title, "October 2026"); // it is November
    closePreviews();
}

TEST_F(PaperPlaceTest, aPageThatIsGivenUpIsNotShown)
{
    place.print(PaperKind::Shelf);
    auto* waiting = window.findChild<QProgressDialog*>();
    ASSERT_NE(waiting, nullptr);
    waiting->cancel();
    printed(PaperKind::HandOver);
    ASSERT_EQ(shown.size(), 1U) << "the shelf list was given up before it";
    EXPECT_NE(shown[0].title, "The shelf");
    closePreviews();
}

TEST_F(PaperPlaceTest, lettingGoOfTheBookLetsGoOfThePage)
{
    place.print(PaperKind::Shelf);
    desk.session().close();
    QTest::qWait(20);
    EXPECT_TRUE(shown.empty());
    EXPECT_FALSE(QFile::exists(desk.bookPath() + "-wal")) << "the last to close clears it away";
}

} // namespace ullage::app
