// What must hold of any bottles that are filled from one another, on seeded random shelves. A
// failure prints its seed.
#include "tests/core/ledger/bottles_kit.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <iterator>
#include <random>
#include <string>
#include <vector>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

// Two fixers or two developers, with whatever happens to bottles; `lost` keeps account of what
// leaves the shelf.
class RandomShelf
{
public:
    RandomShelf(unsigned seed, const std::string& solution) : m_random(seed), m_solution(solution)
    {
        auto brominated = History::fixer();
        brominated.id = "fixer-b";
        brominated.bromidePerFilm = 3; // so that both are in either
        all.formulary.add(brominated);
        auto silvery = History::developer();
        silvery.id = "dev-s";
        silvery.silverPerFilm = 0.02;
        all.formulary.add(silvery);
        all.formulary.add(History::vessel("large", 5000, formulary::Material::Hdpe, false));
        for (int i = 0; i < 3; ++i) {
            names.push_back("b" + std::to_string(i));
            all.fresh(names.back(), 0, between(300, 900), m_solution, "large");
        }
        for (int i = 0; i < 25; ++i) {
            day += chance(0.3) ? 0 : between(0, 3);
            happen(pick());
        }
    }

    double between(double low, double high)
    {
        return std::uniform_real_distribution(low, high)(m_random);
    }
    bool chance(double share) { return between(0, 1) < share; }
    std::string pick() { return names[m_random() % names.size()]; }
    [[nodiscard]] double volume(const std::string& batch) const
    {
        return all.of(batch, day).volume.value();
    }

    Bottles all;
    std::vector<std::string> names;
    double day = 0;
    double silverIn = 0; ///< grams that came with film
    double bromideIn = 0;
    double silverLost = 0; ///< carried out, drawn off, used once
    double bromideLost = 0;

private:
    void lose(const Batch& before, double millilitres)
    {
        silverLost += before.silver.value() * millilitres / 1000;
        bromideLost += before.bromide.value() * millilitres / 1000;
    }

    void happen(const std::string& batch)
    {
        const Batch before = all.of(batch, day);
        if (!before.inUse() || before.volume.value() < 60) {
            return;
        }
        switch (m_random() % 6) {
        case 0:
        case 1:
            load(batch, before);
            break;
        case 2: {
            names.push_back("b" + std::to_string(names.size()));
            const double share = chance(0.2) ? 1 : between(0.1, 0.7);
            all.decant(batch, names.back(), day, share * before.volume.value(), m_solution,
                       "large");
            break;
        }
        case 3: {
            const std::string to = pick();
            if (to != batch && all.of(to, day).inUse()) {
                all.pour(batch, to, day, between(0.1, 0.7) * before.volume.value());
            }
            break;
        }
        case 4: {
            const double drawn = between(0.05, 0.3) * before.volume.value();
            lose(before, drawn);
            all.happen(batch, day, Drawn{Millilitres(drawn), "spilt", {}});
            break;
        }
        default:
            all.happen(batch, day, ToppedUp{Millilitres(between(1, 60)), {}});
            break;
        }
    }

    void load(const std::string& batch, const Batch& before)
    {
        const double films = std::floor(between(1, 4));
        const bool once = chance(0.2);
        const bool second = !once && chance(0.3);
        Processed run{Load{{{"120", films}}, {}}, before.volume * 0.3, {}, once, {}, second};
        if (!once) {
            const auto& solution = *before.solution;
            silverIn += solution.silverPerFilm * films * (second ? 0.2 : 1);
            bromideIn += solution.bromidePerFilm * films;
            run.lost = Millilitres(between(0, 15));
        }
        all.happen(batch, day, run);
        // What is carried out has been through it; what is used once was not changed by its film.
        const Batch after = all.of(batch, day);
        lose(once ? before : after, once ? run.used->value() : run.lost.value());
    }

    std::mt19937 m_random;
    std::string m_solution;
};

constexpr unsigned kShelves = 12;
constexpr std::array kSolutions{"dev-s", "fixer-b"};

TEST(ShelfProperties, silverAndBromideAreConservedOverTheWholeShelf)
{
    for (unsigned seed = 1; seed <= kShelves; ++seed) {
        for (const char* solution : kSolutions) {
            SCOPED_TRACE(std::to_string(seed) + ' ' + solution);
            const RandomShelf shelf(seed, solution);
            const auto held = shelf.all.held(shelf.names, shelf.day + 5);
            EXPECT_NEAR(held[1] + shelf.silverLost, shelf.silverIn, 1e-9);
            EXPECT_NEAR(held[2] + shelf.bromideLost, shelf.bromideIn, 1e-7);
        }
    }
}

TEST(ShelfProperties, decantingAndPouringBackChangesOnlyWhatPouringAdds)
{
    for (unsigned seed = 1; seed <= kShelves; ++seed) {
        for (const char* solution : kSolutions) {
            SCOPED_TRACE(std::to_string(seed) + ' ' + solution);
            RandomShelf shelf(seed, solution);
            const auto batch = shelf.pick();
            const Batch before = shelf.all.of(batch, shelf.day);
            if (!before.inUse() || before.volume.value() < 20) {
                continue;
            }
            const double part = shelf.between(0.05, 0.9) * before.volume.value();
            shelf.all.decant(batch, "aside", shelf.day, part, solution, "large");
            shelf.all.pour("aside", batch, shelf.day, part);
            const Batch after = shelf.all.of(batch, shelf.day);
            EXPECT_NEAR(after.volume.value(), before.volume.value(), 1e-9);
            EXPECT_NEAR(after.wear.value(), before.wear.value(), 1e-9);
            EXPECT_NEAR(after.silver.value(), before.silver.value(), 1e-9);
            EXPECT_NEAR(after.bromide.value(), before.bromide.value(), 1e-8);
            EXPECT_NEAR(after.standing.aged.value(), before.standing.aged.value(), 1e-9);
            EXPECT_EQ(after.filmsDone, before.filmsDone);
            EXPECT_NEAR(after.keepsFrom.value(), before.keepsFrom.value(), 1e-9);
            EXPECT_EQ(after.contaminated, before.contaminated);
            EXPECT_EQ(after.inDoubt(), before.inDoubt());
            // Poured twice, on that share of it.
            EXPECT_NEAR((after.standing.taken.total() - before.standing.taken.total()).value(),
                        2 * saturation(*after.solution).value() * part / before.volume.value(),
                        1e-9);
            EXPECT_EQ(after.openings, before.openings + 2);
        }
    }
}

TEST(ShelfProperties, theOrderOfTwoDonorsDoesNotMatter)
{
    for (unsigned seed = 1; seed <= kShelves; ++seed) {
        for (const char* solution : kSolutions) {
            SCOPED_TRACE(std::to_string(seed) + ' ' + solution);
            RandomShelf shelf(seed, solution);
            std::vector<std::string> there;
            std::copy_if(shelf.names.begin(), shelf.names.end(), std::back_inserter(there),
                         [&](const std::string& one) { return shelf.volume(one) > 20; });
            if (there.size() < 3) {
                continue;
            }
            const double first = shelf.between(0.1, 0.9) * shelf.volume(there[0]);
            const double other = shelf.between(0.1, 0.9) * shelf.volume(there[1]);
            Bottles turned = shelf.all;
            shelf.all.pour(there[0], there[2], shelf.day, first);
            shelf.all.pour(there[1], there[2], shelf.day, other);
            turned.pour(there[1], there[2], shelf.day, other);
            turned.pour(there[0], there[2], shelf.day, first);
            const Batch one = shelf.all.of(there[2], shelf.day + 9);
            const Batch same = turned.of(there[2], shelf.day + 9);
            EXPECT_NEAR(one.volume.value(), same.volume.value(), 1e-9);
            EXPECT_NEAR(one.wear.value(), same.wear.value(), 1e-9);
            EXPECT_NEAR(one.silver.value(), same.silver.value(), 1e-9);
            EXPECT_NEAR(one.bromide.value(), same.bromide.value(), 1e-8);
            EXPECT_NEAR(one.standing.aged.value(), same.standing.aged.value(), 1e-9);
            EXPECT_NEAR(one.standing.taken.total().value(), same.standing.taken.total().value(),
                        1e-9);
            EXPECT_NEAR(one.keepsFrom.value(), same.keepsFrom.value(), 1e-9);
            EXPECT_EQ(one.openings, same.openings);
        }
    }
}

} // namespace
} // namespace ullage::ledger
