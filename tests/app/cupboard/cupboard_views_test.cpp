// What the list and the card say of things in the cupboard.
#include "tests/app/cupboard/cupboard_kit.h"

#include <gtest/gtest.h>

namespace ullage::app
{

namespace
{

std::vector<CupboardRow> cupboardRowsOf(Desk& desk)
{
    return cupboardRows(snapshotOf(desk), *desk.door().formulary(), desk.door().wording());
}

QString factOf(const CupboardRow& row, const QString& label)
{
    for (const CupboardFact& fact : row.facts) {
        if (fact.label == label)
            return fact.value;
    }
    return {};
}

} // namespace

TEST(CupboardViews, wholePacketsOfAKindAreOneRowAndTheFirstToEndSpeaksForIt)
{
    Desk desk; // 25 November 2026
    shelve(desk, {powder("p1", "2028-03-31"), powder("p2", "2026-12-10"), powder("p3")});
    const auto rows = cupboardRowsOf(desk);
    ASSERT_EQ(rows.size(), 1u);
    EXPECT_EQ(rows[0].items, (std::vector<std::string>{"p2", "p1", "p3"}));
    EXPECT_EQ(rows[0].keeps, ledger::Keeps::EndsSoon);
    EXPECT_TRUE(rows[0].detail.startsWith("3 ")) << rows[0].detail.toStdString();
    EXPECT_TRUE(rows[0].detail.contains("ends soon: use by 10\u00a0Dec\u00a02026"))
        << rows[0].detail.toStdString();
    EXPECT_EQ(factOf(rows[0], "Lot"), "H041") << "said once";
    EXPECT_EQ(factOf(rows[0], "Bought"), "8.40\u00a0EUR");
}

TEST(CupboardViews, aPartOfAPacketStandsByItselfAndSaysWhyItIsNotMixed)
{
    Desk desk;
    shelve(desk, {powder("p1"), powder("p2")});
    happen(desk, ledger::Taken{"p1", 0.4, {}});
    const auto rows = cupboardRowsOf(desk);
    ASSERT_EQ(rows.size(), 2u);
    const CupboardRow& part = rows[0].id == "p1" ? rows[0] : rows[1];
    EXPECT_TRUE(part.detail.contains("60\u00a0%")) << part.detail.toStdString();
    EXPECT_TRUE(part.refused.contains(CupboardAction::Mix));
    EXPECT_FALSE((rows[0].id == "p1" ? rows[1] : rows[0]).refused.contains(CupboardAction::Mix));
}

TEST(CupboardViews, anOpenedConcentrateSaysHowLongItKeepsAndThatItIsPast)
{
    Desk desk;
    shelve(desk, {concentrate("c", 500)});
    EXPECT_EQ(cupboardRowsOf(desk)[0].detail, "500\u00a0ml");
    happen(desk, ledger::Taken{"c", 100, {}});
    desk.pass(20);
    auto row = cupboardRowsOf(desk)[0];
    EXPECT_TRUE(row.detail.startsWith("400\u00a0ml · opened, keeps 40 "))
        << row.detail.toStdString();
    EXPECT_EQ(row.keeps, ledger::Keeps::Fine);
    EXPECT_TRUE(row.refused.contains(CupboardAction::Open));
    desk.pass(41);
    row = cupboardRowsOf(desk)[0];
    EXPECT_EQ(row.keeps, ledger::Keeps::Past);
    EXPECT_TRUE(row.detail.contains("opened too long, kept to 24\u00a0Jan"))
        << row.detail.toStdString();
}

TEST(CupboardViews, aChemicalShowsItsNumberItsStatementsAndWhatCannotBeDone)
{
    Desk desk;
    shelve(desk, {chemical("s", 1420)});
    const auto row = cupboardRowsOf(desk)[0];
    EXPECT_EQ(row.name, "Sodium sulfite, dry");
    EXPECT_EQ(row.detail, "1,420 g");
    EXPECT_EQ(factOf(row, "CAS number"), "7757-83-7");
    EXPECT_EQ(factOf(row, "Carries"), "H319: causes serious eye irritation\nSee its data sheet.");
    EXPECT_TRUE(row.refused.contains(CupboardAction::Mix));
}

TEST(CupboardViews, theHeadingWarnsOfWhatIsOverAndOfWhatEndsSoon)
{
    Desk desk; // 25 November 2026
    shelve(desk, {powder("old", "2026-11-01"), powder("soon", "2026-12-20"),
                  powder("fine", "2028-01-31"), concentrate("c", 500)});
    happen(desk, ledger::Taken{"c", 100, {}}); // keeps 60 days from now
    const auto said = [&] {
        return cupboardShown(snapshotOf(desk), needsOf(desk, {}), *desk.door().formulary(),
                             desk.door().wording())
            .summary;
    };
    EXPECT_EQ(said(), "4 things here · 1 past its date · 1 thing to use soon");
    desk.pass(31);
    EXPECT_EQ(said(), "4 things here · 2 past its date · 1 thing to use soon") << "the concentrate";
}

TEST(CupboardViews, whatHasNoDateDoesNotSayTwiceWhenItWasOpened)
{
    Desk desk;
    shelve(desk, {chemical("borax", 100)});
    happen(desk, ledger::Taken{"borax", 20, {}});
    const auto rows = cupboardRowsOf(desk);
    ASSERT_EQ(rows.size(), 1u);
    EXPECT_FALSE(factOf(rows[0], "Opened").isEmpty());
    EXPECT_EQ(factOf(rows[0], "Keeps"), "");
}

TEST(CupboardViews, anEmptyCupboardIsSaidToBeEmpty)
{
    Desk desk;
    const auto shown = cupboardShown(snapshotOf(desk), needsOf(desk, {}), *desk.door().formulary(),
                                     desk.door().wording());
    EXPECT_TRUE(shown.empty);
    EXPECT_TRUE(shown.rows.empty());
}

} // namespace ullage::app
