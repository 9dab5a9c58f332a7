#include "core/ledger/strip_record.h"

#include "tests/core/ledger/book_kit.h"

#include <algorithm>

namespace ullage::ledger
{
namespace
{

StripReading reading(double days, double density, double wear = 3, const std::string& batch = "b")
{
    return {batch, batch, {{}, History::at(days), chemistry::FilmsPerLitre(wear), density, 1}};
}

std::vector<StripReading> readings(const std::vector<double>& densities)
{
    std::vector<StripReading> made;
    for (const double density : densities) {
        made.push_back(reading(static_cast<double>(made.size()), density));
    }
    return made;
}

TEST(StripRecord, drawsNoLimitsFromTooFew)
{
    const auto record = stripRecord(readings({1.2, 1.2, 1.2, 0.9}));
    EXPECT_FALSE(record.next);
    EXPECT_TRUE(record.outOfControl().empty());
    EXPECT_EQ(record.judgedBy.size(), 4u);
    EXPECT_FALSE(record.judgedBy[3]);
    EXPECT_EQ(*proposal(record, 0.9, 1.2, 1), std::nullopt);
}

TEST(StripRecord, judgesTheFirstFiveTogether)
{
    // Centre 1.212, mean moving range 0.0225: limits 1.212 ± 0.0598.
    const auto record = stripRecord(readings({1.20, 1.23, 1.20, 1.22, 1.21}));
    ASSERT_TRUE(record.judgedBy[0]);
    EXPECT_NEAR(record.judgedBy[0]->centre, 1.212, 1e-12);
    EXPECT_NEAR(record.judgedBy[0]->meanMovingRange, 0.0225, 1e-12);
    EXPECT_EQ(record.judgedBy[0]->upper, record.judgedBy[4]->upper);
    EXPECT_TRUE(record.outOfControl().empty());
    ASSERT_TRUE(record.next);
    EXPECT_NEAR(record.next->lower, 1.212 - 3 * 0.0225 / 1.128, 1e-12);
}

// A strip beyond the limits must not hide the next one that is.
TEST(StripRecord, leavesWhatWasBeyondOutOfTheLimits)
{
    const auto before = stripRecord(readings({1.20, 1.23, 1.20, 1.22, 1.21}));
    const auto after = stripRecord(readings({1.20, 1.23, 1.20, 1.22, 1.21, 1.05, 1.06}));
    EXPECT_EQ(after.outOfControl(), (std::vector<std::size_t>{5, 6}));
    EXPECT_EQ(after.next->lower, before.next->lower);
    EXPECT_EQ(after.judgedBy[6]->centre, before.next->centre);
}

TEST(StripRecord, marksAnEighthOnOneSideWithoutProposing)
{
    std::vector<double> densities{1.20, 1.23, 1.20, 1.22, 1.21};
    densities.insert(densities.end(), 8, 1.23);
    const auto record = stripRecord(readings(densities));
    EXPECT_EQ(record.outOfControl(), (std::vector<std::size_t>{12}));
    EXPECT_EQ(record.marks[12], chemistry::ControlMark::OneSide);
    EXPECT_EQ(*proposal(record, 1.23, 1.21, 1), std::nullopt);
}

TEST(StripRecord, sortsByTimeNotByBatch)
{
    auto mixed = readings({1.20, 1.23, 1.20, 1.22, 1.21, 1.05});
    std::reverse(mixed.begin(), mixed.end());
    EXPECT_EQ(stripRecord(mixed).outOfControl(), (std::vector<std::size_t>{5}));
}

TEST(ReferenceStrip, isTheBatchesOwnFreshOneElseTheNewestFreshOne)
{
    const auto record = stripRecord({reading(0, 1.21, 0.5, "old"), reading(3, 1.25, 1, "older"),
                                     reading(5, 1.23, 0, "b"), reading(6, 1.20, 0.9, "b"),
                                     reading(9, 1.19, 1.01, "new")});
    EXPECT_EQ(referenceStrip(record, "b"), 2u);
    EXPECT_EQ(referenceStrip(record, "new"), 3u); // its own is too far worn
    EXPECT_EQ(referenceStrip(stripRecord({reading(0, 1.2, 4)}), "b"), std::nullopt);
}

TEST(StripProposal, multipliesTheFactorInForceAndKeepsWithinReach)
{
    const auto record = stripRecord(readings({1.20, 1.23, 1.20, 1.22, 1.21}));
    const auto once = proposal(record, 1.10, 1.21, 1);
    ASSERT_TRUE(once && *once);
    EXPECT_NEAR((*once)->correction, 1.21 / 1.10, 1e-12);
    EXPECT_NEAR((*once)->factor, 1.1, 1e-12);
    EXPECT_NEAR((**proposal(record, 1.10, 1.21, 1.1)).factor, 1.21, 1e-12);
    const auto tooFar = proposal(record, 1.10, 1.21, 1.25);
    ASSERT_FALSE(tooFar);
    EXPECT_EQ(tooFar.error().code, ErrorCode::NotSuitable);
    EXPECT_EQ(tooFar.error().field, "factor");
    EXPECT_EQ(proposal(record, 0.5, 1.21, 1).error().field, "density");
}

class BookStrips : public BookTest
{
};

TEST_F(BookStrips, areThoseOfTheWholeSolutionWithTheirWear)
{
    const auto first = mix(0);
    ASSERT_TRUE(book->record(first, StripTested{1.21, {}, true}, when(1)));
    ASSERT_TRUE(run({first}, 2, 3));
    ASSERT_TRUE(book->record(first, StripTested{1.10, 1.1, {}}, when(3)));
    ASSERT_TRUE(book->record(first, StripTested{{}, 1.0, true}, when(4))); // nothing was read
    ASSERT_TRUE(book->record(first, Discarded{}, when(5)));
    auto edited = History::developer();
    edited.id = "dev-2";
    edited.replaces = "dev";
    ASSERT_TRUE(book->add(edited));
    const auto second = mix(6, "dev-2");
    ASSERT_TRUE(book->record(second, StripTested{1.22, {}, true}, when(7)));
    const auto other = mix(6, "fixer", 1000, "hdpe");
    ASSERT_TRUE(book->record(other, StripTested{2.0, {}, true}, when(7)));

    const auto strips = book->strips("dev-2", now);
    ASSERT_TRUE(strips);
    ASSERT_EQ(strips->size(), 3u);
    EXPECT_EQ((*strips)[1].batch, first);
    EXPECT_NEAR((*strips)[1].strip.wear.value(), 3, 1e-12);
    EXPECT_EQ((*strips)[1].strip.factorBefore, 1);
    EXPECT_EQ((*strips)[2].strip.density, 1.22);
    EXPECT_EQ(book->strips("dev", History::at(2))->size(), 1u);
    EXPECT_EQ(book->strips("dev", now, 1)->size(), 1u); // of the batch mixed last
}

// Where no factor is accepted the time stays as it was.
TEST_F(BookStrips, changeNoTimeByThemselves)
{
    const auto id = mix(0);
    ASSERT_TRUE(book->record(id, StripTested{1.00, {}, true}, when(1)));
    EXPECT_FALSE(batch(id).stripFactor);
}

} // namespace
} // namespace ullage::ledger
