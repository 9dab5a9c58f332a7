#include "app/words/moment_text.h"

#include "app/words/number_text.h"
#include "core/chemistry/keeping.h"
#include "core/chemistry/time_units.h"

#include <QCoreApplication>
#include <QSet>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

using chemistry::Instant;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

// Longer than any clock is ahead of or behind UTC, and than it is ever put forward at once.
constexpr auto kSurelyPast = std::chrono::hours(26);

// As if the user's clock showed UTC: counts what a calendar shows, gaps and repeats left out.
Instant asShown(QDate date, QTime time)
{
    return Instant(std::chrono::milliseconds(QDateTime(date, time, Qt::UTC).toMSecsSinceEpoch()));
}

std::chrono::seconds ahead(Instant moment)
{
    return std::chrono::seconds(localTime(moment).offsetFromUtc());
}

} // namespace

QDateTime localTime(chemistry::Instant moment)
{
    return QDateTime::fromMSecsSinceEpoch(moment.time_since_epoch().count());
}

QDate localDate(chemistry::Instant moment) { return localTime(moment).date(); }

chemistry::Instant instantOf(const QDateTime& local)
{
    return chemistry::Instant(std::chrono::milliseconds(local.toMSecsSinceEpoch()));
}

std::vector<Instant> momentsAt(QDate date, QTime time)
{
    const Instant shown = asShown(date, time);
    std::vector<Instant> found;
    for (const auto offset :
         {ahead(shown - kSurelyPast), ahead(shown), ahead(shown + kSurelyPast)}) {
        const Instant moment = shown - offset;
        const QDateTime local = localTime(moment);
        if (local.date() == date && local.time() == time)
            found.push_back(moment);
    }
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

std::optional<Instant> skippedAt(QDate date, QTime time)
{
    if (!momentsAt(date, time).empty())
        return std::nullopt;
    const Instant shown = asShown(date, time);
    const auto before = ahead(shown - kSurelyPast);
    auto from = std::chrono::floor<std::chrono::seconds>(shown - kSurelyPast);
    auto until = from + 2 * kSurelyPast;
    while (until - from > std::chrono::seconds(1)) {
        const auto middle = from + (until - from) / 2;
        (ahead(middle) == before ? from : until) = middle;
    }
    return until;
}

QString dayText(chemistry::Instant moment, chemistry::Instant now, const QLocale& locale)
{
    return dateText(localDate(moment), localDate(now), locale);
}

QStringList dayTexts(const std::vector<Instant>& moments, Instant now, const QLocale& locale)
{
    const bool years = std::any_of(moments.begin(), moments.end(), [&](Instant moment) {
        return dayText(moment, now, locale) == yearDateText(localDate(moment), locale);
    });
    QStringList texts;
    for (const Instant moment : moments)
        texts << (years ? monthYearText(localDate(moment), locale) : dayText(moment, now, locale));
    // All in one far month: then it is the days that tell them apart.
    if (years && QSet<QString>(texts.begin(), texts.end()).size() < 2) {
        texts.clear();
        for (const Instant moment : moments)
            texts << yearDateText(localDate(moment), locale);
    }
    return texts;
}

QString aboutDayText(chemistry::Instant moment, chemistry::Instant now, const QLocale& locale)
{
    return aboutDateText(localDate(moment), localDate(now), locale);
}

QString momentText(chemistry::Instant moment, chemistry::Instant now, const QLocale& locale)
{
    return Words::tr("%1, %2", "date, time of day")
        .arg(dayText(moment, now, locale),
             locale.toString(localTime(moment).time(), QLocale::ShortFormat));
}

QString keepingText(chemistry::Days time, const QLocale& locale)
{
    if (const auto months = chemistry::wholeMonths(time); months && *months > 0)
        return Words::tr("%Ln month(s)", nullptr, *months);
    if (time.value() >= 2 || std::abs(time.value() - 1) < 1e-6)
        return Words::tr("%Ln day(s)", nullptr, static_cast<int>(std::lround(time.value())));
    return Words::tr("%1 hours").arg(numberText(chemistry::inHours(time).value(), 0, locale));
}

} // namespace ullage::app
