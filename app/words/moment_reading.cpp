#include "app/words/moment_reading.h"

#include "app/words/moment_names.h"
#include "app/words/moment_scan.h"
#include "app/words/moment_text.h"

#include <QRegularExpression>

#include <algorithm>
#include <optional>
#include <utility>

namespace ullage::app
{

namespace
{

constexpr int kFirstYear = 1900;
constexpr int kLastYear = 2200;
constexpr int kLeapYears = 8; // 29 February is never farther away than this

class Reading : private MomentScan
{
public:
    Reading(const QString& text, chemistry::Instant now, const QLocale& locale,
            const MomentWords& words, Meant meant)
        : MomentScan(plainly(text)), m_moment(now), m_now(localTime(now)), m_locale(locale),
          m_words(words), m_way(meant == Meant::IsToCome ? 1 : -1)
    {
    }

    ReadMoment read()
    {
        while (skipSpace() && m_read.isUnderstood()) {
            if (!part())
                fail(MomentProblem::NotUnderstood, wordEnd());
        }
        if (!m_read.isUnderstood())
            return m_read;
        return settle();
    }

private:
    struct Day {
        int year = 0; // 0: not written
        int month = 0;
        int day = 0;
        qsizetype at = 0;
        qsizetype length = 0;
    };

    void fail(MomentProblem problem, qsizetype end, std::optional<qsizetype> from = {})
    {
        m_read.problem = problem;
        m_read.at = from.value_or(m_at);
        m_read.length = end - m_read.at;
    }
    // Parts; each true if it stood here and was taken, or is said to be wrong ---------------------
    bool part()
    {
        return ago() || figuresDate() || clock() || dottedClock() || shortDate() || namedDate() ||
               hour() || words();
    }

    bool ago()
    {
        const std::pair<const QStringList&, std::chrono::minutes> kinds[]{
            {m_words.daysAgo, std::chrono::hours(24)},
            {m_words.hoursAgo, std::chrono::hours(1)},
            {m_words.minutesAgo, std::chrono::minutes(1)}};
        for (const auto& [forms, one] : kinds) {
            for (const QString& form : forms) {
                QString pattern = QRegularExpression::escape(plainly(form).trimmed());
                pattern.replace(QRegularExpression::escape(QStringLiteral("%1")),
                                QStringLiteral("(\\d{1,5})"));
                if (!pattern.contains(QLatin1String("\\d")))
                    continue;
                const auto match = here(QRegularExpression(pattern), m_at);
                if (!match.hasMatch() || !endsWord(match.capturedEnd()))
                    continue;
                const int count = match.captured(1).toInt();
                if (one == std::chrono::hours(24))
                    return takeDate(m_now.date().addDays(-count), match.capturedEnd());
                const QDateTime then = localTime(m_moment - count * one);
                const qsizetype from = m_at;
                if (takeDate(then.date(), match.capturedEnd()) && m_read.isUnderstood())
                    takeTime(then.time().hour(), then.time().minute(), match.capturedEnd(), from);
                return true;
            }
        }
        return false;
    }

    bool figuresDate()
    {
        static const QRegularExpression yearFirst(QStringLiteral(
            "(\\d{4})\\s*([-/.])\\s*(\\d{1,2})\\s*\\2\\s*(\\d{1,2})(?!\\d)\\.?(?:t(?=\\d))?"));
        static const QRegularExpression yearLast(
            QStringLiteral("(\\d{1,2})\\s*([-/.])\\s*(\\d{1,2})(?:\\s*\\2\\s*(\\d{4})|"
                           "\\2(\\d{2}))(?![\\d:])(?![-/.]\\d)"));
        if (const auto match = here(yearFirst, m_at); match.hasMatch())
            return takeDay(
                {match.captured(1).toInt(), match.captured(3).toInt(), match.captured(4).toInt()},
                match.capturedEnd());
        const auto match = here(yearLast, m_at);
        if (!match.hasMatch())
            return false;
        const int first = match.captured(1).toInt();
        const int second = match.captured(3).toInt();
        const bool wholeYear = match.capturedLength(4) > 0;
        const int last = match.captured(wholeYear ? 4 : 5).toInt();
        Day day = inOrder(first, second, match.captured(2), wholeYear ? last : 2000 + last);
        if (!wholeYear && dayOrderOf(m_locale) == DayOrder::YearFirst &&
            match.captured(2) != QLatin1String("."))
            day = {2000 + first, second, last};
        return takeDay(day, match.capturedEnd());
    }

    // "25.11." is a day before a month everywhere; else as the locale has it, unless only the other
    // way round is a date.
    [[nodiscard]] Day inOrder(int first, int second, const QString& sign, int year) const
    {
        const bool dayFirst =
            sign == QLatin1String(".") || dayOrderOf(m_locale) == DayOrder::DayFirst;
        const Day one{year, second, first};
        const Day other{year, first, second};
        const auto can = [](const Day& day) {
            return QDate::isValid(day.year ? day.year : 2000, day.month, day.day);
        };
        return dayFirst ? (can(one) || !can(other) ? one : other)
                        : (can(other) || !can(one) ? other : one);
    }

    bool clock()
    {
        static const QRegularExpression pattern(
            QStringLiteral("(\\d{1,2})(?::|h(?=\\d))(\\d{2})(?::\\d{2}(?:[.,]\\d+)?)?(?!\\d)"));
        const auto match = here(pattern, m_at);
        return match.hasMatch() &&
               takeClock(match.captured(1).toInt(), match.captured(2).toInt(), match.capturedEnd());
    }

    // "18.30": after a day, before "Uhr", or where it can be no day.
    bool dottedClock()
    {
        static const QRegularExpression pattern(QStringLiteral("(\\d{1,2})\\.(\\d{2})(?![\\d.])"));
        const auto match = here(pattern, m_at);
        if (!match.hasMatch())
            return false;
        const int first = match.captured(1).toInt();
        const int second = match.captured(2).toInt();
        const bool day = QDate::isValid(2000, second, first) || QDate::isValid(2000, first, second);
        const bool named = phrase(m_words.afterHour, spaceAfter(match.capturedEnd())).has_value();
        return (named || !day || (m_day && !m_time)) &&
               takeClock(first, second, match.capturedEnd());
    }

    bool shortDate()
    {
        static const QRegularExpression pattern(
            QStringLiteral("(\\d{1,2})\\s*([-/.])\\s*(\\d{1,2})(?!\\d)(?:\\s*\\2)?"));
        const auto match = here(pattern, m_at);
        return match.hasMatch() && takeDay(inOrder(match.captured(1).toInt(),
                                                   match.captured(3).toInt(), match.captured(2), 0),
                                           match.capturedEnd());
    }

    // "25. November 2026", "Nov 25, 2026".
    bool namedDate()
    {
        static const QRegularExpression before(
            QStringLiteral("(\\d{1,2})(?:\\.|st|nd|rd|th|er|º)?\\s*(?:de\\s+)?"));
        static const QRegularExpression after(
            QStringLiteral("\\s*(\\d{1,2})(?:st|nd|rd|th)?(?![\\d:.])"));
        static const QRegularExpression year(
            QStringLiteral("[\\s,]*(?:de\\s+)?(\\d{4})(?![\\d:])"));
        if (m_months.empty())
            m_months = monthNames(m_locale);
        Day day;
        qsizetype end = 0;
        const auto number = here(before, m_at);
        const auto then = number.hasMatch() ? name(m_months, number.capturedEnd()) : std::nullopt;
        if (then) {
            day = {0, then->first, number.captured(1).toInt()};
            end = then->second;
        } else if (const auto month = name(m_months, m_at)) {
            const auto match = here(after, month->second);
            if (!match.hasMatch())
                return false;
            day = {0, month->first, match.captured(1).toInt()};
            end = match.capturedEnd();
        } else {
            return false;
        }
        if (const auto match = here(year, end); match.hasMatch()) {
            day.year = match.captured(1).toInt();
            end = match.capturedEnd();
        }
        return takeDay(day, end);
    }

    // "6 pm", "18 h", "18 Uhr".
    bool hour()
    {
        static const QRegularExpression pattern(QStringLiteral("\\d{1,2}(?!\\d)"));
        const auto match = here(pattern, m_at);
        if (!match.hasMatch())
            return false;
        const qsizetype after = spaceAfter(match.capturedEnd());
        const bool said = halfOfDay(m_locale, after) || phrase(m_words.afterHour, after) ||
                          phrase({QStringLiteral("h")}, after);
        return said && takeClock(match.captured().toInt(), 0, match.capturedEnd());
    }

    bool words()
    {
        const auto is = [&](const QStringList& phrases) { return phrase(phrases, m_at); };
        if (const auto end = is(m_words.now)) {
            if (m_day || m_time || m_weekday)
                fail(MomentProblem::Twice, *end);
            m_read.now = true;
            takeDate(m_now.date(), *end);
            m_time = m_now.time();
            return true;
        }
        if (const auto end = is(m_words.dayBeforeYesterday))
            return takeDate(m_now.date().addDays(-2), *end);
        if (const auto end = is(m_words.today))
            return takeDate(m_now.date(), *end);
        if (const auto end = is(m_words.yesterday))
            return takeDate(m_now.date().addDays(-1), *end);
        if (const auto end = is(m_words.tomorrow))
            return takeDate(m_now.date().addDays(1), *end);
        if (const auto end = is(m_words.noon))
            return takeTime(12, 0, *end, m_at);
        if (const auto end = is(m_words.midnight))
            return takeTime(0, 0, *end, m_at);
        if (m_weekdays.empty())
            m_weekdays = weekdayNames(m_locale);
        if (const auto end = is(m_words.last); end && name(m_weekdays, spaceAfter(*end))) {
            m_last = true;
            m_at = *end;
            return true;
        }
        if (const auto day = name(m_weekdays, m_at)) {
            if (m_weekday)
                fail(MomentProblem::Twice, day->second);
            m_weekday = day->first;
            m_weekdayAt = m_at;
            m_weekdayEnd = day->second;
            m_at = day->second;
            return true;
        }
        if (const auto end = is(m_words.fillers)) {
            m_at = *end;
            return true;
        }
        return false;
    }

    // With what may follow: "pm", "Uhr".
    bool takeClock(int hours, int minutes, qsizetype end)
    {
        const qsizetype from = m_at;
        const qsizetype after = spaceAfter(end);
        if (const auto part = halfOfDay(m_locale, after)) {
            if (hours < 1 || hours > 12) {
                fail(MomentProblem::NoSuchTime, part->second);
                return true;
            }
            hours = hours % 12 + (part->first ? 12 : 0);
            end = part->second;
        } else if (const auto said = phrase(m_words.afterHour, after)) {
            end = *said;
        } else if (const auto h = phrase({QStringLiteral("h")}, after)) {
            end = *h;
        }
        return takeTime(hours, minutes, end, from);
    }

    bool takeTime(int hours, int minutes, qsizetype end, qsizetype from)
    {
        if (m_time)
            fail(MomentProblem::Twice, end, from);
        else if (!QTime::isValid(hours, minutes, 0))
            fail(MomentProblem::NoSuchTime, end, from);
        m_time = QTime(hours, minutes);
        m_at = end;
        return true;
    }

    bool takeDate(QDate date, qsizetype end)
    {
        return takeDay({date.year(), date.month(), date.day()}, end);
    }
    bool takeDay(Day day, qsizetype end)
    {
        day.at = m_at;
        day.length = end - m_at;
        if (m_day)
            fail(MomentProblem::Twice, end);
        m_day = day;
        m_at = end;
        return true;
    }

    // What it all comes to ------------------------------------------------------------------------
    ReadMoment settle()
    {
        const QDate today = m_now.date();
        if (!m_day && !m_time && !m_weekday) {
            const bool empty = m_text.trimmed().isEmpty();
            m_at = 0;
            fail(empty ? MomentProblem::Empty : MomentProblem::NotUnderstood, m_text.size());
            return m_read;
        }
        m_read.timeWritten = m_time.has_value();
        m_read.time = m_time.value_or(QTime(m_now.time().hour(), m_now.time().minute()));
        if (m_read.now)
            m_read.time = QTime(m_now.time().hour(), m_now.time().minute());
        // Today's is not the one that is meant.
        const bool otherDay =
            m_time && (m_way < 0 ? *m_time > m_now.time() : *m_time < m_now.time());
        if (m_day) {
            m_read.date = dateOf(*m_day, today);
            if (!m_read.date.isValid()) {
                fail(MomentProblem::NoSuchDay, m_day->at + m_day->length, m_day->at);
                return m_read;
            }
            if (m_weekday && m_read.date.dayOfWeek() != *m_weekday)
                fail(MomentProblem::OtherWeekday, m_weekdayEnd, m_weekdayAt);
        } else if (m_weekday) {
            const int way = m_last ? -1 : m_way;
            int days = (way * (*m_weekday - today.dayOfWeek()) + 7) % 7;
            if (days == 0 && (m_last || otherDay))
                days = 7;
            m_read.date = today.addDays(way * days);
        } else {
            m_read.date = otherDay ? today.addDays(m_way) : today;
        }
        return m_read;
    }

    [[nodiscard]] QDate dateOf(const Day& day, QDate today) const
    {
        if (day.year != 0)
            return day.year < kFirstYear || day.year > kLastYear
                       ? QDate()
                       : QDate(day.year, day.month, day.day);
        for (int years = 0; years <= kLeapYears; ++years) {
            const QDate date(today.year() + m_way * years, day.month, day.day);
            if (date.isValid() && (m_way < 0 ? date <= today : date >= today))
                return date;
        }
        return {};
    }

    chemistry::Instant m_moment;
    QDateTime m_now;
    QLocale m_locale;
    const MomentWords& m_words;
    const int m_way;                  // from today: -1 back, 1 ahead
    std::vector<MomentName> m_months; // when first needed
    std::vector<MomentName> m_weekdays;
    std::optional<Day> m_day;
    std::optional<QTime> m_time;
    std::optional<int> m_weekday;
    qsizetype m_weekdayAt = 0;
    qsizetype m_weekdayEnd = 0;
    bool m_last = false;
    ReadMoment m_read;
};

} // namespace

DayOrder dayOrderOf(const QLocale& locale)
{
    const QString format = locale.dateFormat(QLocale::ShortFormat);
    const qsizetype day = format.indexOf(u'd');
    const qsizetype month = format.indexOf(u'M');
    const qsizetype year = format.indexOf(u'y');
    if (year >= 0 && year < day && year < month)
        return DayOrder::YearFirst;
    return month < day ? DayOrder::MonthFirst : DayOrder::DayFirst;
}

ReadMoment readMoment(const QString& text, chemistry::Instant now, const QLocale& locale,
                      const MomentWords& words, Meant meant)
{
    return Reading(text, now, locale, words, meant).read();
}

} // namespace ullage::app
