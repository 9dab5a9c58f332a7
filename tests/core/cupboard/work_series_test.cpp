#include "core/cupboard/work_series.h"

#include <gtest/gtest.h>

namespace ullage::cupboard
{
namespace
{

using chemistry::Instant;
using namespace std::chrono;

Instant tuesday(int week) { return sys_days(2026y / 12 / 8) + days(7 * week) + 18h; }

ledger::Work series(const std::string& rule)
{
    ledger::Work work;
    work.id = "w1";
    work.at = tuesday(0);
    work.rule = rule;
    work.films = chemistry::Films(4);
    work.name = "Course";
    return work;
}

// All times that lines of work come at, in order.
std::vector<Instant> timesOf(const std::vector<ledger::Work>& works)
{
    std::vector<Instant> found;
    for (const ledger::Work& work : works) {
        const auto times =
            work.withdrawn ? std::vector<Instant>() : nextTimes(work, tuesday(-1), 20);
        found.insert(found.end(), times.begin(), times.end());
    }
    return found;
}

using Times = std::vector<Instant>;

TEST(WorkSeries, nextTimesGoOnFromAMoment)
{
    const auto work = series("FREQ=WEEKLY;INTERVAL=2");
    EXPECT_EQ(nextTimes(work, tuesday(1), 2), (Times{tuesday(2), tuesday(4)}));
    EXPECT_EQ(nextTimes(work, tuesday(2), 1), Times{tuesday(2)});
    EXPECT_EQ(nextTimes(series(""), tuesday(0), 5), Times{tuesday(0)});
    EXPECT_TRUE(nextTimes(series(""), tuesday(1), 5).empty());
    EXPECT_EQ(nextTimes(series("FREQ=YEARLY"), tuesday(1), 3).size(), 3u);
}

TEST(WorkSeries, oneInTheMiddleFallsOut)
{
    for (const char* rule : {"FREQ=WEEKLY;COUNT=6", "FREQ=WEEKLY;UNTIL=20270112T180000Z",
                             "FREQ=WEEKLY;UNTIL=20270112", "FREQ=WEEKLY;BYDAY=TU;COUNT=6"}) {
        const auto work = series(rule);
        ASSERT_EQ(timesOf({work}).size(), 6u) << rule;
        const auto lines = withoutOnce(work, tuesday(2));
        ASSERT_EQ(lines.size(), 2u);
        EXPECT_EQ(lines[0].replaces, "w1");
        EXPECT_TRUE(lines[1].replaces.empty()) << "a line of its own";
        EXPECT_EQ(lines[1].films, chemistry::Films(4));
        EXPECT_EQ(timesOf(lines),
                  (Times{tuesday(0), tuesday(1), tuesday(3), tuesday(4), tuesday(5)}))
            << rule;
    }
}

TEST(WorkSeries, theFirstOrTheLastFallsOut)
{
    const auto work = series("FREQ=WEEKLY;COUNT=3");
    const auto noFirst = withoutOnce(work, tuesday(0));
    ASSERT_EQ(noFirst.size(), 1u);
    EXPECT_EQ(noFirst[0].replaces, "w1");
    EXPECT_EQ(timesOf(noFirst), (Times{tuesday(1), tuesday(2)}));
    const auto noLast = withoutOnce(work, tuesday(2));
    ASSERT_EQ(noLast.size(), 1u);
    EXPECT_EQ(timesOf(noLast), (Times{tuesday(0), tuesday(1)}));
    EXPECT_EQ(noLast[0].rule, "FREQ=WEEKLY;UNTIL=20261215T180000Z");
}

TEST(WorkSeries, ofTwoOneIsLeftWithoutARule)
{
    const auto work = series("FREQ=WEEKLY;COUNT=2");
    for (const int out : {0, 1}) {
        const auto lines = withoutOnce(work, tuesday(out));
        ASSERT_EQ(lines.size(), 1u);
        EXPECT_EQ(lines[0].rule, "");
        EXPECT_EQ(timesOf(lines), Times{tuesday(1 - out)});
    }
}

TEST(WorkSeries, everySecondWeekStaysWhereItIs)
{
    const auto lines = withoutOnce(series("FREQ=WEEKLY;INTERVAL=2"), tuesday(4));
    const auto times = timesOf(lines);
    ASSERT_GT(times.size(), 5u);
    EXPECT_EQ(Times(times.begin(), times.begin() + 4),
              (Times{tuesday(0), tuesday(2), tuesday(6), tuesday(8)}));
}

TEST(WorkSeries, whatComesOnceIsWithdrawn)
{
    const auto lines = withoutOnce(series(""), tuesday(0));
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_TRUE(lines[0].withdrawn);
    EXPECT_TRUE(withoutOnce(series("FREQ=WEEKLY"), tuesday(0) + 1h).empty()) << "it is not then";
}

} // namespace
} // namespace ullage::cupboard
