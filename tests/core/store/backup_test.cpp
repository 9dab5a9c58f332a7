#include "core/store/backup.h"
#include "core/store/book_file.h"
#include "tests/core/store/temp_book.h"

#include <QDir>
#include <QFile>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;
using chemistry::Instant;

namespace
{

Instant day(int year, unsigned month, unsigned date, int hour = 0)
{
    return std::chrono::sys_days(std::chrono::year(year) / static_cast<int>(month) /
                                 static_cast<int>(date)) +
           std::chrono::hours(hour);
}

void damage(const QString& path)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    constexpr qint64 kPage = 4096;
    for (qint64 at = kPage; at < file.size(); at += kPage) {
        file.seek(at);
        file.write(QByteArray(200, '\xAA'));
    }
}

void close(TempBook& book)
{
    book.book.reset();
    book.store.reset();
}

} // namespace

TEST(Backup, IsAWholeBookThatOpens)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const auto copy = backUp(book.path(), book.inFolder("copies"), day(2026, 9, 1, 7));
    ASSERT_TRUE(copy) << copy.error().text;
    EXPECT_TRUE(copy->endsWith("home-2026-09-01T070000Z.ullage")) << copy->toStdString();
    EXPECT_EQ(TempBook(*copy).text(), kStart);
    EXPECT_EQ(QDir(book.inFolder("copies")).entryList(QDir::Files).size(), 1);
}

TEST(Backup, ReportsWhereItCannotBeMade)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    QFile inTheWay(book.inFolder("copies"));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    const auto failed = backUp(book.path(), book.inFolder("copies"), testNow());
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().code, ErrorCode::StoreFailed);
    EXPECT_EQ(backUp(book.inFolder("none"), book.inFolder("c"), testNow()).error().code,
              ErrorCode::StoreFailed);
}

TEST(Backup, CanBeMadeOfABookOpenForReadingOnly)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    close(book);
    const auto store = SqlStore::open(book.path(), {.access = Access::Read});
    ASSERT_TRUE(store);
    ASSERT_TRUE(copyVerified((*store)->connection(), book.inFolder("copy")));
    EXPECT_EQ(TempBook(book.inFolder("copy")).text(), kStart);
    EXPECT_FALSE((*store)->connection().run("DELETE FROM batch")); // still only for reading
}

TEST(Backup, NeverOverwritesAFile)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QString target = book.inFolder("copy");
    ASSERT_TRUE(copyVerified(book.store->connection(), target));
    const auto again = copyVerified(book.store->connection(), target);
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().code, ErrorCode::IdTaken);
}

TEST(Backup, KeepsSevenDaysEightWeeksAndTwelveMonths)
{
    std::vector<Instant> made;
    // Twice a day for two years.
    for (Instant at = day(2025, 1, 1, 8); at < day(2027, 1, 1); at += std::chrono::hours(12)) {
        made.push_back(at);
    }
    const auto kept = keptBackups(made);
    for (const Instant at : kept) {
        EXPECT_EQ((at - day(2025, 1, 1, 20)).count() % 86'400'000, 0) << "the day's last";
    }
    // 31 Dec back to 25 Dec; Sundays from the week of 28 Dec (Thursday so far) back; month ends.
    const std::vector<Instant> expected{
        day(2026, 12, 31, 20), day(2026, 12, 30, 20), day(2026, 12, 29, 20), day(2026, 12, 28, 20),
        day(2026, 12, 27, 20), day(2026, 12, 26, 20), day(2026, 12, 25, 20), day(2026, 12, 20, 20),
        day(2026, 12, 13, 20), day(2026, 12, 6, 20),  day(2026, 11, 30, 20), day(2026, 11, 29, 20),
        day(2026, 11, 22, 20), day(2026, 11, 15, 20), day(2026, 10, 31, 20), day(2026, 9, 30, 20),
        day(2026, 8, 31, 20),  day(2026, 7, 31, 20),  day(2026, 6, 30, 20),  day(2026, 5, 31, 20),
        day(2026, 4, 30, 20),  day(2026, 3, 31, 20),  day(2026, 2, 28, 20),  day(2026, 1, 31, 20)};
    EXPECT_EQ(kept, expected);
    EXPECT_TRUE(keptBackups({}).empty());
}

TEST(Backup, RotatesOnlyItsOwnFiles)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QDir folder(book.inFolder("copies"));
    ASSERT_TRUE(folder.mkpath("."));
    for (const char* name : {"notes.txt", "other-2020-01-01T000000Z.ullage", "home-old.ullage"}) {
        QFile file(folder.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    }
    for (int hour = 0; hour < 4; ++hour) {
        ASSERT_TRUE(backUp(book.path(), folder.path(), day(2026, 9, 1, hour)));
    }
    EXPECT_EQ(folder.entryList(QDir::Files, QDir::Name),
              (QStringList{"home-2026-09-01T030000Z.ullage", "home-old.ullage", "notes.txt",
                           "other-2020-01-01T000000Z.ullage"}));
}

TEST(Restore, PutsACopyInPlaceAndKeepsTheOldBookBeside)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QString copy = book.inFolder("copy");
    ASSERT_TRUE(copyVerified(book.store->connection(), copy));
    ASSERT_TRUE(book.import(kHead + R"({"type":"chemical","name":"borax"})"));
    const QByteArray later = book.text();
    close(book);

    const auto refused = restore(copy, book.path(), false);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::IdTaken);
    const auto kept = restore(copy, book.path(), true);
    ASSERT_TRUE(kept) << kept.error().text;
    EXPECT_EQ(TempBook(book.path()).text(), kStart);
    EXPECT_EQ(TempBook(*kept).text(), later);

    const auto fresh = restore(copy, book.inFolder("new.ullage"), false);
    ASSERT_TRUE(fresh);
    EXPECT_EQ(*fresh, QString());
    EXPECT_EQ(TempBook(book.inFolder("new.ullage")).text(), kStart);
}

TEST(Restore, RefusesWhatIsNoWholeBook)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QString copy = book.inFolder("copy");
    ASSERT_TRUE(copyVerified(book.store->connection(), copy));
    close(book);
    damage(copy);
    for (const QString& from : {copy, book.inFolder("none"), book.inFolder("")}) {
        const auto refused = restore(from, book.path(), true);
        EXPECT_FALSE(refused) << from.toStdString();
    }
    EXPECT_EQ(TempBook(book.path()).text(), kStart);
}

TEST(Restore, RefusesWhileAnotherProgramHasTheBookOpen)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const QString copy = book.inFolder("copy");
    ASSERT_TRUE(copyVerified(book.store->connection(), copy));
    const auto refused = restore(copy, book.path(), true);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::StoreFailed);
    EXPECT_EQ(book.text(), kStart);
    EXPECT_FALSE(QFile::exists(book.path() + ".restored"));
}
