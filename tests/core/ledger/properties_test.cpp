// What must hold for any history, on seeded random ones. A failure prints its seed.
#include "tests/core/ledger/ledger_kit.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <random>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

class RandomHistory
{
public:
    explicit RandomHistory(unsigned seed) : m_random(seed)
    {
        static constexpr const char* kVessels[] = {"glass", "squeezed", "hdpe"};
        history.mix(chance(0.3) ? "fixer" : "dev", between(300, 1000), kVessels[pick(3)]);
        const int events = 3 + pick(20);
        for (int i = 0; i < events; ++i) {
            m_day += chance(0.2) ? 0 : between(0, 12);
            const auto batch = history.batch(m_day);
            if (!batch.inUse()) {
                return;
            }
            happen(batch);
        }
    }

    History history;
    [[nodiscard]] double lastDay() const { return m_day; }
    double between(double low, double high)
    {
        return std::uniform_real_distribution(low, high)(m_random);
    }
    bool chance(double share) { return between(0, 1) < share; }
    int pick(int count) { return std::uniform_int_distribution(0, count - 1)(m_random); }

private:
    void happen(const Batch& batch)
    {
        const double volume = batch.volume.value();
        const double room = batch.vessel->capacity.value() - volume;
        const std::optional<double> air =
            chance(0.3) ? std::optional(between(0, 300)) : std::nullopt;
        switch (pick(9)) {
        case 0:
        case 1:
        case 2:
            history.run(m_day, between(0.2, 3), between(0.3, 1) * volume,
                        chance(0.5) ? between(0, 0.05) * volume : 0);
            break;
        case 3:
            if (room > 1) {
                history.add(m_day, ToppedUp{Millilitres(between(0.1, 1) * room), {}}, air);
            }
            break;
        case 4:
            history.add(m_day, Drawn{Millilitres(between(0.01, 0.4) * volume), {}}, air);
            break;
        case 5:
            history.add(m_day, Moved{volume <= 500 && chance(0.5) ? "small" : "hdpe"}, air);
            break;
        case 6:
            history.add(m_day, Opened{}, air);
            break;
        case 7:
            history.add(m_day, StoredAt{Celsius(between(5, 35))});
            break;
        default:
            history.add(m_day, StoodOpen{Hours(between(0.1, 5)), SquareCentimetres(60)});
            break;
        }
    }

    std::mt19937 m_random;
    double m_day = 0;
};

void expectSame(const Batch& a, const Batch& b, double slack)
{
    EXPECT_NEAR(a.volume.value(), b.volume.value(), slack);
    EXPECT_NEAR(a.wear.value(), b.wear.value(), slack);
    EXPECT_NEAR(a.silver.value(), b.silver.value(), slack);
    EXPECT_NEAR(a.bromide.value(), b.bromide.value(), slack * 100);
    EXPECT_NEAR(a.standing.taken.total().value(), b.standing.taken.total().value(), slack);
    EXPECT_NEAR(a.standing.taken.wall.value(), b.standing.taken.wall.value(), slack);
    EXPECT_NEAR(a.standing.taken.cap.value(), b.standing.taken.cap.value(), slack);
    EXPECT_NEAR(a.standing.taken.bottleAir.value(), b.standing.taken.bottleAir.value(), slack);
    EXPECT_NEAR(a.standing.air.total().value(), b.standing.air.total().value(), slack);
    EXPECT_NEAR(a.standing.aged.value(), b.standing.aged.value(), slack);
    EXPECT_EQ(a.openings, b.openings);
    EXPECT_EQ(a.end, b.end);
}

constexpr unsigned kSeeds = 300;

TEST(Properties, volumesStayInTheBottleAndRoutesAreNeverNegative)
{
    for (unsigned seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        const RandomHistory random(seed);
        for (const Snapshot& at : random.history.batch(random.lastDay() + 5).trace) {
            EXPECT_GE(at.volume.value(), 0);
            EXPECT_LE(at.volume.value(), 1030 + 1e-9);
            const Routes& taken = at.standing.taken;
            for (const auto route :
                 {taken.pouring, taken.bottleAir, taken.wall, taken.cap, taken.openVessel}) {
                EXPECT_GE(route.value(), -1e-12);
            }
            EXPECT_GE(at.standing.air.shutIn.value(), -1e-15);
            EXPECT_GE(at.standing.air.wall.value(), -1e-15);
            EXPECT_GE(at.standing.air.cap.value(), -1e-15);
            // A closed bottle never holds more oxygen than fresh air would.
            EXPECT_LE(at.standing.air.total().value(),
                      at.standing.air.volume.value() * 8.508e-3 * (1 + 1e-9));
        }
    }
}

// The route amounts come from one linear equation each; together they must be the whole one.
TEST(Properties, oxygenByRoutesIsTheOxygenOfTheWholeEquation)
{
    for (unsigned seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        RandomHistory random(seed);
        const auto batch = random.history.batch(random.lastDay());
        if (!batch.inUse()) {
            continue;
        }
        const auto later = random.history.batch(random.lastDay() + random.between(0.01, 60));
        const double t = daysBetween(batch.asOf, later.asOf).value();
        const auto closed = batch.closed();
        const double c = closed.saturation.value();
        const double wet = std::min(1.0, batch.volume / closed.bottle.capacity);
        const double kelvin = closed.temperature.value() + 273.15;
        const double wall = closed.bottle.wallFlow * std::exp(-3765 * (1 / kelvin - 1 / 298.15));
        const double qWet = wet * wall;
        const double qHead = (1 - wet) * wall + closed.bottle.capFlow;
        const double air = batch.standing.air.volume.value();
        double expected = (qWet + qHead) * t;
        if (air >= 0.5) {
            const double tau = air / (24 * 2 * closed.bottle.surface.value() * c / 1000 / 8.508e-3);
            const double lambda = 1 / tau + qHead / (8.508e-3 * air);
            const double level = qHead / lambda;
            const double n = batch.standing.air.total().value();
            expected =
                qWet * t + (level * t + (n - level) * (1 - std::exp(-lambda * t)) / lambda) / tau;
        }
        const auto taken = later.standing.taken.total() - batch.standing.taken.total();
        EXPECT_NEAR(taken.value() * batch.volume.value() / 1000, expected, 1e-9);
    }
}

TEST(Properties, toppingUpConservesWhatIsDissolved)
{
    for (unsigned seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        RandomHistory random(seed);
        const auto before = random.history.batch(random.lastDay());
        const double room = (before.vessel->capacity - before.volume).value();
        if (!before.inUse() || room < 1) {
            continue;
        }
        random.history.add(random.lastDay(), ToppedUp{Millilitres(room / 2), {}});
        const auto after = random.history.batch(random.lastDay());
        const double v0 = before.volume.value();
        const double v1 = after.volume.value();
        EXPECT_NEAR(v1, v0 + room / 2, 1e-9);
        EXPECT_NEAR(after.wear.value() * v1, before.wear.value() * v0, 1e-8);
        EXPECT_NEAR(after.silver.value() * v1, before.silver.value() * v0, 1e-8);
        EXPECT_NEAR(after.bromide.value() * v1, before.bromide.value() * v0, 1e-6);
    }
}

TEST(Properties, drawingOffConservesConcentrations)
{
    for (unsigned seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        RandomHistory random(seed);
        const auto before = random.history.batch(random.lastDay());
        if (!before.inUse()) {
            continue;
        }
        random.history.add(random.lastDay(), Drawn{before.volume * 0.3, {}});
        const auto after = random.history.batch(random.lastDay());
        EXPECT_EQ(after.wear, before.wear);
        EXPECT_EQ(after.silver, before.silver);
        EXPECT_EQ(after.bromide, before.bromide);
        EXPECT_EQ(after.standing.aged, before.standing.aged);
        EXPECT_EQ(after.standing.taken.total(), before.standing.taken.total());
    }
}

TEST(Properties, splittingAWaitChangesNothing)
{
    for (unsigned seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        RandomHistory random(seed);
        History split = random.history;
        for (int i = 0; i < 5; ++i) { // a note makes the fold stop at a moment
            split.add(random.between(0, random.lastDay() + 30), Noted{"nothing"});
        }
        const auto whole = random.history.batch(random.lastDay() + 30);
        if (whole.inUse()) {
            expectSame(split.batch(random.lastDay() + 30), whole, 1e-9);
        }
    }
}

TEST(Properties, standingOnlyRisesWhileNothingIsAdded)
{
    for (unsigned seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        const RandomHistory random(seed);
        double before = 0;
        for (int step = 0; step <= 20; ++step) {
            const auto batch = random.history.batch(random.lastDay() + step * 4.0);
            if (!batch.inUse() || !batch.standingUsed()) {
                break;
            }
            EXPECT_GE(*batch.standingUsed(), before);
            before = *batch.standingUsed();
        }
    }
}

TEST(Properties, voidingAndEnteringAnewIsTheSameState)
{
    for (unsigned seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        RandomHistory random(seed);
        History& history = random.history;
        const auto before = history.batch(random.lastDay() + 3);
        // Events of one moment go by order of entry, so the last of them is the one to take back.
        const auto which = std::size_t(random.pick(int(history.entered.size())));
        const Event taken = history.entered[which];
        if (which + 1 < history.entered.size() && history.entered[which + 1].at == taken.at) {
            continue;
        }
        history.add(random.lastDay(), Voided{taken.id, "mistake"});
        Event again = taken;
        again.id = "again";
        history.entered.push_back(again);
        expectSame(history.batch(random.lastDay() + 3), before, 1e-12);
    }
}

TEST(Properties, eventsOfOneInstantGoByOrderOfEntry)
{
    for (unsigned seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        const RandomHistory random(seed);
        // Entered backwards in time, but in order within an instant, it is the same history.
        History shuffled = random.history;
        std::stable_sort(shuffled.entered.begin(), shuffled.entered.end(),
                         [](const Event& a, const Event& b) { return a.at > b.at; });
        expectSame(shuffled.batch(random.lastDay() + 1), random.history.batch(random.lastDay() + 1),
                   0);
    }
}

TEST(Properties, steadyToppingUpDrivesWearToItsRate)
{
    for (const double rate : {40.0, 70.0, 125.0}) { // mL a film
        History history;
        auto endless = History::developer();
        endless.id = "endless";
        endless.capacity.reset();
        history.formulary.add(endless);
        history.mix("endless", 1000);
        for (int film = 1; film <= 400; ++film) {
            history.run(0, 1, 500, rate);
            history.add(0, ToppedUp{Millilitres(rate), {}});
        }
        const auto batch = history.batch(0);
        EXPECT_EQ(batch.volume, Millilitres(1000));
        EXPECT_NEAR(batch.wear.value() / (1 - rate / 1000), 1000 / rate, 1e-4 * 1000 / rate)
            << rate;
    }
}

} // namespace
} // namespace ullage::ledger
