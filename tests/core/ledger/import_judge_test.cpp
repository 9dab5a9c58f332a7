#include "core/ledger/import_judge.h"
#include "tests/core/ledger/ledger_kit.h"

#include <random>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;
using Code = ErrorCode;

// A bottle of 1000 mL as it stands here, and what somebody else says of it.
struct TwoBooks : History {
    std::size_t had = 0;

    TwoBooks() { mix("dev", 1000); }
    void brought() { had = entered.size(); }
    [[nodiscard]] BatchJudgement judged() const { return judgeBrought(entered, had, formulary); }
    std::string draw(double days, double volume)
    {
        return add(days, Drawn{Millilitres(volume), {}});
    }
};

TEST(ImportJudge, whatGoesTogetherHasNoMisfitAndAState)
{
    TwoBooks books;
    books.draw(5, 300);
    books.brought();
    books.draw(3, 700);
    const auto judgement = books.judged();
    EXPECT_TRUE(judgement.misfits.empty());
    ASSERT_TRUE(judgement.state);
    EXPECT_EQ(judgement.state->end, BatchEnd::UsedUp);
    EXPECT_EQ(judgement.state->endedAt, History::at(5));
}

TEST(ImportJudge, blamesWhatWasBroughtWhereOursNoLongerFits)
{
    TwoBooks books;
    books.draw(5, 900); // place 1
    books.brought();
    books.draw(1, 20);
    books.draw(3, 200); // place 3
    books.add(4, Noted{"nothing to do with it"});
    const auto judgement = books.judged();
    ASSERT_EQ(judgement.misfits.size(), 1U);
    const Misfit& misfit = judgement.misfits.front();
    EXPECT_EQ(misfit.event, 3U);
    EXPECT_EQ(misfit.against, 1U);
    EXPECT_EQ(misfit.error.code, Code::NotEnough);
    EXPECT_EQ(misfit.error.number, 900);
    EXPECT_EQ(misfit.error.high, 780);
}

TEST(ImportJudge, namesOursThatStandsInTheWay)
{
    TwoBooks books;
    books.draw(2, 10);
    books.add(5, Discarded{"drum"}); // place 2
    books.brought();
    books.draw(7, 20);
    books.add(8, Discarded{"sink"});
    books.draw(1, 20);
    const auto judgement = books.judged();
    ASSERT_EQ(judgement.misfits.size(), 2U);
    for (const Misfit& misfit : judgement.misfits) {
        EXPECT_EQ(misfit.error.code, Code::AfterEnd);
        EXPECT_EQ(misfit.against, 2U);
    }
    EXPECT_EQ(judgement.misfits[0].event, 3U);
    EXPECT_EQ(judgement.misfits[1].event, 4U);
}

TEST(ImportJudge, tellsEveryMisfitAndNoneThatOnlyFollowsFromAnother)
{
    TwoBooks books;
    books.brought();
    books.draw(1, 600);
    books.draw(2, 600);                                                   // place 2: too much
    books.draw(3, 400);                                                   // fits without it
    books.add(0, Mixed{"dev", "glass", Millilitres(500), {}, {}, false}); // place 4
    books.add(-1, Opened{});                                              // place 5
    const auto judgement = books.judged();
    std::set<std::size_t> places;
    for (const Misfit& misfit : judgement.misfits) {
        places.insert(misfit.event);
    }
    EXPECT_EQ(places, (std::set<std::size_t>{2, 4, 5}));
}

TEST(ImportJudge, aMixingThatCannotBeStandsForWhatWaitsForIt)
{
    History history;
    history.add(0, Mixed{"none", "glass", Millilitres(500), {}, {}, false});
    history.run(1, 2);
    history.run(2, 2);
    const auto judgement = judgeBrought(history.entered, 0, history.formulary);
    ASSERT_EQ(judgement.misfits.size(), 1U);
    EXPECT_EQ(judgement.misfits[0].event, 0U);
    EXPECT_EQ(judgement.misfits[0].error.field, "solution");
    EXPECT_EQ(judgement.misfits[0].waiting, 2);
    EXPECT_FALSE(judgement.state);

    const std::vector<Event> headless(history.entered.begin() + 1, history.entered.end());
    const auto never = judgeBrought(headless, 0, history.formulary);
    ASSERT_EQ(never.misfits.size(), 1U);
    EXPECT_EQ(never.misfits[0].error.code, Code::UnknownId);
    EXPECT_EQ(never.misfits[0].waiting, 1);
}

TEST(ImportJudge, bothMayHaveTakenTheSameBack)
{
    TwoBooks books;
    const auto slip = books.draw(2, 10);
    books.add(3, Voided{slip, "slip"}); // place 2
    books.brought();
    books.add(3, Voided{slip, "a slip of the pen"});
    const auto judgement = books.judged();
    ASSERT_EQ(judgement.misfits.size(), 1U);
    EXPECT_EQ(judgement.misfits[0].error.code, Code::AlreadyVoided);
    EXPECT_EQ(judgement.misfits[0].event, 3U);
    EXPECT_EQ(judgement.misfits[0].against, 2U);
}

TEST(ImportJudge, theirTakingBackIsAtFaultWhereOursRestsOnIt)
{
    TwoBooks books;
    books.draw(1, 500);
    const auto filled = books.add(2, ToppedUp{Millilitres(500), {}});
    books.draw(3, 900); // place 3
    books.brought();
    books.draw(2.5, 10);
    books.add(9, Voided{filled, "never happened"}); // place 5
    const auto judgement = books.judged();
    ASSERT_EQ(judgement.misfits.size(), 1U);
    EXPECT_EQ(judgement.misfits[0].event, 5U);
    EXPECT_EQ(judgement.misfits[0].against, 3U);
    EXPECT_EQ(judgement.misfits[0].error.code, Code::CannotVoid);
}

// Whatever is thrown together: without all misfits the rest is possible, and the state is the one
// that the whole fold gives.
TEST(ImportJudge, withoutTheMisfitsTheRestIsPossible)
{
    std::mt19937 random(20'261'127); // NOLINT: the same histories every time
    const auto pick = [&random](int below) {
        return static_cast<int>(random() % static_cast<unsigned>(below));
    };
    int withMisfits = 0;
    for (int round = 0; round < 2000; ++round) {
        SCOPED_TRACE(round);
        TwoBooks books;
        const auto some = [&](int most) {
            for (int i = pick(most); i > 0; --i) {
                const double day = pick(20);
                const auto& any = books.entered[std::size_t(pick(int(books.entered.size())))].id;
                switch (pick(12)) {
                case 0:
                    books.add(day, Discarded{});
                    break;
                case 1:
                    books.add(day, Voided{any, "x"});
                    break;
                case 2:
                    books.add(day, Moved{"small"});
                    break;
                case 3:
                case 4:
                    books.add(day, ToppedUp{Millilitres(pick(500) + 1), {}});
                    break;
                case 5:
                    books.run(day, 1, pick(600) + 1.0, pick(100));
                    break;
                default:
                    books.draw(day, pick(400) + 1);
                    break;
                }
            }
        };
        some(5);
        books.brought();
        // What is ours goes together by itself.
        if (!judgeBrought(books.entered, 0, books.formulary).misfits.empty()) {
            continue;
        }
        some(10);
        auto judgement = books.judged();
        withMisfits += judgement.misfits.empty() ? 0 : 1;
        std::set<std::size_t> out;
        for (const Misfit& misfit : judgement.misfits) {
            EXPECT_GE(misfit.event, books.had);
            EXPECT_TRUE(out.insert(misfit.event).second);
        }
        std::vector<Event> rest;
        for (std::size_t i = 0; i < books.entered.size(); ++i) {
            if (!out.contains(i)) {
                rest.push_back(books.entered[i]);
            }
        }
        const auto again = judgeBrought(rest, books.had, books.formulary);
        EXPECT_TRUE(again.misfits.empty());
        const auto whole = foldUntil(rest, History::at(1000), books.formulary);
        ASSERT_TRUE(whole);
        ASSERT_EQ(whole->has_value(), again.state.has_value());
        if (again.state) {
            EXPECT_EQ(again.state->endedAt, (*whole)->endedAt);
            EXPECT_EQ(again.state->volume.value(), (*whole)->volume.value());
            EXPECT_EQ(again.state->name, (*whole)->name);
        }
    }
    EXPECT_GT(withMisfits, 300);
}

} // namespace
} // namespace ullage::ledger
