#include "core/ledger/item_stock.h"

#include "core/ledger/cupboard_state.h"
#include "tests/core/ledger/ledger_kit.h"

namespace ullage::ledger
{
namespace
{

using chemistry::Days;
using chemistry::Millilitres;

class ItemStockTest : public testing::Test
{
protected:
    std::vector<Event> entered;

    std::string add(double days, Happening what, const std::string& batch = {})
    {
        const std::string id = "e" + std::to_string(entered.size());
        entered.push_back({id, batch, History::at(days), std::move(what), {}});
        return id;
    }
    static Item powder()
    {
        Packet packet;
        packet.id = "p";
        packet.solution = "dev";
        packet.makes = Millilitres(1000);
        return itemOf(packet);
    }
    static Item liquid(std::optional<double> volume = 500)
    {
        Packet packet;
        packet.id = "p";
        packet.solution = "fixer";
        packet.form = formulary::Form::Liquid;
        packet.keepsOpened = Days(180);
        packet.useBy = "2027-01-31";
        if (volume) {
            packet.volume = Millilitres(*volume);
        }
        return itemOf(packet);
    }
    static Item borax()
    {
        Chemical chemical;
        chemical.id = "p";
        chemical.name = "borax";
        chemical.grams = 250;
        return itemOf(chemical);
    }
    ItemStock stock(const Item& item, double days = 100)
    {
        const auto found = stockOf(item, entered, History::at(days));
        EXPECT_TRUE(found) << found.error().field;
        return found.value_or(ItemStock());
    }
    Error refused(const Item& item)
    {
        const auto found = stockOf(item, entered);
        EXPECT_FALSE(found);
        return found ? Error() : found.error();
    }
    static Mixed from(const std::string& packet)
    {
        Mixed mixed;
        mixed.packet = packet;
        return mixed;
    }
};

TEST(LiquidFor, isItsShareOfWhatAllOfItMakes)
{
    Packet packet;
    packet.id = "c";
    packet.volume = chemistry::Millilitres(500);
    packet.makes = chemistry::Millilitres(2500);
    EXPECT_EQ(liquidFor(itemOf(packet), chemistry::Millilitres(1000)), 200);
    packet.makes.reset();
    EXPECT_FALSE(liquidFor(itemOf(packet), chemistry::Millilitres(1000)));
    packet.makes = chemistry::Millilitres(1000);
    packet.form = formulary::Form::Powder;
    packet.volume.reset();
    EXPECT_FALSE(liquidFor(itemOf(packet), chemistry::Millilitres(1000)));
}

TEST_F(ItemStockTest, aPacketOfPowderIsUsedWhole)
{
    EXPECT_EQ(stock(powder()).left, 1);
    EXPECT_TRUE(suitsMixing(powder(), stock(powder())));
    add(3, from("p"), "dev-1");
    EXPECT_TRUE(stock(powder(), 2).isHere());
    const auto used = stock(powder());
    EXPECT_FALSE(used.isHere());
    EXPECT_TRUE(used.usedWhole);
    EXPECT_EQ(used.endedAt, History::at(3));
    ASSERT_EQ(used.uses.size(), 1U);
    EXPECT_EQ(used.uses.front().forBatch, "dev-1");
    EXPECT_EQ(suitsMixing(powder(), used).error().allowed, kPacketHereForm);
    add(4, Taken{"p", 0.5, {}});
    EXPECT_EQ(refused(powder()).code, ErrorCode::AfterEnd);
    EXPECT_EQ(refused(powder()).text, "e1");
}

TEST_F(ItemStockTest, aPartOfAPacketIsNotMixedFrom)
{
    add(1, OpenedPacket{"p"});
    EXPECT_TRUE(suitsMixing(powder(), stock(powder()))) << "opened, and still whole";
    add(2, Taken{"p", 0.25, {}});
    const auto part = stock(powder());
    EXPECT_EQ(part.left, 0.75);
    const auto no = suitsMixing(powder(), part);
    ASSERT_FALSE(no);
    EXPECT_EQ(no.error().code, ErrorCode::NotSuitable);
    EXPECT_EQ(no.error().field, "packet");
    EXPECT_EQ(no.error().allowed, kWholePacketForm);
}

TEST_F(ItemStockTest, aLiquidGoesByWhatIsTaken)
{
    add(1, Taken{"p", 200, "f"});
    add(2, from("p"), "f");
    const auto left = stock(liquid());
    EXPECT_EQ(left.left, 300) << "the mixing that names it takes nothing by itself";
    EXPECT_EQ(left.openedAt, History::at(1));
    EXPECT_TRUE(suitsMixing(liquid(), left));
    add(3, Taken{"p", 300, {}});
    EXPECT_EQ(stock(liquid()).endedAt, History::at(3));
    EXPECT_FALSE(suitsMixing(liquid(), stock(liquid())));
    add(4, Taken{"p", 1, {}});
    const Error error = refused(liquid());
    EXPECT_EQ(error.code, ErrorCode::NotEnough);
    EXPECT_EQ(error.field, "amount");
    EXPECT_EQ(error.number, 1);
    EXPECT_EQ(error.high, 0);
    EXPECT_EQ(error.unit, "ml");
}

TEST_F(ItemStockTest, whatIsCountedIsThere)
{
    add(1, Taken{"p", 100, {}});
    const auto count = add(2, Counted{"p", 40});
    EXPECT_EQ(stock(borax(), 1).left, 150);
    EXPECT_EQ(stock(borax()).left, 40);
    add(3, Counted{"p", 0});
    EXPECT_FALSE(stock(borax()).isHere());
    add(4, Counted{"p", 60});
    EXPECT_TRUE(stock(borax()).isHere()) << "found behind the other box";
    EXPECT_EQ(stock(borax()).left, 60);
    add(5, Voided{count, "the wrong box"});
    EXPECT_EQ(stock(borax(), 2).left, 150);
}

TEST_F(ItemStockTest, whatIsNotKnownStaysSo)
{
    add(1, Taken{"p", 100, {}});
    EXPECT_FALSE(stock(liquid(std::nullopt)).left);
    EXPECT_TRUE(stock(liquid(std::nullopt)).isHere());
    add(2, Counted{"p", 150});
    add(3, Taken{"p", 100, {}});
    EXPECT_EQ(stock(liquid(std::nullopt)).left, 50);
}

TEST_F(ItemStockTest, whatIsThrownAwayIsGone)
{
    add(1, ThrownAway{"p", "damp"});
    EXPECT_TRUE(stock(borax()).thrownAway);
    EXPECT_FALSE(stock(borax()).isHere());
    add(2, Counted{"p", 10});
    EXPECT_EQ(refused(borax()).code, ErrorCode::AfterEnd);
}

TEST_F(ItemStockTest, countsByTimeThenByEntry)
{
    add(5, Counted{"p", 10});
    add(1, Taken{"p", 100, {}}); // entered late
    EXPECT_EQ(stock(borax()).left, 10);
    add(5, Taken{"p", 4, {}}); // at the same instant
    EXPECT_EQ(stock(borax()).left, 6);
}

TEST_F(ItemStockTest, keepsToItsDayOrItsTimeOnceOpened)
{
    const auto life = [&](double days) {
        return shelflife(liquid(), stock(liquid(), days), History::at(days));
    };
    EXPECT_EQ(life(0).until, endOfDay("2027-01-31"));
    EXPECT_FALSE(life(0).byOpening);
    EXPECT_EQ(life(0).keeps, Keeps::Fine);
    add(10, Taken{"p", 100, {}});
    EXPECT_EQ(life(20).until, History::at(190)) << "before 31 January";
    EXPECT_TRUE(life(20).byOpening);
    EXPECT_EQ(life(159).keeps, Keeps::Fine);
    EXPECT_EQ(life(160).keeps, Keeps::EndsSoon);
    EXPECT_EQ(life(190.1).keeps, Keeps::Past);
}

TEST(EndOfDay, readsDaysOnly)
{
    using namespace std::chrono;
    EXPECT_EQ(endOfDay("2028-02-29"), sys_days(year(2028) / 3 / 1) - milliseconds(1));
    for (const char* text : {"", "2027-02-29", "2027-13-01", "2027-1-01", "tomorrow", "2027-01-0x",
                             "2027-01-31T00:00:00Z"}) {
        EXPECT_FALSE(endOfDay(text)) << text;
    }
}

} // namespace
} // namespace ullage::ledger
