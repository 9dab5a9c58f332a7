#include "core/ledger/own_record.h"

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

} // namespace
} // namespace ullage::ledger
