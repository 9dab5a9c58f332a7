#include "core/ledger/book_import.h"
#include "tests/core/ledger/book_kit.h"

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
        << batch.passes.size() << ' ' << batch.testFailed << batch.contaminated << batch.dissolved
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
        [&] { return book->topUp(dev, Millilitres(100), when(3), fix).has_value(); },
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

} // namespace
} // namespace ullage::ledger
