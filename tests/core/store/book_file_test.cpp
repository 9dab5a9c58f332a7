// A book as a file: what is none, who made it, what becomes of its log, and where it went.
#include "core/store/book_file.h"
#include "core/store/integrity.h"
#include "core/store/journal_mode.h"
#include "tests/core/store/temp_book.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <thread>

#ifdef Q_OS_UNIX
#include <sys/stat.h>
#endif

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;
using chemistry::Millilitres;

namespace
{

ledger::When at(int day) { return {std::chrono::sys_days(std::chrono::year(2026) / 8 / day), {}}; }

std::string whyNot(const QString& path, Access access = Access::Create)
{
    const auto opened = SqlStore::open(path, {.access = access});
    return opened ? "opened" : opened.error().text;
}

void write(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(bytes), bytes.size());
}

void let(TempBook& book)
{
    book.book.reset();
    book.store.reset();
}

} // namespace

TEST(BookFile, SaysWhatIsNoBook)
{
    const TempBook book;
    EXPECT_EQ(whyNot(""), "no name");
    EXPECT_EQ(whyNot(book.inFolder("")), "folder");
    EXPECT_EQ(whyNot(book.inFolder("missing"), Access::Write), "missing");
    QFile::link(book.inFolder("nowhere"), book.inFolder("link"));
    EXPECT_EQ(whyNot(book.inFolder("link")), "dangling link");
    EXPECT_TRUE(QFileInfo(book.inFolder("link")).isSymLink()) << "it is left as it is";
    EXPECT_FALSE(QFile::exists(book.inFolder("nowhere")));
#ifdef Q_OS_UNIX
    ASSERT_EQ(::mkfifo(QFile::encodeName(book.inFolder("pipe")).constData(), 0600), 0);
    EXPECT_EQ(whyNot(book.inFolder("pipe")), "not a file");
#endif
}

TEST(BookFile, ALinkBesideALiveLogReadsWhatTheLogHolds)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QString link = QDir(book.inFolder("")).filePath("other/link.ullage");
    ASSERT_TRUE(QDir().mkpath(QFileInfo(link).absolutePath()));
    ASSERT_TRUE(QFile::link(book.path(), link));
    const auto store = SqlStore::open(link, {.access = Access::Read});
    ASSERT_TRUE(store);
    EXPECT_EQ(*(*store)->lastEntry(), *book.store->lastEntry());
    EXPECT_EQ((*store)->path(), book.path());
}

TEST(BookFile, ALogWithoutItsBookIsLeftAlone)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QString lone = book.inFolder("lone.ullage");
    ASSERT_TRUE(QFile::copy(book.path() + "-wal", lone + "-wal"));
    const auto size = QFileInfo(lone + "-wal").size();
    ASSERT_GT(size, 0);
    for (const bool empty : {false, true}) {
        if (empty) {
            write(lone, "");
        }
        EXPECT_TRUE(inspect(lone)->alone);
        for (const Access access : {Access::Read, Access::Write, Access::Create}) {
            EXPECT_EQ(whyNot(lone, access), "log alone");
        }
        EXPECT_EQ(QFileInfo(lone + "-wal").size(), size);
    }
}

TEST(BookFile, ManyMakeOneBookAtOnce)
{
    constexpr int kMakers = 8;
    for (int round = 0; round < 5; ++round) {
        TempBook folder;
        const QString path = folder.inFolder("new.ullage");
        std::atomic<int> made{0};
        std::vector<std::thread> makers;
        for (int i = 0; i < kMakers; ++i) {
            makers.emplace_back([&] {
                const auto store = SqlStore::open(path, {.access = Access::Create});
                EXPECT_TRUE(store) << store.error().text;
                made += store && (*store)->outcome() == SchemaOutcome::Created ? 1 : 0;
            });
        }
        for (auto& maker : makers) {
            maker.join();
        }
        EXPECT_EQ(made, 1);
        TempBook book(path);
        EXPECT_TRUE(book.import(kStart));
    }
}

TEST(BookFile, OnlyItsMakerTakesAnUnusedBookAwayAgain)
{
    TempBook folder;
    const QString path = folder.inFolder("new.ullage");
    const auto open = [&] { return std::move(*SqlStore::open(path, {.access = Access::Create})); };
    auto maker = open();
    EXPECT_FALSE(SqlStore::takeAway(open())) << "found it there";
    EXPECT_TRUE(QFile::exists(path));
    EXPECT_TRUE(SqlStore::takeAway(std::move(maker)));
    EXPECT_EQ(QDir(folder.inFolder("")).entryList({"new*"}, QDir::Files), QStringList());

    maker = open();
    TempBook other(path);
    EXPECT_FALSE(SqlStore::takeAway(std::move(maker))) << "somebody else has it open";
    ASSERT_TRUE(other.import(kStart));
    EXPECT_EQ(other.text(), kStart);
    let(other);
    QFile::remove(path);

    maker = open();
    {
        TempBook another(path);
        ASSERT_TRUE(another.import(kStart));
    }
    EXPECT_FALSE(SqlStore::takeAway(std::move(maker))) << "somebody entered something";
    EXPECT_EQ(TempBook(path).text(), kStart);
}

TEST(BookFile, TheFileAloneIsTheBookOnceItsLogIsFolded)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    ASSERT_GT(QFileInfo(book.path() + "-wal").size(), 0);
    EXPECT_EQ(book.store->foldLog(), true);
    EXPECT_EQ(QFileInfo(book.path() + "-wal").size(), 0);
    const QString copy = book.inFolder("copy.ullage");
    const auto reader = SqlStore::open(book.path(), {.access = Access::Read});
    ASSERT_TRUE((*reader)->connection().run("BEGIN"));
    ASSERT_TRUE((*reader)->lastEntry());
    ASSERT_TRUE(book.book->mix({"mq", "b1", Millilitres(500), "Dev"}, at(1)));
    EXPECT_EQ(book.store->foldLog(), false) << "a reader still needs it; nobody waits";
    ASSERT_TRUE((*reader)->connection().run("COMMIT"));
    EXPECT_EQ(book.store->foldLog(), true);
    let(book);
    ASSERT_TRUE(QFile::copy(book.path(), copy));
    EXPECT_EQ(TempBook(copy).store->batches(testNow(), true)->size(), 2U);
}

TEST(BookFile, NothingIsEnteredIntoABookThatIsNoLongerInItsPlace)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    ASSERT_TRUE(*book.store->foldLog());
    const auto draw = [&] { return book.book->drawOff("dev-1", Millilitres(1), "", at(1)); };
    const auto expectMoved = [&](const char* how) {
        const auto refused = draw();
        ASSERT_FALSE(refused) << how;
        EXPECT_EQ(refused.error().code, ErrorCode::BookMoved);
        EXPECT_EQ(refused.error().text, how);
    };
    const QString elsewhere = book.inFolder("elsewhere.ullage");
    ASSERT_TRUE(QFile::rename(book.path(), elsewhere));
    expectMoved("missing");
    write(book.path(), "another");
    expectMoved("replaced");
    ASSERT_TRUE(QFile::remove(book.path()));
    ASSERT_TRUE(QFile::rename(elsewhere, book.path()));
    EXPECT_TRUE(draw()) << "back in its place it is the book again";

    ASSERT_TRUE(QFile::rename(book.path() + "-wal", elsewhere));
    expectMoved("log");
    ASSERT_TRUE(QFile::rename(elsewhere, book.path() + "-wal"));
    EXPECT_TRUE(draw());
    EXPECT_EQ(book.book->events("dev-1")->size(), 4U);
}

// A long transaction looks again at its end.
TEST(BookFile, NothingIsConfirmedIntoABookThatWasMovedMeanwhile)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QByteArray before = book.text();
    auto import = book.book->import();
    ASSERT_TRUE(import);
    ASSERT_TRUE(QFile::rename(book.path(), book.inFolder("elsewhere")));
    EXPECT_EQ((*import)->finish().error().code, ErrorCode::BookMoved);
    import->reset();
    ASSERT_TRUE(QFile::rename(book.inFolder("elsewhere"), book.path()));
    EXPECT_EQ(book.text(), before);
}

TEST(BookFile, OnANetworkItWorksWithoutTheLogAndKeepsToThat)
{
    TempBook folder;
    const QString path = folder.inFolder("shared.ullage");
    const auto open = [&](Volume volume, Access access = Access::Create) {
        auto store = SqlStore::open(
            path, {.access = access, .volume = [volume](const QString&) { return volume; }});
        EXPECT_TRUE(store) << store.error().text;
        return std::move(*store);
    };
    const auto mode = [](const std::unique_ptr<SqlStore>& store) {
        return store->connection().text("PRAGMA journal_mode").value_or("?");
    };
    EXPECT_EQ(mode(open(Volume::Local)), "wal");
    EXPECT_EQ(mode(open(Volume::Network, Access::Read)), "truncate") << "reading settles it too";
    EXPECT_EQ(mode(open(Volume::Network)), "truncate");
    EXPECT_EQ(mode(open(Volume::Local)), "truncate") << "others may reach it over the network";
    const auto one = open(Volume::Local);
    EXPECT_EQ(*one->connection().number("PRAGMA synchronous"), 2);
    TempBook book(path);
    ASSERT_TRUE(book.import(kStart));
    EXPECT_EQ(*one->lastEntry(), 4);
    EXPECT_FALSE(QFile::exists(path + "-wal"));
}

TEST(BookFile, ADamagedPageIsFoundByTheQuickCheck)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    EXPECT_TRUE(book.store->quickCheck());
    let(book);
    const auto root = [&] {
        TempBook again(book.path());
        return *again.store->connection().number(
            "SELECT rootpage FROM sqlite_schema WHERE name = 'entry_of_batch'");
    }();
    QFile file(book.path());
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    ASSERT_TRUE(file.seek((root - 1) * 4096));
    file.write(QByteArray(4096, '\x55'));
    file.close();
    const auto store = SqlStore::open(book.path());
    ASSERT_TRUE(store);
    const auto found = (*store)->quickCheck();
    ASSERT_FALSE(found);
    EXPECT_EQ(found.error().code, ErrorCode::BookDamaged);
    EXPECT_FALSE(found.error().text.empty());
}
