// Step 5: a book of before gets its hashes, after it was checked.
#include "core/store/book_schema.h"
#include "core/store/integrity.h"
#include "tests/core/store/damaged_book.h"
#include "tests/core/store/old_book.h"

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

using Said = std::vector<std::string>;

const QByteArray kOld = kStart + R"({"type":"packet","id":"p","solution":"mq","makes_ml":1000})"
                                 "\n"
                                 R"({"type":"film","id":"f","run":"run-1"})"
                                 "\n"
                                 R"({"type":"event","id":"e3","batch":"dev-1","kind":"noted",)"
                                 R"("at":"2026-06-04T10:00:00Z","text":"clear","by":"Kim"})"
                                 "\n";
const QString kBatch = QStringLiteral("('dev-1', 'Dev 1', 'mq', 1780308000000, NULL)");

class ChainStep : public ::testing::Test
{
protected:
    QString make(int version, const QByteArray& journal = kOld)
    {
        const QString path = m_folder.filePath(QStringLiteral("step-%1.ullage").arg(++m_count));
        makeOldBook(path, version, journal, {kBatch});
        return path;
    }
    // Changes an old book as a bad disk would.
    static void spoil(const QString& path, const QString& sql)
    {
        const auto connection = Connection::open(path, FileMode::Write, 5000);
        ASSERT_TRUE(connection);
        ASSERT_TRUE((*connection)->run("DROP TRIGGER entry_stays"));
        const auto done = (*connection)->run(sql);
        ASSERT_TRUE(done) << done.error().text;
        ASSERT_TRUE((*connection)
                        ->run("CREATE TRIGGER entry_stays BEFORE UPDATE ON entry\nBEGIN\n    "
                              "SELECT RAISE(ABORT, 'an entry is never changed');\nEND"));
    }
    QTemporaryDir m_folder;
    int m_count = 0;
};

} // namespace

TEST_F(ChainStep, ABookOfAnyStepIsAsIfMadeToday)
{
    TempBook today;
    ASSERT_TRUE(today.import(kOld));
    const auto head = LastEntries(today.store->connection()).read();
    ASSERT_TRUE(head);
    for (int version = 1; version <= 4; ++version) {
        TempBook book(make(version));
        EXPECT_EQ(book.text(), kOld) << version;
        const auto check = checkBook(*book.store);
        ASSERT_TRUE(check) << version;
        EXPECT_EQ(said(check->findings), Said{}) << version;
        EXPECT_EQ(check->entries, 7) << version;
        EXPECT_EQ(*LastEntries(book.store->connection()).read(), *head) << version;
        const auto id = book.store->note(kBookIdNote);
        EXPECT_TRUE(id && *id && (*id)->size() == 36) << version;
        EXPECT_FALSE(*book.store->note(kFaultyNote)) << version;
        const auto schema = compareSchema(book.store->connection());
        ASSERT_TRUE(schema);
        EXPECT_EQ(said(*schema), Said{}) << version;
        EXPECT_TRUE(book.book->record("dev-1", ledger::Noted{"on"}, {testNow(), {}})) << version;
        EXPECT_EQ(said(checkBook(*book.store)->findings), Said{}) << version;
    }
}

TEST_F(ChainStep, WhatIsFaultyIsListedAndNeverPassesForSound)
{
    struct Case {
        const char* sql;
        const char* listed;
    };
    const Case cases[] = {
        {"UPDATE entry SET body = replace(body, '\"used_ml\":600', '\"used_ml\":\"x\"') "
         "WHERE id = 'e2'",
         "4 event e2"},
        {"UPDATE entry SET body = '{broken}' WHERE id = 'e3'", "7 event e3"},
        {"UPDATE entry SET body = replace(body, 'clear', 'cle' || char(92) || 'q') "
         "WHERE id = 'e3'",
         "7 event e3"},
        {"UPDATE entry SET run = 'run-2' WHERE id = 'e2'", "4 event e2"},
        {"UPDATE entry SET body = replace(body, '1030', '500') WHERE id = 'b1'", "3 event e1"},
    };
    for (const Case& one : cases) {
        const QString path = make(4);
        spoil(path, one.sql);
        TempBook book(path);
        const auto note = book.store->note(kFaultyNote);
        ASSERT_TRUE(note && *note) << one.sql;
        EXPECT_TRUE(("\n" + **note).contains('\n' + QByteArray(one.listed) + '\n'))
            << one.sql << ": " << (*note)->constData();
        const auto check = checkBook(*book.store);
        ASSERT_TRUE(check) << one.sql;
        const auto all = said(check->findings);
        EXPECT_NE(std::find(all.begin(), all.end(), std::string("before ") + one.listed), all.end())
            << one.sql;
    }
}

// What is the matter with a batch but with none of its lines is listed too.
TEST_F(ChainStep, AFaultyBatchIsListed)
{
    const QString path = make(3);
    spoil(path, "UPDATE batch SET ended_ms = 5");
    TempBook book(path);
    EXPECT_EQ(**book.store->note(kFaultyNote), "0  dev-1\n");
    EXPECT_FALSE(checkBook(*book.store)->findings.empty());
}

// A line that was taken out long ago leaves a gap in the numbers and nothing else.
TEST_F(ChainStep, AnOldGapIsNoNewLoss)
{
    const QString path = make(4);
    spoil(path, "UPDATE entry SET seq = seq + 10 WHERE seq >= 5");
    TempBook book(path);
    EXPECT_EQ(said(checkBook(*book.store)->findings), Said{});
}

TEST_F(ChainStep, AStepMayCallAFunctionOfOurs)
{
    EXPECT_EQ(splitStatements("-- why\n-- call begin_chain\n-- next\nSELECT 1"),
              (QStringList{"-- call begin_chain", "SELECT 1"}));
    EXPECT_NE(stepFunction(u"begin_chain"), nullptr);
    EXPECT_EQ(stepFunction(u"something else"), nullptr);
    TempBook book;
    close(book);
    StoreOptions options;
    options.steps.push_back({options.steps.back().version + 1, "-- call something else"});
    const auto failed = SqlStore::open(book.path(), options);
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().code, ErrorCode::StoreFailed);
}
