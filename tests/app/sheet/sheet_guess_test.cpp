// What a sheet seems to say, and what it leaves open.
#include "app/sheet/sheet_guess.h"

#include "app/sheet/sheet_headings.h"
#include "app/sheet/sheet_kind.h"

#include <gtest/gtest.h>

namespace ullage::app
{
namespace
{

SheetGuess guessed(const QByteArray& sheet)
{
    const auto table = store::readTable(sheet);
    EXPECT_TRUE(table);
    return guessMapping(*table);
}

std::vector<SheetField> fieldsOf(const SheetGuess& guess)
{
    std::vector<SheetField> fields;
    for (const SheetColumnMeans& column : guess.mapping.columns) {
        fields.push_back(column.field);
    }
    return fields;
}

using F = SheetField;

TEST(SheetGuess, FindsHeadingsUnderATitleAndInMergedCells)
{
    const SheetGuess guess =
        guessed("Harbour darkroom;;;\n;;;\n;;Volume;\nBottle;Recipe;(l);Mixed\n"
                "Dev 1;MQ;1,5;25.11.2026\n");
    EXPECT_EQ(guess.mapping.headingRow, 4);
    EXPECT_EQ(fieldsOf(guess), (std::vector{F::BottleName, F::Solution, F::Volume, F::Date}));
    const SheetGuess merged = guessed(";;Volume;\nBottle;Recipe;;Mixed\nDev 1;MQ;1,5;25.11.2026\n");
    EXPECT_EQ(fieldsOf(merged), (std::vector{F::BottleName, F::Solution, F::Volume, F::Date}));
    EXPECT_EQ(merged.mapping.headingRow, 2);
    EXPECT_EQ(guess.mapping.columns[2].heading, "Volume (l)");
}

// "Inhalt" over "Lösung" and "angesetzt am", "Filme" over "bisher" and "noch": the upper row has
// more words that are known, and the day stood in none of them.
TEST(SheetGuess, HeadingsOfTwoRowsAreReadTogether)
{
    const SheetGuess guess = guessed("Flasche;Inhalt;;Füllung;Filme;;Notiz\n"
                                     "Nr.;Lösung;angesetzt am;in l;bisher;noch;\n"
                                     "A;MQ;3.9.26;1,0;6;4;\n");
    EXPECT_EQ(guess.mapping.headingRow, 2);
    EXPECT_EQ(fieldsOf(guess), (std::vector{F::BottleName, F::Solution, F::Date, F::Volume,
                                            F::FilmsBefore, F::Unused, F::Notes}));
    EXPECT_EQ(guess.mapping.columns[4].heading, "Filme bisher");
    EXPECT_EQ(guess.mapping.columns[5].heading, "noch");
}

TEST(SheetField, FilmsThatWereDoneAreFoundAsPeopleSayIt)
{
    for (const char* heading :
         {"Films so far", "Rolls to date", "Filme bis jetzt", "Rollen bisher", "Filme bisher"}) {
        EXPECT_EQ(sheetFieldFromHeading(QString::fromUtf8(heading)), F::FilmsBefore) << heading;
    }
}

TEST(SheetGuess, ATypeOfFilmIsItsFormat)
{
    EXPECT_EQ(
        fieldsOf(guessed("Date,Bottle,Rolls,Type\n9/21/26,A,2,35mm 36 exp\n9/22/26,A,1,120\n")),
        (std::vector{F::Date, F::BottleName, F::Films, F::Format}));
}

TEST(SheetKind, FormatsAreReadAsPeopleWriteThem)
{
    for (const char* small : {"135", "35mm", "35 mm", "KB", "35mm 36 exp", "135-36", "135/36"}) {
        EXPECT_EQ(sheetFormatFrom(QString::fromUtf8(small)), "135-36") << small;
    }
    EXPECT_EQ(sheetFormatFrom("35 mm, 24 exp."), "135-24");
    for (const char* roll : {"120", "120 film", "120er", "Rollfilm", "6x6", "6 × 4,5", "645",
                             "6x7 120", "medium format"}) {
        EXPECT_EQ(sheetFormatFrom(QString::fromUtf8(roll)), "120") << roll;
    }
    EXPECT_EQ(sheetFormatFrom("6.5 x 9 cm"), "6.5x9cm") << "a sheet";
    EXPECT_EQ(sheetFormatFrom("4 × 5"), "4x5");
    for (const char* none : {"", "MQ", "1350", "35mm 72", "film"}) {
        EXPECT_EQ(sheetFormatFrom(QString::fromUtf8(none)), "") << none;
    }
}

TEST(SheetGuess, ABottleAndItsDeveloperAreTwoThings)
{
    EXPECT_EQ(fieldsOf(guessed("Flasche,Entwickler,Menge,Filme\nA,MQ,900,3\n")),
              (std::vector{F::BottleName, F::Solution, F::Volume, F::FilmsBefore}));
    EXPECT_EQ(fieldsOf(guessed("Developer,Fixer,Films,Film\nA,F,2,x\n")),
              (std::vector{F::BottleName, F::Fixer, F::Films, F::Film}));
}

TEST(SheetGuess, WordsThatSayNothingAreLookedThrough)
{
    EXPECT_EQ(
        fieldsOf(guessed("Flasche Nr.,Date mixed,Menge in ml,Number of rolls\nA,1.6.26,9,3\n")),
        (std::vector{F::BottleName, F::Date, F::Volume, F::FilmsBefore}));
    EXPECT_EQ(fieldsOf(guessed("Film No.,Film,Date exposed,Developed on\n17,Quay,1.6.26,2.6.26\n")),
              (std::vector{F::Unused, F::Film, F::Unused, F::Date}))
        << "what is said outright comes first, and not every day is meant";
}

TEST(SheetGuess, RowsAreNoHeadings)
{
    EXPECT_EQ(guessed("Dev 1,1 L,Fix 2\nDev 3,1 L,Fix 4\n").mapping.headingRow, 0);
}

TEST(SheetGuess, CellsTellWhatAHeadingLeavesOpen)
{
    EXPECT_EQ(fieldsOf(guessed("Flasche,Inhalt,Menge\nA,MQ,900\n")),
              (std::vector{F::BottleName, F::Solution, F::Volume}));
    EXPECT_EQ(fieldsOf(guessed("Flasche,Inhalt\nA,900\n")),
              (std::vector{F::BottleName, F::Volume}));
    EXPECT_EQ(fieldsOf(guessed("Bottle,Type\nA,MQ\n")), (std::vector{F::BottleName, F::Solution}));
    EXPECT_EQ(fieldsOf(guessed("Film,Time,Date\nA,7:30,1.6.26\n")),
              (std::vector{F::Film, F::Unused, F::Date}))
        << "how long it was developed";
    EXPECT_EQ(fieldsOf(guessed("Film,Time,Date\nA,19:30,1.6.26\n")),
              (std::vector{F::Film, F::TimeOfDay, F::Date}));
}

TEST(SheetGuess, ASizeIsOfABottleOrOfAFilm)
{
    EXPECT_EQ(fieldsOf(guessed("Bottle,Size\nA,1000 ml\nB,500\n")),
              (std::vector{F::BottleName, F::Volume}));
    EXPECT_EQ(fieldsOf(guessed("Flasche;Größe;Menge;Rezept\nA;1,0 l;900 ml;MQ\n")),
              (std::vector{F::BottleName, F::Capacity, F::Volume, F::Solution}))
        << "whichever comes first";
    EXPECT_EQ(fieldsOf(guessed("Bottle,Volume,Size (ml)\nA,900,1030\n")),
              (std::vector{F::BottleName, F::Volume, F::Capacity}));
    EXPECT_EQ(fieldsOf(guessed("Film,Size,Date\nQuay,120,1.6.26\nNets,135,2.6.26\n")),
              (std::vector{F::Film, F::Format, F::Date}));
    EXPECT_EQ(fieldsOf(guessed("Film,Bottle,Size\nQuay,A,35 mm\n")),
              (std::vector{F::Film, F::BottleName, F::Format}));
}

TEST(SheetGuess, AUnitTellsWhatThreeFiguresBehindASignAre)
{
    EXPECT_TRUE(guessed("bottle;volume\na;1.000 ml\n").mapping.decimalComma);
    EXPECT_FALSE(guessed("bottle;volume\na;1.000 ml\n").open.decimal);
    EXPECT_FALSE(guessed("bottle;volume (l)\na;1.000\n").mapping.decimalComma);
    EXPECT_FALSE(guessed("bottle;volume (l)\na;1.000\n").open.decimal);
    EXPECT_TRUE(guessed("bottle;volume\na;1.000 ml\nb;1.000 l\n").open.decimal);
}

TEST(SheetGuess, DecimalsAreToldByWhatStandsBehindTheSign)
{
    EXPECT_TRUE(guessed("bottle;volume\na;1,5\n").mapping.decimalComma);
    EXPECT_FALSE(guessed("bottle;volume\na;1.5\n").mapping.decimalComma);
    EXPECT_TRUE(guessed("bottle;volume\na;1.000,5\n").mapping.decimalComma);
    EXPECT_FALSE(guessed("bottle;volume\na;1.000,5\n").open.decimal);
    EXPECT_TRUE(guessed("bottle;volume\na;1.000\n").open.decimal);
    EXPECT_FALSE(guessed("bottle;volume\na;1000\n").open.decimal);
    EXPECT_TRUE(guessed("bottle;volume\na;1.5\nb;1,5\n").open.decimal);
}

TEST(SheetGuess, DaysAreToldByTheFirstPlaceAboveTwelve)
{
    EXPECT_EQ(guessed("bottle,date\na,3/4/2026\nb,25/4/2026\n").mapping.order, DayOrder::DayFirst);
    EXPECT_EQ(guessed("bottle,date\na,3/4/2026\nb,4/25/2026\n").mapping.order,
              DayOrder::MonthFirst);
    EXPECT_EQ(guessed("bottle,date\na,2026-04-03\n").mapping.order, DayOrder::YearFirst);
    EXPECT_FALSE(guessed("bottle,date\na,3.4.26\n").open.days) << "points put the day first";
    EXPECT_TRUE(guessed("bottle,date\na,3/4/2026\n").open.days);
    EXPECT_FALSE(guessed("bottle,date\na,4/4/2026\n").open.days) << "the same either way";
    EXPECT_TRUE(guessed("bottle,date\na,13/4/2026\nb,4/13/2026\n").open.days);
}

TEST(SheetField, UnitsOfHeadingsAreFound)
{
    EXPECT_EQ(unitInHeading("Volume (l)"), "l");
    EXPECT_EQ(unitInHeading("Menge [ml]"), "ml");
    EXPECT_EQ(unitInHeading("Temp °F"), "°F");
    EXPECT_EQ(unitInHeading("Menge in ml"), "ml");
    EXPECT_EQ(unitInHeading("seconds to clear"), "s");
    EXPECT_EQ(unitInHeading("Film C size"), "");
    EXPECT_EQ(unitInHeading("Litres"), "l");
    EXPECT_EQ(unitInHeading("Clearing time (sec)"), "s");
    EXPECT_EQ(unitInHeading("Notes"), "");
}

} // namespace
} // namespace ullage::app
