// The chain: what is entered is hashed, and whatever is done to it afterwards is found and named.
#include "core/store/chain.h"
#include "core/store/integrity.h"
#include "tests/core/store/damaged_book.h"

#include <QCryptographicHash>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

using Said = std::vector<std::string>;

// Entries: 1 solution mq, 2 vessel b1, 3 event e1, 4 event e2, 5 packet p, 6 film f, 7 event e3.
const QByteArray kBook = kStart + R"({"type":"packet","id":"p","solution":"mq","makes_ml":1000})"
                                  "\n"
                                  R"({"type":"film","id":"f","run":"run-1"})"
                                  "\n"
                                  R"({"type":"event","id":"e3","batch":"dev-1","kind":"noted",)"
                                  R"("at":"2026-06-04T10:00:00Z","text":"clear"})"
                                  "\n";

Said faultsAfter(const QStringList& deeds)
{
    TempBook book;
    EXPECT_TRUE(book.import(kBook));
    close(book);
    tamper(book.path(), deeds);
    book.open();
    const auto report = verifyChain(book.store->connection());
    EXPECT_TRUE(report) << report.error().text;
    return report ? said(report->faults) : Said{};
}

ChainHead headOf(TempBook& book)
{
    const auto head = LastEntries(book.store->connection()).read();
    EXPECT_TRUE(head) << head.error().text;
    return head.value_or(ChainHead{});
}

} // namespace

// The bytes as they are written down in the documents, by another implementation of SHA-256.
TEST(Chain, AnEntryIsHashedWithTheOneBefore)
{
    TempBook book;
    ASSERT_TRUE(book.import(kHead + kSolution + kVessel));
    const auto sha = [](const QByteArray& bytes) {
        return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256);
    };
    const QByteArray first =
        sha(QByteArray(32, '\0') + QByteArray("solution\0mq\0", 12) + kSolution.trimmed());
    const QByteArray second = sha(first + QByteArray("vessel\0b1\0", 10) + kVessel.trimmed());
    EXPECT_EQ(headOf(book).entry, 2);
    EXPECT_EQ(digestText(headOf(book).hash), second.toHex());
}

TEST(Chain, ExportAndImportReproduceIt)
{
    TempBook one;
    ASSERT_TRUE(one.import(kBook));
    ASSERT_TRUE(one.book->record("dev-1", ledger::Noted{"“ünï” 🎞"}, {testNow(), {}}));
    TempBook other;
    ASSERT_TRUE(other.import(one.text()));
    EXPECT_EQ(headOf(one), headOf(other));
    EXPECT_EQ(headOf(one).entry, 8);
}

TEST(Chain, EveryBookHasAnIdOfItsOwn)
{
    TempBook one;
    const auto id = one.store->note(kBookIdNote);
    ASSERT_TRUE(id && *id);
    EXPECT_EQ((*id)->size(), 36);
    TempBook other;
    EXPECT_NE(**id, **other.store->note(kBookIdNote));
    one.open();
    EXPECT_EQ(**id, **one.store->note(kBookIdNote));
}

TEST(Chain, ASoundBookHasNoFaults)
{
    EXPECT_EQ(faultsAfter({}), Said{});
    TempBook empty;
    const auto report = verifyChain(empty.store->connection());
    ASSERT_TRUE(report);
    EXPECT_EQ(said(report->faults), Said{});
    EXPECT_EQ(report->end.entries, 0);
}

TEST(Chain, NamesWhatWasDone)
{
    struct Case {
        const char* sql;
        Said faults;
    };
    const Case cases[] = {
        {"UPDATE entry SET body = replace(body, 'Amber', 'Anber') WHERE seq = 2",
         {"changed 2 vessel b1"}},
        {"UPDATE entry SET body = replace(body, 'clear', 'cleer') WHERE seq = 7",
         {"changed 7 event e3"}},
        {"UPDATE entry SET body = replace(body, 'MQ', 'MK') WHERE seq = 1",
         {"changed 1 solution mq"}},
        {"UPDATE entry SET id = 'q' WHERE seq = 5", {"changed 5 packet q"}},
        {"UPDATE entry SET hash = zeroblob(32) WHERE seq = 3", {"hash 3 event e1"}},
        {"UPDATE entry SET hash = zeroblob(32) WHERE seq = 7", {"hash 7 event e3"}},
        {"UPDATE entry SET body = replace(body, '1', '2') WHERE seq IN (3, 4)",
         {"changed 3 event e1", "changed 4 event e2"}},
        {"DELETE FROM entry WHERE seq = 1", {"missing 1-1"}},
        {"DELETE FROM entry WHERE seq IN (3, 4)", {"missing 3-4"}},
        {"DELETE FROM entry WHERE seq = 7", {"missing 7-7"}},
        {"DELETE FROM entry WHERE seq >= 6", {"missing 6-7"}},
        {"DELETE FROM entry", {"missing 1-7"}},
        {"INSERT INTO entry (type, id, action, body) VALUES ('vessel', 'x', 1, '{}')",
         {"foreign 8 vessel x"}},
        {"INSERT INTO entry (type, id, action, body, hash) VALUES ('vessel', 'x', 1, '{}', "
         "zeroblob(32))",
         {"changed 8 vessel x", "head"}},
        {"UPDATE note SET value = '3 ' || substr(value, 3) WHERE key = 'head'",
         {"head", "note head"}},
        {"UPDATE note SET value = 'x' WHERE key = 'book-id'", {"note book-id"}},
    };
    for (const Case& one : cases) {
        EXPECT_EQ(faultsAfter({one.sql}), one.faults) << one.sql;
    }
}

TEST(Chain, NothingIsAddedToABookThatLostItsTail)
{
    for (const char* deed : {"DELETE FROM entry WHERE seq = 7",
                             "UPDATE entry SET body = replace(body, 'r', 's') WHERE seq = 7",
                             "UPDATE entry SET hash = NULL WHERE seq = 7"}) {
        TempBook book;
        ASSERT_TRUE(book.import(kBook));
        // Under an open book, as another program would.
        tamper(book.path(), {deed});
        const auto done = book.book->record("dev-1", ledger::Noted{"more"}, {testNow(), {}});
        ASSERT_FALSE(done) << deed;
        EXPECT_EQ(done.error().code, ErrorCode::NotAsEntered) << deed;
        book.open();
        EXPECT_EQ(book.store->faults().size(), 1U) << deed;
        EXPECT_FALSE(book.book->record("dev-1", ledger::Noted{"more"}, {testNow(), {}})) << deed;
    }
}

TEST(Chain, AFoldIsGivenOnlyWhatWasEntered)
{
    struct Case {
        const char* sql;
        const char* said;
    };
    const Case cases[] = {
        {"UPDATE entry SET body = replace(body, '\"count\":2', '\"count\":3') WHERE seq = 4",
         "changed 4 event e2"},
        {"DELETE FROM entry WHERE seq = 4", "batch dev-1"},
        {"UPDATE entry SET batch = 'dev-2' WHERE seq = 4", "batch dev-1"},
        {"DELETE FROM entry WHERE batch = 'dev-1'", "batch dev-1"},
    };
    for (const Case& one : cases) {
        TempBook book;
        ASSERT_TRUE(book.import(kBook));
        close(book);
        tamper(book.path(), {one.sql});
        book.open();
        const auto batches = book.book->batches(testNow());
        ASSERT_FALSE(batches) << one.sql;
        EXPECT_EQ(said(batches.error()), one.said);
        std::vector<ledger::Unread> unread;
        const auto others = book.book->batches(testNow(), false, &unread);
        ASSERT_TRUE(others);
        EXPECT_TRUE(others->empty());
        ASSERT_EQ(unread.size(), 1U);
        EXPECT_EQ(said(unread.front().why), one.said);
        EXPECT_EQ(unread.front().batch, "dev-1");
        EXPECT_EQ(unread.front().name, "Dev 1");
    }
}

// The batch's row says what its entries are at any moment, also while they are entered.
TEST(Chain, ABatchKeepsCountThroughUndoAndRedo)
{
    TempBook book;
    ASSERT_TRUE(book.import(kBook));
    const auto id = book.book->mix(
        {.solution = "mq", .vessel = "b1", .volume = chemistry::Millilitres(500), .name = "Dev 2"},
        {testNow(), {}});
    ASSERT_TRUE(id) << id.error().text;
    ASSERT_TRUE(book.book->record(*id, ledger::Noted{"one"}, {testNow(), {}}));
    for (int i = 0; i < 3; ++i) {
        ASSERT_TRUE(book.book->undo());
        ASSERT_TRUE(book.book->undo()); // the mixing too: the batch has no row now
        ASSERT_TRUE(book.book->redo());
        ASSERT_TRUE(book.book->redo());
        book.open();
    }
    ASSERT_TRUE(book.book->batches(testNow()));
    const auto check = checkBook(*book.store);
    ASSERT_TRUE(check);
    EXPECT_EQ(said(check->findings), Said{});
}

TEST(Chain, ABadDefinitionIsLeftOutAndNamed)
{
    TempBook book;
    ASSERT_TRUE(book.import(kBook + R"({"type":"vessel","id":"b9","name":"Spare",)"
                                    R"("capacity_ml":500,"material":"glass"})"));
    close(book);
    tamper(book.path(), {"UPDATE entry SET body = replace(body, 'Spare', 'Spase') WHERE seq = 8"});
    book.open();
    EXPECT_TRUE(book.book->formulary().vessel("b1"));
    EXPECT_FALSE(book.book->formulary().vessel("b9"));
    EXPECT_EQ(said(book.store->faults()).front(), "changed 8 vessel b9");
    EXPECT_TRUE(book.book->batches(testNow()));
    const auto done = book.book->record("dev-1", ledger::Noted{"more"}, {testNow(), {}});
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, ErrorCode::NotAsEntered);
}

TEST(Chain, AnExportLeavesOutWhatWasChangedOrFails)
{
    TempBook book;
    ASSERT_TRUE(book.import(kBook));
    const QByteArray before = book.text();
    close(book);
    tamper(book.path(), {"UPDATE entry SET body = replace(body, 'clear', 'clean') WHERE seq = 7",
                         "DELETE FROM entry WHERE seq = 2"});
    book.open();
    QBuffer device;
    device.open(QIODevice::WriteOnly);
    std::vector<Error> faults;
    ASSERT_TRUE(exportJournal(*book.store, device, &faults));
    EXPECT_EQ(said(faults), (Said{"missing 2-2", "changed 7 event e3"}));
    const auto lines = before.split('\n');
    EXPECT_EQ(device.data(), QByteArrayList({lines[0], lines[1], lines[3], lines[4], lines[5],
                                             lines[6], QByteArray()})
                                 .join('\n'));
    QBuffer strict;
    strict.open(QIODevice::WriteOnly);
    const auto done = exportJournal(*book.store, strict);
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, ErrorCode::NotAsEntered);
}

TEST(Chain, StopsWhenTold)
{
    TempBook book;
    ASSERT_TRUE(book.import(kBook));
    const auto stop = [](const Progress&) { return false; };
    for (const auto code : {verifyChain(book.store->connection(), stop).error().code,
                            checkBook(*book.store, stop).error().code}) {
        EXPECT_EQ(code, ErrorCode::Cancelled);
    }
    EXPECT_TRUE(book.book->record("dev-1", ledger::Noted{"more"}, {testNow(), {}}));
}
