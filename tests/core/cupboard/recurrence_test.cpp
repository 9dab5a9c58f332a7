#include "core/cupboard/recurrence.h"

#include <gtest/gtest.h>

namespace ullage::cupboard
{
namespace
{

using chemistry::Instant;
using namespace std::chrono;

Instant at(int y, unsigned m, unsigned d, int hour = 19)
{
    return sys_days(year(y) / m / d) + hours(hour);
}

std::vector<Instant> times(const char* rule, Instant first, Instant to)
{
    const auto read = readRule(rule);
    EXPECT_TRUE(read) << rule;
    return read ? occurrences(first, *read, first, to) : std::vector<Instant>();
}

using Times = std::vector<Instant>;

TEST(Recurrence, everySecondTuesday)
{
    // 8 December 2026 is a Tuesday.
    EXPECT_EQ(times("FREQ=WEEKLY;INTERVAL=2;BYDAY=TU", at(2026, 12, 8), at(2027, 1, 31)),
              (Times{at(2026, 12, 8), at(2026, 12, 22), at(2027, 1, 5), at(2027, 1, 19)}));
    EXPECT_EQ(times("FREQ=WEEKLY;COUNT=2", at(2026, 12, 8), at(2027, 1, 31)),
              (Times{at(2026, 12, 8), at(2026, 12, 15)}));
}

// Examples of RFC 5545, 3.8.5.3, for the same local time each.
// A clock that is put forward by an hour on 28 March 2027, 01:00 UTC, as in the middle of Europe,
// where it is an hour ahead of UTC before: a course at 19:00 stays there.
TEST(Recurrence, staysAtItsHourWhenTheClockIsPutForward)
{
    using namespace std::chrono;
    const Instant put = sys_days(2027y / 3 / 28) + 1h;
    const WallClock clock{[&](Instant at) { return at + (at < put ? 1h : 2h); },
                          [&](Instant shown) { return shown - (shown - 1h < put ? 1h : 2h); }};
    const Instant first = sys_days(2027y / 3 / 23) + 18h; // a Tuesday
    const auto rule = readRule("FREQ=WEEKLY;BYDAY=TU;COUNT=3");
    ASSERT_TRUE(rule);
    const auto found = occurrences(first, *rule, first, first + days(60), clock);
    ASSERT_EQ(found.size(), 3u);
    EXPECT_EQ(found[1], Instant(sys_days(2027y / 3 / 30) + 17h));
    EXPECT_EQ(found[2], Instant(sys_days(2027y / 4 / 6) + 17h));
    EXPECT_EQ(occurrences(first, *rule, found[1] + 1h, first + days(60), clock).size(), 1u);
}

// Seven hours behind UTC Tuesday's course at 19:00 is on Wednesday by UTC; it is on Tuesdays.
TEST(Recurrence, goesByTheDaysOfTheClock)
{
    using namespace std::chrono;
    const WallClock clock{[](Instant at) { return at - 7h; },
                          [](Instant shown) { return shown + 7h; }};
    const Instant first = sys_days(2027y / 3 / 24) + 2h;
    const auto found =
        occurrences(first, *readRule("FREQ=WEEKLY;BYDAY=TU"), first, first + days(8), clock);
    ASSERT_EQ(found.size(), 2u);
    EXPECT_EQ(found[1], first + days(7));
}

TEST(Recurrence, examplesOfTheStandard)
{
    EXPECT_EQ(times("FREQ=DAILY;INTERVAL=10;COUNT=5", at(1997, 9, 2, 9), at(1998, 1, 1)),
              (Times{at(1997, 9, 2, 9), at(1997, 9, 12, 9), at(1997, 9, 22, 9), at(1997, 10, 2, 9),
                     at(1997, 10, 12, 9)}));
    EXPECT_EQ(
        times("FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO", at(1997, 8, 5, 9),
              at(1998, 1, 1)),
        (Times{at(1997, 8, 5, 9), at(1997, 8, 10, 9), at(1997, 8, 19, 9), at(1997, 8, 24, 9)}));
    EXPECT_EQ(
        times("FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU", at(1997, 8, 5, 9),
              at(1998, 1, 1)),
        (Times{at(1997, 8, 5, 9), at(1997, 8, 17, 9), at(1997, 8, 19, 9), at(1997, 8, 31, 9)}));
    EXPECT_EQ(
        times("FREQ=MONTHLY;COUNT=4;BYDAY=1FR", at(1997, 9, 5, 9), at(1998, 6, 1)),
        (Times{at(1997, 9, 5, 9), at(1997, 10, 3, 9), at(1997, 11, 7, 9), at(1997, 12, 5, 9)}));
    EXPECT_EQ(times("FREQ=MONTHLY;COUNT=3;BYDAY=-2MO", at(1997, 9, 22, 9), at(1998, 6, 1)),
              (Times{at(1997, 9, 22, 9), at(1997, 10, 20, 9), at(1997, 11, 17, 9)}));
    EXPECT_EQ(
        times("FREQ=MONTHLY;BYMONTHDAY=-3", at(1997, 9, 28, 9), at(1998, 1, 1)),
        (Times{at(1997, 9, 28, 9), at(1997, 10, 29, 9), at(1997, 11, 28, 9), at(1997, 12, 29, 9)}));
    EXPECT_EQ(times("FREQ=DAILY;UNTIL=19970904T090000Z", at(1997, 9, 2, 9), at(1998, 1, 1)).size(),
              3U);
}

TEST(Recurrence, daysThatAMonthDoesNotHaveAreLeftOut)
{
    EXPECT_EQ(times("FREQ=MONTHLY", at(2027, 1, 31), at(2027, 6, 1)),
              (Times{at(2027, 1, 31), at(2027, 3, 31), at(2027, 5, 31)}));
    EXPECT_EQ(times("FREQ=YEARLY", at(2028, 2, 29), at(2033, 1, 1)),
              (Times{at(2028, 2, 29), at(2032, 2, 29)}));
    EXPECT_TRUE(
        times("FREQ=MONTHLY;BYMONTHDAY=30;INTERVAL=12", at(2027, 2, 1), at(2100, 1, 1)).empty());
}

TEST(Recurrence, givesThoseOfATimeOnly)
{
    const auto rule = *readRule("FREQ=WEEKLY;COUNT=10");
    const auto found = occurrences(at(2026, 12, 1), rule, at(2026, 12, 14), at(2026, 12, 29));
    EXPECT_EQ(found, (Times{at(2026, 12, 15), at(2026, 12, 22), at(2026, 12, 29)}));
    EXPECT_TRUE(occurrences(at(2026, 12, 1), rule, at(2027, 3, 1), at(2028, 1, 1)).empty());
}

TEST(Recurrence, whatIsNotUnderstoodIsNotGuessed)
{
    for (const char* rule :
         {"", "every 2 weeks", "FREQ=HOURLY", "FREQ=WEEKLY;BYSETPOS=1", "INTERVAL=2",
          "FREQ=WEEKLY;INTERVAL=0", "FREQ=WEEKLY;BYDAY=XX", "FREQ=WEEKLY;BYDAY=2TU",
          "FREQ=WEEKLY;UNTIL=tomorrow", "FREQ=DAILY;COUNT=2;UNTIL=20270101",
          "FREQ=MONTHLY;BYMONTHDAY=0", "FREQ=WEEKLY;"}) {
        EXPECT_FALSE(readRule(rule)) << rule;
    }
}

} // namespace
} // namespace ullage::cupboard
