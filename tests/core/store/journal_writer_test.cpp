#include "tests/core/store/temp_book.h"

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

// A disk with room for so many bytes.
class SmallDisk : public QIODevice
{
public:
    explicit SmallDisk(qint64 room) : m_room(room) {}

protected:
    qint64 readData(char*, qint64) override { return -1; }
    qint64 writeData(const char*, qint64 count) override
    {
        const qint64 taken = std::min(count, m_room);
        m_room -= taken;
        if (taken < count) {
            setErrorString(QStringLiteral("no space left"));
        }
        return taken == 0 && count > 0 ? -1 : taken;
    }

private:
    qint64 m_room;
};

} // namespace

TEST(JournalWriter, AnEmptyBookIsOneLine)
{
    TempBook book;
    EXPECT_EQ(book.text(), kHead);
}

TEST(JournalWriter, ReportsADeviceThatFailsWhereverItDoes)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const qint64 size = kStart.size();
    for (qint64 room = 0; room <= size; ++room) {
        SmallDisk disk(room);
        disk.open(QIODevice::WriteOnly | QIODevice::Unbuffered);
        const auto written = exportJournal(*book.store, disk);
        ASSERT_EQ(written.has_value(), room == size) << room;
        if (!written) {
            EXPECT_EQ(written.error().code, ErrorCode::FileFailed);
            EXPECT_EQ(written.error().text, "no space left");
        }
    }
    EXPECT_EQ(book.text(), kStart);
}

TEST(JournalWriter, WritesEventsAsCsv)
{
    TempBook book;
    ASSERT_TRUE(book.import(
        kStart +
        R"({"type":"event","id":"a,\"b\"","batch":"dev-1","kind":"voided","at":"2026-06-04T10:00:00Z","voids":"e2"})"));
    QBuffer device;
    device.open(QIODevice::WriteOnly);
    const auto written = exportEventsCsv(*book.store, device);
    ASSERT_TRUE(written);
    EXPECT_EQ(*written, 3);
    EXPECT_EQ(device.data(), "id,batch,kind,at,volume_ml,films,run,voids\r\n"
                             "e1,dev-1,mixed,2026-06-01T10:00:00Z,1000,,,\r\n"
                             "e2,dev-1,processed,2026-06-03T19:30:00Z,600,2,run-1,\r\n"
                             "\"a,\"\"b\"\"\",dev-1,voided,2026-06-04T10:00:00Z,,,,e2\r\n");
}
