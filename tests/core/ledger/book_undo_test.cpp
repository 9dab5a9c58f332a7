#include "core/ledger/book_import.h"
#include "tests/core/ledger/book_kit.h"

#include <sstream>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

std::string state(const Batch& batch)
{
    std::ostringstream out;
    out.precision(17);
    out << batch.id << ' ' << batch.name << ' ' << batch.vessel->id << ' ' << batch.volume.value()
        << ' ' << batch.wear.value() << ' ' << batch.standing.taken.total().value() << ' '
        << batch.standing.aged.value() << ' ' << batch.standing.air.total().value() << ' '
        << batch.openings << ' ' << batch.filmsDone.value() << ' ' << batch.tests.size() << ' '
        << batch.passes.size() << ' ' << batch.testFailed() << batch.contaminated << batch.dissolved
        << ' ' << batch.temperature.value() << ' ' << batch.stripFactor.value_or(-1) << ' '
        << int(batch.end);
    return out.str();
}

class UndoTest : public BookTest
{
protected:
    std::string all()
    {
        std::string result;
        const auto batches = book->batches(now, true);
        for (const Batch& batch : *batches) {
            result += state(batch) + '\n';
        }
        return result;
    }
};

// Everything a person can do, each undone to the state before and redone to the state after, the
// book opened anew every now and then.
TEST_F(UndoTest, everythingGoesThereAndBackAlsoAcrossRestarts)
{
    std::vector<std::string> states{all()};
    std::string dev;
    std::string fix;
    std::string stock;
    const std::vector<std::function<bool()>> deeds{
        [&] { return !(dev = mix()).empty(); },
        [&] { return !(fix = mix(0, "fixer", 400)).empty(); },
        [&] {
            NewBatch clear{"dev", "glass", Millilitres(500), "Clear at once"};
            clear.dissolved = true;
            const auto id = book->mix(clear, when(0));
            return id && book->batch(*id, now)->dissolved;
        },
        [&] {
            return run({dev, fix}, 1, 2).has_value();
        },
        [&] { return book->drawOff(dev, Millilitres(300), "lent", when(2)).has_value(); },
        [&] { return !(stock = mix(0, "dev", 700, "hdpe")).empty(); },
        [&] { return book->topUp(dev, Millilitres(100), when(3), stock).has_value(); },
        [&] {
            NewBatch part{"dev", "small", Millilitres(50), "Part of it"};
            part.from = stock;
            return book->mix(part, when(3.5)).has_value();
        },
        [&] { return book->move(fix, "small", when(4)).has_value(); },
        [&] { return book->record(dev, Opened{}, when(5)).has_value(); },
        [&] {
            return book->record(dev, StoodOpen{Hours(2), SquareCentimetres(60)}, when(6))
                .has_value();
        },
        [&] { return book->record(dev, StoredAt{Celsius(12)}, when(7)).has_value(); },
        [&] {
            return book->record(fix, ClearingTested{Seconds(60), Celsius(20)}, when(8)).has_value();
        },
        [&] {
            return book->record(dev, StripTested{1.1, 1.05, true}, when(9)).has_value();
        },
        [&] {
            return book->record(dev, Looked{false, "smell"}, when(10)).has_value();
        },
        [&] { return book->record(dev, Dissolved{}, when(0.5)).has_value(); }, // entered late
        [&] { return book->record(dev, Noted{"a note"}, when(11)).has_value(); },
        [&] { return book->record(dev, Contaminated{"fixer"}, when(12)).has_value(); },
        [&] { return book->voidEvent(book->events(dev)->at(1).id, "wrong").has_value(); },
        [&] { return book->record(dev, Discarded{"collected"}, when(13)).has_value(); },
    };
    for (std::size_t i = 0; i < deeds.size(); ++i) {
        ASSERT_TRUE(deeds[i]()) << i;
        states.push_back(all());
        if (i % 5 == 4) {
            restart();
        }
    }
    for (int round = 0; round < 2; ++round) {
        for (std::size_t i = deeds.size(); i-- > 0;) {
            if (i % 4 == 0) {
                restart();
            }
            ASSERT_TRUE(book->undoable()) << i;
            ASSERT_TRUE(book->undo()) << i;
            EXPECT_EQ(all(), states[i]) << "undo " << i;
        }
        EXPECT_FALSE(book->undoable());
        EXPECT_EQ(book->undo().error().code, ErrorCode::NothingToUndo);
        for (std::size_t i = 0; i < deeds.size(); ++i) {
            if (i % 3 == 0) {
                restart();
            }
            ASSERT_TRUE(book->redo()) << i;
            EXPECT_EQ(all(), states[i + 1]) << "redo " << i;
        }
        EXPECT_FALSE(book->redoable());
        EXPECT_EQ(book->redo().error().code, ErrorCode::NothingToUndo);
    }
}

TEST_F(UndoTest, aNewDeedForgetsWhatWasUndone)
{
    const auto dev = mix();
    ASSERT_TRUE(run({dev}, 1, 2));
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->redoable()->what, "run-film");
    ASSERT_TRUE(book->record(dev, Opened{}, when(2)));
    EXPECT_FALSE(book->redoable());
    restart();
    EXPECT_FALSE(book->redoable());
    EXPECT_EQ(book->undoable()->what, "opened");
}

// Film first, then topped up, in one minute: taking the film back and changing one's mind must not
// put it after the topping up.
TEST_F(UndoTest, undoingAVoidKeepsTheOrderOfOneInstant)
{
    const auto dev = mix(0, "dev", 500);
    ASSERT_TRUE(run({dev}, 5, 2));
    const auto film = book->events(dev)->back().id;
    ASSERT_TRUE(book->topUp(dev, Millilitres(500), when(5)));
    const auto before = all();
    ASSERT_TRUE(book->voidEvent(film, "mistake"));
    const auto without = all();
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(all(), before);
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(all(), without);
    restart();
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(all(), before);
}

TEST_F(UndoTest, definitionsAndImportsAreNotUndone)
{
    EXPECT_FALSE(book->undoable()); // the fixture added solutions and vessels
    const auto dev = mix();
    ASSERT_TRUE(book->add(History::vessel("x", 100, formulary::Material::Pp, false)));
    EXPECT_EQ(book->undoable()->what, "mix");
    ASSERT_TRUE(book->undo());
    EXPECT_TRUE(book->formulary().vessel("x"));
    EXPECT_TRUE(book->batches(now, true)->empty());
}

// A film's line names its run, and a run keeps its id however often it is undone and redone.
TEST_F(UndoTest, redoneEventsKeepTheirIds)
{
    const auto dev = mix();
    ASSERT_TRUE(run({dev}, 1, 2));
    const auto film = book->events(dev)->back().id;
    ASSERT_TRUE(book->undo());
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(batch(dev).loads.back().event, film);
    ASSERT_TRUE(book->voidEvent(film, "wrong"));
    EXPECT_EQ(wear(dev), 0);
}

// What stands on an action keeps it from being undone, and nothing changes.
TEST_F(UndoTest, refusesWhereOthersBuiltOnIt)
{
    const auto dev = mix();
    auto import = *book->import();
    ASSERT_TRUE(import->add({Event{"x1", dev, History::at(3), Opened{}, {}}, {}}));
    ASSERT_TRUE(import->finish());
    expectRefused([&] { return book->undo(); }, ErrorCode::CannotVoid, "voids");
}

// What came in together under a name goes and comes back together; each of it is a deed by itself
// where one is corrected.
TEST_F(UndoTest, takesBackAnImportThatHasAName)
{
    const auto dev = mix();
    ASSERT_TRUE(book->sitAt("desk"));
    const std::string before = all();
    auto import = *book->import({}, "pencil.csv");
    const Processed film{.load = {.films = {{"135-36", 2}}}};
    ASSERT_TRUE(import->add({Event{"x1", dev, History::at(1), film, {}}, {}}));
    ASSERT_TRUE(import->add({Event{"x2", dev, History::at(2), Opened{}, {}}, {}}));
    ASSERT_TRUE(import->finish());
    const std::string after = all();
    ASSERT_NE(after, before);
    EXPECT_EQ(book->undoable()->what, kImportAction);
    EXPECT_EQ(book->undoable()->subject, "pencil.csv");
    EXPECT_EQ(book->enteredWith("x1")->size(), 1U);
    restart();
    ASSERT_TRUE(book->sitAt("lab"));
    EXPECT_NE(book->undoable()->what, kImportAction) << "it is not this window's";
    ASSERT_TRUE(book->sitAt("desk"));
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(all(), before);
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(all(), after);
}

// A vessel is no deed by itself, but one that came in with the bottles of a sheet goes with them;
// where another bottle stands in it by now it stays.
TEST_F(UndoTest, takesBackTheVesselsOfAnImportUnlessTheyAreInUse)
{
    const auto dev = mix();
    auto import = *book->import({}, "pencil.csv");
    for (const char* id : {"v1", "v2"}) {
        ASSERT_TRUE(
            import->add({History::vessel(id, 1000, formulary::Material::Glass, false), {}}));
    }
    Mixed mixed;
    mixed.solution = "dev";
    mixed.vessel = "v1";
    mixed.volume = Millilitres(500);
    ASSERT_TRUE(import->add({Event{"x1", "b-1", History::at(1), mixed, {}}, {}}));
    ASSERT_TRUE(import->finish());
    ASSERT_TRUE(book->undo());
    EXPECT_FALSE(book->formulary().vesselNow("v1"));
    EXPECT_FALSE(book->formulary().vesselNow("v2"));
    ASSERT_TRUE(book->redo());
    ASSERT_TRUE(book->formulary().vesselNow("v1"));
    EXPECT_EQ(book->formulary().vesselNow("v1")->capacity, Millilitres(1000));
    EXPECT_TRUE(book->batch("b-1", now));

    ASSERT_TRUE(book->sitAt("lab"));
    ASSERT_TRUE(book->move(dev, "v2", when(2)));
    ASSERT_TRUE(book->sitAt({}));
    ASSERT_TRUE(book->undo());
    EXPECT_FALSE(book->batch("b-1", now));
    EXPECT_FALSE(book->formulary().vesselNow("v1"));
    EXPECT_TRUE(book->formulary().vesselNow("v2")) << "something stands in it";
}

TEST_F(UndoTest, takesBackWhatIsLeftOfADeed)
{
    ASSERT_TRUE(book->sitAt("desk"));
    const auto dev = mix();
    const auto fix = mix(0, "fixer", 400);
    ASSERT_TRUE(run({dev, fix}, 1, 2));
    const auto theirs = opened();
    ASSERT_TRUE(theirs->sitAt("lab"));
    ASSERT_TRUE(theirs->voidEvent(theirs->events(dev)->back().id, "the other bottle"));
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(wear(fix), 0);
    ASSERT_TRUE(book->redo());
    EXPECT_GT(wear(fix), 0);
    EXPECT_EQ(wear(dev), 0) << "what they took back stays so";
}

// A copy of as many entries, put in the book's place.
TEST_F(UndoTest, anotherBookOfEqualLengthIsNoticed)
{
    auto other = store;
    const auto enter = [&](MemoryStore& into, const char* id) {
        auto made = Book::open(
            into, [this] { return now; }, [&] { return std::string(id); });
        return (*made)
            ->mix({"dev", "glass", Millilitres(1000), id, {}, false}, when(0))
            .has_value();
    };
    ASSERT_TRUE(enter(store, "ours"));
    ASSERT_TRUE(enter(other, "theirs"));
    ASSERT_TRUE(*book->refresh());
    ASSERT_EQ(store.entries(), other.entries());
    store = other;
    EXPECT_TRUE(*book->refresh());
    EXPECT_FALSE(*book->refresh());
    EXPECT_EQ(book->batches(now, true)->front().name, "theirs");
}

class CountingStore : public MemoryStore
{
public:
    int batchesRead = 0;
    int filmsRead = 0;
    Result<std::vector<Event>> eventsOf(const std::string& batch) override
    {
        ++batchesRead;
        return MemoryStore::eventsOf(batch);
    }
    Result<std::vector<FilmMark>> marksOf(const std::string& film) override
    {
        ++filmsRead;
        return MemoryStore::marksOf(film);
    }
};

// However much a deed did to it.
TEST_F(UndoTest, readsABatchAndAFilmOnce)
{
    CountingStore counting;
    const auto open = [&] {
        return std::move(*Book::open(
            counting, [this] { return now; }, [this] { return "c" + std::to_string(++ids); }));
    };
    auto on = open();
    ASSERT_TRUE(on->add(History::developer()));
    ASSERT_TRUE(on->add(History::vessel("glass", 1000, formulary::Material::Glass, false)));
    const auto dev = on->mix({"dev", "glass", Millilitres(1000), "Dev", {}, false}, when(0));
    ASSERT_TRUE(dev);
    constexpr int kMany = 40;
    std::vector<std::string> notes;
    for (int i = 0; i < kMany; ++i) {
        ASSERT_TRUE(on->record(*dev, Noted{"a note"}, when(1)));
        notes.push_back(on->events(*dev)->back().id);
    }
    ASSERT_TRUE(on->voidEvents(notes, "too many"));
    FilmRun request{.load = rolls(1), .baths = {{*dev, {}, {}, false, {}}}};
    request.films.push_back({.format = "135-36"});
    ASSERT_TRUE(on->process(request, History::at(2)));
    const std::string film = "c" + std::to_string(ids);
    ASSERT_TRUE(on->markFilms(std::vector<std::string>(kMany, film), FilmFault::Thin, ""));
    on = open();
    counting.batchesRead = counting.filmsRead = 0;
    ASSERT_TRUE(on->undo()) << "the marks";
    EXPECT_TRUE(standingMarks(*counting.MemoryStore::marksOf(film)).empty());
    EXPECT_LE(counting.filmsRead, kMany + 2) << "each marking is checked as it is entered";
    ASSERT_TRUE(on->undo()) << "the film";
    ASSERT_TRUE(on->undo()) << "the voiding of all notes";
    EXPECT_EQ(happened(*on->events(*dev)).size(), 1U + kMany);
    EXPECT_LE(counting.batchesRead, 2) << "one of them to look here";
}

// A bottle that comes in with what is mixed into it: one deed, or nothing of it.
TEST_F(UndoTest, aNewVesselComesInWithTheMixingOrNotAtAll)
{
    formulary::Vessel vessel = *book->formulary().vessel("glass");
    vessel.id = "new";
    vessel.name = "New";
    const NewBatch batch{"dev", {}, Millilitres(500), "Dev 9"};
    NewBatch tooMuch = batch;
    tooMuch.volume = Millilitres(50'000);
    EXPECT_FALSE(book->mix(tooMuch, vessel, when(0)));
    EXPECT_EQ(book->formulary().vessel("new"), nullptr) << "refused is refused whole";
    EXPECT_FALSE(book->undoable());
    restart();
    EXPECT_EQ(book->formulary().vessel("new"), nullptr);

    const auto id = book->mix(batch, vessel, when(0));
    ASSERT_TRUE(id);
    ASSERT_TRUE(book->batch(*id, now));
    EXPECT_EQ(book->batch(*id, now)->vessel->name, "New");
    ASSERT_TRUE(book->undo());
    EXPECT_FALSE(book->batch(*id, now));
    EXPECT_FALSE(book->undoable()) << "it was one deed";
    ASSERT_TRUE(book->redo());
    EXPECT_TRUE(book->batch(*id, now));
    EXPECT_FALSE(book->mix(batch, vessel, when(0))) << "that vessel is there already";
}

} // namespace
} // namespace ullage::ledger
