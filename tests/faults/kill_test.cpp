// A book outlives every program that is killed while writing to it: what was confirmed is there,
// and of what was under way all or nothing. ULLAGE_KILL_ROUNDS says how often it is tried.
#include "tests/faults/fault_books.h"
#include "tests/faults/fault_kit.h"

#include <QProcess>
#include <QTemporaryDir>
#include <QThread>

#include <random>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace ullage::faults
{

namespace
{

constexpr int kLines = 40;     // of one of the writer's journals
constexpr int kOfOneBook = 25; // kills, before a fresh book is taken: folding a long one takes time

int kills() { return rounds("ULLAGE_KILL_ROUNDS", 100); }

// Runs the writer and kills it at a random moment, of its start or of its writing; how many deeds
// it had confirmed.
int confirmedBeforeTheKill(const QString& book, const char* what, std::mt19937& random)
{
    QProcess writer;
    writer.start(QStringLiteral(ULLAGE_FAULT_WRITER), {book, QString::fromLatin1(what)});
    EXPECT_TRUE(writer.waitForStarted());
    if (random() % 4 != 0) {
        // Started is not yet writing; on a slow machine that takes a while.
        EXPECT_TRUE(writer.waitForReadyRead(60'000)) << writer.readAllStandardError().constData();
    }
    QThread::usleep(random() % 30'000);
    writer.waitForReadyRead(0);
    EXPECT_EQ(writer.state(), QProcess::Running) << "it was to be killed, not to end";
    writer.kill(); // SIGKILL: nothing of the program's gets to run
    writer.waitForFinished();
    EXPECT_EQ(writer.exitStatus(), QProcess::CrashExit);
    const QByteArray said = writer.readAllStandardOutput();
    // The last line may be cut off; the one before it was whole.
    return static_cast<int>(said.first(said.lastIndexOf('\n') + 1).count('\n'));
}

std::int64_t count(const QString& path, const char* sql)
{
    const auto connection = Connection::open(path, FileMode::Write, 5000);
    EXPECT_TRUE(connection);
    const auto found = connection ? (*connection)->number(QString::fromLatin1(sql)).value_or(-1)
                                  : std::int64_t{-1};
    EXPECT_GE(found, 0);
    return found;
}

} // namespace

TEST(Kill, LosesNoDeedThatWasConfirmed)
{
    std::mt19937 random(7); // NOLINT: the same moments every time
    int all = 0;
    for (int round = 0; round < kills();) {
        const QTemporaryDir folder;
        const QString path = folder.filePath(QStringLiteral("home.ullage"));
        {
            TempBook book(path);
            ASSERT_TRUE(book.import(journalOfDraughts(0)));
        }
        std::int64_t before = 0;
        for (int i = 0; i < kOfOneBook && round < kills(); ++i, ++round) {
            const int confirmed = confirmedBeforeTheKill(path, "deeds", random);
            all += confirmed;
            const auto drawn = count(path, "SELECT count(*) FROM entry WHERE kind = 'drawn'");
            EXPECT_GE(drawn - before, confirmed);
            EXPECT_LE(drawn - before, confirmed + 1 + 1); // one kept, one more not yet said
            before = drawn;
            ASSERT_EQ(soundness(path), "sound") << "after kill " << round;
        }
    }
    std::printf("%d kills, %d deeds confirmed\n", kills(), all);
}

TEST(Kill, AnImportIsThereWholeOrNotAtAll)
{
    std::mt19937 random(8); // NOLINT: the same moments every time
    int all = 0;
    for (int round = 0; round < kills();) {
        const QTemporaryDir folder;
        const QString path = folder.filePath(QStringLiteral("fresh.ullage")); // the writer makes it
        std::int64_t before = 0;
        for (int i = 0; i < kOfOneBook && round < kills(); ++i, ++round) {
            const int confirmed = confirmedBeforeTheKill(path, "imports", random);
            all += confirmed;
            {
                // Killed at its start it may have left no more than an empty file.
                const auto made = SqlStore::open(path, {.access = Access::Create});
                ASSERT_TRUE(made) << made.error().text;
            }
            const auto entries = count(path, "SELECT count(*) FROM entry");
            EXPECT_EQ(entries % kLines, 0);
            EXPECT_GE((entries - before) / kLines, confirmed);
            before = entries;
            ASSERT_EQ(soundness(path), "sound") << "after kill " << round;
        }
    }
    std::printf("%d kills, %d journals confirmed\n", kills(), all);
}

} // namespace ullage::faults
