#include "tests/core/ledger/book_kit.h"

#include <cmath>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;
using Code = ErrorCode;

TEST_F(BookTest, mixesAndReadsBack)
{
    const auto id = mix(0, "dev", 900);
    EXPECT_EQ(batch(id).volume, Millilitres(900));
    EXPECT_EQ(batch(id).name, "dev 1");
    EXPECT_EQ(book->events(id)->size(), 1U);
    EXPECT_EQ(book->undoable()->what, "mix");
    EXPECT_EQ(book->undoable()->subject, "dev 1");
    restart();
    EXPECT_EQ(batch(id).volume, Millilitres(900));
    EXPECT_EQ(book->batch(id, History::at(-1)).error().code, Code::UnknownId);
    EXPECT_EQ(book->batch("nobody", History::at(1)).error().code, Code::UnknownId);
}

TEST_F(BookTest, listsBatchesAsOfAnyTime)
{
    const auto first = mix(1);
    const auto second = mix(0, "fixer");
    ASSERT_TRUE(book->record(first, Discarded{"collected"}, when(10)));
    const auto listed = [&](double days, bool ended) {
        std::vector<std::string> result;
        const auto batches = book->batches(History::at(days), ended);
        for (const Batch& batch : *batches) {
            result.push_back(batch.id);
        }
        return result;
    };
    using Ids = std::vector<std::string>;
    EXPECT_EQ(listed(0.5, true), Ids{second});
    EXPECT_EQ(listed(5, false), (Ids{second, first})); // in order of mixing
    EXPECT_EQ(listed(11, false), Ids{second});
    EXPECT_EQ(listed(11, true), (Ids{second, first}));
    restart();
    EXPECT_EQ(listed(5, false), (Ids{second, first}));
    EXPECT_EQ(listed(11, false), Ids{second});
}

TEST_F(BookTest, listsTheDevelopersThatEndedLately)
{
    const auto early = mix(0);
    const auto late = mix(1);
    const auto fixer = mix(2, "fixer");
    const auto inUse = mix(3, "fixer");
    ASSERT_TRUE(book->record(early, Discarded{"collected"}, when(10)));
    ASSERT_TRUE(book->record(late, Discarded{"collected"}, when(20)));
    ASSERT_TRUE(book->record(fixer, Discarded{"collected"}, when(21)));
    const auto listed = [&](double from, double at) {
        std::vector<std::string> result;
        const auto batches =
            book->batchesSince(History::at(from), History::at(at), formulary::Role::Developer);
        for (const Batch& batch : *batches) {
            result.push_back(batch.id);
        }
        return result;
    };
    using Ids = std::vector<std::string>;
    EXPECT_EQ(listed(15, 30), (Ids{late, inUse}));
    EXPECT_EQ(listed(5, 30), (Ids{early, late, inUse}));
    EXPECT_EQ(listed(15, 20.5), (Ids{late, fixer, inUse})) << "the fixer was in use yet";
}

TEST_F(BookTest, runsFilmThroughTwoBottlesAtOnce)
{
    const auto dev = mix();
    const auto fix = mix(0, "fixer");
    FilmRun request;
    request.load = rolls(2);
    request.baths = {{dev, Millilitres(600), Millilitres(20), false, {}},
                     {fix, {}, {}, false, Millilitres(10)}};
    request.films = {{"", "", "120", "first roll", 400, ""}};
    const auto id = book->process(request, History::at(1));
    ASSERT_TRUE(id);
    EXPECT_EQ(wear(dev), 2);
    EXPECT_EQ(batch(dev).volume, Millilitres(980));
    EXPECT_EQ(wear(fix), 2);
    EXPECT_EQ(batch(fix, 1).standing.air.volume, Millilitres(10));
    EXPECT_EQ(std::get<Processed>(book->events(dev)->back().what).run, *id);
    EXPECT_EQ(std::get<Processed>(book->events(fix)->back().what).run, *id);
    EXPECT_EQ(book->undoable()->subject, "dev 1, fixer 1");
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(wear(dev), 0);
    EXPECT_EQ(wear(fix), 0);
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(wear(dev), 2);
    EXPECT_EQ(wear(fix), 2);
}

TEST_F(BookTest, logsEveryBathOrNone)
{
    const auto dev = mix();
    const auto fix = mix(0, "fixer");
    ASSERT_TRUE(book->record(fix, Discarded{""}, when(1)));
    expectRefused<std::string>([&] { return run({dev, fix}, 2, 1); }, Code::AfterEnd, "at");
    EXPECT_EQ(wear(dev), 0);
    expectRefused<std::string>(
        [&] {
            return run({dev, "nobody"}, 2, 1);
        },
        Code::UnknownId, "batch");
    expectRefused<std::string>([&] { return run({dev, dev}, 2, 1); }, Code::Conflict, "batch");
    expectRefused<std::string>([&] { return run({}, 2, 1); }, Code::Missing, "batch");
}

TEST_F(BookTest, refusesWhatTheJournalListsAndChangesNothing)
{
    const auto dev = mix(5, "dev", 600);
    const auto gone = mix(5);
    ASSERT_TRUE(book->record(gone, Discarded{"collected"}, when(6)));
    const auto mixing = [&](NewBatch batch, double days) {
        return [this, batch, days] { return book->mix(batch, when(days)); };
    };
    using S = std::string;
    // More than fits, or no such solution, vessel, packet.
    expectRefused<S>(mixing({"dev", "small", Millilitres(501), "", "", false}, 1), Code::TooMuch,
                     "volume_ml");
    expectRefused<S>(mixing({"what", "small", Millilitres(5), "", "", false}, 1), Code::UnknownId,
                     "solution");
    expectRefused<S>(mixing({"dev", "what", Millilitres(5), "", "", false}, 1), Code::UnknownId,
                     "vessel");
    expectRefused<S>(mixing({"dev", "small", Millilitres(5), "", "what", false}, 1),
                     Code::UnknownId, "packet");
    expectRefused<S>(mixing({"dev", "small", Millilitres(NAN), "", "", false}, 1), Code::NotFinite,
                     "volume_ml");
    // A day ahead is allowed, more is not.
    expectRefused<S>(mixing({"dev", "small", Millilitres(5), "", "", false}, 101.001),
                     Code::InFuture, "at");
    // More used or taken than is there, more poured in than fits.
    expectRefused([&] { return book->drawOff(dev, Millilitres(601), "", when(7)); },
                  Code::NotEnough, "volume_ml");
    expectRefused([&] { return book->topUp(dev, Millilitres(431), when(7)); }, Code::TooMuch,
                  "volume_ml");
    expectRefused([&] { return book->move(dev, "small", when(7)); }, Code::TooMuch, "vessel");
    expectRefused([&] { return book->move(dev, "what", when(7)); }, Code::UnknownId, "vessel");
    expectRefused([&] { return book->record(dev, StoredAt{Celsius(200)}, when(7)); },
                  Code::OutOfRange, "temperature_c");
    // Before it was mixed, after it was discarded, for nobody.
    expectRefused([&] { return book->record(dev, Opened{}, when(4)); }, Code::BeforeMixing, "at");
    EXPECT_EQ(book->record(dev, Opened{}, when(4)).error().subject, batch(dev).name);
    expectRefused([&] { return book->record(gone, Opened{}, when(7)); }, Code::AfterEnd, "at");
    expectRefused([&] { return book->record("what", Opened{}, when(7)); }, Code::UnknownId,
                  "batch");
    expectRefused([&] { return book->topUp(dev, Millilitres(5), when(7), "what"); },
                  Code::UnknownId, "from");
    expectRefused([&] { return book->topUp(dev, Millilitres(5), when(7), gone); }, Code::AfterEnd,
                  "at");
    expectRefused([&] { return book->voidEvent("what", ""); }, Code::UnknownId, "voids");
    expectRefused([&] { return book->record("", OpenedPacket{"what"}, when(7)); }, Code::UnknownId,
                  "batch");
    EXPECT_EQ(batch(dev).volume, Millilitres(600));
}

TEST_F(BookTest, mixesADayAheadAtMost)
{
    EXPECT_TRUE(book->mix({"dev", "small", Millilitres(5), "", "", false}, when(101)));
}

TEST_F(BookTest, definitionsAreCheckedAndTakenOnce)
{
    expectRefused([&] { return book->add(History::developer()); }, Code::IdTaken, "id");
    auto wrong = History::developer();
    wrong.id = "wrong";
    wrong.q10 = 9;
    expectRefused([&] { return book->add(wrong); }, Code::OutOfRange, "q10");
    EXPECT_FALSE(book->formulary().solution("wrong"));
    auto vessel = History::vessel("tiny", 0.1, formulary::Material::Glass, false);
    expectRefused([&] { return book->add(vessel); }, Code::OutOfRange, "capacity_ml");
    EXPECT_FALSE(book->formulary().vessel("tiny"));
}

TEST_F(BookTest, takesLateEventsInTheirTurn)
{
    const auto dev = mix();
    ASSERT_TRUE(run({dev}, 20, 2));
    ASSERT_TRUE(run({dev}, 10, 3));
    EXPECT_EQ(batch(dev, 15).wear, FilmsPerLitre(3));
    EXPECT_EQ(wear(dev), 5);
    EXPECT_EQ(batch(dev).loads.front().at, History::at(10));
    // A late event may not make a later one impossible.
    ASSERT_TRUE(book->drawOff(dev, Millilitres(900), "", when(30)));
    expectRefused([&] { return book->drawOff(dev, Millilitres(200), "", when(25)); },
                  Code::NotEnough, "volume_ml");
    expectRefused([&] { return book->record(dev, Discarded{}, when(29)); }, Code::AfterEnd, "at");
    EXPECT_EQ(batch(dev).volume, Millilitres(100));
}

TEST_F(BookTest, voidsWithAReason)
{
    const auto dev = mix();
    ASSERT_TRUE(run({dev}, 1, 4));
    const auto film = book->events(dev)->back().id;
    ASSERT_TRUE(book->voidEvent(film, "wrong bottle"));
    EXPECT_EQ(wear(dev), 0);
    EXPECT_EQ(book->events(dev)->size(), 3U); // nothing is lost
    expectRefused([&] { return book->voidEvent(film, "again"); }, Code::AlreadyVoided, "voids");
    // Its mixing cannot go while events stand on it.
    ASSERT_TRUE(run({dev}, 2, 1));
    const auto mixing = book->events(dev)->front().id;
    expectRefused([&] { return book->voidEvent(mixing, ""); }, Code::CannotVoid, "voids");
    EXPECT_EQ(wear(dev), 1);
}

TEST_F(BookTest, voidingAMixingTakesTheBatchAway)
{
    const auto dev = mix();
    ASSERT_TRUE(book->voidEvent(book->events(dev)->front().id, ""));
    EXPECT_EQ(book->batch(dev, now).error().code, Code::UnknownId);
    EXPECT_TRUE(book->batches(now, true)->empty());
    restart();
    EXPECT_TRUE(book->batches(now, true)->empty());
    expectRefused([&] { return book->record(dev, Opened{}, when(1)); }, Code::UnknownId, "batch");
}

TEST_F(BookTest, noticesWhatOthersWrite)
{
    const auto dev = mix();
    auto other = opened();
    EXPECT_FALSE(*book->refresh());
    ASSERT_TRUE(other->record(dev, Discarded{"by another"}, when(50)));
    auto bottle = History::vessel("new", 250, formulary::Material::Pet, false);
    ASSERT_TRUE(other->add(bottle));
    EXPECT_TRUE(*book->refresh());
    EXPECT_FALSE(*book->refresh());
    EXPECT_FALSE(batch(dev).inUse());
    EXPECT_TRUE(book->formulary().vessel("new"));
    EXPECT_EQ(book->undoable()->what, "discarded");
    // Without asking: a change is checked against what is in the store now.
    ASSERT_TRUE(other->undo());
    ASSERT_TRUE(book->record(dev, Opened{}, when(60)));
    EXPECT_EQ(book->events(dev)->size(), 4U);
    expectRefused(
        [&]() -> Result<void> {
            const auto gone = other->record(dev, Discarded{}, when(55));
            return gone ? Result<void>{} : tl::unexpected(gone.error());
        },
        Code::AfterEnd, "at");
}

// Whatever call of the store fails, a refused request leaves store and book as they were, and the
// next request works.
TEST_F(BookTest, everyFailureOfTheStoreRollsBack)
{
    const auto dev = mix();
    const auto fix = mix(0, "fixer");
    const auto stock = mix(0, "dev", 900, "hdpe");
    ASSERT_TRUE(run({dev, fix}, 1, 1));
    const std::vector<std::pair<const char*, std::function<Result<void>()>>> requests{
        {"run",
         [&] {
             return run({dev, fix}, 5, 1).map([](auto&&) {});
         }},
        {"mix",
         [&] {
             return book->mix({"dev", "small", Millilitres(5), "", "", false}, when(5))
                 .map([](auto&&) {});
         }},
        {"top up", [&] { return book->topUp(dev, Millilitres(5), when(5), stock); }},
        {"undo", [&] { return book->undo(); }},
        {"define",
         [&] { return book->add(History::vessel("extra", 250, formulary::Material::Pet, false)); }},
    };
    for (const auto& [name, request] : requests) {
        SCOPED_TRACE(name);
        int calls = 0;
        for (;; ++calls) {
            SCOPED_TRACE(calls);
            ASSERT_LT(calls, 100);
            restart();
            const auto before = store.contents();
            const double wearBefore = wear(dev, 10);
            store.failAfter(calls);
            const auto done = request();
            const bool failed = store.failed();
            store.forgetFailure();
            if (!failed) {
                EXPECT_TRUE(done);
                EXPECT_NE(store.contents(), before);
                break;
            }
            EXPECT_FALSE(done);
            EXPECT_EQ(done.error().code, Code::StoreFailed);
            EXPECT_EQ(store.contents(), before);
            EXPECT_FALSE(store.inTransaction());
            EXPECT_EQ(wear(dev, 10), wearBefore);
            EXPECT_FALSE(book->formulary().vessel("extra"));
        }
        EXPECT_GT(calls, 3);
    }
}

TEST_F(BookTest, aStoreThatIsGoneLeavesNoPhantomBehind)
{
    // The second failure hits the reading after the rollback: what the refused request had put into
    // the formulary must not be usable once the store answers again.
    auto extra = History::vessel("extra", 250, formulary::Material::Pet, false);
    for (int calls = 1; calls < 12; ++calls) {
        SCOPED_TRACE(calls);
        restart();
        store.failFrom(calls);
        const auto done = book->add(extra);
        store.forgetFailure();
        if (done) {
            return;
        }
        EXPECT_FALSE(book->mix({"dev", "extra", Millilitres(5), "", "", false}, when(5)));
    }
    FAIL() << "never got through";
}

} // namespace
} // namespace ullage::ledger
