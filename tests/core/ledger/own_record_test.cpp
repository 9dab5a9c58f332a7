#include "core/ledger/own_record.h"

#include "core/formulary/implied.h"
#include "tests/core/ledger/book_kit.h"

namespace ullage::ledger
{
namespace
{

using chemistry::Celsius;
using chemistry::FilmsPerLitre;
using chemistry::Millilitres;
using chemistry::Seconds;

class OwnTests : public BookTest
{
protected:
    OwnTests()
    {
        formulary::Solution fixer{.id = "own-fix",
                                  .name = "Fixer",
                                  .role = formulary::Role::Fixer,
                                  .capacity = FilmsPerLitre(20)};
        EXPECT_TRUE(book->add(fixer));
        auto developer = History::developer();
        developer.id = "own-dev";
        developer.wear = {chemistry::WearRule::PerFilm, 10, {}};
        EXPECT_TRUE(book->add(developer));
    }
    void films(const std::string& id, double days, double count)
    {
        EXPECT_TRUE(book->process({rolls(count), {{id, {}, {}, false, {}}}, {}, {}, {}},
                                  History::at(days)));
    }
    void clears(const std::string& id, double days, double seconds, const std::string& film = {})
    {
        EXPECT_TRUE(book->record(id, ClearingTested{Seconds(seconds), Celsius(20), film},
                                 {History::at(days), {}}));
    }
    void strip(const std::string& id, double days, double density)
    {
        EXPECT_TRUE(book->record(id, StripTested{density, {}, true}, {History::at(days), {}}));
    }
    void look(const std::string& id, double days, bool passed,
              std::optional<LookedAt> what = LookedAt::Leader)
    {
        Looked looked;
        looked.passed = passed;
        looked.what = what;
        EXPECT_TRUE(book->record(id, looked, {History::at(days), {}}));
    }
    std::vector<Batch> all(const std::vector<std::string>& bottles)
    {
        std::vector<Batch> found;
        for (const std::string& id : bottles) {
            found.push_back(batch(id));
        }
        return found;
    }
};

TEST_F(OwnTests, aFixerThatSlowsDownLessHoldsMoreThanThePacketSays)
{
    std::vector<std::string> bottles;
    for (const char* vessel : {"glass", "hdpe"}) {
        const auto id = mix(0, "own-fix", 500, vessel);
        bottles.push_back(id);
        clears(id, 0.1, 60);
        for (int i = 1; i <= 3; ++i) {
            films(id, i, 2); // 4 films a litre more
            clears(id, i + 0.1, 60 * (1 + 4 * i / 30.0));
        }
    }
    const auto& solution = *book->formulary().solution("own-fix");
    const OwnRecord record = ownRecord(solution, all(bottles));
    ASSERT_TRUE(record.capacity);
    EXPECT_EQ(record.capacity->tests, 6);
    EXPECT_EQ(record.capacity->bottles, 2);
    EXPECT_EQ(record.tests.size(), 6u);
    EXPECT_NEAR(record.tests.front().times, 1 + 4 / 30.0, 1e-9);
    // Between the packet's 20 and the tests' 30, and nearer to the tests.
    EXPECT_GT(record.capacity->value, 24);
    EXPECT_LT(record.capacity->value, 30);
    EXPECT_LT(record.capacity->low, record.capacity->value);
    EXPECT_FALSE(ownRecord(solution, all({bottles.front()})).capacity) << "one bottle says little";
}

TEST_F(OwnTests, onlyTestsBesideAFreshOneOfTheirFilmCount)
{
    const auto id = mix(0, "own-fix");
    films(id, 1, 4);
    clears(id, 2, 80); // no fresh one
    clears(id, 3, 90, "Quay 400");
    EXPECT_TRUE(ownRecord(*book->formulary().solution("own-fix"), all({id})).tests.empty());
}

TEST_F(OwnTests, stripsMeasureWhatAFilmCosts)
{
    std::vector<std::string> bottles;
    for (const char* vessel : {"glass", "hdpe"}) {
        const auto id = mix(0, "own-dev", 1000, vessel);
        bottles.push_back(id);
        strip(id, 0.1, 1.2);
        for (int i = 1; i <= 3; ++i) {
            films(id, i, 1);
            // With 10 % too little is given: the density falls as if each film cost 15 %.
            strip(id, i + 0.1, 1.2 * (1 + 0.10 * i) / (1 + 0.15 * i));
        }
    }
    const OwnRecord record = ownRecord(*book->formulary().solution("own-dev"), all(bottles));
    ASSERT_TRUE(record.wear);
    EXPECT_EQ(record.wear->tests, 8);
    EXPECT_NEAR(record.tests[1].times, 1.15, 1e-9);
    EXPECT_GT(record.wear->value, 14);
    EXPECT_LT(record.wear->value, 15);
    EXPECT_FALSE(record.capacity);
}

TEST_F(OwnTests, looksAndStripsSayHowLongAHalfFullBottleKeeps)
{
    std::vector<std::string> bottles;
    for (const char* vessel : {"glass", "hdpe", "squeezed"}) {
        const auto id = mix(0, "own-dev", 515, vessel);
        bottles.push_back(id);
        look(id, 30, true);
        look(id, 95, true);
        look(id, 99, false);
        look(id, 99.5, false);
    }
    const auto& solution = *book->formulary().solution("own-dev");
    const OwnRecord record = ownRecord(solution, all(bottles));
    ASSERT_TRUE(record.oxygen);
    EXPECT_EQ(record.oxygen->tests, 6) << "of each bottle the last pass and the first failure";
    EXPECT_EQ(record.oxygen->bottles, 3);
    EXPECT_EQ(record.trials.size(), 6u);
    ASSERT_TRUE(record.halfDays);
    // Published are 61 days; these were good after 95.
    EXPECT_GT(record.halfDays->value, 61);
    EXPECT_LT(record.halfDays->low, record.halfDays->value);
    EXPECT_GT(record.halfDays->high, record.halfDays->value);
    ASSERT_FALSE(record.chances.empty());
    EXPECT_GT(record.chances.front().chance, 0.9) << "long before its end it passes";
    EXPECT_LT(record.chances.back().chance, 0.1) << "long after it, it does not";
    for (const OwnChance& at : record.chances) {
        EXPECT_LE(at.low, at.chance);
        EXPECT_GE(at.high, at.chance);
    }
    auto taken = solution;
    taken.keeping.half = chemistry::Days(record.halfDays->value);
    EXPECT_NEAR(formulary::keepingLimits(taken)->oxygen.value(), record.oxygen->value, 1e-6);
    bottles.pop_back();
    EXPECT_FALSE(ownRecord(solution, all(bottles)).oxygen) << "two bottles say little";
}

TEST_F(OwnTests, whatWoreOutByFilmsOrHasACloudySolutionSaysNothingOfAir)
{
    const auto worn = mix(0, "own-dev", 1000, "glass");
    films(worn, 1, 8); // of 10
    look(worn, 2, false);
    const auto cloudy = mix(0, "own-dev", 1000, "hdpe");
    look(cloudy, 2, false, LookedAt::Precipitate);
    const OwnRecord record = ownRecord(*book->formulary().solution("own-dev"), all({worn, cloudy}));
    EXPECT_TRUE(record.trials.empty());
    EXPECT_TRUE(batch(cloudy).trials.empty());
    ASSERT_EQ(batch(worn).trials.size(), 1u);
    EXPECT_NEAR(batch(worn).trials.front().wear.value(), 8, 1e-9);
}

TEST_F(OwnTests, aTestOfTheBottleBeforeCountsThere)
{
    const auto donor = mix(0, "own-dev", 1000, "glass");
    look(donor, 20, true);
    NewBatch decanted{"own-dev", "hdpe", Millilitres(400), "heir", {}, false};
    decanted.from = donor;
    const auto heir = book->mix(decanted, when(21));
    ASSERT_TRUE(heir);
    EXPECT_EQ(batch(donor).trials.size(), 1u);
    EXPECT_TRUE(batch(*heir).trials.empty());
}

} // namespace
} // namespace ullage::ledger
