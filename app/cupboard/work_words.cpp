#include "app/cupboard/work_words.h"

#include "app/words/local_calendar.h"
#include "app/words/moment_text.h"
#include "core/cupboard/recurrence.h"

#include <QCoreApplication>
#include <QStringList>

namespace ullage::app
{

using cupboard::Frequency;
using cupboard::Recurrence;

namespace
{

struct RuleWords {
    Q_DECLARE_TR_FUNCTIONS(WorkRules)
};

QString everyWords(const Recurrence& rule)
{
    const int n = rule.interval;
    switch (rule.frequency) {
    case Frequency::Daily:
        return n == 1 ? RuleWords::tr("every day") : RuleWords::tr("every %Ln day(s)", nullptr, n);
    case Frequency::Weekly:
        return n == 1   ? RuleWords::tr("every week")
               : n == 2 ? RuleWords::tr("every second week")
               : n == 4 ? RuleWords::tr("every fourth week")
                        : RuleWords::tr("every %Ln week(s)", nullptr, n);
    case Frequency::Monthly:
        return n == 1 ? RuleWords::tr("every month")
                      : RuleWords::tr("every %Ln month(s)", nullptr, n);
    case Frequency::Yearly:
        break;
    }
    return n == 1 ? RuleWords::tr("every year") : RuleWords::tr("every %Ln year(s)", nullptr, n);
}

QString dayName(const cupboard::RuleDay& day, const QLocale& locale)
{
    const QString name = locale.dayName(static_cast<int>(day.day.iso_encoding()));
    switch (day.number) {
    case 0:
        return name;
    case 1:
        return RuleWords::tr("first %1", "weekday of a month").arg(name);
    case 2:
        return RuleWords::tr("second %1", "weekday of a month").arg(name);
    case 3:
        return RuleWords::tr("third %1", "weekday of a month").arg(name);
    case 4:
        return RuleWords::tr("fourth %1", "weekday of a month").arg(name);
    case 5:
        return RuleWords::tr("fifth %1", "weekday of a month").arg(name);
    case -1:
        return RuleWords::tr("last %1", "weekday of a month").arg(name);
    default:
        return RuleWords::tr("%1 number %2 from the end", "weekday of a month")
            .arg(name, locale.toString(-day.number));
    }
}

QString monthDayName(int day, const QLocale& locale)
{
    if (day > 0)
        return RuleWords::tr("day %1", "of a month").arg(locale.toString(day));
    return day == -1
               ? RuleWords::tr("last day", "of a month")
               : RuleWords::tr("day %1 from the end", "of a month").arg(locale.toString(-day));
}

} // namespace

QString ruleWords(const std::string& rule, const QLocale& locale)
{
    if (rule.empty())
        return {};
    const auto read = cupboard::readRule(rule);
    if (!read)
        return QString::fromStdString(rule);
    QStringList days;
    for (const cupboard::RuleDay& day : read->days)
        days << dayName(day, locale);
    for (const int day : read->monthDays)
        days << monthDayName(day, locale);
    if (days.isEmpty())
        return everyWords(*read);
    return RuleWords::tr("%1 on %2", "every week, days")
        .arg(everyWords(*read), days.join(RuleWords::tr(", ", "between days")));
}

QString ruleEndWords(const std::string& rule, chemistry::Instant now, const QLocale& locale)
{
    const auto read = rule.empty() ? std::nullopt : cupboard::readRule(rule);
    if (read && read->count)
        return RuleWords::tr("%Ln time(s) in all", nullptr, *read->count);
    if (!read || !read->until)
        return {};
    const auto last = read->untilShown ? wallClock().when(*read->until) : *read->until;
    return RuleWords::tr("until %1").arg(dayText(last, now, locale));
}

QString workName(const ledger::Work& work)
{
    return work.name.empty() ? RuleWords::tr("Film to develop") : QString::fromStdString(work.name);
}

} // namespace ullage::app
