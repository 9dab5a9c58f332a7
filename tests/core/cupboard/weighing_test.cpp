#include "core/cupboard/weighing.h"

#include <gtest/gtest.h>

namespace ullage::cupboard
{
namespace
{

using chemistry::AmountUnit;
using chemistry::Formula;
using chemistry::Ingredient;
using chemistry::Millilitres;
using ledger::ItemHere;

ItemHere jar(const char* id, const char* name, std::optional<double> left, int endsAfterDays = 0)
{
    ledger::Chemical line;
    line.id = id;
    line.name = name;
    line.grams = left;
    ItemHere here;
    here.item = itemOf(line);
    here.stock.left = left;
    if (endsAfterDays > 0) {
        here.life.until = chemistry::Instant(std::chrono::days(endsAfterDays));
    }
    here.line = line;
    return here;
}

// Half a litre of an MQ borax developer, as its line in the starter formulary has it.
Formula halfALitre()
{
    return scaled({Millilitres(1000),
                   {{"metol", "", 2},
                    {"sodium-sulfite", "anhydrous", 100},
                    {"hydroquinone", "", 5},
                    {"borax", "decahydrate", 2}}},
                  Millilitres(500));
}

std::vector<std::pair<std::string, double>> pairsOf(const std::vector<NewBatch::Take>& takes)
{
    std::vector<std::pair<std::string, double>> pairs;
    for (const NewBatch::Take& take : takes) {
        pairs.emplace_back(take.item, take.amount);
    }
    return pairs;
}

using Pairs = std::vector<std::pair<std::string, double>>;

} // namespace

TEST(Weighing, takesWhatIsThereAndSaysWhatLacks)
{
    const auto out = weighOut(halfALitre(), {jar("m", "metol", 0.4), jar("b", "Borax", 500),
                                             jar("s", "sodium sulfite", 50)});
    ASSERT_EQ(out.parts.size(), 4U);
    EXPECT_EQ(out.parts[0].part.amount, 1);
    EXPECT_EQ(out.parts[0].here, 0.4);
    EXPECT_NEAR(out.parts[0].lacks, 0.6, 1e-12);
    EXPECT_EQ(out.parts[1].lacks, 0) << "exactly enough";
    EXPECT_FALSE(out.parts[2].kept) << "no hydroquinone anywhere";
    EXPECT_EQ(out.parts[2].lacks, 2.5);
    EXPECT_EQ(out.parts[3].here, 500);
    EXPECT_EQ(pairsOf(out.takes()), (Pairs{{"m", 0.4}, {"s", 50}, {"b", 1}}));
    EXPECT_TRUE(out.isLacking());
}

TEST(Weighing, ofTwoJarsTheFirstToEndIsEmptiedFirst)
{
    const auto out =
        weighOut(halfALitre(), {jar("late", "sodium sulfite", 100), jar("soon", "metol", 1),
                                jar("first", "sodium sulfite, dry", 20, 10)});
    EXPECT_EQ(pairsOf(out.parts[1].takes), (Pairs{{"first", 20}, {"late", 30}}));
    EXPECT_EQ(out.parts[1].here, 120);
}

TEST(Weighing, whereNobodyCountedAllOfItIsTakenThere)
{
    const auto out = weighOut(halfALitre(), {jar("jar", "sodium sulfite", std::nullopt),
                                             jar("rest", "sodium sulfite", 5)});
    EXPECT_TRUE(out.parts[1].uncounted);
    EXPECT_EQ(out.parts[1].lacks, 0);
    EXPECT_EQ(pairsOf(out.parts[1].takes), (Pairs{{"rest", 5}, {"jar", 45}}));
}

// A formula may begin with a pinch of what comes again later.
TEST(Weighing, whatComesTwiceInAFormulaIsTakenOnceForBoth)
{
    const Formula formula{Millilitres(1000),
                          {{"sodium-sulfite", "anhydrous", 5},
                           {"metol", "", 2},
                           {"sodium-sulfite", "anhydrous", 95}}};
    const auto out = weighOut(formula, {jar("s", "sodium sulfite", 60)});
    EXPECT_EQ(out.parts[2].here, 55);
    EXPECT_EQ(out.parts[2].lacks, 40);
    EXPECT_EQ(pairsOf(out.takes()), (Pairs{{"s", 60}}));
}

TEST(Weighing, whatAnotherBottleOfTheDeedTakesIsGone)
{
    const auto out =
        weighOut(halfALitre(), {jar("s", "sodium sulfite", 60)}, {}, {{"s", 50}, {"other", 3}});
    EXPECT_EQ(out.parts[1].here, 10);
    EXPECT_EQ(out.parts[1].lacks, 40);
}

TEST(Weighing, amountsAreThoseThatScalesShow)
{
    const auto out = weighOut(scaled(halfALitre(), Millilitres(333)), {jar("m", "metol", 10)});
    EXPECT_EQ(out.parts[0].part.amount, 0.67);
    EXPECT_EQ(out.parts[1].part.amount, 33.3);
    EXPECT_EQ(pairsOf(out.takes()), (Pairs{{"m", 0.67}}));
}

TEST(Weighing, aCupboardWithoutChemicalsLacksNothing)
{
    EXPECT_FALSE(weighOut(halfALitre(), {}).isLacking()) << "nobody keeps them in the book";
    EXPECT_EQ(weighOut(halfALitre(), {}).parts[0].lacks, 1) << "and still the sheet says so";
}

TEST(Weighing, whatIsMeasuredNeitherLacksNorIsTaken)
{
    const Formula stop{Millilitres(1000), {{"acetic acid", "", 20, AmountUnit::Millilitre}}};
    const auto out = weighOut(stop, {jar("a", "acetic acid", 5)});
    EXPECT_EQ(out.parts[0].lacks, 0);
    EXPECT_FALSE(out.parts[0].kept);
    EXPECT_TRUE(out.takes().empty());
}

TEST(Weighing, theFormThatIsThereIsFound)
{
    const Ingredient dry{"sodium-sulfite", "anhydrous", 100};
    EXPECT_EQ(otherFormHere(dry, {jar("s", "sodium sulfite heptahydrate", 9)}), "heptahydrate");
    EXPECT_EQ(otherFormHere(dry, {jar("s", "sodium sulfite", 9)}), "") << "taken for the right one";
    EXPECT_EQ(otherFormHere(dry, {}), "");
    EXPECT_EQ(otherFormHere({"metol", "", 2}, {jar("m", "metol", 9)}), "");
}

} // namespace ullage::cupboard
