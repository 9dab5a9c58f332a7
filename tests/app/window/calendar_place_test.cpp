// A calendar's file, written from the window and kept up to date.
#include "app/window/calendar_place.h"

#include "app/window/calendar_dialog.h"
#include "core/store/calendar_reader.h"
#include "tests/app/cupboard/cupboard_kit.h"
#include "tests/app/window/window_kit.h"

#include <QCheckBox>
#include <QDir>
#include <QFile>
#include <QPushButton>

namespace ullage::app
{

namespace
{

ledger::Work courseIn(Desk& desk, int days)
{
    ledger::Work work;
    work.id = "course-" + std::to_string(days);
    work.at = desk.now() + std::chrono::days(days);
    work.films = chemistry::Films(4);
    work.name = "Course";
    return work;
}

QStringList calendarSummaries(const QString& file)
{
    QFile in(file);
    if (!in.open(QIODevice::ReadOnly))
        return {};
    const auto events = store::readCalendar(in.readAll());
    QStringList summaries;
    for (const auto& event : events.value_or(std::vector<store::CalendarEvent>()))
        summaries << event.summary;
    return summaries;
}

// Asks for the calendar, of the known work alone, and gives it the file.
void writeWorkCalendar(Window& at, const QString& file, bool keep)
{
    at.action("Write a calendar")->trigger();
    auto* dialog = at.dialog<CalendarDialog>();
    for (auto* box : dialog->findChildren<QCheckBox*>()) {
        const QString words = box->text().remove(u'&');
        box->setChecked(words.startsWith("Keep the file") ? keep : words.contains("known work"));
    }
    at.asked.answer(file);
    dialog->accept();
    Window::settle();
}

} // namespace

TEST(CalendarPlace, writesWhatWasChosenOnce)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    shelve(desk, {courseIn(desk, 7)});
    Window at(desk);
    const QString file = desk.file("room.ics");
    writeWorkCalendar(at, file, false);
    ASSERT_TRUE(QTest::qWaitFor([&] { return QFile::exists(file); }, 10'000));
    EXPECT_EQ(calendarSummaries(file), QStringList{"Course"});
    EXPECT_FALSE(desk.preferences().keptCalendar(desk.session().path()));
}

TEST(CalendarPlace, needsAtLeastOneKind)
{
    CalendarDialog dialog({}, {}, {});
    dialog.show();
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_FALSE(dialog.refusal().isEmpty());
}

TEST(CalendarPlace, aKeptFileFollowsTheBook)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    shelve(desk, {courseIn(desk, 7)});
    const QString file = desk.file("room.ics");
    {
        Window at(desk);
        writeWorkCalendar(at, file, true);
        ASSERT_TRUE(QTest::qWaitFor([&] { return QFile::exists(file); }, 10'000));
        shelve(desk, {courseIn(desk, 14)});
        EXPECT_TRUE(QTest::qWaitFor([&] { return calendarSummaries(file).size() == 2; }, 10'000));
        shelve(desk, {courseIn(desk, 21)});
        desk.session().close(); // at once
    }
    EXPECT_EQ(calendarSummaries(file).size(), 3) << "what waited is written by the end";
    desk.reopen();
    const auto kept = desk.preferences().keptCalendar(desk.session().path());
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->file, file);
    EXPECT_FALSE(kept->kinds.contains(cupboard::DateKind::DiscardBy));
}

TEST(CalendarPlace, saysThatAKeptFileCannotBeWritten)
{
    Desk desk;
    desk.preferences().setKeptCalendar(
        desk.session().path(), KeptCalendar{desk.file("gone/room.ics"), cupboard::everyDateKind()});
    Window at(desk);
    const auto said = [&] {
        for (const auto* label : at.window.findChildren<QLabel*>()) {
            if (label->text().contains("The calendar is not up to date"))
                return true;
        }
        return false;
    };
    EXPECT_TRUE(QTest::qWaitFor(said, 10'000));
    ASSERT_TRUE(QDir().mkpath(desk.file("gone")));
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    EXPECT_TRUE(QTest::qWaitFor([&] { return !said(); }, 10'000));
    EXPECT_TRUE(QFile::exists(desk.file("gone/room.ics")));
}

TEST(CalendarPlace, noLongerKeepsWhatIsStopped)
{
    Desk desk;
    const QString file = desk.file("room.ics");
    desk.preferences().setKeptCalendar(desk.session().path(),
                                       KeptCalendar{file, cupboard::everyDateKind()});
    Window at(desk);
    at.action("Write a calendar")->trigger();
    auto* dialog = at.dialog<CalendarDialog>();
    for (auto* button : dialog->findChildren<QPushButton*>()) {
        if (button->text().remove(u'&').startsWith("Do not keep"))
            button->click();
    }
    EXPECT_FALSE(desk.preferences().keptCalendar(desk.session().path()));
    EXPECT_TRUE(at.asked.asked().back().contains("no longer kept"));
}

} // namespace ullage::app
