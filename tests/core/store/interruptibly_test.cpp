// SQLite's own long work can be stopped.
#include "core/store/integrity.h"
#include "core/store/interruptibly.h"
#include "tests/core/store/temp_book.h"

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

// Says so at the call of this number, and from then on.
Watch stopAt(int number)
{
    return [left = std::make_shared<int>(number)](const Progress&) { return --*left > 0; };
}

} // namespace

TEST(Interruptibly, StopsAStatementThatWouldNeverEnd)
{
    const auto connection = Connection::inMemory();
    ASSERT_TRUE(connection);
    for (const int call : {2, 4}) {
        const auto done = interruptibly(**connection, stopAt(call), [&]() -> Result<void> {
            return (*connection)
                ->run("WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n) "
                      "SELECT max(i) FROM n");
        });
        ASSERT_FALSE(done);
        EXPECT_EQ(done.error().code, ErrorCode::Cancelled);
        EXPECT_EQ(*(*connection)->number("SELECT 42"), 42) << "the connection can be used";
    }
}

TEST(Interruptibly, BeginsNothingWhenItIsToStopAtOnce)
{
    const auto connection = Connection::inMemory();
    bool begun = false;
    const auto work = [&]() -> Result<void> {
        begun = true;
        return {};
    };
    EXPECT_EQ(interruptibly(**connection, stopAt(1), work).error().code, ErrorCode::Cancelled);
    EXPECT_FALSE(begun);
    EXPECT_TRUE(interruptibly(**connection, {}, work));
    EXPECT_TRUE(begun);
}

TEST(Interruptibly, GivesWhatTheWorkGave)
{
    const auto connection = Connection::inMemory();
    const auto goOn = [](const Progress&) { return true; };
    EXPECT_TRUE(interruptibly(**connection, goOn, [] { return Result<void>{}; }));
    const auto failed = interruptibly(**connection, goOn, [&]() -> Result<void> {
        return (*connection)->run("SELECT * FROM nowhere");
    });
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().code, ErrorCode::StoreFailed);
}

TEST(Interruptibly, ACheckThatIsStoppedSaysSoAndLeavesTheBookAsItWas)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QByteArray before = book.text();
    for (const int call : {1, 2}) {
        const auto quick = book.store->quickCheck(stopAt(call));
        ASSERT_FALSE(quick);
        EXPECT_EQ(quick.error().code, ErrorCode::Cancelled);
    }
    int calls = 0;
    for (bool stopped = true; stopped;) {
        const auto check = checkBook(*book.store, stopAt(++calls));
        stopped = !check && check.error().code == ErrorCode::Cancelled;
        EXPECT_TRUE(stopped || check) << check.error().text;
        EXPECT_EQ(book.text(), before) << calls;
        ASSERT_LT(calls, 1000);
    }
    EXPECT_GT(calls, 3) << "before SQLite's own check, in it, and in each of the others";
    EXPECT_TRUE(checkBook(*book.store)->findings.empty());
    EXPECT_TRUE(book.store->quickCheck());
    EXPECT_TRUE(book.import(kHead + R"({"type":"chemical","id":"c","name":"borax"})" + "\n"));
}
