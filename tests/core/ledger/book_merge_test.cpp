// Two people's books of the same bottles: what contradicts, and how it is settled.
#include "core/ledger/book_import.h"
#include "core/ledger/dependents.h"
#include "tests/core/ledger/book_kit.h"

#include <set>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;
using Code = ErrorCode;

class MergeTest : public BookTest
{
protected:
    std::string ours = mix(0); // 1000 mL
    std::vector<Entry> journal;

    static Entry event(const std::string& id, const std::string& batch, double days, Happening what)
    {
        return {Event{id, batch, History::at(days), std::move(what), {}, {}}, {}};
    }
    void theirs(const std::string& id, const std::string& batch, double days, Happening what)
    {
        journal.push_back(event(id, batch, days, std::move(what)));
    }
    void theirMixing(const std::string& id, const std::string& batch, double days,
                     const std::string& name = {}, const std::string& vessel = "glass")
    {
        theirs(id, batch, days, Mixed{"dev", vessel, Millilitres(800), name, {}, false});
    }

    // The journal's lines begin at 2, as after a header.
    std::unique_ptr<Book::Import> brought(Settlement settled = {})
    {
        auto all = withDependents(settled.leftOut, store, [this](const TakeLine& take) {
            Result<void> fine;
            for (std::size_t i = 0; i < journal.size() && fine; ++i) {
                fine = take(journal[i], int(i) + 2);
            }
            return fine;
        });
        EXPECT_TRUE(all);
        settled.leftOut = *all;
        auto import = book->import(settled);
        EXPECT_TRUE(import);
        for (std::size_t i = 0; i < journal.size(); ++i) {
            EXPECT_TRUE((*import)->add(journal[i], int(i) + 2));
        }
        EXPECT_TRUE((*import)->judge());
        return std::move(*import);
    }
    static std::vector<int> lines(const Book::Import& import)
    {
        std::vector<int> found;
        for (const auto& contradiction : import.contradictions()) {
            found.push_back(contradiction.error.line);
        }
        return found;
    }
};

TEST_F(MergeTest, tellsEveryContradictionByItsLineAndLeavesTheBookAsItWas)
{
    ASSERT_TRUE(book->record(ours, Discarded{"drum"}, when(10)));
    const auto discarding = book->events(ours)->back().id;
    theirs("t1", ours, 5, Drawn{Millilitres(100), {}});
    theirs("t2", ours, 12, Drawn{Millilitres(100), {}}); // after the end
    theirs("t3", ours, -1, Opened{});                    // before mixed
    theirs("t4", ours, 6, Drawn{Millilitres(1000), {}}); // too much
    theirs(discarding, ours, 11, Noted{"the same id"});  // other content
    theirs("t6", "nobody", 5, Opened{});                 // no such batch
    theirs("t7", ours, 200, Opened{});                   // in the future
    journal.push_back({FilmRecord{"f1", "no run", "120", {}, {}, {}}, {}});
    theirs("t8", ours, 7, Noted{"fine"});
    const auto before = store.contents();
    {
        const auto import = brought();
        EXPECT_EQ(lines(*import), (std::vector{3, 4, 5, 6, 7, 8, 9}));
        EXPECT_EQ(import->contradictionCount(), 7);
        const auto all = import->contradictions();
        EXPECT_EQ(all[0].error.code, Code::AfterEnd);
        EXPECT_EQ(all[0].against->id(), discarding);
        EXPECT_TRUE(all[0].againstOurs);
        EXPECT_EQ(waysOut(all[0]),
                  (std::vector{WayOut::LeaveOut, WayOut::ChangeTime, WayOut::TakeBack}));
        EXPECT_EQ(all[1].error.code, Code::BeforeMixing);
        EXPECT_EQ(waysOut(all[1]), (std::vector{WayOut::LeaveOut, WayOut::ChangeTime}));
        EXPECT_EQ(all[2].error.code, Code::NotEnough);
        EXPECT_EQ(all[3].error.code, Code::IdTaken);
        EXPECT_EQ(all[3].against->id(), discarding);
        EXPECT_EQ(waysOut(all[3]), std::vector{WayOut::LeaveOut});
        EXPECT_EQ(all[4].error.code, Code::UnknownId);
        EXPECT_EQ(all[5].error.code, Code::InFuture);
        EXPECT_EQ(all[6].error.field, "run");
        const auto done = import->finish();
        ASSERT_FALSE(done);
        EXPECT_EQ(done.error().line, 3);
    }
    EXPECT_EQ(store.contents(), before);
    EXPECT_FALSE(store.inTransaction());

    const auto import = brought({.leftOut = {3, 4, 5, 6, 7, 8, 9}});
    EXPECT_EQ(import->contradictionCount(), 0);
    EXPECT_EQ(import->finish(), 2);
    EXPECT_EQ(batch(ours, 9).volume.value(), 900);
}

TEST_F(MergeTest, oursThatNoLongerFitIsToldOfTheLineThatBroughtIt)
{
    ASSERT_TRUE(book->drawOff(ours, Millilitres(950), "", when(10)));
    theirs("t1", ours, 5, Drawn{Millilitres(100), {}});
    const auto found = brought()->contradictions();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].error.line, 2);
    EXPECT_EQ(found[0].entry->id(), "t1");
    EXPECT_TRUE(found[0].againstOurs);
    EXPECT_EQ(found[0].against->event()->kind(), "drawn");
}

TEST_F(MergeTest, takingOneOfOursBackSettlesIt)
{
    ASSERT_TRUE(book->record(ours, Discarded{"drum"}, when(10)));
    const auto discarding = book->events(ours)->back().id;
    theirs("t1", ours, 12, Drawn{Millilitres(100), {}});
    theirs("t2", ours, 20, Discarded{"sink"});
    auto import = brought({.takenBack = {discarding}});
    EXPECT_EQ(import->contradictionCount(), 0);
    EXPECT_EQ(import->finish(), 3);
    EXPECT_EQ(batch(ours).endedAt, History::at(20));
    EXPECT_EQ(takenBack(*book->events(ours)).count(discarding), 1U);
    // Once more, with what was decided then: nothing is left to do.
    import = brought({.takenBack = { discarding }});
    EXPECT_EQ(import->finish(), 0);
}

TEST_F(MergeTest, takingBackWhatOursRestsOnIsToldWithoutALine)
{
    ASSERT_TRUE(book->drawOff(ours, Millilitres(600), "", when(1)));
    ASSERT_TRUE(book->topUp(ours, Millilitres(500), when(2)));
    const auto filling = book->events(ours)->back().id;
    ASSERT_TRUE(book->drawOff(ours, Millilitres(800), "", when(3)));
    theirs("t1", ours, 2.5, Noted{"x"});
    const auto found = brought({.takenBack = {filling}})->contradictions();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].error.code, Code::CannotVoid);
    EXPECT_EQ(found[0].error.line, 0);
    EXPECT_TRUE(waysOut(found[0]).empty());
}

TEST_F(MergeTest, anotherTimeSettlesItAndTheSameJournalStaysTheSame)
{
    ASSERT_TRUE(book->record(ours, Discarded{"drum"}, when(10)));
    theirs("t1", ours, 12, Drawn{Millilitres(100), {}});
    auto import = brought({.retimed = {{2, History::at(9)}}});
    EXPECT_EQ(import->contradictionCount(), 0);
    EXPECT_EQ(import->finish(), 3); // theirs, its taking back, the right one
    EXPECT_EQ(batch(ours, 9.5).volume.value(), 900);
    const auto before = store.entries();
    EXPECT_EQ(brought()->finish(), 0);
    EXPECT_EQ(store.entries(), before);
}

TEST_F(MergeTest, aTimeInTheFutureComesInOnlyAsItWasSet)
{
    theirs("t1", ours, 300, Drawn{Millilitres(100), {}});
    auto import = brought({.retimed = {{2, History::at(9)}}});
    EXPECT_EQ(import->finish(), 1);
    EXPECT_EQ(batch(ours, 9.5).volume.value(), 900);
    // A time that does not help either is told again.
    theirs("t2", ours, 300, Drawn{Millilitres(100), {}});
    EXPECT_EQ(brought({.leftOut = {2}, .retimed = {{3, History::at(-2)}}})->contradictionCount(),
              1);
}

TEST_F(MergeTest, whatDependsOnALineStaysOutWithIt)
{
    theirMixing("m1", "tb", 30); // 2
    theirs("r1", "tb", 31, Processed{rolls(1), {}, Millilitres(0), false, "tr"});
    journal.push_back({FilmRecord{"f1", "tr", "120", {}, {}, {}}, {}});
    journal.push_back({FilmMark{"k1", "f1", History::at(32), FilmFault::Thin, {}, {}, {}}, {}});
    theirs("v1", "", 33, Voided{"r1", "x"});
    theirs("u1", ours, 34, ToppedUp{Millilitres(0.5), "tb"});
    theirs("n1", ours, 35, Noted{"stays"}); // 8
    const auto through = [this](const TakeLine& take) -> Result<void> {
        for (std::size_t i = 0; i < journal.size(); ++i) {
            EXPECT_TRUE(take(journal[i], int(i) + 2));
        }
        return {};
    };
    EXPECT_EQ(*withDependents({2}, store, through), (std::set{2, 3, 4, 5, 6, 7}));
    EXPECT_EQ(*withDependents({3}, store, through), (std::set{3, 4, 5, 6}));
    EXPECT_EQ(*withDependents({8}, store, through), std::set{8});
    EXPECT_EQ(brought({.leftOut = {2}})->finish(), 1);
    // What the book has is not lost: here the batch, there a run that another line names.
    journal = {event("m2", ours, 1, Mixed{"dev", "glass", Millilitres(9), {}, {}, false}),
               event("n2", ours, 2, Noted{"x"}),
               event("r2", ours, 3, Processed{rolls(1), {}, Millilitres(0), false, "two"}),
               event("r3", ours, 3, Processed{rolls(1), {}, Millilitres(0), false, "two"}),
               {FilmRecord{"f2", "two", "120", {}, {}, {}}, {}}};
    EXPECT_EQ(*withDependents({2, 4}, store, through), (std::set{2, 4}));
}

TEST_F(MergeTest, theSameBottleEnteredTwiceIsNoticed)
{
    theirMixing("m1", "their-1", 0.1, "Dev X", "hdpe");     // other bottle, other name
    theirMixing("m2", "their-2", 0.1, " DEV 1", "hdpe");    // the name of ours
    theirMixing("m3", "their-3", 0.2, "whatever", "glass"); // the vessel of ours
    theirMixing("m4", "their-4", 1, "dev 1", "glass");      // a day later
    const auto import = brought();
    EXPECT_EQ(import->contradictionCount(), 0);
    std::vector<std::pair<int, std::string>> found;
    for (const LikelySame& same : import->likelySame()) {
        found.emplace_back(same.line, same.theirs.batch);
        EXPECT_EQ(same.ours.batch, ours);
        EXPECT_EQ(same.oursName, "dev 1");
    }
    EXPECT_EQ(found, (std::vector<std::pair<int, std::string>>{{3, "their-2"}, {4, "their-3"}}));
    EXPECT_EQ(import->finish(), 4) << "it refuses nothing";
}

TEST_F(MergeTest, anImportIsJudgedWholeHoweverManyContradictionsThereAre)
{
    for (int i = 0; i < 3000; ++i) {
        theirs("t" + std::to_string(i), ours, -1, Opened{});
    }
    const auto import = brought();
    EXPECT_EQ(import->contradictionCount(), 3000);
    const auto found = lines(*import);
    EXPECT_EQ(found.size(), Book::Import::kMostKept);
    EXPECT_EQ(found.back(), int(Book::Import::kMostKept) + 1) << "those on the first lines";
}

} // namespace
} // namespace ullage::ledger
