// Paints the day book and the statistics of the demo's book to PNG files for a person to look at.
#include "app/cli/demo_book.h"
#include "app/daybook/day_book_page.h"
#include "app/daybook/day_filter_bar.h"
#include "app/daybook/day_model.h"
#include "app/daybook/day_print.h"
#include "app/daybook/forgotten_dialog.h"
#include "app/daybook/take_back_dialog.h"
#include "app/session/session_door.h"
#include "app/statistics/statistics_page.h"
#include "app/widgets/theme.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"
#include "tests/app/english_plurals.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QListView>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QStandardPaths>
#include <QTemporaryDir>

using namespace ullage::app;

namespace
{

QString folder;

void settle(const std::function<bool()>& there)
{
    QElapsedTimer timer;
    timer.start();
    while (!there() && timer.elapsed() < 5000)
        QApplication::processEvents(QEventLoop::AllEvents, 20);
    for (int i = 0; i < 5; ++i)
        QApplication::processEvents();
}

void picture(QWidget& widget, const QString& name)
{
    widget.show();
    settle([] { return false; });
    const QString theme = Theme::instance().isDark() ? "-dark" : "-light";
    widget.grab().save(folder + "/" + name + theme + ".png");
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QStandardPaths::setTestModeEnabled(true);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    QApplication application(argc, argv);
    QApplication::setCursorFlashTime(0);
    EnglishPlurals plurals;
    QApplication::installTranslator(&plurals);
    folder = argc > 1 ? argv[1] : "gallery";
    QDir().mkpath(folder);
    auto& theme = Theme::instance();
    theme.install(application);
    QTemporaryDir books;
    const auto clock = [] {
        return std::chrono::time_point_cast<std::chrono::milliseconds>(
            std::chrono::system_clock::now());
    };
    const auto demo = createDemoBook(books.path(), clock);
    if (!demo)
        return 1;
    for (const ThemeMode mode : {ThemeMode::Light, ThemeMode::Dark}) {
        theme.setMode(mode);
        Preferences preferences(books.filePath("settings.ini"));
        preferences.setUnits({});
        Session session({.clock = clock});
        MainWindow window;
        Controller controller(window, session, preferences);
        controller.openBook(*demo);
        auto* page = window.findChild<DayBookPage*>();
        window.showPage(Page::DayBook);
        for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
            const QString suffix = QStringLiteral("-%1").arg(size.width());
            window.resize(size);
            page->showStatistics(false);
            picture(window, "daybook" + suffix);
            page->showStatistics(true);
            picture(window, "statistics" + suffix);
            auto* figures = window.findChild<StatisticsPage*>();
            using Face = StatisticsPage::Face;
            for (const Face face : {Face::Months, Face::Solutions, Face::People, Face::Ends}) {
                figures->setFace(face);
                picture(window, QStringLiteral("statistics-table-%1").arg(int(face)) + suffix);
            }
            figures->setFace(Face::Charts);
        }
        auto* figures = window.findChild<StatisticsPage*>();
        for (const auto span : {StatisticsPage::Span::Quarter, StatisticsPage::Span::Between}) {
            figures->setSpan(span);
            window.resize(1024, 700);
            picture(window, QStringLiteral("statistics-span-%1").arg(int(span)));
        }
        figures->setSpan(StatisticsPage::Span::TwelveMonths);
        window.resize(1280, 800);
        page->showStatistics(false);
        page->filterBar()->periodBar()->setSpan(PeriodBar::Span::Between);
        page->filterBar()->setGroup(DayGroup::Tests);
        picture(window, "daybook-between");
        page->filterBar()->setBottle("nothing", "Nothing");
        picture(window, "daybook-none");
        page->filterBar()->reset();
        picture(window, "daybook-again");
        SessionDoor door(session, preferences);
        {
            ForgottenDialog dialog(door, page->chosen()->event.batch);
            picture(dialog, "forgotten-film");
            dialog.setKind(ForgottenDialog::Kind::Contaminated);
            picture(dialog, "forgotten-contaminated");
            dialog.accept();
        }
        {
            TakeBackDialog dialog(door, "Run", {},
                                  {{page->chosen()->event.id, page->chosen()->event.batch}}, false);
            picture(dialog, "take-back");
        }
        Session none({.clock = clock});
        MainWindow bare;
        Preferences other(books.filePath("other.ini"));
        Controller first(bare, none, other);
        first.openBook(books.filePath(theme.isDark() ? "a.ullage" : "b.ullage"));
        bare.showPage(Page::DayBook);
        picture(bare, "daybook-empty");
        bare.findChild<DayBookPage*>()->showStatistics(true);
        picture(bare, "statistics-empty");
        if (theme.isDark())
            continue;
        auto store = ullage::store::SqlStore::open(*demo);
        const auto lines = dayPrintLines(**store, {.kinds = {"processed"}},
                                         dayWording(session.formulary(), door.wording()), {});
        QPrinter printer(QPrinter::HighResolution);
        printer.setPageSize(QPageSize(QPageSize::A4));
        QPrintPreviewWidget paper(&printer);
        QObject::connect(&paper, &QPrintPreviewWidget::paintRequested, [&](QPrinter* on) {
            paintDays({"Day book · demo", "Runs", *lines}, *on);
        });
        paper.resize(1000, 1300);
        paper.setZoomMode(QPrintPreviewWidget::FitInView);
        picture(paper, "print");
    }
    return 0;
}
