// A change of language while the window is open leaves no word behind: what it shows afterwards is
// what a window shows that was opened in that language.
#include "app/charts/chart.h"
#include "app/charts/chart_view.h"
#include "app/daybook/day_book_page.h"
#include "app/formulary/formulary_page.h"
#include "app/mixing/mixing_page.h"
#include "app/shelf/shelf_page.h"
#include "app/statistics/statistics_page.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"
#include "app/window/run_window.h"
#include "tests/app/dialogs/dialog_driver.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <QTextEdit>
#include <QTimer>
#include <QTranslator>

#include <algorithm>

namespace ullage::app
{

namespace
{

// A language in which every word of the program is the English one in brackets.
class Brackets : public QTranslator
{
public:
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* /*context*/, const char* source,
                                    const char* /*disambiguation*/, int n) const override
    {
        QString text = QString::fromUtf8(source);
        if (n >= 0)
            text.replace(QLatin1String("(s)"), n == 1 ? QString() : QStringLiteral("s"));
        return u'[' + text + u']';
    }
};

void addModel(QStringList& words, const QAbstractItemModel* model)
{
    constexpr int kEnough = 60;
    for (int column = 0; model && column < model->columnCount(); ++column) {
        words << model->headerData(column, Qt::Horizontal).toString();
        for (int row = 0; row < std::min(kEnough, model->rowCount()); ++row) {
            for (const int role : {int(Qt::DisplayRole), int(Qt::ToolTipRole),
                                   int(Qt::AccessibleTextRole), int(Qt::AccessibleDescriptionRole)})
                words << model->index(row, column).data(role).toString();
        }
    }
}

void addChart(QStringList& words, const ChartSpec& spec)
{
    words << spec.title << spec.xName << spec.xTitle << spec.yUnit << spec.summary
          << spec.markerText << spec.categories;
    for (const ChartSeries& series : spec.series)
        words << series.name;
}

// The pages of the window, of which one is seen; those not seen do no work until they are.
const QStackedWidget* pagesOf(const QWidget& window)
{
    const QWidget* within = window.findChild<ShelfPage*>();
    while (within && !qobject_cast<const QStackedWidget*>(within))
        within = within->parentWidget();
    return qobject_cast<const QStackedWidget*>(within);
}

// Lists that open from a page are windows of their own, but its children.
bool isOfPageNotSeen(const QWidget& widget, const QStackedWidget& pages)
{
    for (const QWidget* one = &widget; one; one = one->parentWidget()) {
        if (one->parentWidget() == &pages)
            return one != pages.currentWidget();
    }
    return false;
}

// Every word that the widgets of the window show, say to a screen reader or give as a hint.
QStringList wordsOf(const QWidget& window)
{
    const QStackedWidget* pages = pagesOf(window);
    QStringList words{window.windowTitle()};
    for (const QAction* action : window.findChildren<QAction*>())
        words << action->text();
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        if (pages && isOfPageNotSeen(*widget, *pages))
            continue;
        QStringList own{widget->accessibleName(), widget->accessibleDescription(),
                        widget->toolTip()};
        if (const auto* label = qobject_cast<QLabel*>(widget))
            own << label->text();
        if (const auto* button = qobject_cast<QAbstractButton*>(widget))
            own << button->text();
        // The arrows of a tab bar are Qt's, and worded when they are made.
        if (qobject_cast<QTabBar*>(widget->parentWidget()))
            own.clear();
        if (const auto* edit = qobject_cast<QLineEdit*>(widget))
            own << edit->placeholderText();
        if (const auto* text = qobject_cast<QTextEdit*>(widget))
            own << text->toPlainText();
        if (const auto* box = qobject_cast<QComboBox*>(widget)) {
            for (int i = 0; i < box->count(); ++i)
                own << box->itemText(i);
        }
        if (const auto* tabs = qobject_cast<QTabBar*>(widget)) {
            for (int i = 0; i < tabs->count(); ++i)
                own << tabs->tabText(i);
        }
        if (const auto* view = qobject_cast<QAbstractItemView*>(widget))
            addModel(own, view->model());
        if (const auto* chart = qobject_cast<ChartView*>(widget))
            addChart(own, chart->chart());
        own.removeAll(QString());
        for (const QString& word : own)
            words << QStringLiteral("%1: %2").arg(widget->metaObject()->className(), word);
    }
    words.sort();
    return words;
}

void settle()
{
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    // Pages that read the book on a thread of their own are done when nothing changes any more.
    QTest::qWait(80);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

QStringList settledWords(const QWidget& window)
{
    QStringList words;
    for (int i = 0; i < 40; ++i) {
        settle();
        const QStringList now = wordsOf(window);
        if (now == words)
            return now;
        words = now;
    }
    return words;
}

class Languages
{
public:
    Languages() : m_before(QLocale()) {}
    ~Languages() { use({}); }
    // "de" stands for the brackets, with the German way of writing numbers.
    void use(const QString& code)
    {
        const bool on = code == QLatin1String("de");
        QLocale::setDefault(on ? QLocale(QLocale::German, QLocale::Germany) : m_before);
        if (on)
            QCoreApplication::installTranslator(&m_brackets);
        else
            QCoreApplication::removeTranslator(&m_brackets);
    }

private:
    QLocale m_before;
    Brackets m_brackets;
};

struct Shown {
    explicit Shown(Desk& desk, Languages& languages)
        : controller(window, desk.session(), desk.preferences())
    {
        QObject::connect(&controller, &Controller::languageChosen, &window,
                         [&languages](const QString& code) { languages.use(code); });
        window.setLanguages({{{}, {}}, {"de", "Deutsch"}}, desk.preferences().language());
        window.show();
        emit window.mixRequested();
    }

    // Each page in turn, and the guide; by name.
    std::vector<std::pair<std::string, QStringList>> pages()
    {
        std::vector<std::pair<std::string, QStringList>> all;
        const auto add = [&](const char* name) { all.emplace_back(name, settledWords(window)); };
        auto* dayBook = window.findChild<DayBookPage*>();
        dayBook->showStatistics(false);
        for (const auto& [page, name] :
             {std::pair(Page::Shelf, "shelf"), std::pair(Page::Bench, "bench"),
              std::pair(Page::DayBook, "day book"), std::pair(Page::Cupboard, "cupboard"),
              std::pair(Page::Formulary, "formulary")}) {
            window.showPage(page);
            add(name);
        }
        auto* formulary = window.findChild<FormularyPage*>();
        for (const auto tab : {FormularyPage::Tab::Bottles, FormularyPage::Tab::Times,
                               FormularyPage::Tab::Solutions}) {
            formulary->setTab(tab);
            add("tab of the formulary");
        }
        window.showPage(Page::DayBook);
        dayBook->showStatistics(true);
        // Counted on a thread, with words of its own for as long as that takes.
        const auto* statistics = window.findChild<StatisticsPage*>();
        EXPECT_TRUE(QTest::qWaitFor([&] { return statistics->isCounted(); }, 20'000));
        add("statistics");
        dayBook->showStatistics(false);
        return all;
    }

    // No dialog comes up in these tests.
    MainWindow window;
    Controller controller;
};

void expectSame(const std::vector<std::pair<std::string, QStringList>>& one,
                const std::vector<std::pair<std::string, QStringList>>& other, const char* what)
{
    ASSERT_EQ(one.size(), other.size());
    for (std::size_t i = 0; i < one.size(); ++i) {
        for (const QString& word : one[i].second) {
            EXPECT_TRUE(other[i].second.contains(word))
                << what << ", " << one[i].first << ", left over: " << word.toStdString();
        }
        for (const QString& word : other[i].second) {
            EXPECT_TRUE(one[i].second.contains(word))
                << what << ", " << one[i].first << ", missing: " << word.toStdString();
        }
    }
}

void fill(Desk& desk)
{
    const auto developer = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.passMinutes(30);
    desk.run(developer, 2);
    const auto fixer = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
    desk.passMinutes(30);
    desk.record(fixer, ledger::ClearingTested{chemistry::Seconds(60), chemistry::Celsius(20)});
}

} // namespace

TEST(Language, aSwitchAndBackLeaveNoWordBehind)
{
    Desk desk;
    fill(desk);
    Languages languages;
    std::vector<std::pair<std::string, QStringList>> english;
    std::vector<std::pair<std::string, QStringList>> switched;
    {
        Shown shown(desk, languages);
        shown.pages(); // what is read when a page is first seen is there from then on
        english = shown.pages();
        emit shown.window.languageChosen(QStringLiteral("de"));
        switched = shown.pages();
        emit shown.window.languageChosen({});
        expectSame(shown.pages(), english, "back in English");
    }
    languages.use(QStringLiteral("de"));
    desk.preferences().setLanguage(QStringLiteral("de"));
    Shown fresh(desk, languages);
    fresh.pages();
    expectSame(switched, fresh.pages(), "switched");
}

TEST(Language, otherUnitsAndTheFirstAgainLeaveNoFigureBehind)
{
    const Units american{VolumeUnit::FluidOunce, TemperatureUnit::Fahrenheit};
    Desk desk;
    fill(desk);
    Languages languages;
    std::vector<std::pair<std::string, QStringList>> switched;
    {
        Shown shown(desk, languages);
        shown.pages(); // what is read when a page is first seen is there from then on
        const auto metric = shown.pages();
        emit shown.window.unitsChosen(american);
        switched = shown.pages();
        emit shown.window.unitsChosen({});
        expectSame(shown.pages(), metric, "metric again");
    }
    desk.preferences().setUnits(american);
    Shown fresh(desk, languages);
    fresh.pages();
    expectSame(switched, fresh.pages(), "in ounces");
}

TEST(Language, aMixingUnderWayGoesOnInTheOtherLanguage)
{
    Desk desk;
    Languages languages;
    Shown shown(desk, languages);
    auto* guide = shown.window.findChild<MixingPage*>();
    ASSERT_NE(guide, nullptr);
    guide->next();
    guide->next();
    ASSERT_EQ(guide->step(), MixingPage::Step::Water);
    const QStringList before = settledWords(*guide);
    emit shown.window.languageChosen(QStringLiteral("de"));
    EXPECT_EQ(guide->step(), MixingPage::Step::Water);
    EXPECT_NE(settledWords(*guide), before);
    emit shown.window.languageChosen({});
    EXPECT_EQ(settledWords(*guide), before);
}

TEST(Language, areNamedInThemselvesAndEnglishIsNoCountrys)
{
    EXPECT_EQ(languageName(QStringLiteral("en")), QStringLiteral("English"));
    EXPECT_EQ(languageName(QStringLiteral("de")), QStringLiteral("Deutsch"));
}

TEST(Language, theProgramsOwnWindowChangesToGermanAndBack)
{
    Desk desk;
    fill(desk);
    desk.session().close();
    WindowOptions options;
    options.book = desk.bookPath();
    options.settingsFile = desk.file("window.ini");
    options.clock = [&] { return desk.now(); };
    options.remember = false;
    options.backUp = false;
    Preferences(options.settingsFile).setLanguage(QStringLiteral("en"));
    QStringList titles;
    int languagesOffered = 0;
    QTimer::singleShot(0, qApp, [&] {
        MainWindow* window = nullptr;
        for (QWidget* widget : QApplication::topLevelWidgets()) {
            if (auto* found = qobject_cast<MainWindow*>(widget))
                window = found;
        }
        if (window) {
            const auto choose = [&](const QString& code) {
                for (QAction* action : window->findChildren<QAction*>()) {
                    if (action->isCheckable() && action->data().toString() == code &&
                        !action->data().isNull()) {
                        ++languagesOffered;
                        action->trigger();
                    }
                }
                QCoreApplication::processEvents();
                titles << window->shelf()->accessibleName();
                for (const auto* label : window->findChildren<QLabel*>())
                    titles << label->text();
            };
            choose(QStringLiteral("de"));
            EXPECT_TRUE(titles.contains(QStringLiteral("Regal")));
            EXPECT_FALSE(titles.contains(QStringLiteral("Shelf")));
            titles.clear();
            choose(QStringLiteral("en"));
            EXPECT_TRUE(titles.contains(QStringLiteral("Shelf")));
            EXPECT_FALSE(titles.contains(QStringLiteral("Regal")));
            window->close();
        }
        QApplication::quit(); // also where no window came up
    });
    const QLocale before;
    EXPECT_EQ(runWindow(options), 0);
    EXPECT_EQ(languagesOffered, 2);
    EXPECT_EQ(Preferences(options.settingsFile).language(), QStringLiteral("en"));
    EXPECT_EQ(Preferences(options.settingsFile).lastBook(), QString());
    QLocale::setDefault(before);
}

} // namespace ullage::app
