// The day book driven as a person would: filters, taking back, bringing back, undo.
#include "tests/app/daybook/day_driver.h"

#include "app/daybook/day_detail.h"
#include "app/daybook/forgotten_dialog.h"
#include "app/daybook/take_back_dialog.h"
#include "app/widgets/factor_rows.h"
#include "tests/app/scripted_prompts.h"

#include <QAbstractButton>
#include <QFile>
#include <QLabel>
#include <QPrintPreviewDialog>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTranslator>

#include <algorithm>

namespace ullage::app
{

namespace
{

class DayBookPageTest : public testing::Test
{
protected:
    DayBookPageTest()
    {
        desk.pass(-30);
        desk.clearWhenMixed = false;
        dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
        fix = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
        desk.pass(10);
        runBoth(2);
        desk.pass(10);
        desk.record(fix, ledger::Noted{"cloudy today"});
        desk.record(dev, ledger::Looked{true, "colour"});
        desk.pass(10);
    }

    void runBoth(double films)
    {
        const auto done = desk.session().doing([&](ledger::Book& book) {
            return book.process({.load = {.films = {{"120", films}}},
                                 .baths = {{dev, {}, {}, false, {}}, {fix, {}, {}, false, {}}},
                                 .films = {},
                                 .times = {.run = {},
                                           .steps = {{"develop", chemistry::Seconds(600),
                                                      chemistry::Seconds(612)}}}},
                                desk.now());
        });
        EXPECT_TRUE(done);
    }
    double wear(const std::string& id)
    {
        return desk.session().book().batch(id, desk.now())->wear.value();
    }
    static QAbstractButton* button(const QWidget& within, const QString& text)
    {
        for (auto* one : within.findChildren<QAbstractButton*>()) {
            if (one->text().remove(u'&') == text)
                return one;
        }
        ADD_FAILURE() << "no button " << text.toStdString();
        return nullptr;
    }
    static QStringList labels(const QWidget& within)
    {
        QStringList found;
        for (const auto* label : within.findChildren<QLabel*>())
            found << label->text();
        return found;
    }

    Desk desk;
    std::string dev;
    std::string fix;
    const QStringList kAll{"Look, Dev 1", "Note, Fix 1", "Run · 2 × 120", "Mixed, Fix 1",
                           "Mixed, Dev 1"};
};

} // namespace

TEST_F(DayBookPageTest, ShowsEverythingNewestFirst)
{
    PageOn on(desk);
    EXPECT_EQ(on.shown(), kAll);
    ASSERT_NE(on.page.chosen(), nullptr) << "the newest is chosen";
    on.choose("Run · 2 × 120");
    const QStringList told = labels(*on.page.findChild<DayDetail*>());
    EXPECT_TRUE(told.contains("Went through"));
    EXPECT_TRUE(told.join('|').contains("0 films before"));
    EXPECT_TRUE(
        on.page.findChild<DayDetail*>()->findChild<FactorRows*>()->accessibleName().contains(
            "10:00 → 10:12"))
        << "the times of the run";
    waitFor([&] {
        return labels(on.page).join('|').contains(QRegularExpression("5 entr\\w+ since 2026"));
    });
}

TEST_F(DayBookPageTest, FiltersByKindBottlePeriodAndWords)
{
    PageOn on(desk);
    auto* bar = on.page.filterBar();
    waitFor([&] { return named<QComboBox>(on.page, "Bottle")->count() == 3; });
    button(*bar, "Runs")->click();
    on.settle();
    EXPECT_EQ(on.shown(), QStringList{"Run · 2 × 120"});
    button(*bar, "Everything")->click();
    auto* bottle = named<QComboBox>(*bar, "Bottle");
    bottle->setCurrentIndex(bottle->findText("Fix 1"));
    on.settle();
    EXPECT_EQ(on.shown(), (QStringList{"Note, Fix 1", "Run · 2 × 120", "Mixed, Fix 1"}));
    bar->reset();
    bar->periodBar()->setSpan(PeriodBar::Span::Week);
    on.settle();
    EXPECT_EQ(on.shown(), QStringList{});
    EXPECT_TRUE(labels(on.page).contains("Nothing matches"));
    button(on.page, "Show everything")->click();
    on.settle();
    EXPECT_EQ(on.shown(), kAll);

    bar->periodBar()->setSpan(PeriodBar::Span::Month);
    on.settle();
    EXPECT_EQ(on.shown(), kAll.mid(0, 3));
    bar->periodBar()->step(-1);
    on.settle();
    EXPECT_EQ(on.shown(), kAll.mid(3)) << "the month before";
    EXPECT_EQ(bar->words(), "Everything · October 2026");
    bar->reset();
    on.settle();

    QSignalSpy changed(bar, &DayFilterBar::changed);
    QTest::keyClicks(bar->find(), "CLOUDY");
    EXPECT_EQ(changed.count(), 0) << "typing is waited for";
    waitFor([&] { return changed.count() == 1; });
    on.settle();
    EXPECT_EQ(on.shown(), QStringList{"Note, Fix 1"});
    bar->find()->setText("mq borax");
    QTest::keyClick(bar->find(), Qt::Key_Return);
    on.settle();
    EXPECT_EQ(on.shown(), (QStringList{"Look, Dev 1", "Run · 2 × 120", "Mixed, Dev 1"}))
        << "bottles of that solution";
    bar->find()->setText("look");
    QTest::keyClick(bar->find(), Qt::Key_Return);
    on.settle();
    EXPECT_EQ(on.shown(), QStringList{"Look, Dev 1"}) << "as it is worded";
}

TEST_F(DayBookPageTest, PeopleAreOfferedOnceSomebodyIsNamed)
{
    PageOn on(desk);
    auto* person = named<QComboBox>(on.page, "Person");
    EXPECT_FALSE(person->isVisible());
    desk.session().setPerson(" Ada ");
    desk.record(dev, ledger::Noted{"hers"});
    waitFor([&] { return person->isVisible(); });
    person->setCurrentIndex(person->findText("Ada"));
    on.settle();
    EXPECT_EQ(on.shown(), QStringList{"Note, Dev 1"});
    EXPECT_EQ(on.page.model()->index(1).data(DayModel::PersonRole).toString(), "Ada");
}

TEST_F(DayBookPageTest, ARunIsTakenBackWholeWithAReasonAndBroughtBack)
{
    PageOn on(desk);
    on.choose("Run · 2 × 120");
    on.page.takeBack();
    auto* dialog = on.dialog<TakeBackDialog>();
    EXPECT_TRUE(dialog->consequences().join('|').contains("Films left: 8 films → 10 films"))
        << dialog->consequences().join('|').toStdString();
    const QByteArray before = desk.journal();
    dialog->accept();
    EXPECT_FALSE(dialog->problemOf("why").isEmpty()) << "a reason is needed";
    EXPECT_EQ(desk.journal(), before);
    type(*dialog, "Why", "one reel was empty");
    dialog->accept();
    on.settle();
    EXPECT_EQ(on.shown()[2], "Run · 2 × 120 (taken back: one reel was empty)");
    EXPECT_DOUBLE_EQ(wear(dev), 0);
    EXPECT_DOUBLE_EQ(wear(fix), 0);
    EXPECT_EQ(on.page.chosen()->event.kind(), "processed") << "stays chosen";

    on.page.takeBack();
    auto* back = on.dialog<TakeBackDialog>();
    EXPECT_EQ(back->windowTitle(), "Bring an entry back");
    type(*back, "Why", "it was not");
    back->accept();
    on.settle();
    EXPECT_EQ(on.shown(), kAll);
    EXPECT_DOUBLE_EQ(wear(dev), 2);
    on.choose("Run · 2 × 120");
    EXPECT_NE(on.page.findChild<DayDetail*>()->findChild<FactorRows*>(), nullptr)
        << "with the times it took";
}

TEST_F(DayBookPageTest, WhatWasTakenSaysOfWhatAndInItsUnit)
{
    ledger::Supply gloves;
    gloves.name = "Gloves";
    gloves.unit = "pairs";
    gloves.amount = 40;
    std::string id;
    const auto done = desk.session().doing([&](ledger::Book& book) -> Result<void> {
        auto added = book.add(gloves);
        if (!added)
            return tl::unexpected(added.error());
        id = *added;
        return book.record(ledger::Taken{id, 13, {}}, desk.door().now());
    });
    ASSERT_TRUE(done) << done.error().field << done.error().text;
    PageOn on(desk);
    EXPECT_EQ(on.shown()[0], "Taken from the cupboard, Gloves");
    EXPECT_EQ(on.page.model()->index(1).data(DayModel::DetailRole).toString(), "13 pairs");
}

TEST_F(DayBookPageTest, UndoAndRedoShowAtOnce)
{
    PageOn on(desk);
    ASSERT_TRUE(desk.session().undo());
    on.settle();
    EXPECT_EQ(on.shown()[0], "Look, Dev 1 (taken back: undone)");
    ASSERT_TRUE(desk.session().redo());
    on.settle();
    EXPECT_EQ(on.shown(), kAll);
}

TEST_F(DayBookPageTest, WhatLaterEntriesNeedCannotBeTakenBack)
{
    PageOn on(desk);
    on.choose("Mixed, Dev 1");
    on.page.takeBack();
    auto* dialog = on.dialog<TakeBackDialog>();
    type(*dialog, "Why", "wrong");
    const QByteArray before = desk.journal();
    dialog->accept();
    EXPECT_FALSE(dialog->problemOf("voids").isEmpty() && dialog->problemOf("").isEmpty());
    EXPECT_EQ(desk.journal(), before);
}

TEST_F(DayBookPageTest, FromAnEntryToItsBottle)
{
    PageOn on(desk);
    on.choose("Run · 2 × 120");
    button(*on.page.findChild<DayDetail*>(), "Fix 1")->click();
    on.settle();
    EXPECT_EQ(on.shown(), (QStringList{"Note, Fix 1", "Run · 2 × 120", "Mixed, Fix 1"}));
}

TEST_F(DayBookPageTest, TheKeyboardIsEnough)
{
    PageOn on(desk);
    on.page.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&on.page));
    on.page.list()->setFocus();
    on.choose("Look, Dev 1");
    QTest::keyClick(on.page.list(), Qt::Key_Down);
    EXPECT_EQ(on.page.list()->currentIndex().data().toString(), "Note, Fix 1");
    QTest::keyClick(on.page.list(), Qt::Key_Down);
    EXPECT_EQ(on.page.list()->currentIndex().data().toString(), "Run · 2 × 120")
        << "over the heading of a day";
    QTest::keyClick(on.page.list(), Qt::Key_Delete);
    EXPECT_NE(on.page.findChild<TakeBackDialog*>(), nullptr);
    on.dialog<TakeBackDialog>()->reject();
    on.settle();
    on.page.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&on.page));
    QTest::keyClick(on.page.list(), Qt::Key_F, Qt::ControlModifier);
    EXPECT_TRUE(on.page.filterBar()->find()->hasFocus());
}

TEST_F(DayBookPageTest, EveryControlHasAName)
{
    PageOn on(desk);
    for (const auto* widget : on.page.findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible() ||
            qobject_cast<const QLabel*>(widget))
            continue; // a label is read by its words
        const auto* press = qobject_cast<const QAbstractButton*>(widget);
        EXPECT_FALSE(widget->accessibleName().isEmpty() && !(press && !press->text().isEmpty()))
            << widget->metaObject()->className();
    }
}

TEST(DayBookEmpty, SaysWhatToDoFirst)
{
    Desk desk;
    PageOn on(desk);
    QSignalSpy mix(&on.page, &DayBookPage::mixRequested);
    for (auto* button : on.page.findChildren<QAbstractButton*>()) {
        if (button->isVisible() && button->text() == "Mix a batch…")
            button->click();
    }
    EXPECT_EQ(mix.count(), 1);
    desk.clearWhenMixed = false;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    on.settle();
    EXPECT_EQ(on.shown(), QStringList{"Mixed, Dev 1"});
}

// One destroyed page is a row that says so; the list goes on below it and is never counted as
// whole.
TEST(DayBookDamaged, SaysWhereEntriesCannotBeReadAndGoesOn)
{
    constexpr qint64 kPage = 4096;
    constexpr int kNotes = 150;
    Desk desk;
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    for (int note = 0; note < kNotes; ++note) {
        desk.passMinutes(60);
        desk.record(dev, ledger::Noted{std::string(200, 'n')});
    }
    desk.session().close();
    {
        auto book = store::Connection::open(desk.bookPath(), store::FileMode::Write, 1000);
        ASSERT_TRUE(book);
        const auto page = (*book)->number(
            "SELECT pageno FROM dbstat WHERE name = 'entry' AND pagetype = 'leaf' ORDER BY path "
            "DESC LIMIT 1 OFFSET 3");
        ASSERT_TRUE(page);
        book->reset();
        QFile file(desk.bookPath());
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        ASSERT_TRUE(file.seek((*page - 1) * kPage));
        ASSERT_EQ(file.write(QByteArray(kPage, '\xAA')), kPage);
    }
    desk.reopen();
    ScriptedPrompts asked;
    const PromptsInForce force(asked);
    PageOn on(desk);
    const QStringList shown = on.shown();
    EXPECT_EQ(shown.count("Entries here cannot be read"), 1) << shown.size();
    EXPECT_EQ(shown.back(), "Mixed, Dev 1") << "the oldest of all";
    EXPECT_GT(shown.size(), kNotes / 2);
    on.choose("Entries here cannot be read");
    EXPECT_TRUE(asked.asked().isEmpty()) << asked.asked().join(u'\n').toStdString();
    const auto says = [&](const QString& text) {
        const auto labels = on.page.findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [&](const QLabel* label) {
            return label->isVisible() && label->text().contains(text);
        });
    };
    EXPECT_TRUE(QTest::qWaitFor([&] { return says("not all entries can be read"); }, 10'000));
}

TEST_F(DayBookPageTest, TheStatisticsStandBehindAButton)
{
    auto* statistics = new QWidget;
    DayBookPage page(desk.door(), statistics);
    page.show();
    waitFor([&] { return page.model()->entriesRead() > 0 && !page.model()->isWaiting(); });
    const auto press = [&](const char* text) {
        for (auto* button : page.findChildren<QPushButton*>()) {
            if (button->isVisible() && button->text() == text)
                return button->click();
        }
        ADD_FAILURE() << "no button " << text;
    };
    EXPECT_FALSE(statistics->isVisible());
    press("&Statistics");
    EXPECT_TRUE(statistics->isVisible());
    EXPECT_FALSE(page.list()->isVisible());
    press("En&tries");
    EXPECT_FALSE(statistics->isVisible());
    EXPECT_TRUE(page.list()->isVisible());
}

TEST_F(DayBookPageTest, LetsGoOfTheFileWhenTheBookIsClosed)
{
    PageOn on(desk);
    desk.session().close();
    EXPECT_TRUE(QFile::rename(desk.bookPath(), desk.bookPath() + ".away"));
    EXPECT_FALSE(QFile::exists(desk.bookPath() + "-wal")) << "no connection is left";
}

} // namespace ullage::app
