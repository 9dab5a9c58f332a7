// Which copies of a book there are, what they are called, and which stay.
#include "core/store/backup.h"
#include "core/store/copies.h"
#include "tests/core/store/temp_book.h"

#include <QDir>
#include <QFile>

#include <algorithm>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;
using chemistry::Instant;

namespace
{

const QString kId = QStringLiteral("0d6ffc2e-3a35-4d0c-9d0e-5b8f1c5a7f10");

Instant day(int year, unsigned month, unsigned date, int hour = 0)
{
    return std::chrono::sys_days(std::chrono::year(year) / static_cast<int>(month) /
                                 static_cast<int>(date)) +
           std::chrono::hours(hour);
}

Copy copyOf(Instant at, std::int64_t entries = 10, CopyState state = CopyState::Sound)
{
    return {QString::number(at.time_since_epoch().count()) + u'-' + QString::number(entries), at,
            entries, kId, state};
}

bool has(const std::vector<Copy>& copies, const Copy& wanted)
{
    return std::any_of(copies.begin(), copies.end(),
                       [&](const Copy& copy) { return copy.path == wanted.path; });
}

} // namespace

TEST(Copies, NamesSayWhatTheyAreCopiesOf)
{
    for (const CopyName& name :
         {CopyName{"home", kId, day(2026, 9, 1, 7)},
          CopyName{"my book-2", kId, day(2026, 9, 1, 7) + std::chrono::milliseconds(5), true},
          CopyName{"home", {}, day(2026, 9, 1, 7)}}) {
        const auto read = copyName(fileName(name));
        ASSERT_TRUE(read) << fileName(name).toStdString();
        EXPECT_EQ(read->book, name.book);
        EXPECT_EQ(read->id, name.id);
        EXPECT_EQ(read->at, name.at);
        EXPECT_EQ(read->faulty, name.faulty);
    }
    for (const char* other : {"home.ullage", "2026-09-01T070000Z.ullage", "home-2026-09-01.ullage",
                              "home-old.ullage", "home-2026-09-01T070000Z.ullage.part"}) {
        EXPECT_FALSE(copyName(other)) << other;
    }
}

TEST(Copies, KeepsSevenDaysEightWeeksAndTwelveMonths)
{
    std::vector<Copy> made;
    // Twice a day for two years.
    for (Instant at = day(2025, 1, 1, 8); at < day(2027, 1, 1); at += std::chrono::hours(12)) {
        made.push_back(copyOf(at));
    }
    std::vector<Instant> kept;
    for (const Copy& copy : keptCopies(made, day(2027, 1, 1))) {
        kept.push_back(copy.at);
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
    EXPECT_TRUE(keptCopies({}, day(2027, 1, 1)).empty());
}

TEST(Copies, OneOfFewerEntriesNeverTakesThePlaceOfAFullerOne)
{
    std::vector<Copy> made{copyOf(day(2026, 9, 1, 8), 500), copyOf(day(2026, 9, 1, 9), 2)};
    auto kept = keptCopies(made, day(2026, 9, 1, 9));
    EXPECT_TRUE(has(kept, made[0]));
    EXPECT_TRUE(has(kept, made[1])) << "the newest";
    // Years of small copies later the fullest is still there.
    for (Instant at = day(2026, 9, 2, 8); at < day(2029, 1, 1); at += std::chrono::hours(24)) {
        made.push_back(copyOf(at, 3));
        made = keptCopies(made, at);
    }
    EXPECT_TRUE(has(made, copyOf(day(2026, 9, 1, 8), 500)));
    EXPECT_LT(made.size(), 30U);
}

TEST(Copies, ThoseOfTheFutureDoNotPushOutTheOneJustMade)
{
    std::vector<Copy> made;
    for (int date = 1; date <= 28; ++date) {
        made.push_back(copyOf(day(2030, 1, static_cast<unsigned>(date)), 10));
    }
    const Copy now = copyOf(day(2026, 9, 1), 10);
    made.push_back(now);
    const Copy before = copyOf(day(2026, 8, 31), 10);
    made.push_back(before);
    const auto kept = keptCopies(made, now.at);
    EXPECT_TRUE(has(kept, now));
    EXPECT_TRUE(has(kept, before));
    EXPECT_LT(kept.size(), 16U) << "they make room among themselves";
}

TEST(Copies, AFaultyOneNeverTakesThePlaceOfASoundOne)
{
    const Copy sound = copyOf(day(2026, 9, 1, 8), 10);
    const Copy faulty = copyOf(day(2026, 9, 1, 9), 20, CopyState::Faulty);
    const Copy unreadable = copyOf(day(2020, 1, 1), 0, CopyState::Unreadable);
    const auto kept = keptCopies({sound, faulty, unreadable}, day(2026, 9, 1, 10));
    EXPECT_EQ(kept.size(), 3U);
}

TEST(Copies, AreFoundByTheBooksOwnIdAndBesideIt)
{
    TempBook book;
    TempBook other; // of the same file name, in another folder
    ASSERT_TRUE(book.import(kStart));
    ASSERT_TRUE(other.import(kHead + kSolution));
    const QDir folder(book.inFolder("copies"));
    ASSERT_TRUE(folder.mkpath("."));
    const auto ours = backUp(book.path(), folder.path(), day(2026, 9, 1, 7));
    const auto theirs = backUp(other.path(), folder.path(), day(2026, 9, 1, 8));
    ASSERT_TRUE(ours && theirs);
    EXPECT_NE(ours->copy.bookId, theirs->copy.bookId);
    ASSERT_TRUE(copyVerified(book.store->connection(), book.path() + ".replaced"));

    const auto found = copies(book.path(), ours->copy.bookId, {folder.path()});
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found.back().path, ours->copy.path);
    EXPECT_EQ(found.back().entries, 4);
    EXPECT_EQ(found.back().at, day(2026, 9, 1, 7));
    EXPECT_EQ(found.back().state, CopyState::Sound);
    // Without the book nobody knows its id: what bears its name is offered.
    EXPECT_EQ(copies(book.path(), {}, {folder.path()}).size(), 3U);
    EXPECT_TRUE(copies(book.inFolder("else.ullage"), {}, {folder.path(), "/nowhere"}).empty());
}

TEST(Copies, OneThatWasDamagedSinceIsUnreadable)
{
    TempBook book;
    QFile text(book.inFolder("home-2026-09-01T070000Z.ullage"));
    ASSERT_TRUE(text.open(QIODevice::WriteOnly));
    text.write("Dear");
    text.close();
    EXPECT_EQ(readCopy(text.fileName()).state, CopyState::Unreadable);
    EXPECT_EQ(readCopy(text.fileName()).at, day(2026, 9, 1, 7));
    EXPECT_EQ(readCopy(book.inFolder("none")).state, CopyState::Unreadable);
}
