#include "core/store/cupboard_table.h"

#include "core/store/packet_reader.h"
#include "tests/core/store/temp_book.h"

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

const QByteArray kLines =
    R"({"type":"packet","id":"p1","solution":"mq","makes_ml":1000})"
    "\n"
    R"({"type":"packet","id":"p2","solution":"mq","makes_ml":500})"
    "\n"
    R"({"type":"packet","id":"c1","solution":"mq","form":"liquid","volume_ml":500,"makes_ml":2500,"opened_days":90})"
    "\n"
    R"({"type":"container","id":"p1","name":"Can","holds":"developer","capacity_ml":9000})"
    "\n";

QByteArray event(const char* id, const char* rest)
{
    return QByteArray(R"({"type":"event","id":")") + id + R"(","at":"2026-06-05T10:00:00Z",)" +
           rest + "}\n";
}

std::vector<std::string> ids(const std::vector<ledger::Event>& events)
{
    std::vector<std::string> found;
    for (const auto& event : events)
        found.push_back(event.id);
    return found;
}

using Ids = std::vector<std::string>;

} // namespace

TEST(CupboardTable, findsWhatNamesAThingAndWhatTakesThatBack)
{
    TempBook book;
    ASSERT_TRUE(book.import(kHead + kSolution + kVessel + kLines));
    ASSERT_TRUE(book.import(
        kHead +
        event(
            "m",
            R"("batch":"b","kind":"mixed","solution":"mq","vessel":"b1","volume_ml":900,"packet":"p1")") +
        event("t", R"("item":"c1","kind":"taken","amount":100)") +
        event("in", R"("container":"p1","kind":"poured-in","volume_ml":10)")));
    EXPECT_EQ(ids(*book.store->eventsOnItem("p1")), Ids{"m"}) << "the can is another thing";
    EXPECT_EQ(ids(*book.store->eventsOnContainer("p1")), Ids{"in"});
    EXPECT_EQ(ids(*book.store->eventsOnItem("c1")), Ids{"t"});
    EXPECT_EQ(*book.store->itemsEnded(testNow()), Ids{"p1"});
    ASSERT_TRUE(book.book->voidEvent("t", "the other bottle"));
    const auto voided = ids(*book.store->eventsOnItem("c1"));
    ASSERT_EQ(voided.size(), 2u);
    ASSERT_TRUE(book.book->voidEvent(voided.back(), "it was this one"));
    EXPECT_EQ(ids(*book.store->eventsOnItem("c1")).size(), 3u);
    const auto state = book.book->cupboard(testNow());
    ASSERT_TRUE(state);
    ASSERT_EQ(state->items.size(), 2u);
    EXPECT_EQ(state->items.back().item.id, "c1");
    EXPECT_EQ(state->items.back().stock.left, 400);
    EXPECT_EQ(book.store->cupboard()->size(), 4u);
}

TEST(CupboardTable, findsWhatNamesAnyThingAndWhatWasTakenForABatch)
{
    TempBook book;
    ASSERT_TRUE(book.import(kHead + kSolution + kVessel + kLines));
    ASSERT_TRUE(book.import(
        kHead +
        event(
            "m",
            R"("batch":"b","kind":"mixed","solution":"mq","vessel":"b1","volume_ml":900,"packet":"p1")") +
        event("t", R"("item":"c1","kind":"taken","amount":100,"for":"b")") +
        event("u", R"("item":"p2","kind":"taken","amount":1)") +
        event("in", R"("container":"p1","kind":"poured-in","volume_ml":10)")));
    EXPECT_EQ(ids(*book.store->eventsOnItems()), (Ids{"m", "t", "u"}));
    EXPECT_EQ(*book.store->itemsTakenFor("b"), Ids{"c1"});
    EXPECT_TRUE(book.store->itemsTakenFor("none")->empty());
    ASSERT_TRUE(book.book->voidEvent("t", "another bottle"));
    EXPECT_EQ(book.store->eventsOnItems()->size(), 4u);
}

TEST(CupboardTable, packetsOfferedForMixingAreWholeOrLiquid)
{
    TempBook book;
    ASSERT_TRUE(book.import(kHead + kSolution + kVessel + kLines));
    const auto offered = [&] {
        std::vector<std::string> found;
        const auto packets = packetsAtHand(*book.store);
        EXPECT_TRUE(packets);
        for (const auto& packet : *packets)
            found.push_back(packet.id);
        return found;
    };
    EXPECT_EQ(offered(), (Ids{"c1", "p1", "p2"}));
    ASSERT_TRUE(book.import(kHead + event("t", R"("item":"p2","kind":"taken","amount":0.5)")));
    EXPECT_EQ(offered(), (Ids{"c1", "p1"})) << "a part of a packet is none";
    ASSERT_TRUE(book.import(
        kHead + R"({"type":"packet","id":"p3","solution":"mq","makes_ml":600,"replaces":"p1"})"
                "\n"
                R"({"type":"packet","id":"gone","withdrawn":true,"replaces":"c1"})"
                "\n"));
    EXPECT_EQ(offered(), Ids{"p3"});
}
