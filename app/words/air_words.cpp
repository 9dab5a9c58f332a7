#include "app/words/air_words.h"

#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/chemistry/storing.h"

#include <QCoreApplication>

#include <cmath>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(AirWords)
};

QString monthText(QDate month, QDate date, const QLocale& locale)
{
    const QString name = locale.standaloneMonthName(month.month(), QLocale::ShortFormat);
    return month.year() == date.year()
               ? name
               : Words::tr("%1 %2", "month, year").arg(name).arg(month.year());
}

// Days a model gives, no finer than it can tell.
QString gainText(chemistry::Days days)
{
    const double time = days.value();
    if (time >= 60)
        return Words::tr("%Ln month(s)", nullptr, static_cast<int>(std::lround(time / 30.4375)));
    return Words::tr("%Ln week(s)", nullptr, static_cast<int>(std::lround(time / 7)));
}

QString remedyText(const ledger::Help& help, const Wording& wording)
{
    switch (help.remedy) {
    case ledger::Remedy::Squeeze:
        return Words::tr("Squeeze or displace the air out and close it");
    case ledger::Remedy::SmallerBottle:
        return Words::tr("Pour it into %1")
            .arg(help.vessel ? shownName(help.vessel->name) : QString());
    case ledger::Remedy::Glass:
        return Words::tr("Keep it in glass");
    case ledger::Remedy::TopUp:
        break;
    }
    return Words::tr("Top it up to the brim with %1 of fresh solution")
        .arg(volumeText(help.topUp.value_or(chemistry::Millilitres(0)), wording));
}

} // namespace

QString discardSpanText(const ledger::DateRange& range, chemistry::Instant now,
                        const QLocale& locale)
{
    const QString about = aboutDayText(range.value, now, locale);
    const QDate date = localDate(range.value);
    const QString early = monthText(localDate(range.early), date, locale);
    const QString late = monthText(localDate(range.late), date, locale);
    if (early == late)
        return about;
    const QString span = Words::tr("%1 (%2 – %3)", "date, first and last month");
    // The months stay together where a line ends, which it may after a dash.
    return QString(span)
        .replace(QStringLiteral(" – "), QStringLiteral("\u00a0–\u2060\u00a0"))
        .arg(about, early, late);
}

QStringList helpSentences(const ledger::AirAdvice& advice, chemistry::Instant now,
                          const Wording& wording)
{
    constexpr double kWorthSaying = 7;
    QStringList sentences;
    for (const ledger::Help& help : advice.helps) {
        if (help.gained.value() < kWorthSaying)
            continue;
        sentences << withOneStop(Words::tr("%1: about %2 more, to %3.", "remedy, time gained, date")
                                     .arg(remedyText(help, wording), gainText(help.gained),
                                          aboutDayText(help.discardBy, now, wording.locale)));
    }
    if (sentences.isEmpty())
        sentences << Words::tr("Nothing that could be done about the air would gain a week.");
    return sentences;
}

QString routeName(ledger::Route route)
{
    switch (route) {
    case ledger::Route::Pouring:
        return Words::tr("poured in");
    case ledger::Route::BottleAir:
        return Words::tr("air in the bottle");
    case ledger::Route::Wall:
        return Words::tr("through the wall");
    case ledger::Route::Cap:
        return Words::tr("past the cap");
    case ledger::Route::OpenVessel:
        break;
    }
    return Words::tr("standing open");
}

QString routeSentence(const ledger::Batch& batch, const Wording& wording)
{
    const ledger::RouteShare most = ledger::routeShares(batch).front();
    return Words::tr("Where most of its oxygen came from: %1 (%2).")
        .arg(routeName(most.route), percentText(most.share, wording.locale));
}

QString storeSentence(const ledger::Batch& batch, const Wording& wording)
{
    const bool fixer = batch.solution->role == formulary::Role::Fixer;
    const auto warning = chemistry::storeWarning(batch.temperature, fixer);
    if (!warning)
        return {};
    const auto limit = [&](const chemistry::Constant& constant) {
        return shortTemperatureText(chemistry::Celsius(constant.value), wording);
    };
    if (*warning == chemistry::StoreWarning::TooWarm)
        return Words::tr("It stands too warm: above %1 a fixer spoils.")
            .arg(limit(chemistry::kWarmFixer));
    return Words::tr("It stands too cold: below %1 crystals may fall out (warming dissolves them "
                     "again), and a bottle that may freeze must not be more than %2 full.")
        .arg(limit(chemistry::kColdStore),
             percentText(chemistry::kFreezingFill.value, wording.locale));
}

} // namespace ullage::app
