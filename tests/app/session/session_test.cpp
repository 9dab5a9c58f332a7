#include "core/store/integrity.h"
#include "core/store/restore.h"
#include "tests/app/desk.h"

#include <QFile>
#include <QSemaphore>
#include <QSignalSpy>
#include <QSysInfo>
#include <QTest>
#include <QThread>

#include <gtest/gtest.h>

namespace ullage::app
{

namespace
{

// One page of an index, which nothing that is shown needs.
void damage(const QString& path)
{
    std::int64_t root = 0;
    {
        const auto book = store::SqlStore::open(path);
        root = *(*book)->connection().number(
            "SELECT rootpage FROM sqlite_schema WHERE name = 'entry_by_kind'");
    }
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    ASSERT_TRUE(file.seek((root - 1) * 4096));
    file.write(QByteArray(4096, '\x55'));
}

} // namespace

TEST(Session, aNewBookBeginsWithTheStarterFormulary)
{
    Desk desk;
    EXPECT_GT(desk.session().formulary().solutions().size(), 5u);
    EXPECT_GT(desk.session().formulary().vessels().size(), 3u);
    EXPECT_FALSE(desk.session().book().undoable()) << "what came with the book is not undone";
    const QByteArray before = desk.journal();
    desk.reopen();
    EXPECT_EQ(desk.journal(), before) << "a second start adds nothing";
}

TEST(Session, doingTellsOnceAndARefusalTellsNothing)
{
    Desk desk;
    QSignalSpy changed(&desk.session(), &Session::changed);
    const auto id = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    EXPECT_EQ(changed.count(), 1);
    ASSERT_EQ(desk.session().bottles().size(), 1u);
    const QByteArray before = desk.journal();
    const auto refused = desk.session().doing([&](ledger::Book& book) {
        return book.drawOff(id, chemistry::Millilitres(2000), "", {desk.now(), {}});
    });
    EXPECT_FALSE(refused);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(desk.journal(), before);
}

TEST(Session, undoAndRedoWorkAfterARestart)
{
    Desk desk;
    const auto id = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.passMinutes(5);
    desk.run(id, 2);
    desk.reopen();
    ASSERT_TRUE(desk.session().undo());
    EXPECT_DOUBLE_EQ(desk.session().bottles().front().batch.filmsDone.value(), 0);
    desk.reopen();
    ASSERT_TRUE(desk.session().redo());
    EXPECT_DOUBLE_EQ(desk.session().bottles().front().batch.filmsDone.value(), 2);
}

TEST(Session, seesWhatAnotherWindowWrote)
{
    Desk desk;
    SessionOptions options;
    options.clock = [&] { return desk.now(); };
    Session other(options);
    ASSERT_TRUE(other.open(desk.bookPath()));
    ASSERT_TRUE(other.doing([&](ledger::Book& book) {
        return book.mix(
            {"starter-mq-borax", "starter-glass-1000", chemistry::Millilitres(1000), "Theirs"},
            {desk.now(), {}});
    }));
    QSignalSpy changed(&desk.session(), &Session::changed);
    desk.session().lookForChanges();
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(desk.session().bottles().size(), 1u);
    EXPECT_EQ(desk.session().batchNames(), QStringList{"Theirs"});
    desk.session().lookForChanges();
    EXPECT_EQ(changed.count(), 1) << "nothing new, nothing told";
}

// A copy of as many entries, put in the book's place by someone else.
TEST(Session, aCopyOfEqualLengthThatTookTheBooksPlaceIsNoticed)
{
    Desk desk;
    const auto enter = [](Session& session, const char* name) {
        ASSERT_TRUE(session.doing([&](ledger::Book& book) {
            return book.mix(
                {"starter-mq-borax", "starter-glass-1000", chemistry::Millilitres(1000), name},
                {session.now(), {}});
        }));
    };
    ASSERT_TRUE(store::copyTo(desk.bookPath(), desk.file("other.ullage"), desk.now()));
    enter(desk.session(), "Ours");
    {
        SessionOptions options;
        options.clock = [&] { return desk.now(); };
        Session other(options);
        ASSERT_TRUE(other.open(desk.file("other.ullage")));
        enter(other, "Restored");
        ASSERT_EQ(other.entries(), desk.session().entries());
    }
    QSignalSpy changed(&desk.session(), &Session::changed);
    ASSERT_TRUE(store::restore(desk.file("other.ullage"), desk.bookPath(), true, desk.now()));
    desk.session().lookForChanges();
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(desk.session().batchNames(), QStringList{"Restored"});
    ASSERT_EQ(desk.session().bottles().size(), 1u);
    EXPECT_EQ(desk.session().bottles()[0].batch.name, "Restored");
}

// Two windows of one user: each has a seat of its own, the same after a restart.
TEST(Session, undoTakesBackTheDeedsOfItsWindowOnly)
{
    Desk desk;
    SessionOptions options;
    options.clock = [&] { return desk.now(); };
    options.seats = desk.seats();
    options.machine = Desk::kMachine;
    Session two(options);
    ASSERT_TRUE(two.open(desk.bookPath()));
    const auto mix = [&](Session& session, const char* name) {
        return session
            .doing([&](ledger::Book& book) {
                return book.mix(
                    {"starter-mq-borax", "starter-glass-1000", chemistry::Millilitres(1000), name},
                    {desk.now(), {}});
            })
            .has_value();
    };
    ASSERT_TRUE(mix(desk.session(), "Ours"));
    ASSERT_TRUE(mix(two, "Theirs"));
    desk.session().lookForChanges();
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(desk.session().batchNames(), QStringList{"Theirs"});
    const auto none = desk.session().undo();
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().text, "others");
    desk.reopen();
    ASSERT_TRUE(desk.session().redo()) << "the same seat after a restart";
    EXPECT_EQ(desk.session().batchNames(), (QStringList{"Ours", "Theirs"}));
    ASSERT_TRUE(desk.session().open(desk.bookPath()));
    ASSERT_TRUE(desk.session().undo()) << "and when the book is opened anew";
    two.lookForChanges();
    ASSERT_TRUE(two.undo());
    EXPECT_TRUE(two.batchNames().isEmpty());
}

TEST(Session, aBookThatCannotBeOpenedLeavesTheOneThatIs)
{
    Desk desk;
    QFile other(desk.file("letter.txt"));
    ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    other.write("Dear harbour master, this is no book but a letter of some length.");
    other.close();
    const auto opened = desk.session().open(other.fileName());
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().code, ErrorCode::NotABook);
    EXPECT_TRUE(desk.session().isOpen());
    EXPECT_EQ(desk.session().path(), desk.bookPath());
    ASSERT_TRUE(other.open(QIODevice::ReadOnly));
    EXPECT_TRUE(other.readAll().startsWith("Dear"));
}

// Two machines on one network folder cannot see each other's locks.
TEST(Session, aWindowOnAnotherMachineIsSeenByItsRecord)
{
    Desk desk;
    desk.session().close();
    SessionOptions options;
    options.clock = [&] { return desk.now(); };
    options.volume = [](const QString&) { return store::Volume::Network; };
    options.locks = [] { return QByteArray(); };
    Session one(options);
    ASSERT_TRUE(one.open(desk.bookPath()));
    EXPECT_TRUE(one.elsewhere().isEmpty());
    {
        Session two(options);
        ASSERT_TRUE(two.open(desk.bookPath()));
        EXPECT_EQ(two.elsewhere(), QStringList{QSysInfo::machineHostName()});
        one.lookForChanges();
        EXPECT_EQ(one.elsewhere(), QStringList{QSysInfo::machineHostName()});
    }
    one.lookForChanges();
    EXPECT_TRUE(one.elsewhere().isEmpty());
}

TEST(Session, aFolderThatMayNotBeWrittenIsRead)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.session().close();
    const QString folder = QFileInfo(desk.bookPath()).absolutePath();
    ASSERT_TRUE(QFile::setPermissions(folder, QFile::ReadOwner | QFile::ExeOwner));
    const bool root = QFileInfo(folder).isWritable(); // who may write anywhere
    if (!root) {
        Session session((SessionOptions()));
        EXPECT_TRUE(session.open(desk.bookPath()));
        EXPECT_EQ(session.batchNames(), QStringList{"Dev 1"});
        ASSERT_TRUE(session.readOnly());
        EXPECT_EQ(session.readOnly()->code, ErrorCode::ReadOnly);
        EXPECT_EQ(session.undo().error().code, ErrorCode::ReadOnly);
    }
    QFile::setPermissions(folder, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
}

TEST(Session, aDamagedBookIsReadAndTakesNothingMore)
{
    Desk desk;
    const auto id = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.session().close();
    damage(desk.bookPath());
    Session session((SessionOptions()));
    ASSERT_TRUE(session.open(desk.bookPath()));
    ASSERT_TRUE(session.readOnly());
    EXPECT_EQ(session.readOnly()->code, ErrorCode::BookDamaged);
    EXPECT_EQ(session.batchNames(), QStringList{"Dev 1"});
    const auto refused = session.doing([&](ledger::Book& book) {
        return book.drawOff(id, chemistry::Millilitres(1), "", {desk.now(), {}});
    });
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::BookDamaged);
}

// What takes longer to look at than a window can be held up is looked at on a thread.
TEST(Session, aBookOpenedBeforeItWasCheckedIsCheckedAfterwards)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.session().close();
    damage(desk.bookPath());
    SessionOptions options;
    options.quickCheckMs = 0;
    Session session(options);
    ASSERT_TRUE(session.open(desk.bookPath()));
    EXPECT_FALSE(session.readOnly()) << "told when the thread has found it, in the next turn";
    EXPECT_EQ(session.batchNames(), QStringList{"Dev 1"});
    QSignalSpy told(&session, &Session::standingChanged);
    ASSERT_TRUE(told.wait(10'000));
    ASSERT_TRUE(session.readOnly());
    EXPECT_EQ(session.readOnly()->code, ErrorCode::BookDamaged);
}

// SQLite's part of the check is under way, and held there, until the closing says to stop.
TEST(Session, closingStopsACheckAndDoesNotWaitForItsEnd)
{
    Desk desk;
    QFile lines(desk.file("many.jsonl"));
    ASSERT_TRUE(lines.open(QIODevice::WriteOnly));
    lines.write("{\"type\":\"book\",\"format\":\"ullage-journal\",\"version\":2}\n");
    for (int i = 0; i < 10'000; ++i)
        lines.write(QStringLiteral("{\"type\":\"chemical\",\"id\":\"c%1\",\"name\":\"borax\"}\n")
                        .arg(i)
                        .toUtf8());
    lines.close();
    {
        const auto book = store::SqlStore::open(desk.bookPath());
        ASSERT_TRUE(book);
        const auto entering = ledger::Book::open(
            **book, [&] { return desk.now(); }, [] { return std::string(); });
        ASSERT_TRUE(enterJournal(**entering, **book, lines.fileName()));
    }
    const QByteArray before = desk.journal();

    QSemaphore held;
    std::atomic<std::int64_t> heldAt = -1;
    std::optional<Result<store::BookCheck>> became;
    SessionOptions options;
    options.clock = [&] { return desk.now(); };
    options.wholeCheck = [&](const QString& path, const store::Watch& watch) -> Result<void> {
        const auto book = store::SqlStore::open(path, {.access = store::Access::Read});
        int calls = 0;
        became = store::checkBook(**book, [&](const store::Progress& progress) {
            if (++calls == 2) {
                heldAt = progress.done;
                held.release();
                while (watch(progress))
                    QThread::msleep(1);
            }
            return watch(progress);
        });
        return {};
    };
    Session session(options);
    ASSERT_TRUE(session.open(desk.bookPath()));
    ASSERT_TRUE(held.tryAcquire(1, 60'000));
    EXPECT_EQ(heldAt, 0) << "in SQLite's own part";
    EXPECT_FALSE(became);
    session.close();
    ASSERT_TRUE(became);
    ASSERT_FALSE(*became);
    EXPECT_EQ(became->error().code, ErrorCode::Cancelled);
    EXPECT_FALSE(session.fault());
    EXPECT_EQ(desk.journal(), before);
}

TEST(Session, theWholeCheckRunsInTheBackground)
{
    Desk desk;
    SessionOptions options;
    options.wholeCheck = [](const QString&, const store::Watch&) -> Result<void> {
        return refuse({.code = ErrorCode::BookDamaged, .text = "a line says otherwise"});
    };
    Session session(options);
    ASSERT_TRUE(session.open(desk.bookPath()));
    QSignalSpy told(&session, &Session::standingChanged);
    ASSERT_TRUE(session.readOnly() || told.wait(10'000));
    ASSERT_TRUE(session.readOnly());
    EXPECT_EQ(session.readOnly()->text, "a line says otherwise");
}

TEST(Session, whatTheCheckFindsWrongInASoundFileIsSaidAndHindersNothing)
{
    Desk desk;
    SessionOptions options;
    options.clock = [&] { return desk.now(); };
    options.wholeCheck = [](const QString&, const store::Watch&) -> Result<void> {
        return refuse({.code = ErrorCode::UnknownId, .field = "solution", .text = "none"});
    };
    Session session(options);
    ASSERT_TRUE(session.open(desk.bookPath()));
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.fault().has_value(); }, 10'000));
    EXPECT_EQ(session.fault()->code, ErrorCode::UnknownId);
    EXPECT_FALSE(session.readOnly());
    EXPECT_TRUE(session.doing([&](ledger::Book& book) {
        return book.mix(
            {"starter-mq-borax", "starter-glass-1000", chemistry::Millilitres(900), "D"},
            {desk.now(), {}});
    }));
}

TEST(Session, theLogIsFoldedWhenNothingHappens)
{
    Desk desk;
    SessionOptions options;
    options.clock = [&] { return desk.now(); };
    options.idleMs = 20;
    Session session(options);
    ASSERT_TRUE(session.open(desk.bookPath()));
    const auto log = [&] { return QFileInfo(desk.bookPath() + "-wal").size(); };
    ASSERT_TRUE(session.doing([&](ledger::Book& book) {
        return book.mix(
            {"starter-mq-borax", "starter-glass-1000", chemistry::Millilitres(900), "D"},
            {desk.now(), {}});
    }));
    ASSERT_GT(log(), 0);
    EXPECT_TRUE(QTest::qWaitFor([&] { return log() == 0; }, 10'000));
}

} // namespace ullage::app
