// What darkrooms do with a packaged litre, beside what the model makes of it. Common practice, no
// source: 10 to 15 films or six months, whichever comes first.
#include "core/chemistry/mixing.h"
#include "core/chemistry/process_constants.h"
#include "tests/core/ledger/ledger_kit.h"

#include <gtest/gtest.h>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

formulary::Solution litre(std::optional<FilmsPerLitre> capacity)
{
    auto packaged = History::developer();
    packaged.id = "litre";
    packaged.capacity = capacity;
    return packaged;
}

TEST(Practice, aPackagedLitreEndsByFilmsOrByMonths)
{
    for (const double films : {10.0, 15.0}) {
        const auto packaged = litre(FilmsPerLitre(films));
        History history;
        history.formulary.add(packaged);
        history.mix("litre", 1000);
        const auto six = addMonths(history.at(0), 6);
        EXPECT_EQ(assess(history.batch(0)).keepsUntil, six);
        // By the model it lies a day beside: then it is the calendar's.
        EXPECT_EQ(assess(history.batch(0)).discardBy, six);
        for (int film = 1; film <= films; ++film) {
            EXPECT_NE(assess(history.batch(film)).verdict, Verdict::Discard) << film;
            history.run(film, 1);
        }
        EXPECT_EQ(assess(history.batch(films)).verdict, Verdict::Discard);

        History rested;
        rested.formulary.add(packaged);
        rested.mix("litre", 1000);
        EXPECT_NE(assess(rested.batch(150)).verdict, Verdict::Discard);
        EXPECT_NE(assess(rested.batchAt(six)).verdict, Verdict::Discard);
        EXPECT_EQ(assess(rested.batchAt(six + std::chrono::milliseconds(1))).verdict,
                  Verdict::Discard);
    }
}

// A film a week, 15 to 20 mL lost with each: the model, which counts no films, ends it after as
// many as practice does.
TEST(Practice, aLitreOpenedOnceAWeekIsSpentAfterTenToFifteenFilms)
{
    for (const double lost : {15.0, 17.5, 20.0}) {
        History history;
        history.formulary.add(litre({}));
        history.mix("litre", 1000);
        int films = 0;
        while (*history.batch(7 * (films + 1)).standingUsed() < 1) {
            ++films;
            history.add(
                7 * films,
                Processed{{{{"135-36", 1}}, {}}, Millilitres(300), Millilitres(lost), false, {}});
        }
        EXPECT_GE(films, 11) << lost;
        EXPECT_LE(films, 12) << lost;
    }
}

TEST(Practice, powderGoesIntoABottleHalfFullOfWarmWater)
{
    const auto start = startVolume(Millilitres(1000), Millilitres(1000), displacement(110, 0));
    EXPECT_TRUE(start->halfBottle);
    EXPECT_EQ(start->advised, Millilitres(500));
    EXPECT_GE(kDeveloperWater.value, 38);
    EXPECT_LE(kDeveloperWater.value, 41);
    const Instant mixed{};
    EXPECT_EQ(nextDissolvingCheck(mixed, mixed), mixed + std::chrono::minutes(10));
}

} // namespace
} // namespace ullage::ledger
