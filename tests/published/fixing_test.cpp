#include "core/chemistry/fixing.h"

#include "core/chemistry/constants.h"
#include "core/chemistry/films.h"
#include "core/ledger/two_baths.h"
#include "tests/core/ledger/ledger_kit.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace ullage
{
namespace
{

using namespace chemistry;
using namespace ledger;

// TM 11-2323, para 33 c: fixing takes twice as long for every 18 °F below 68 °F; 5 min there are 10
// at 50 °F, and 20 at the freezing point.
TEST(Fixing, doublesForEighteenFahrenheitColder)
{
    const auto minutes = [](double fahrenheit) {
        return 5 * coldFactor(Celsius((fahrenheit - 32) / 1.8));
    };
    EXPECT_NEAR(minutes(68), 5, 1e-12);
    EXPECT_NEAR(minutes(50), 10, 1e-12);
    EXPECT_NEAR(minutes(32), 20, 1e-12);
}

// The same, para 33 d, of prints: twice as long at 50 °F, four times at 35 °F. The paragraph does
// not agree with 33 c there, whose doubling every 18 °F comes to four times at 32 °F only; the
// program follows 33 c and stays an eighth under this figure: that difference is held.
TEST(Fixing, ofPrintsFourTimesAtThirtyFiveFahrenheit)
{
    const auto times = [](double fahrenheit) {
        return coldFactor(Celsius((fahrenheit - 32) / 1.8));
    };
    EXPECT_NEAR(times(50), 2, 1e-12);
    EXPECT_NEAR(4 / times(35) - 1, 0.1225, 0.0005);
}

Clearing clearedIn(double fresh, double now)
{
    const std::vector<ClearingTest> tests{{FilmsPerLitre(0), Seconds(fresh)},
                                          {FilmsPerLitre(10), Seconds(now)}};
    return *clearing(tests, FilmsPerLitre(10), {});
}

// NAVEDTRA 14209, ch. 10: fix for twice the clearing time. T.O. 33B-1-1, para 6.7.9.1.1.1, p. 6-77,
// says twice as well and gives two minutes as its example; the Cyclopedia of Photography,
// Developing (gluedideas.com), leaves a negative that cleared in ten minutes for another ten.
TEST(Fixing, twiceTheClearingTime)
{
    EXPECT_EQ(clearedIn(600, 600).fixingTime(), Seconds(600 + 600));
    EXPECT_EQ(clearedIn(60, 60).fixingTime(), Seconds(120));
    EXPECT_EQ(clearedIn(120, 120).fixingTime(), Seconds(240));
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

// Studio Light, 1923, on testing fixing baths: one that takes twice as long as when it was fresh is
// done for. A printed sheet for an acid hardening fixer of 240 g/L crystals: it clears in 5 min
// when fresh, so fix 10, and throw it away once fixing takes more than 20.
TEST(Fixing, twoOtherSheetsDiscardAtTheSamePlace)
{
    EXPECT_TRUE(clearedIn(30, 60).doubled);
    EXPECT_FALSE(clearedIn(30, 59).doubled);
    const auto almost = clearedIn(300, 599);
    EXPECT_FALSE(almost.doubled);
    EXPECT_LT(almost.fixingTime(), Seconds(20 * 60.0));
    const auto spent = clearedIn(300, 600);
    EXPECT_TRUE(spent.doubled);
    EXPECT_EQ(spent.fixingTime(), Seconds(20 * 60.0));
    EXPECT_EQ(clearedIn(300, 300).fixingTime(), Seconds(10 * 60.0));
}

// Fixer Capacity, brodie-tyrrell.org/wiki (an amateur's page): with T the clearing time when fresh,
// a fresh bath fixes in 2 T, a nearly spent one in 4 T, and at a clearing time of 2 T it is spent.
TEST(Fixing, fromTwiceToFourTimesTheFreshClearingTime)
{
    for (const double fresh : {35.0, 55.0}) {
        EXPECT_EQ(clearedIn(fresh, fresh).fixingTime(), Seconds(2 * fresh));
        const auto spent = clearedIn(fresh, 2 * fresh);
        EXPECT_EQ(spent.fixingTime(), Seconds(4 * fresh));
        EXPECT_TRUE(spent.doubled);
        EXPECT_FALSE(clearedIn(fresh, 1.95 * fresh).doubled);
    }
}

// A load through two fixers; the first then clears in so many seconds, 60 when fresh.
std::vector<Judged> twoFixers(double seconds)
{
    std::vector<Judged> judged;
    for (const bool second : {false, true}) {
        History history;
        history.mix("fixer", 1000);
        history.add(0.1, ClearingTested{Seconds(60), Celsius(20)});
        Processed run{Load{{{"120", 2}}, {}}, {}, Millilitres(0), false, {}};
        run.second = second;
        history.add(1, run);
        if (!second) {
            history.add(1.5, ClearingTested{Seconds(seconds), Celsius(20)});
        }
        Batch batch = history.batch(2);
        batch.id = batch.name = second ? "second" : "first";
        judged.push_back({batch, assess(batch)});
    }
    return judged;
}

// NAVEDTRA 14209, ch. 10, Life of a Fixing Bath, and Wellington, Photographic Handbook, p. 65: once
// the first of two baths is spent it is thrown away and the second takes its place.
TEST(Fixing, ofTwoBathsTheSecondTakesTheSpentFirstsPlace)
{
    EXPECT_FALSE(exchangeDue(twoFixers(119)));
    const auto due = exchangeDue(twoFixers(120));
    ASSERT_TRUE(due);
    EXPECT_EQ(due->first, 0U);
    EXPECT_EQ(due->second, 1U);
}

// Anchell, The Darkroom Cookbook, 3rd ed., p. 108: 12 rolls, 16 sheets of 4x5 and 4 of 8x10 are the
// 20 films that one litre of acid fixer takes.
TEST(Fixing, aLitreOfAcidFixerIsFullAfterThePrintedLoad)
{
    const auto judgedAfter = [](double sheets) {
        const Load load{{{"120", 12}, {"4x5", 16}, {"8x10", sheets}}, {}};
        History history;
        history.formulary.add([] {
            auto fixer = History::fixer();
            fixer.id = "acid";
            fixer.capacity.reset(); // what is taken where a maker gives none
            fixer.fixerKind = formulary::FixerKind::Acid;
            return fixer;
        }());
        history.mix("acid", 1000);
        history.add(1, Processed{load, {}, Millilitres(0), false, {}});
        return assess(history.batch(1));
    };
    const auto judged = judgedAfter(4);
    EXPECT_EQ(judged.verdict, Verdict::Discard);
    EXPECT_EQ(judged.reasons.front().code, ReasonCode::CapacityReached);
    EXPECT_NE(judgedAfter(3).verdict, Verdict::Discard);
}

// The printed sheet for an acid hardening fixer of 240 g/L crystals: 20 to 25 of 8x10 in to the
// litre. It knows nothing of rolls.
TEST(Fixing, capacityIsThatOfAPrintedSheetInSheets)
{
    const auto sheets = [](double count) {
        return Films(filmsInOne("8x10")->value() * count) / litres(Millilitres(1000));
    };
    EXPECT_GE(kFixerCapacityAcid.value, sheets(20).value());
    EXPECT_LE(kFixerCapacityAcid.value, sheets(25).value());
}

// Crabtree and Hart, Trans. SMPE XIII, no. 38, 1929, p. 401: 35 mm negative clears in more than 10
// min after 300 ft to the gallon, agitated; positive in more than 3 min after 600 ft, still. Film
// of today's silver lies between the two, so does the capacity taken where a maker gives none.
TEST(Fixing, capacityLiesBetweenOldNegativeAndPositiveFilm)
{
    const auto perLitre = [](double feet) {
        const SquareCentimetres area(feet * 12 * 2.54 * 3.5);
        return filmsInArea(area) / litres(Millilitres(231 * std::pow(2.54, 3)));
    };
    EXPECT_GT(kFixerCapacityAcid.value, perLitre(300).value());
    EXPECT_LT(kFixerCapacityAcid.value, perLitre(600).value());
    EXPECT_LT(kFixerCapacityAlkaline.value, perLitre(600).value());
}

// Anchell, p. 268: a sulfate stop bath takes 12 films a litre, 600 mL of it 7.2.
TEST(StopBath, sixHundredMillilitresTakeThePrintedFilms)
{
    History history;
    auto stop = History::fixer();
    stop.id = "stop";
    stop.role = formulary::Role::Stop;
    stop.capacity = FilmsPerLitre(12);
    stop.silverPerFilm = 0;
    history.formulary.add(stop);
    history.mix("stop", 600);
    history.run(1, 5);
    const auto left = assess(history.batch(1)).filmsLeft;
    ASSERT_TRUE(left);
    EXPECT_NEAR(left->value(), 7.2 - 5, 1e-9);
}

// Anchell, p. 108: a working-strength fixer keeps two months at most, however full its bottle is.
TEST(Fixing, workingStrengthKeepsTwoMonths)
{
    for (const double volume : {1000.0, 200.0}) {
        History history;
        auto fixer = History::fixer();
        fixer.id = "working";
        fixer.keeping.full = Days(kFixerKeeping.value);
        history.formulary.add(fixer);
        history.mix("working", volume);
        const auto judged = assess(history.batch(0));
        EXPECT_EQ(judged.discardBy, addMonths(history.at(0), 2)) << volume;
    }
}

// 40 CFR 261.24 (D011) makes 5.0 mg/L, equal or above, hazardous waste.
TEST(Fixing, silverThatIsHazardousWaste)
{
    EXPECT_FALSE(silverIsHazardousWaste(GramsPerLitre(0.00499)));
    EXPECT_TRUE(silverIsHazardousWaste(GramsPerLitre(0.005)));
    EXPECT_TRUE(silverIsHazardousWaste(GramsPerLitre(0.0051)));
}

constexpr double kFilm = 80 * 2.54 * 2.54 / 1e4; // m²

// ABC der Röntgentechnik, scan 339: of a film's silver a quarter to a fifth becomes the image.
// Clerc, § 412: about three quarters go into the fixer. This ties two constants that were set
// apart: the bromide that developing frees is the image's silver, mole for mole.
TEST(Silver, imageAndFixerShareItAsPrinted)
{
    const double image = kBromidePerFilm.value / 1000 * 107.868 / 119.002; // g, from mg of KBr
    const double share = image / (image + kSilverPerFilm.value);
    EXPECT_GE(share, 1.0 / 5);
    EXPECT_LE(share, 1.0 / 4);
    EXPECT_NEAR(1 - share, 0.75, 0.05);
}

// Clerc, § 412: 15 to 30 grains of fine silver in a dozen 7×5 in plates, three quarters of it into
// the fixer. The model's value lies within; its range stops short of the upper figure, as thin
// modern films do.
TEST(Silver, ofADozenPlates)
{
    constexpr double kGrain = 0.06479891; // g
    const double films = 12 * filmsInOne("5x7")->value();
    const double low = 15 * kGrain * 0.75 / films;
    const double high = 30 * kGrain * 0.75 / films;
    EXPECT_GT(kSilverPerFilm.value, low);
    EXPECT_LT(kSilverPerFilm.value, high);
    EXPECT_NEAR(high - kSilverPerFilm.high, 0.07, 0.005);
}

// ABC der Röntgentechnik, scans 340 and 339: negative films carry 3 to 10 g of silver a square
// metre, three quarters to four fifths of it dissolve in the fixer.
TEST(Silver, ofASquareMetreOfNegativeFilm)
{
    EXPECT_GT(kSilverPerFilm.value, 3 * 0.75 * kFilm);
    EXPECT_LT(kSilverPerFilm.value, 10 * 0.8 * kFilm);
}

// The same, scan 340: twelve sheets of 40×40 cm leave about 15 g in the fixer. That film is coated
// on both sides, 0.40 g a film where the model takes 0.15: why silver is a figure of the solution.
TEST(Silver, ofFilmCoatedOnBothSidesIsMoreThanTwice)
{
    const double films = 12 * filmsInOne("40x40cm")->value();
    EXPECT_NEAR(15 / (films * kSilverPerFilm.value), 2.7, 0.05);
}

// Harvard Environmental Health and Safety, silver recovery: used fixer holds 3,000 to 4,000 ppm.
TEST(Silver, ofASpentFixer)
{
    const double spent = kFixerCapacityAcid.value * kSilverPerFilm.value;
    EXPECT_NEAR(spent, 3.0, 1e-9); // at the lower edge
    EXPECT_GE(kFixerCapacityAcid.value * kSilverPerFilm.high, 4.0);
}

} // namespace
} // namespace ullage
