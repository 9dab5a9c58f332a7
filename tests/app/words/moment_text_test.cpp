// What a clock on the wall shows, and the moments that it means.
#include "app/words/moment_text.h"

#include "tests/app/time_zone.h"

#include <gtest/gtest.h>

#include <random>

using namespace ullage;
using namespace ullage::app;
using chemistry::Instant;
using std::chrono::hours;
using std::chrono::minutes;

namespace
{

Instant utc(int year, unsigned month, unsigned day, int hour, int minute = 0)
{
    return std::chrono::sys_days(std::chrono::year(year) / static_cast<int>(month) /
                                 static_cast<int>(day)) +
           hours(hour) + minutes(minute);
}

} // namespace

TEST(MomentText, AnHourThatTheClockSkipsMeansNoMoment)
{
    const InZone zone("Europe/Berlin");
    EXPECT_TRUE(momentsAt({2026, 3, 29}, {2, 30}).empty());
    EXPECT_EQ(skippedAt({2026, 3, 29}, {2, 30}), utc(2026, 3, 29, 1));
    EXPECT_EQ(momentsAt({2026, 3, 29}, {1, 59}), std::vector{utc(2026, 3, 29, 0, 59)});
    EXPECT_EQ(momentsAt({2026, 3, 29}, {3, 0}), std::vector{utc(2026, 3, 29, 1)});
    EXPECT_FALSE(skippedAt({2026, 3, 29}, {3, 0}));
}

TEST(MomentText, AnHourThatTheClockRepeatsMeansTwo)
{
    const InZone zone("Europe/Berlin");
    EXPECT_EQ(momentsAt({2026, 10, 25}, {2, 30}),
              (std::vector{utc(2026, 10, 25, 0, 30), utc(2026, 10, 25, 1, 30)}));
    EXPECT_EQ(momentsAt({2026, 10, 25}, {3, 0}), std::vector{utc(2026, 10, 25, 2)});
}

// Samoa had no 30 December 2011: the clock was put forward by a day.
TEST(MomentText, AWholeDayMayBeSkipped)
{
    const InZone zone("Pacific/Apia");
    EXPECT_TRUE(momentsAt({2011, 12, 30}, {12, 0}).empty());
    EXPECT_EQ(skippedAt({2011, 12, 30}, {12, 0}), utc(2011, 12, 30, 10));
    EXPECT_EQ(momentsAt({2011, 12, 31}, {12, 0}), std::vector{utc(2011, 12, 30, 22)});
}

// Newfoundland: half hours off, and until 2011 put forward a minute after midnight.
TEST(MomentText, ClocksArePutForwardAtAnyTimeAndByHalfHours)
{
    {
        const InZone zone("America/St_Johns");
        EXPECT_TRUE(momentsAt({2010, 3, 14}, {0, 30}).empty());
        EXPECT_EQ(skippedAt({2010, 3, 14}, {0, 30}), utc(2010, 3, 14, 3, 31));
        EXPECT_EQ(momentsAt({2026, 1, 1}, {12, 0}), std::vector{utc(2026, 1, 1, 15, 30)});
    }
    const InZone zone("Australia/Lord_Howe");
    EXPECT_EQ(momentsAt({2026, 4, 5}, {1, 45}).size(), 2U) << "put back by half an hour";
    EXPECT_EQ(momentsAt({2026, 4, 5}, {1, 15}).size(), 1U);
    EXPECT_TRUE(momentsAt({2026, 10, 4}, {2, 15}).empty());
}

TEST(MomentText, EveryMomentIsAmongThoseItsTimeOfDayMeans)
{
    for (const char* name : {"UTC", "Europe/Berlin", "Pacific/Apia", "America/St_Johns",
                             "Australia/Lord_Howe", "Asia/Kathmandu", "Africa/Casablanca"}) {
        const InZone zone(name);
        std::mt19937 random(7);
        for (int i = 0; i < 3000; ++i) {
            const Instant moment = utc(2009, 1, 1, 0) + minutes(random() % (20 * 366 * 24 * 60));
            const QDateTime local = localTime(moment);
            const auto found = momentsAt(local.date(), local.time());
            EXPECT_NE(std::find(found.begin(), found.end(), moment), found.end())
                << name << ' ' << local.toString(Qt::ISODate).toStdString();
            EXPECT_LE(found.size(), 2U);
        }
    }
}

TEST(MomentText, DaysOfOneSentenceNameTheirYearsTogether)
{
    const InZone zone("UTC");
    const QLocale british("en_GB");
    const Instant now = utc(2026, 11, 28, 12);
    EXPECT_EQ(dayTexts({utc(2027, 1, 16, 12), utc(2026, 12, 22, 12)}, now, british),
              (QStringList{"16 Jan", "22 Dec"}));
    EXPECT_EQ(dayTexts({utc(2027, 4, 13, 12), utc(2029, 11, 16, 12)}, now, british),
              (QStringList{"Apr 2027", "Nov 2029"}))
        << "no model knows those days";
    EXPECT_EQ(dayTexts({utc(2027, 8, 13, 12), utc(2027, 8, 16, 12)}, now, british),
              (QStringList{"13 Aug 2027", "16 Aug 2027"}));
    EXPECT_TRUE(dayTexts({}, now, british).isEmpty());
}
