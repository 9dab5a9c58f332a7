// Films of one tank that want different times: said, by how much, and which can go together.
#include "core/ledger/film_times.h"

#include "run_kit.h"

namespace ullage::ledger
{
namespace
{

using chemistry::Celsius;
using chemistry::Seconds;
using formulary::FilmWanted;
using Pairs = std::vector<chemistry::TimeAtTemperature>;

class FilmTimes : public testing::Test
{
protected:
    FilmTimes()
    {
        dev = shelf.mix("mq", "b1", "Dev 1");
        shelf.mix("fix", "b2", "Fix 1");
        figure("Quay 400", 400, "stock", {{Celsius(20), Seconds(585)}});
        figure("Lantern 100", {}, "stock", {{Celsius(20), Seconds(450)}});
        // At 20 °C as Quay, in warm developer not.
        figure("Dunes", 400, "stock", {{Celsius(20), Seconds(585)}, {Celsius(24), Seconds(300)}});
        figure("Quay 400", 400, "1+1", {{Celsius(20), Seconds(800)}});
    }
    void figure(const std::string& film, std::optional<double> index, const std::string& dilution,
                const Pairs& times)
    {
        formulary::DevelopmentFigure made;
        made.id = "t" + std::to_string(++figures);
        made.film = film;
        made.developer = "mq";
        made.dilution = dilution;
        made.exposureIndex = index;
        made.times = times;
        EXPECT_TRUE(shelf.book->add(made));
    }
    NextLoad next(const std::vector<FilmWanted>& films, double temperature = 20, double parts = 0)
    {
        LoadWishes wanted{.load = {{{"135-36", 2}}, {}},
                          .tank = Tank{"tank", chemistry::Millilitres(600), {}},
                          .temperature = Celsius(temperature),
                          .notebook = &shelf.book->formulary(),
                          .films = films,
                          .parts = parts};
        wanted.sheet = usualTemplates().front();
        return nextLoad(wanted, shelf.judged());
    }

    RunShelf shelf;
    std::string dev;
    int figures = 0;
};

TEST_F(FilmTimes, SaysWhatEachWantsAndHowFarTheyAreApart)
{
    shelf.work(dev, 4);
    const NextLoad so = next({{"Quay 400", 400}, {"lantern 100", 80}, {"", {}}});
    ASSERT_EQ(so.filmTimes.size(), 2u) << "a film without a name wants nothing that is known";
    EXPECT_NEAR(so.filmTimes[0].time->value(), 585 * 1.4, 1e-9) << "with the bottle's own wear";
    EXPECT_NEAR(so.filmTimes[1].time->value(), 450 * 1.4, 1e-9);
    ASSERT_TRUE(so.apart);
    EXPECT_NEAR(so.apart->shortest.value(), 630, 1e-9);
    EXPECT_NEAR(so.apart->longest.value(), 819, 1e-9);
    EXPECT_NEAR(so.apart->by().value(), 189, 1e-9);
    EXPECT_NEAR(so.apart->share(), 0.3, 1e-12);
    EXPECT_FALSE(so.sheet) << "no time was chosen: none is taken by itself";
}

TEST_F(FilmTimes, OneTimeIsNoDifference)
{
    EXPECT_FALSE(next({{"Quay 400", 400}, {"Quay 400", 400}}).apart);
    EXPECT_EQ(next({{"Quay 400", 400}, {"quay400", 400}}).filmTimes.size(), 1u);
    const NextLoad alike = next({{"Quay 400", 400}, {"Dunes", 400}});
    EXPECT_EQ(alike.filmTimes.size(), 2u);
    EXPECT_FALSE(alike.apart) << "at 20 °C the two are one";
    EXPECT_TRUE(next({{"Quay 400", 400}, {"Dunes", 400}}, 24).apart) << "at 24 °C they are not";
    EXPECT_FALSE(next({{"Quay 400", 400}}).apart);
    EXPECT_FALSE(next({}).apart);
}

TEST_F(FilmTimes, WhatIsNotKnownIsNotCompared)
{
    // Another exposure index, another dilution: the notebook has nothing for just that.
    const NextLoad pushed = next({{"Quay 400", 800}, {"Lantern 100", {}}});
    ASSERT_EQ(pushed.filmTimes.size(), 2u);
    EXPECT_FALSE(pushed.filmTimes[0].figure);
    EXPECT_FALSE(pushed.filmTimes[0].time);
    EXPECT_FALSE(pushed.apart);
    EXPECT_FALSE(next({{"Quay 400", 400}, {"Lantern 100", {}}}, 20, 1).apart);
    // No reading, no developer, no notebook.
    LoadWishes wanted{.load = {{{"135-36", 1}}, {}},
                      .notebook = &shelf.book->formulary(),
                      .films = {{"Quay 400", 400}, {"Lantern 100", {}}}};
    wanted.sheet = usualTemplates().front();
    EXPECT_TRUE(nextLoad(wanted, shelf.judged()).filmTimes.empty());
    wanted.temperature = Celsius(20);
    EXPECT_TRUE(nextLoad(wanted, {}).filmTimes.empty());
    EXPECT_TRUE(nextLoad(wanted, shelf.judged()).apart);
    wanted.notebook = nullptr;
    EXPECT_FALSE(nextLoad(wanted, shelf.judged()).apart);
}

TEST_F(FilmTimes, ALoadIsCutIntoRunsOfOneTime)
{
    const std::vector<RunFilm> films{{"135-36", 2, "Quay 400", 400, ""},
                                     {"120", 1, "Lantern 100", {}, ""},
                                     {"135-36", 1, "Dunes", 400, "roll 3"},
                                     {"135-36", 1, "", {}, ""},
                                     {"135-36", 1, "Nowhere", {}, ""}};
    std::vector<FilmWanted> wanted;
    for (const RunFilm& film : films) {
        wanted.push_back({film.name, film.exposureIndex});
    }
    const auto so = next(wanted);
    EXPECT_EQ(byTime(so.filmTimes), (std::vector<std::vector<std::size_t>>{{0, 2}, {1}, {3}}));
    const auto runs = splitByTime(films, so.filmTimes);
    ASSERT_EQ(runs.size(), 3u);
    EXPECT_EQ(runs[0], (std::vector<RunFilm>{films[0], films[2]}));
    EXPECT_EQ(runs[1], (std::vector<RunFilm>{films[1]}));
    EXPECT_EQ(runs[2], (std::vector<RunFilm>{films[3], films[4]})) << "what is not known";
    EXPECT_EQ(splitByTime({films[0]}, next({wanted[0]}).filmTimes).size(), 1u);
    EXPECT_TRUE(splitByTime({}, {}).empty());
}

TEST_F(FilmTimes, EveryPieceHasARecord)
{
    const auto records =
        recordsOf({{"135-36", 2, "Quay 400", 400, "roll 3"}, {"120", 1, "", {}, ""}});
    ASSERT_EQ(records.size(), 3u);
    EXPECT_EQ(records[1].format, "135-36");
    EXPECT_EQ(records[1].name, "Quay 400");
    EXPECT_EQ(records[1].exposureIndex, 400);
    EXPECT_EQ(records[1].notes, "roll 3");
    EXPECT_EQ(records[2].format, "120");
    EXPECT_TRUE(records[2].name.empty());
}

} // namespace
} // namespace ullage::ledger
