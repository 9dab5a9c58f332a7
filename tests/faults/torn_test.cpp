// The log beside a book, as far as it got: cut off or torn anywhere, it gives the book as it stood
// after one deed or another, never between two.
#include "tests/faults/fault_books.h"
#include "tests/faults/fault_kit.h"

#include <QFile>

#include <random>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace ullage::faults
{

namespace
{

constexpr int kOneDeed = 5; // lines of a journal

// A book and its log as a kill would leave them, after so many journals.
struct Left {
    QByteArray file;
    QByteArray log;
};

Left leftAfter(int deeds)
{
    TempBook book;
    EXPECT_TRUE(book.import(journalOfDraughts(2))); // five lines
    // The file itself keeps that; the log begins with what comes next.
    EXPECT_TRUE(book.store->connection().text("PRAGMA wal_checkpoint(TRUNCATE)"));
    for (int deed = 0; deed < deeds; ++deed) {
        EXPECT_TRUE(
            book.import(journalOfChemicals("c" + QByteArray::number(deed) + '-', kOneDeed)));
    }
    const auto all = contentsOf(book.inFolder(QString()));
    return {all.at(book.path()), all.at(book.path() + QStringLiteral("-wal"))};
}

std::size_t entriesWith(const Left& left)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("home.ullage"));
    for (const auto& [name, content] :
         {std::pair{path, left.file}, {path + QStringLiteral("-wal"), left.log}}) {
        QFile file(name);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(content);
    }
    const auto lines = linesOf(path);
    EXPECT_EQ(soundness(path), "sound");
    EXPECT_EQ(lines, linesOf(path));
    return static_cast<std::size_t>(lines.size());
}

} // namespace

TEST(Torn, ALogCutOffAnywhereIsTheBookAfterSomeDeed)
{
    const Left left = leftAfter(6);
    ASSERT_EQ(entriesWith(left), 5u + 6u * kOneDeed);
    std::mt19937 random(3); // NOLINT: the same places every time
    std::size_t most = 0;
    for (int i = 0; i < rounds("ULLAGE_TORN_ROUNDS", 60); ++i) {
        Left cut = left;
        cut.log.truncate(static_cast<qsizetype>(random() % (unsigned(left.log.size()) + 1)));
        const auto entries = entriesWith(cut);
        EXPECT_EQ((entries - 5) % kOneDeed, 0u) << "cut at " << cut.log.size();
        most = std::max(most, entries);
    }
    EXPECT_GT(most, 5u);
}

TEST(Torn, ASectorThatNeverGotThereEndsTheLog)
{
    const Left left = leftAfter(6);
    std::mt19937 random(4); // NOLINT: the same places every time
    for (int i = 0; i < rounds("ULLAGE_TORN_ROUNDS", 60); ++i) {
        Left torn = left;
        constexpr qsizetype kSector = 512;
        const auto sector = static_cast<qsizetype>(random() % unsigned(left.log.size() / kSector));
        const char what = random() % 2 == 0 ? '\0' : static_cast<char>(random());
        torn.log.replace(sector * kSector, kSector, QByteArray(kSector, what));
        EXPECT_EQ((entriesWith(torn) - 5) % kOneDeed, 0u) << "sector " << sector;
    }
}

} // namespace ullage::faults
