#include "core/store/backup.h"
#include "tests/core/store/damaged_book.h"

#include <QDir>
#include <QFile>

#include <csignal>
#include <sys/wait.h>
#include <unistd.h>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;
using chemistry::Instant;

namespace
{

Instant day(int year, unsigned month, unsigned date, int hour = 0)
{
    return std::chrono::sys_days(std::chrono::year(year) / static_cast<int>(month) /
                                 static_cast<int>(date)) +
           std::chrono::hours(hour);
}

QString copiesOf(TempBook& book)
{
    const QString folder = book.inFolder("copies");
    EXPECT_TRUE(QDir().mkpath(folder));
    return folder;
}

} // namespace

TEST(Backup, IsAWholeBookThatOpens)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const auto made = backUp(book.path(), copiesOf(book), day(2026, 9, 1, 7));
    ASSERT_TRUE(made) << made.error().text;
    const QString path = made->copy.path;
    EXPECT_TRUE(path.endsWith(made->copy.bookId + "-2026-09-01T070000Z.ullage"))
        << path.toStdString();
    EXPECT_FALSE(made->fault);
    EXPECT_EQ(QDir(copiesOf(book)).entryList(QDir::Files).size(), 1);
    EXPECT_EQ(TempBook(path).text(), kStart);
}

TEST(Backup, ReportsWhereItCannotBeMade)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    QFile inTheWay(book.inFolder("copies"));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    const auto failed = backUp(book.path(), book.inFolder("copies"), testNow());
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().code, ErrorCode::StoreFailed);
    EXPECT_EQ(backUp(book.inFolder("none"), book.inFolder("c"), testNow()).error().code,
              ErrorCode::StoreFailed);
}

TEST(Backup, CanBeMadeOfABookOpenForReadingOnly)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    close(book);
    const auto store = SqlStore::open(book.path(), {.access = Access::Read});
    ASSERT_TRUE(store);
    ASSERT_TRUE(copyVerified((*store)->connection(), book.inFolder("copy")));
    EXPECT_EQ(TempBook(book.inFolder("copy")).text(), kStart);
    EXPECT_FALSE((*store)->connection().run("DELETE FROM batch")); // still only for reading
}

TEST(Backup, NeverOverwritesAFile)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QString target = book.inFolder("copy");
    ASSERT_TRUE(copyVerified(book.store->connection(), target));
    const auto again = copyVerified(book.store->connection(), target);
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().code, ErrorCode::IdTaken);
}

TEST(Backup, RotatesOnlyItsOwnFiles)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QDir folder(book.inFolder("copies"));
    ASSERT_TRUE(folder.mkpath("."));
    const QString stranger = "home-0d6ffc2e-3a35-4d0c-9d0e-5b8f1c5a7f10-2020-01-01T000000Z.ullage";
    QStringList others{"home-2020-01-01T000000Z.ullage", stranger, "home-old.ullage", "notes.txt",
                       "home.ullage.part"};
    for (const QString& name : others) {
        QFile file(folder.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    }
    for (int hour = 0; hour < 4; ++hour) {
        ASSERT_TRUE(backUp(book.path(), folder.path(), day(2026, 9, 1, hour)));
    }
    QStringList left = folder.entryList(QDir::Files, QDir::Name);
    for (const QString& name : others) {
        EXPECT_EQ(left.removeAll(name), 1) << name.toStdString();
    }
    ASSERT_EQ(left.size(), 1);
    EXPECT_TRUE(left.front().endsWith("2026-09-01T030000Z.ullage"));
}

TEST(Backup, WithTheClockSetBackTheOneJustMadeStays)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QString folder = copiesOf(book);
    for (unsigned date = 1; date < 20; ++date) {
        ASSERT_TRUE(backUp(book.path(), folder, day(2028, 9, date)));
    }
    const auto made = backUp(book.path(), folder, day(2026, 9, 1));
    ASSERT_TRUE(made);
    EXPECT_TRUE(QFile::exists(made->copy.path));
    const auto again = backUp(book.path(), folder, day(2026, 9, 1)); // the clock stands still
    ASSERT_TRUE(again);
    EXPECT_TRUE(QFile::exists(again->copy.path));
}

TEST(Backup, TakesNobodysPartAway)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QString target = book.inFolder("mine");
    QFile mine(target + ".part");
    ASSERT_TRUE(mine.open(QIODevice::WriteOnly));
    mine.write("mine");
    mine.close();
    ASSERT_TRUE(copyVerified(book.store->connection(), target));
    EXPECT_EQ(mine.size(), 4);
    EXPECT_EQ(TempBook(target).text(), kStart);
}

TEST(Backup, OfAFaultyBookIsMadeAndMarked)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QString folder = copiesOf(book);
    const auto sound = backUp(book.path(), folder, day(2026, 9, 1, 7));
    ASSERT_TRUE(sound);
    EXPECT_FALSE(sound->fault);
    Connection& behind = book.store->connection();
    ASSERT_TRUE(behind.run("DROP TRIGGER entry_stays"));
    ASSERT_TRUE(behind.run("UPDATE entry SET body = replace(body, '1000', '9999') "
                           "WHERE id = 'e1'"));
    const auto made = backUp(book.path(), folder, day(2026, 9, 1, 8));
    ASSERT_TRUE(made) << made.error().text;
    EXPECT_TRUE(made->fault);
    EXPECT_EQ(made->copy.state, CopyState::Faulty);
    EXPECT_TRUE(made->copy.path.endsWith(".faulty.ullage"));
    EXPECT_TRUE(QFile::exists(sound->copy.path));
}

TEST(Backup, StoppedAtAnyTimeItLeavesNothing)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QString folder = copiesOf(book);
    int asked = 0;
    for (int most = 0;; ++most) {
        asked = 0;
        const auto made = backUp(book.path(), folder, day(2026, 9, 1), {},
                                 [&](const Progress&) { return asked++ < most; });
        if (made) {
            break;
        }
        EXPECT_EQ(made.error().code, ErrorCode::Cancelled) << most;
        EXPECT_TRUE(QDir(folder).isEmpty(QDir::Files)) << most;
    }
    EXPECT_GE(asked, 2); // while it is copied and while the copy is checked
    EXPECT_EQ(copies(book.path(), {}, {folder}).size(), 1U);
}

TEST(Backup, KilledAtAnyStepLeavesNoHalfCopyThatCounts)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    book.book.reset();
    book.store.reset();
    const QString folder = copiesOf(book);
    int step = 0;
    for (bool killed = true; killed; ++step) {
        const pid_t child = ::fork();
        if (child == 0) {
            int count = 0;
            (void)backUp(book.path(), folder, day(2026, 9, 1), [&](const char*) {
                if (count++ == step) {
                    ::kill(::getpid(), SIGKILL);
                }
            });
            ::_exit(0);
        }
        int status = 0;
        ::waitpid(child, &status, 0);
        killed = WIFSIGNALED(status);
        for (const Copy& copy : copies(book.path(), {}, {folder})) {
            EXPECT_EQ(copy.state, CopyState::Sound);
            EXPECT_EQ(TempBook(copy.path).text(), kStart) << step;
        }
    }
    EXPECT_GT(step, 3);
    EXPECT_EQ(TempBook(book.path()).text(), kStart);
}
