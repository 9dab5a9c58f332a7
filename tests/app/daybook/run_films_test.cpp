// Films of a run as rows of the form that corrects it, and as the lines that come of it.
#include "app/daybook/run_films.h"

#include <gtest/gtest.h>

namespace ullage::app
{

// Five alike are one row; one that is marked has a row of its own.
TEST(RunFilms, AreRowsOfThoseAlikeAndComeToLinesOfWhatChanged)
{
    const auto film = [](const std::string& id, const std::string& name, bool marked = false) {
        ledger::FilmTrace trace;
        trace.film = {.id = id, .run = "r", .format = "120", .name = name, .notes = {}};
        if (marked)
            trace.marks = {{"m", id, {}, ledger::FilmFault::Thin, {}, {}, {}}};
        return trace;
    };
    const ledger::Load load{{{"120", 6}, {"135-36", 2}}, {}};
    const auto rows = runFilmRows(load, {film("a", ""), film("b", ""), film("c", "", true),
                                         film("d", "Mole"), film("e", "")});
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_EQ(rows[0].film.count, 4) << "three with a line, and one that never had one";
    EXPECT_EQ(rows[0].lines.size(), 3U);
    EXPECT_TRUE(rows[1].marked);
    EXPECT_EQ(rows[2].film.name, "Mole");
    EXPECT_EQ(rows[3].film.format, "135-36");
    RunFilmsNow now{filmsOf(rows), filmsOf(rows), {0, 1, 2, 3}};
    EXPECT_TRUE(runFilmLines(rows, now, "r").empty());
    EXPECT_EQ(markedAndGone(rows, now), nullptr);
    now.films[0].count = 2; // "e" goes
    now.films[3].count = 3; // one more, without a name as the others
    const auto lines = runFilmLines(rows, now, "r");
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].format, "135-36");
    EXPECT_TRUE(lines[0].replaces.empty());
    EXPECT_EQ(lines[1].replaces, "e");
    EXPECT_TRUE(lines[1].withdrawn);
    now.films.erase(now.films.begin() + 1);
    now.origins.erase(now.origins.begin() + 1);
    ASSERT_NE(markedAndGone(rows, now), nullptr);
    EXPECT_EQ(markedAndGone(rows, now)->id, "c");
}

} // namespace ullage::app
