// Which events of a calendar are known work: what is understood of them, and what a person chooses.
#include "app/window/offered_work_dialog.h"

#include "app/cupboard/needs_card.h"
#include "tests/app/cupboard/cupboard_kit.h"
#include "tests/app/window/window_kit.h"

#include <QFile>
#include <QListWidget>
#include <QPushButton>

namespace ullage::app
{

namespace
{

store::CalendarEvent eventOn(Desk& desk, const char* uid, const QString& summary, int days,
                             const QString& description = {})
{
    store::CalendarEvent event;
    event.uid = uid;
    event.at = desk.now() + std::chrono::days(days);
    event.summary = summary;
    event.description = description;
    return event;
}

std::vector<OfferedWork> offersOf(Desk& desk, const std::vector<store::CalendarEvent>& events)
{
    return offeredWork(events, snapshotOf(desk).state, *desk.door().formulary(), desk.now());
}

} // namespace

TEST(OfferedWork, whatNamesFilmsOrASolutionIsLikelyToBeWork)
{
    Desk desk;
    const auto offers = offersOf(
        desk, {eventOn(desk, "1", "Choir", 3), eventOn(desk, "2", "Course, 8 films", 4),
               eventOn(desk, "3", "Evening", 5, "with MQ borax developer, please"),
               eventOn(desk, "4", "Abend: 12 Filme", 6), eventOn(desk, "5", "120 films", 7),
               eventOn(desk, "6", "Course, 3 films", -3), eventOn(desk, "7", "1 roll", 8)});
    ASSERT_EQ(offers.size(), 6u) << "what was before is not to come";
    EXPECT_FALSE(offers[0].likely);
    EXPECT_FALSE(offers[0].work.films);
    EXPECT_TRUE(offers[1].likely);
    EXPECT_EQ(offers[1].work.films, chemistry::Films(8));
    EXPECT_TRUE(offers[2].likely);
    EXPECT_EQ(offers[2].work.developer, "starter-mq-borax");
    EXPECT_EQ(offers[3].work.films, chemistry::Films(12));
    EXPECT_FALSE(offers[4].work.films) << "a format, or so many";
    EXPECT_EQ(offers[5].work.films, chemistry::Films(1));
}

// What was said of known work here is not overwritten by its old words in the calendar.
TEST(OfferedWork, ofKnownWorkOnlyWhatIsOtherIsOffered)
{
    Desk desk;
    auto event = eventOn(desk, "2", "Course, 8 films", 4);
    auto work = offersOf(desk, {event}).at(0).work;
    work.films = chemistry::Films(5);
    work.developer = "starter-mq-borax";
    shelve(desk, {work});
    event.at += std::chrono::hours(1);
    auto offers = offersOf(desk, {event});
    ASSERT_EQ(offers.size(), 1u);
    EXPECT_TRUE(offers[0].known);
    EXPECT_TRUE(offers[0].likely);
    EXPECT_EQ(offers[0].work.films, chemistry::Films(5));
    EXPECT_EQ(offers[0].work.developer, "starter-mq-borax");
    event.summary = "Course, 10 films";
    offers = offersOf(desk, {event});
    ASSERT_EQ(offers.size(), 1u);
    EXPECT_EQ(offers[0].work.films, chemistry::Films(10));
}

TEST(OfferedWork, onlyWhatIsTickedIsEntered)
{
    Desk desk;
    OfferedWorkDialog dialog(
        desk.door(),
        offersOf(desk, {eventOn(desk, "1", "Choir", 3), eventOn(desk, "2", "Course, 8 films", 4)}),
        {});
    dialog.show();
    ASSERT_EQ(dialog.list()->count(), 2);
    EXPECT_EQ(dialog.list()->item(0)->checkState(), Qt::Unchecked);
    EXPECT_EQ(dialog.list()->item(1)->checkState(), Qt::Checked);
    EXPECT_TRUE(dialog.list()->item(1)->text().contains("8 films · ") ||
                dialog.list()->item(1)->text().endsWith("8 films"))
        << dialog.list()->item(1)->text().toStdString();
    dialog.list()->item(1)->setCheckState(Qt::Unchecked);
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible()) << "nothing is ticked";
    EXPECT_FALSE(dialog.refusal().isEmpty());
    dialog.list()->item(1)->setCheckState(Qt::Checked);
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible());
    const auto works = snapshotOf(desk).state.works;
    ASSERT_EQ(works.size(), 1u);
    EXPECT_EQ(works[0].name, "Course, 8 films");
    ASSERT_TRUE(desk.session().undo());
    EXPECT_TRUE(snapshotOf(desk).state.works.empty());
}

TEST(OfferedWork, aCalendarThatIsReadAsksFirst)
{
    Desk desk;
    QFile file(desk.file("theirs.ics"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nBEGIN:VEVENT\r\nUID:7\r\n"
               "DTSTART:20270202T180000Z\r\nSUMMARY:Open evening\r\n"
               "END:VEVENT\r\nEND:VCALENDAR\r\n");
    file.close();
    Window at(desk);
    at.window.showPage(Page::Cupboard);
    Window::settle();
    at.asked.answer(file.fileName());
    emit at.window.findChild<NeedsCard*>()->workRequested(WorkAction::Import, {});
    auto* dialog = at.dialog<OfferedWorkDialog>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(snapshotOf(desk).state.works.empty()) << "nothing without being asked for";
    dialog->list()->item(0)->setCheckState(Qt::Checked);
    dialog->accept();
    EXPECT_EQ(snapshotOf(desk).state.works.size(), 1u);
}

} // namespace ullage::app
