// Marks on films: entering, taking back, undo and redo; and a test that is asked for.
#include "core/ledger/coded_notes.h"
#include "core/ledger/film_mark.h"
#include "tests/core/ledger/book_kit.h"

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

class FilmMarkTest : public BookTest
{
protected:
    std::string dev = mix();
    std::vector<std::string> films;

    FilmMarkTest()
    {
        FilmRun request;
        request.load = rolls(2);
        request.baths.push_back({dev, {}, {}, false, {}});
        request.films = {{"", "", "120", "first", {}, ""}, {"", "", "120", "second", {}, ""}};
        const auto run = book->process(request, History::at(1));
        EXPECT_TRUE(run);
        films = {"id" + std::to_string(ids - 1), "id" + std::to_string(ids)};
        EXPECT_TRUE(store.film(films[0]) && store.film(films[0])->has_value());
    }

    std::vector<FilmMark> standing(std::size_t film) const
    {
        return standingMarks(*const_cast<MemoryStore&>(store).marksOf(films[film]));
    }
};

TEST_F(FilmMarkTest, MarksSeveralFilmsAtOnceAndKeepsWhoAndWhen)
{
    book->setPerson("Ada");
    ASSERT_TRUE(book->markFilms(films, FilmFault::Thin, "by half"));
    for (std::size_t film : {0u, 1u}) {
        ASSERT_EQ(standing(film).size(), 1u);
        const FilmMark mark = standing(film).front();
        EXPECT_EQ(mark.fault, FilmFault::Thin);
        EXPECT_EQ(mark.note, "by half");
        EXPECT_EQ(mark.by, "Ada");
        EXPECT_EQ(mark.at, now);
    }
    ASSERT_TRUE(book->markFilms({films[0]}, FilmFault::Uneven, ""));
    EXPECT_EQ(standing(0).size(), 2u);
    EXPECT_EQ(wear(dev), 2) << "a mark does nothing to a bottle";
}

TEST_F(FilmMarkTest, IsTakenBackAndBroughtBackButNotTwice)
{
    ASSERT_TRUE(book->markFilms({films[0]}, FilmFault::Dense, ""));
    const FilmMark mark = standing(0).front();
    ASSERT_TRUE(book->takeMarksBack({mark}, "the light table was dim"));
    EXPECT_TRUE(standing(0).empty());
    expectRefused([&] { return book->takeMarksBack({mark}, ""); }, ErrorCode::AlreadyVoided,
                  "takes_back");
    const FilmMark taking = store.marksOf(films[0])->back();
    EXPECT_EQ(taking.note, "the light table was dim");
    ASSERT_TRUE(book->takeMarksBack({taking}, ""));
    EXPECT_EQ(standing(0).size(), 1u);
    ASSERT_TRUE(book->takeMarksBack({mark}, "")) << "it stands again, so it can be";
    EXPECT_TRUE(standing(0).empty());
}

TEST_F(FilmMarkTest, UndoAndRedoGoThereAndBackAcrossARestart)
{
    ASSERT_TRUE(book->markFilms(films, FilmFault::Stained, ""));
    ASSERT_TRUE(book->takeMarksBack({standing(0).front()}, "a water spot"));
    restart();
    EXPECT_EQ(book->undoable()->what, "unmark-film");
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(standing(0).size(), 1u);
    ASSERT_TRUE(book->undo());
    EXPECT_TRUE(standing(0).empty());
    EXPECT_TRUE(standing(1).empty());
    restart();
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(standing(0).size(), 1u);
    EXPECT_EQ(standing(1).size(), 1u);
    ASSERT_TRUE(book->redo());
    EXPECT_TRUE(standing(0).empty());
    EXPECT_EQ(standing(1).size(), 1u);
}

TEST_F(FilmMarkTest, RefusesWhatIsNotThere)
{
    expectRefused([&] { return book->markFilms({}, FilmFault::Thin, ""); }, ErrorCode::Missing,
                  "film");
    expectRefused(
        [&] {
            return book->markFilms({films[0], "none"}, FilmFault::Thin, "");
        },
        ErrorCode::UnknownId, "film");
    ASSERT_TRUE(book->markFilms({films[0]}, FilmFault::Thin, ""));
    FilmMark other = standing(0).front();
    other.film = films[1];
    expectRefused([&] { return book->takeMarksBack({other}, ""); }, ErrorCode::UnknownId,
                  "takes_back");
    expectRefused([&] { return book->takeMarksBack({}, ""); }, ErrorCode::Missing, "takes_back");
}

TEST_F(FilmMarkTest, EveryFailureOfTheStoreRollsBack)
{
    ASSERT_TRUE(book->markFilms({films[1]}, FilmFault::Thin, ""));
    const FilmMark mark = standing(1).front();
    const std::vector<std::function<Result<void>()>> requests{
        [&] { return book->markFilms(films, FilmFault::Thin, ""); },
        [&] { return book->undo(); },
        [&] { return book->takeMarksBack({mark}, ""); },
    };
    for (const auto& request : requests) {
        int calls = 0;
        for (;; ++calls) {
            ASSERT_LT(calls, 100);
            restart();
            const auto before = store.contents();
            store.failAfter(calls);
            const auto done = request();
            const bool failed = store.failed();
            store.forgetFailure();
            if (!failed) {
                EXPECT_TRUE(done);
                break;
            }
            ASSERT_FALSE(done);
            EXPECT_EQ(store.contents(), before);
            EXPECT_FALSE(store.inTransaction());
        }
        EXPECT_GT(calls, 3);
    }
}

TEST(FilmMarks, AreCheckedField)
{
    const FilmMark good{"m", "f", startOfTests(), FilmFault::Thin, "", "", ""};
    EXPECT_TRUE(check(good));
    FilmMark bad = good;
    bad.id.clear();
    EXPECT_EQ(check(bad).error().field, "id");
    bad = good;
    bad.film.clear();
    EXPECT_EQ(check(bad).error().field, "film");
    bad = good;
    bad.fault.reset();
    EXPECT_EQ(check(bad).error().field, "mark");
    bad.takesBack = "m0";
    EXPECT_TRUE(check(bad));
    bad.fault = FilmFault::Dense;
    EXPECT_EQ(check(bad).error().field, "takes_back");
    for (const auto name : kFilmFaultCodes) {
        EXPECT_EQ(code(*filmFaultFromCode(name)), name);
    }
    EXPECT_FALSE(filmFaultFromCode("odd"));
}

TEST(TestAskedNotes, AreReadBackAndOthersLeftAlone)
{
    const auto asked = testAskedFromNote("test-asked not-clear film=a film=b");
    ASSERT_TRUE(asked);
    EXPECT_EQ(asked->mark, FilmFault::NotClear);
    EXPECT_EQ(asked->film, "a film=b");
    EXPECT_TRUE(asked->asNote);
    for (const char* other : {"test-asked", "test-asked odd film=x",
                              "test-asked thin film=", "test-asked film=x", "I asked for a test"}) {
        EXPECT_FALSE(testAskedFromNote(other)) << other;
    }
}

TEST(RunTimesNotes, KeepTemperatureAndTankIfTheyAreKnown)
{
    const auto bare = timesFromNote("run-times develop 600/610 run=r");
    ASSERT_TRUE(bare);
    EXPECT_FALSE(bare->temperature);
    EXPECT_EQ(bare->tank, "");
    const auto read = timesFromNote("run-times develop 600/610 temperature=20.5 "
                                    "tank=Two%20reels,%2050%20%25%20run=x run=r");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->temperature, Celsius(20.5));
    EXPECT_EQ(read->tank, "Two reels, 50 % run=x");
    EXPECT_EQ(read->run, "r");
    EXPECT_EQ(read->steps, (std::vector{StepDone{"develop", Seconds(600), Seconds(610)}}));
    EXPECT_EQ(timesFromNote("run-times fix 1/1 temperature=-0.4 run=r")->temperature,
              Celsius(-0.4));
    EXPECT_FALSE(timesFromNote("run-times temperature=warm run=r"));
}

TEST(TestAsked, IsToBeTestedFirstUntilATestIsMade)
{
    const auto reasons = [](const History& history, double days) {
        std::vector<ReasonCode> codes;
        for (const Reason& reason : assess(history.batch(days)).reasons) {
            codes.push_back(reason.code);
        }
        return codes;
    };
    const std::vector<ReasonCode> asked{ReasonCode::TestAsked};
    History history;
    history.mix("dev", 1000);
    history.run(1, 1);
    EXPECT_TRUE(reasons(history, 2).empty());
    history.add(3, TestAsked{FilmFault::Thin, "f"});
    EXPECT_EQ(reasons(history, 2), std::vector<ReasonCode>{}) << "not yet asked then";
    EXPECT_EQ(reasons(history, 4), asked);
    EXPECT_EQ(assess(history.batch(4)).verdict, Verdict::TestFirst);
    EXPECT_NEAR(assess(history.batch(4)).reasons.front().number("days_since"), 1, 1e-9);
    history.add(5, Noted{"another note"});
    history.add(5, Looked{{}, "colour"});
    EXPECT_EQ(reasons(history, 6), asked) << "a look without a verdict is no test";
    history.add(6, Looked{true, "leader test"});
    EXPECT_TRUE(reasons(history, 7).empty());
    history.add(8, TestAsked{FilmFault::Thin, "f"});
    EXPECT_EQ(reasons(history, 9), asked) << "a test of before does not answer";
    history.add(9, StripTested{{}, 1.05, {}});
    EXPECT_TRUE(reasons(history, 10).empty());

    History fixer;
    fixer.mix("fixer", 1000);
    fixer.add(1, meaningOf({"test-asked not-clear film=f"}));
    EXPECT_EQ(reasons(fixer, 2), asked);
    fixer.add(3, ClearingTested{Seconds(40), Celsius(20)});
    EXPECT_TRUE(reasons(fixer, 4).empty());
}

} // namespace
} // namespace ullage::ledger
