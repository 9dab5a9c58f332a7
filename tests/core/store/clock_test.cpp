// The machine's clock set back and forward between entries: nothing is lost, and what happened is
// in the order of its moments, then of entry.
#include "tests/core/store/temp_book.h"

#include "core/store/day_book.h"
#include "core/store/integrity.h"
#include "core/store/report_json.h"

#include <random>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;
using chemistry::Instant;
using chemistry::Millilitres;
using std::chrono::hours;

namespace
{

// A book with a clock that goes where it is sent.
class ClockTest : public ::testing::Test
{
protected:
    ClockTest()
    {
        EXPECT_TRUE(first.import(kHead + kSolution + kVessel));
        reopen();
    }
    void reopen()
    {
        auto made = ledger::Book::open(
            *first.store, [this] { return now; }, [this] { return "n" + std::to_string(++ids); });
        ASSERT_TRUE(made);
        book = std::move(*made);
    }
    Result<void> note(const std::string& text)
    {
        return book->record(dev, ledger::Noted{text}, {now, {}});
    }
    std::vector<std::string> notes()
    {
        DayBook days(*first.store);
        const auto page = days.page({.kinds = {"noted"}}, {}, 1000);
        EXPECT_TRUE(page);
        std::vector<std::string> found;
        for (const DayEntry& entry : page->entries) {
            found.push_back(std::get<ledger::Noted>(entry.event.what).text);
        }
        return found;
    }
    void mix()
    {
        const auto mixed =
            book->mix({"mq", "b1", Millilitres(1000), "Dev 1", {}, false}, {now, {}});
        ASSERT_TRUE(mixed) << mixed.error().field;
        dev = *mixed;
    }

    TempBook first;
    std::unique_ptr<ledger::Book> book;
    Instant now = testNow();
    int ids = 0;
    std::string dev;
};

} // namespace

TEST_F(ClockTest, SetBackAndForwardNothingIsLostAndAllIsInOrder)
{
    mix();
    now += hours(100);
    ASSERT_TRUE(note("third"));
    now -= hours(50);
    ASSERT_TRUE(note("first"));
    ASSERT_TRUE(note("second, at the same moment"));
    now += hours(24 * 365);
    ASSERT_TRUE(note("fourth"));
    const std::vector<std::string> order{"fourth", "third", "second, at the same moment", "first"};
    EXPECT_EQ(notes(), order);
    reopen();
    EXPECT_EQ(notes(), order);
    const auto check = checkBook(*first.store);
    ASSERT_TRUE(check);
    EXPECT_TRUE(check->findings.empty());
}

TEST_F(ClockTest, BeforeABottleWasMixedItsDeedsAreRefusedAndItIsKept)
{
    mix();
    ASSERT_TRUE(note("n"));
    const QByteArray before = first.text();
    now -= hours(24 * 400);
    const auto refused = note("too early");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::BeforeMixing);
    EXPECT_EQ(refused.error().field, "at");
    EXPECT_EQ(first.text(), before);
    const auto none = book->batches(now);
    ASSERT_TRUE(none);
    EXPECT_TRUE(none->empty()) << "not mixed yet, by this clock";
    now += hours(24 * 400);
    const auto again = book->batches(now);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->size(), 1U);
    EXPECT_TRUE(note("in time"));
}

// Undo is a deed of now, whatever the clock says now.
TEST_F(ClockTest, UndoAndRedoWorkWithTheClockSetBack)
{
    mix();
    ASSERT_TRUE(note("n"));
    now -= hours(24 * 400);
    reopen();
    ASSERT_TRUE(book->undo());
    now += hours(24 * 800);
    reopen();
    ASSERT_TRUE(book->redo());
    const auto check = checkBook(*first.store);
    ASSERT_TRUE(check);
    EXPECT_TRUE(check->findings.empty());
}

TEST_F(ClockTest, MoreThanADayInTheFutureIsRefusedWithTheRange)
{
    mix();
    const QByteArray before = first.text();
    const auto refused = book->record(dev, ledger::Noted{"n"}, {now + hours(25), std::nullopt});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::InFuture);
    EXPECT_EQ(refused.error().field, "at");
    EXPECT_NEAR(*refused.error().number, 25.0 / 24, 1e-9);
    EXPECT_EQ(refused.error().high, 1);
    EXPECT_EQ(refused.error().unit, "days");
    EXPECT_EQ(first.text(), before);
    EXPECT_TRUE(book->record(dev, ledger::Noted{"n"}, {now + hours(24), std::nullopt}));
}

// A book made where the clock was right is read where it is not; its journal is not believed there.
TEST_F(ClockTest, AnotherBooksJournalIsRefusedWhileTheClockStandsBeforeIt)
{
    mix();
    ASSERT_TRUE(note("n"));
    const QByteArray journal = first.text();
    TempBook second;
    Instant early = now - hours(24 * 30);
    auto made = ledger::Book::open(
        *second.store, [&] { return early; }, [] { return std::string("x"); });
    ASSERT_TRUE(made);
    const auto import = [&] {
        QBuffer device;
        device.setData(journal);
        device.open(QIODevice::ReadOnly);
        return importJournal(**made, *second.store, device, QStringLiteral("other.jsonl"));
    };
    const auto refused = import();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::InFuture);
    EXPECT_EQ(refused.error().line, 4);
    EXPECT_EQ(second.text(), kHead);
    early = now;
    ASSERT_TRUE(import());
    EXPECT_EQ(second.text(), journal);
}

TEST_F(ClockTest, WalkingAboutAtRandomKeepsEverything)
{
    mix();
    std::mt19937 random(3);
    const Instant mixed = now;
    std::vector<std::pair<Instant, std::string>> entered;
    for (int i = 0; i < 300; ++i) {
        now = mixed + std::chrono::minutes(random() % (365 * 24 * 60));
        const std::string text = std::to_string(i);
        ASSERT_TRUE(note(text));
        entered.emplace_back(now, text);
    }
    std::stable_sort(entered.begin(), entered.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    auto found = notes();
    std::reverse(found.begin(), found.end());
    ASSERT_EQ(found.size(), entered.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        EXPECT_EQ(found[i], entered[i].second);
    }
    now = mixed + hours(24 * 366);
    TempBook other;
    auto made = ledger::Book::open(
        *other.store, [&] { return now; }, [] { return std::string("x"); });
    ASSERT_TRUE(made);
    QBuffer device;
    const QByteArray journal = first.text();
    device.setData(journal);
    device.open(QIODevice::ReadOnly);
    ASSERT_TRUE(importJournal(**made, *other.store, device, QStringLiteral("w.jsonl")));
    EXPECT_EQ(other.text(), journal);
}
