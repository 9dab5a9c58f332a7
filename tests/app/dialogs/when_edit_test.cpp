// When it happened, typed by the clock on the wall: also in the hours that it skips or repeats.
#include "app/dialogs/happening_dialog.h"
#include "app/dialogs/when_edit.h"
#include "app/widgets/moment_field.h"

#include "tests/app/dialogs/dialog_driver.h"
#include "tests/app/time_zone.h"

#include <QCalendarWidget>
#include <QPlainTextEdit>
#include <QSignalSpy>

namespace ullage::app
{

namespace
{

using chemistry::Instant;
using std::chrono::hours;
using std::chrono::minutes;

Instant utc(int year, int month, int day, int hour, int minute = 0)
{
    return std::chrono::sys_days(std::chrono::year(year) / month / day) + hours(hour) +
           minutes(minute);
}

class At
{
public:
    explicit At(Instant now)
        : m_now(now),
          when([this] { return m_now; }, QLocale(QLocale::English, QLocale::UnitedKingdom))
    {
        when.show();
        when.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&when));
    }
    void type(const QString& text)
    {
        field()->setFocus();
        field()->selectAll();
        QTest::keyClick(field(), Qt::Key_Delete);
        QTest::keyClicks(field(), text);
    }
    [[nodiscard]] MomentField* field() const { return when.findChild<MomentField*>(); }
    [[nodiscard]] QComboBox* which() const { return when.findChild<QComboBox*>(); }

private:
    Instant m_now;

public:
    WhenEdit when;
};

} // namespace

TEST(WhenEdit, AnHourThatWasSkippedIsRefusedAndSaysWhatIsAllowed)
{
    const InZone zone("Europe/Berlin");
    At at(utc(2026, 3, 29, 12));
    at.type("2026-03-29 02:30");
    const QString problem = at.when.problem();
    EXPECT_TRUE(problem.contains("02:30")) << problem.toStdString();
    EXPECT_TRUE(problem.contains("01:59") && problem.contains("03:00")) << problem.toStdString();
    EXPECT_FALSE(at.which()->isVisible());
    at.type("2026-03-29 03:00");
    EXPECT_EQ(at.when.problem(), QString());
    EXPECT_EQ(at.when.moment(), utc(2026, 3, 29, 1));
}

TEST(WhenEdit, AnHourThatComesTwiceIsAskedFor)
{
    const InZone zone("Europe/Berlin");
    At at(utc(2026, 10, 25, 12));
    at.type("2026-10-25 02:30");
    EXPECT_TRUE(at.when.isAsked());
    EXPECT_TRUE(at.which()->isVisible());
    EXPECT_EQ(at.when.moment(), utc(2026, 10, 25, 1, 30));
    at.which()->setCurrentIndex(0);
    EXPECT_EQ(at.when.moment(), utc(2026, 10, 25, 0, 30));
    at.type("2026-10-25 03:30");
    EXPECT_FALSE(at.which()->isVisible());
    at.when.setMoment(utc(2026, 10, 25, 0, 30));
    EXPECT_EQ(at.when.moment(), utc(2026, 10, 25, 0, 30)) << "is shown as the one it is";
    EXPECT_EQ(at.which()->currentIndex(), 0);
}

TEST(WhenEdit, OfTwoTheLastThatHasComeIsProposed)
{
    const InZone zone("Europe/Berlin");
    At at(utc(2026, 10, 25, 0, 45)); // the clock shows 02:45 for the first time
    at.type("2026-10-25 02:40");
    EXPECT_EQ(at.when.moment(), utc(2026, 10, 25, 0, 40));
    EXPECT_EQ(at.when.problem(), QString());
    at.which()->setCurrentIndex(1);
    EXPECT_TRUE(at.when.problem().contains("still to come"));
}

TEST(WhenEdit, NowIsNowWhateverTheClockShows)
{
    const InZone zone("Europe/Berlin");
    for (const Instant now : {utc(2026, 10, 25, 0, 30), utc(2026, 10, 25, 1, 30)}) {
        At at(now);
        EXPECT_TRUE(at.when.isNow());
        EXPECT_EQ(at.when.moment(), now);
        EXPECT_FALSE(at.which()->isVisible());
    }
}

// A typed date once became another one, or was swallowed, without a word.
TEST(WhenEdit, TakesWhatPeopleWriteAndSaysHow)
{
    At at(utc(2026, 11, 27, 19, 10));
    for (const char* text : {"25/11/2026 18:00", "25.11. 18:00", "wednesday 18:00", "25/11 6pm"}) {
        at.type(text);
        EXPECT_EQ(at.when.moment(), utc(2026, 11, 25, 18)) << text;
        EXPECT_EQ(at.when.problem(), QString()) << text;
        EXPECT_TRUE(at.when.understood().contains("Wed 25 Nov 2026, 18:00")) << text;
        EXPECT_EQ(at.field()->text(), text) << "stays while it is typed";
    }
    at.type("yesterday 20:00");
    EXPECT_EQ(at.when.moment(), utc(2026, 11, 26, 20));
    at.when.findChild<QPushButton*>()->setFocus();
    EXPECT_EQ(at.field()->text(), "26/11/2026 20:00") << "written out afterwards";
    EXPECT_EQ(at.when.moment(), utc(2026, 11, 26, 20));
    at.type("now");
    EXPECT_TRUE(at.when.isNow());
}

TEST(WhenEdit, WhatIsNotUnderstoodStaysAndIsSaid)
{
    At at(utc(2026, 11, 27, 19, 10));
    at.type("25/11 sometime");
    EXPECT_FALSE(at.when.isUnderstood());
    EXPECT_FALSE(at.when.isNow()) << "a half is not now";
    EXPECT_TRUE(at.when.problem().contains("“sometime” is not understood"))
        << at.when.problem().toStdString();
    EXPECT_TRUE(at.when.understood().contains("sometime"));
    at.when.findChild<QPushButton*>()->setFocus();
    EXPECT_EQ(at.field()->text(), "25/11 sometime");
    at.type("");
    EXPECT_FALSE(at.when.problem().isEmpty());
    at.type("27/11/2026 19:11");
    EXPECT_TRUE(at.when.problem().contains("still to come"));
}

TEST(WhenEdit, KeysStepThePartUnderTheCursor)
{
    At at(utc(2026, 11, 25, 18, 0));
    at.when.setMoment(utc(2026, 11, 25, 18));
    ASSERT_EQ(at.field()->text(), "25/11/2026 18:00");
    const auto press = [&](int cursor, Qt::Key key) {
        at.field()->setCursorPosition(cursor);
        QTest::keyClick(at.field(), key);
        return at.when.moment();
    };
    EXPECT_EQ(press(1, Qt::Key_Down), utc(2026, 11, 24, 18));
    EXPECT_EQ(press(4, Qt::Key_Down), utc(2026, 10, 24, 18));
    EXPECT_EQ(press(8, Qt::Key_Down), utc(2025, 10, 24, 18));
    EXPECT_EQ(press(12, Qt::Key_Up), utc(2025, 10, 24, 19));
    EXPECT_EQ(press(15, Qt::Key_Down), utc(2025, 10, 24, 18, 59));
    at.type("yesterday 20:00");
    QTest::keyClick(at.field(), Qt::Key_Down);
    EXPECT_EQ(at.when.moment(), utc(2026, 11, 23, 20)) << "days, where there is no figure";
}

TEST(WhenEdit, TheCalendarOpensByKeyAndShowsEveryWeek)
{
    At at(utc(2026, 11, 27, 19, 10));
    at.when.setMoment(utc(2026, 11, 25, 18));
    QTest::keyClick(at.field(), Qt::Key_Down, Qt::AltModifier);
    auto* calendar = at.when.findChild<QCalendarWidget*>();
    ASSERT_NE(calendar, nullptr);
    ASSERT_TRUE(calendar->isVisible());
    EXPECT_EQ(calendar->selectedDate(), QDate(2026, 11, 25));
    auto* weeks = calendar->findChild<QAbstractItemView*>();
    ASSERT_NE(weeks, nullptr);
    const QModelIndex last = weeks->model()->index(6, 6); // the row of weekdays, and six weeks
    ASSERT_TRUE(last.isValid());
    EXPECT_TRUE(weeks->viewport()->rect().contains(weeks->visualRect(last)));
    const int room = weeks->visualRect(weeks->model()->index(0, 1)).width();
    EXPECT_GT(room, weeks->fontMetrics().horizontalAdvance("Wed"));
    calendar->setSelectedDate(QDate(2026, 11, 3));
    QTest::keyClick(weeks, Qt::Key_Return);
    EXPECT_FALSE(calendar->isVisible());
    EXPECT_EQ(at.when.moment(), utc(2026, 11, 3, 18)) << "the time stays";
}

// What is not understood stands in the way of saving, and of nothing else.
TEST(WhenEdit, AFormWithADateThatIsNotUnderstoodIsNotSaved)
{
    Desk desk;
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.passMinutes(90);
    const QByteArray before = desk.journal();
    BottleDialog note(HappeningKind::Note, desk.door(), bottleOf(desk, dev));
    note.show();
    note.findChild<QPlainTextEdit*>()->setPlainText("cloudy");
    const QSize size = note.size();
    type(note, "When", "half past");
    EXPECT_EQ(note.size(), size) << "does not grow while one types";
    note.accept();
    EXPECT_TRUE(note.isVisible());
    EXPECT_TRUE(note.problemOf("at").contains("half")) << note.problemOf("at").toStdString();
    EXPECT_EQ(note.findChild<MomentField*>()->text(), "half past");
    EXPECT_EQ(desk.journal(), before);
    type(note, "When", "now");
    note.accept();
    EXPECT_NE(desk.journal(), before);
}

// The same deed entered anywhere makes the same book.
TEST(WhenEdit, ABookIsTheSameInEveryZoneAndLanguage)
{
    QByteArray first;
    const QLocale before;
    for (const auto& [zone, locale] :
         {std::pair("UTC", "en_GB"), std::pair("Europe/Berlin", "de_DE"),
          std::pair("Pacific/Apia", "en_US"), std::pair("America/St_Johns", "fr_CA"),
          std::pair("Asia/Tehran", "fa_IR"), std::pair("Africa/Cairo", "ar_EG"),
          std::pair("Asia/Kolkata", "hi_IN"), std::pair("Europe/Zurich", "de_CH")}) {
        const InZone there(zone);
        QLocale::setDefault(QLocale(QString::fromLatin1(locale)));
        Desk desk;
        const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000.5, "Dev 1");
        desk.passMinutes(90);
        BottleDialog note(HappeningKind::Note, desk.door(), bottleOf(desk, dev));
        note.show();
        setMoment(note, desk.now() - minutes(45));
        note.findChild<QPlainTextEdit*>()->setPlainText("1.234,5");
        note.accept();
        desk.passMinutes(90);
        desk.run(dev, 2);
        const QByteArray journal = desk.journal();
        EXPECT_TRUE(journal.contains("1.234,5")) << zone;
        if (first.isEmpty())
            first = journal;
        EXPECT_EQ(journal, first) << zone << ' ' << locale;
        QLocale::setDefault(before);
    }
}

} // namespace ullage::app
