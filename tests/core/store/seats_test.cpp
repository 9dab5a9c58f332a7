// From which window a deed was done, as the book keeps it.
#include "core/store/salvage.h"
#include "tests/core/store/temp_book.h"

#include <QDir>
#include <QFile>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

std::vector<std::string> seats(SqlStore& store)
{
    const auto actions = store.actions(1000);
    EXPECT_TRUE(actions);
    std::vector<std::string> found;
    for (const ledger::Action& action : *actions)
        found.push_back(action.seat);
    return found;
}

Result<void> note(ledger::Book& book, const char* text)
{
    return book.record("dev-1", ledger::Noted{text}, {testNow(), {}});
}

} // namespace

TEST(Seats, AreKeptWithEachDeedAndNobodysAreNone)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    ASSERT_TRUE(note(*book.book, "of nobody's"));
    ASSERT_TRUE(book.book->sitAt("here/1"));
    ASSERT_TRUE(note(*book.book, "ours"));
    book.open();
    EXPECT_EQ(seats(*book.store), (std::vector<std::string>{"", "", "here/1"}));
    EXPECT_EQ(*book.store->connection().number("SELECT count(*) FROM action WHERE seat IS NULL"),
              2);
    EXPECT_EQ(book.book->undoable()->seat, "") << "who has no seat takes back nobody's";
    ASSERT_TRUE(book.book->sitAt("here/1"));
    EXPECT_EQ(book.book->undoable()->seat, "here/1");
}

TEST(Seats, WhatADeedEnteredIsFoundTogetherAndAnImportsIsNot)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const auto imported = book.book->events("dev-1");
    ASSERT_TRUE(imported && !imported->empty());
    const auto alone = book.store->eventsWith(imported->front().id);
    ASSERT_TRUE(alone);
    EXPECT_TRUE(alone->empty());
    QByteArray named = kHead +
                       R"({"type":"event","id":"n1","batch":"dev-1","kind":"opened",)"
                       R"("at":"2026-06-10T10:00:00Z"})" +
                       '\n';
    QBuffer sheet(&named);
    ASSERT_TRUE(sheet.open(QIODevice::ReadOnly));
    ASSERT_TRUE(readJournal(*book.book, *book.store, sheet,
                            {.name = "s", .settled = {}, .undoAs = "pencil.csv"}));
    EXPECT_EQ(book.book->undoable()->subject, "pencil.csv");
    EXPECT_TRUE(book.store->eventsWith("n1")->empty()) << "nor where it is a step of undo";
    const auto mixed = std::get<ledger::Mixed>(imported->front().what);
    ledger::NewBatch batch{mixed.solution, mixed.vessel, mixed.volume, "Dev 2", {}, false};
    batch.dissolved = true;
    const auto id = book.book->mix(batch, {testNow(), {}});
    ASSERT_TRUE(id);
    const auto events = book.book->events(*id);
    ASSERT_EQ(events->size(), 2U);
    const auto together = book.store->eventsWith(events->back().id);
    ASSERT_TRUE(together);
    ASSERT_EQ(together->size(), 2U);
    EXPECT_EQ(together->front().id, events->front().id);
}

// A book of the step before: what was done with it is anybody's to undo.
TEST(Seats, DeedsOfBeforeAreNobodys)
{
    const TempBook folder;
    const QString path = folder.inFolder("before.ullage");
    ASSERT_TRUE(QFile::copy(
        QStringLiteral(ULLAGE_JOURNALS "/../core/store/old_books/version-5.ullage"), path));
    TempBook book(path);
    ASSERT_EQ(book.store->outcome(), SchemaOutcome::Upgraded);
    EXPECT_EQ(seats(*book.store), (std::vector<std::string>{"", ""}));
    ASSERT_TRUE(book.book->sitAt("here/1"));
    ASSERT_TRUE(book.book->undoable());
    EXPECT_EQ(book.book->undoable()->what, "discarded");
    ASSERT_TRUE(book.book->undo());
    EXPECT_EQ(seats(*book.store).back(), "here/1");
    EXPECT_EQ(book.book->batches(testNow())->size(), 2U);
}

TEST(Seats, ComeAlongWhenABookIsSalvaged)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    ASSERT_TRUE(book.book->sitAt("here/1"));
    ASSERT_TRUE(note(*book.book, "ours"));
    book.book.reset();
    book.store.reset();
    const QString fresh = book.inFolder("fresh.ullage");
    ASSERT_TRUE(salvage(book.path(), fresh, {}, testNow()));
    TempBook again(fresh);
    EXPECT_EQ(seats(*again.store), (std::vector<std::string>{"", "here/1"}));
}

// As many entries, the same last one, but not the same book.
TEST(Seats, TheNewestEntryTellsBooksApart)
{
    const QByteArray last = R"({"type":"chemical","id":"c","name":"borax"})"
                            "\n";
    TempBook one;
    TempBook other;
    ASSERT_TRUE(one.import(kStart + last));
    QByteArray text = kStart + last;
    ASSERT_TRUE(other.import(text.replace("used_ml\":600", "used_ml\":700")));
    EXPECT_EQ(*one.store->lastEntry(), *other.store->lastEntry());
    EXPECT_NE(*one.store->newest(), *other.store->newest());
    const auto before = *one.store->newest();
    one.open();
    EXPECT_EQ(*one.store->newest(), before);
    EXPECT_EQ(TempBook().store->newest()->number, 0);
}
