#include "core/ledger/money.h"

#include <gtest/gtest.h>

namespace ullage::ledger
{
namespace
{

Money moneyOf(const char* amount, const char* currency = "EUR")
{
    Money money;
    money.add(*Decimal::from(amount), currency);
    return money;
}

std::vector<std::string> textsOf(const std::vector<Money>& parts)
{
    std::vector<std::string> texts;
    for (const Money& part : parts) {
        texts.push_back(part.sums().at("EUR").text());
    }
    return texts;
}

TEST(Money, addsExactlyAndKeepsCurrenciesApart)
{
    Money money;
    EXPECT_TRUE(money.empty());
    for (int i = 0; i < 10; ++i) {
        money.add(*Decimal::from("0.1"), "EUR"); // as doubles they are not 1
    }
    money.add(*Decimal::from("8.40"), "EUR", 3);
    money.add(*Decimal::from("12"), "SEK");
    money.add(*Decimal::from("0.000001"), "X");
    money.add(*Decimal::from("1000000"), "X", 999'999);
    const auto sums = money.sums();
    ASSERT_EQ(sums.size(), 3U);
    EXPECT_EQ(sums.at("EUR").text(), "26.20");
    EXPECT_EQ(sums.at("SEK").text(), "12");
    EXPECT_EQ(sums.at("X").text(), "999999000000.000001");
}

TEST(Money, sumsAreAddedAndTakenOffCurrencyByCurrency)
{
    Money money = moneyOf("10");
    money += moneyOf("0.50");
    money += moneyOf("3", "SEK");
    money -= moneyOf("10.25");
    EXPECT_EQ(money.sums().at("EUR").text(), "0.25");
    EXPECT_EQ(money.sums().at("SEK").text(), "3");
}

TEST(Money, partsAddUpToAllOfIt)
{
    const auto thirds = moneyOf("10").split({1, 1, 1});
    EXPECT_EQ(textsOf(thirds), (std::vector<std::string>{"3.33", "3.34", "3.33"}));
    EXPECT_EQ(textsOf(moneyOf("9.80").split({100, 400})),
              (std::vector<std::string>{"1.96", "7.84"}));
    EXPECT_EQ(textsOf(moneyOf("0.001").split({1, 1})), (std::vector<std::string>{"0.001", "0.000"}))
        << "as fine as it was written";
    for (const std::size_t count : {2U, 3U, 7U, 11U, 97U}) {
        Money all;
        for (const Money& part : moneyOf("19.99").split(std::vector<double>(count, 0.1))) {
            all += part;
        }
        EXPECT_EQ(all.sums().at("EUR").text(), "19.99") << count;
    }
}

TEST(Money, aPartStaysWhenOneBehindItIsDivided)
{
    const auto before = moneyOf("10").split({300, 700});
    const auto after = moneyOf("10").split({300, 450, 250});
    EXPECT_EQ(before[0], after[0]);
}

TEST(Money, aShareOfEachCurrency)
{
    Money money = moneyOf("12.50");
    money += moneyOf("30", "SEK");
    const auto part = money.share(0.1).sums();
    EXPECT_EQ(part.at("EUR").text(), "1.25");
    EXPECT_EQ(part.at("SEK").text(), "3.00");
    Money halves = moneyOf("0.01").share(0.5, Money::Rounding::Fine);
    halves += moneyOf("0.01").share(0.5, Money::Rounding::Fine);
    EXPECT_EQ(halves, moneyOf("0.01")) << "what is reckoned on with keeps its last places";
}

TEST(Money, whatOneOfSeveralCosts)
{
    EXPECT_EQ(moneyOf("8.40").forEachOf(10).sums().at("EUR").text(), "0.84");
    EXPECT_EQ(moneyOf("10").forEachOf(3).sums().at("EUR").text(), "3.33");
    EXPECT_EQ(moneyOf("1").forEachOf(250).sums().at("EUR").text(), "0.0040") << "not nothing";
    EXPECT_EQ(moneyOf("0").forEachOf(4).sums().at("EUR").text(), "0.00");
}

} // namespace
} // namespace ullage::ledger
