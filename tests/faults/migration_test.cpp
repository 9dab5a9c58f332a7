// A program killed while it brings a book up to date: the book is of one step or another, never
// between two, and the next start goes on.
#include "tests/faults/fault_books.h"
#include "tests/faults/fault_kit.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QThread>

#include <random>

using namespace ullage;
using namespace ullage::store;

namespace ullage::faults
{

namespace
{

constexpr int kDeeds = 800; // enough for a step to take a while

void killWhileOpening(const QString& path, int microseconds)
{
    QProcess opener;
    opener.start(QStringLiteral(ULLAGE_FAULT_WRITER), {path, QStringLiteral("open")});
    ASSERT_TRUE(opener.waitForStarted());
    ASSERT_TRUE(opener.waitForReadyRead(60'000)); // it is about to open the book
    QThread::usleep(static_cast<unsigned long>(microseconds));
    opener.kill();
    opener.waitForFinished();
}

std::int64_t versionOf(const QString& path)
{
    const auto connection = Connection::open(path, FileMode::Write, 5000);
    return connection ? (*connection)->number("PRAGMA user_version").value_or(-1) : -2;
}

} // namespace

TEST(Migration, AKillLeavesOneStepOrTheOther)
{
    const int last = schemaSteps().back().version;
    const int each = std::max(1, rounds("ULLAGE_KILL_ROUNDS", 30) / (last - 1));
    std::mt19937 random(11); // NOLINT: the same moments every time
    std::map<std::int64_t, int> seen;
    for (int version = 1; version < last; ++version) {
        SCOPED_TRACE(version);
        const QTemporaryDir folder;
        const QString old = folder.filePath(QStringLiteral("old.ullage"));
        makeOlderBook(old, version, journalOfDraughts(kDeeds));
        const QStringList lines = linesOf(old);
        ASSERT_EQ(lines.size(), kDeeds + 3);
        for (int round = 0; round < each; ++round) {
            const QString path = folder.filePath(QStringLiteral("b%1.ullage").arg(round));
            ASSERT_TRUE(QFile::copy(old, path));
            killWhileOpening(path, static_cast<int>(random() % 80'000));
            const auto found = versionOf(path);
            ++seen[found];
            EXPECT_GE(found, version);
            EXPECT_LE(found, last);
            EXPECT_EQ(linesOf(path), lines);
            EXPECT_EQ(soundness(path), "sound"); // which opens it, and so goes on
            EXPECT_EQ(versionOf(path), last);
            EXPECT_EQ(linesOf(path), lines);
            for (const QString& name : QDir(folder.path()).entryList(QDir::Files)) {
                if (name.contains(QLatin1String(".schema-")) &&
                    !name.contains(QLatin1String(".part"))) {
                    EXPECT_EQ(linesOf(folder.filePath(name)), lines) << name.toStdString();
                }
                if (name.startsWith(QStringLiteral("b%1.").arg(round))) {
                    QFile::remove(folder.filePath(name));
                }
            }
        }
    }
    for (const auto& [version, times] : seen) {
        std::printf("killed at version %d: %d\n", static_cast<int>(version), times);
    }
}

} // namespace ullage::faults
