#include "app/words/moment_reading.h"
#include "tests/fuzz/fuzz_targets.h"

namespace ullage::fuzz
{

using namespace app;

namespace
{

// Words of another language among them, as a translation would give them.
const MomentWords& words()
{
    static const MomentWords all = [] {
        MomentWords some = MomentWords::translated();
        some.now << QStringLiteral("jetzt");
        some.yesterday << QStringLiteral("gestern");
        some.fillers << QStringLiteral("um");
        some.afterHour << QStringLiteral("Uhr");
        some.daysAgo << QStringLiteral("vor %1 Tagen");
        return some;
    }();
    return all;
}

void readIn(const QLocale& locale, const QString& typed, chemistry::Instant now)
{
    const ReadMoment read = readMoment(typed, now, locale, words());
    if (!read.isUnderstood()) {
        need(read.at >= 0 && read.length >= 0 && read.at + read.length <= typed.size(),
             "a problem outside what was typed");
        return;
    }
    need(read.date.isValid() && read.time.isValid(), "a moment that is none");
    need(read.time.second() == 0, "more than minutes");
    const QString shown = fieldText(read.date, read.time, locale);
    const ReadMoment again = readMoment(shown, now, locale, words());
    need(again.isUnderstood(), "what is shown is not understood");
    need(again.date == read.date && again.time == read.time, "what is shown means something else");
    const ReadMoment day = readMoment(fieldText(read.date, locale), now, locale, words());
    need(day.isUnderstood() && day.date == read.date, "the day that is shown is another");
}

} // namespace

void readWhen(const QByteArray& text)
{
    const QString typed = QString::fromUtf8(text);
    for (const QLocale& locale :
         {QLocale(QLocale::English, QLocale::UnitedStates), QLocale(QLocale::German),
          QLocale(QLocale::Swedish), QLocale(QLocale::Arabic, QLocale::Egypt)}) {
        // An evening; and the 29th of February, shortly after midnight.
        for (const std::int64_t minutes : {29930110, 28486085})
            readIn(locale, typed, chemistry::Instant(std::chrono::minutes(minutes)));
    }
}

} // namespace ullage::fuzz
