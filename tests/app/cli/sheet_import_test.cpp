// Strangers' spreadsheets into a book.
#include "tests/app/cli/cli_kit.h"

#include <QDateTime>

using namespace ullage::app;
using namespace ullage::app::testing;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

QString sheet(const char* name)
{
    return QStringLiteral(ULLAGE_SHEETS) + u'/' + QLatin1String(name);
}

class SheetImportTest : public CommandTest
{
protected:
    void SetUp() override { ASSERT_EQ(run({"import", "-"}, kStart).code, kDone); }
    QByteArray book() { return run({"export", "-"}).out; }
    int times(const char* text) { return static_cast<int>(book().count(text)); }
};

TEST_F(SheetImportTest, BottlesComeWithTheFilmsTheyHaveDone)
{
    const Answer done = run({"import", sheet("bottles-latin1.csv")});
    ASSERT_EQ(done.code, kDone) << done.err.constData();
    EXPECT_TRUE(done.err.contains("2 bottles")) << done.err.constData();
    const QByteArray all = book();
    EXPECT_TRUE(all.contains(R"("name":"Dev A")"));
    EXPECT_TRUE(all.contains(R"("films_before":6)"));
    EXPECT_TRUE(all.contains(R"("volume_ml":750)"));
    EXPECT_TRUE(all.contains("zweite Reihe, \\\"links\\\"")) << "quotes and a line's end within";
    EXPECT_TRUE(all.contains("Fl\xc3\xa4schchen"));
    EXPECT_TRUE(all.contains(R"("kind":"discarded","at":"2026-11-30)"));
    const QByteArray report = run({"report", "--json", "--at", "2026-04-20"}).out;
    EXPECT_TRUE(report.contains(R"("films_done":6)")) << report.constData();
}

TEST_F(SheetImportTest, FilmsGoThroughTheBottleOfTheirDay)
{
    const Answer done = run({"import", sheet("films-utf16.csv")});
    ASSERT_EQ(done.code, kDone) << done.err.constData();
    EXPECT_EQ(times(R"("batch":"dev-1","kind":"processed")"), 3) << "one was there";
    EXPECT_TRUE(book().contains(R"("name":"Quay 400","ei":320)"));
    EXPECT_TRUE(book().contains(R"("by":"River")"));
    EXPECT_TRUE(book().contains("=cmd|' /C calc'!A0")) << "as it was typed, for nobody to run";
}

TEST_F(SheetImportTest, TestsSayWhetherTheyWerePassed)
{
    const Answer done = run({"import", sheet("tests.csv")});
    ASSERT_EQ(done.code, kDone) << done.err.constData();
    EXPECT_EQ(times(R"("kind":"looked")"), 2);
    EXPECT_TRUE(book().contains(R"("passed":true,"why":"leader black, at once")"));
}

TEST_F(SheetImportTest, TwiceTheSameAddsNothing)
{
    ASSERT_EQ(run({"import", sheet("films-utf16.csv")}).code, kDone);
    const QByteArray once = book();
    const Answer again = run({"import", sheet("films-utf16.csv")});
    EXPECT_EQ(again.code, kDone) << again.err.constData();
    EXPECT_TRUE(again.err.contains("0 of their entries")) << again.err.constData();
    EXPECT_EQ(book(), once);
}

TEST_F(SheetImportTest, ARowThatTheBookHasOtherwiseIsToldSo)
{
    const QByteArray head = "Bottle;Recipe;Volume (ml);Mixed\n";
    ASSERT_EQ(run({"import", write("s.csv", head + "Dev H;MQ borax;900;1/6/2026\n"
                                                   "Dev I;MQ borax;900;13/6/2026\n")})
                  .code,
              kDone);
    const Answer other = run({"import", write("s.csv", head + "Dev H;MQ borax;900;1/6/2026\n"
                                                              "Dev J;MQ borax;900;6/13/2026\n")});
    EXPECT_EQ(other.code, kRefused);
    EXPECT_TRUE(other.err.contains("s.csv:2: This row came in before")) << other.err.constData();
}

TEST_F(SheetImportTest, TryingSaysWhatWouldComeInAndEntersNothing)
{
    const QByteArray before = book();
    const Answer tried = run({"import", sheet("bottles-latin1.csv"), "--try"});
    EXPECT_EQ(tried.code, kDone) << tried.err.constData();
    EXPECT_TRUE(tried.err.contains("2 bottles would come in")) << tried.err.constData();
    EXPECT_EQ(book(), before);
}

TEST_F(SheetImportTest, AllOrNothingWithEveryRefusedCell)
{
    const QByteArray before = book();
    const Answer refused = run({"import", sheet("refused.csv")});
    EXPECT_EQ(refused.code, kRefused);
    const QByteArray& said = refused.err;
    EXPECT_TRUE(said.contains("refused.csv:3: solution")) << said.constData();
    EXPECT_TRUE(said.contains("Pyro of the sea"));
    EXPECT_TRUE(said.contains("refused.csv:4: volume_ml")) << said.constData();
    EXPECT_TRUE(said.contains("refused.csv:4: at")) << said.constData();
    EXPECT_TRUE(said.contains("refused.csv:5: batch")) << said.constData();
    EXPECT_TRUE(said.contains("refused.csv:6: volume_ml")) << said.constData();
    EXPECT_TRUE(said.contains("1000000")) << "the allowed range";
    EXPECT_TRUE(said.contains("Nothing was imported"));
    EXPECT_EQ(book(), before);
}

TEST_F(SheetImportTest, WhatNobodyCanTellIsAskedAndAMappingAnswers)
{
    const Answer asked = run({"import", sheet("open.csv")});
    EXPECT_EQ(asked.code, kRefused);
    EXPECT_TRUE(asked.err.contains("3/4")) << asked.err.constData();
    EXPECT_TRUE(asked.err.contains("decimals")) << asked.err.constData();
    const QString mapping = write(
        "mapping.json",
        R"json({"ullage-sheet":1,"heading_row":1,"decimal":".","days":"month-day-year","columns":[)json"
        R"json({"heading":"Bottle","field":"batch"},{"heading":"Recipe","field":"solution"},)json"
        R"json({"heading":"Volume","field":"volume_ml"},{"heading":"Mixed","field":"at"}]})json");
    const Answer done = run({"import", sheet("open.csv"), "--mapping", mapping});
    ASSERT_EQ(done.code, kDone) << done.err.constData();
    EXPECT_TRUE(book().contains(R"("at":"2026-03-04T)"));
    EXPECT_TRUE(book().contains(R"("volume_ml":1000,"name":"Dev C")")) << book().constData();
}

TEST_F(SheetImportTest, TabsInAFileOfThatNameAreASheetToo)
{
    const QString name = write("pencil.tsv", "Bottle\tRecipe\tVolume (ml)\tMixed\n"
                                             "Dev T\tMQ borax\t900\t2026-03-25\n");
    const Answer done = run({"import", name});
    ASSERT_EQ(done.code, kDone) << done.err.constData();
    EXPECT_TRUE(book().contains(R"("volume_ml":900,"name":"Dev T")")) << book().constData();
}

TEST_F(SheetImportTest, NothingThatWasWrittenDownOfATestIsLost)
{
    const QString name =
        write("tests2.csv", "Bottle,Date,Time of day,Clearing time,Temp,Passed,Notes\n"
                            "Dev 1,2026-11-20,7:30 pm,45,20,no,slow\n"
                            "Dev 1,2026-11-21,,50,20,,as before\n");
    const Answer done = run({"import", name});
    ASSERT_EQ(done.code, kDone) << done.err.constData();
    const QByteArray all = book();
    EXPECT_TRUE(all.contains(R"("passed":false,"why":"slow")")) << all.constData();
    EXPECT_TRUE(all.contains("as before"));
    const QDateTime half(QDate(2026, 11, 20), QTime(19, 30));
    EXPECT_TRUE(all.contains(R"("at":")" + half.toUTC().toString(Qt::ISODate).toUtf8()))
        << all.constData();
    const QString wrong = write("tests3.csv", "Bottle,Date,Time of day,Clearing time,Temp\n"
                                              "Dev 1,2026-11-20,half past,45,20\n");
    const Answer refused = run({"import", wrong});
    EXPECT_EQ(refused.code, kRefused);
    EXPECT_TRUE(refused.err.contains("half past")) << refused.err.constData();
}

TEST_F(SheetImportTest, ASumAtTheEndIsNoRecord)
{
    const QString name = write("sums.csv", "Bottle;Recipe;Volume (ml);Mixed;Films done;Notes\n"
                                           "Dev S;MQ borax;900;13.5.2026;3;\n"
                                           "Sum:;;900;;3;\n;;;Total;3;\n;;900;;3;summe\n");
    const Answer done = run({"import", name});
    ASSERT_EQ(done.code, kDone) << done.err.constData();
    for (const char* sum :
         {"sums.csv:3: passed over", "sums.csv:4: passed over", "sums.csv:5: passed over"}) {
        EXPECT_TRUE(done.err.contains(sum)) << done.err.constData();
    }
    const QString bottle = write("named.csv", "Bottle;Recipe;Volume (ml);Mixed;Films done;Notes\n"
                                              "Total;MQ borax;900;13.5.2026;3;\n");
    ASSERT_EQ(run({"import", bottle}).code, kDone);
    EXPECT_TRUE(book().contains(R"("name":"Total")")) << "a bottle may be called so";
}

// A title, merged headings, a time of its own, strokes, a month between the rows, a sum.
TEST_F(SheetImportTest, AStrangersListOfBottlesComesIn)
{
    const Answer done = run({"import", sheet("strangers-bottles.csv")});
    ASSERT_EQ(done.code, kDone) << done.err.constData();
    EXPECT_TRUE(done.err.contains("3 bottles read")) << done.err.constData();
    EXPECT_TRUE(done.err.contains("not used: “Regal”")) << done.err.constData();
    EXPECT_TRUE(done.err.contains("strangers-bottles.csv:9: passed over")) << "April";
    EXPECT_TRUE(done.err.contains("strangers-bottles.csv:11: passed over")) << "the sum";
    const QByteArray all = book();
    EXPECT_TRUE(all.contains(R"("volume_ml":1000,"name":"D1","films_before":6)"))
        << all.constData();
    EXPECT_TRUE(all.contains(R"("volume_ml":750,"name":"D2")"));
    EXPECT_TRUE(all.contains(R"("films_before":22.5)"));
    for (const QDateTime& at : {QDateTime({2026, 3, 2}, {19, 30}), QDateTime({2026, 3, 3}, {9, 15}),
                                QDateTime({2026, 4, 1}, {20, 0})}) {
        const QByteArray text = at.toUTC().toString(Qt::ISODate).toUtf8();
        EXPECT_TRUE(all.contains("\"mixed\",\"at\":\"" + text)) << text.constData();
    }
}

// Headings in two rows, a day of two figures, halves as a spreadsheet shows them.
TEST_F(SheetImportTest, AStrangersTableOfTwoHeadingRowsComesIn)
{
    const QString club = write("club.csv", "Club am Hafen;;;;;;\n"
                                           "Flasche;Inhalt;;F\xfcllung;Filme;;Notiz\n"
                                           "Nr.;L\xf6sung;angesetzt am;in l;bisher;noch;\n"
                                           ";;;;;;\n"
                                           "A 1;MQ borax;3.9.26;1,0;6;4;gr\xfcner Deckel\n"
                                           "A 2;MQ borax;14.10.26;0,95;2 1/2;7;\n"
                                           "Summe;;;1,95;8,5;;\n");
    const Answer done = run({"import", club});
    ASSERT_EQ(done.code, kDone) << done.err.constData();
    EXPECT_TRUE(done.err.contains("2 bottles read")) << done.err.constData();
    EXPECT_TRUE(done.err.contains("not used: “noch”")) << done.err.constData();
    EXPECT_TRUE(book().contains(R"("volume_ml":950,"name":"A 2","films_before":2.5)"))
        << book().constData();
}

TEST_F(SheetImportTest, AStrangersLogOfFilmsComesIn)
{
    const Answer done = run({"import", sheet("strangers-log.csv")});
    ASSERT_EQ(done.code, kDone) << done.err.constData();
    EXPECT_TRUE(done.err.contains("3 rows of film read")) << done.err.constData();
    const QByteArray all = book();
    EXPECT_EQ(all.count(R"("name":"Quay 400","ei":400)"), 2) << all.constData();
    EXPECT_EQ(all.count(R"("name":"Quay 400","ei":800)"), 2) << "strokes";
    EXPECT_TRUE(all.contains(R"(first \"real\" portrait · a bit thin)")) << all.constData();
}

TEST_F(SheetImportTest, AUnitTellsWhatTheCommaInItsNumberIs)
{
    const Answer tried = run({"import", sheet("strangers-bottles.tsv"), "--try"});
    ASSERT_EQ(tried.code, kDone) << tried.err.constData();
    EXPECT_TRUE(tried.err.contains("“Contents”: Solution")) << tried.err.constData();
    EXPECT_TRUE(tried.err.contains("“Left?”: not used"));
    ASSERT_EQ(run({"import", sheet("strangers-bottles.tsv")}).code, kDone);
    EXPECT_EQ(times(R"("volume_ml":1000,"name":"Soup)"), 2) << book().constData();
    EXPECT_TRUE(book().contains(R"("films_before":2)"));
}

TEST_F(SheetImportTest, RowsOfARefusedBottleAreNotRefusedAsWell)
{
    const QString mixed = sheet("strangers-mixed.csv");
    const Answer asked = run({"import", mixed});
    EXPECT_EQ(asked.code, kRefused);
    EXPECT_EQ(asked.err.count("strangers-mixed.csv:"), 1) << asked.err.constData();
    EXPECT_TRUE(asked.err.contains("strangers-mixed.csv:2: solution")) << asked.err.constData();
    QByteArray mapping = "{\"ullage-sheet\":1,\"heading_row\":1,\"decimal\":\",\",\"columns\":[";
    const std::vector<std::pair<const char*, const char*>> columns{{"Art", "kind"},
                                                                   {"Datum", "at"},
                                                                   {"Flasche", "batch"},
                                                                   {"Rezept", "solution"},
                                                                   {"Volumen", "volume_ml"},
                                                                   {"Filme", "films"},
                                                                   {"Film", "name"},
                                                                   {"Format", "format"},
                                                                   {"EI", "ei"},
                                                                   {"Zeit bis klar", "seconds"},
                                                                   {"Temp. in °C", "temperature_c"},
                                                                   {"Bestanden", "passed"},
                                                                   {"Notiz", "text"}};
    for (const auto& [heading, field] : columns)
        mapping += QByteArray(mapping.endsWith('[') ? "" : ",") + "{\"heading\":\"" + heading +
                   "\",\"field\":\"" + field + "\"}";
    mapping += "],\"solutions\":{\"Unser Guter\":\"MQ borax\"}}";
    const Answer done = run({"import", mixed, "--mapping", write("m.json", mapping)});
    ASSERT_EQ(done.code, kDone) << done.err.constData();
    EXPECT_TRUE(done.err.contains("1 bottle, 2 rows of film, 1 test read")) << done.err.constData();
    EXPECT_TRUE(book().contains(R"("kind":"clearing-test")"));
    EXPECT_TRUE(book().contains(R"("passed":true,"why":"Lasche ganz klar")")) << book().constData();
}

TEST_F(SheetImportTest, WhatNoColumnSaysIsToldOnce)
{
    const Answer refused =
        run({"import", write("s.csv", "Bottle;Recipe;Volume (ml)\n"
                                      "Dev K;MQ borax;900\nDev L;MQ borax;900\n")});
    EXPECT_EQ(refused.code, kRefused);
    EXPECT_EQ(refused.err.count("“Day”"), 1) << refused.err.constData();
    EXPECT_FALSE(refused.err.contains("s.csv:2")) << refused.err.constData();
}

TEST_F(SheetImportTest, ABottleIsCalledByItsSolutionWhereOneColumnSaysBoth)
{
    const Answer done =
        run({"import", write("s.csv", "Developer;Volume (ml);Mixed\nMQ borax;900;1.6.2026\n")});
    ASSERT_EQ(done.code, kDone) << done.err.constData();
    EXPECT_TRUE(book().contains(R"("volume_ml":900,"name":"MQ borax")")) << book().constData();
}

TEST_F(SheetImportTest, FilmOfTheDayABottleWasMixedOnIsAfterThat)
{
    const Answer done = run({"import", write("s.csv", "What;Bottle;Recipe;Volume;Day;Time;Rolls\n"
                                                      "mix;Dev M;MQ borax;900 ml;1.6.2026;19:30;\n"
                                                      "film;Dev M;;;1.6.2026;;2\n"
                                                      "film;Dev M;;;1.6.2026;18:00;2\n")});
    EXPECT_EQ(done.code, kRefused) << "it is said that it was before";
    EXPECT_TRUE(done.err.contains("s.csv:4: batch: this would be before Dev M was mixed"))
        << done.err.constData();
    EXPECT_FALSE(done.err.contains("s.csv:3")) << done.err.constData();
}

TEST_F(SheetImportTest, AMappingOfAnotherSheetIsRefused)
{
    const QString mapping = write(
        "mapping.json",
        R"({"ullage-sheet":1,"heading_row":1,"columns":[{"heading":"Other","field":"batch"}]})");
    const Answer refused = run({"import", sheet("open.csv"), "--mapping", mapping});
    EXPECT_EQ(refused.code, kRefused);
    EXPECT_TRUE(refused.err.contains("columns")) << refused.err.constData();
    EXPECT_EQ(run({"import", sheet("open.csv"), "--mapping", path("none.json")}).code, kRefused);
    EXPECT_EQ(run({"import", "-", "--try"}).code, kWrongUsage);
}

} // namespace
