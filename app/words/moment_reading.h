// Days and times as people write them: "25/11", "25.11.", "25 Nov 2026, 18:00", "yesterday 20:00",
// "Monday", "18:00", "2 days ago", "now".
//
// Reading is generous where the meaning is certain, and of what has been, unless what is to come is
// asked for: a time alone is the last one that is not still to come, or the next; so is a weekday,
// and a day without its year. What is not understood is told with its place. Whoever shows the
// field shows what was understood (understoodText()).
#pragma once

#include "core/chemistry/quantities.h"

#include <QDateTime>
#include <QLocale>
#include <QString>
#include <QStringList>

namespace ullage::app
{

/// Words for days and times besides the locale's own names of weekdays and months. Of each several
/// may serve. English ones are always understood.
struct MomentWords {
    QStringList now;
    QStringList today;
    QStringList yesterday;
    QStringList tomorrow;
    QStringList dayBeforeYesterday;
    QStringList noon;
    QStringList midnight;  ///< 0:00, the beginning of the day
    QStringList last;      ///< before a weekday: not today
    QStringList fillers;   ///< between the parts ("at", "on"); they mean nothing
    QStringList afterHour; ///< after a time of day ("o'clock")
    QStringList daysAgo;   ///< with %1 for the number
    QStringList hoursAgo;
    QStringList minutesAgo;

    /// Of the interface's language.
    static MomentWords translated();
};

enum class DayOrder { DayFirst, MonthFirst, YearFirst };
/// In which order the locale writes a date in figures.
DayOrder dayOrderOf(const QLocale& locale);

enum class MomentProblem {
    None,
    Empty,
    NotUnderstood,
    NoSuchDay,   ///< 31 February, or before 1900 or after 2200
    NoSuchTime,  ///< 25:00
    Twice,       ///< a second day or a second time
    OtherWeekday ///< that day is another weekday
};

/// What was read: what a calendar and a clock on the wall show, or why nothing.
struct ReadMoment {
    QDate date;
    QTime time;       ///< whole minutes; where only a day was written, the time of `now`
    bool now = false; ///< this very moment
    bool timeWritten = false;
    MomentProblem problem = MomentProblem::None;
    qsizetype at = 0; ///< of the problem, in the text as given
    qsizetype length = 0;

    [[nodiscard]] bool isUnderstood() const { return problem == MomentProblem::None; }
};

/// Which of several days is meant where the words leave that open.
enum class Meant { HasBeen, IsToCome };

ReadMoment readMoment(const QString& text, chemistry::Instant now, const QLocale& locale,
                      const MomentWords& words, Meant meant = Meant::HasBeen);

/// The locale's short form with the whole year, such that readMoment() reads it back; ISO 8601
/// where the locale has none like that. What a field shows.
QString fieldText(QDate date, QTime time, const QLocale& locale);
QString fieldText(QDate date, const QLocale& locale);
/// In which order its figures stand, such as "dMyhm"; without a valid time those of the day alone.
QString figuresOf(QDate date, QTime time, const QLocale& locale);

/// "Wed 25 Nov 2026", in the locale's order.
QString understoodDay(QDate date, const QLocale& locale);
/// "Wed 25 Nov 2026, 18:00".
QString understoodText(QDate date, QTime time, const QLocale& locale);
/// "2 days ago", "3 hours ago", "just now"; "still to come".
QString agoText(chemistry::Instant moment, chemistry::Instant now);

} // namespace ullage::app
