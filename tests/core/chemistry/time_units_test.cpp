#include "core/chemistry/time_units.h"

#include <gtest/gtest.h>

namespace ullage::chemistry
{

using namespace std::chrono_literals;

TEST(TimeUnits, areWhatTheyAreCalled)
{
    EXPECT_DOUBLE_EQ(inMinutes(Seconds(90)), 1.5);
    EXPECT_DOUBLE_EQ(inHours(Days(1.5)).value(), 36);
    EXPECT_DOUBLE_EQ(inDays(Hours(36)).value(), 1.5);
    EXPECT_DOUBLE_EQ(inDays(Seconds(43'200)).value(), 0.5);
    EXPECT_DOUBLE_EQ(inSeconds(1'500ms).value(), 1.5);
}

TEST(TimeUnits, thereAndBackIsTheSame)
{
    for (const double figure : {0.0, 0.37, 7.0, 412.5}) {
        EXPECT_DOUBLE_EQ(inMinutes(fromMinutes(figure)), figure);
        EXPECT_DOUBLE_EQ(inDays(inHours(Days(figure))).value(), figure);
    }
}

TEST(TimeUnits, aDayOfTheCalendarIsADayOfTheClock)
{
    const Instant start{};
    EXPECT_EQ(addDays(start, inDays(Seconds(3'600))), start + 1h);
    EXPECT_DOUBLE_EQ(inSeconds(24h).value(), kSecondsInDay);
}

} // namespace ullage::chemistry
