#include "core/chemistry/fixing.h"

#include "core/chemistry/constants.h"
#include "core/chemistry/films.h"
#include "tests/core/ledger/ledger_kit.h"

#include <gtest/gtest.h>
#include <vector>

namespace ullage
{
namespace
{

using namespace chemistry;
using namespace ledger;

// TM 11-2323, para 33: fixing takes twice as long for every 18 °F (10 °C) colder; 5 min at 20 °C.
TEST(Fixing, fiveMinutesBecomeTenTenDegreesColder)
{
    EXPECT_EQ(5 * coldFactor(Celsius(20)), 5);
    EXPECT_EQ(5 * coldFactor(Celsius(10)), 10);
    EXPECT_DOUBLE_EQ(5 * coldFactor(Celsius(20 - 18 / 1.8)), 10);
}

// NAVEDTRA 14209, ch. 10: fix for twice the clearing time.
TEST(Fixing, twiceTheClearingTime)
{
    const std::vector<ClearingTest> tests{{FilmsPerLitre(0), Seconds(60)}};
    EXPECT_EQ(clearing(tests, FilmsPerLitre(0), {})->fixingTime(), Seconds(120));
    EXPECT_EQ(kTabularFixFactor.value, 3); // three times for tabular grains: common practice
}

// NAVEDTRA 14209, ch. 10: discard when the clearing time has doubled. Fresh 60 s: 119 keep, 120 go.
TEST(Fixing, discardWhenTheClearingTimeHasDoubled)
{
    const auto verdictAt = [](double seconds) {
        History history;
        history.mix("fixer", 1000);
        history.add(0.1, ClearingTested{Seconds(60), Celsius(20)});
        history.add(1, ClearingTested{Seconds(seconds), Celsius(20)});
        return assess(history.batch(1.5)).verdict;
    };
    EXPECT_EQ(verdictAt(119), Verdict::Good);
    EXPECT_EQ(verdictAt(120), Verdict::Discard);
}

// Anchell, The Darkroom Cookbook, 3rd ed., p. 108: 20 films a litre in acid fixer, 25 in alkaline;
// 12 rolls, 16 sheets of 4x5 and 4 of 8x10 are the 20 of one litre.
TEST(Fixing, aLitreOfAcidFixerIsFullAfterTwentyFilms)
{
    const Load load{{{"120", 12}, {"4x5", 16}, {"8x10", 4}}, {}};
    EXPECT_DOUBLE_EQ(load.units().value(), 20);
    EXPECT_EQ(kFixerCapacityAcid.value, 20);
    EXPECT_EQ(kFixerCapacityAlkaline.value, 25);

    History history;
    history.formulary.add([] {
        auto fixer = History::fixer();
        fixer.id = "acid";
        fixer.capacity = FilmsPerLitre(kFixerCapacityAcid.value);
        return fixer;
    }());
    history.mix("acid", 1000);
    history.add(1, Processed{load, {}, Millilitres(0), false, {}});
    const auto judged = assess(history.batch(1));
    EXPECT_EQ(judged.verdict, Verdict::Discard);
    EXPECT_EQ(judged.reasons.front().code, ReasonCode::CapacityReached);
}

// The same page: a working-strength fixer keeps two months at most.
TEST(Fixing, workingStrengthKeepsTwoMonths)
{
    EXPECT_EQ(wholeMonths(Days(kFixerKeeping.value)), 2);
}

// A roll holds 0.11 to 0.21 g of silver, of which fixing takes what was not developed; 40 CFR
// 261.24 (D011) makes 5.0 mg/L, equal or above, hazardous waste.
TEST(Fixing, silverFromOneFilmIsAlreadyHazardousWaste)
{
    EXPECT_FALSE(silverIsHazardousWaste(GramsPerLitre(0.00499)));
    EXPECT_TRUE(silverIsHazardousWaste(GramsPerLitre(0.005)));
    EXPECT_TRUE(silverIsHazardousWaste(GramsPerLitre(0.0051)));
    EXPECT_TRUE(silverIsHazardousWaste(GramsPerLitre(kSilverPerFilm.low / 20)));
}

} // namespace
} // namespace ullage
