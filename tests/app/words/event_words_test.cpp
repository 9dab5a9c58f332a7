#include "app/words/event_words.h"

#include "app/words/formulary_words.h"
#include "app/words/moment_text.h"
#include "core/ledger/line_description.h"
#include "tests/app/words/sample_batches.h"

namespace ullage::app
{

using namespace ledger;
using namespace sample;

namespace
{

QString line(Happening what, std::optional<Millilitres> air = {})
{
    const Event event{"e", "b", day(1), std::move(what), air};
    return eventText(event, formularyOfTwo(), english()).replace(QChar(0xa0), ' ');
}

} // namespace

TEST(EventWords, eachKindInOneLine)
{
    EXPECT_EQ(line(Mixed{"mq", "b1", Millilitres(1000)}),
              "Mixed 1,000 ml of MQ borax developer in Amber 1");
    EXPECT_EQ(line(Mixed{"mq", "b1", Millilitres(500), "", "", true}),
              "Found 500 ml of MQ borax developer in Amber 1, history unknown");
    EXPECT_EQ(
        line(Processed{{.films = {{"135-36", 2}, {"4x5", 4}}}, Millilitres(600), Millilitres(20)}),
        "2 × 135-36, 4 × 4×5 in 600 ml, 20 ml lost");
    EXPECT_EQ(line(Drawn{Millilitres(20), "spilled"}), "Drew off 20 ml: spilled");
    EXPECT_EQ(line(Drawn{Millilitres(20), "top-up"}), "Drew off 20 ml: to top up another bottle");
    EXPECT_EQ(line(Moved{"b9"}), "Moved to b9");
    EXPECT_EQ(line(ClearingTested{chemistry::Seconds(61), chemistry::Celsius(20.5)}),
              "Cleared in 61 s at 20.5 °C");
    EXPECT_EQ(line(StripTested{1.2, 1.05, true}),
              "Control strip, density 1.2, time × 1.05, passed");
    EXPECT_EQ(line(Looked{false, "smell"}), "Looked at, failed: smell");
    EXPECT_EQ(line(Opened{}, Millilitres(30)), "Opened; 30 ml of air left");
    EXPECT_EQ(line(Noted{"100 %1 %2"}), "100 %1 %2") << "a user's text is no pattern";
}

TEST(EventWords, aNameWithAPlaceMarkDoesNotMoveTheOthers)
{
    formulary::Formulary formulary;
    formulary::Solution odd;
    odd.id = "odd";
    odd.name = "%3 soup";
    formulary.add(odd);
    const Event event{"e", "b", day(1), Mixed{"odd", "b1", Millilitres(10)}, {}};
    EXPECT_TRUE(eventText(event, formulary, english()).contains("%3 soup in b1"));
}

TEST(EventWords, undoNamesTheDeed)
{
    EXPECT_EQ(undoText(Action{.what = "mix", .subject = "Dev 15"}), "Undo mixing Dev 15");
    EXPECT_EQ(redoText(Action{.what = "run-film", .subject = "Dev 14, Fix 9"}),
              "Redo running film in Dev 14, Fix 9");
    EXPECT_EQ(undoText(Action{.what = "void"}), "Undo taking back an entry");
    EXPECT_EQ(undoText(std::nullopt), "Undo");
    for (const auto kind : kKindCodes) {
        if (kind == "mixed" || kind == "processed" || kind == "topped-up" || kind == "voided" ||
            kind == "opened-packet")
            continue; // named by their deed ("mix", "run-film" …), or without a door yet
        const auto all = lineDescriptions();
        const bool unbuilt = std::any_of(all.begin(), all.end(), [&](const LineDescription& line) {
            return line.kind == kind && !line.built;
        });
        if (unbuilt)
            continue; // nobody can do it yet
        EXPECT_NE(actionName(Action{.what = std::string(kind), .subject = "X"}),
                  QString::fromUtf8(kind.data()))
            << kind;
    }
}

TEST(FormularyWords, formatsAsTheTradeNamesThem)
{
    EXPECT_EQ(filmFormatName("135-36"), "35 mm, 36 exposures");
    EXPECT_EQ(filmFormatName("4x5"), "4 × 5 in sheet");
    EXPECT_EQ(filmFormatName("9x12cm"), "9 × 12 cm sheet");
    EXPECT_EQ(filmFormatName("strange"), "strange");
    EXPECT_EQ(filmFormatName("4.6x61cm"), "Film 46\u00a0mm\u00a0×\u00a061\u00a0cm");
    EXPECT_EQ(filmFormatShort("135-36"), "135-36");
    EXPECT_EQ(filmFormatShort("4x5"), "4×5");
    EXPECT_EQ(filmFormatShort("9x12cm"), "9×12\u00a0cm");
    EXPECT_EQ(filmFormatShort("1.6x150cm"), "16\u00a0mm\u00a0×\u00a0150\u00a0cm");
    EXPECT_EQ(filmStripName(chemistry::filmStrips()[0]), "127, 46 mm wide, by length");
    EXPECT_EQ(filmStripName(chemistry::filmStrips()[2]), "16 mm by length");
}

TEST(FormularyWords, formatsAreReadAsTheyAreShown)
{
    for (const char* code : {"135-36", "120", "4x5", "6.5x9cm", "11x14in", "4.6x61cm"}) {
        EXPECT_EQ(readFilmFormat(filmFormatShort(code)), code);
    }
    EXPECT_EQ(readFilmFormat(QStringLiteral(" 9 × 12 CM ")), "9x12cm");
    EXPECT_EQ(readFilmFormat(QStringLiteral("6,5x9cm")), "6.5x9cm");
    EXPECT_EQ(readFilmFormat(QStringLiteral("strange film")), "strangefilm");
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    EXPECT_EQ(filmFormatShort("6.5x9cm"), "6,5×9\u00a0cm");
    EXPECT_EQ(readFilmFormat(filmFormatShort("6.5x9cm")), "6.5x9cm");
    QLocale::setDefault(before);
}

TEST(MomentText, keepingTimes)
{
    const QLocale locale(QLocale::English, QLocale::UnitedKingdom);
    EXPECT_EQ(keepingText(chemistry::Days(182.625), locale), "6 months");
    EXPECT_EQ(keepingText(chemistry::Days(42), locale), "42 days");
    EXPECT_EQ(keepingText(chemistry::Days(1), locale), "1 day");
    EXPECT_EQ(keepingText(chemistry::Days(0.5), locale), "12 hours");
}

TEST(MomentText, localTimeAndBackIsTheSameMoment)
{
    EXPECT_EQ(instantOf(localTime(day(3))), day(3));
}

} // namespace ullage::app
