// Every state of the bench in every light, as a person would see it: bench_pictures FOLDER.
#include "bench_kit.h"

#include "app/paper/paper_paint.h"
#include "app/widgets/rail.h"

#include <QHBoxLayout>
#include <QStandardPaths>
#include <QTranslator>

#include <functional>

using namespace ullage;
using namespace ullage::app;

namespace
{

struct Shot {
    const char* name;
    std::function<void(Bench&)> before; ///< the shelf and the files, before the page is made
    std::function<void(Bench&)> after;  ///< what is done on it
};

void develop(Bench& bench)
{
    bench.click("start");
    bench.key(Qt::Key_Space);
    bench.pass(182);
    bench.key(Qt::Key_Return);
    bench.pass(435);
}

void films(Bench& bench)
{
    bench.tabTo("filmName");
    bench.type("Harbour, dawn");
    bench.click("addFilm");
    bench.type("Ferry");
}

std::vector<Shot> shots()
{
    const auto used = [](Bench& bench) {
        bench.shelf.work(bench.dev, 3);
        bench.shelf.work(bench.fix, 3);
        EXPECT_TRUE(bench.shelf.book->record(
            bench.fix, ledger::ClearingTested{chemistry::Seconds(195), chemistry::Celsius(20)},
            {bench.shelf.now, {}}));
        bench.shelf.days(3);
        bench.shelf.mix("mq", "b3", "Dev 15");
        bench.shelf.mix("fix", "b4", "Fix 10");
    };
    return {
        {"plan", used, films},
        {"plan-test", [](Bench& b) { b.shelf.days(45); }, films},
        {"plan-split",
         [](Bench& b) {
             b.shelf.work(b.dev, 9);
             b.memory.remember(ledger::Tank{"Two-reel tank",
                                            chemistry::Millilitres(600),
                                            {{"135-36", 2, chemistry::Millilitres(300)}}});
         },
         [](Bench& b) { films(b); }},
        {"ready", used,
         [](Bench& b) {
             films(b);
             b.click("start");
         }},
        {"develop", used,
         [](Bench& b) {
             films(b);
             develop(b);
         }},
        {"agitate", used,
         [](Bench& b) {
             films(b);
             develop(b);
             b.pass(47);
         }},
        {"over", used,
         [](Bench& b) {
             films(b);
             develop(b);
             b.pass(b.page->run()->left().value() + 12);
         }},
        {"held", used,
         [](Bench& b) {
             develop(b);
             b.key(Qt::Key_Space);
         }},
        {"reading", used,
         [](Bench& b) {
             develop(b);
             b.key(Qt::Key_T);
             b.type("19.2");
         }},
        {"full", used,
         [](Bench& b) {
             develop(b);
             b.key(Qt::Key_F);
         }},
        {"finish", used,
         [](Bench& b) {
             films(b);
             b.click("start");
             b.key(Qt::Key_Space);
             while (b.page->stage() == BenchPage::Stage::Run) {
                 b.pass(b.page->run()->target().value() + 3);
                 b.key(Qt::Key_Return);
             }
         }},
        {"abandon", used,
         [](Bench& b) {
             develop(b);
             b.click("abandon");
         }},
        {"resume", used,
         [](Bench& b) {
             develop(b);
             b.kill();
             b.shelf.now += std::chrono::seconds(63);
             b.open();
         }},
        {"unreadable", [](Bench& b) { b.putRunFile("{"); }, [](Bench&) {}},
    };
}

void paint(const Shot& shot, QSize size, const QString& file, bool darkRoom)
{
    Bench bench;
    shot.before(bench);
    bench.open({size.width() - Space::kRail, size.height()});
    shot.after(bench);
    if (darkRoom)
        bench.page->setDarkRoom(true);
    const bool full = bench.page->isFullView();
    QWidget window;
    window.setAutoFillBackground(true);
    auto* row = new QHBoxLayout(&window);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    auto* rail = new Rail;
    rail->setPage(Page::Bench);
    rail->setVisible(!full);
    row->addWidget(rail);
    row->addWidget(bench.page.get(), 1);
    window.resize(size);
    window.show();
    bench.page->setFocus();
    QApplication::processEvents();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QApplication::processEvents();
    window.grab().save(file);
    bench.page->setParent(nullptr);
}

// The sheet of the plan with two films, as it is printed.
void printSheet(const QDir& folder)
{
    Bench bench;
    shots().front().before(bench);
    bench.open();
    films(bench);
    const PaperDocument document =
        runSheetPaper(bench.page->sheet().value(),
                      {QStringLiteral("home"), bench.shelf.now, bench.host.wording()});
    QFile file(folder.filePath(QStringLiteral("run-sheet.pdf")));
    if (file.open(QIODevice::WriteOnly))
        file.write(documentPdf(document, PaperSize::A4));
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QStandardPaths::setTestModeEnabled(true);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    QApplication application(argc, argv);
    QApplication::setCursorFlashTime(0);
    QTranslator english;
    if (english.load(QStringLiteral(ULLAGE_ENGLISH)))
        QApplication::installTranslator(&english);
    Theme& theme = Theme::instance();
    theme.setMode(ThemeMode::Light);
    theme.install(application);
    const QDir folder(argc > 1 ? QString::fromLocal8Bit(argv[1]) : QStringLiteral("."));
    const QString only = argc > 2 ? QString::fromLocal8Bit(argv[2]) : QString();
    folder.mkpath(QStringLiteral("."));
    if (only.isEmpty() || only == u"run-sheet")
        printSheet(folder);
    for (const Shot& shot : shots()) {
        const QString name = QString::fromLatin1(shot.name);
        if (!only.isEmpty() && name != only)
            continue;
        for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
            for (const char* light : {"light", "dark", "darkroom"}) {
                const QString look = QString::fromLatin1(light);
                theme.setMode(look == u"light" ? ThemeMode::Light : ThemeMode::Dark);
                paint(shot, size,
                      folder.filePath(
                          QStringLiteral("%1-%2-%3.png").arg(name, look).arg(size.width())),
                      look == u"darkroom");
            }
        }
    }
}
