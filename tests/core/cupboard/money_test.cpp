#include "core/cupboard/money.h"

#include <gtest/gtest.h>

namespace ullage::cupboard
{
namespace
{

using ledger::Decimal;

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

} // namespace
} // namespace ullage::cupboard
