#include "core/formulary/leaflet_time.h"

#include <gtest/gtest.h>

namespace ullage::formulary
{
namespace
{

using chemistry::Celsius;
using chemistry::Seconds;

Formulary book()
{
    Formulary formulary;
    Solution old{.id = "mq", .name = "MQ borax developer", .role = Role::Developer};
    formulary.add(old);
    Solution later = old;
    later.id = "mq-2";
    later.replaces = "mq";
    formulary.add(later);
    formulary.add(Solution{.id = "ready", .name = "Developer 1 + 9", .role = Role::Developer});
    const auto enter = [&](const char* id, const char* film, const char* developer,
                           const char* dilution, std::optional<double> index, double seconds) {
        formulary.add(DevelopmentFigure{.id = id,
                                        .film = film,
                                        .developer = developer,
                                        .dilution = dilution,
                                        .exposureIndex = index,
                                        .times = {{Celsius(20), Seconds(seconds)}}});
    };
    enter("any", "Quay 400", "mq", "stock", {}, 480);
    enter("pushed", "Quay 400", "mq", "stock", 800, 620);
    enter("diluted", "Quay 400", "mq", "1+1", 400, 700);
    enter("harbour", "Harbour", "mq", "", {}, 480);
    enter("lantern", "Lantern", "mq", "stock", {}, 900);
    enter("nine", "Quay 400", "ready", "1+9", {}, 300);
    return formulary;
}

std::string exact(std::vector<FilmWanted> films, const char* developer, double parts)
{
    const auto found = exactTime(book(), {std::move(films), developer, parts});
    return found ? found->id : "none";
}

TEST(LeafletTime, BelongsToFilmDeveloperDilutionAndExposureIndex)
{
    EXPECT_EQ(exact({{"quay400", {}}}, "mq", 0), "any");
    EXPECT_EQ(exact({{"Quay 400", 800}}, "mq", 0), "pushed");
    EXPECT_EQ(exact({{"Quay 400", 200}}, "mq", 0), "any") << "it names none";
    EXPECT_EQ(exact({{"Quay 400", 400}}, "mq", 1), "diluted");
    EXPECT_EQ(exact({{"Quay 400", {}}}, "mq", 1), "none") << "it is for 400";
    EXPECT_EQ(exact({{"Quay 400", {}}}, "mq", 2), "none");
    EXPECT_EQ(exact({{"Quay 400", {}}}, "mq-2", 0), "any") << "a newer version of the developer";
    EXPECT_EQ(exact({{"Quay 400", {}}}, "ready", 0), "nine") << "it stands there diluted";
    EXPECT_EQ(exact({{"Quay 400", {}}}, "ready", 1), "none");
    EXPECT_EQ(exact({{"Pier", {}}}, "mq", 0), "none");
    EXPECT_EQ(exact({{"", {}}}, "mq", 0), "none");
}

TEST(LeafletTime, OfSeveralFilmsHoldsOnlyWhereItIsOne)
{
    EXPECT_EQ(exact({{"Quay 400", {}}, {"", {}}}, "mq", 0), "any");
    EXPECT_NE(exact({{"Quay 400", {}}, {"Harbour", {}}}, "mq", 0), "none") << "both 8:00";
    EXPECT_EQ(exact({{"Quay 400", {}}, {"Lantern", {}}}, "mq", 0), "none");
    EXPECT_EQ(exact({{"Quay 400", {}}, {"Pier", {}}}, "mq", 0), "none");
}

TEST(LeafletTime, StandsWhileNothingThatWasSaidChanges)
{
    const TimeFor unnamed{{{"", {}}}, "mq", 0};
    const TimeFor quay{{{"Quay 400", {}}}, "mq", 0};
    const TimeFor quay400{{{"quay 400", 400}}, "mq", 0};
    EXPECT_TRUE(stillFor(unnamed, quay));
    EXPECT_TRUE(stillFor(quay, quay400));
    EXPECT_FALSE(stillFor(quay, unnamed));
    EXPECT_FALSE(stillFor(quay400, quay));
    EXPECT_FALSE(stillFor(quay400, {{{"Quay 400", 800}}, "mq", 0}));
    EXPECT_FALSE(stillFor(quay, {{{"Harbour", {}}}, "mq", 0}));
    EXPECT_FALSE(stillFor(quay, {{{"Quay 400", {}}}, "mq", 1}));
    EXPECT_FALSE(stillFor(quay, {{{"Quay 400", {}}}, "other", 0}));
    EXPECT_TRUE(stillFor({{}, "", 0}, quay));
}

TEST(LeafletTime, ReadsDilutions)
{
    EXPECT_EQ(partsOfDilution("Stock"), 0);
    EXPECT_EQ(partsOfDilution(""), 0);
    EXPECT_EQ(partsOfDilution(" 1 + 25 "), 25);
    EXPECT_EQ(partsOfDilution("1+1.5"), 1.5);
    EXPECT_FALSE(partsOfDilution("half"));
    EXPECT_FALSE(partsOfDilution("1+x"));
    EXPECT_FALSE(partsOfDilution("1+-1"));
}

TEST(LeafletTime, KnowsWhichDevelopersAndFilmsHaveTimes)
{
    EXPECT_EQ(developersWithTimes(book(), {{"Quay 400", {}}}),
              (std::vector<std::string>{"mq", "ready"}));
    EXPECT_TRUE(developersWithTimes(book(), {{"", {}}, {"Pier", {}}}).empty());
    EXPECT_EQ(filmsWithTimes(book()), (std::vector<std::string>{"Harbour", "Lantern", "Quay 400"}));
}

} // namespace
} // namespace ullage::formulary
