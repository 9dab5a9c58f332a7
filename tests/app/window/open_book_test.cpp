// The open book as a file, seen from the window: whatever is opened or asked for, the locks on it
// stay; who else has it is said; where it went is said; a missing one is asked about.
#include "app/dialogs/happening_dialog.h"
#include "app/shelf/shelf_page.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"
#include "app/window/missing_book.h"
#include "core/store/backup.h"
#include "tests/app/dialogs/dialog_driver.h"
#include "tests/app/scripted_prompts.h"
#include "tests/core/store/held_locks.h"

#include <QAction>
#include <QApplication>
#include <QFile>
#include <QFileDialog>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QTimer>

namespace ullage::app
{

namespace
{

using store::testing::ownLocks;

struct Window {
    explicit Window(Desk& desk) : controller(window, desk.session(), desk.preferences())
    {
        window.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    }
    // What the rail says under the book's name; empty if nothing.
    [[nodiscard]] QString standing() const
    {
        for (const QLabel* label : window.findChildren<QLabel*>()) {
            for (const char* text : {"Also open elsewhere", "Moved", "Damaged", "Read only"}) {
                if (!label->isHidden() && label->text().startsWith(QLatin1String(text)))
                    return label->text();
            }
        }
        return {};
    }
    MainWindow window;
    Controller controller;
};

void settle()
{
    for (int i = 0; i < 3; ++i) {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }
}

void closeDialogs()
{
    for (QWidget* widget : QApplication::topLevelWidgets()) {
        if (auto* dialog = qobject_cast<QDialog*>(widget); dialog && dialog->isVisible())
            dialog->reject();
    }
    settle();
}

void collect(const QList<QAction*>& actions, QList<QAction*>& into)
{
    for (QAction* action : actions) {
        if (action->menu())
            collect(action->menu()->actions(), into);
        else if (!action->isSeparator())
            into << action;
    }
}

#ifdef Q_OS_LINUX
// The locks that are for as long as the book is open; those of a read under way come and go.
std::set<store::HeldLock> lasting(const QString& book)
{
    std::set<store::HeldLock> locks = ownLocks(book);
    constexpr qint64 kFirstLogLock = 120;
    constexpr qint64 kLastLogLock = 127;
    std::erase_if(locks, [](const store::HeldLock& lock) {
        return lock.first >= kFirstLogLock && lock.last <= kLastLogLock;
    });
    return locks;
}
#endif

} // namespace

#ifdef Q_OS_LINUX

TEST(OpenBook, keepsItsLocksOnEveryPageAndAtEveryMenuEntry)
{
    Desk desk;
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.run(dev, 2);
    const auto held = lasting(desk.bookPath());
    ASSERT_FALSE(held.empty()) << "there is nothing to see on this system";
    ScriptedPrompts asked;
    const PromptsInForce force(asked);
    Window at(desk);
    const auto stays = [&](const QString& step) {
        EXPECT_EQ(lasting(desk.bookPath()), held) << step.toStdString();
    };
    stays("the window");
    for (int round = 0; round < 2; ++round) {
        for (int page = 0; page < kPages; ++page) {
            at.window.showPage(static_cast<Page>(page));
            QTest::qWait(50);
            stays(pageName(static_cast<Page>(page)));
        }
    }
    at.window.showPage(Page::Shelf);
    at.window.shelf()->selectBottle(QString::fromStdString(dev));
    settle();

    QList<QAction*> entries;
    collect(at.window.menuBar()->actions(), entries);
    ASSERT_GT(entries.size(), 25);
    int taken = 0;
    for (QAction* entry : entries) {
        const QString name = entry->text().remove(u'&');
        if (!entry->isEnabled() || name == "Quit" || name.startsWith("Restore"))
            continue;
        const auto before = asked.asked().size();
        if (name.startsWith("Export"))
            asked.answer(desk.file("out.jsonl"));
        if (name.startsWith("Import"))
            asked.answer(desk.bookPath()); // of all files
        if (name.startsWith("Back up"))
            asked.answer(desk.file("copy.ullage"));
        if (name.startsWith("Open book"))
            asked.answer(desk.bookPath());
        entry->trigger();
        settle();
        if (name.startsWith("Export") || name.startsWith("Back up") || name.startsWith("Check")) {
            ASSERT_TRUE(QTest::qWaitFor([&] { return asked.asked().size() > before; }, 20'000))
                << name.toStdString();
        }
        stays(name);
        closeDialogs();
        stays(name + ", closed");
        ++taken;
    }
    EXPECT_GT(taken, 20);
    at.window.setBare(false);
    EXPECT_EQ(asked.answersLeft(), 0U);
}

TEST(OpenBook, keepsItsLocksWhileFilesAreChosen)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    Window at(desk);
    const auto held = lasting(desk.bookPath());
    for (const auto ask : {&MainWindow::openBookRequested, &MainWindow::newBookRequested,
                           &MainWindow::importRequested, &MainWindow::exportRequested,
                           &MainWindow::backupRequested}) {
        bool looked = false;
        QTimer::singleShot(0, &at.window, [&] {
            auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            dialog->setNameFilters({"All files (*)"});
            dialog->setDirectory(QFileInfo(desk.bookPath()).absolutePath());
            dialog->selectFile(desk.bookPath());
            QTest::qWait(400); // the folder is read on a thread
            looked = true;
            dialog->reject();
        });
        emit(at.window.*ask)();
        EXPECT_TRUE(looked);
        EXPECT_EQ(lasting(desk.bookPath()), held);
    }
}

TEST(OpenBook, saysThatItIsOpenElsewhereToo)
{
    Desk desk;
    Window at(desk);
    EXPECT_EQ(at.standing(), "");
    const auto book = store::identityOf(desk.bookPath());
    QByteArray table =
        "1: POSIX  ADVISORY  READ 999999999 00:00:" + QByteArray::number(qulonglong{book->inode}) +
        " 1073741826 1073742335\n";
    // As the table names the device, which is not always as the file does.
    for (const store::HeldLock& lock : ownLocks(desk.bookPath())) {
        if (lock.file.inode == book->inode)
            table.prepend(QStringLiteral("2: POSIX  ADVISORY  READ %1 00:00:%2 %3 %4\n")
                              .arg(lock.process)
                              .arg(lock.file.inode)
                              .arg(lock.first)
                              .arg(lock.last)
                              .toLatin1());
    }
    SessionOptions options;
    options.locks = [&table] { return table; };
    Session session(options);
    MainWindow window;
    Controller controller(window, session, desk.preferences());
    ASSERT_TRUE(session.open(desk.bookPath()));
    EXPECT_EQ(session.elsewhere(), QStringList{"999999999"});
    const auto said = [&window] {
        for (const QLabel* label : window.findChildren<QLabel*>()) {
            if (label->text() == QLatin1String("Also open elsewhere"))
                return !label->isHidden();
        }
        return false;
    };
    EXPECT_TRUE(said());
    table = "3: POSIX  ADVISORY  READ 1 00:00:1 0 EOF\n";
    session.lookForChanges();
    EXPECT_TRUE(session.elsewhere().isEmpty());
    EXPECT_FALSE(said());
}

#endif

TEST(OpenBook, isNeverImportedOrWrittenOver)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const QByteArray before = desk.journal();
    ScriptedPrompts asked;
    const PromptsInForce force(asked);
    Window at(desk);
    for (const auto ask : {&MainWindow::importRequested, &MainWindow::exportRequested}) {
        asked.answer(desk.bookPath());
        emit(at.window.*ask)();
        settle();
        EXPECT_TRUE(asked.asked().back().contains("the open book itself"))
            << asked.asked().back().toStdString();
    }
    EXPECT_EQ(desk.journal(), before);
}

TEST(OpenBook, movedAwayTakesNothingAndKeepsWhatWasTyped)
{
    Desk desk;
    const auto id = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    ScriptedPrompts asked;
    const PromptsInForce force(asked);
    Window at(desk);
    auto* dialog =
        new BottleDialog(HappeningKind::DrawOff, desk.door(), bottleOf(desk, id), &at.window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
    type(*dialog, "Volume taken out", "100");
    const QString away = desk.file("elsewhere.ullage");
    ASSERT_TRUE(QFile::rename(desk.bookPath(), away));
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible()) << "what was typed is still there";
    EXPECT_TRUE(dialog->problemOf({}).contains("no longer in its place"))
        << dialog->problemOf({}).toStdString();
    EXPECT_TRUE(at.standing().contains("Moved")) << at.standing().toStdString();
    ASSERT_TRUE(QFile::rename(away, desk.bookPath()));
    dialog->accept();
    EXPECT_FALSE(dialog->isVisible());
    EXPECT_EQ(at.standing(), "");
    EXPECT_DOUBLE_EQ(desk.session().bottles().front().batch.volume.value(), 900);
}

TEST(OpenBook, whatWasMovedIsWhole)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const QString away = desk.file("away/elsewhere.ullage");
    ASSERT_TRUE(QDir().mkpath(desk.file("away")));
    ASSERT_TRUE(QFile::rename(desk.bookPath(), away));
    desk.session().lookForChanges();
    ASSERT_TRUE(desk.session().readOnly());
    EXPECT_EQ(desk.session().readOnly()->code, ErrorCode::BookMoved);
    EXPECT_EQ(QFileInfo(desk.bookPath() + "-wal").size(), 0)
        << "what stays at the old place is nobody's log";
    Session there((SessionOptions()));
    ASSERT_TRUE(there.open(away));
    EXPECT_EQ(there.batchNames(), QStringList{"Dev 1"});
}

TEST(OpenBook, aMissingOneIsAskedAbout)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const QString path = desk.file("home.ullage");
    const QString copies = desk.file("copies");
    ASSERT_TRUE(QDir().mkpath(copies));
    ASSERT_TRUE(store::backUp(desk.bookPath(), copies, desk.now()));
    const auto made = QDir(copies).entryInfoList(QDir::Files);
    ASSERT_EQ(made.size(), 1);
    ASSERT_TRUE(QFile::rename(made[0].filePath(),
                              QDir(copies).filePath(made[0].fileName().replace("test", "home"))));
    SessionOptions options;
    options.clock = [&] { return desk.now(); };
    Session session(options);
    session.copies().setPlaces(CopyPlaces{copies, {}});
    MainWindow window;
    ScriptedPrompts asked;
    const PromptsInForce force(asked);
    Controller controller(window, session, desk.preferences());
    const auto askedWhenOpening = [&] {
        const auto before = asked.asked().size();
        controller.openKnownBook(path);
        return QTest::qWaitFor([&] { return asked.asked().size() > before; }, 20'000);
    };

    ASSERT_TRUE(askedWhenOpening());
    EXPECT_FALSE(session.isOpen()) << "going back leaves everything";
    EXPECT_FALSE(QFile::exists(path));
    EXPECT_TRUE(asked.asked().back().contains("home.ullage")) << asked.asked().back().toStdString();
    EXPECT_TRUE(asked.asked().back().contains("It was in " + QFileInfo(path).absolutePath()))
        << asked.asked().back().toStdString();

    QFile empty(path);
    ASSERT_TRUE(empty.open(QIODevice::WriteOnly));
    empty.close();
    asked.answerWay(1); // the copy
    ASSERT_TRUE(askedWhenOpening());
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.isOpen(); }, 20'000));
    EXPECT_EQ(session.batchNames(), QStringList{"Dev 1"});
    session.close();

    ASSERT_TRUE(QFile::remove(path));
    QFile log(path + "-wal");
    ASSERT_TRUE(log.open(QIODevice::WriteOnly));
    log.write("what is left");
    log.close();
    asked.answerWay(static_cast<int>(copiesOnOffer(path, {copies}).size()) + 1); // anew
    ASSERT_TRUE(askedWhenOpening());
    ASSERT_TRUE(session.isOpen());
    EXPECT_TRUE(session.batchNames().isEmpty());
    EXPECT_TRUE(QFile::exists(path + ".remains-wal")) << "set aside, not removed";
    session.close();

    ASSERT_TRUE(QFile::remove(path));
    asked.answerWay(0);
    asked.answer(desk.bookPath());
    ASSERT_TRUE(askedWhenOpening());
    EXPECT_EQ(session.path(), desk.bookPath());
    EXPECT_EQ(asked.answersLeft(), 0U);
}

} // namespace ullage::app
