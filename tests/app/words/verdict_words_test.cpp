#include "app/words/verdict_words.h"

#include "tests/app/words/sample_batches.h"

#include <algorithm>
#include <limits>

namespace ullage::app
{

using ledger::ReasonCode;
using namespace sample;

namespace
{

QString joined(const ledger::Batch& batch)
{
    return bottleSentences(batch, ledger::assess(batch), english()).join(u'\n');
}

bool reads(const std::vector<ledger::Reason>& reasons, ReasonCode code)
{
    return std::any_of(reasons.begin(), reasons.end(),
                       [&](const auto& reason) { return reason.code == code; });
}

} // namespace

TEST(VerdictWords, goodBottleSaysFilmsStandingAndWhatEndsFirst)
{
    const auto batch = Bottle().films(1, 4).at(day(10));
    const auto so = ledger::assess(batch);
    ASSERT_EQ(so.verdict, ledger::Verdict::Good);
    const auto sentences = bottleSentences(batch, so, english());
    ASSERT_EQ(sentences.size(), 3);
    EXPECT_TRUE(sentences[0].startsWith("Films: 4 of 10 used; last film about "))
        << sentences[0].toStdString();
    EXPECT_TRUE(sentences[0].contains(", 8 times in 10 between ")) << sentences[0].toStdString();
    EXPECT_TRUE(sentences[1].startsWith("Age and air: ")) << sentences[1].toStdString();
    EXPECT_TRUE(sentences[1].contains("(age ")) << sentences[1].toStdString();
    EXPECT_TRUE(sentences[2].endsWith("."));
}

TEST(VerdictWords, restingBottleSaysThatNobodySawItClear)
{
    const auto fresh = Bottle().at(day(1));
    const auto lines = shelfLines(fresh, ledger::assess(fresh), english());
    EXPECT_EQ(lines.headline, "not clear yet");
    EXPECT_EQ(lines.subline, "10 films left");
    EXPECT_TRUE(joined(fresh).startsWith("Nobody has marked it as dissolved yet"));

    const auto clear = Bottle().happen(day(0), ledger::Dissolved{}).at(day(1));
    EXPECT_EQ(shelfLines(clear, ledger::assess(clear), english()).headline, "10 films left");
    EXPECT_FALSE(joined(clear).contains("dissolved"));
}

TEST(VerdictWords, restingIsAVerdictOfItsOwnWithTheTimeToTheNextLook)
{
    const auto just = Bottle().at(day(0) + std::chrono::minutes(3));
    const auto so = ledger::assess(just);
    EXPECT_EQ(verdictWord(so.shown), "Resting");
    EXPECT_EQ(shelfLines(just, so, english()).subline, "look again in 7 min");
    EXPECT_TRUE(joined(just).startsWith("It rests until it is clear: shake it and look again in 7 "
                                        "min."))
        << joined(just).toStdString();
    const auto spent = Bottle().happen(day(0), ledger::Contaminated{"fixer"}).at(day(1));
    EXPECT_EQ(verdictWord(ledger::assess(spent).shown), "Discard") << "nobody waits for that";
}

TEST(VerdictWords, filmsBeyondTheCapacityAreNotCountedAgainstThemselves)
{
    const auto full = Bottle().films(1, 10).at(day(12));
    EXPECT_TRUE(filmsSentence(full, ledger::assess(full), english()).startsWith("Films: 10 of 10"));
    const auto beyond = Bottle().films(1, 30).at(day(40));
    EXPECT_EQ(filmsSentence(beyond, ledger::assess(beyond), english()),
              "Films: 30 done; 30 of 10 films per litre.");
}

TEST(VerdictWords, reachedCapacityIsSaidOnce)
{
    const auto batch = Bottle().films(1, 10).at(day(12));
    const auto so = ledger::assess(batch);
    ASSERT_TRUE(reads(so.reasons, ReasonCode::CapacityNear));
    ASSERT_TRUE(reads(so.reasons, ReasonCode::FilmsFew));
    const auto read = forReading(so.reasons);
    ASSERT_EQ(read.size(), 1u);
    EXPECT_EQ(reasonSentence(read[0], batch, so, english()),
              "10 of 10 films per litre done: discard it.");
}

TEST(VerdictWords, aNearCapacityIsSaidAsAPartOfIt)
{
    const auto batch = Bottle().films(1, 9).at(day(12));
    const auto so = ledger::assess(batch);
    const auto near = std::find_if(so.reasons.begin(), so.reasons.end(), [](const auto& reason) {
        return reason.code == ReasonCode::CapacityNear;
    });
    ASSERT_NE(near, so.reasons.end());
    EXPECT_EQ(reasonSentence(*near, batch, so, english()), "9 of 10 films per litre done.");
}

TEST(VerdictWords, moreThanAllOfALifeIsPastTheEnd)
{
    const auto batch = Bottle().at(day(40));
    auto so = ledger::assess(batch);
    so.standingUsed = 1.77;
    so.agePart = 0.79;
    so.airPart = 0.98;
    EXPECT_TRUE(standingSentence(batch, so, english())
                    .startsWith("Age and air: past the end (age 79\u00a0%, air 98\u00a0%)."))
        << standingSentence(batch, so, english()).toStdString();
    so.standingUsed = 0.5;
    EXPECT_TRUE(
        standingSentence(batch, so, english()).startsWith("Age and air: 50\u00a0% used (age"))
        << standingSentence(batch, so, english()).toStdString();
}

TEST(VerdictWords, whatAirDoesNothingToHasAgeAlone)
{
    auto batch = Bottle().at(day(40));
    batch.limits->oxygen = decltype(batch.limits->oxygen)(std::numeric_limits<double>::infinity());
    auto so = ledger::assess(batch);
    so.standingUsed = 0.86;
    EXPECT_TRUE(
        standingSentence(batch, so, english()).startsWith("Age: 86\u00a0% used. Keeps until"))
        << standingSentence(batch, so, english()).toStdString();
    so.standingUsed = 1.2;
    EXPECT_TRUE(
        standingSentence(batch, so, english()).startsWith("Age: past the end (120\u00a0% used)."))
        << standingSentence(batch, so, english()).toStdString();
    const ledger::Reason near{ReasonCode::StandingNear, {{"standing", 0.86}}};
    EXPECT_EQ(reasonSentence(near, batch, so, english()), "Age has used 86\u00a0% of its life.");
}

TEST(VerdictWords, pastKeepingMakesSoonNeedless)
{
    const auto batch = Bottle().at(day(190));
    const auto so = ledger::assess(batch);
    ASSERT_TRUE(reads(so.reasons, ReasonCode::DiscardSoon));
    EXPECT_FALSE(reads(forReading(so.reasons), ReasonCode::DiscardSoon));
    EXPECT_TRUE(joined(batch).contains("7 days past the 6 months a full bottle keeps"))
        << joined(batch).toStdString();
}

TEST(VerdictWords, doubledClearingNamesBothTimes)
{
    auto bottle = Bottle("fix");
    bottle.happen(day(1), ledger::ClearingTested{chemistry::Seconds(60), chemistry::Celsius(20)});
    bottle.happen(day(2), ledger::ClearingTested{chemistry::Seconds(121), chemistry::Celsius(20)});
    const auto batch = bottle.at(day(50));
    const auto so = ledger::assess(batch);
    EXPECT_TRUE(
        joined(batch).startsWith("Clears in 121 s, at least twice the fresh 60 s: discard it."));
    EXPECT_FALSE(joined(batch).contains("test is due")) << "a bottle to discard needs no test";
    EXPECT_EQ(shelfLines(batch, so, english()).headline, "clears in 121 s");
}

TEST(VerdictWords, dueTestSaysSinceWhat)
{
    const auto mixed = Bottle("fix").films(1, 5).at(day(7));
    EXPECT_TRUE(joined(mixed).startsWith(
        "A clearing test is due: 5 films a litre and 7 days since it was mixed."))
        << joined(mixed).toStdString();
    EXPECT_EQ(shelfLines(mixed, ledger::assess(mixed), english()).subline, "5 films a litre since");

    auto bottle = Bottle("fix");
    bottle.happen(day(1), ledger::ClearingTested{chemistry::Seconds(61), chemistry::Celsius(20)});
    const auto tested = bottle.at(day(33));
    EXPECT_TRUE(joined(tested).contains("32 days since the last")) << joined(tested).toStdString();
    EXPECT_EQ(shelfLines(tested, ledger::assess(tested), english()).subline, "32 days since");
}

TEST(VerdictWords, modelDatesAreAboutAndCalendarDatesAreNot)
{
    const auto full = Bottle().happen(day(0), ledger::Dissolved{}).at(day(1));
    const auto so = ledger::assess(full);
    ASSERT_TRUE(so.discardBy && so.keepsUntil);
    const bool calendar = so.discardBy == so.keepsUntil;
    EXPECT_EQ(shelfLines(full, so, english()).subline.contains("about"), !calendar);

    auto half = Bottle().happen(day(0), ledger::Dissolved{});
    half.happen(day(1), ledger::Drawn{Millilitres(600), "used"});
    const auto drawn = half.at(day(2));
    const auto sooner = ledger::assess(drawn);
    ASSERT_NE(sooner.discardBy, sooner.keepsUntil);
    EXPECT_TRUE(shelfLines(drawn, sooner, english()).subline.startsWith("until about "));
}

TEST(VerdictWords, everyReasonHasASentence)
{
    const auto batch = Bottle().at(day(1));
    const auto so = ledger::assess(batch);
    const std::vector<std::pair<std::string_view, double>> all{
        {"last_s", 121},     {"fresh_s", 60},   {"wear", 9},        {"capacity", 10},
        {"films_left", 0.2}, {"days_over", 3},  {"full_days", 60},  {"silver", 2},
        {"limit", 1.5},      {"standing", 0.9}, {"films_since", 6}, {"days_since", 31},
        {"mean_load", 1},    {"days", 12},      {"turnovers", 5},
    };
    for (std::size_t i = 0; i < ledger::kReasonCodes.size(); ++i) {
        const ledger::Reason reason{static_cast<ReasonCode>(i), all};
        const QString sentence = reasonSentence(reason, batch, so, english());
        EXPECT_TRUE(sentence.endsWith('.')) << ledger::kReasonCodes[i];
        EXPECT_FALSE(sentence.contains('%' + QString::number(1))) << sentence.toStdString();
    }
}

TEST(VerdictWords, endedBottleSaysOnlyHowItEnded)
{
    auto bottle = Bottle();
    bottle.happen(day(3), ledger::Discarded{"collected"});
    EXPECT_EQ(joined(bottle.at(day(9))), "Discarded on 4 June 2026.");
}

TEST(VerdictWords, noPaceIsInventedForABottleWithoutFilm)
{
    const QString text = joined(Bottle().happen(day(0), ledger::Dissolved{}).at(day(5)));
    EXPECT_TRUE(text.startsWith("Films: 0 of 10 used.")) << text.toStdString();
    EXPECT_FALSE(text.contains("first"));
}

TEST(VerdictWords, aReplenishedBottleHasNoSumOfItsFilms)
{
    auto batch = Bottle().films(1, 4).at(day(10));
    auto seasoned = *batch.solution;
    seasoned.replenisher = "more";
    batch.solution = std::make_shared<const formulary::Solution>(seasoned);
    EXPECT_TRUE(joined(batch).startsWith("Films: 4 done; 6 more without its replenisher."))
        << joined(batch).toStdString();
}

TEST(VerdictWords, noCapacityIsSaid)
{
    auto bottle = Bottle("fix");
    auto batch = bottle.at(day(1));
    auto plain = *batch.solution;
    plain.capacity.reset();
    batch.solution = std::make_shared<const formulary::Solution>(plain);
    // A fixer has one by default: 20 films a litre where it is acid.
    EXPECT_TRUE(joined(batch).contains("Films: 0 of 20 used.")) << joined(batch).toStdString();
    plain.role = formulary::Role::Stop;
    batch.solution = std::make_shared<const formulary::Solution>(plain);
    EXPECT_TRUE(joined(batch).contains("no capacity is known"));
    EXPECT_TRUE(joined(batch).contains("no keeping time is known"));
}

} // namespace ullage::app
