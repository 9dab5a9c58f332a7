#include "app/words/money_words.h"

#include <gtest/gtest.h>

namespace ullage::app
{
namespace
{

const QLocale kBritish(QLocale::English, QLocale::UnitedKingdom);
const QLocale kGerman(QLocale::German, QLocale::Germany);

QString amountOf(const char* text, const char* currency, const QLocale& locale)
{
    return moneyText(*ledger::Decimal::from(text), currency, locale);
}

ledger::Money eurosAndCrowns()
{
    ledger::Money money;
    money.add(*ledger::Decimal::from("9.80"), "EUR");
    money.add(*ledger::Decimal::from("12"), "SEK");
    return money;
}

} // namespace

TEST(MoneyWords, anAmountIsExactInTheLocalesSigns)
{
    EXPECT_EQ(amountOf("9.80", "EUR", kBritish), "9.80\u00a0EUR");
    EXPECT_EQ(amountOf("1234.5", "EUR", kGerman), "1.234,50\u00a0EUR");
    EXPECT_EQ(amountOf("12", "", kBritish), "12.00");
    EXPECT_EQ(amountOf("0.0042", "EUR", kBritish), "0.0042\u00a0EUR");
    EXPECT_EQ(amountOf("999999999999.999999", "X", kBritish), "999,999,999,999.999999\u00a0X")
        << "a double has no such places";
}

TEST(MoneyWords, currenciesStandSideBySide)
{
    EXPECT_EQ(moneyText(eurosAndCrowns(), kBritish), "9.80\u00a0EUR + 12.00\u00a0SEK");
    EXPECT_TRUE(moneyText(ledger::Money(), kBritish).isEmpty());
}

TEST(MoneyWords, whatIsNotKnownIsSaid)
{
    EXPECT_EQ(costText({eurosAndCrowns(), false}, kBritish),
              "at least 9.80\u00a0EUR + 12.00\u00a0SEK");
    EXPECT_EQ(costText({{}, false}, kBritish), "not known");
    EXPECT_TRUE(costText({}, kBritish).isEmpty());
}

TEST(MoneyWords, aBottleTellsWhatItCostAndEachFilm)
{
    ledger::Cost cost;
    cost.money.add(*ledger::Decimal::from("8.40"), "EUR");
    EXPECT_EQ(bottleCostText(cost, chemistry::Films(10), kBritish),
              "Cost 8.40\u00a0EUR so far, 0.84\u00a0EUR for each film done.");
    EXPECT_EQ(bottleCostText(cost, chemistry::Films(0), kBritish), "Cost 8.40\u00a0EUR so far.");
    cost.whole = false;
    EXPECT_EQ(bottleCostText(cost, chemistry::Films(10), kBritish),
              "Cost at least 8.40\u00a0EUR so far.");
    EXPECT_EQ(endedCostText({cost.money, true}, chemistry::Films(10), kBritish),
              "Cost 8.40\u00a0EUR, 0.84\u00a0EUR for each film done.");
    EXPECT_EQ(endedCostText({cost.money, false}, chemistry::Films(10), kBritish),
              "Cost at least 8.40\u00a0EUR.");
    EXPECT_TRUE(endedCostText({{}, false}, chemistry::Films(10), kBritish).isEmpty());
    EXPECT_TRUE(bottleCostText({{}, false}, chemistry::Films(10), kBritish).isEmpty());
    const Wording wording{{}, kBritish};
    EXPECT_EQ(explainCost({{}, false}, chemistry::Films(10), wording).value, "not known");
    EXPECT_EQ(explainCost(cost, chemistry::Films(10), wording).notes.size(), 1);
}

} // namespace ullage::app
