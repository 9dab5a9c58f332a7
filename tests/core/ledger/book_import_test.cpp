#include "core/ledger/book_import.h"
#include "tests/core/ledger/book_kit.h"

namespace ullage::ledger
{
namespace
{

using namespace chemistry;
using Code = ErrorCode;

class ImportTest : public BookTest
{
protected:
    static Entry event(const std::string& id, const std::string& batch, double days, Happening what)
    {
        return {Event{id, batch, History::at(days), std::move(what), {}}, {}};
    }
    static std::vector<Entry> journal()
    {
        auto stop = formulary::Solution();
        stop.id = "stop";
        stop.name = "Stop bath";
        const Mixed mixed{"stop", "brown", Millilitres(400), {}, "pk", false};
        return {{stop, {}},
                {History::vessel("brown", 500, formulary::Material::Pet, true), {}},
                {Packet{"pk", "stop", Millilitres(400)}, {}},
                {FilmRecord{"f1", "r1", "120", "roll", 100, ""}, {}}, // before its run
                event("j1", "s1", 1, mixed),
                event("j2", "s1", 2, Processed{rolls(1), {}, Millilitres(0), false, "r1"}),
                event("j3", "s1", 3, Noted{"wrong"}),
                event("j4", "", 4, Voided{"j3", "mistake"}),
                event("j5", "", 4, OpenedPacket{"pk"}),
                {Chemical{"c1", "citric acid", "77-92-9", 500}, {}}};
    }
    Result<int> bring(const std::vector<Entry>& entries)
    {
        auto import = book->import();
        if (!import) {
            return tl::unexpected(import.error());
        }
        for (const Entry& entry : entries) {
            if (auto fine = (*import)->add(entry); !fine) {
                return tl::unexpected(fine.error());
            }
        }
        return (*import)->finish();
    }
};

TEST_F(ImportTest, bringsEverythingInOneGo)
{
    EXPECT_EQ(bring(journal()), 10);
    EXPECT_EQ(wear("s1"), 2.5);
    EXPECT_EQ(book->events("s1")->size(), 4U); // the voiding found its batch
    restart();
    EXPECT_EQ(wear("s1"), 2.5);
    EXPECT_FALSE(book->undoable());
}

// While an import is under way, what does not fit may be made possible by a line still to come;
// once it is dropped, nothing is left to a later line.
TEST_F(ImportTest, aDroppedImportLeavesTheBookAsStrictAsBefore)
{
    const auto dev = mix();
    {
        auto import = *book->import();
        ASSERT_TRUE(import->add(event("i1", "nowhere", 1, Opened{})));
    }
    expectRefused([&] { return book->drawOff(dev, Millilitres(2000), "", when(2)); },
                  Code::NotEnough, "volume_ml");
    expectRefused([&] { return book->topUp(dev, Millilitres(1), when(2), "nowhere"); },
                  Code::UnknownId, "from");
    restart();
    EXPECT_EQ(batch(dev).volume, Millilitres(1000));
}

TEST_F(ImportTest, twiceIsTheSameAsOnce)
{
    ASSERT_TRUE(bring(journal()));
    const auto before = store.entries();
    // The voiding names no batch in the journal and was stored with one; it is the same all the
    // same only for a store that compares the journal's line, which is the store's business.
    auto again = journal();
    again.erase(again.begin() + 7);
    EXPECT_EQ(bring(again), 0);
    EXPECT_EQ(store.entries(), before);
    EXPECT_EQ(wear("s1"), 2.5);
}

TEST_F(ImportTest, anyRefusalDropsTheWhole)
{
    const auto refused = [&](Entry wrong) {
        auto entries = journal();
        entries.push_back(std::move(wrong));
        const auto before = store.contents();
        const auto done = bring(entries);
        EXPECT_FALSE(done);
        EXPECT_EQ(store.contents(), before);
        EXPECT_FALSE(store.inTransaction());
        EXPECT_FALSE(book->formulary().solution("stop"));
        EXPECT_EQ(book->batch("s1", now).error().code, Code::UnknownId);
        return done ? Error{} : done.error();
    };
    EXPECT_EQ(refused(event("j9", "s1", 3, Drawn{Millilitres(401), {}})).code, Code::NotEnough);
    EXPECT_EQ(refused(event("j9", "s2", 3, Opened{})).code, Code::UnknownId);
    EXPECT_EQ(refused(event("j1", "s1", 3, Opened{})).code, Code::IdTaken);
    EXPECT_EQ(refused(event("j9", "", 3, Voided{"j3", ""})).code, Code::AlreadyVoided);
    EXPECT_EQ(refused(event("j9", "s2", 3, Voided{"j2", ""})).code, Code::Conflict);
    EXPECT_EQ(refused(event("j9", "", 3, OpenedPacket{"none"})).code, Code::UnknownId);
    EXPECT_EQ(refused({Packet{"pk2", "none", {}}, {}}).code, Code::UnknownId);
    auto other = History::vessel("brown", 600, formulary::Material::Pet, true);
    EXPECT_EQ(refused({other, {}}).code, Code::IdTaken);
    EXPECT_EQ(refused({FilmRecord{"f2", "r2", "120", "", {}, ""}, {}}).field, "run");
    EXPECT_EQ(bring(journal()), 10); // and then it still goes
}

TEST_F(ImportTest, judgesTheEventsOfABatchOnTheWhole)
{
    auto entries = journal();
    // Each stands before the line that makes it possible, or before the one that takes it back.
    entries.insert(entries.begin() + 4, event("j6", "s1", 8, Drawn{Millilitres(150), {}}));
    entries.insert(entries.begin() + 5, event("j7", "s1", 7, ToppedUp{Millilitres(100), "s2"}));
    entries.push_back(event("j8", "s1", 6, Drawn{Millilitres(300), {}}));
    entries.push_back(event("j9", "s1", 5, Drawn{Millilitres(400), "slip of the pen"}));
    entries.push_back(event("j10", "", 9, Voided{"j9", {}}));
    const Mixed other{"stop", "brown", Millilitres(500), {}, {}, false};
    entries.push_back(event("j11", "s2", 1, other));
    EXPECT_EQ(bring(entries), 16);
    EXPECT_NEAR(batch("s1").volume.value(), 400 - 300 + 100 - 150, 1e-9);
}

TEST_F(ImportTest, namesTheEventThatTheWholeDoesNotAllow)
{
    const auto culpritOf = [&](const Entry& wrong) {
        auto import = *book->import();
        int line = 1;
        EXPECT_TRUE(import->add(wrong, ++line)); // stands first
        for (const Entry& entry : journal()) {
            EXPECT_TRUE(import->add(entry, ++line));
        }
        EXPECT_FALSE(import->finish());
        EXPECT_EQ(import->contradictionCount(), 1);
        const auto found = import->contradictions();
        EXPECT_EQ(found.size(), 1U);
        EXPECT_EQ(found.front().error.line, 2);
        return found.front().entry->id();
    };
    const auto before = store.contents();
    EXPECT_EQ(culpritOf(event("w1", "s1", 5, Drawn{Millilitres(401), {}})), "w1");
    EXPECT_EQ(culpritOf(event("w2", "s1", 0.5, Opened{})), "w2");
    EXPECT_EQ(culpritOf(event("w3", "s9", 5, Opened{})), "w3");
    EXPECT_EQ(culpritOf(event("w4", "s1", 1.5, ToppedUp{Millilitres(9), "s9"})), "w4");
    EXPECT_EQ(culpritOf({FilmRecord{"w5", "r9", "120", "roll", {}, {}}, {}}), "w5");
    EXPECT_EQ(store.contents(), before);
    EXPECT_TRUE(bring(journal()));
}

TEST_F(ImportTest, droppedWithoutFinishingLeavesNothing)
{
    const auto before = store.contents();
    {
        auto import = *book->import();
        for (const Entry& entry : journal()) {
            ASSERT_TRUE(import->add(entry));
        }
    }
    EXPECT_EQ(store.contents(), before);
    EXPECT_FALSE(book->formulary().vessel("brown"));
    EXPECT_TRUE(book->batches(now, true)->empty());
}

TEST_F(ImportTest, everyFailureOfTheStoreRollsBack)
{
    const auto before = store.contents();
    for (int calls = 0;; ++calls) {
        SCOPED_TRACE(calls);
        ASSERT_LT(calls, 500);
        store.failAfter(calls);
        const auto done = bring(journal());
        const bool failed = store.failed();
        store.forgetFailure();
        if (!failed) {
            EXPECT_EQ(done, 10);
            break;
        }
        ASSERT_FALSE(done);
        EXPECT_EQ(store.contents(), before);
        EXPECT_FALSE(store.inTransaction());
        EXPECT_FALSE(book->formulary().vessel("brown"));
    }
    EXPECT_EQ(wear("s1"), 2.5);
}

TEST_F(ImportTest, eventsMayComeOutOfTimesOrder)
{
    auto entries = journal();
    entries.push_back(event("j8", "s1", 1.5, ToppedUp{Millilitres(100), {}}));
    EXPECT_EQ(bring(entries), 11);
    EXPECT_DOUBLE_EQ(wear("s1"), 2);
}

} // namespace
} // namespace ullage::ledger
