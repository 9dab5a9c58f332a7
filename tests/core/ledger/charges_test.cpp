// What went from a thing of the cupboard into which batch, with shares reckoned by hand.
#include "core/ledger/charges.h"

#include "core/ledger/cupboard_check.h"
#include "tests/core/ledger/book_kit.h"

namespace ullage::ledger
{
namespace
{

using chemistry::Instant;
using chemistry::Millilitres;

Packet packetAt(const char* price)
{
    Packet packet;
    packet.id = "p";
    packet.solution = "dev";
    if (price) {
        packet.cost = Decimal::from(price);
    }
    packet.currency = "EUR";
    return packet;
}

Packet concentrate(const char* price)
{
    Packet packet = packetAt(price);
    packet.form = formulary::Form::Liquid;
    packet.volume = Millilitres(500);
    return packet;
}

Event happening(const char* id, double days, Happening what, const char* batch = "")
{
    return {id, batch, History::at(days), std::move(what), {}};
}

Event mixing(const char* id, double days, const char* batch, double volume)
{
    return happening(id, days, Mixed{"dev", "glass", Millilitres(volume), {}, "p"}, batch);
}

Event taking(const char* id, double days, double amount, const char* batch)
{
    return happening(id, days, Taken{"p", amount, batch});
}

std::vector<Charge> charged(const Packet& packet, const std::vector<Event>& entered,
                            double days = 100)
{
    const auto charges = chargesOf(purchaseOf(packet), entered, History::at(days));
    EXPECT_TRUE(charges);
    return charges.value_or(std::vector<Charge>());
}

std::string eur(const Cost& cost)
{
    const auto sums = cost.money.sums();
    return sums.size() == 1 ? sums.at("EUR").text() : std::string();
}

TEST(Charges, aPacketOfPowderIsBorneWholeByItsMixing)
{
    Packet packet = packetAt("20");
    packet.makes = Millilitres(5000); // though only a part of that was mixed: it is used up
    const auto charges = charged(packet, {mixing("m", 1, "b", 1000)});
    ASSERT_EQ(charges.size(), 1u);
    EXPECT_EQ(charges[0].batch, "b");
    EXPECT_EQ(charges[0].event, "m");
    EXPECT_EQ(eur(charges[0].cost), "20.00");
    EXPECT_TRUE(charges[0].cost.whole);
}

TEST(Charges, severalMixingsOfOnePacketShareItsPrice)
{
    // Without what it makes it was once charged whole to each of them.
    const auto charges =
        charged(packetAt("10"), {mixing("m1", 1, "a", 1000), mixing("m2", 2, "b", 1000),
                                 mixing("m3", 3, "c", 1000)});
    ASSERT_EQ(charges.size(), 3u);
    EXPECT_EQ(eur(charges[0].cost), "3.33");
    EXPECT_EQ(eur(charges[1].cost), "3.34");
    EXPECT_EQ(eur(charges[2].cost), "3.33");
}

TEST(Charges, aLiquidIsBorneByWhatWasTaken)
{
    // A fifth, then three tenths; what is left, and what is for no batch, stays with the bottle.
    const std::vector<Event> entered{taking("t1", 1, 100, "a"), taking("t2", 2, 150, "b"),
                                     taking("t3", 3, 50, "")};
    const auto charges = charged(concentrate("9.80"), entered);
    ASSERT_EQ(charges.size(), 2u);
    EXPECT_EQ(eur(charges[0].cost), "1.96");
    EXPECT_EQ(eur(charges[1].cost), "2.94");
    EXPECT_EQ(charged(concentrate("9.80"), entered, 1.5).size(), 1u) << "only until then";
}

TEST(Charges, sharesOfWhatIsUsedUpAddUpToItsPrice)
{
    Money all;
    for (const Charge& charge :
         charged(concentrate("10.00"), {taking("t1", 1, 166, "a"), taking("t2", 2, 167, "b"),
                                        taking("t3", 3, 167, "c")})) {
        all += charge.cost.money;
    }
    EXPECT_EQ(all.sums().at("EUR").text(), "10.00");
}

TEST(Charges, moreTakenThanBoughtIsStillNoMoreThanThePrice)
{
    const auto charges = charged(concentrate("10.00"),
                                 {taking("t1", 1, 400, "a"), happening("n", 2, Counted{"p", 400}),
                                  taking("t2", 3, 400, "b")});
    ASSERT_EQ(charges.size(), 2u);
    EXPECT_EQ(eur(charges[0].cost), "5.00");
    EXPECT_EQ(eur(charges[1].cost), "5.00");
}

TEST(Charges, whatIsNotKnownIsSaidAndIsNotNothing)
{
    const auto unpriced = charged(packetAt(nullptr), {mixing("m", 1, "b", 1000)});
    ASSERT_EQ(unpriced.size(), 1u);
    EXPECT_FALSE(unpriced[0].cost.whole);
    EXPECT_TRUE(unpriced[0].cost.money.empty());

    Packet unmeasured = concentrate("10.00");
    unmeasured.volume.reset();
    const auto shares = charged(unmeasured, {taking("t", 1, 100, "a")});
    ASSERT_EQ(shares.size(), 1u);
    EXPECT_FALSE(shares[0].cost.whole) << "a share of an amount that is not known";

    const auto named = charged(concentrate("10.00"), {mixing("m", 1, "b", 1000)});
    ASSERT_EQ(named.size(), 1u);
    EXPECT_FALSE(named[0].cost.whole) << "nothing was taken of the liquid";
    const auto taken =
        charged(concentrate("10.00"), {mixing("m", 1, "b", 1000), taking("t", 1, 100, "b")});
    ASSERT_EQ(taken.size(), 2u);
    EXPECT_TRUE(taken[0].cost.whole);
    EXPECT_TRUE(taken[1].cost.whole);
    EXPECT_TRUE(charged(packetAt("0"), {mixing("m", 1, "b", 1000)})[0].cost.whole)
        << "a gift costs nothing, and that is known";
}

TEST(Charges, aMixingIsToldBeforehandWhatItWillCost)
{
    Packet packet = packetAt("20");
    packet.makes = Millilitres(5000);
    EXPECT_EQ(eur(costOfMixing(purchaseOf(packet), Millilitres(1000))), "20.00");
    Packet liquid = concentrate("9.80");
    EXPECT_FALSE(costOfMixing(purchaseOf(liquid), Millilitres(500)).whole)
        << "nobody knows what it makes";
    liquid.makes = Millilitres(2500);
    EXPECT_EQ(eur(costOfMixing(purchaseOf(liquid), Millilitres(500))), "1.96");
    EXPECT_FALSE(costOfMixing(purchaseOf(packetAt(nullptr)), Millilitres(500)).whole);
}

TEST(Charges, whatWasTakenBackWasNeverCharged)
{
    EXPECT_TRUE(charged(packetAt("20"),
                        {mixing("m", 1, "b", 1000), happening("v", 2, Voided{"m", ""}, "b")})
                    .empty());
}

class ChargesOfBook : public BookTest
{
protected:
    std::string powder;
    std::string salt;

    ChargesOfBook()
    {
        Packet packet = packetAt("8.40");
        packet.id.clear();
        powder = *book->add(packet);
        Chemical chemical;
        chemical.name = "sulfite";
        chemical.grams = 1000;
        chemical.cost = Decimal::from("6");
        chemical.currency = "EUR";
        salt = *book->add(chemical);
    }
    Result<Charges> whole()
    {
        const auto cupboard = readCupboard(store);
        EXPECT_TRUE(cupboard);
        return readCharges(store, cupboard.value_or(Cupboard()), now);
    }
    std::string mixFrom(const std::string& packet, std::vector<NewBatch::Take> takes = {})
    {
        NewBatch batch{"dev", "glass", Millilitres(1000), "Dev", packet, false};
        batch.takes = std::move(takes);
        return book->mix(batch, when(1)).value_or("");
    }
};

TEST_F(ChargesOfBook, areTheSameOfTheWholeAndOfFewBatches)
{
    const auto one = mixFrom(powder, {{salt, 80}});
    const auto other = mixFrom({}, {{salt, 20}});
    const auto all = whole();
    ASSERT_TRUE(all);
    ASSERT_EQ(all->size(), 2u);
    ASSERT_EQ(all->at(one).size(), 2u);
    EXPECT_EQ(eur(all->at(one)[0].cost), "8.40");
    EXPECT_EQ(eur(all->at(one)[1].cost), "0.48");
    EXPECT_EQ(eur(all->at(other)[0].cost), "0.12");
    const auto few = readCharges(store, *book->events(one), now);
    ASSERT_TRUE(few);
    ASSERT_EQ(few->at(one).size(), 2u);
    EXPECT_EQ(few->at(one)[0].cost, all->at(one)[0].cost);
    EXPECT_EQ(few->at(one)[1].cost, all->at(one)[1].cost);
    ASSERT_TRUE(book->undo());
    EXPECT_FALSE(whole()->contains(other));
}

TEST_F(ChargesOfBook, goByTheLineThatStands)
{
    const auto one = mixFrom(powder);
    Packet corrected = packetAt("9.10");
    corrected.id.clear();
    corrected.replaces = powder;
    const auto again = book->add(corrected);
    ASSERT_TRUE(again);
    EXPECT_EQ(eur(whole()->at(one)[0].cost), "9.10");
    EXPECT_EQ(eur(readCharges(store, *book->events(one), now)->at(one)[0].cost), "9.10");
}

} // namespace
} // namespace ullage::ledger
