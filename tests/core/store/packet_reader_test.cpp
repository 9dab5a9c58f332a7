#include "core/store/packet_reader.h"

#include "tests/core/store/temp_book.h"

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

const QByteArray kPackets =
    R"({"type":"packet","id":"p1","solution":"mq","makes_ml":1000,"lot":"A12","cost":9.8,"currency":"EUR"})"
    "\n"
    R"({"type":"packet","id":"p2","solution":"mq","makes_ml":500})"
    "\n";

QByteArray mixedFrom(const char* id, const char* batch, const char* packet)
{
    return QByteArray(R"({"type":"event","id":")") + id + R"(","batch":")" + batch +
           R"(","kind":"mixed","at":"2026-06-01T10:00:00Z","solution":"mq","vessel":"b1",)" +
           R"("volume_ml":1000,"packet":")" + packet + "\"}\n";
}

std::vector<std::string> ids(const std::vector<ledger::Packet>& packets)
{
    std::vector<std::string> found;
    for (const auto& packet : packets)
        found.push_back(packet.id);
    return found;
}

} // namespace

TEST(PacketReader, aPacketIsAtHandUntilAMixingUsesIt)
{
    TempBook book;
    ASSERT_TRUE(book.import(kHead + kSolution + kVessel + kPackets));
    auto left = packetsAtHand(*book.store);
    ASSERT_TRUE(left);
    EXPECT_EQ(ids(*left), (std::vector<std::string>{"p1", "p2"}));
    EXPECT_EQ(left->front().cost->text(), "9.8");
    ASSERT_TRUE(book.import(kHead + mixedFrom("e1", "dev-1", "p1")));
    left = packetsAtHand(*book.store);
    ASSERT_TRUE(left);
    EXPECT_EQ(ids(*left), std::vector<std::string>{"p2"});

    ASSERT_TRUE(book.import(kHead +
                            R"({"type":"event","id":"v1","batch":"dev-1","kind":"voided",)"
                            R"("at":"2026-06-01T11:00:00Z","voids":"e1","why":"the other packet"})"
                            "\n"));
    left = packetsAtHand(*book.store);
    ASSERT_TRUE(left);
    EXPECT_EQ(ids(*left), (std::vector<std::string>{"p1", "p2"})) << "taken back, so not used";
}

// p3 ends in March, the concentrate in February since it was opened, p1 never; p4 is over.
TEST(PacketReader, whatEndsFirstComesFirstAndWhatIsOverLast)
{
    TempBook book;
    ASSERT_TRUE(book.import(
        kHead + kSolution + kVessel + kPackets +
        R"({"type":"packet","id":"p3","solution":"mq","makes_ml":1000,"use_by":"2027-03-31"})"
        "\n"
        R"({"type":"packet","id":"p4","solution":"mq","makes_ml":1000,"use_by":"2026-12-01"})"
        "\n"
        R"({"type":"packet","id":"c1","solution":"mq","form":"liquid","volume_ml":500,)"
        R"("makes_ml":5000,"opened_days":60,"use_by":"2028-01-31"})"
        "\n"
        R"({"type":"event","id":"o1","item":"c1","kind":"opened-packet","at":"2026-12-15T10:00:00Z"})"
        "\n"));
    using Ids = std::vector<std::string>;
    auto packets = packetsAtHand(*book.store, testNow());
    ASSERT_TRUE(packets);
    EXPECT_EQ(ids(*packets), (Ids{"c1", "p3", "p1", "p2", "p4"}));
    packets = packetsAtHand(*book.store, testNow() + std::chrono::days(60));
    ASSERT_TRUE(packets);
    EXPECT_EQ(ids(*packets), (Ids{"p3", "p1", "p2", "p4", "c1"})) << "open for too long by then";
}

TEST(PacketReader, aBookWithoutPacketsHasNone)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    EXPECT_TRUE(packetsAtHand(*book.store)->empty());
}
