// Paints every dialog, and the window on a real book, to PNG files for a person to look at:
// ullage_deeds_gallery FOLDER [WIDTHxHEIGHT [light|dark|red [LANGUAGE]]]
// Without a look or a language: light and dark, and both languages.
#include "app/dialogs/decant_dialog.h"
#include "app/dialogs/exchange_dialog.h"
#include "app/dialogs/happening_dialog.h"
#include "app/dialogs/history_dialog.h"
#include "app/dialogs/import_dialog.h"
#include "app/dialogs/mix_dialog.h"
#include "app/dialogs/run_dialog.h"
#include "app/shelf/shelf_page.h"
#include "app/shelf/shelf_snapshot.h"
#include "app/widgets/choice_dialog.h"
#include "app/widgets/theme.h"
#include "app/window/about_dialog.h"
#include "app/window/cautions_dialog.h"
#include "app/window/controller.h"
#include "app/window/copies_dialog.h"
#include "app/window/copy_words.h"
#include "app/window/findings_dialog.h"
#include "app/window/main_window.h"
#include "app/window/run_window.h"
#include "app/window/salvage_dialog.h"
#include "app/words/fault_words.h"
#include "core/store/damage.h"
#include "core/store/journal_reader.h"
#include "tests/app/desk.h"
#include "tests/app/screens/offscreen_screen.h"

#include <QApplication>
#include <QBuffer>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QEventLoop>
#include <QPushButton>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTimer>

using namespace ullage::app;

namespace
{

QString folder;
QString language;
QString look;

QString said(const char* context, const char* words)
{
    return QCoreApplication::translate(context, words);
}

void wear(const QString& name)
{
    look = name;
    Theme::instance().setMode(name == u"light" ? ThemeMode::Light : ThemeMode::Dark);
    Theme::instance().setDarkRoom(name == u"red");
}

void picture(QWidget& widget, const QString& name)
{
    widget.show();
    QApplication::processEvents();
    QApplication::processEvents();
    widget.grab().save(folder + "/" + name + "-" + language + "-" + look + ".png");
}

void dialogs(Desk& desk, const std::string& dev, const std::string& fix)
{
    Door& door = desk.door();
    const Bottle developer = *desk.session().bottle(QString::fromStdString(dev));
    const Bottle fixer = *desk.session().bottle(QString::fromStdString(fix));
    {
        MixDialog dialog(door);
        picture(dialog, "mix");
        dialog.findChild<QCheckBox*>(QStringLiteral("found"))->click();
        picture(dialog, "mix-found");
        dialog.findChild<QCheckBox*>(QStringLiteral("found"))->click();
        auto combos = dialog.findChildren<QComboBox*>();
        combos[1]->setCurrentIndex(combos[1]->count() - 1);
        picture(dialog, "mix-new-bottle");
        dialog.accept();
        picture(dialog, "mix-refused");
    }
    {
        RunDialog dialog(door, &developer);
        picture(dialog, "run");
    }
    const auto show = [&](DeedDialog&& dialog, const QString& name) {
        picture(dialog, name);
        dialog.accept();
        if (dialog.isVisible())
            picture(dialog, name + "-refused");
    };
    show(BottleDialog(HappeningKind::TopUp, door, developer), "top-up");
    show(BottleDialog(HappeningKind::DrawOff, door, developer), "draw-off");
    {
        DecantDialog dialog(door, developer);
        picture(dialog, "decant");
        for (auto* button : dialog.findChildren<QPushButton*>()) {
            if (button->text() == DecantDialog::tr("&Another bottle"))
                button->click();
        }
        picture(dialog, "decant-two");
    }
    show(ExchangeDialog(door, fixer), "exchange");
    show(BottleDialog(HappeningKind::Measured, door, fixer), "measured");
    {
        BottleDialog dialog(HappeningKind::Filtered, door, developer);
        picture(dialog, "filtered");
    }
    {
        BottleDialog dialog(HappeningKind::Move, door, developer);
        picture(dialog, "move");
    }
    {
        BottleDialog dialog(testsOf(fixer.batch.solution->role), door, fixer);
        picture(dialog, "test");
        auto edits = dialog.findChildren<QuantityEdit*>();
        edits[0]->setValue(125);
        emit edits[0]->valueChanged();
        picture(dialog, "test-judged");
    }
    {
        BottleDialog dialog(testsOf(developer.batch.solution->role), door, developer);
        picture(dialog, "test-strip");
    }
    show(BottleDialog(HappeningKind::Note, door, developer), "note");
    {
        BottleDialog dialog(HappeningKind::Contaminated, door, developer);
        picture(dialog, "contaminated");
    }
    {
        BottleDialog dialog(HappeningKind::DrawOff, door, developer);
        dialog.findChild<WhenEdit*>()->setMoment(desk.now() - std::chrono::hours(48));
        auto edits = dialog.findChildren<QuantityEdit*>();
        edits[0]->setValue(100);
        emit edits[0]->valueChanged();
        QEventLoop pause; // after typing
        QTimer::singleShot(250, &pause, &QEventLoop::quit);
        pause.exec();
        picture(dialog, "draw-off-dated-back");
    }
    {
        BottleDialog dialog(HappeningKind::StoredAt, door, developer);
        picture(dialog, "stored-at");
        auto edits = dialog.findChildren<QuantityEdit*>();
        edits[0]->setValue(3);
        emit edits[0]->valueChanged();
        picture(dialog, "stored-at-cold");
    }
    {
        BottleDialog dialog(HappeningKind::StoodOpen, door, developer);
        picture(dialog, "stood-open");
    }
    {
        HistoryDialog dialog(door, developer);
        picture(dialog, "history");
    }
    {
        BottleDialog dialog(HappeningKind::Discard, door, fixer);
        picture(dialog, "discard");
    }
    AboutDialog about;
    picture(about, "about");
    CautionsDialog cautions;
    picture(cautions, "cautions");
}

// What a colleague's journal would do to this book, with lines that do not come in.
void importing(Desk& desk, const std::string& dev)
{
    const QByteArray batch = QByteArray::fromStdString(dev);
    const auto line = [](const QByteArray& id, const QByteArray& bottle, const QByteArray& rest) {
        return R"({"type":"event","id":")" + id + R"(","batch":")" + bottle + "\"," + rest + "}\n";
    };
    QByteArray text = "{\"type\":\"book\",\"format\":\"ullage-journal\",\"version\":1}\n" +
                      line("t1", batch, R"("kind":"opened","at":"2026-01-02T19:30:00Z")") +
                      line("t2", "their-dev", R"("kind":"opened","at":"2026-10-02T19:30:00Z")") +
                      line("t3", batch, R"("kind":"opened","at":"2026-11-02T19:30:00Z")") +
                      "{\"type\":\"event\",\"id\":\"t4\",\n" +
                      line("t5", "x-dev",
                           R"("kind":"mixed","at":"2026-09-26T17:00:00Z","name":"Dev A",)"
                           R"("solution":"starter-mq-borax","vessel":"starter-glass-1000",)"
                           R"("volume_ml":1000)");
    QBuffer journal(&text);
    journal.open(QIODevice::ReadOnly);
    auto store = ullage::store::SqlStore::open(desk.bookPath());
    auto book = ullage::ledger::Book::open(
        **store, [&] { return desk.now(); }, [] { return "not-entered"; });
    const auto outcome = ullage::store::readJournal(
        **book, **store, journal, {.name = "colleague.jsonl", .trial = true, .sameRefuse = true});
    ImportDialog dialog(
        "colleague.jsonl", desk.session().formulary(), [&] { return desk.now(); },
        desk.preferences().wording(), nullptr);
    dialog.setOutcome(*outcome);
    picture(dialog, "import");
    for (auto* way : dialog.findChildren<QComboBox*>())
        way->setCurrentIndex(way->count() > 2 ? 2 : 1);
    picture(dialog, "import-decided");
}

// Copies as they may stand after a season, one of them spoilt; and what came out of a damaged book.
void copies(Desk& desk)
{
    using namespace std::chrono_literals;
    using ullage::Error;
    using ullage::ErrorCode;
    using ullage::store::CopyState;
    const Wording wording = desk.preferences().wording();
    CopiesDialog dialog(wording);
    CopiesView view;
    view.book = "home.ullage";
    view.places.own = QDir::homePath() + "/.local/share/ullage/copies";
    view.open = true;
    view.now = desk.now();
    dialog.setView(view);
    picture(dialog, "copies-none");
    for (int day = 0; day < 24; ++day) {
        const QString place = day % 3 == 2 ? QString("/media/stick/darkroom") : view.places.own;
        view.copies.push_back({place + "/home.ullage", desk.now() - 24h * day * (1 + day / 7),
                               412 - 9 * day, "id",
                               day == 4   ? CopyState::Faulty
                               : day == 9 ? CopyState::Unreadable
                                          : CopyState::Sound});
    }
    view.standing.lastGood = desk.now();
    view.places.second = "/media/stick/darkroom";
    dialog.setView(view);
    picture(dialog, "copies");
    view.standing.failure =
        Error{.code = ErrorCode::StoreFailed, .text = "database or disk is full (13)"};
    view.standing.secondFailure =
        Error{.code = ErrorCode::StoreFailed, .text = "/media/stick/darkroom: no such folder"};
    dialog.setView(view);
    picture(dialog, "copies-failed");

    ullage::store::Salvaged done;
    done.entries = 398;
    done.fromCopy = 12;
    done.missing = {{44,
                     44,
                     "event",
                     "3c1b7c61-61a8-47ed-8d5c-5d5f0f5d8a4e",
                     {desk.now() - 24h * 90, desk.now() - 24h * 89}},
                    {120, 133, {}, {}, {desk.now() - 24h * 50, desk.now() - 24h * 43}}};
    done.faults = {{.code = ErrorCode::UnknownId,
                    .field = "solution",
                    .text = "starter-mq-borax",
                    .subject = "Dev 14"}};
    SalvageDialog salvaged(done, desk.file("home-salvaged.ullage"), desk.now(), wording);
    picture(salvaged, "salvaged");
    for (auto* button : salvaged.findChildren<QPushButton*>()) {
        if (button->isCheckable())
            button->click();
    }
    picture(salvaged, "salvaged-details");

    ullage::store::BookCheck check;
    check.findings = {{.code = ErrorCode::NotAsEntered,
                       .text = "changed",
                       .subject = "3c1b7c61-61a8-47ed-8d5c-5d5f0f5d8a4e",
                       .entry = 251,
                       .entryType = "event"},
                      {.code = ErrorCode::NotAsEntered, .text = "missing", .low = 30, .high = 46},
                      {.code = ErrorCode::NotAsEntered, .text = "batch", .subject = "b"}};
    check.names.entries[251] = {"event", "processed", desk.now() - 24h * 2, "Dev 14", {}};
    check.names.missing[30] = {desk.now() - 24h * 50, desk.now() - 24h * 43};
    check.names.bottles["b"] = "Dev 14";
    FindingsDialog findings(check, desk.now(), wording);
    picture(findings, "findings");
    const char* const kMissing = "MissingBook";
    QStringList ways{said(kMissing, "Choose the book…")};
    for (const std::size_t newest : {0, 1})
        ways << said(kMissing, "Restore the copy of %1")
                    .arg(copyText(view.copies[newest], desk.now(), wording));
    ways << said(kMissing, "Start again with an empty book");
    ChoiceDialog choice(
        said(kMissing, "Where is the book?"),
        said(kMissing, "The book %1 is not where it was: it was moved, renamed or deleted, or its "
                       "drive is not connected.")
                .arg("home.ullage") +
            u' ' + said(kMissing, "It was in %1.").arg("/media/darkroom"),
        ways);
    picture(choice, "choice");
}

// A bottle that is not as it was entered, among sound ones, and a gap in the day book.
void faulty(Desk& desk, const std::string& dev)
{
    const ullage::Error fault{.code = ullage::ErrorCode::NotAsEntered,
                              .text = ullage::store::damage::kChanged,
                              .subject = "3c1b7c61-61a8-47ed-8d5c-5d5f0f5d8a4e",
                              .entry = 251,
                              .entryType = "event"};
    ullage::store::FaultNames names;
    names.entries[251] = {"event", "processed", desk.now() - std::chrono::hours(48), "Dev 14", {}};
    ShelfPage shelf;
    ShelfSnapshot snapshot;
    snapshot.unread = {{QString::fromStdString(dev), "Dev 14", "MQ borax developer, stock"}};
    shelf.setBottles(shelfShown(snapshot, {}).bottles);
    shelf.setSummary(shelfShown(snapshot, {}).summary);
    shelf.setSelected(
        unreadBottle(snapshot.unread.front(),
                     faultSentence(fault, names, desk.now(), desk.preferences().wording())));
    shelf.resize(1090, 760);
    picture(shelf, "shelf-unread");
}

} // namespace

int main(int argc, char** argv)
{
    const auto argument = [&](int i) { return QString::fromLocal8Bit(argc > i ? argv[i] : ""); };
    folder = argc > 1 ? argument(1) : QString("gallery");
    const QSize size = argc > 2 ? sizeOf(argument(2)) : QSize(1024, 700);
    if (size.isEmpty())
        qFatal("a size is WIDTHxHEIGHT");
    const QStringList looks = argc > 3 ? QStringList(argument(3)) : QStringList{"light", "dark"};
    const QStringList languages = argc > 4 ? QStringList(argument(4)) : QStringList{"en", "de"};
    QTemporaryDir scratch;
    useOffscreen(size, scratch.path());
    QStandardPaths::setTestModeEnabled(true);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    QApplication application(argc, argv);
    QApplication::setCursorFlashTime(0);
    QDir().mkpath(folder);
    Theme::instance().install(application);

    for (const QString& code : languages) {
        language = code;
        installLanguage(language);
        for (const QString& one : looks) {
            wear(one);
            Desk desk;
            desk.preferences().setLanguage(language);
            MainWindow window;
            Controller controller(window, desk.session(), desk.preferences());
            picture(window, "window-empty");
            desk.pass(-60);
            const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 14");
            const auto fix = desk.mix("starter-acid-fixer", "starter-hdpe-1000", 1000, "Fix 9");
            desk.mix("starter-citric-stop", "starter-pet-1000", 1000, "Stop 3");
            desk.record(fix, ullage::ledger::ClearingTested{ullage::chemistry::Seconds(62),
                                                            ullage::chemistry::Celsius(20)});
            for (int i = 0; i < 4; ++i) {
                desk.pass(8);
                desk.run(dev, 1 + i % 2);
                desk.run(fix, 1 + i % 2);
            }
            desk.pass(28);
            desk.preferences().setBaseTimes(
                "starter-mq-borax",
                {{ullage::chemistry::Celsius(20), ullage::chemistry::Seconds(570)}});
            desk.session().lookForChanges();
            emit desk.session().changed();
            desk.reopen();
            MainWindow again;
            Controller second(again, desk.session(), desk.preferences());
            again.shelf()->selectBottle(QString::fromStdString(dev));
            picture(again, "window");
            again.shelf()->selectBottle(QString::fromStdString(fix));
            picture(again, "window-fixer");
            again.setStanding(said("CopyWords", "Something is wrong in the book"), true);
            again.offerMending(true);
            picture(again, "window-faulty");
            again.setBook({});
            again.setBookOpen(false);
            picture(again, "window-no-book");
            again.showPage(ullage::app::Page::DayBook);
            picture(again, "window-no-book-day-book");
            faulty(desk, dev);
            dialogs(desk, dev, fix);
            importing(desk, dev);
            copies(desk);
        }
    }
    return 0;
}
