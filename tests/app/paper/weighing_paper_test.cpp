#include "app/paper/weighing_paper.h"

#include "app/words/cautions.h"
#include "app/words/weighing_words.h"
#include "tests/app/paper/label_samples.h"

namespace ullage::app
{

using namespace testing;

namespace
{

ledger::ItemHere jarOfSheet(const char* id, const char* name, std::optional<double> left)
{
    ledger::Chemical line;
    line.id = id;
    line.name = name;
    line.grams = left;
    ledger::ItemHere here;
    here.item = itemOf(line);
    here.stock.left = left;
    here.line = line;
    return here;
}

// Half a litre of a developer of three chemicals and a stop bath's acid.
WeighingSheet sheetWith(const std::vector<ledger::ItemHere>& items)
{
    const chemistry::Formula formula{chemistry::Millilitres(500),
                                     {{"metol", "", 1},
                                      {"sodium-sulfite", "anhydrous", 50},
                                      {"borax", "decahydrate", 1},
                                      {"acetic acid", "", 9, chemistry::AmountUnit::Millilitre}}};
    formulary::Solution solution;
    solution.name = "House developer";
    formulary::Vessel vessel;
    vessel.name = "Amber 1";
    return {QStringLiteral("Dev 15"), std::make_shared<formulary::Solution>(solution),
            std::make_shared<formulary::Vessel>(vessel), chemistry::Millilitres(500),
            cupboard::weighOut(formula, items, namesOfPart)};
}

PaperAbout aboutSheet()
{
    return {QStringLiteral("home"),
            std::chrono::sys_days(std::chrono::year{2026} / 12 / 7) + std::chrono::hours(10),
            britishWording()};
}

const PaperTable& tableOfSheet(const PaperDocument& document)
{
    for (const PaperBlock& block : document.blocks) {
        if (const auto* table = std::get_if<PaperTable>(&block))
            return *table;
    }
    throw std::out_of_range("no table");
}

QStringList wordsOfSheet(const PaperDocument& document)
{
    QStringList words;
    for (const PaperBlock& block : document.blocks) {
        if (const auto* one = std::get_if<PaperWords>(&block))
            words << one->text;
    }
    return words;
}

} // namespace

TEST(WeighingPaper, hasABoxForEachChemicalAndWhatTheCupboardLacks)
{
    const auto document = weighingPaper(
        sheetWith({jarOfSheet("m", "metol", std::nullopt), jarOfSheet("b", "borax", 0.25)}),
        aboutSheet());
    EXPECT_EQ(document.title, "To weigh out: Dev 15");
    const PaperTable& table = tableOfSheet(document);
    ASSERT_EQ(table.columns.size(), 5U);
    EXPECT_TRUE(table.columns[0].tick);
    EXPECT_EQ(table.rows,
              (std::vector<QStringList>{{"", "metol", "1 g", "not counted", ""},
                                        {"", "sodium sulfite, anhydrous", "50 g", "none", "50 g"},
                                        {"", "borax, decahydrate", "1 g", "0.25 g", "0.75 g"},
                                        {"", "acetic acid", "9 ml", "–", ""}}));
    const QStringList words = wordsOfSheet(document);
    EXPECT_EQ(words.first(), "500\u00a0ml of House developer, into Amber 1");
    EXPECT_TRUE(words.join(u'\n').contains("too little")) << words.join(u'\n').toStdString();
    for (const QString& caution : mixingCautions(*sheetWith({}).solution, MixedFrom::RawChemicals))
        EXPECT_TRUE(words.contains(caution)) << caution.toStdString();
}

TEST(WeighingPaper, ofACupboardWithoutChemicalsItSaysNothing)
{
    const auto document = weighingPaper(sheetWith({}), aboutSheet());
    EXPECT_EQ(tableOfSheet(document).columns.size(), 3U);
    EXPECT_EQ(tableOfSheet(document).rows[1],
              (QStringList{"", "sodium sulfite, anhydrous", "50 g"}));
    EXPECT_FALSE(wordsOfSheet(document).join(u'\n').contains("cupboard"));
}

TEST(WeighingPaper, whatLacksIsToldLineByLine)
{
    const auto sheet = sheetWith({jarOfSheet("b", "borax", 0.25), jarOfSheet("m", "metol", 5)});
    EXPECT_EQ(lackingLines(sheet.out, britishWording().locale),
              (QStringList{"sodium sulfite, anhydrous: 50 g missing, none in the cupboard",
                           "borax, decahydrate: 0.75 g missing (in the cupboard: 0.25 g)"}));
    EXPECT_TRUE(lackingLines(sheetWith({}).out, britishWording().locale).isEmpty());
}

} // namespace ullage::app
