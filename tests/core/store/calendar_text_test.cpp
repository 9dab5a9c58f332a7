#include "core/store/calendar_text.h"

#include "core/store/calendar_reader.h"

#include <QTimeZone>

#include <gtest/gtest.h>
#include <libical/ical.h>

#include <memory>

using namespace ullage;
using namespace ullage::store;

namespace
{

chemistry::Instant at(int hour)
{
    using namespace std::chrono;
    return sys_days(year(2026) / 12 / 8) + hours(hour);
}

CalendarEvent course()
{
    CalendarEvent event;
    event.uid = "work-w1@ullage";
    event.at = at(18);
    event.summary = QStringLiteral("Course; for beginners, \\ evening\nbring film");
    event.description = QStringLiteral("Films: 8");
    event.rule = "FREQ=WEEKLY;INTERVAL=2;BYDAY=TU";
    event.films = 8;
    return event;
}

CalendarEvent discard()
{
    CalendarEvent event;
    event.uid = "discard-dev-1@ullage";
    event.at = at(7);
    event.wholeDay = true;
    // Longer than a line, of characters of two and more octets.
    event.summary = QStringLiteral("Discard ") + QString(60, QChar(0xfc)) +
                    QString::fromUtf8("\xF0\x9F\x8E\x9E") + QStringLiteral(" by today");
    return event;
}

using Component = std::unique_ptr<icalcomponent, decltype(&icalcomponent_free)>;

Component parsed(const QByteArray& text)
{
    return {icalcomponent_new_from_string(text.constData()), &icalcomponent_free};
}

icalcomponent* event(const Component& calendar, int place)
{
    icalcomponent* found = icalcomponent_get_first_component(calendar.get(), ICAL_VEVENT_COMPONENT);
    for (; place > 0 && found; --place) {
        found = icalcomponent_get_next_component(calendar.get(), ICAL_VEVENT_COMPONENT);
    }
    return found;
}

} // namespace

TEST(CalendarText, isReadByAnotherImplementation)
{
    const auto text = calendarText({course(), discard()}, at(0), QStringLiteral("Darkroom"));
    const Component calendar = parsed(text);
    ASSERT_TRUE(calendar);
    EXPECT_EQ(icalcomponent_isa(calendar.get()), ICAL_VCALENDAR_COMPONENT);
    EXPECT_EQ(icalcomponent_count_errors(calendar.get()), 0);
    EXPECT_EQ(icalcomponent_count_components(calendar.get(), ICAL_VEVENT_COMPONENT), 2);

    icalcomponent* first = event(calendar, 0);
    ASSERT_TRUE(first);
    EXPECT_STREQ(icalcomponent_get_uid(first), "work-w1@ullage");
    EXPECT_EQ(QString::fromUtf8(icalcomponent_get_summary(first)), course().summary);
    const icaltimetype start = icalcomponent_get_dtstart(first);
    EXPECT_STREQ(icaltime_as_ical_string(start), "20261208T180000Z");
    const auto* rule = icalcomponent_get_first_property(first, ICAL_RRULE_PROPERTY);
    ASSERT_TRUE(rule);
    const icalrecurrencetype repeats = icalproperty_get_rrule(rule);
    EXPECT_EQ(repeats.freq, ICAL_WEEKLY_RECURRENCE);
    EXPECT_EQ(repeats.interval, 2);

    icalcomponent* second = event(calendar, 1);
    ASSERT_TRUE(second);
    EXPECT_EQ(QString::fromUtf8(icalcomponent_get_summary(second)), discard().summary);
    EXPECT_TRUE(icaltime_is_date(icalcomponent_get_dtstart(second)));
    EXPECT_STREQ(icaltime_as_ical_string(icalcomponent_get_dtstart(second)), "20261208");
}

// Tuesday evenings at 19:00 in the middle of Europe, where the clock is put forward on 28 March
// 2027: by another implementation too they stay at 19:00, and so are at 17:00 UTC from then on.
TEST(CalendarText, whatComesAgainGoesByTheClockOfItsZone)
{
    const QTimeZone zone("Europe/Berlin");
    ASSERT_TRUE(zone.isValid());
    CalendarEvent weekly = course();
    weekly.rule = "FREQ=WEEKLY;BYDAY=TU";
    const auto text = calendarText({weekly, discard()}, at(0), QStringLiteral("Darkroom"), zone);
    const Component calendar = parsed(text);
    ASSERT_TRUE(calendar);
    EXPECT_EQ(icalcomponent_count_errors(calendar.get()), 0);
    EXPECT_EQ(icalcomponent_count_components(calendar.get(), ICAL_VTIMEZONE_COMPONENT), 1);
    const icaltimetype start = icalcomponent_get_dtstart(event(calendar, 0));
    EXPECT_STREQ(icaltime_as_ical_string(start), "20261208T190000");
    // What their zone says of a moment, by the description in the file.
    icaltimezone* theirs = icaltimezone_new();
    ASSERT_TRUE(icaltimezone_set_component(
        theirs, icalcomponent_new_clone(
                    icalcomponent_get_first_component(calendar.get(), ICAL_VTIMEZONE_COMPONENT))));
    icaltimetype winter = icaltime_from_string("20270323T190000");
    icaltimetype summer = icaltime_from_string("20270330T190000");
    int isDaylight = 0;
    EXPECT_EQ(icaltimezone_get_utc_offset(theirs, &winter, &isDaylight), 3600);
    EXPECT_EQ(icaltimezone_get_utc_offset(theirs, &summer, &isDaylight), 7200);
    EXPECT_EQ(isDaylight, 1);
    icaltimezone_free(theirs, 1);

    const auto read = readCalendar(text);
    ASSERT_TRUE(read) << read.error().field;
    EXPECT_EQ(read->front().at, weekly.at);
    EXPECT_EQ(read->front().rule, weekly.rule);
}

// 23:30 on 8 December in New York is the 9th by UTC.
TEST(CalendarText, daysAreThoseOfTheZone)
{
    CalendarEvent late = discard();
    late.at = at(28) + std::chrono::minutes(30);
    const auto text = calendarText({late}, at(0), {}, QTimeZone("America/New_York"));
    EXPECT_TRUE(text.contains("DTSTART;VALUE=DATE:20261208\r\n")) << text.toStdString();
    EXPECT_FALSE(text.contains("VTIMEZONE")) << "nothing goes by its clock";
}

TEST(CalendarText, linesAreFoldedAt75OctetsAndNotWithinACharacter)
{
    const auto text = calendarText({discard()}, at(0), QStringLiteral("Darkroom"));
    EXPECT_TRUE(text.endsWith("END:VCALENDAR\r\n"));
    bool longer = false;
    for (QByteArray line : text.split('\n')) {
        EXPECT_TRUE(line.isEmpty() || line.endsWith('\r'));
        line.chop(1);
        EXPECT_LE(line.size(), 75);
        longer = longer || line.startsWith(' ');
        EXPECT_EQ(QString::fromUtf8(line).toUtf8(), line) << "whole characters";
        EXPECT_FALSE(QString::fromUtf8(line).contains(QChar::ReplacementCharacter));
    }
    EXPECT_TRUE(longer);
}

TEST(CalendarText, idsStayWhileDatesMove)
{
    auto moved = discard();
    moved.at = at(7) + std::chrono::days(3);
    const auto id = [](const QByteArray& text) {
        return std::string(icalcomponent_get_uid(event(parsed(text), 0)));
    };
    EXPECT_EQ(id(calendarText({discard()}, at(0), {})), id(calendarText({moved}, at(9), {})));
}

TEST(CalendarReader, readsWhatWasWritten)
{
    const auto read = readCalendar(calendarText({course(), discard()}, at(0), QStringLiteral("D")));
    ASSERT_TRUE(read) << read.error().field;
    ASSERT_EQ(read->size(), 2u);
    const CalendarEvent& one = read->front();
    EXPECT_EQ(one.uid, course().uid);
    EXPECT_EQ(one.at, course().at);
    EXPECT_FALSE(one.wholeDay);
    EXPECT_EQ(one.summary, course().summary);
    EXPECT_EQ(one.rule, course().rule);
    EXPECT_EQ(one.films, 8);
    EXPECT_TRUE(read->back().wholeDay);
    EXPECT_EQ(read->back().summary, discard().summary);
}

TEST(CalendarReader, readsZonesAlarmsAndLowerCase)
{
    const QByteArray text = "BEGIN:VCALENDAR\nversion:2.0\nBEGIN:VTIMEZONE\nTZID:Europe/Berlin\n"
                            "BEGIN:STANDARD\nDTSTART:19701025T030000\nEND:STANDARD\nEND:VTIMEZONE\n"
                            "begin:VEVENT\nuid:x\nDTSTART;TZID=\"Europe/Berlin\":20261208T190000\n"
                            "SUMMARY;LANGUAGE=de:Kurs\\, Abend\nBEGIN:VALARM\n"
                            "DESCRIPTION:wake\nEND:VALARM\nEND:VEVENT\nEND:VCALENDAR\n";
    const auto read = readCalendar(text);
    ASSERT_TRUE(read) << read.error().field << read.error().line;
    ASSERT_EQ(read->size(), 1u);
    EXPECT_EQ(read->front().at, at(18)) << "an hour ahead of UTC in winter";
    EXPECT_EQ(read->front().summary, QStringLiteral("Kurs, Abend"));
    EXPECT_TRUE(read->front().description.isEmpty()) << "the alarm's is not the event's";
}

// A stranger's calendar has many an event that nothing of ours says; the others are read.
TEST(CalendarReader, leavesOutTheEventThatIsNotUnderstood)
{
    std::vector<Error> leftOut;
    const auto read = readCalendar(
        "BEGIN:VCALENDAR\nBEGIN:VEVENT\nUID:1\nDTSTART:20261208T180000Z\nRRULE:FREQ=WEEKLY\n"
        "EXDATE:20261215T180000Z\nEXDATE:20261222T180000Z\nSUMMARY:Choir\nEND:VEVENT\n"
        "BEGIN:VEVENT\nUID:2\nDTSTART:20261209T180000Z\nSUMMARY:Course\nEND:VEVENT\n"
        "END:VCALENDAR\n",
        &leftOut);
    ASSERT_TRUE(read);
    ASSERT_EQ(read->size(), 1U);
    EXPECT_EQ(read->front().uid, "2");
    ASSERT_EQ(leftOut.size(), 1U) << "each once";
    EXPECT_EQ(leftOut[0].subject, "Choir");
    EXPECT_EQ(leftOut[0].field, "EXDATE");
    EXPECT_EQ(leftOut[0].line, 6);
}

TEST(CalendarReader, refusesWithTheLine)
{
    struct Case {
        const char* inside;
        const char* field;
        int line;
    };
    const Case cases[] = {
        {"BEGIN:VEVENT\nDTSTART:20261208T180000Z\nEND:VEVENT\n", "UID", 4},
        {"BEGIN:VEVENT\nUID:x\nEND:VEVENT\n", "DTSTART", 4},
        {"BEGIN:VEVENT\nUID:x\nDTSTART:20261308\nEND:VEVENT\n", "DTSTART", 4},
        {"BEGIN:VEVENT\nUID:x\nDTSTART:20261208T250000Z\nEND:VEVENT\n", "DTSTART", 4},
        {"BEGIN:VEVENT\nUID:x\nDTSTART;TZID=Nowhere/At_All:20261208T180000\nEND:VEVENT\n",
         "DTSTART", 4},
        {"BEGIN:VEVENT\nUID:x\nDTSTART:20261208\nEXDATE:20261215\nEND:VEVENT\n", "EXDATE", 5},
        {"BEGIN:VEVENT\nUID:x\nEND:VALARM\n", "VCALENDAR", 4},
    };
    for (const Case& one : cases) {
        const auto read =
            readCalendar(QByteArray("BEGIN:VCALENDAR\n") + one.inside + "END:VCALENDAR\n");
        ASSERT_FALSE(read) << one.inside;
        EXPECT_EQ(read.error().field, one.field) << one.inside;
        EXPECT_EQ(read.error().line, one.line) << one.inside;
        std::vector<Error> leftOut;
        const auto lenient = readCalendar(
            QByteArray("BEGIN:VCALENDAR\n") + one.inside + "END:VCALENDAR\n", &leftOut);
        const bool noCalendar = one.field == std::string("VCALENDAR");
        EXPECT_EQ(lenient.has_value(), !noCalendar) << one.inside;
        EXPECT_EQ(leftOut.size(), noCalendar ? 0U : 1U) << one.inside;
    }
    for (const char* text :
         {"", "hello", "BEGIN:VCALENDAR\nVERSION:2.0\n", "BEGIN:VCARD\nEND:VCARD\n"}) {
        EXPECT_FALSE(readCalendar(text)) << text;
    }
}
