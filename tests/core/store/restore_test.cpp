// A copy takes the place of a book: whole, once, and whatever ends the program on the way.
#include "core/store/restore.h"
#include "tests/core/store/temp_book.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <csignal>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

const QByteArray kBorax = kHead + R"({"type":"chemical","id":"c1","name":"borax"})" + "\n";

void write(const QString& path, const QByteArray& text)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text);
}

QByteArray read(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

void overwrite(const QString& path, qint64 at, const QByteArray& text)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    file.seek(at);
    file.write(text);
}

// A book and a copy of its first state.
class Restore : public ::testing::Test
{
protected:
    void SetUp() override
    {
        ASSERT_TRUE(book.import(kStart));
        copy = book.inFolder("copy");
        ASSERT_TRUE(copyVerified(book.store->connection(), copy));
        ASSERT_TRUE(book.import(kBorax));
        later = book.text();
    }
    void close()
    {
        book.book.reset();
        book.store.reset();
    }
    Result<Restored> restored(bool replace = true, const StepWatch& watch = {})
    {
        return restore(copy, book.path(), replace, testNow(), watch);
    }
    static QByteArray textOf(const QString& path) { return TempBook(path).text(); }
    // Ends a process of its own at the given step of a restore; false if there is no such step.
    bool killedAt(int step)
    {
        const pid_t child = ::fork();
        if (child == 0) {
            int count = 0;
            (void)restored(true, [&](const char*) {
                if (count++ == step) {
                    ::kill(::getpid(), SIGKILL);
                }
            });
            ::_exit(0);
        }
        int status = 0;
        ::waitpid(child, &status, 0);
        return WIFSIGNALED(status);
    }

    TempBook book;
    QString copy;
    QByteArray later;
};

} // namespace

TEST_F(Restore, PutsACopyInPlaceAndKeepsTheOldBookBeside)
{
    close();
    const auto refused = restored(false);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::IdTaken);
    const auto done = restored();
    ASSERT_TRUE(done) << done.error().text;
    EXPECT_EQ(done->entries, 4);
    EXPECT_EQ(textOf(book.path()), kStart);
    EXPECT_EQ(textOf(done->kept), later);

    const QString fresh = book.inFolder("new.ullage");
    const auto made = restore(copy, fresh, false, testNow());
    ASSERT_TRUE(made);
    EXPECT_EQ(made->kept, QString());
    EXPECT_EQ(textOf(fresh), kStart);
}

TEST_F(Restore, WorksWhileTheBookIsOpenElsewhere)
{
    TempBook other(book.path()); // a window that goes on
    const auto done = restored();
    ASSERT_TRUE(done) << done.error().text;
    EXPECT_EQ(textOf(done->kept), later);
    EXPECT_EQ(other.text(), kStart);
    ASSERT_TRUE(other.book->refresh());
    ASSERT_TRUE(other.import(kBorax));
    EXPECT_EQ(book.text(), later);
}

TEST_F(Restore, WaitsForAWriterAndThenSaysSo)
{
    close();
    auto writer = Connection::open(book.path(), FileMode::Write, 0);
    ASSERT_TRUE((*writer)->run("BEGIN IMMEDIATE"));
    EXPECT_FALSE(restored());
    ASSERT_TRUE((*writer)->run("ROLLBACK"));
    writer->reset();
    EXPECT_EQ(textOf(book.path()), later);
}

TEST_F(Restore, RefusesWhatIsNoWholeBook)
{
    close();
    constexpr qint64 kPage = 4096;
    for (qint64 at = kPage; at < QFileInfo(copy).size(); at += kPage) {
        overwrite(copy, at, QByteArray(200, '\xAA'));
    }
    write(book.inFolder("letter"), "Dear");
    for (const QString& from :
         {copy, book.inFolder("none"), book.inFolder(""), book.inFolder("letter")}) {
        EXPECT_FALSE(restore(from, book.path(), true, testNow())) << from.toStdString();
    }
    EXPECT_EQ(textOf(book.path()), later);
    EXPECT_EQ(QDir(book.inFolder("")).entryList({"*.restoring*", "*.part", "*.replaced*"}).size(),
              0);
}

TEST_F(Restore, RefusesACopyInWhichALineWasChangedRemovedOrPutIn)
{
    close();
    for (const char* deed :
         {"UPDATE entry SET body = replace(body, '1000', '9999') WHERE id = 'e1'",
          "DELETE FROM entry WHERE seq = (SELECT max(seq) FROM entry)",
          "INSERT INTO entry (type, id, action, body) "
          "VALUES ('vessel', 'x', 1, '{\"type\":\"vessel\",\"id\":\"x\"}')"}) {
        const QString changed = book.inFolder("changed");
        ASSERT_TRUE(QFile::copy(copy, changed)); // nobody has it open
        {
            auto behind = Connection::open(changed, FileMode::Write, 1000);
            ASSERT_TRUE(behind);
            ASSERT_TRUE((*behind)->run("DROP TRIGGER entry_stays"));
            ASSERT_TRUE((*behind)->run("DROP TRIGGER entry_is_kept"));
            ASSERT_TRUE((*behind)->run(QLatin1String(deed)));
        }
        const auto done = restore(changed, book.path(), true, testNow());
        ASSERT_FALSE(done) << deed;
        EXPECT_EQ(done.error().code, ErrorCode::NotAsEntered) << deed;
        EXPECT_EQ(textOf(book.path()), later) << deed;
        ASSERT_TRUE(QFile::remove(changed));
    }
}

TEST_F(Restore, MovesAnUnreadableBookAsideWithItsLogs)
{
    close();
    overwrite(book.path(), 0, QByteArray(100, 'x'));
    write(book.path() + "-wal", "the old log");
    const QByteArray wreck = read(book.path());
    const auto done = restored();
    ASSERT_TRUE(done) << done.error().text;
    EXPECT_EQ(read(done->kept), wreck);
    EXPECT_EQ(read(done->kept + "-wal"), "the old log");
    EXPECT_EQ(textOf(book.path()), kStart);
}

TEST_F(Restore, ALogThatLiesAloneIsNotTakenForTheNewBooks)
{
    QFile::copy(book.path() + "-wal", book.inFolder("gone.ullage-wal")); // of a book that is gone
    close();
    for (const char* size : {"none", "empty"}) {
        const QString path = book.inFolder("gone.ullage");
        if (size == QByteArrayView("empty")) {
            QFile::remove(path);
            write(path, {});
            write(path + "-wal", "something");
        }
        ASSERT_TRUE(restore(copy, path, true, testNow())) << size;
        EXPECT_EQ(textOf(path), kStart) << size;
    }
    EXPECT_EQ(QDir(book.inFolder("")).entryList({"gone.ullage.replaced*-wal"}).size(), 2);
}

TEST_F(Restore, KeepsADamagedBookPageForPage)
{
    close();
    constexpr qint64 kPage = 4096;
    overwrite(book.path(), QFileInfo(book.path()).size() - kPage, QByteArray(kPage, '\xAA'));
    const QByteArray damaged = read(book.path()).mid(kPage);
    const auto done = restored();
    ASSERT_TRUE(done) << done.error().text;
    EXPECT_EQ(textOf(book.path()), kStart);
    EXPECT_EQ(read(done->kept).mid(kPage), damaged);
}

TEST_F(Restore, LeavesFoldersLinksAndOtherThingsAlone)
{
    close();
    const QString folder = book.inFolder("folder");
    ASSERT_TRUE(QDir().mkpath(folder + "/in it"));
    const QString link = book.inFolder("link");
    ASSERT_TRUE(QFile::link(book.inFolder("nothing"), link));
    const QString pipe = book.inFolder("pipe");
    ASSERT_EQ(::mkfifo(QFile::encodeName(pipe).constData(), 0600), 0);
    for (const QString& path : {folder, link, pipe}) {
        const auto refused = restore(copy, path, true, testNow());
        ASSERT_FALSE(refused) << path.toStdString();
        EXPECT_EQ(refused.error().code, ErrorCode::NotABook);
    }
    EXPECT_TRUE(QDir(folder + "/in it").exists());
    EXPECT_TRUE(QFileInfo(link).isSymLink());
    // A link to a book: the book itself is restored, and kept beside itself.
    const QString toBook = book.inFolder("elsewhere");
    ASSERT_TRUE(QFile::link(book.path(), toBook));
    const auto done = restore(copy, toBook, true, testNow());
    ASSERT_TRUE(done) << done.error().text;
    EXPECT_TRUE(QFileInfo(toBook).isSymLink());
    EXPECT_TRUE(done->kept.startsWith(book.path()));
    EXPECT_EQ(textOf(book.path()), kStart);
}

TEST_F(Restore, KilledBetweenAnyTwoStepsLeavesABookInItsPlace)
{
    close();
    int step = 0;
    for (; killedAt(step); ++step) {
        const QByteArray text = textOf(book.path());
        EXPECT_TRUE(text == later || text == kStart) << step;
        if (text == kStart) {
            ASSERT_TRUE(TempBook(book.path()).import(kBorax));
        }
    }
    EXPECT_GT(step, 5);
    EXPECT_EQ(textOf(book.path()), kStart) << "the last went through";
}

TEST_F(Restore, KilledWhileAWreckIsMovedAsideLeavesAFileInItsPlace)
{
    close();
    overwrite(book.path(), 0, QByteArray(100, 'x'));
    const QByteArray wreck = read(book.path());
    int step = 0;
    for (; killedAt(step); ++step) {
        ASSERT_TRUE(QFile::exists(book.path())) << step;
        if (read(book.path()) != wreck) {
            EXPECT_EQ(textOf(book.path()), kStart);
            QFile::remove(book.path());
            write(book.path(), wreck);
        }
    }
    EXPECT_GT(step, 5);
    EXPECT_EQ(textOf(book.path()), kStart);
}
