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

TEST(PacketReader, aBookWithoutPacketsHasNone)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    EXPECT_TRUE(packetsAtHand(*book.store)->empty());
}
