// Undo where several are at one book: each takes back what was done in its own seat.
#include "tests/core/ledger/book_kit.h"

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

class SeatUndoTest : public BookTest
{
};

// Two windows on one book: each takes back what was done in it, also after a restart.
TEST_F(SeatUndoTest, takesBackTheDeedsOfItsSeatOnly)
{
    ASSERT_TRUE(book->sitAt("desk"));
    const auto theirs = opened();
    ASSERT_TRUE(theirs->sitAt("lab"));
    const auto dev = mix();
    ASSERT_TRUE(run({dev}, 1, 2));
    ASSERT_TRUE(theirs->drawOff(dev, Millilitres(100), "lent", when(2)));
    ASSERT_TRUE(*book->refresh());
    EXPECT_EQ(book->undoable()->what, "run-film");
    EXPECT_TRUE(book->othersHaveDone());
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->redoable()->what, "run-film");
    ASSERT_TRUE(*theirs->refresh());
    EXPECT_EQ(theirs->undoable()->what, "drawn");
    EXPECT_FALSE(theirs->redoable()) << "it was not undone here";
    ASSERT_TRUE(theirs->record(dev, Opened{}, when(3)));
    ASSERT_TRUE(*book->refresh());
    EXPECT_TRUE(book->redoable()) << "a deed of theirs forgets nothing of ours";
    restart();
    ASSERT_TRUE(book->sitAt("desk"));
    ASSERT_TRUE(book->redo());
    EXPECT_GT(wear(dev), 0);
    EXPECT_EQ(batch(dev).volume, Millilitres(900));
    restart();
    ASSERT_TRUE(book->sitAt("lab"));
    ASSERT_TRUE(book->undo());
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(batch(dev).volume, Millilitres(1000));
    EXPECT_EQ(book->undo().error().text, "others");
}

TEST_F(SeatUndoTest, saysWhenOnlyOthersDidSomething)
{
    ASSERT_TRUE(book->sitAt("desk"));
    EXPECT_EQ(book->undo().error().text, "") << "nobody did anything yet";
    const auto theirs = opened();
    ASSERT_TRUE(theirs->sitAt("lab"));
    ASSERT_TRUE(theirs->mix({"dev", "glass", Millilitres(1000), "Theirs", {}, false}, when(0)));
    const auto before = store.contents();
    const auto refused = book->undo();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::NothingToUndo);
    EXPECT_EQ(refused.error().text, "others");
    EXPECT_FALSE(book->undoable());
    EXPECT_TRUE(book->othersHaveDone());
    EXPECT_EQ(book->redo().error().text, "") << "where theirs are done again is no answer";
    EXPECT_EQ(store.contents(), before);
}

// So are those of before there were seats, and of the command line.
TEST_F(SeatUndoTest, aDeedOfNobodysIsUndoneFromAnySeat)
{
    const auto dev = mix();
    const auto theirs = opened();
    ASSERT_TRUE(theirs->sitAt("lab"));
    ASSERT_TRUE(book->sitAt("desk"));
    EXPECT_EQ(theirs->undoable()->what, "mix");
    EXPECT_EQ(book->undoable()->what, "mix");
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(theirs->undo().error().code, ErrorCode::NothingToUndo) << "it was taken back";
    EXPECT_EQ(theirs->redo().error().code, ErrorCode::NothingToUndo) << "but not from here";
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(batch(dev).volume, Millilitres(1000));
    ASSERT_TRUE(book->sitAt(""));
    EXPECT_FALSE(book->redoable());
    EXPECT_TRUE(book->othersHaveDone() || book->undoable()) << "what stands is somebody's";
}

TEST_F(SeatUndoTest, passesOverWhatOthersTookBackAlready)
{
    ASSERT_TRUE(book->sitAt("desk"));
    const auto theirs = opened();
    ASSERT_TRUE(theirs->sitAt("lab"));
    const auto dev = mix();
    ASSERT_TRUE(run({dev}, 1, 2));
    ASSERT_TRUE(book->record(dev, Opened{}, when(2)));
    const auto opening = book->events(dev)->back().id;
    ASSERT_TRUE(*theirs->refresh());
    ASSERT_TRUE(theirs->voidEvent(opening, "mistake"));
    ASSERT_TRUE(*book->refresh());
    EXPECT_EQ(book->undoable()->what, "run-film") << "what is named is what would be undone";
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(wear(dev), 0);
    EXPECT_EQ(book->redoable()->what, "run-film");
    ASSERT_TRUE(theirs->undo()) << "they change their mind: the opening stands again";
    ASSERT_TRUE(*book->refresh());
    EXPECT_EQ(book->undoable()->what, "opened");
    // Not seen yet when undo is asked for.
    ASSERT_TRUE(theirs->voidEvent(opening, "after all"));
    ASSERT_TRUE(book->undo());
    EXPECT_FALSE(book->undoable());
    EXPECT_TRUE(book->batches(now, true)->empty()) << "the mixing was next";
}

} // namespace
} // namespace ullage::ledger
