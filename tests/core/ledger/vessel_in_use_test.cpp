#include "core/ledger/vessel_in_use.h"

#include "core/ledger/book_import.h"
#include "tests/core/ledger/book_kit.h"

namespace ullage::ledger
{
namespace
{

class VesselTest : public BookTest
{
protected:
    static formulary::Vessel gone(const std::string& id, const std::string& replaces)
    {
        formulary::Vessel line;
        line.id = id;
        line.replaces = replaces;
        line.withdrawn = true;
        return line;
    }
    Result<void> discard(const std::string& batch, double days)
    {
        return book->record(batch, Discarded{"down", {}}, when(days));
    }
};

TEST_F(VesselTest, anEmptyOneIsWithdrawnAndOfferedNoMore)
{
    const auto before = book->formulary().currentVessels().size();
    ASSERT_TRUE(book->add(gone("gone", "glass")));
    EXPECT_EQ(book->formulary().currentVessels().size(), before - 1);
    restart();
    EXPECT_EQ(book->formulary().currentVessels().size(), before - 1);
    EXPECT_TRUE(book->formulary().isWithdrawnVessel("glass"));
}

TEST_F(VesselTest, isNotWithdrawnWhileSomethingStandsInIt)
{
    const auto batch = mix();
    expectRefused([&] { return book->add(gone("gone", "glass")); }, ErrorCode::NotSuitable,
                  "withdrawn");
    EXPECT_FALSE(book->formulary().isWithdrawnVessel("glass")) << "nothing is left of it";
    ASSERT_TRUE(book->move(batch, "hdpe", when(1)));
    EXPECT_TRUE(book->add(gone("gone", "glass")));
}

TEST_F(VesselTest, nothingGoesIntoOneThatWasWithdrawn)
{
    const auto batch = mix(0, "dev", 400, "small");
    ASSERT_TRUE(book->add(gone("gone", "glass")));
    expectRefused([&] { return book->move(batch, "glass", when(1)); }, ErrorCode::NotSuitable,
                  "vessel");
    expectRefused<std::string>(
        [&] {
            return book->mix({"dev", "glass", chemistry::Millilitres(400), "Dev 2", {}, false},
                             when(1));
        },
        ErrorCode::NotSuitable, "vessel");
}

TEST_F(VesselTest, aDiscardingIsNotTakenBackIntoOneThatWasWithdrawn)
{
    const auto batch = mix();
    ASSERT_TRUE(discard(batch, 1));
    ASSERT_TRUE(book->add(gone("gone", "glass")));
    expectRefused([&] { return book->undo(); }, ErrorCode::NotSuitable, "vessel");
    auto again = *book->formulary().vessel("glass");
    again.id = "again";
    again.replaces = "gone";
    ASSERT_TRUE(book->add(again));
    EXPECT_TRUE(book->undo());
    EXPECT_TRUE(this->batch(batch).inUse());
}

TEST_F(VesselTest, givenAnewItKeepsWhatStandsInItAndItsFigures)
{
    const auto batch = mix();
    auto measured = *book->formulary().vessel("glass");
    measured.id = "measured";
    measured.replaces = "glass";
    measured.capacity = chemistry::Millilitres(1010);
    ASSERT_TRUE(book->add(measured));
    EXPECT_EQ(this->batch(batch).vessel->capacity, chemistry::Millilitres(1030));
    EXPECT_EQ(book->formulary().vesselNow("glass")->id, "measured");
    // The line that was given anew already, and with it nothing that stands.
    EXPECT_TRUE(book->add(gone("gone", "glass")));
    EXPECT_FALSE(book->formulary().isWithdrawnVessel("glass"));
    expectRefused([&] { return book->add(gone("gone-2", "measured")); }, ErrorCode::NotSuitable,
                  "withdrawn");
}

TEST_F(VesselTest, anImportIsJudgedOnTheWhole)
{
    const auto event = [](const char* id, double days, Happening what) {
        return Entry{Event{id, "b", History::at(days), std::move(what), {}}, {}};
    };
    const Mixed mixed{"dev", "glass", chemistry::Millilitres(500), {}, {}, false};
    const auto bring = [&](const std::vector<Entry>& entries) -> Result<int> {
        auto import = book->import();
        int line = 1;
        for (const Entry& entry : entries) {
            EXPECT_TRUE((*import)->add(entry, ++line));
        }
        return (*import)->finish();
    };
    const auto refused = bring({{gone("gone", "glass"), {}}, event("m", 1, mixed)});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::NotSuitable);
    EXPECT_EQ(refused.error().field, "withdrawn");
    EXPECT_EQ(refused.error().line, 2);
    EXPECT_EQ(bring({{gone("gone", "glass"), {}},
                     event("m", 1, mixed),
                     event("d", 2, Discarded{"down", {}})}),
              3);
}

} // namespace
} // namespace ullage::ledger
