// A colleague's journal that does not go together with the book, as the store reads it.
#include "tests/core/store/temp_book.h"

#include <QDir>
#include <QFile>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

QByteArray event(const QByteArray& id, const QByteArray& day, const QByteArray& rest)
{
    return R"({"type":"event","id":")" + id + R"(","batch":"dev-1","at":"2026-06-)" + day +
           R"(T10:00:00Z","kind":)" + rest + "}\n";
}

class JournalMerge : public ::testing::Test
{
protected:
    TempBook book;

    JournalMerge()
    {
        EXPECT_TRUE(book.import(kStart + event("d1", "20", R"("discarded","how":"drum")")));
    }
    Result<ImportOutcome> read(const QByteArray& text, ImportOptions options = {})
    {
        QBuffer device;
        device.setData(text);
        device.open(QIODevice::ReadOnly);
        options.name = QStringLiteral("theirs.jsonl");
        return readJournal(*book.book, *book.store, device, options);
    }
};

QByteArray theirs()
{
    return kHead                                            // 1
           + "\n"                                           // 2
           + event("t1", "10", R"("drawn","volume_ml":10)") // 3
           + event("t2", "25", R"("drawn","volume_ml":10)") // 4: after the end
           + "{\"type\":\"event\",\"id\":\"t3\"\n"          // 5: cannot be read
           + event("t4", "11", R"("drawn","volume_ml":-1)") // 6: out of range
           + event("e1", "11", R"("opened")")               // 7: another e1
           + event("t5", "12", R"("stirred")")              // 8: unknown kind
           + kHead                                          // 9: a second header
           + event("t6", "13", R"("opened")");              // 10
}

std::vector<int> lines(const ImportOutcome& outcome)
{
    std::vector<int> found;
    for (const auto& contradiction : outcome.contradictions) {
        EXPECT_EQ(contradiction.error.file, "theirs.jsonl");
        found.push_back(contradiction.error.line);
    }
    return found;
}

} // namespace

TEST_F(JournalMerge, TellsEveryLineThatContradictsAndEntersNothing)
{
    const QByteArray before = book.text();
    const auto outcome = read(theirs());
    ASSERT_TRUE(outcome) << outcome.error().line;
    EXPECT_FALSE(outcome->entered);
    EXPECT_EQ(lines(*outcome), (std::vector{4, 5, 6, 7, 8, 9}));
    EXPECT_EQ(outcome->contradictionCount, 6);
    EXPECT_EQ(outcome->contradictions[0].against->id(), "d1");
    EXPECT_EQ(outcome->contradictions[2].error.field, "volume_ml");
    EXPECT_EQ(outcome->coming.at("drawn"), 2);
    EXPECT_EQ(book.text(), before);
    EXPECT_FALSE(book.import(theirs()));
    EXPECT_EQ(book.import(theirs()).error().line, 4);
}

TEST_F(JournalMerge, EntersTheRestOnceAllIsSettled)
{
    ledger::Settlement settled;
    settled.leftOut = {5, 6, 7, 8, 9};
    settled.retimed[4] =
        chemistry::Instant(std::chrono::sys_days(std::chrono::year(2026) / 6 / 19));
    auto outcome = read(theirs(), {.name = {}, .settled = settled, .trial = true});
    ASSERT_TRUE(outcome);
    EXPECT_EQ(outcome->contradictionCount, 0);
    EXPECT_FALSE(outcome->entered);
    EXPECT_EQ(outcome->leftOut, 5);
    const QByteArray before = book.text();
    outcome = read(theirs(), {.name = {}, .settled = settled});
    ASSERT_TRUE(outcome);
    EXPECT_TRUE(outcome->entered);
    EXPECT_EQ(outcome->added, 5); // two draughts, one of them with its taking back and anew, opened
    EXPECT_TRUE(book.text().startsWith(before));
    const auto again = read(theirs(), {.name = {}, .settled = settled});
    ASSERT_TRUE(again);
    EXPECT_EQ(again->added, 0);
}

TEST_F(JournalMerge, StopsWhenAskedToAndLeavesTheBookAsItWas)
{
    QByteArray many = kHead;
    for (int i = 0; i < 40'000; ++i) {
        many += event("n" + QByteArray::number(i), "10", R"("noted","text":"x")");
    }
    const QByteArray before = book.text();
    std::int64_t last = 0;
    ImportOptions options;
    options.watch = [&](const Progress& progress) {
        EXPECT_GE(progress.done, last);
        EXPECT_EQ(progress.all, 1000);
        last = progress.done;
        return last < 100;
    };
    const auto stopped = read(many, options);
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().code, ErrorCode::Cancelled);
    EXPECT_EQ(book.text(), before);
    EXPECT_TRUE(book.import(kHead + event("t6", "13", R"("opened")"))) << "nothing is held";
}

TEST_F(JournalMerge, ABottleThatMayBeOursIsAskedAbout)
{
    QByteArray twin = kMixed;
    twin.replace("\"e1\"", "\"x1\"").replace("dev-1", "x-dev").replace("T10:00", "T11:30");
    auto outcome =
        read(kHead + twin, {.name = {}, .settled = {}, .trial = false, .sameRefuse = true});
    ASSERT_TRUE(outcome);
    EXPECT_FALSE(outcome->entered);
    ASSERT_EQ(outcome->likelySame.size(), 1U);
    EXPECT_EQ(outcome->likelySame[0].line, 2);
    EXPECT_EQ(outcome->likelySame[0].oursName, "Dev 1");
    ledger::Settlement settled;
    settled.twoBottles = {2};
    outcome =
        read(kHead + twin, {.name = {}, .settled = settled, .trial = false, .sameRefuse = true});
    ASSERT_TRUE(outcome);
    EXPECT_TRUE(outcome->entered);
}

// Everything that journals are refused for has its line, also where others' entries are in the
// book already: without a line nobody finds it.
TEST(JournalMergeLines, EveryRefusedJournalNamesALine)
{
    const QDir folder(QStringLiteral(ULLAGE_JOURNALS "/refused"));
    const auto names = folder.entryList({QStringLiteral("*.jsonl")});
    ASSERT_GT(names.size(), 50);
    for (const QString& name : names) {
        SCOPED_TRACE(name.toStdString());
        QFile file(folder.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        TempBook book;
        const QByteArray text = file.readAll();
        auto refused = book.import(text);
        ASSERT_FALSE(refused);
        EXPECT_GT(refused.error().line, 0);
        // The same where all but its last line is in the book already.
        const qsizetype last = text.chopped(1).lastIndexOf('\n') + 1;
        if (book.import(text.first(last))) {
            refused = book.import(text);
            ASSERT_FALSE(refused);
            EXPECT_GT(refused.error().line, 0);
        }
    }
}
