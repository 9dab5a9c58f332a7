// The whole window, every page and dialog of it, on a book whose names and notes hold markup, keys,
// placeholders and worse: all of it is shown as it was typed, and no file is read for it.
#include "app/bench/bench_page.h"
#include "app/daybook/day_book_page.h"
#include "app/daybook/day_print.h"
#include "app/films/compare_dialog.h"
#include "app/films/film_card.h"
#include "app/films/films_dialog.h"
#include "app/mixing/mixing_page.h"
#include "app/shelf/shelf_page.h"
#include "app/widgets/plain_text.h"
#include "app/window/controller.h"
#include "tests/app/window/hostile_desk.h"

#include <QLineEdit>
#include <QMenuBar>
#include <QPdfWriter>
#include <QStackedWidget>
#include <QThread>
#include <QToolTip>

namespace ullage::app
{

namespace
{

// The bench's clocks stand still; a run begun stays where it is.
struct Walked {
    explicit Walked(Desk& desk)
        : controller(window, desk.session(), desk.preferences(), nullptr,
                     [] { return std::chrono::milliseconds(1000); })
    {
        window.resize(1280, 800);
        window.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    }

    MainWindow window;
    Controller controller;
};

} // namespace

// The inspection itself must be able to fail.
TEST_F(HostileNames, TheInspectionNoticesWhatQtGuesses)
{
    QWidget window;
    auto* label = new QLabel(first, &window);
    label->setGeometry(0, 0, 300, 40);
    window.resize(300, 60);
    EXPECT_EQ(PlainInspector::faultsOf(window).size(), 1);
    (void)window.grab();
    EXPECT_TRUE(bait.taken()) << "the picture is fetched by a label that guesses";
    label->setTextFormat(Qt::PlainText);
    EXPECT_TRUE(PlainInspector::faultsOf(window).isEmpty());
    (void)window.grab();
    EXPECT_FALSE(bait.taken());
    window.setToolTip(first);
    EXPECT_EQ(PlainInspector::faultsOf(window).size(), 1);
    window.setToolTip(plainToolTip(first));
    EXPECT_TRUE(PlainInspector::faultsOf(window).isEmpty());
    QMenu menu(&window);
    menu.addAction(name);
    EXPECT_GE(PlainInspector::faultsOf(window).size(), 1);
    menu.clear();
    menu.addAction(plainCaption(kTyped));
    EXPECT_TRUE(PlainInspector::faultsOf(window).isEmpty());
    window.setWindowTitle(name);
    EXPECT_EQ(PlainInspector::faultsOf(window).size(), 1);
    window.setWindowTitle(plainTitle(name));
    EXPECT_TRUE(PlainInspector::faultsOf(window).isEmpty());
}

TEST_F(HostileNames, EveryPageShowsThemAsTyped)
{
    Walked at(desk);
    for (const Page page :
         {Page::Shelf, Page::Bench, Page::DayBook, Page::Cupboard, Page::Formulary}) {
        at.window.showPage(page);
        m_page = page;
        settle();
        const QByteArray where = "page " + QByteArray::number(static_cast<int>(page));
        auto* whole = at.window.findChild<QStackedWidget*>(); // the pages, or that there is no book
        ASSERT_NE(whole, nullptr);
        auto* stack = qobject_cast<QStackedWidget*>(whole->currentWidget());
        ASSERT_NE(stack, nullptr);
        walk(at.window, *stack->currentWidget(), where.constData());
    }
    at.window.showPage(Page::DayBook);
    m_page = Page::DayBook;
    at.window.findChild<DayBookPage*>()->showStatistics(true);
    settle();
    walk(at.window, *at.window.findChild<DayBookPage*>(), "statistics");
    EXPECT_GT(m_inspected, 60);
    EXPECT_GT(m_dialogs, 10);
}

TEST_F(HostileNames, EveryDeedOfABottleShowsThemAsTyped)
{
    Walked at(desk);
    for (const std::string& batch : {dev, fix}) {
        for (int i = 0; i < kBottleActions; ++i) {
            at.window.showPage(Page::Shelf);
            at.window.shelf()->selectBottle(QString::fromStdString(batch));
            at.controller.doWith(static_cast<BottleAction>(i), QString::fromStdString(batch));
            settle();
            inspect(at.window, "window");
            inspectDialogs(at.window, ("deed " + std::to_string(i)).c_str());
        }
    }
    EXPECT_GE(m_dialogs, 2 * (kBottleActions - 1));
    emit at.window.enterRequested();
    settle();
    inspectDialogs(at.window, "mix");
}

TEST_F(HostileNames, EveryMenuEntryShowsThemAsTyped)
{
    Walked at(desk);
    for (QAction* action : at.window.menuBar()->findChildren<QAction*>()) {
        if (action->menu() || action->isCheckable() || action->menuRole() == QAction::QuitRole ||
            !action->isEnabled())
            continue;
        action->trigger();
        settle();
        inspect(at.window, action->text().toUtf8().constData());
        inspectDialogs(at.window, action->text().toUtf8().constData());
        EXPECT_TRUE(QTest::qWaitFor(
            [&] { return at.controller.findChildren<QThread*>().isEmpty(); }, 10'000));
    }
}

TEST_F(HostileNames, TheMixingGuideShowsThemAsTyped)
{
    Walked at(desk);
    emit at.window.mixRequested();
    auto* guide = at.window.findChild<MixingPage*>();
    ASSERT_NE(guide, nullptr);
    for (int i = 0; i < MixingPage::kSteps; ++i) {
        settle();
        inspect(at.window, "guide");
        for (auto* ask : guide->findChildren<WhereFromButton*>())
            openMenu(*ask, "guide");
        guide->next();
    }
}

TEST_F(HostileNames, ARunShowsThemAsTyped)
{
    Walked at(desk);
    at.controller.doWith(BottleAction::Bench, QString::fromStdString(dev));
    auto* bench = at.window.findChild<BenchPage*>();
    ASSERT_NE(bench, nullptr);
    settle();
    bench->findChild<QLineEdit*>("filmName")->setText(name);
    settle();
    inspect(at.window, "plan");
    auto* start = bench->findChild<QPushButton*>("start");
    ASSERT_TRUE(start->isEnabled());
    start->click();
    settle();
    ASSERT_EQ(bench->stage(), BenchPage::Stage::Run);
    for (int i = 0; i < 30 && bench->stage() == BenchPage::Stage::Run; ++i) {
        inspect(at.window, "run");
        QTest::keyClick(bench->findChild<QPushButton*>("next"), Qt::Key_Return);
        settle();
    }
    ASSERT_EQ(bench->stage(), BenchPage::Stage::Finish);
    inspect(at.window, "finish");
    bench->findChild<QPushButton*>("log")->click();
    settle();
    EXPECT_EQ(bench->stage(), BenchPage::Stage::Plan);
    inspect(at.window, "logged");
}

TEST_F(HostileNames, FilmsAndWhatTheyHaveInCommonShowThemAsTyped)
{
    Walked at(desk);
    at.controller.doWith(BottleAction::Films, QString::fromStdString(dev));
    settle();
    auto* list = at.window.findChild<FilmsDialog*>();
    ASSERT_NE(list, nullptr);
    const auto films = desk.session().films().ofBatch(dev);
    ASSERT_TRUE(films);
    ASSERT_FALSE(films->empty());
    const QString film = QString::fromStdString(films->front().film.id);
    markFilm(film);
    emit list->filmRequested(film);
    settle();
    auto* card = at.window.findChild<FilmCard*>();
    ASSERT_NE(card, nullptr);
    inspect(*card, "card");
    emit list->compareRequested(film);
    settle();
    auto* compare = at.window.findChild<CompareDialog*>();
    ASSERT_NE(compare, nullptr);
    inspect(*compare, "compare");
    inspectDialogs(at.window, "films");
}

// The boxes of the system, for which tests otherwise answer.
TEST_F(HostileNames, QuestionsShowThemAsTyped)
{
    force.reset();
    QWidget window;
    window.show();
    Prompts& real = prompts();
    int boxes = 0;
    QTimer look;
    QObject::connect(&look, &QTimer::timeout, &window, [&] {
        if (QWidget* box = QApplication::activeModalWidget()) {
            ++boxes;
            inspect(*box, "box");
            box->close();
        }
    });
    look.start(20);
    for (const QString& text : {name, first, lines}) {
        real.tell(&window, text, text);
        real.fail(&window, text, text, text);
        (void)real.confirm(&window, {text, text, text, plainCaption(text), true});
        (void)real.askText(&window, text, plainCaption(text), text);
        (void)real.choose(&window, text, plainCaption(text), {text, text});
    }
    EXPECT_EQ(boxes, 15);
}

TEST_F(HostileNames, TooltipsAndPaperShowThemAsTyped)
{
    QWidget window;
    window.show();
    for (const QString& text : {name, first, lines}) {
        showPlainToolTip(QPoint(10, 10), text, &window);
        QCoreApplication::processEvents();
        for (QWidget* top : QApplication::topLevelWidgets()) {
            if (top->inherits("QTipLabel"))
                inspect(*top, "tooltip");
        }
    }
    QToolTip::hideText();
    DayPrint print{name, first, {}};
    for (const std::string& text : ullage::tests::hostileTexts(300, 5)) {
        const QString typed = QString::fromStdString(text);
        print.lines.push_back({false, typed, typed, typed, false});
    }
    QPdfWriter paper(desk.file("days.pdf"));
    paintDays(print, paper);
    EXPECT_FALSE(bait.taken());
}

} // namespace ullage::app
