#include "core/formulary/given_anew.h"

#include "core/formulary/formulary.h"

#include <gtest/gtest.h>

namespace ullage::formulary
{
namespace
{

using Places = std::vector<std::size_t>;
using Ids = std::vector<std::string>;

struct Line {
    std::string id;
    std::string replaces;
    bool withdrawn = false;
};

TEST(GivenAnew, theLastOfAFamilyStandsInThePlaceOfTheFirst)
{
    const GivenAnew lines(std::vector<Line>{{"a", ""}, {"b", ""}, {"a2", "a"}, {"a3", "a2"}});
    EXPECT_EQ(lines.standing(), (Places{3, 1}));
    for (const char* id : {"a", "a2", "a3"}) {
        EXPECT_EQ(lines.standsFor(id), 3U) << id;
        EXPECT_EQ(lines.family(id), (Ids{"a", "a2", "a3"})) << id;
    }
    EXPECT_EQ(lines.standsFor("b"), 1U);
    EXPECT_FALSE(lines.standsFor("c"));
    EXPECT_FALSE(lines.isWithdrawn("c"));
    EXPECT_EQ(lines.family("c"), Ids{"c"});
}

TEST(GivenAnew, whatIsWithdrawnIsGoneAndCanBeGivenAgain)
{
    GivenAnew lines(std::vector<Line>{{"a", ""}, {"gone", "a", true}});
    EXPECT_TRUE(lines.standing().empty());
    EXPECT_TRUE(lines.isWithdrawn("a"));
    EXPECT_FALSE(lines.standsFor("gone"));
    lines.add(Line{"again", "gone", false});
    EXPECT_EQ(lines.standing(), Places{2});
    EXPECT_FALSE(lines.isWithdrawn("a"));
    EXPECT_EQ(lines.standsFor("a"), 2U);
}

TEST(GivenAnew, givenAnewTwiceTheLastEnteredStandsAlone)
{
    // Two books that were brought together had each given it anew.
    const GivenAnew lines(std::vector<Line>{{"a", ""}, {"mine", "a"}, {"yours", "a"}});
    EXPECT_EQ(lines.standing(), Places{2});
    // One had withdrawn it meanwhile: what the other gave stands.
    const GivenAnew other(std::vector<Line>{{"a", ""}, {"new", "a"}, {"gone", "a", true}});
    EXPECT_EQ(other.standing(), Places{1});
}

TEST(Formulary, offersVesselsAsTheyWereGivenLast)
{
    const auto vessel = [](const char* id, const char* replaces, double capacity, bool withdrawn) {
        Vessel made;
        made.id = made.name = id;
        made.capacity = chemistry::Millilitres(capacity);
        made.replaces = replaces;
        made.withdrawn = withdrawn;
        return made;
    };
    Formulary formulary;
    formulary.add(vessel("b1", "", 1030, false));
    formulary.add(vessel("b2", "", 500, false));
    formulary.add(vessel("b1-measured", "b1", 1015, false));
    formulary.add(vessel("b2-gone", "b2", 0, true));
    const auto current = formulary.currentVessels();
    ASSERT_EQ(current.size(), 1U);
    EXPECT_EQ(current.front()->id, "b1-measured");
    EXPECT_EQ(formulary.vesselNow("b1")->capacity, chemistry::Millilitres(1015));
    EXPECT_EQ(formulary.vessel("b1")->capacity, chemistry::Millilitres(1030)) << "kept by its id";
    EXPECT_FALSE(formulary.vesselNow("b2"));
    EXPECT_TRUE(formulary.isWithdrawnVessel("b2"));
    EXPECT_FALSE(formulary.isWithdrawnVessel("nobody"));
    EXPECT_EQ(formulary.vessels().size(), 4U);
}

} // namespace
} // namespace ullage::formulary
