// What batches cost, with what is poured from one into another reckoned by hand.
#include "core/ledger/costs.h"

#include "tests/core/ledger/book_kit.h"

namespace ullage::ledger
{
namespace
{

using chemistry::Millilitres;

class CostsTest : public BookTest
{
protected:
    std::string packet(const char* price, const char* currency = "EUR")
    {
        Packet line;
        line.solution = "dev";
        if (price) {
            line.cost = Decimal::from(price);
        }
        line.currency = currency;
        return *book->add(line);
    }
    std::string liquid(const char* price)
    {
        Packet line;
        line.solution = "dev";
        line.form = formulary::Form::Liquid;
        line.volume = Millilitres(500);
        line.cost = Decimal::from(price);
        line.currency = "EUR";
        return *book->add(line);
    }
    std::string mixed(const NewBatch& batch, double days)
    {
        const auto id = book->mix(batch, when(days));
        EXPECT_TRUE(id) << id.error().field;
        return id.value_or("");
    }
    std::string mixFrom(const std::string& packet, double days = 0, double volume = 1000)
    {
        return mixed({"dev", "glass", Millilitres(volume), {}, packet, false}, days);
    }
    std::string decant(const std::string& from, double days, double volume)
    {
        return mixed({"dev", "glass", Millilitres(volume), {}, {}, false, false, from}, days);
    }
    Cost cost(const std::string& batch, double days = 100)
    {
        const auto found = book->cost(batch, History::at(days));
        EXPECT_TRUE(found) << found.error().field;
        return found.value_or(Cost());
    }
    std::string eur(const std::string& batch, double days = 100)
    {
        const auto sums = cost(batch, days).money.sums();
        return sums.size() == 1 && sums.contains("EUR") ? sums.at("EUR").text() : std::string();
    }
};

TEST_F(CostsTest, aBatchCostsItsPacketAndWhatWasTakenForIt)
{
    NewBatch batch{"dev", "glass", Millilitres(1000), {}, packet("8.40"), false};
    batch.takes = {{liquid("9.80"), 50}};
    const auto id = mixed(batch, 0);
    EXPECT_EQ(eur(id), "9.38"); // 8.40 and a tenth of 9.80
    EXPECT_TRUE(cost(id).whole);
}

TEST_F(CostsTest, aPacketCostsWhatItWasBoughtFor)
{
    const auto first = mixFrom(packet("8.40"));
    const auto second = mixFrom(packet("9.10"), 1);
    EXPECT_EQ(eur(first), "8.40") << "what the same costs later changes nothing";
    EXPECT_EQ(eur(second), "9.10");
}

TEST_F(CostsTest, withoutAnythingFromTheCupboardItIsNotKnown)
{
    EXPECT_FALSE(cost(mix()).whole);
    EXPECT_FALSE(cost(mixFrom(packet(nullptr))).whole);
    NewBatch found{"dev", "glass", Millilitres(500), {}, {}, true};
    EXPECT_FALSE(cost(mixed(found, 0)).whole);
    const auto unknown = book->cost("nothing", now);
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error().code, ErrorCode::UnknownId);
}

TEST_F(CostsTest, whatIsPouredOnTakesItsPartAlong)
{
    const auto stock = mixFrom(packet("10"));
    const auto first = decant(stock, 1, 300);
    const auto second = decant(stock, 2, 350);
    EXPECT_EQ(eur(first), "3.00");
    EXPECT_EQ(eur(second), "3.50");
    EXPECT_EQ(eur(stock), "3.50");
    EXPECT_EQ(eur(stock, 1.5), "7.00") << "so far";
    const auto third = decant(stock, 3, 350);
    EXPECT_EQ(eur(stock), "0.00");
    EXPECT_EQ(eur(third), "3.50");
    EXPECT_TRUE(cost(third).whole);
}

TEST_F(CostsTest, theLastOneTakesTheRemainder)
{
    const auto stock = mixFrom(packet("10"), 0, 900);
    const auto first = decant(stock, 1, 300);
    const auto second = decant(stock, 2, 300);
    const auto third = decant(stock, 3, 300);
    Money all = cost(stock).money;
    for (const auto& one : {first, second, third}) {
        all += cost(one).money;
        EXPECT_NEAR(cost(one).money.sums().at("EUR").value(), 10.0 / 3, 0.01);
    }
    EXPECT_EQ(all.sums().at("EUR").text(), "10.00");
}

TEST_F(CostsTest, whatWasPouredAwayOrUsedOnceStaysWithTheBottle)
{
    const auto stock = mixFrom(packet("10"));
    ASSERT_TRUE(book->drawOff(stock, Millilitres(500), "test", when(1)));
    const auto heir = decant(stock, 2, 250);
    EXPECT_EQ(eur(heir), "2.50") << "a quarter of what was mixed, not half";
    EXPECT_EQ(eur(stock), "7.50");
}

TEST_F(CostsTest, toppedUpFromABottleAndFromTheCupboard)
{
    const auto fresh = mixFrom(packet("10"));
    const auto used = mixFrom(packet("6"));
    ASSERT_TRUE(book->drawOff(used, Millilitres(100), "test", when(1)));
    ASSERT_TRUE(book->topUp(used, Millilitres(100), when(2), fresh));
    EXPECT_EQ(eur(used), "7.00");
    EXPECT_EQ(eur(fresh), "9.00");
    EXPECT_TRUE(cost(used).whole);
    ASSERT_TRUE(book->drawOff(used, Millilitres(100), "test", when(3)));
    ASSERT_TRUE(book->topUp(used, Millilitres(50), when(4)));
    EXPECT_FALSE(cost(used).whole) << "nobody knows what that was";
    EXPECT_TRUE(cost(used, 3.5).whole);
    ASSERT_TRUE(book->record(Taken{liquid("10"), 25, used}, History::at(4)));
    EXPECT_TRUE(cost(used).whole);
    EXPECT_EQ(eur(used), "7.50");
}

TEST_F(CostsTest, fromABottleOfUnknownCostItIsNotKnownEither)
{
    const auto unknown = mix();
    EXPECT_FALSE(cost(decant(unknown, 1, 200)).whole);
    const auto known = mixFrom(packet("8"));
    ASSERT_TRUE(book->drawOff(known, Millilitres(100), "test", when(2)));
    ASSERT_TRUE(book->topUp(known, Millilitres(100), when(3), unknown));
    EXPECT_FALSE(cost(known).whole);
    EXPECT_EQ(eur(known), "8.00") << "what is known is at least that";
}

TEST_F(CostsTest, currenciesAreNotAddedUp)
{
    const auto euros = mixFrom(packet("10", "EUR"));
    const auto crowns = mixFrom(packet("100", "SEK"));
    ASSERT_TRUE(book->drawOff(euros, Millilitres(500), "test", when(1)));
    ASSERT_TRUE(book->topUp(euros, Millilitres(250), when(2), crowns));
    const auto sums = cost(euros).money.sums();
    ASSERT_EQ(sums.size(), 2u);
    EXPECT_EQ(sums.at("EUR").text(), "10.00");
    EXPECT_EQ(sums.at("SEK").text(), "25.00");
}

TEST(FilmCost, isWhatOneOfTheFilmsDoneCosts)
{
    Cost cost;
    cost.money.add(*Decimal::from("8.40"), "EUR");
    cost.whole = false;
    const Cost part = costOfFilm(cost, chemistry::Films(0.25), chemistry::Films(3));
    EXPECT_EQ(part.money.sums().at("EUR").text(), "0.70");
    EXPECT_FALSE(part.whole);
    EXPECT_TRUE(costOfFilm(cost, chemistry::Films(0), chemistry::Films(3)).money.empty());
    EXPECT_TRUE(costOfFilm(cost, chemistry::Films(1), chemistry::Films(0)).money.empty());
}

TEST_F(CostsTest, pouringToAndFroLosesNothing)
{
    const auto one = mixFrom(packet("9.99"), 0, 500);
    const auto other = mixFrom(packet("7.77"), 0, 500);
    for (int i = 0; i < 20; ++i) {
        const double days = 1 + i;
        ASSERT_TRUE(book->topUp(other, Millilitres(70 + i), when(days), one));
        ASSERT_TRUE(book->topUp(one, Millilitres(60 + i), when(days + 0.5), other));
    }
    Money all = cost(one).money;
    all += cost(other).money;
    EXPECT_EQ(all.sums().at("EUR").text(), "17.76");
}

TEST(CostByFilms, partsAddUpAndWithoutFilmItStaysApart)
{
    Cost cost;
    cost.money.add(*Decimal::from("10"), "EUR");
    const auto parts = costByFilms(cost, {2, 1});
    ASSERT_EQ(parts.size(), 3u);
    EXPECT_EQ(parts[0].money.sums().at("EUR").text(), "6.67");
    EXPECT_EQ(parts[1].money.sums().at("EUR").text(), "3.33");
    EXPECT_TRUE(parts[2].money.empty());
    const auto none = costByFilms({cost.money, false}, {0, 0});
    EXPECT_TRUE(none[0].money.empty());
    EXPECT_EQ(none[2].money, cost.money);
    EXPECT_FALSE(none[2].whole);
}

} // namespace
} // namespace ullage::ledger
