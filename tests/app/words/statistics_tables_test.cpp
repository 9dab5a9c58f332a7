#include "app/words/statistics_tables.h"

#include <gtest/gtest.h>

namespace ullage::app
{
namespace
{

const Wording kBritishWording{{}, QLocale(QLocale::English, QLocale::UnitedKingdom)};

ledger::Money amountIn(const char* amount, const char* currency)
{
    ledger::Money money;
    money.add(*ledger::Decimal::from(amount), currency);
    return money;
}

ledger::Statistics twoMonthsOfSums()
{
    ledger::Statistics so;
    ledger::MonthSum june;
    june.month = std::chrono::year(2026) / 6;
    june.films = chemistry::Films(5);
    june.mixed = 2;
    june.bought = amountIn("9.80", "EUR");
    june.unpriced = 1;
    ledger::MonthSum july;
    july.month = std::chrono::year(2026) / 7;
    july.films = chemistry::Films(1.5);
    july.ended = 1;
    july.cost = {amountIn("8.40", "EUR"), true};
    so.months = {june, july};
    so.developed = chemistry::Films(6.5);
    so.mixed = 2;
    so.ended = 1;
    so.cost = july.cost;
    so.bought = june.bought;
    so.unpriced = 1;
    so.people = {{"Ada", chemistry::Films(6), {amountIn("6.30", "EUR"), true}},
                 {"", chemistry::Films(0.5), {amountIn("2.10", "EUR"), true}}};
    return so;
}

QStringList headingsOf(const FiguresTable& table)
{
    QStringList titles;
    for (const FiguresColumn& column : table.columns)
        titles << column.title;
    return titles;
}

QStringList textsOf(const FiguresTable& table, std::size_t row)
{
    QStringList texts;
    for (const FiguresCell& cell : table.rows.at(row))
        texts << cell.text;
    return texts;
}

} // namespace

TEST(StatisticsTables, monthsHaveTheirSumsAndSayWhatIsMissing)
{
    const FiguresTable table = monthTable(twoMonthsOfSums(), kBritishWording);
    EXPECT_EQ(headingsOf(table), (QStringList{"Month", "Films developed", "Bottles mixed",
                                              "Bottles ended", "Costs, EUR", "Bought, EUR"}));
    ASSERT_EQ(table.rows.size(), 3u);
    EXPECT_TRUE(table.total);
    EXPECT_EQ(textsOf(table, 0), (QStringList{"June 2026", "5", "2", "0", "", "at least 9.80"}));
    EXPECT_EQ(textsOf(table, 1), (QStringList{"July 2026", "1½", "0", "1", "8.40", ""}));
    EXPECT_EQ(textsOf(table, 2),
              (QStringList{"Together", "6½", "2", "1", "8.40", "at least 9.80"}));
    EXPECT_EQ(table.rows[0][0].raw, "2026-06");
    EXPECT_EQ(table.rows[1][1].raw, 1.5);
    EXPECT_EQ(table.rows[1][4].raw, "8.40");
    EXPECT_FALSE(table.rows[0][5].raw.isValid()) << "what is known in part is no number";
    for (const auto& row : table.rows)
        EXPECT_EQ(row.size(), table.columns.size());
}

TEST(StatisticsTables, eachCurrencyHasAColumn)
{
    ledger::Statistics so = twoMonthsOfSums();
    so.months[0].cost = {amountIn("30", "SEK"), false};
    so.cost += so.months[0].cost;
    const FiguresTable table = monthTable(so, kBritishWording);
    EXPECT_EQ(headingsOf(table).mid(4), (QStringList{"Costs, EUR", "Costs, SEK", "Bought, EUR"}));
    EXPECT_EQ(textsOf(table, 0).mid(4), (QStringList{"", "at least 30.00", "at least 9.80"}));
    EXPECT_EQ(textsOf(table, 2).mid(4),
              (QStringList{"at least 8.40", "at least 30.00", "at least 9.80"}));
}

TEST(StatisticsTables, aCostOfWhichNothingIsKnownIsNotZero)
{
    ledger::Statistics so = twoMonthsOfSums();
    so.months[1].cost = so.cost = {{}, false};
    const FiguresTable table = monthTable(so, kBritishWording);
    EXPECT_EQ(headingsOf(table)[4], "Costs");
    EXPECT_EQ(textsOf(table, 0)[4], "");
    EXPECT_EQ(textsOf(table, 1)[4], "not known");
}

TEST(StatisticsTables, personsAddUpToTheWholeWithWhatDidNoFilm)
{
    ledger::Statistics so = twoMonthsOfSums();
    so.withoutFilm = {amountIn("3.00", "EUR"), true};
    so.cost += so.withoutFilm;
    const FiguresTable table = personTable(so, kBritishWording);
    ASSERT_EQ(table.rows.size(), 4u);
    EXPECT_EQ(textsOf(table, 0), (QStringList{"Ada", "6", "6.30"}));
    EXPECT_EQ(textsOf(table, 1), (QStringList{"nobody named", "½", "2.10"}));
    EXPECT_EQ(textsOf(table, 2), (QStringList{"Bottles that did no film", "", "3.00"}));
    EXPECT_EQ(textsOf(table, 3), (QStringList{"Together", "6½", "11.40"}));
}

TEST(StatisticsTables, solutionsTellTheirLivesAndWhatAFilmCosts)
{
    ledger::Statistics so = twoMonthsOfSums();
    ledger::SolutionStatistics mq;
    mq.solution = "mq";
    mq.films = chemistry::Films(6.5);
    mq.ended = 1;
    mq.meanLife = chemistry::Days(41.6);
    mq.meanFilms = chemistry::Films(10);
    mq.cost = so.cost;
    ledger::SolutionStatistics fix;
    fix.solution = "fix";
    fix.films = chemistry::Films(6.5);
    so.solutions = {mq, fix};
    so.costs = {{"mq", "EUR", *ledger::Decimal::from("0.84"), 1}};
    const FiguresTable table = solutionTable(so, {}, kBritishWording);
    ASSERT_EQ(table.rows.size(), 3u);
    EXPECT_EQ(textsOf(table, 0), (QStringList{"mq", "6½", "1", "42", "10", "8.40", "0.84"}));
    EXPECT_EQ(textsOf(table, 1), (QStringList{"fix", "6½", "0", "", "", "", ""}));
    EXPECT_EQ(textsOf(table, 2), (QStringList{"Together", "", "1", "", "", "8.40", ""}));
}

TEST(StatisticsTables, bottlesThatEndedTellWhatEachFilmCost)
{
    ledger::Statistics so = twoMonthsOfSums();
    const auto at = chemistry::Instant(std::chrono::sys_days(std::chrono::year(2026) / 7 / 3));
    so.endedBottles = {
        {"b1", "Dev 1", "mq", at, at, chemistry::Millilitres(1000), chemistry::Films(10), so.cost},
        {"b2",
         "Dev 2",
         "mq",
         at,
         at,
         chemistry::Millilitres(1000),
         chemistry::Films(2),
         {{}, false}}};
    so.cost.whole = false;
    const FiguresTable table = endedTable(so, {}, kBritishWording);
    ASSERT_EQ(table.rows.size(), 3u);
    EXPECT_EQ(textsOf(table, 0).mid(3), (QStringList{"10", "8.40", "0.84"}));
    EXPECT_EQ(textsOf(table, 1).mid(3), (QStringList{"2", "not known", "not known"}));
    EXPECT_EQ(textsOf(table, 2).mid(3), (QStringList{"12", "at least 8.40", ""}));
}

TEST(StatisticsTables, notesSayWhatIsLeftOut)
{
    ledger::Statistics so = twoMonthsOfSums();
    so.inUse = 2;
    so.inUseCost = {amountIn("5.60", "EUR"), false};
    so.boughtUndated = 3;
    const QString all = statisticsNotes(so, kBritishWording).join(u'\n');
    EXPECT_TRUE(all.contains("2 bottles still in use, not counted yet. Cost so far: at least "
                             "5.60\u00a0EUR."))
        << all.toStdString();
    EXPECT_TRUE(all.contains("1 thing bought without a price")) << all.toStdString();
    EXPECT_TRUE(all.contains("3 things with a price but no day")) << all.toStdString();
    EXPECT_EQ(statisticsNotes({}, kBritishWording).size(), 1);
}

} // namespace ullage::app
