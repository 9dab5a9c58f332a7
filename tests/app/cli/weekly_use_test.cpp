// A year of weekly use in the demo's darkroom ends bottles where common practice would. The ranges
// are common practice, no source, unless a publication is named beside them.
#include "app/cli/demo_book.h"

#include "core/chemistry/quantities.h"
#include "core/ledger/verdict.h"
#include "tests/core/store/temp_book.h"

#include <algorithm>
#include <functional>
#include <map>
#include <string>
#include <vector>

using namespace ullage;
using chemistry::Days;
using chemistry::Millilitres;

namespace
{

chemistry::Instant dayOfUse(double day)
{
    using namespace std::chrono;
    return chemistry::addDays(sys_days(year(2026) / 1 / 3) + hours(10), Days(day));
}

// What the demo's darkroom mixes, and into what; none of what happened there.
class WeeklyUse : public ::testing::Test
{
protected:
    void SetUp() override
    {
        const auto journal = app::demoJournal(dayOfUse(330));
        ASSERT_TRUE(journal);
        QByteArray definitions;
        for (const QByteArray& line : journal->split('\n')) {
            for (const char* type : {"book", "solution", "vessel"}) {
                if (line.contains(QByteArray("\"type\":\"") + type + '"')) {
                    definitions += line + '\n';
                }
            }
        }
        ASSERT_TRUE(m_book.import(definitions));
    }

    const formulary::Formulary& formulary() { return m_book.book->formulary(); }

private:
    store::testing::TempBook m_book;
};

// One bottle, mixed on the first day.
class WeeklyBottle
{
public:
    WeeklyBottle(const formulary::Formulary& formulary, const std::string& solution,
                 const std::string& vessel, double day = 0)
        : m_formulary(formulary)
    {
        happen(day, ledger::Mixed{solution, vessel, Millilitres(1000)});
    }

    void happen(double day, ledger::Happening what)
    {
        m_events.push_back(
            {"e" + std::to_string(m_events.size()), "b", dayOfUse(day), std::move(what), {}});
    }
    void load(double day, double films, double lost, bool second = false)
    {
        happen(
            day,
            ledger::Processed{
                {{{"135-36", films}}, {}}, Millilitres(300), Millilitres(lost), false, {}, second});
    }
    void loadOnce(double day, double films, double used)
    {
        happen(day, ledger::Processed{
                        {{{"135-36", films}}, {}}, Millilitres(used), Millilitres(0), true, {}});
    }
    /// As the run asks for: what has no room is poured off first.
    void replenish(double day, double volume)
    {
        const ledger::Batch now = then(day);
        const double over = now.volume.value() + volume - now.mixedVolume.value();
        if (over > 0) {
            happen(day, ledger::Drawn{Millilitres(over), "make-room"});
        }
        happen(day, ledger::ToppedUp{Millilitres(volume), {}, now.solution->replenisher});
    }

    [[nodiscard]] ledger::Batch then(double day) const
    {
        const auto folded = ledger::foldUntil(m_events, dayOfUse(day), m_formulary);
        EXPECT_TRUE(folded) << folded.error().field;
        return **folded;
    }
    /// Nobody who goes by the verdict puts another film through it: it is to be discarded, or
    /// spent by the model where no test says otherwise.
    [[nodiscard]] bool isOver(double day) const
    {
        const auto judged = ledger::assess(then(day));
        return judged.verdict == ledger::Verdict::Discard ||
               std::any_of(judged.reasons.begin(), judged.reasons.end(), [](const auto& reason) {
                   return reason.code == ledger::ReasonCode::StandingSpent;
               });
    }
    /// Used every so many days, for a year at most; the day on which it was not used any more.
    double useEvery(double days, const std::function<void(double day)>& use)
    {
        double day = 0;
        for (; day < 365 && !isOver(day); day += days) {
            use(day);
        }
        return day;
    }
    [[nodiscard]] double films(double day) const { return then(day).filmsDone.value(); }

private:
    const formulary::Formulary& m_formulary;
    std::vector<ledger::Event> m_events;
};

} // namespace

// 10 to 15 films a litre or six months, whichever comes first.
TEST_F(WeeklyUse, aLitreOfDeveloperStockIsSpentByTenToFifteenFilms)
{
    for (const double films : {1.0, 2.0}) {
        for (const char* solution : {"starter-mq-borax", "starter-metol-sulfite"}) {
            WeeklyBottle stock(formulary(), solution, "amber-1");
            const double end = stock.useEvery(7, [&](double day) { stock.load(day, films, 12); });
            EXPECT_GE(stock.films(end), 10) << solution;
            EXPECT_LE(stock.films(end), 15) << solution;
        }
    }
}

// Seldom used it ends by time: half full bottles keep two months, full ones six.
TEST_F(WeeklyUse, aLitreOfDeveloperStockUsedOnceAMonthEndsBeforeHalfAYear)
{
    WeeklyBottle stock(formulary(), "starter-mq-borax", "amber-1");
    const double end = stock.useEvery(28, [&](double day) { stock.load(day, 1, 12); });
    EXPECT_LT(stock.films(end), 10);
    EXPECT_GT(end, 4 * 30);
    EXPECT_LE(end, 183);
}

// Poured away after use, a litre is as many films as its volume makes, not ten: used up within two
// months, and when it is used too slowly the half-full bottle ends it.
TEST_F(WeeklyUse, stockThatIsUsedOnceLastsForItsVolume)
{
    WeeklyBottle weekly(formulary(), "harbour-once", "amber-1");
    const auto left = [&](double day) {
        return ledger::assess(weekly.then(day)).filmsLeft.value_or(chemistry::Films(-1)).value();
    };
    EXPECT_NEAR(left(0), 1000.0 / 150, 1e-9);
    const double end = weekly.useEvery(7, [&](double day) {
        const double before = left(day);
        weekly.loadOnce(day, 1, 150);
        EXPECT_NEAR(left(day), before - 1, 1e-9);
    });
    EXPECT_GE(weekly.films(end), 4);
    EXPECT_LE(weekly.films(end), 6);
    EXPECT_LE(end, 61);

    WeeklyBottle monthly(formulary(), "harbour-once", "amber-1");
    const double late = monthly.useEvery(28, [&](double day) { monthly.loadOnce(day, 1, 150); });
    EXPECT_LT(monthly.films(late), 6);
    EXPECT_GE(late, 61);
    EXPECT_LE(late, 183);
}

// Replenished for every film, a developer is kept for a year and longer.
TEST_F(WeeklyUse, aReplenishedDeveloperLivesItsYear)
{
    for (const auto& [solution, volume] :
         {std::pair{"harbour-topped-up", 150.0}, std::pair{"starter-mq-borax-replenished", 60.0}}) {
        WeeklyBottle seasoned(formulary(), solution, "amber-4");
        const double end = seasoned.useEvery(7, [&, replenisher = volume](double day) {
            seasoned.load(day, 2, 12);
            seasoned.replenish(day, replenisher);
        });
        EXPECT_GE(end, 365) << solution;
        EXPECT_GT(seasoned.films(end), 100) << solution;
        EXPECT_LE(seasoned.then(end).wear.value(), 2) << solution;
    }
    // Without its replenisher it is a developer like any other.
    WeeklyBottle forgotten(formulary(), "starter-mq-borax-replenished", "amber-4");
    const double end = forgotten.useEvery(7, [&](double day) { forgotten.load(day, 1, 12); });
    EXPECT_GE(forgotten.films(end), 10);
    EXPECT_LE(forgotten.films(end), 15);
}

// Anchell, The Darkroom Cookbook, 3rd ed., p. 108: 20 films a litre of acid fixer, and working
// strength keeps two months at most.
TEST_F(WeeklyUse, aLitreOfFixerEndsAtTwentyFilmsOrTwoMonths)
{
    WeeklyBottle seldom(formulary(), "starter-acid-fixer", "white-1");
    const double late = seldom.useEvery(7, [&](double day) { seldom.load(day, 1, 12); });
    EXPECT_LT(seldom.films(late), 18);
    EXPECT_GT(late, 59);
    EXPECT_LE(late, 59 + 7);

    for (const double films : {3.0, 5.0}) {
        WeeklyBottle often(formulary(), "starter-acid-fixer", "white-1");
        const double end = often.useEvery(7, [&](double day) { often.load(day, films, 12); });
        EXPECT_GE(often.films(end), 18);
        EXPECT_LE(often.films(end), 22);
        EXPECT_LT(end, 59);
    }
}

// Of two baths the first is over where a single one would be; the second has fixed as many films
// by then, and still takes the first one's place for most of what a fresh one would do.
TEST_F(WeeklyUse, ofTwoFixingBathsTheFirstEndsLikeASingleOne)
{
    const auto fresh = [&](double day) {
        return std::make_unique<WeeklyBottle>(formulary(), "starter-acid-fixer", "white-1", day);
    };
    auto first = fresh(0);
    auto second = fresh(0);
    std::vector<double> served; // films that each went through, in either place
    for (double day = 0; day < 365; day += 7) {
        for (const double at : {day + 0.1, day + 0.2}) {
            if (first->isOver(at)) {
                const auto ended = first->then(at);
                EXPECT_GE(ended.wear.value(), 19) << at;
                EXPECT_LE(ended.wear.value(), 23) << at;
                served.push_back(ended.filmsDone.value());
                EXPECT_LT(second->then(at).wear.value(), 5) << at;
                EXPECT_FALSE(second->isOver(at)) << at;
                first = std::move(second);
                second = fresh(at);
            }
            first->load(at + 0.01, 2, 10);
            second->load(at + 0.02, 2, 10, true);
        }
    }
    ASSERT_GE(served.size(), 10u);
    for (std::size_t i = 1; i < served.size(); ++i) {
        EXPECT_GE(served[i], 30);
        EXPECT_LE(served[i], 36);
    }
}

// Anchell, p. 268: 12 films a litre of an acid stop bath; practice goes up to 20.
TEST_F(WeeklyUse, aLitreOfStopBathEndsAtTwelveFilmsUnlessItsIndicatorTurnsBefore)
{
    for (const char* solution : {"starter-acetic-stop", "starter-citric-stop"}) {
        WeeklyBottle stop(formulary(), solution, "clear-1");
        const double end = stop.useEvery(7, [&](double day) { stop.load(day, 1, 5); });
        EXPECT_GE(stop.films(end), 11) << solution;
        EXPECT_LE(stop.films(end), 20) << solution;
        EXPECT_LE(end, 183) << solution;
    }
    WeeklyBottle turned(formulary(), "starter-acetic-stop", "clear-1");
    turned.load(0, 2, 5);
    EXPECT_FALSE(turned.isOver(1));
    turned.happen(1, ledger::Looked{false, {}, ledger::LookedAt::Indicator});
    EXPECT_TRUE(turned.isOver(1));
}

// The demo's own bottles: each that was used and then discarded ended in its range, not before the
// verdict said that it was near its end, and hardly any went on when it was over.
TEST(WeeklyUseOfTheDemo, itsBottlesEndedWhereTheyShould)
{
    const QTemporaryDir folder;
    const auto path = app::createDemoBook(folder.path(), [] { return dayOfUse(330); });
    ASSERT_TRUE(path);
    const store::testing::TempBook demo(*path);
    struct Range {
        double least = 0; ///< films a litre, by the wear of its last day
        double most = 0;
        double longest = 0; ///< days
    };
    const std::map<std::string, Range> ranges{
        {"starter-mq-borax", {9, 15, 183}},     {"starter-metol-sulfite", {9, 15, 183}},
        {"starter-acid-fixer", {17.5, 23, 61}}, {"starter-citric-stop", {11, 20, 92}},
        {"starter-wash-aid", {17.5, 22, 92}},
    };
    const auto batches = demo.book->batches(dayOfUse(330), true);
    ASSERT_TRUE(batches);
    std::map<std::string, int> ended;
    int loads = 0;
    int over = 0;
    for (const ledger::Batch& batch : *batches) {
        const auto range = ranges.find(batch.solution->id);
        if (batch.inUse() || batch.loads.empty() || range == ranges.end()) {
            continue;
        }
        SCOPED_TRACE(batch.name);
        ++ended[range->first];
        const auto last = ledger::assess(batch);
        EXPECT_NE(last.verdict, ledger::Verdict::Good);
        const bool doubled =
            std::any_of(last.reasons.begin(), last.reasons.end(), [](const auto& reason) {
                return reason.code == ledger::ReasonCode::ClearingDoubled;
            });
        if (!doubled) { // a clearing test goes before the count
            EXPECT_GE(batch.wear.value(), range->second.least);
        }
        EXPECT_LE(batch.wear.value(), range->second.most);
        EXPECT_LE(last.age.value(), range->second.longest);
        for (const ledger::LoadDone& load : batch.loads) {
            const auto before = demo.book->batch(batch.id, load.at - std::chrono::milliseconds(1));
            ASSERT_TRUE(before);
            over += ledger::assess(*before).verdict == ledger::Verdict::Discard;
            ++loads;
        }
    }
    EXPECT_GE(loads, 500);
    EXPECT_LE(over, loads / 100) << "a second tank of an evening now and then";
    EXPECT_GE(ended["starter-mq-borax"], 20);
    EXPECT_GE(ended["starter-acid-fixer"], 12);
    EXPECT_GE(ended["starter-citric-stop"], 9);
    EXPECT_GE(ended["starter-wash-aid"], 6);
}
