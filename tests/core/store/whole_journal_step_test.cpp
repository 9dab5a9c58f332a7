// Step 4: a book of version 3 keeps every line as it was, and has its columns filled in from them.
#include "core/store/event_columns.h"
#include "core/store/integrity.h"
#include "core/store/journal_codec.h"
#include "core/store/statement.h"
#include "tests/core/store/temp_book.h"

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

// What a book of before could say that now has a column, or a kind, of its own.
const QByteArray kOfBefore =
    kStart + R"({"type":"packet","id":"p1","solution":"mq","makes_ml":1000,"cost":9.5})"
             "\n"
             R"({"type":"film","id":"f1","run":"run-1","format":"135-36","name":"Harbour"})"
             "\n"
             R"({"type":"vessel","id":"b2","name":"Amber 2","capacity_ml":520,"material":"glass"})"
             "\n"
             R"({"type":"event","id":"e3","batch":"dev-2","kind":"mixed",)"
             R"("at":"2026-06-04T10:00:00Z","solution":"mq","vessel":"b2","volume_ml":500})"
             "\n"
             R"({"type":"event","id":"e4","batch":"dev-1","kind":"topped-up",)"
             R"("at":"2026-06-05T10:00:00Z","volume_ml":20,"from":"dev-2"})"
             "\n"
             R"({"type":"event","id":"e5","kind":"opened-packet","at":"2026-06-05T11:00:00Z",)"
             R"("packet":"p1"})"
             "\n"
             R"({"type":"event","id":"e6","batch":"dev-1","kind":"noted",)"
             R"("at":"2026-06-05T12:00:00Z","text":"run-times develop 600/610 run=run-1"})"
             "\n"
             R"({"type":"event","id":"e7","batch":"dev-1","kind":"noted",)"
             R"("at":"2026-06-05T13:00:00Z","text":"test-asked thin film=f1"})"
             "\n";

// As it is written now: what was poured stands on one side only, and the first line says so.
QByteArray written()
{
    QByteArray text = kOfBefore;
    return text.replace("\"version\":2}", "\"version\":2,\"unpaired\":true}");
}

// The rows that the program of before wrote: it knew no column for what came later.
void writeAsBefore(Connection& connection, const QByteArray& journal)
{
    ASSERT_TRUE(connection.run("INSERT INTO action (mode, what, subject) VALUES (3, 'x', '')"));
    int seq = 0;
    for (const QByteArray& line : journal.split('\n')) {
        if (line.isEmpty() || line == kHead.trimmed()) {
            continue;
        }
        const auto read = decodeLine(line);
        ASSERT_TRUE(read) << line.constData();
        const auto& entry = std::get<ledger::Entry>(*read);
        const EventColumns columns = eventColumns(entry);
        Statement put(
            connection,
            QStringLiteral("INSERT INTO entry (seq, type, id, action, batch, kind, at_ms, "
                           "volume_ml, films, run, voids, body) "
                           "VALUES (?, ?, ?, 1, ?, ?, ?, ?, ?, ?, ?, ?)"));
        seq += 2; // numbers of entries have gaps where something was refused
        ASSERT_TRUE(put.run(seq, std::string(entry.type()), entry.id(), columns.batch, columns.kind,
                            columns.atMs, columns.volume, columns.films, columns.run, columns.voids,
                            line));
    }
    for (const char* batch : {"('dev-1', 'Dev 1', 'mq', 1780308000000, NULL)",
                              "('dev-2', 'dev-2', 'mq', 1780567200000, NULL)"}) {
        ASSERT_TRUE(connection.run(
            QStringLiteral("INSERT INTO batch (id, name, solution, mixed_ms, ended_ms) VALUES ") +
            batch));
    }
}

} // namespace

TEST(WholeJournalStep, ABookOfBeforeKeepsEverythingAndIsSound)
{
    TempBook fresh;
    const QString path = fresh.inFolder("older.ullage");
    {
        StoreOptions third;
        third.access = Access::Create;
        const auto all = schemaSteps();
        third.steps.assign(all.begin(), all.begin() + 3);
        auto store = SqlStore::open(path, third);
        ASSERT_TRUE(store);
        writeAsBefore((*store)->connection(), kOfBefore);
        EXPECT_FALSE((*store)->connection().run(
            "INSERT INTO entry (type, id, action, body) VALUES ('supply', 's', 1, '{}')"));
    }
    TempBook book(path);
    EXPECT_EQ(book.store->outcome(), SchemaOutcome::Upgraded);
    EXPECT_EQ(book.text(), written());
    EXPECT_EQ(*book.store->lastEntry(), 2 * 12);
    const auto check = checkBook(*book.store);
    ASSERT_TRUE(check);
    for (const Error& finding : check->findings) {
        ADD_FAILURE() << finding.subject << ": " << finding.field << ' ' << finding.text;
    }

    // Found by the columns.
    Connection& connection = book.store->connection();
    const auto only = [&](const char* where) {
        return connection.text(QStringLiteral("SELECT group_concat(id) FROM entry WHERE ") + where)
            ->toStdString();
    };
    EXPECT_EQ(only("from_batch = 'dev-2'"), "e4");
    EXPECT_EQ(only("item = 'p1'"), "e5");
    EXPECT_EQ(only("to_batch IS NOT NULL OR container IS NOT NULL"), "");

    // The same journal again changes nothing, and it goes on as any other book.
    const auto again = book.import(kOfBefore);
    ASSERT_TRUE(again) << again.error().field;
    EXPECT_EQ(again->added, 0);
    EXPECT_EQ(book.text(), written());
    EXPECT_FALSE(connection.run("UPDATE entry SET item = NULL")) << "for good";
    EXPECT_FALSE(connection.run("DELETE FROM entry WHERE id = 'e4'"));
    const auto shape = [](Connection& of) {
        return *of.text("SELECT group_concat(type || ' ' || name || ' ' || coalesce(sql, ''), "
                        "char(10)) FROM (SELECT * FROM sqlite_schema ORDER BY type, name)");
    };
    EXPECT_EQ(shape(connection), shape(fresh.store->connection()))
        << "the same indexes and triggers as a book made anew";
}

// A line that was spoilt does not stop the step; the check names it afterwards.
TEST(WholeJournalStep, ALineThatIsNoJsonKeepsItsPlace)
{
    TempBook fresh;
    const QString path = fresh.inFolder("older.ullage");
    {
        StoreOptions third;
        third.access = Access::Create;
        const auto all = schemaSteps();
        third.steps.assign(all.begin(), all.begin() + 3);
        auto store = SqlStore::open(path, third);
        ASSERT_TRUE(store);
        Connection& connection = (*store)->connection();
        ASSERT_TRUE(connection.run("INSERT INTO action (mode, what, subject) VALUES (3, 'x', '')"));
        for (const char* row :
             {"('event', 'e1', 1, 'd', 'topped-up', 1, '{\"from\":}')",
              "('event', 'e2', 1, 'd', 'topped-up', 1, '{\"from\":7}')",
              "('event', 'e3', 1, 'd', 'topped-up', 1, '{\"from\":\"\"}')",
              "('event', 'e4', 1, NULL, 'opened-packet', 1, '{\"packet\":[\"p\"]}')"}) {
            ASSERT_TRUE(connection.run(
                QStringLiteral(
                    "INSERT INTO entry (type, id, action, batch, kind, at_ms, body) VALUES ") +
                row));
        }
    }
    StoreOptions options;
    const auto store = SqlStore::open(path, options);
    ASSERT_TRUE(store) << store.error().text;
    EXPECT_EQ(*(*store)->connection().number("SELECT count(*) FROM entry"), 4);
    EXPECT_EQ(*(*store)->connection().number("SELECT count(*) FROM entry WHERE from_batch IS NOT "
                                             "NULL OR item IS NOT NULL"),
              0);
}
