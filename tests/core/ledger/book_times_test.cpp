// Development times in the Book.
#include "core/ledger/book_import.h"
#include "tests/core/ledger/book_kit.h"

#include <gtest/gtest.h>

namespace ullage::ledger
{
namespace
{

using chemistry::Celsius;
using chemistry::Seconds;

formulary::DevelopmentFigure figure(const std::string& id, const std::string& replaces = {})
{
    formulary::DevelopmentFigure made;
    made.id = id;
    made.film = "Quay 400";
    made.developer = "dev";
    made.dilution = "stock";
    made.times = {{Celsius(20), Seconds(570)}};
    made.replaces = replaces;
    return made;
}

formulary::TimeQuery query() { return {"Quay 400", {"dev"}, "stock", {}}; }

using BookTimes = BookTest;

TEST_F(BookTimes, areKeptAndFoundAfterARestart)
{
    ASSERT_TRUE(book->add(figure("t1")));
    EXPECT_EQ(book->formulary().notebook().find(query())->id, "t1");
    restart();
    const auto found = book->formulary().notebook().find(query());
    ASSERT_TRUE(found);
    EXPECT_EQ(*found, figure("t1"));
}

TEST_F(BookTimes, areReplacedAndWithdrawnByLaterOnes)
{
    ASSERT_TRUE(book->add(figure("t1")));
    auto better = figure("t2", "t1");
    better.times = {{Celsius(20), Seconds(600)}};
    ASSERT_TRUE(book->add(better));
    EXPECT_EQ(book->formulary().notebook().find(query())->times[0].time, Seconds(600));
    auto gone = figure("t3", "t2");
    gone.times.clear();
    gone.withdrawn = true;
    ASSERT_TRUE(book->add(gone));
    restart();
    EXPECT_FALSE(book->formulary().notebook().find(query()));
    EXPECT_EQ(book->formulary().notebook().all().size(), 3U);
}

TEST_F(BookTimes, areRefusedWholeWithTheFieldNamed)
{
    auto wrong = figure("t1");
    wrong.developer = "unknown";
    expectRefused([&] { return book->add(wrong); }, ErrorCode::UnknownId, "developer");
    expectRefused([&] { return book->add(figure("t1", "none")); }, ErrorCode::UnknownId,
                  "replaces");
    wrong = figure("t1");
    wrong.times.clear();
    expectRefused([&] { return book->add(wrong); }, ErrorCode::Missing, "times");
    ASSERT_TRUE(book->add(figure("t1")));
    expectRefused([&] { return book->add(figure("t1")); }, ErrorCode::IdTaken, "id");
    EXPECT_EQ(book->formulary().notebook().all().size(), 1U);
}

TEST_F(BookTimes, comeInWithAJournal)
{
    auto import = book->import();
    ASSERT_TRUE(import);
    ASSERT_TRUE((*import)->add({figure("t1"), {}}));
    ASSERT_TRUE((*import)->add({figure("t2", "t1"), {}}));
    EXPECT_EQ((*import)->finish(), 2);
    restart();
    EXPECT_EQ(book->formulary().notebook().current().size(), 1U);
    auto again = book->import();
    ASSERT_TRUE((*again)->add({figure("t1"), {}}));
    EXPECT_EQ((*again)->finish(), 0) << "the same again changes nothing";
}

} // namespace
} // namespace ullage::ledger
