// Days and times as people write them, read on one evening: Friday 27 November 2026, 19:10.
#include "app/words/moment_reading.h"
#include "app/words/moment_text.h"
#include "tests/app/time_zone.h"

#include <gtest/gtest.h>

using namespace ullage;
using namespace ullage::app;

namespace
{

const QLocale kBritish(QLocale::English, QLocale::UnitedKingdom);
const QLocale kAmerican(QLocale::English, QLocale::UnitedStates);
const QLocale kGerman(QLocale::German, QLocale::Germany);

// As the German interface gives them.
MomentWords german()
{
    MomentWords words = MomentWords::translated();
    words.now << "jetzt";
    words.today << "heute";
    words.yesterday << "gestern";
    words.dayBeforeYesterday << "vorgestern";
    words.noon << "mittags";
    words.last << "letzten";
    words.fillers << "um"
                  << "am"
                  << "den";
    words.afterHour << "Uhr";
    words.daysAgo << "vor %1 Tagen"
                  << "vor %1 Tag";
    words.hoursAgo << "vor %1 Stunden";
    return words;
}

class MomentReading : public testing::Test
{
protected:
    ReadMoment read(const QString& text, const QLocale& locale = kBritish,
                    const MomentWords& words = MomentWords::translated()) const
    {
        return readMoment(text, m_now, locale, words);
    }
    // "2026-11-25 18:00", or what is wrong and where.
    std::string shown(const QString& text, const QLocale& locale = kBritish,
                      const MomentWords& words = MomentWords::translated()) const
    {
        const ReadMoment so = read(text, locale, words);
        if (!so.isUnderstood())
            return "problem " + std::to_string(static_cast<int>(so.problem)) + " at \"" +
                   text.mid(so.at, so.length).toStdString() + '"';
        return QDateTime(so.date, so.time, Qt::UTC)
            .toString(QStringLiteral("yyyy-MM-dd HH:mm"))
            .toStdString();
    }

    InZone m_zone{"Europe/London"};
    chemistry::Instant m_now =
        std::chrono::sys_days(std::chrono::year(2026) / 11 / 27) + std::chrono::minutes(1150);
};

} // namespace

TEST_F(MomentReading, TakesADayAsItIsWritten)
{
    for (const char* text :
         {"25/11/2026 18:00",    "25.11.2026 18:00",       "25-11-2026, 18:00",
          "25/11/26 18:00",      "25.11. 18:00",           "25/11 18:00",
          "25.11 18.00",         "2026-11-25 18:00",       "2026-11-25T18:00",
          "2026-11-25T18:00:30", "25 Nov 18:00",           "25 November 2026 at 18:00",
          "25th Nov 2026 6pm",   "Nov 25, 2026 6:00 PM",   "november 25 18h",
          "18:00 25/11",         "Wed 25 Nov 2026, 18:00", "Wednesday 18:00",
          "wed 6 p.m.",          "2 days ago 18:00",       " 25 / 11 / 2026   18:00 "})
        EXPECT_EQ(shown(text), "2026-11-25 18:00") << text;
    EXPECT_EQ(shown("25/11"), "2026-11-25 19:10") << "no time written: that of now";
    EXPECT_FALSE(read("25/11").timeWritten);
}

TEST_F(MomentReading, GoesByTheOrderOfTheLocale)
{
    EXPECT_EQ(shown("5/11/2026 8:00"), "2026-11-05 08:00");
    EXPECT_EQ(shown("5/11/2026 8:00", kAmerican), "2026-05-11 08:00");
    EXPECT_EQ(shown("25/11 8:00", kAmerican), "2026-11-25 08:00") << "there is no month 25";
    EXPECT_EQ(shown("11/25 8:00"), "2026-11-25 08:00");
    EXPECT_EQ(shown("5.11. 8:00", kAmerican), "2026-11-05 08:00") << "stops: the day comes first";
    EXPECT_EQ(shown("26-11-25 8:00", QLocale(QLocale::Swedish)), "2026-11-25 08:00");
}

TEST_F(MomentReading, TakesTheLastThatIsNotStillToCome)
{
    EXPECT_EQ(shown("18:00"), "2026-11-27 18:00");
    EXPECT_EQ(shown("19:10"), "2026-11-27 19:10");
    EXPECT_EQ(shown("19:11"), "2026-11-26 19:11");
    EXPECT_EQ(shown("12/12"), "2025-12-12 19:10");
    EXPECT_EQ(shown("27/11 18:00"), "2026-11-27 18:00");
    EXPECT_EQ(shown("29/2 8:00"), "2024-02-29 08:00");
    EXPECT_EQ(shown("Friday 18:00"), "2026-11-27 18:00");
    EXPECT_EQ(shown("Friday 20:00"), "2026-11-20 20:00");
    EXPECT_EQ(shown("last Friday 18:00"), "2026-11-20 18:00");
    EXPECT_EQ(shown("Saturday 9:00"), "2026-11-21 09:00");
}

// Known work and the day until which something may be used.
TEST_F(MomentReading, TakesTheNextWhereWhatIsToComeIsAskedFor)
{
    const auto next = [&](const QString& text) {
        const ReadMoment so =
            readMoment(text, m_now, kBritish, MomentWords::translated(), Meant::IsToCome);
        return QDateTime(so.date, so.time, Qt::UTC)
            .toString(QStringLiteral("yyyy-MM-dd HH:mm"))
            .toStdString();
    };
    EXPECT_EQ(next("8 Dec 18:00"), "2026-12-08 18:00");
    EXPECT_EQ(next("26/11 18:00"), "2027-11-26 18:00");
    EXPECT_EQ(next("29/2 8:00"), "2028-02-29 08:00");
    EXPECT_EQ(next("20:00"), "2026-11-27 20:00");
    EXPECT_EQ(next("18:00"), "2026-11-28 18:00");
    EXPECT_EQ(next("Friday 20:00"), "2026-11-27 20:00");
    EXPECT_EQ(next("Friday 18:00"), "2026-12-04 18:00");
    EXPECT_EQ(next("Tuesday 18:00"), "2026-12-01 18:00");
    EXPECT_EQ(next("last Friday 18:00"), "2026-11-20 18:00");
    EXPECT_EQ(next("tomorrow 9:00"), "2026-11-28 09:00");
    EXPECT_EQ(next("8/12/2025 18:00"), "2025-12-08 18:00") << "a year that is written is meant";
}

TEST_F(MomentReading, KnowsWordsForDays)
{
    EXPECT_EQ(shown("yesterday 20:00"), "2026-11-26 20:00");
    EXPECT_EQ(shown("yesterday"), "2026-11-26 19:10");
    EXPECT_EQ(shown("tomorrow 8:00"), "2026-11-28 08:00");
    EXPECT_EQ(shown("the day before yesterday at noon"), "2026-11-25 12:00");
    EXPECT_EQ(shown("today 9:05"), "2026-11-27 09:05");
    EXPECT_EQ(shown("90 minutes ago"), "2026-11-27 17:40");
    EXPECT_EQ(shown("3 hours ago"), "2026-11-27 16:10");
    EXPECT_TRUE(read("now").now);
    EXPECT_FALSE(read("today").now);
}

TEST_F(MomentReading, KnowsTheInterfacesLanguageAndEnglish)
{
    const auto words = german();
    for (const char* text :
         {"gestern 20:00", "gestern um 20 Uhr", "Gestern, 20.00 Uhr", "yesterday 20:00",
          "26.11. 20:00", "26. November 20 Uhr", "26. Nov. 2026, 20:00", "am 26.11. um 20:00",
          "Donnerstag 20:00", "Do 20:00", "Do., 26. Nov. 2026, 20:00", "vor 1 Tag 20:00"})
        EXPECT_EQ(shown(text, kGerman, words), "2026-11-26 20:00") << text;
    EXPECT_EQ(shown("vorgestern", kGerman, words), "2026-11-25 19:10");
    EXPECT_EQ(shown("Montag 20:00", kGerman, words), "2026-11-23 20:00");
    EXPECT_EQ(shown("letzten Freitag 8:00", kGerman, words), "2026-11-20 08:00");
    EXPECT_TRUE(read("jetzt", kGerman, words).now);
    EXPECT_EQ(read("gestern").problem, MomentProblem::NotUnderstood) << "not in English";
}

TEST_F(MomentReading, SaysWhatItDidNotUnderstandAndWhere)
{
    const auto problem = [&](const char* text) { return shown(text); };
    const auto is = [](MomentProblem what, const char* part) {
        return "problem " + std::to_string(static_cast<int>(what)) + " at \"" + part + '"';
    };
    using enum MomentProblem;
    EXPECT_EQ(problem("25/11 sometime"), is(NotUnderstood, "sometime"));
    EXPECT_EQ(problem("about 18:00"), is(NotUnderstood, "about"));
    EXPECT_EQ(problem("25.11.202"), is(NotUnderstood, "202"));
    EXPECT_EQ(problem("18"), is(NotUnderstood, "18"));
    EXPECT_EQ(problem("31/2/2026"), is(NoSuchDay, "31/2/2026"));
    EXPECT_EQ(problem("25/13"), is(NoSuchDay, "25/13"));
    EXPECT_EQ(problem("25/11/1666"), is(NoSuchDay, "25/11/1666"));
    EXPECT_EQ(problem("25/11 25:00"), is(NoSuchTime, "25:00"));
    EXPECT_EQ(problem("13 pm"), is(NoSuchTime, "13 pm"));
    EXPECT_EQ(problem("yesterday 25/11"), is(Twice, "25/11"));
    EXPECT_EQ(problem("18:00 19:00"), is(Twice, "19:00"));
    EXPECT_EQ(problem("Mon 25 Nov 2026"), is(OtherWeekday, "Mon"));
    EXPECT_EQ(problem("2026-11-25T18:00Z"), is(NotUnderstood, "Z"));
    EXPECT_EQ(read("").problem, Empty);
    EXPECT_EQ(read("  ").problem, Empty);
    EXPECT_EQ(read("at").problem, NotUnderstood);
}

// Whatever a field shows, in any of the locales, it understands as the same.
TEST_F(MomentReading, ReadsBackWhatIsShownInEveryLocale)
{
    const auto locales =
        QLocale::matchingLocales(QLocale::AnyLanguage, QLocale::AnyScript, QLocale::AnyCountry);
    ASSERT_GT(locales.size(), 100);
    const auto words = MomentWords::translated();
    for (const QLocale& locale : locales) {
        for (const QDateTime& at :
             {QDateTime({2026, 11, 25}, {18, 0}), QDateTime({2026, 1, 2}, {0, 5}),
              QDateTime({2024, 2, 29}, {12, 34}), QDateTime({1999, 12, 31}, {23, 59})}) {
            const QString text = fieldText(at.date(), at.time(), locale);
            const ReadMoment so = readMoment(text, m_now, locale, words);
            ASSERT_TRUE(so.isUnderstood()) << locale.name().toStdString() << text.toStdString();
            EXPECT_EQ(so.date, at.date()) << locale.name().toStdString() << text.toStdString();
            EXPECT_EQ(so.time, at.time()) << locale.name().toStdString() << text.toStdString();
            const QString day = fieldText(at.date(), locale);
            EXPECT_EQ(readMoment(day, m_now, locale, words).date, at.date()) << day.toStdString();
            EXPECT_EQ(figuresOf(at.date(), at.time(), locale).size(), 5) << text.toStdString();
        }
    }
}

TEST_F(MomentReading, ReadsItsOwnWordsBack)
{
    const QDate date(2026, 11, 25);
    EXPECT_EQ(understoodText(date, {18, 0}, kBritish), "Wed 25 Nov 2026, 18:00");
    for (const QLocale& locale : {kBritish, kAmerican, kGerman}) {
        const QString text = understoodText(date, {18, 0}, locale);
        EXPECT_EQ(shown(text, locale), "2026-11-25 18:00") << text.toStdString();
    }
}
