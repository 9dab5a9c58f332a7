// A book outlives every program that is killed while writing to it: what was confirmed is there,
// and of what was under way all or nothing.
#include "core/store/integrity.h"
#include "tests/core/store/temp_book.h"

#include <QProcess>

#include <random>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

constexpr int kKills = 12;
constexpr int kLines = 40; // of one of the writer's journals

// Runs the writer and kills it at a random moment; how many deeds it had confirmed.
int confirmedBeforeTheKill(const QString& book, const char* what, int milliseconds)
{
    QProcess writer;
    writer.start(QStringLiteral(ULLAGE_FAULT_WRITER), {book, QString::fromLatin1(what)});
    EXPECT_TRUE(writer.waitForStarted());
    // Started is not yet writing; on a slow machine that takes a while.
    EXPECT_TRUE(writer.waitForReadyRead(60'000)) << writer.readAllStandardError().constData();
    writer.waitForFinished(milliseconds);
    EXPECT_EQ(writer.state(), QProcess::Running) << "it was to be killed, not to end";
    writer.kill(); // SIGKILL: nothing of the program's gets to run
    writer.waitForFinished();
    EXPECT_EQ(writer.exitStatus(), QProcess::CrashExit);
    const QByteArray said = writer.readAllStandardOutput();
    // The last line may be cut off; the one before it was whole.
    return static_cast<int>(said.first(said.lastIndexOf('\n') + 1).count('\n'));
}

std::int64_t count(TempBook& book, const char* sql)
{
    const auto found = book.store->connection().number(QString::fromLatin1(sql));
    EXPECT_TRUE(found);
    return found.value_or(-1);
}

void expectSound(TempBook& book)
{
    const auto check = checkBook(*book.store);
    ASSERT_TRUE(check);
    EXPECT_TRUE(check->findings.empty());
}

} // namespace

TEST(Kill, LosesNoDeedThatWasConfirmed)
{
    TempBook book;
    QByteArray mixed = kMixed;
    mixed.replace("dev-1", "b");
    mixed.replace("2026-06-01", "2020-06-01");
    ASSERT_TRUE(book.import(kHead + kSolution + kVessel + mixed));
    book.book.reset();
    book.store.reset();
    std::mt19937 random(7); // NOLINT: the same moments every time
    std::int64_t before = 0;
    for (int round = 0; round < kKills; ++round) {
        const int confirmed =
            confirmedBeforeTheKill(book.path(), "deeds", static_cast<int>(random() % 60));
        book.open();
        const auto drawn = count(book, "SELECT count(*) FROM entry WHERE kind = 'drawn'");
        EXPECT_GE(drawn - before, confirmed);
        EXPECT_LE(drawn - before, confirmed + 1 + 1); // one kept, one more not yet said
        before = drawn;
        expectSound(book);
        book.book.reset();
        book.store.reset();
    }
}

TEST(Kill, AnImportIsThereWholeOrNotAtAll)
{
    TempBook book;
    const QString path = book.inFolder("fresh.ullage"); // the writer makes it
    std::mt19937 random(8);                             // NOLINT: the same moments every time
    std::int64_t before = 0;
    for (int round = 0; round < kKills; ++round) {
        const int confirmed =
            confirmedBeforeTheKill(path, "imports", static_cast<int>(random() % 60));
        TempBook again(path);
        const auto entries = count(again, "SELECT count(*) FROM entry");
        EXPECT_EQ(entries % kLines, 0);
        EXPECT_GE((entries - before) / kLines, confirmed);
        before = entries;
        expectSound(again);
    }
}
