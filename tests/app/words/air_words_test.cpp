#include "app/words/air_words.h"

#include "tests/app/words/sample_batches.h"

#include <gtest/gtest.h>

namespace ullage::app
{
namespace
{

using sample::Bottle;
using sample::day;
using sample::english;

ledger::DateRange range(int value, int early, int late)
{
    ledger::DateRange dates;
    dates.value = day(value);
    dates.early = day(early);
    dates.late = day(late);
    return dates;
}

TEST(AirWords, aSpanNamesItsMonthsOnce)
{
    // Day 0 is 1 June 2026.
    EXPECT_EQ(discardSpanText(range(120, 90, 150), day(0), english().locale),
              QString::fromUtf8("about 29 Sept (Aug\u00a0–\u2060\u00a0Oct)"));
    EXPECT_EQ(discardSpanText(range(120, 112, 121), day(0), english().locale),
              QString::fromUtf8("about 29 Sept"));
    EXPECT_TRUE(discardSpanText(range(120, 90, 300), day(0), english().locale)
                    .endsWith(QString::fromUtf8("–\u2060\u00a0Mar 2027)")));
}

TEST(AirWords, onlyRemediesWorthAWeekAreSaidBestFirst)
{
    ledger::AirAdvice advice;
    advice.helps = {
        {ledger::Remedy::Squeeze, day(100), chemistry::Days(70), nullptr, {}},
        {ledger::Remedy::TopUp, day(60), chemistry::Days(20), nullptr, chemistry::Millilitres(400)},
        {ledger::Remedy::Glass, day(33), chemistry::Days(3), nullptr, {}}};
    const auto said = helpSentences(advice, day(10), english());
    ASSERT_EQ(said.size(), 2);
    EXPECT_TRUE(said[0].startsWith("Squeeze"));
    EXPECT_TRUE(said[0].contains("2 month"));
    EXPECT_TRUE(said[1].contains(QString::fromUtf8("400\u00a0ml")));
    EXPECT_TRUE(said[1].contains("3 week"));
    // "to 29. Sept." is the end of a sentence as it stands.
    advice.helps[0].discardBy = day(120);
    const auto german = helpSentences(advice, day(10), {{}, QLocale("de")});
    EXPECT_TRUE(german[0].endsWith(u'.') && !german[0].contains("..")) << german[0].toStdString();
    advice.helps.erase(advice.helps.begin(), advice.helps.begin() + 2);
    EXPECT_TRUE(helpSentences(advice, day(10), english()).front().contains("Nothing"));
}

TEST(AirWords, adviceOfTheModelIsSaidOfAHalfFullBottle)
{
    Bottle bottle;
    bottle.happen(day(1), ledger::Drawn{sample::Millilitres(500), {}});
    const auto batch = bottle.at(day(2));
    const auto advice = ledger::airAdvice(batch, {});
    ASSERT_TRUE(advice);
    const auto said = helpSentences(*advice, day(2), english());
    EXPECT_TRUE(said.join(u' ').contains("Top it up")) << said.join(u' ').toStdString();
    EXPECT_TRUE(routeSentence(batch, english()).contains("%"));
}

} // namespace
} // namespace ullage::app
