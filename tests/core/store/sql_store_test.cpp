#include "core/store/book_file.h"
#include "core/store/integrity.h"
#include "tests/core/store/temp_book.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>

using namespace ullage;
using namespace ullage::ledger;
using namespace ullage::store;
using namespace ullage::store::testing;
using chemistry::Millilitres;

namespace
{

QByteArray bytesOf(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

void write(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(bytes), bytes.size());
}

std::unique_ptr<Connection> raw(const QString& path, FileMode mode = FileMode::Write)
{
    auto connection = Connection::open(path, mode, 100);
    EXPECT_TRUE(connection);
    return std::move(*connection);
}

When at(int day) { return {std::chrono::sys_days(std::chrono::year(2026) / 8 / day), {}}; }

} // namespace

TEST(SqlStore, SetsTheFileUpAsABook)
{
    TempBook book;
    Connection& connection = book.store->connection();
    EXPECT_EQ(book.store->outcome(), SchemaOutcome::Created);
    EXPECT_EQ(*connection.number("PRAGMA application_id"), kApplicationId);
    EXPECT_EQ(*connection.number("PRAGMA user_version"), schemaSteps().back().version);
    EXPECT_EQ(*connection.text("PRAGMA journal_mode"), "wal");
    EXPECT_EQ(*connection.number("PRAGMA synchronous"), 2);
    EXPECT_EQ(*connection.number("PRAGMA foreign_keys"), 1);
    EXPECT_EQ(*connection.number("PRAGMA recursive_triggers"), 1);
    EXPECT_EQ(*connection.number("SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND "
                                 "type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite%'"),
              0);
    book.open();
    EXPECT_EQ(book.store->outcome(), SchemaOutcome::Current);
}

TEST(SqlStore, NeverChangesRemovesOrReplacesWhatWasEntered)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QByteArray before = book.text();
    const auto connection = raw(book.path());
    for (const char* recursive : {"ON", "OFF"}) {
        ASSERT_TRUE(connection->run(QString("PRAGMA recursive_triggers = %1").arg(recursive)));
        for (const char* sql : {
                 "UPDATE entry SET body = '{}' WHERE seq = 1",
                 "UPDATE OR REPLACE entry SET id = 'b1' WHERE seq = 1",
                 "DELETE FROM entry",
                 "DELETE FROM entry WHERE seq = 2",
                 "INSERT OR REPLACE INTO entry (type, id, action, body) "
                 "VALUES ('solution', 'mq', 1, '{}')",
                 "REPLACE INTO entry (seq, type, id, action, body) "
                 "VALUES (1, 'solution', 'other', 1, '{}')",
                 "INSERT INTO entry (type, id, action, body) VALUES ('solution', 'mq', 1, '{}') "
                 "ON CONFLICT DO UPDATE SET body = '{}'",
                 "UPDATE action SET what = 'x'",
                 "DELETE FROM action",
                 "INSERT OR REPLACE INTO action (id, mode, what, subject) VALUES (1, 0, '', '')",
                 "INSERT INTO entry (type, id, action, body) VALUES ('recipe', 'r', 1, '{}')",
                 "INSERT INTO entry (type, id, action, body) VALUES ('vessel', '', 1, '{}')",
                 "INSERT INTO entry (type, id, action, body) VALUES ('vessel', 'v', 99, '{}')",
                 "INSERT INTO entry (type, id, action, body) VALUES ('event', 'v', 1, '{}')",
                 "INSERT INTO entry (type, id, action, body) VALUES ('vessel', 'v', 1, 'no')",
                 "INSERT INTO entry (type, id, action, kind, at_ms, body) "
                 "VALUES ('event', 'v', 1, 'opened', 'soon', '{}')",
             }) {
            const auto done = connection->run(QString::fromLatin1(sql));
            EXPECT_FALSE(done) << sql;
        }
    }
    EXPECT_EQ(book.text(), before);
}

TEST(SqlStore, RefusesWhatIsNoBook)
{
    TempBook book; // for its folder
    const auto refused = [](const QString& path, Access access) {
        const auto opened = SqlStore::open(path, {.access = access});
        return opened ? std::optional<ErrorCode>() : std::optional(opened.error().code);
    };
    const QString missing = book.inFolder("missing");
    const QString folder = book.inFolder("");
    const QString text = book.inFolder("text");
    const QString empty = book.inFolder("empty");
    const QString header = book.inFolder("header");
    const QString other = book.inFolder("other");
    write(text, QByteArray(5000, 'x'));
    write(empty, "");
    write(header, bytesOf(book.path()).first(40));
    ASSERT_TRUE(raw(other, FileMode::Create)->run("CREATE TABLE t (a)"));
    for (const Access access : {Access::Read, Access::Write, Access::Create}) {
        EXPECT_EQ(refused(folder, access), ErrorCode::NotABook);
        EXPECT_EQ(refused(text, access), ErrorCode::NotABook);
        EXPECT_EQ(refused(header, access), ErrorCode::NotABook);
        EXPECT_EQ(refused(other, access), ErrorCode::NotABook);
    }
    EXPECT_EQ(refused(missing, Access::Read), ErrorCode::NotABook);
    EXPECT_EQ(refused(missing, Access::Write), ErrorCode::NotABook);
    EXPECT_EQ(refused(empty, Access::Write), ErrorCode::NotABook);
    EXPECT_FALSE(QFile::exists(missing));
    EXPECT_EQ(bytesOf(text), QByteArray(5000, 'x'));
    EXPECT_EQ(refused(empty, Access::Create), std::nullopt);
    EXPECT_EQ(refused(book.inFolder("no/such/folder"), Access::Create), ErrorCode::StoreFailed);
}

TEST(SqlStore, OpensPathsWithEveryKindOfLetter)
{
    TempBook folder;
    for (const char* name : {"a b.ullage", "50%.ullage", "what?.ullage", "n#1.ullage", "Süd.ullage",
                             "it's.ullage", "a&b;c.ullage", "%20.ullage"}) {
        const QString path = folder.inFolder(QString::fromUtf8(name));
        {
            TempBook book(path);
            ASSERT_TRUE(book.import(kStart));
        }
        EXPECT_TRUE(QFile::exists(path)) << name;
        EXPECT_EQ(TempBook(path).text(), kStart) << name;
    }
}

TEST(SqlStore, LeavesANewerBookUntouchedByteForByte)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QString path = book.path();
    for (const bool withLog : {false, true}) {
        book.book.reset();
        book.store.reset();
        auto newer = raw(path);
        ASSERT_TRUE(newer->run("PRAGMA user_version = 7"));
        if (!withLog) {
            newer.reset(); // folds the log into the file
        }
        const QByteArray before = bytesOf(path);
        for (const Access access : {Access::Read, Access::Write, Access::Create}) {
            const auto refused = SqlStore::open(path, {.access = access});
            ASSERT_FALSE(refused);
            EXPECT_EQ(refused.error().code, ErrorCode::NewerBook);
            EXPECT_EQ(refused.error().number, 7);
        }
        EXPECT_EQ(bytesOf(path), before);
        newer = raw(path);
        ASSERT_TRUE(newer->run(
            QStringLiteral("PRAGMA user_version = %1").arg(schemaSteps().back().version)));
        newer.reset();
        book.open();
    }
}

TEST(SqlStore, ReadsWithoutLeavingAnythingBehind)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QString path = book.path();
    book.book.reset();
    book.store.reset();
    const QByteArray before = bytesOf(path);
    {
        auto store = SqlStore::open(path, {.access = Access::Read});
        ASSERT_TRUE(store);
        EXPECT_EQ((*store)->eventsOf("dev-1")->size(), 2u);
        EXPECT_FALSE((*store)->begin().and_then([&] {
            return (*store)->put(BatchState{"x", "x", "mq", {}, {}});
        }));
        (*store)->rollback();
    }
    EXPECT_EQ(bytesOf(path), before);
    EXPECT_EQ(QDir(book.inFolder("")).entryList(QDir::Files), QStringList{"home.ullage"});
}

TEST(SqlStore, RemembersEverythingAfterARestartUndoToo)
{
    TempBook book;
    ASSERT_TRUE(book.import(kHead + kSolution + kVessel));
    const auto batch = book.book->mix({"mq", "b1", Millilitres(1000), "Dev 15"}, at(1));
    ASSERT_TRUE(batch);
    ASSERT_TRUE(book.book->drawOff(*batch, Millilitres(100), "spilt", at(2)));
    book.open();
    EXPECT_EQ(book.book->batch(*batch, testNow())->volume, Millilitres(900));
    ASSERT_TRUE(book.book->undoable());
    EXPECT_EQ(book.book->undoable()->what, "drawn");
    ASSERT_TRUE(book.book->undo());
    book.open();
    EXPECT_EQ(book.book->batch(*batch, testNow())->volume, Millilitres(1000));
    ASSERT_TRUE(book.book->redo());
    book.open();
    EXPECT_EQ(book.book->batch(*batch, testNow())->volume, Millilitres(900));
    ASSERT_TRUE(book.book->undo());
    ASSERT_TRUE(book.book->undo());
    book.open();
    EXPECT_TRUE(book.book->batches(testNow(), true)->empty());
    const auto check = checkBook(*book.store);
    ASSERT_TRUE(check);
    EXPECT_TRUE(check->findings.empty());
}

// Whoever brings events of several bottles into their order needs it, however they were asked for.
TEST(SqlStore, EventsCarryTheNumberOfTheirEntry)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const auto all = book.store->eventsOf("dev-1");
    ASSERT_TRUE(all);
    ASSERT_EQ(all->size(), 2u);
    const std::int64_t number = all->back().entry;
    EXPECT_GT(number, all->front().entry);
    EXPECT_EQ((*book.store->event("e2"))->entry, number);
    EXPECT_EQ(book.store->mixings(all->front().at, all->front().at)->front().entry, number - 1);
    ASSERT_TRUE(book.book->drawOff("dev-1", Millilitres(10), "spilt", at(1)));
    const auto action = book.store->actions(1);
    ASSERT_TRUE(action);
    EXPECT_EQ(book.store->eventsOfAction(action->front().id)->front().entry, number + 1);
}

TEST(SqlStore, FindsBatchesInUseAtAnyMomentInOrderOfMixing)
{
    TempBook book;
    const auto mixed = [](const char* id, const char* day) {
        return QByteArray(R"({"type":"event","id":"m-)") + id + R"(","batch":")" + id +
               R"(","kind":"mixed","at":")" + day +
               R"(T10:00:00Z","solution":"mq","vessel":"b1","volume_ml":900})" + "\n";
    };
    ASSERT_TRUE(book.import(
        kHead + kSolution + kVessel + mixed("z", "2026-03-02") + mixed("b", "2026-03-01") +
        mixed("a", "2026-03-02") +
        R"({"type":"event","id":"d","batch":"z","kind":"discarded","at":"2026-03-05T10:00:00Z"})"));
    const auto ids = [&](int day, int hour, bool ended) {
        const auto moment =
            std::chrono::sys_days(std::chrono::year(2026) / 3 / day) + std::chrono::hours(hour);
        std::string all;
        const auto found = book.store->batches(moment, ended);
        EXPECT_TRUE(found);
        for (const BatchState& state : *found) {
            all += state.id;
        }
        return all;
    };
    EXPECT_EQ(ids(1, 9, true), "");
    EXPECT_EQ(ids(1, 10, false), "b");
    EXPECT_EQ(ids(4, 0, false), "bza");
    EXPECT_EQ(ids(5, 9, false), "bza");
    EXPECT_EQ(ids(5, 10, false), "ba");
    EXPECT_EQ(ids(5, 10, true), "bza");
}

TEST(SqlStore, TwoWritersTakeTurnsAndSeeEachOther)
{
    TempBook one;
    ASSERT_TRUE(one.import(kHead + kSolution + kVessel));
    StoreOptions impatient;
    impatient.busyTimeoutMs = 50;
    auto store = SqlStore::open(one.path(), impatient);
    ASSERT_TRUE(store);
    auto other =
        Book::open(**store, testNow, [n = 0]() mutable { return "other-" + std::to_string(++n); });
    ASSERT_TRUE(other);

    const auto batch = one.book->mix({"mq", "b1", Millilitres(1000), "Dev"}, at(1));
    ASSERT_TRUE(batch);
    EXPECT_TRUE(*(*other)->refresh());
    EXPECT_FALSE(*(*other)->refresh());
    ASSERT_TRUE((*other)->drawOff(*batch, Millilitres(600), "", at(2)));
    // Without looking first, the other's draught is taken into account.
    const auto tooMuch = one.book->drawOff(*batch, Millilitres(600), "", at(3));
    ASSERT_FALSE(tooMuch);
    EXPECT_EQ(tooMuch.error().code, ErrorCode::NotEnough);

    const auto import = one.book->import(); // holds the book
    ASSERT_TRUE(import);
    const auto busy = (*other)->drawOff(*batch, Millilitres(1), "", at(4));
    ASSERT_FALSE(busy);
    EXPECT_EQ(busy.error().code, ErrorCode::Busy);
    EXPECT_EQ(busy.error().high, 0.05) << "seconds that were waited";
    ASSERT_TRUE((*import)->finish());
    EXPECT_TRUE((*other)->drawOff(*batch, Millilitres(1), "", at(4)));
}

TEST(SqlStore, AFullDiskRollsBackAndTheBookGoesOn)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QByteArray before = book.text();
    const auto pages = book.store->connection().number("PRAGMA page_count");
    ASSERT_TRUE(book.store->connection().run(QString("PRAGMA max_page_count = %1").arg(*pages)));
    QByteArray large = kHead;
    for (int i = 0; i < 200; ++i) {
        large += R"({"type":"chemical","name":"c)" + QByteArray::number(i) + R"(","note":")" +
                 QByteArray(500, 'n') + "\"}\n";
    }
    const auto refused = book.import(large);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::StoreFailed);
    EXPECT_NE(refused.error().text.find("full"), std::string::npos);
    EXPECT_EQ(book.text(), before);
    ASSERT_TRUE(book.store->connection().run("PRAGMA max_page_count = 100000"));
    EXPECT_TRUE(book.import(large));
    const auto check = checkBook(*book.store);
    ASSERT_TRUE(check);
    EXPECT_TRUE(check->findings.empty());
}

TEST(SqlStore, EveryStatementThatFailsIsReportedAndNothingStays)
{
    // What stops one table after another, as a damaged schema or another program might.
    for (const char* trigger : {"BEFORE INSERT ON action", "BEFORE INSERT ON entry",
                                "AFTER INSERT ON entry WHEN NEW.type = 'event'",
                                "BEFORE INSERT ON batch", "BEFORE INSERT ON note"}) {
        TempBook book;
        const QByteArray before = book.text();
        ASSERT_TRUE(book.store->connection().run(
            QString("CREATE TRIGGER stop %1 BEGIN SELECT RAISE(ABORT, 'stopped here'); END")
                .arg(trigger)));
        QByteArray journal = kStart;
        journal.replace("\"version\":2", "\"version\":2,\"more\":1");
        const auto refused = book.import(journal);
        ASSERT_FALSE(refused) << trigger;
        EXPECT_EQ(refused.error().code, ErrorCode::StoreFailed) << trigger;
        EXPECT_NE(refused.error().text.find("stopped here"), std::string::npos) << trigger;
        EXPECT_EQ(book.text(), before) << trigger;
        ASSERT_TRUE(book.store->connection().run("DROP TRIGGER stop"));
        EXPECT_TRUE(book.import(journal)) << trigger;
    }
}
