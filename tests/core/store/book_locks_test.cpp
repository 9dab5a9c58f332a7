// A book that is open keeps its locks, whatever else this process does with it; and the table of
// locks tells who else has it.
#include "core/store/backup.h"
#include "core/store/book_file.h"
#include "core/store/integrity.h"
#include "tests/core/store/held_locks.h"
#include "tests/core/store/temp_book.h"

#include <QDir>
#include <QFile>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

#ifdef Q_OS_LINUX

TEST(BookLocks, TheTestSeesWhatAnotherHandleDoes)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    ASSERT_FALSE(ownLocks(book.path()).empty());
    QFile file(book.path());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    file.close();
    const auto left = ownLocks(book.path());
    EXPECT_TRUE(std::none_of(left.begin(), left.end(), [&](const HeldLock& lock) {
        return lock.file.inode == identityOf(book.path())->inode;
    })) << "this is the fault that the other tests look for";
}

TEST(BookLocks, StayWhateverTheStoreDoesBesides)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const auto held = ownLocks(book.path());
    ASSERT_FALSE(held.empty());
    const auto stays = [&](const char* what) { EXPECT_EQ(ownLocks(book.path()), held) << what; };

    EXPECT_EQ(inspect(book.path())->kind, FileKind::Book);
    stays("looking at it");
    for (const Access access : {Access::Read, Access::Write, Access::Create}) {
        EXPECT_TRUE(SqlStore::open(book.path(), {.access = access}));
        stays("opening it again");
    }
    QFile::link(book.path(), book.inFolder("link"));
    EXPECT_TRUE(SqlStore::open(book.inFolder("link"), {.access = Access::Read}));
    stays("opening it by a link");
    EXPECT_TRUE(copyVerified(book.store->connection(), book.inFolder("copy")));
    stays("copying it");
    ASSERT_TRUE(QDir().mkpath(book.inFolder("copies")));
    EXPECT_TRUE(backUp(book.path(), book.inFolder("copies"), testNow()));
    stays("backing it up");
    {
        const auto reader = SqlStore::open(book.path(), {.access = Access::Read});
        EXPECT_TRUE(checkBook(**reader));
    }
    stays("checking it");
    EXPECT_FALSE(book.text().isEmpty());
    EXPECT_TRUE(book.store->foldLog());
    stays("folding its log");
}

TEST(BookLocks, TellWhoElseHoldsTheBook)
{
    const TempBook book;
    const auto file = identityOf(book.path());
    const auto index = identityOf(book.path() + "-shm");
    ASSERT_TRUE(file && index);
    const auto line = [](const char* kind, qint64 process, const FileIdentity& of,
                         const char* bytes) {
        return QStringLiteral("7: POSIX  ADVISORY  %1 %2 %3:%4:%5 %6\n")
            .arg(QString::fromLatin1(kind))
            .arg(process)
            .arg(of.device >> 8, 2, 16, QChar(u'0'))
            .arg(of.device & 0xFF, 2, 16, QChar(u'0'))
            .arg(of.inode)
            .arg(QString::fromLatin1(bytes))
            .toLatin1();
    };
    const qint64 self = QCoreApplication::applicationPid();
    const QByteArray table = line("READ", self, *file, "1073741826 1073742335") +
                             line("READ", 999999998, *file, "1073741826 1073742335") +
                             line("READ", 999999997, {file->device, file->inode + 1}, "0 EOF") +
                             line("WRITE", 999999996, *index, "120 120") +
                             "8: -> POSIX  ADVISORY  WRITE 5 x\n" +
                             "9: FLOCK  ADVISORY  WRITE 999999995 fe:00:1 0 EOF\nnonsense\n";
    const auto read = [&] { return table; };
    EXPECT_EQ(othersHolding(book.path(), read), std::set<qint64>{999999998});
    EXPECT_EQ(writerOf(book.path(), read), "? (999999996)");
    EXPECT_EQ(othersHolding(book.path()), std::set<qint64>{}) << "nobody else has it";
    EXPECT_EQ(writerOf(book.path()), "");
    EXPECT_EQ(othersHolding(book.path(), [] { return QByteArray(); }), std::nullopt);
}

TEST(BookLocks, AFileIsKnownToBeOpenHereUnderEveryName)
{
    TempBook book;
    QFile::link(book.path(), book.inFolder("link"));
    EXPECT_TRUE(isOpenHere(book.path()));
    EXPECT_TRUE(isOpenHere(book.inFolder("link")));
    EXPECT_TRUE(isOpenHere(book.path() + "-wal"));
    EXPECT_TRUE(isOpenHere(book.path() + "-shm"));
    EXPECT_FALSE(isOpenHere(book.inFolder("other")));
    book.book.reset();
    book.store.reset();
    EXPECT_FALSE(isOpenHere(book.path()));
}

#endif
