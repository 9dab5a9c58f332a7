// Two windows and the command line on one book, writing in turn and killed at random moments: what
// was confirmed is there, and the book is sound. ULLAGE_FAULT_SECONDS in the environment makes it
// run for that long in place of its few rounds; ULLAGE_FAULT_SEED chooses other moments.
#include "core/store/integrity.h"
#include "tests/core/store/temp_book.h"

#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QProcessEnvironment>

#include <random>
#include <set>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

constexpr int kRounds = 12;

class Evening
{
public:
    Evening(TempBook& folder, unsigned seed) : m_folder(folder), m_random(seed) {}

    void prepare()
    {
        QByteArray mixed = kMixed;
        mixed.replace("2026-06-01", "2020-06-01");
        mixed.replace("dev-1", "b");
        QFile journal(m_folder.inFolder("start.jsonl"));
        ASSERT_TRUE(journal.open(QIODevice::WriteOnly));
        journal.write(kHead + kSolution + kVessel + mixed);
        journal.close();
        QProcess import;
        command(import, {"import", journal.fileName()});
        ASSERT_TRUE(import.waitForFinished(60'000));
        ASSERT_EQ(import.exitCode(), 0) << import.readAllStandardError().constData();
    }

    void round(int number)
    {
        QProcess windows[2];
        for (int i = 0; i < 2; ++i) {
            m_marks << QStringLiteral("w%1-%2").arg(number).arg(i);
            windows[i].setProcessEnvironment(around());
            windows[i].start(QStringLiteral(ULLAGE_WINDOW_VICTIM), {book(), m_marks.back()});
        }
        for (QProcess& window : windows) {
            ASSERT_TRUE(window.waitForStarted());
            ASSERT_TRUE(window.waitForReadyRead(60'000))
                << window.readAllStandardError().constData();
        }
        // What undid a book before: others opening and closing it beside the window.
        for (int i = 0; i < 4; ++i)
            useCommandLine(number * 10 + i);
        windows[0].waitForFinished(upTo(200));
        windows[0].kill();
        useCommandLine(number * 10 + 4);
        windows[1].waitForFinished(upTo(200));
        windows[1].kill();
        for (QProcess& window : windows) {
            window.waitForFinished();
            EXPECT_EQ(window.exitStatus(), QProcess::CrashExit);
            EXPECT_EQ(window.readAllStandardError().toStdString(), "");
            const QByteArray said = window.readAllStandardOutput();
            for (const QByteArray& text : said.first(said.lastIndexOf('\n') + 1).split('\n')) {
                if (!text.isEmpty())
                    m_notes.insert(text);
            }
        }
    }

    // Every note and every journal that was confirmed, so far.
    void expectNothingLost()
    {
        TempBook opened(book());
        const auto sound = opened.store->connection().text("PRAGMA integrity_check");
        ASSERT_TRUE(sound) << sound.error().text;
        EXPECT_EQ(*sound, "ok");
        QSet<QByteArray> bodies;
        ASSERT_TRUE(opened.store->forEachLine([&](const QByteArray& line) -> Result<void> {
            const auto start = line.indexOf("\"text\":\"");
            if (start >= 0)
                bodies.insert(line.mid(start + 8).split('"').first());
            const auto id = line.indexOf("\"id\":\"j-");
            if (id >= 0)
                bodies.insert(line.mid(id + 6).split('"').first());
            return {};
        }));
        int lost = 0;
        for (const QByteArray& note : m_notes)
            lost += bodies.contains(note) ? 0 : 1;
        EXPECT_EQ(lost, 0) << "of " << m_notes.size() << " confirmed";
    }
    void expectSound()
    {
        TempBook opened(book());
        const auto check = checkBook(*opened.store);
        ASSERT_TRUE(check);
        EXPECT_TRUE(check->findings.empty());
    }
    [[nodiscard]] std::size_t confirmed() const { return m_notes.size(); }

private:
    [[nodiscard]] QString book() const { return m_folder.inFolder("shared.ullage"); }
    int upTo(int ms) { return static_cast<int>(m_random() % static_cast<unsigned>(ms)); }
    // Copies and settings are nobody's of this machine.
    [[nodiscard]] QProcessEnvironment around() const
    {
        QProcessEnvironment around = QProcessEnvironment::systemEnvironment();
        for (const char* place : {"HOME", "XDG_DATA_HOME", "XDG_CONFIG_HOME"})
            around.insert(QLatin1String(place), m_folder.inFolder("home"));
        around.insert(QStringLiteral("XDG_RUNTIME_DIR"), m_folder.inFolder(""));
        return around;
    }
    void command(QProcess& process, const QStringList& words)
    {
        process.setProcessEnvironment(around());
        process.start(QStringLiteral(ULLAGE_PROGRAM),
                      words + QStringList{QStringLiteral("--book"), book()});
        ASSERT_TRUE(process.waitForStarted());
    }

    void useCommandLine(int number)
    {
        QProcess reader;
        command(reader, {number % 2 == 0 ? QStringLiteral("report") : QStringLiteral("check")});
        EXPECT_TRUE(reader.waitForFinished(60'000));
        EXPECT_EQ(reader.exitCode(), 0) << reader.readAllStandardError().constData();

        QProcess writer;
        command(writer, {"import", "-"});
        const QByteArray id = "j-" + QByteArray::number(number);
        writer.write(kHead + R"({"type":"chemical","id":")" + id + "\",\"name\":\"borax\"}\n");
        writer.closeWriteChannel();
        const bool spared = m_random() % 3 != 0;
        if (!spared && !writer.waitForFinished(upTo(60)))
            writer.kill();
        writer.waitForFinished(60'000);
        const bool done = writer.exitStatus() == QProcess::NormalExit && writer.exitCode() == 0;
        EXPECT_TRUE(done || !spared) << writer.readAllStandardError().constData();
        if (done)
            m_notes.insert(id);
    }

    TempBook& m_folder;
    std::mt19937 m_random;
    QStringList m_marks;
    std::set<QByteArray> m_notes;
};

} // namespace

TEST(TwoWindows, LoseNothingThatWasConfirmed)
{
    TempBook folder;
    bool given = false;
    const int seconds = qEnvironmentVariableIntValue("ULLAGE_FAULT_SECONDS", &given);
    constexpr int kUsualSeed = 11;
    const int seed = qEnvironmentVariableIntValue("ULLAGE_FAULT_SEED");
    Evening evening(folder, static_cast<unsigned>(seed > 0 ? seed : kUsualSeed));
    ASSERT_NO_FATAL_FAILURE(evening.prepare());
    QElapsedTimer time;
    time.start();
    int rounds = 0;
    for (; given ? time.elapsed() < seconds * 1000LL : rounds < kRounds; ++rounds) {
        ASSERT_NO_FATAL_FAILURE(evening.round(rounds + 1));
        ASSERT_NO_FATAL_FAILURE(evening.expectNothingLost());
        if (::testing::Test::HasFailure())
            break;
    }
    evening.expectSound();
    RecordProperty("rounds", rounds);
    RecordProperty("confirmed", static_cast<int>(evening.confirmed()));
    std::printf("%d rounds, %zu confirmed\n", rounds, evening.confirmed());
}
