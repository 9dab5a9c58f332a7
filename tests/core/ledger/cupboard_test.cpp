#include "core/ledger/cupboard_state.h"

#include "core/ledger/book_import.h"
#include "tests/core/ledger/book_kit.h"

namespace ullage::ledger
{
namespace
{

using chemistry::Millilitres;
using Code = ErrorCode;

class CupboardTest : public BookTest
{
protected:
    std::string powder;
    std::string liquid;
    std::string borax;
    std::string can;

    CupboardTest()
    {
        Packet packet;
        packet.solution = "dev";
        packet.makes = Millilitres(1000);
        powder = *book->add(packet);
        packet.solution = "fixer";
        packet.makes = Millilitres(2500);
        packet.form = formulary::Form::Liquid;
        packet.volume = Millilitres(500);
        liquid = *book->add(packet);
        Chemical chemical;
        chemical.name = "borax";
        chemical.grams = 250;
        borax = *book->add(chemical);
        can = *book->add(Container{{}, "Fixer can", Waste::Fixer, Millilitres(2000)});
    }
    Result<std::string> mixFrom(const std::string& packet, double days,
                                std::vector<NewBatch::Take> takes = {})
    {
        NewBatch batch{"dev", "glass", Millilitres(1000), "Dev", packet, false};
        batch.takes = std::move(takes);
        return book->mix(batch, when(days));
    }
    CupboardState state(double days = 100)
    {
        auto found = book->cupboard(History::at(days));
        EXPECT_TRUE(found) << found.error().field;
        return found.value_or(CupboardState());
    }
    std::optional<double> left(const std::string& id, double days = 100)
    {
        for (const ItemHere& here : state(days).items) {
            if (here.item.id == id) {
                return here.stock.left;
            }
        }
        return std::nullopt;
    }
};

TEST_F(CupboardTest, mixingDrawsDownWhatItUses)
{
    const auto batch = mixFrom(powder, 1, {{borax, 10}, {liquid, 50}});
    ASSERT_TRUE(batch);
    EXPECT_FALSE(left(powder));
    EXPECT_EQ(left(powder, 0.5), 1);
    EXPECT_EQ(left(borax), 240);
    EXPECT_EQ(left(liquid), 450);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(left(powder), 1);
    EXPECT_EQ(left(borax), 250);
    ASSERT_TRUE(book->redo());
    EXPECT_FALSE(left(powder));
    EXPECT_EQ(left(borax), 240);
    restart();
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(left(borax), 250);
}

// A developer and its fixer, each with the air that was left in its own bottle.
TEST_F(CupboardTest, aSetIsOneActionAndTakesWhatBothAreMadeFrom)
{
    NewBatch dev{"dev", "glass", Millilitres(1000), "Dev", powder};
    dev.airLeft = Millilitres(5);
    NewBatch fixer{"fixer", "small", Millilitres(450), "Fix"};
    fixer.takes = {{liquid, 90}};
    const auto set = book->mix(std::vector{dev, fixer}, {History::at(1), Millilitres(20)});
    ASSERT_TRUE(set) << set.error().field;
    EXPECT_EQ(book->events(set->front())->front().airLeft, Millilitres(5));
    EXPECT_EQ(book->events(set->back())->front().airLeft, Millilitres(20)) << "none of its own";
    EXPECT_FALSE(left(powder));
    EXPECT_EQ(left(liquid), 410);
    ASSERT_TRUE(book->undo());
    EXPECT_TRUE(book->batches(History::at(2)).value().empty());
    EXPECT_EQ(left(powder), 1);
    EXPECT_EQ(left(liquid), 500);
}

TEST_F(CupboardTest, aPacketIsMixedFromOnceAndWhole)
{
    const auto again = [&] { return mixFrom(powder, 2); };
    ASSERT_TRUE(book->record(Taken{powder, 0.5, {}}, History::at(1)));
    expectRefused<std::string>(again, Code::NotSuitable, "packet");
    ASSERT_TRUE(book->undo());
    ASSERT_TRUE(mixFrom(powder, 1));
    expectRefused<std::string>(again, Code::NotSuitable, "packet");
}

// Also across a restart, and by whoever gives the line anew in between.
TEST_F(CupboardTest, whatWasEnteredInTheCupboardGoesThereAndBack)
{
    Supply gloves;
    gloves.name = "Gloves";
    gloves.unit = "pairs";
    gloves.amount = 10;
    const auto entered = book->add({gloves, Barcode{{}, "2000000000015", "dev", {}}});
    ASSERT_TRUE(entered);
    const std::size_t codes = state().barcodes.size();
    EXPECT_EQ(left(entered->front()), 10);
    ASSERT_TRUE(book->undo());
    EXPECT_FALSE(left(entered->front()));
    EXPECT_EQ(state().barcodes.size(), codes - 1);
    EXPECT_EQ(state().items.size(), 3u);
    restart();
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(state().items.size(), 4u);
    EXPECT_EQ(state().items.back().stock.left, 10);
    EXPECT_EQ(state().barcodes.size(), codes);

    gloves.amount = 8;
    gloves.replaces = state().items.back().item.id;
    ASSERT_TRUE(book->add(gloves));
    EXPECT_EQ(state().items.back().stock.left, 8);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(state().items.back().stock.left, 10);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(state().items.size(), 3u);
    ASSERT_TRUE(book->redo());
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(state().items.back().stock.left, 8);
}

TEST_F(CupboardTest, whatWasGivenAnewByAnotherHandIsNotUndone)
{
    Supply gloves;
    gloves.name = "Gloves";
    gloves.amount = 10;
    const auto id = book->add(gloves);
    ASSERT_TRUE(id);
    ASSERT_EQ(book->undoable()->what, "supply");
    const auto theirs = opened();
    ASSERT_TRUE(theirs->sitAt("another seat"));
    gloves.replaces = *id;
    gloves.amount = 5;
    ASSERT_TRUE(theirs->add(gloves));
    ASSERT_TRUE(book->refresh());
    EXPECT_EQ(book->undoable()->what, "container") << "the one before: that is another's now";
}

TEST_F(CupboardTest, moreThanIsThereIsRefusedWithTheWholeDeed)
{
    expectRefused<std::string>(
        [&] {
            return mixFrom(powder, 1, {{borax, 251}});
        },
        Code::NotEnough, "amount");
    expectRefused([&] { return book->record(Noted{"of a batch"}, History::at(1)); },
                  Code::NotSuitable, "kind");
    expectRefused(
        [&] {
            return book->record(Taken{"nobody", 1, {}}, History::at(1));
        },
        Code::UnknownId, "item");
}

// A packet has no name of its own; "more than is in" ended with an id of 36 characters.
TEST_F(CupboardTest, refusalsNameAPacketByItsSolution)
{
    const auto more = book->record(Taken{liquid, 600, {}}, History::at(1));
    ASSERT_FALSE(more);
    EXPECT_EQ(more.error().code, Code::NotEnough);
    EXPECT_EQ(more.error().subject, book->formulary().solution("fixer")->name);
    const auto raw = book->record(Taken{borax, 600, {}}, History::at(1));
    ASSERT_FALSE(raw);
    EXPECT_EQ(raw.error().subject, "borax");
}

TEST_F(CupboardTest, whatOthersRestOnIsNotTakenBack)
{
    ASSERT_TRUE(book->record(Counted{borax, 400}, History::at(1)));
    ASSERT_TRUE(book->record(Taken{borax, 300, {}}, History::at(2)));
    const auto events = store.eventsOnItem(borax);
    ASSERT_TRUE(events);
    expectRefused([&] { return book->voidEvent(events->front().id, "wrong"); }, Code::CannotVoid,
                  "voids");
    ASSERT_TRUE(book->voidEvent(events->back().id, "wrong"));
    EXPECT_EQ(left(borax), 400);
    expectRefused([&] { return book->voidEvent(events->back().id, "again"); }, Code::AlreadyVoided,
                  "voids");
}

TEST_F(CupboardTest, givenAnewItKeepsWhatHappenedToIt)
{
    ASSERT_TRUE(book->record(Taken{borax, 30, {}}, History::at(1)));
    Chemical right;
    right.name = "borax";
    right.grams = 500;
    right.replaces = borax;
    const auto anew = book->add(right);
    ASSERT_TRUE(anew);
    EXPECT_FALSE(left(borax));
    EXPECT_EQ(left(*anew), 470);
    ASSERT_TRUE(book->record(Taken{borax, 400, {}}, History::at(2))) << "of either id";
    EXPECT_EQ(left(*anew), 70);
    Chemical gone;
    gone.replaces = *anew;
    gone.withdrawn = true;
    ASSERT_TRUE(book->add(gone));
    EXPECT_FALSE(left(*anew));
}

TEST_F(CupboardTest, aDiscardingFillsTheCan)
{
    const auto fixer = mix(0, "fixer", 1000);
    ASSERT_TRUE(run({fixer}, 1, 4));
    ASSERT_TRUE(book->record(fixer, Discarded{"to the can", can}, when(2)));
    auto cans = state().cans;
    ASSERT_EQ(cans.size(), 1U);
    EXPECT_EQ(cans.front().stock.volume, Millilitres(1000));
    EXPECT_NEAR(cans.front().stock.silver, 0.6, 1e-9) << "four films of 0.15 g";
    const auto second = mix(3, "fixer", 1000, "hdpe");
    ASSERT_TRUE(book->record(PouredIn{can, Millilitres(500), {}}, History::at(3)));
    expectRefused(
        [&] {
            return book->record(second, Discarded{"too", can}, when(4));
        },
        Code::TooMuch, "volume_ml");
    ASSERT_TRUE(book->record(HandedOver{can, "the yard", {}, "note 1"}, History::at(3.5)));
    ASSERT_TRUE(book->record(second, Discarded{"too", can}, when(4)));
    EXPECT_EQ(state().cans.front().stock.volume, Millilitres(1000));
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(state().cans.front().stock.volume, Millilitres(0));
    EXPECT_EQ(state().cans.front().stock.handed.front().volume, Millilitres(1500));
}

TEST_F(CupboardTest, anImportIsRefusedOnItsLine)
{
    auto import = book->import();
    ASSERT_TRUE(import);
    const auto add = [&](int line, const char* id, double days, Happening what) {
        EXPECT_TRUE(
            (*import)->add({Event{id, {}, History::at(days), std::move(what), {}}, {}}, line));
    };
    add(2, "a", 1, Taken{borax, 200, {}});
    add(3, "b", 2, Taken{borax, 100, {}});
    add(4, "c", 1.5, Counted{borax, 90});
    const auto done = (*import)->finish();
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, Code::NotEnough);
    EXPECT_EQ(done.error().line, 3);
}

TEST(Packet, powderHasNoVolume)
{
    Packet packet{"p", "dev", Millilitres(1000)};
    packet.volume = Millilitres(500);
    EXPECT_TRUE(check(packet));
    EXPECT_TRUE(isLiquid(packet));
    packet.form = formulary::Form::Crystals;
    EXPECT_FALSE(isLiquid(packet));
    const auto refused = check(packet);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, Code::Conflict);
    EXPECT_EQ(refused.error().field, "volume_ml");
}

} // namespace
} // namespace ullage::ledger
