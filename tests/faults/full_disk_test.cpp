// No room: on a little disk of its own where that can be had (it takes root), and where no file may
// grow any more. What was confirmed stays, nothing half-written appears, and the message says what
// to do.
#include "tests/faults/fault_books.h"
#include "tests/faults/fault_kit.h"

#include <QFile>
#include <QFileInfo>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace ullage::faults
{

namespace
{

constexpr long kRoom = 900'000; // bytes: a book has some 150,000 before anything is in it
const QByteArray kTooLarge = journalOfChemicals("many-", 12'000);

enum class Shortage { LittleDisk, SmallFiles };

class FullDisk : public ::testing::TestWithParam<Shortage>
{
protected:
    // Runs `work` with a folder that has little room.
    void withLittleRoom(const std::function<void(const QString& folder)>& work)
    {
        const QTemporaryDir folder;
        ChildRules rules;
        if (GetParam() == Shortage::LittleDisk) {
            rules.diskBytes = kRoom;
            rules.disk = folder.path();
        } else {
            rules.mostBytes = kRoom;
        }
        const QString path = folder.path();
        if (!inChild(rules, [&] { work(path); })) {
            GTEST_SKIP() << "a disk of its own takes root";
        }
    }

    // Leaves less than so many bytes.
    static void fill(const QString& folder, qint64 leave)
    {
        if (GetParam() != Shortage::LittleDisk) {
            return;
        }
        QFile file(folder + QStringLiteral("/filler"));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Unbuffered));
        const QByteArray piece(4096, 'x');
        while (file.write(piece) == piece.size()) {
        }
        file.resize(std::max<qint64>(0, file.size() - leave));
    }
};

void expectAdvice(const QByteArray& said)
{
    EXPECT_TRUE(said.contains("room") || said.contains("space")) << said.constData();
    EXPECT_TRUE(said.contains("try again")) << said.constData();
}

} // namespace

TEST_P(FullDisk, RefusesAnImportWhole)
{
    withLittleRoom([](const QString& folder) {
        const QString book = folder + QStringLiteral("/home.ullage");
        ASSERT_EQ(call(book, {"import", "-"}, kStart).code, 0);
        const QByteArray before = call(book, {"export", "-"}).out;
        const Called refused = call(book, {"import", "-"}, kTooLarge);
        EXPECT_EQ(refused.code, 3);
        expectAdvice(refused.err);
        EXPECT_EQ(call(book, {"export", "-"}).out, before);
        EXPECT_EQ(soundness(book), "sound");
        EXPECT_EQ(call(book, {"import", "-"}, journalOfChemicals("few-", 5)).code, 0);
        EXPECT_EQ(soundness(book), "sound");
    });
}

TEST_P(FullDisk, RefusesAnImportIntoANewBookWithoutATrace)
{
    withLittleRoom([](const QString& folder) {
        const QString book = folder + QStringLiteral("/new.ullage");
        const Called refused = call(book, {"import", "-"}, kTooLarge);
        EXPECT_EQ(refused.code, 3);
        expectAdvice(refused.err);
        EXPECT_FALSE(QFileInfo::exists(book));
    });
}

TEST_P(FullDisk, KeepsEveryDeedThatWasConfirmedAndGoesOnWhenThereIsRoom)
{
    withLittleRoom([](const QString& folder) {
        const QString path = folder + QStringLiteral("/home.ullage");
        int confirmed = 0;
        const auto deed = [&](TempBook& book) {
            return book.book->record("b", ledger::Noted{std::string(3000, 'n')}, {testNow(), {}});
        };
        {
            TempBook book(path);
            ASSERT_TRUE(book.import(journalOfDraughts(2)));
            fill(folder, 400'000);
            Result<void> done;
            while ((done = deed(book))) {
                ASSERT_LT(++confirmed, 2000) << "there was to be no room";
            }
            EXPECT_GT(confirmed, 5);
            EXPECT_EQ(done.error().code, ErrorCode::StoreFailed) << done.error().text;
            EXPECT_FALSE(deed(book)) << "there is no more room than before";
            // Nothing half-done is shown where it failed either.
            EXPECT_EQ(static_cast<int>(book.book->events("b")->size()), 3 + confirmed);
            QFile::remove(folder + QStringLiteral("/filler"));
            if (GetParam() == Shortage::LittleDisk) {
                const auto again = deed(book);
                EXPECT_TRUE(again) << again.error().text;
                ++confirmed;
            }
        }
        EXPECT_EQ(linesOf(path).size(), 5 + confirmed);
        EXPECT_EQ(soundness(path), "sound");
    });
}

TEST_P(FullDisk, RefusesABackupAndARestoreAndLeavesNothing)
{
    withLittleRoom([](const QString& folder) {
        const QTemporaryDir elsewhere;
        const QString book = folder + QStringLiteral("/home.ullage");
        ASSERT_EQ(call(book, {"import", "-"}, kStart).code, 0);
        const QString copy = elsewhere.filePath(QStringLiteral("copy.ullage"));
        ASSERT_EQ(call(book, {"backup", copy}).code, 0);
        fill(folder, 20'000);
        if (GetParam() == Shortage::SmallFiles) {
            limitFiles(60'000);
        }
        const auto before = contentsOf(folder);
        const Called refused = call(book, {"backup", folder + QStringLiteral("/copy.ullage")});
        EXPECT_EQ(refused.code, 3);
        expectAdvice(refused.err);
        const Called restored = call(book, {"restore", copy, "--replace"});
        EXPECT_EQ(restored.code, 3);
        expectAdvice(restored.err);
        const Called written = call(book, {"export", folder + QStringLiteral("/all.jsonl")});
        (void)written; // a small journal may just fit
        const auto after = contentsOf(folder);
        for (const auto& [name, content] : before) {
            if (!name.endsWith(QLatin1String("-wal")) && !name.endsWith(QLatin1String("-shm"))) {
                EXPECT_TRUE(after.contains(name) && after.at(name) == content)
                    << name.toStdString();
            }
        }
        for (const auto& [name, content] : after) {
            EXPECT_FALSE(name.endsWith(QLatin1String(".part"))) << name.toStdString();
            EXPECT_FALSE(name.contains(QLatin1String(".restored"))) << name.toStdString();
        }
        QFile::remove(folder + QStringLiteral("/filler")); // to be read it needs an index
        EXPECT_EQ(soundness(book), "sound");
        EXPECT_EQ(linesOf(book).size(), 4);
    });
}

TEST_P(FullDisk, LeavesAnOlderBookAsItWas)
{
    const QTemporaryDir made;
    const QString old = made.filePath(QStringLiteral("old.ullage"));
    makeOlderBook(old, 1, journalOfDraughts(200));
    const QStringList lines = linesOf(old);
    withLittleRoom([&](const QString& folder) {
        const QString book = folder + QStringLiteral("/old.ullage");
        ASSERT_TRUE(QFile::copy(old, book));
        fill(folder, 100'000);
        if (GetParam() == Shortage::SmallFiles) {
            limitFiles(100'000);
        }
        const Called refused = call(book, {"report"});
        EXPECT_EQ(refused.code, 3);
        expectAdvice(refused.err);
        EXPECT_EQ(linesOf(book), lines);
        for (const auto& [name, content] : contentsOf(folder)) {
            EXPECT_FALSE(name.endsWith(QLatin1String(".part"))) << name.toStdString();
        }
        if (QFile::remove(folder + QStringLiteral("/filler"))) {
            EXPECT_EQ(soundness(book), "sound");
            EXPECT_EQ(linesOf(book), lines);
        }
    });
}

INSTANTIATE_TEST_SUITE_P(Of, FullDisk,
                         ::testing::Values(Shortage::LittleDisk, Shortage::SmallFiles),
                         [](const auto& shortage) {
                             return shortage.param == Shortage::LittleDisk
                                        ? std::string("LittleDisk")
                                        : "SmallFiles";
                         });

} // namespace ullage::faults
