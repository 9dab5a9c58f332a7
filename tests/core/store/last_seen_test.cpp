// What stands outside the book tells what the book itself cannot.
#include "core/store/integrity.h"
#include "core/store/last_seen.h"
#include "tests/core/store/damaged_book.h"

#include <QDir>

#include <atomic>
#include <thread>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

using Said = std::vector<std::string>;

class LastSeenTest : public ::testing::Test
{
protected:
    LastSeenTest() { EXPECT_TRUE(m_book.import(kStart)); }

    // Opens the book at `path` with the memory of what was seen.
    std::unique_ptr<SqlStore> look(const QString& path)
    {
        StoreOptions options;
        options.lastSeen = m_folder.filePath("seen");
        auto opened = SqlStore::open(path, options);
        EXPECT_TRUE(opened) << opened.error().text;
        return opened ? std::move(*opened) : nullptr;
    }
    Said seen(const QString& path) { return said(look(path)->faults()); }

    void note(SqlStore& store, const std::string& text)
    {
        auto book = ledger::Book::open(store, testNow, [&] { return "n-" + text; });
        ASSERT_TRUE(book);
        const auto done = (*book)->record("dev-1", ledger::Noted{text}, {testNow(), {}});
        ASSERT_TRUE(done) << done.error().text;
    }

    QTemporaryDir m_folder;
    TempBook m_book;
};

} // namespace

// What others enter between two looks at the book is no fault of the book.
TEST_F(LastSeenTest, OpeningBesideAWriterRaisesNoAlarm)
{
    close(m_book);
    std::atomic<bool> more{true};
    std::thread writer([&] {
        const auto store = look(m_book.path());
        for (int i = 0; more; ++i) {
            note(*store, std::to_string(i));
        }
    });
    for (int i = 0; i < 150; ++i) {
        EXPECT_EQ(seen(m_book.path()), Said{}) << i;
    }
    more = false;
    writer.join();
}

TEST_F(LastSeenTest, ALostLogIsSaid)
{
    close(m_book);
    EXPECT_EQ(seen(m_book.path()), Said{});
    const QByteArray older = contents(m_book.path());
    note(*look(m_book.path()), "one");
    const QByteArray newer = contents(m_book.path());
    write(m_book.path(), older); // as if the log with what was noted had gone
    auto store = look(m_book.path());
    ASSERT_EQ(said(store->faults()), Said{"lost"});
    EXPECT_EQ(store->faults().front().number, 4);
    EXPECT_EQ(store->faults().front().high, 5);
    EXPECT_FALSE(store->begin());
    const auto check = checkBook(*store);
    ASSERT_TRUE(check);
    EXPECT_EQ(said(check->findings), Said{"lost"});
    store.reset();
    write(m_book.path(), newer);
    EXPECT_EQ(seen(m_book.path()), Said{});
}

TEST_F(LastSeenTest, AnEmptiedOrMissingLogIsSaid)
{
    close(m_book);
    for (const bool emptied : {false, true}) {
        auto store = look(m_book.path());
        ASSERT_TRUE(store->connection().run("PRAGMA wal_autocheckpoint = 0"));
        note(*store, emptied ? "two" : "one");
        const QByteArray file = contents(m_book.path());
        const QByteArray log = contents(m_book.path() + "-wal");
        ASSERT_GT(log.size(), 0);
        store.reset();
        // What a crash leaves, with its log, and then without.
        write(m_book.path(), file);
        write(m_book.path() + "-wal", log);
        EXPECT_EQ(seen(m_book.path()), Said{});
        write(m_book.path(), file);
        QFile::remove(m_book.path() + "-wal");
        QFile::remove(m_book.path() + "-shm");
        if (emptied) {
            write(m_book.path() + "-wal", {});
        }
        EXPECT_EQ(seen(m_book.path()), Said{"lost"});
        write(m_book.path(), file);
        write(m_book.path() + "-wal", log);
        EXPECT_EQ(seen(m_book.path()), Said{});
    }
}

TEST_F(LastSeenTest, AnotherHistoryIsSaid)
{
    close(m_book);
    const QByteArray older = contents(m_book.path());
    note(*look(m_book.path()), "one");
    write(m_book.path(), older);
    {
        // On another machine, which has not seen the first note.
        TempBook elsewhere(m_book.path());
        ASSERT_TRUE(elsewhere.book->record("dev-1", ledger::Noted{"a"}, {testNow(), {}}));
        ASSERT_TRUE(elsewhere.book->record("dev-1", ledger::Noted{"b"}, {testNow(), {}}));
    }
    EXPECT_EQ(seen(m_book.path()), Said{"forked 5 event id-1"});
}

TEST_F(LastSeenTest, ACopyIsABookOfItsOwn)
{
    close(m_book);
    const QString copy = m_folder.filePath("copy.ullage");
    ASSERT_TRUE(QFile::copy(m_book.path(), copy));
    note(*look(m_book.path()), "one");
    EXPECT_EQ(seen(copy), Said{});
    note(*look(copy), "other");
    EXPECT_EQ(seen(copy), Said{});
    EXPECT_EQ(seen(m_book.path()), Said{});
}

TEST_F(LastSeenTest, ABookThatWasMovedIsStillKnown)
{
    close(m_book);
    const QByteArray older = contents(m_book.path());
    note(*look(m_book.path()), "one");
    const QString moved = m_folder.filePath("moved.ullage");
    write(moved, older);
    QFile::remove(m_book.path());
    EXPECT_EQ(seen(moved), Said{"lost"});
}

TEST_F(LastSeenTest, WhatTheUserTakesAsItIsIsNotSaidAgain)
{
    close(m_book);
    const QByteArray older = contents(m_book.path());
    note(*look(m_book.path()), "one");
    write(m_book.path(), older);
    auto store = look(m_book.path());
    EXPECT_EQ(said(store->faults()), Said{"lost"});
    ASSERT_TRUE(store->acceptAsSeen());
    EXPECT_EQ(said(store->faults()), Said{});
    note(*store, "again");
    EXPECT_EQ(seen(m_book.path()), Said{});
}

TEST_F(LastSeenTest, IsAnAidAndNoCondition)
{
    close(m_book);
    note(*look(m_book.path()), "one");
    QDir folder(m_folder.filePath("seen"));
    ASSERT_FALSE(folder.entryList(QDir::Files).isEmpty());
    for (const QString& name : folder.entryList(QDir::Files)) {
        write(folder.filePath(name), "nonsense");
    }
    EXPECT_EQ(seen(m_book.path()), Said{});
    ASSERT_TRUE(folder.removeRecursively());
    write(m_folder.filePath("seen"), "a file where the folder should be");
    note(*look(m_book.path()), "two");
    EXPECT_EQ(seen(m_book.path()), Said{});
}
