#include "core/formulary/formulary.h"

#include <gtest/gtest.h>

namespace ullage::formulary
{
namespace
{

using namespace chemistry;

DevelopmentFigure figure(const std::string& id, std::optional<double> index = {})
{
    DevelopmentFigure made;
    made.id = id;
    made.film = "Breakwater 100";
    made.developer = "mq";
    made.dilution = "1+1";
    made.exposureIndex = index;
    made.times = {{Celsius(20), Seconds(600)}, {Celsius(24), Seconds(450)}};
    made.source = "the film's box";
    return made;
}

TimeQuery query(std::optional<double> index = {})
{
    return {"Breakwater 100", {"mq"}, "1+1", index};
}

std::string refusedField(DevelopmentFigure wrong)
{
    const auto fine = check(wrong);
    return fine ? "accepted" : fine.error().field;
}

TEST(DevelopmentFigure, IsCheckedFieldByField)
{
    EXPECT_EQ(refusedField(figure("a")), "accepted");
    auto wrong = figure("");
    EXPECT_EQ(refusedField(wrong), "id");
    wrong = figure("a");
    wrong.film.clear();
    EXPECT_EQ(refusedField(wrong), "film");
    wrong = figure("a");
    wrong.developer.clear();
    EXPECT_EQ(refusedField(wrong), "developer");
    wrong = figure("a", 0.0);
    EXPECT_EQ(refusedField(wrong), "ei");
    wrong = figure("a");
    wrong.times.clear();
    EXPECT_EQ(refusedField(wrong), "times");
    wrong.times.assign(21, {Celsius(20), Seconds(600)});
    EXPECT_EQ(refusedField(wrong), "times");
    wrong.times = {{Celsius(20), Seconds(5)}};
    EXPECT_EQ(refusedField(wrong), "times.seconds");
    wrong.times = {{Celsius(61), Seconds(600)}};
    EXPECT_EQ(refusedField(wrong), "times.temperature_c");
    wrong.times = {{Celsius(20), Seconds(600)}, {Celsius(20), Seconds(500)}};
    EXPECT_EQ(refusedField(wrong), "base");
}

TEST(DevelopmentFigure, WithdrawnNeedsNoTimesButSomethingToWithdraw)
{
    auto gone = figure("b");
    gone.times.clear();
    gone.withdrawn = true;
    EXPECT_EQ(refusedField(gone), "replaces");
    gone.replaces = "a";
    EXPECT_EQ(refusedField(gone), "accepted");
}

TEST(Notebook, AnswersOnlyWithWhatWasEnteredForJustThat)
{
    Notebook book;
    book.add(figure("a"));
    ASSERT_TRUE(book.find(query()));
    EXPECT_EQ(book.find(query())->id, "a");
    auto other = query();
    other.film = "breakwater  100 ";
    other.dilution = "1 + 1";
    EXPECT_TRUE(book.find(other));
    other.dilution = "stock";
    EXPECT_FALSE(book.find(other));
    other = query();
    other.developers = {"pq"};
    EXPECT_FALSE(book.find(other));
    other = query();
    other.film = "Breakwater 400";
    EXPECT_FALSE(book.find(other));
}

TEST(Notebook, TakesTheExposureIndexAskedForElseOneThatNamesNone)
{
    Notebook book;
    book.add(figure("at-100", 100));
    EXPECT_EQ(book.find(query(100))->id, "at-100");
    EXPECT_FALSE(book.find(query(200)));
    EXPECT_EQ(book.find(query())->id, "at-100"); // the only one there is
    book.add(figure("at-400", 400));
    EXPECT_FALSE(book.find(query())); // which of the two was not said
    book.add(figure("any"));
    EXPECT_EQ(book.find(query())->id, "any");
    EXPECT_EQ(book.find(query(200))->id, "any");
    EXPECT_EQ(book.find(query(400))->id, "at-400");
}

TEST(Notebook, ReplacedAndWithdrawnFiguresAreGone)
{
    Notebook book;
    book.add(figure("a"));
    auto better = figure("b");
    better.replaces = "a";
    book.add(better);
    EXPECT_EQ(book.current().size(), 1u);
    EXPECT_EQ(book.find(query())->id, "b");
    EXPECT_TRUE(book.figure("a")); // still readable by its id
    auto gone = figure("c");
    gone.replaces = "b";
    gone.withdrawn = true;
    book.add(gone);
    EXPECT_TRUE(book.current().empty());
    EXPECT_FALSE(book.find(query()));
    EXPECT_EQ(book.all().size(), 3u);
}

TEST(Formulary, AFamilyIsEverySolutionLinkedByReplacing)
{
    Formulary formulary;
    const auto add = [&](const char* id, const char* replaces) {
        Solution solution;
        solution.id = id;
        solution.name = id;
        solution.replaces = replaces;
        formulary.add(solution);
    };
    add("old", "");
    add("copy", "");
    add("newer", "old");
    add("newest", "newer");
    const std::vector<std::string> fromMiddle{"newer", "old", "newest"};
    EXPECT_EQ(formulary.family("newer"), fromMiddle);
    EXPECT_EQ(formulary.family("newest").size(), 3u);
    EXPECT_EQ(formulary.family("copy"), std::vector<std::string>{"copy"});
}

} // namespace
} // namespace ullage::formulary
