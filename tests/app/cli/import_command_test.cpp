#include "tests/app/cli/cli_kit.h"

#include <QDir>

using namespace ullage::app;
using namespace ullage::app::testing;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

QByteArray opened(const QByteArray& id, const QByteArray& at, const QByteArray& batch = "dev-1")
{
    return R"({"type":"event","id":")" + id + R"(","batch":")" + batch +
           R"(","kind":"opened","at":")" + at + "\"}\n";
}

// Says what it has bit by bit, as another program does; looks at the book whenever it is asked.
class Slowly : public QIODevice
{
public:
    Slowly(QByteArray text, std::function<void()> meanwhile)
        : m_text(std::move(text)), m_meanwhile(std::move(meanwhile))
    {
        open(QIODevice::ReadOnly | QIODevice::Unbuffered);
    }
    [[nodiscard]] bool isSequential() const override { return true; }
    bool waitForReadyRead(int) override
    {
        m_meanwhile();
        m_ready = true;
        return m_at < m_text.size();
    }

protected:
    qint64 readData(char* into, qint64 most) override
    {
        const qint64 size = m_ready ? std::min<qint64>({most, 7, m_text.size() - m_at}) : 0;
        std::copy_n(m_text.constData() + m_at, size, into);
        m_at += size;
        m_ready = false;
        return size;
    }
    qint64 writeData(const char*, qint64) override { return -1; }

private:
    QByteArray m_text;
    std::function<void()> m_meanwhile;
    qsizetype m_at = 0;
    bool m_ready = false;
};

} // namespace

TEST_F(CommandTest, ARefusedImportListsEveryContradictionWithItsLine)
{
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    const QString journal =
        write("theirs.jsonl", kHead + opened("a", "2026-05-01T10:00:00Z") + "{\"type\":\n" +
                                  opened("b", "2026-07-01T10:00:00Z", "x-9") +
                                  opened("c", "2026-07-01T10:00:00Z"));
    const Answer refused = run({"import", journal});
    EXPECT_EQ(refused.code, kRefused);
    EXPECT_TRUE(refused.out.isEmpty());
    const auto said = refused.err.trimmed().split('\n');
    ASSERT_EQ(said.size(), 4) << refused.err.constData();
    EXPECT_TRUE(said[0].contains("theirs.jsonl:2: at: "));
    EXPECT_TRUE(said[0].contains("e1")) << "what it stands against";
    EXPECT_TRUE(said[1].contains("theirs.jsonl:3: "));
    EXPECT_TRUE(said[2].contains("theirs.jsonl:4: batch: "));
    EXPECT_TRUE(said[2].contains("x-9"));
    EXPECT_EQ(run({"export", "-"}).out, kStart);
}

TEST_F(CommandTest, OfVeryManyContradictionsTheFirstAreListedAndTheRestCounted)
{
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    QByteArray text = kHead;
    for (int i = 0; i < 1000; ++i) {
        text += opened("a" + QByteArray::number(i), "2026-05-01T10:00:00Z");
    }
    const Answer refused = run({"import", "-"}, text);
    EXPECT_EQ(refused.code, kRefused);
    EXPECT_EQ(refused.err.count('\n'), 202);
    EXPECT_TRUE(refused.err.contains("800")) << refused.err.right(200).constData();
}

TEST_F(CommandTest, MessagesStayShortWhateverStandsInTheJournal)
{
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    const QByteArray long1(70'000, 'x');
    const QByteArray lines[] = {
        opened("a", "2026-07-01T10:00:00Z", long1),
        opened("a", long1),
        opened(long1, "2026-05-01T10:00:00Z"),
        "{\"" + long1 + "\":{\"" + long1 + "\":nul}}\n",
        R"({"type":")" + long1 + "\"}\n",
        R"({"type":"film","id":"f","run":")" + long1 + "\"}\n",
        R"({"type":"event","id":"v","kind":"voided","at":"2026-07-01T10:00:00Z","batch":")" +
            long1 + R"(","voids":"e1"})" + "\n"};
    for (const QByteArray& line : lines) {
        const Answer refused = run({"import", "-"}, kHead + line);
        EXPECT_EQ(refused.code, kRefused);
        EXPECT_TRUE(refused.err.startsWith("-:2: ")) << refused.err.left(100).constData();
        EXPECT_LT(refused.err.size(), 2000) << refused.err.left(100).constData();
    }
}

TEST_F(CommandTest, TheSameBottleTwiceIsSaidAndComesIn)
{
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    QByteArray twin = kMixed;
    twin.replace("\"e1\"", "\"x1\"").replace("dev-1", "x-dev").replace("T10:00", "T11:30");
    const Answer done = run({"import", "-"}, kHead + twin);
    EXPECT_EQ(done.code, kDone);
    EXPECT_TRUE(done.err.startsWith("-:2: ")) << done.err.constData();
    EXPECT_TRUE(done.err.contains("Dev 1"));
}

// Whoever waits for input has no hold on the book.
TEST_F(CommandTest, OthersWriteWhileInputIsWaitedFor)
{
    const QString home = path("home.ullage");
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    int written = 0;
    Slowly input(kHead + opened("slow", "2026-07-01T10:00:00Z"), [&] {
        auto store = SqlStore::open(home, {.busyTimeoutMs = 0});
        ASSERT_TRUE(store);
        ASSERT_TRUE((*store)->begin()) << "the book is held";
        (*store)->rollback();
        ++written;
    });
    QBuffer out;
    out.open(QIODevice::WriteOnly);
    QBuffer err;
    err.open(QIODevice::WriteOnly);
    Arguments arguments;
    ASSERT_FALSE(parse({"import", "-"}, arguments));
    EXPECT_EQ(runCommand(arguments, {&input, &out, &err, testNow, home}), kDone)
        << err.data().constData();
    EXPECT_GT(written, 5);
    EXPECT_TRUE(run({"export", "-"}).out.endsWith(opened("slow", "2026-07-01T10:00:00Z")));
}
