// What a fault is about, as far as the book still tells.
#include "core/store/fault_names.h"

#include "core/store/integrity.h"
#include "tests/core/store/damaged_book.h"

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

chemistry::Instant june(unsigned day, int hour)
{
    using namespace std::chrono;
    return sys_days(year{2026} / 6 / day) + hours(hour);
}

// Entries: 1 solution mq, 2 vessel b1, 3 event e1 (mixed), 4 event e2 (a run), 5 event e3.
const QByteArray kBook = kStart + R"({"type":"event","id":"e3","batch":"dev-1","kind":"noted",)"
                                  R"("at":"2026-06-04T10:00:00Z","text":"clear"})"
                                  "\n";

BookCheck checked(const QStringList& deeds)
{
    TempBook book;
    EXPECT_TRUE(book.import(kBook));
    close(book);
    tamper(book.path(), deeds);
    book.open();
    auto check = checkBook(*book.store);
    EXPECT_TRUE(check);
    return check.value_or(BookCheck{});
}

} // namespace

TEST(FaultNames, OfAnEntryKindBottleAndMoment)
{
    const BookCheck check = checked(
        {"UPDATE entry SET body = replace(body, '\"count\":2', '\"count\":3') WHERE seq = 4"});
    ASSERT_TRUE(check.names.entries.contains(4));
    const EntryName& name = check.names.entries.at(4);
    EXPECT_EQ(name.type, "event");
    EXPECT_EQ(name.kind, "processed");
    EXPECT_EQ(name.bottle, "Dev 1");
    EXPECT_EQ(name.at, june(3, 19) + std::chrono::minutes(30));
    ASSERT_TRUE(check.names.bottles.contains("dev-1"));
    EXPECT_EQ(check.names.bottles.at("dev-1"), "Dev 1");
}

TEST(FaultNames, OfADefinitionItsName)
{
    const BookCheck check =
        checked({"UPDATE entry SET body = replace(body, '1030', '1040') WHERE seq = 2"});
    ASSERT_TRUE(check.names.entries.contains(2));
    EXPECT_EQ(check.names.entries.at(2).name, "Amber 1");
    EXPECT_FALSE(check.names.entries.at(2).at);
}

TEST(FaultNames, OfWhatIsGoneTheMomentsAroundIt)
{
    const BookCheck check = checked({"DELETE FROM entry WHERE seq = 4"});
    ASSERT_TRUE(check.names.missing.contains(4));
    EXPECT_EQ(check.names.missing.at(4).from, june(1, 10));
    EXPECT_EQ(check.names.missing.at(4).to, june(4, 10));
}

// A bottle that cannot be reckoned has no row of its own, but it was mixed under a name.
TEST(FaultNames, OfABottleWithoutARowItsLabel)
{
    TempBook book;
    ASSERT_TRUE(book.import(kBook));
    close(book);
    tamper(book.path(), {"DELETE FROM batch"});
    book.open();
    const Error fault{.code = ErrorCode::NotAsEntered, .subject = "dev-1"};
    const FaultNames names = namesFor(book.store->connection(), {&fault, 1});
    ASSERT_TRUE(names.bottles.contains("dev-1"));
    EXPECT_EQ(names.bottles.at("dev-1"), "Dev 1");
    EXPECT_TRUE(namesIn(book.path() + "-not", {&fault, 1}).bottles.empty());
}

// Of its row and its mixing, the one that is as it was entered.
TEST(FaultNames, OfABottleNotTheNameThatWasChanged)
{
    const Error fault{.code = ErrorCode::NotAsEntered, .subject = "dev-1"};
    for (const char* deed :
         {"UPDATE batch SET name = 'Other'",
          "UPDATE entry SET body = replace(body, 'Dev 1', 'Other') WHERE seq = 3"}) {
        TempBook book;
        ASSERT_TRUE(book.import(kBook));
        close(book);
        tamper(book.path(), {deed});
        book.open();
        const FaultNames names = namesFor(book.store->connection(), {&fault, 1});
        ASSERT_TRUE(names.bottles.contains("dev-1")) << deed;
        EXPECT_EQ(names.bottles.at("dev-1"), "Dev 1") << deed;
    }
}
