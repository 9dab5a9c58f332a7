#include "core/store/line_reader.h"

#include <QBuffer>

#include <gtest/gtest.h>

using namespace ullage;
using namespace ullage::store;

namespace
{

std::vector<QByteArray> linesOf(const QByteArray& text)
{
    QBuffer device;
    device.setData(text);
    device.open(QIODevice::ReadOnly);
    LineReader reader(device);
    std::vector<QByteArray> lines;
    while (true) {
        const auto line = reader.next();
        EXPECT_TRUE(line);
        if (!line || !*line) {
            return lines;
        }
        lines.push_back(**line);
        EXPECT_EQ(reader.line(), static_cast<int>(lines.size()));
    }
}

// A gigabyte of one letter that exists nowhere; counts what is asked of it.
class EndlessLine : public QIODevice
{
public:
    explicit EndlessLine(qint64 size) : m_left(size) {}
    qint64 given = 0;

protected:
    qint64 readData(char* data, qint64 most) override
    {
        const qint64 count = std::min(most, m_left);
        std::fill(data, data + count, 'x');
        m_left -= count;
        given += count;
        return count;
    }
    qint64 writeData(const char*, qint64) override { return -1; }

private:
    qint64 m_left;
};

class BrokenDevice : public QIODevice
{
protected:
    qint64 readData(char* data, qint64 most) override
    {
        if (m_broken) {
            setErrorString(QStringLiteral("the disk is gone"));
            return -1;
        }
        m_broken = true;
        const qint64 count = std::min<qint64>(most, 4);
        std::fill(data, data + count, 'x');
        return count;
    }
    qint64 writeData(const char*, qint64) override { return -1; }

private:
    bool m_broken = false;
};

using ReadLines = std::vector<QByteArray>;

} // namespace

TEST(LineReader, KnowsEveryLineBreak)
{
    EXPECT_EQ(linesOf(""), ReadLines{});
    EXPECT_EQ(linesOf("a"), ReadLines{"a"});
    EXPECT_EQ(linesOf("a\n"), ReadLines{"a"});
    EXPECT_EQ(linesOf("a\r\nb\n\nc"), (ReadLines{"a", "b", "", "c"}));
    EXPECT_EQ(linesOf("\xEF\xBB\xBF{}\n\xEF\xBB\xBF"), (ReadLines{"{}", "\xEF\xBB\xBF"}));
}

TEST(LineReader, FindsLineBreaksWhereverPiecesEnd)
{
    for (const int size : {65'534, 65'535, 65'536, 65'537, 131'072}) {
        const QByteArray line(size, 'a');
        EXPECT_EQ(linesOf(line + "\r\n" + line + "\nend"), (ReadLines{line, line, "end"})) << size;
    }
}

TEST(LineReader, TakesALineOfAMebibyteAndRefusesALongerOne)
{
    EXPECT_EQ(linesOf(QByteArray(LineReader::kLongest, 'a') + "\n").size(), 1u);
    QBuffer device;
    device.setData("ok\n" + QByteArray(LineReader::kLongest + 1, 'a') + "\n");
    device.open(QIODevice::ReadOnly);
    LineReader reader(device);
    ASSERT_TRUE(reader.next());
    const auto refused = reader.next();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::TooLong);
    EXPECT_EQ(reader.line(), 2);
}

TEST(LineReader, DoesNotReadAGigabyteToRefuseIt)
{
    EndlessLine device(qint64{1} << 30);
    device.open(QIODevice::ReadOnly);
    LineReader reader(device);
    const auto refused = reader.next();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::TooLong);
    EXPECT_LT(device.given, 2 * LineReader::kLongest);
}

TEST(LineReader, ReportsADeviceThatFails)
{
    BrokenDevice device;
    device.open(QIODevice::ReadOnly | QIODevice::Unbuffered);
    LineReader reader(device);
    const auto refused = reader.next();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::FileFailed);
    EXPECT_EQ(refused.error().text, "the disk is gone");
}
