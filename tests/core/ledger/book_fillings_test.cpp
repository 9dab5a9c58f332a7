// Bottles filled from bottles, through the book.
#include "tests/core/ledger/book_kit.h"

#include <cmath>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;
using Code = ErrorCode;

TEST_F(BookTest, topsUpFromAnotherBatch)
{
    const auto working = mix(0, "dev", 200);
    const auto stock = mix(0, "dev", 800);
    ASSERT_TRUE(book->topUp(working, Millilitres(100), when(1), stock));
    EXPECT_EQ(batch(working).volume, Millilitres(300));
    EXPECT_EQ(batch(stock).volume, Millilitres(700));
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(batch(working).volume, Millilitres(200));
    EXPECT_EQ(batch(stock).volume, Millilitres(800));
    expectRefused([&] { return book->topUp(working, Millilitres(820), when(2), stock); },
                  Code::NotEnough, "volume_ml");
    const auto fix = mix(0, "fixer", 500);
    expectRefused([&] { return book->topUp(working, Millilitres(100), when(2), fix); },
                  Code::Conflict, "from");
    expectRefused([&] { return book->topUp(working, Millilitres(100), when(2), working); },
                  Code::Conflict, "from");
}

TEST_F(BookTest, halfAFillingIsRefused)
{
    const auto one = mix(0, "dev", 500);
    const auto other = mix(0, "dev", 500);
    expectRefused(
        [&] {
            return book->record(one, Drawn{Millilitres(5), "", other}, when(1));
        },
        Code::Conflict, "to");
    expectRefused(
        [&] {
            return book->record(one, ToppedUp{Millilitres(5), other}, when(1));
        },
        Code::Conflict, "from");
}

TEST_F(BookTest, decantsIntoSeveralBottlesAtOnce)
{
    const auto big = mix(0, "dev", 900);
    ASSERT_TRUE(run({big}, 1, 2));
    NewBatch first{"dev", "small", Millilitres(450), "Half"};
    first.from = big;
    first.dissolved = true;
    NewBatch second = first;
    second.name = "Other half";
    const auto before = store.contents();
    const auto halves = book->mix(std::vector{first, second}, when(2));
    ASSERT_TRUE(halves) << halves.error().field;
    EXPECT_EQ(batch(big).end, BatchEnd::UsedUp);
    for (const std::string& half : *halves) {
        EXPECT_EQ(batch(half).volume, Millilitres(450));
        EXPECT_DOUBLE_EQ(wear(half), wear(big, 1.5));
        EXPECT_EQ(batch(half).madeAt, History::at(0));
        ASSERT_EQ(batch(half).fillings.size(), 1U);
        EXPECT_EQ(batch(half).fillings[0].other, big);
    }
    ASSERT_EQ(batch(big).fillings.size(), 2U);
    EXPECT_EQ(batch(big).fillings[1].other, halves->back());
    restart();
    EXPECT_DOUBLE_EQ(wear(halves->front()), wear(big, 1.5));

    ASSERT_TRUE(book->undo());
    EXPECT_TRUE(batch(big).inUse());
    EXPECT_EQ(batch(big).volume, Millilitres(900));
    EXPECT_EQ(book->batches(now).value().size(), 1U);
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(batch(big).end, BatchEnd::UsedUp);
    EXPECT_DOUBLE_EQ(wear(halves->back()), wear(big, 1.5));

    // Taking back one half takes the other back: the bottle never was.
    ASSERT_TRUE(book->undo());
    ASSERT_TRUE(book->topUp(mix(3, "dev", 100), Millilitres(50), when(4), big));
    std::string drawing;
    const auto events = *book->events(big);
    for (const Event& event : events) {
        if (event.kind() == "drawn" && event.at == History::at(4)) {
            drawing = event.id;
        }
    }
    const auto filled = batch(big).fillings.back().other;
    EXPECT_EQ(batch(filled).volume, Millilitres(150));
    ASSERT_TRUE(book->voidEvent(drawing, "never poured"));
    EXPECT_EQ(batch(filled).volume, Millilitres(100));
    EXPECT_EQ(batch(big).volume, Millilitres(900));
}

TEST_F(BookTest, aCorrectionOnTheDonorShowsInTheHeir)
{
    const auto donor = mix(0, "dev", 800);
    ASSERT_TRUE(run({donor}, 1, 2));
    const auto worn = book->undoable();
    const auto heir = mix(2, "dev", 500);
    ASSERT_TRUE(book->topUp(heir, Millilitres(500), when(3), donor));
    EXPECT_DOUBLE_EQ(wear(heir), 2 / 0.8 / 2);
    // What happens to the donor later is none of its business.
    ASSERT_TRUE(book->topUp(donor, Millilitres(300), when(5)));
    ASSERT_TRUE(run({donor}, 6, 1));
    EXPECT_DOUBLE_EQ(wear(heir), 2 / 0.8 / 2);
    ASSERT_TRUE(run({donor}, 2.5, 1)); // entered late
    EXPECT_DOUBLE_EQ(wear(heir), 3 / 0.8 / 2);
    restart();
    EXPECT_DOUBLE_EQ(wear(heir), 3 / 0.8 / 2);
    const auto events = *book->events(donor);
    ASSERT_TRUE(book->voidEvent(events[1].id, "other bottle"));
    EXPECT_DOUBLE_EQ(wear(heir), 1 / 0.8 / 2);
}

} // namespace
} // namespace ullage::ledger
