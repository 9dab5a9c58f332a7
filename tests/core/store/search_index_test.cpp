// The cache beside a book: whatever is wrong with it, a search finds what it found before.
#include "core/store/search_file.h"
#include "tests/core/store/search_kit.h"

#include <QDir>
#include <QFile>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

using Ids = SearchBook::Ids;
using Outcome = SearchKeeper::Outcome;

QByteArray journal(int notes)
{
    return notesIn(
        notes, [](int i) { return "needle " + QString::number(i); },
        [](int) { return QString("2026-06-02T10:00:00Z"); });
}

class SearchIndexTest : public ::testing::Test
{
protected:
    SearchIndexTest() : book(journal(20)) {}

    QString file() { return searchIndexFile(*book.book.store, book.folder()); }
    // By whatever index there is.
    std::size_t found()
    {
        const auto by = book.index();
        return book.find(SearchBook::looking("needle"), by.get()).size();
    }
    void overwrite(const QByteArray& with, qint64 at)
    {
        QFile one(file());
        ASSERT_TRUE(one.open(QIODevice::ReadWrite));
        ASSERT_TRUE(one.seek(at));
        one.write(with);
    }
    std::unique_ptr<Connection> other()
    {
        auto opened = Connection::open(file(), FileMode::Write, 0);
        EXPECT_TRUE(opened);
        return std::move(*opened);
    }

    SearchBook book;
};

} // namespace

TEST_F(SearchIndexTest, IsMadeBesideNoBookAndFoundAgain)
{
    EXPECT_EQ(book.index(), nullptr);
    EXPECT_EQ(found(), 20u);
    EXPECT_EQ(book.keep(), Outcome::UpToDate);
    EXPECT_TRUE(QFile::exists(file()));
    EXPECT_NE(QFileInfo(file()).path(), QFileInfo(book.book.path()).path());
    const auto by = book.index();
    ASSERT_NE(by, nullptr);
    EXPECT_EQ(by->upTo(*book.book.store), *book.book.store->lastEntry());
    EXPECT_EQ(found(), 20u);
}

TEST_F(SearchIndexTest, GoesOnFromTheLastEntrySeen)
{
    ASSERT_EQ(book.keep(), Outcome::UpToDate);
    const auto before = book.index()->upTo(*book.book.store);
    ASSERT_TRUE(book.book.import(kHead + eventLine("late", "b0", "2026-06-03T10:00:00Z", "noted",
                                                   {{"text", "needle of late"}})));
    EXPECT_EQ(found(), 21u) << "what it does not know yet is looked at too";
    std::int64_t told = 0;
    EXPECT_EQ(book.keep([&](const Progress& so) {
        told = so.done;
        return true;
    }),
              Outcome::UpToDate);
    EXPECT_EQ(told, *before + 1);
    EXPECT_EQ(found(), 21u);
}

TEST_F(SearchIndexTest, StopsAndGoesOnThere)
{
    SearchBook big(journal(5000));
    int steps = 0;
    const auto once = [&](const Progress&) { return ++steps > 1; };
    EXPECT_EQ(big.keep(once), Outcome::Stopped);
    const auto by = big.index();
    ASSERT_NE(by, nullptr);
    const auto reached = by->upTo(*big.book.store);
    ASSERT_TRUE(reached);
    EXPECT_GT(*reached, 0);
    EXPECT_LT(*reached, *big.book.store->lastEntry());
    EXPECT_EQ(big.both(SearchBook::looking("needle"), 500).size(), 5000u) << "on foot, then";
    EXPECT_EQ(big.keep(), Outcome::UpToDate);
    EXPECT_EQ(big.both(SearchBook::looking("needle 4999"), 500).size(), 1u);
}

TEST_F(SearchIndexTest, OfAnotherCourseOfTheBookIsLeftForANewOne)
{
    ASSERT_EQ(book.keep(), Outcome::UpToDate);
    const QString old = file();
    // As after a restore: the same book without its last entry, and another in its place.
    const auto cache = other();
    ASSERT_TRUE(cache->run("UPDATE standing SET value = 'event another' WHERE key = 'mark'"));
    EXPECT_FALSE(book.index()->upTo(*book.book.store));
    EXPECT_EQ(found(), 20u);
    EXPECT_EQ(book.keep(), Outcome::UpToDate);
    EXPECT_NE(file(), old);
    EXPECT_TRUE(book.index()->upTo(*book.book.store));
    EXPECT_EQ(found(), 20u);
}

// The same entries, but for a word of one of them: only the chain differs.
TEST_F(SearchIndexTest, OfABookThatDiffersInOneWordIsMadeAnew)
{
    const auto at = [](int) { return QStringLiteral("2020-06-01T00:00:00Z"); };
    const auto notes = [&](const char* third) {
        return notesIn(
            20, [&](int i) { return QString::fromLatin1(i == 2 ? third : "as ever"); }, at);
    };
    SearchBook one(notes("needle"));
    SearchBook two(notes("thread"));
    const auto last = one.book.store->lastEntry();
    ASSERT_TRUE(last);
    ASSERT_EQ(*last, *two.book.store->lastEntry());
    EXPECT_NE(*searchMark(*one.book.store, *last), *searchMark(*two.book.store, *last));
    EXPECT_EQ(searchMark(*one.book.store, *last)->size(), 64);
}

TEST_F(SearchIndexTest, ThatIsNoDatabaseIsLeftForANewOne)
{
    ASSERT_EQ(book.keep(), Outcome::UpToDate);
    overwrite("this is no database at all", 0);
    EXPECT_EQ(found(), 20u);
    EXPECT_EQ(book.keep(), Outcome::UpToDate);
    EXPECT_NE(book.index(), nullptr);
    EXPECT_EQ(found(), 20u);
}

// Wherever it is hit, a search finds all: by the index, or having given it up.
TEST_F(SearchIndexTest, DamagedPagesAreNoticedOrDoNoHarm)
{
    ASSERT_EQ(book.keep(), Outcome::UpToDate);
    const qint64 size = QFileInfo(file()).size();
    for (qint64 page = 4096; page < size; page += 4096) {
        overwrite(QByteArray(4096, '\xff'), page);
        EXPECT_EQ(found(), 20u) << page;
        const auto outcome = book.keep();
        EXPECT_TRUE(outcome == Outcome::UpToDate || outcome == Outcome::Failed);
        EXPECT_EQ(found(), 20u) << page;
    }
}

TEST_F(SearchIndexTest, TruncatedOrGoneIsMadeAgain)
{
    ASSERT_EQ(book.keep(), Outcome::UpToDate);
    ASSERT_TRUE(QFile::resize(file(), 5000));
    EXPECT_EQ(found(), 20u);
    EXPECT_EQ(book.keep(), Outcome::UpToDate);
    EXPECT_EQ(found(), 20u);
    ASSERT_TRUE(QDir(book.folder()).removeRecursively());
    EXPECT_EQ(found(), 20u);
    EXPECT_EQ(book.keep(), Outcome::UpToDate);
    EXPECT_EQ(found(), 20u);
}

TEST_F(SearchIndexTest, OfANewerProgramStaysAsItIs)
{
    ASSERT_EQ(book.keep(), Outcome::UpToDate);
    ASSERT_TRUE(other()->run("PRAGMA user_version = 99"));
    EXPECT_EQ(book.index(), nullptr);
    EXPECT_EQ(found(), 20u);
    EXPECT_EQ(book.keep(), Outcome::Failed);
    EXPECT_EQ(other()->number("PRAGMA user_version").value_or(0), 99);
}

TEST_F(SearchIndexTest, ThatSomebodyElseWritesIsReadMeanwhile)
{
    ASSERT_EQ(book.keep(), Outcome::UpToDate);
    const auto writer = other();
    ASSERT_TRUE(writer->run("BEGIN IMMEDIATE"));
    ASSERT_TRUE(writer->run("DELETE FROM doc"));
    EXPECT_EQ(found(), 20u);
    EXPECT_EQ(book.keep(), Outcome::Busy);
    ASSERT_TRUE(writer->run("ROLLBACK"));
    EXPECT_EQ(book.keep(), Outcome::UpToDate);
}

TEST_F(SearchIndexTest, WhereNothingCanBeWrittenThereIsNone)
{
    QFile inTheWay(book.folder());
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    EXPECT_EQ(book.keep(), Outcome::Failed);
    EXPECT_EQ(book.index(), nullptr);
    EXPECT_EQ(found(), 20u);
}

// Two windows take turns; neither undoes what the other did.
TEST_F(SearchIndexTest, TwoAtItShareOne)
{
    SearchBook big(journal(9000));
    auto second = SqlStore::open(big.book.path());
    ASSERT_TRUE(second);
    int steps = 0;
    const auto other = [&](const Progress&) {
        if (++steps == 1) {
            const auto outcome = SearchKeeper::catchUp(**second, big.folder(),
                                                       [](const Progress&) { return false; });
            EXPECT_EQ(outcome.value_or(Outcome::Failed), Outcome::Stopped);
        }
        return true;
    };
    EXPECT_EQ(big.keep(other), Outcome::UpToDate);
    EXPECT_EQ(steps, 4) << "of five, one was the other's";
    EXPECT_EQ(big.both(SearchBook::looking("needle"), 1000).size(), 9000u);
    EXPECT_EQ(big.both(SearchBook::looking("needle 8999"), 1000).size(), 1u);
}
