// When it happened, typed by the clock on the wall: also in the hours that it skips or repeats.
#include "app/dialogs/happening_dialog.h"
#include "app/dialogs/when_edit.h"

#include "tests/app/dialogs/dialog_driver.h"
#include "tests/app/time_zone.h"

#include <QPlainTextEdit>

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
    }
    void type(const QString& text)
    {
        auto* edit = when.findChild<QDateTimeEdit*>();
        edit->setFocus();
        edit->selectAll();
        const auto typed = QDateTime::fromString(text, QStringLiteral("yyyy-MM-dd HH:mm"));
        edit->setDateTime(QDateTime(typed.date(), typed.time(), Qt::UTC));
    }
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
        BottleDialog note(HappeningKind::Note, contextOf(desk), bottleOf(desk, dev));
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
