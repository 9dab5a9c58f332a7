#include "core/store/calendar_reader.h"
#include "tests/app/cli/cli_kit.h"

namespace ullage::app::testing
{
namespace
{

using namespace ullage::store::testing;

const QByteArray kBook =
    kHead + kSolution + kVessel +
    R"({"type":"event","id":"e1","batch":"dev-1","kind":"mixed","at":"2026-12-20T10:00:00Z","solution":"mq","vessel":"b1","volume_ml":1000,"name":"Dev 1"})"
    "\n"
    R"({"type":"work","id":"w1","at":"2027-01-12T18:00:00Z","rule":"FREQ=WEEKLY;INTERVAL=2","films":4,"developer":"mq","name":"Evening course"})"
    "\n"
    R"({"type":"packet","id":"p1","solution":"mq","makes_ml":1000,"cost":"8.40","currency":"EUR"})"
    "\n";

class CalendarTest : public CommandTest
{
protected:
    std::vector<store::CalendarEvent> written()
    {
        const Answer answer = run({QStringLiteral("calendar"), path(QStringLiteral("room.ics"))});
        EXPECT_EQ(answer.code, kDone) << answer.err.toStdString();
        const auto read = store::readCalendar(this->read(QStringLiteral("room.ics")));
        EXPECT_TRUE(read);
        return read.value_or(std::vector<store::CalendarEvent>());
    }
    static const store::CalendarEvent* find(const std::vector<store::CalendarEvent>& events,
                                            const std::string& uid)
    {
        for (const auto& event : events) {
            if (event.uid == uid) {
                return &event;
            }
        }
        return nullptr;
    }
};

TEST_F(CalendarTest, writesWhatIsToBeDoneAndReplacesItLater)
{
    const QString journal = write(QStringLiteral("in.jsonl"), kBook);
    ASSERT_EQ(run({QStringLiteral("import"), journal}).code, kDone);
    const auto first = written();
    const auto* course = find(first, "work-w1@ullage");
    ASSERT_TRUE(course);
    EXPECT_EQ(course->rule, "FREQ=WEEKLY;INTERVAL=2");
    EXPECT_EQ(course->films, 4);
    EXPECT_EQ(course->summary, QStringLiteral("Evening course"));
    ASSERT_TRUE(find(first, "discard-dev-1@ullage"));
    // Dev 1 does ten films: of the third course, on 9 February, it does two, and the packet, mixed
    // the day before, the others; by 23 March that is spent too.
    EXPECT_TRUE(find(first, "mix-mq-1@ullage"));
    EXPECT_TRUE(find(first, "buy-mq@ullage"));

    const QString later = write(
        QStringLiteral("later.jsonl"),
        kHead +
            R"({"type":"work","id":"w2","at":"2027-01-13T18:00:00Z","films":2,"developer":"mq","name":"Evening","replaces":"w1"})"
            "\n");
    ASSERT_EQ(run({QStringLiteral("import"), later}).code, kDone);
    const auto second = written();
    const auto* moved = find(second, "work-w1@ullage");
    ASSERT_TRUE(moved) << "the same id for the same work";
    EXPECT_EQ(moved->summary, QStringLiteral("Evening"));
    EXPECT_TRUE(moved->rule.empty());
    EXPECT_FALSE(find(second, "buy-mq@ullage"));
}

TEST_F(CalendarTest, takesKnownWorkFromACalendar)
{
    const QString journal = write(QStringLiteral("in.jsonl"), kBook);
    ASSERT_EQ(run({QStringLiteral("import"), journal}).code, kDone);
    const QString calendar = write(QStringLiteral("theirs.ics"),
                                   "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nBEGIN:VEVENT\r\nUID:7\r\n"
                                   "DTSTART:20270202T180000Z\r\nSUMMARY:Open evening\r\n"
                                   "END:VEVENT\r\nEND:VCALENDAR\r\n");
    const Answer wary = run({QStringLiteral("import"), calendar});
    EXPECT_EQ(wary.code, kDone);
    EXPECT_TRUE(wary.err.contains("Left")) << wary.err.toStdString();
    EXPECT_TRUE(wary.err.contains("Open evening")) << "which";
    EXPECT_FALSE(find(written(), "work-7@ullage")) << "whether it is work nobody said";
    const Answer all = run({QStringLiteral("import"), calendar, QStringLiteral("--all")});
    EXPECT_EQ(all.code, kDone);
    EXPECT_TRUE(all.err.contains("Taken as known work")) << all.err.toStdString();
    const Answer twice = run({QStringLiteral("import"), calendar, QStringLiteral("--all")});
    EXPECT_EQ(twice.code, kDone);
    EXPECT_FALSE(twice.err.contains("Open evening")) << "twice changes nothing";
    const auto events = written();
    ASSERT_TRUE(find(events, "work-7@ullage"));
    EXPECT_EQ(find(events, "work-7@ullage")->summary, QStringLiteral("Open evening"));
    const QString choir =
        write(QStringLiteral("choir.ics"),
              "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nBEGIN:VEVENT\r\nUID:8\r\n"
              "DTSTART:20270202T180000Z\r\nRRULE:FREQ=WEEKLY\r\nEXDATE:20270209T180000Z\r\n"
              "SUMMARY:Choir\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nUID:9\r\n"
              "DTSTART:20270203T180000Z\r\nSUMMARY:Course: 8 films\r\nEND:VEVENT\r\n"
              "END:VCALENDAR\r\n");
    const Answer some = run({QStringLiteral("import"), choir});
    EXPECT_EQ(some.code, kDone);
    EXPECT_TRUE(some.err.contains("Choir")) << "what could not be read is named";
    ASSERT_TRUE(find(written(), "work-9@ullage"));
    EXPECT_EQ(find(written(), "work-9@ullage")->films, 8);
    const QString broken = write(QStringLiteral("broken.ics"), "BEGIN:VCALENDAR\r\n");
    EXPECT_EQ(run({QStringLiteral("import"), broken}).code, kRefused);
}

TEST_F(CalendarTest, saysWhatItIsAsked)
{
    EXPECT_EQ(run({QStringLiteral("calendar")}).code, kWrongUsage);
    EXPECT_EQ(run({QStringLiteral("calendar"), path(QStringLiteral("room.txt"))}).code,
              kWrongUsage);
    const QString journal = write(QStringLiteral("in.jsonl"), kBook);
    ASSERT_EQ(run({QStringLiteral("import"), journal}).code, kDone);
    const Answer answer = run({QStringLiteral("calendar"), QStringLiteral("-")});
    EXPECT_EQ(answer.code, kDone);
    EXPECT_TRUE(answer.out.startsWith("BEGIN:VCALENDAR\r\n"));
    EXPECT_EQ(run({QStringLiteral("calendar"), path(QStringLiteral("home.ullage"))}).code,
              kWrongUsage);
}

} // namespace
} // namespace ullage::app::testing
