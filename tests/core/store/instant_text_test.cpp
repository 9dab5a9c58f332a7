#include "core/store/instant_text.h"

#include <gtest/gtest.h>

using namespace ullage::store;

TEST(InstantText, ReadsEveryZoneAndWritesUtc)
{
    const std::pair<const char*, const char*> cases[] = {
        {"2026-06-01T10:00:00Z", "2026-06-01T10:00:00Z"},
        {"2026-06-01t10:00:00z", "2026-06-01T10:00:00Z"},
        {"2026-06-01T12:00:00+02:00", "2026-06-01T10:00:00Z"},
        {"2024-01-10T23:30:00-05:00", "2024-01-11T04:30:00Z"},
        {"2024-01-12T01:15:30.25+05:30", "2024-01-11T19:45:30.250Z"},
        {"2024-02-29T00:00:00.000Z", "2024-02-29T00:00:00Z"},
        {"2024-02-29T23:59:59.9999Z", "2024-02-29T23:59:59.999Z"},
        {"1900-01-01T00:00:00Z", "1900-01-01T00:00:00Z"},
        {"1969-12-31T23:59:59.001Z", "1969-12-31T23:59:59.001Z"},
        {"2200-12-31T23:59:59-00:00", "2200-12-31T23:59:59Z"},
    };
    for (const auto& [text, utc] : cases) {
        const auto at = instantFromText(text);
        ASSERT_TRUE(at) << text;
        EXPECT_EQ(instantText(*at).toStdString(), utc) << text;
    }
}

TEST(InstantText, RefusesWhatIsNoMoment)
{
    for (const char* text : {"",
                             "2026-06-01",
                             "2026-06-01T10:00:00",
                             "2026-06-01T10:00Z",
                             "2026-06-01 10:00:00Z",
                             "2026-6-1T10:00:00Z",
                             "2026-02-29T10:00:00Z",
                             "2026-13-01T10:00:00Z",
                             "2026-00-01T10:00:00Z",
                             "2026-06-31T10:00:00Z",
                             "2026-06-01T24:00:00Z",
                             "2026-06-01T10:60:00Z",
                             "2016-12-31T23:59:60Z",
                             "2026-06-01T10:00:00+24:00",
                             "2026-06-01T10:00:00+02",
                             "2026-06-01T10:00:00+0200",
                             "2026-06-01T10:00:00.Z",
                             "2026-06-01T10:00:00Zx",
                             "2026-06-01T10:00:00Z\n",
                             "1899-12-31T23:59:59Z",
                             "2201-01-01T00:00:00Z",
                             "1900-01-01T00:30:00+01:00",
                             "20260601T100000Z",
                             "\u0662\u0660\u0662\u0666-06-01T10:00:00Z"}) {
        EXPECT_FALSE(instantFromText(QString::fromUtf8(text))) << text;
    }
}

TEST(InstantText, ReadsDates)
{
    const auto date = dateFromText("2024-02-29");
    ASSERT_TRUE(date);
    EXPECT_EQ(dateText(*date), "2024-02-29");
    for (const char* text : {"", "2023-02-29", "2024-2-9", "1899-12-31", "2201-01-01", "2024-02"}) {
        EXPECT_FALSE(dateFromText(text)) << text;
    }
}
