// The day book of a damaged file: a gap is said where it is, and what stands below it is shown.
#include "core/store/day_book.h"
#include "tests/core/store/damaged_book.h"

#include <algorithm>
#include <set>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

constexpr qint64 kPage = 4096;
constexpr int kNotes = 2000;

// A hundred notes a day, enough for many pages of the table and of its indexes.
QByteArray season()
{
    const auto two = [](int number) { return QByteArray::number(number).rightJustified(2, '0'); };
    QByteArray text = kHead + kSolution + kVessel + kMixed;
    for (int note = 0; note < kNotes; ++note) {
        text += R"({"type":"event","id":"n)" + QByteArray::number(note) +
                R"(","batch":"dev-1","kind":"noted","at":"2026-06-)" + two(2 + note / 100) + "T" +
                two(10 + note % 100 / 10) + ":" + two(10 + note % 10) + R"(:00Z","text":")" +
                QByteArray(40, static_cast<char>('a' + note % 26)) + "\"}\n";
    }
    return text;
}

class DayBookAround : public ::testing::Test
{
protected:
    DayBookAround()
    {
        EXPECT_TRUE(book.import(season()));
        close(book);
    }

    // One leaf of a table or an index in the middle of those it has.
    void destroy(const char* of)
    {
        std::vector<std::int64_t> leaves;
        {
            const auto file = Connection::open(book.path(), FileMode::Write, 1000);
            ASSERT_TRUE(file);
            Statement pages(**file, QStringLiteral("SELECT pageno FROM dbstat WHERE name = '%1' "
                                                   "AND pagetype = 'leaf' ORDER BY path")
                                        .arg(QLatin1String(of)));
            auto rows = pages.run();
            ASSERT_TRUE(rows);
            while (rows->next().value_or(false))
                leaves.push_back(rows->number(0));
        }
        ASSERT_GT(leaves.size(), 4U) << of;
        QFile file(book.path());
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        ASSERT_TRUE(file.seek((leaves[leaves.size() / 2] - 1) * kPage));
        ASSERT_EQ(file.write(QByteArray(kPage, '\xAA')), kPage);
    }

    struct Read {
        std::set<std::string> ids;
        std::vector<DayHole> holes;
        std::vector<std::int64_t> moments; ///< of all rows, in order
    };
    Read all(const DayFilter& filter, int limit)
    {
        auto store = SqlStore::open(book.path(), {.access = Access::Read});
        EXPECT_TRUE(store);
        DayBook days(**store);
        Read read;
        std::optional<DayKey> after;
        for (int pages = 0; pages < 1000; ++pages) {
            const auto page = days.page(filter, after, limit);
            EXPECT_TRUE(page) << page.error().text;
            if (!page)
                return read;
            for (const DayEntry& entry : page->entries) {
                EXPECT_EQ(entry.hole.has_value(), entry.fault.has_value());
                if (entry.hole)
                    read.holes.push_back(*entry.hole);
                else
                    EXPECT_TRUE(read.ids.insert(entry.event.id).second) << entry.event.id;
                read.moments.push_back(entry.event.at.time_since_epoch().count());
            }
            after = page->last;
            if (!page->more)
                return read;
        }
        ADD_FAILURE() << "it never ends";
        return read;
    }

    TempBook book;
};

} // namespace

TEST_F(DayBookAround, ALeafOfEntriesIsAGapAndTheRestFollows)
{
    destroy("entry");
    for (const int limit : {7, 200}) {
        const Read read = all({}, limit);
        EXPECT_TRUE(read.ids.contains("e1")) << "the oldest of all";
        EXPECT_TRUE(read.ids.contains("n1999")) << "the newest of all";
        ASSERT_FALSE(read.holes.empty());
        std::int64_t gone = 0;
        for (const DayHole& hole : read.holes) {
            EXPECT_GT(hole.entries, 0);
            EXPECT_LE(hole.oldest, hole.newest);
            gone += hole.entries;
        }
        EXPECT_EQ(static_cast<std::int64_t>(read.ids.size()) + gone, kNotes + 1);
        EXPECT_TRUE(std::is_sorted(read.moments.rbegin(), read.moments.rend()));
    }
    EXPECT_EQ(all({}, 3000).holes.size(), 1U) << "one gap is one row";
    EXPECT_EQ(all({.batch = "dev-1"}, 3000).holes.size(), 1U);
}

TEST_F(DayBookAround, ALeafOfTheIndexIsAGapOfNobodyKnowsHowMany)
{
    destroy("entry_by_time");
    const Read read = all({}, 50);
    EXPECT_TRUE(read.ids.contains("e1")) << "the oldest of all";
    EXPECT_TRUE(read.ids.contains("n1999")) << "the newest of all";
    ASSERT_EQ(read.holes.size(), 1U);
    EXPECT_EQ(read.holes.front().entries, 0);
    EXPECT_LT(read.ids.size(), static_cast<std::size_t>(kNotes));
}

TEST_F(DayBookAround, ItIsNeverCountedAsWhole)
{
    destroy("entry");
    auto store = SqlStore::open(book.path(), {.access = Access::Read});
    ASSERT_TRUE(store);
    const auto totals = DayBook(**store).count({});
    ASSERT_TRUE(totals);
    EXPECT_TRUE(totals->damaged);
}
