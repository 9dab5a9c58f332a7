#include "app/paper/label_layout.h"

#include "app/paper/label_sheet.h"
#include "tests/app/paper/label_samples.h"

namespace ullage::app
{

using namespace testing;

namespace
{

QString allOf(const LabelFace& face)
{
    QStringList lines;
    for (const LabelLine& line : face.lines)
        lines << line.text;
    return lines.join(u' ').simplified();
}

// Of one line: from the top of its letters to below their stems.
QRectF inkOf(const LabelLine& line)
{
    constexpr double kStems = 0.22;
    const double size = line.letters.mm;
    return {line.baseline.x(), line.baseline.y() - kCapitals * size,
            textWidth(line.text, line.letters), (kCapitals + kStems) * size};
}

void expectSound(const LabelFace& face, const LabelWords& words)
{
    const QRectF inside(kLabelMargin - 0.01, kLabelMargin - 0.01,
                        face.size.width() - 2 * kLabelMargin + 0.02,
                        face.size.height() - 2 * kLabelMargin + 0.02);
    std::vector<QRectF> all{face.codeAt};
    EXPECT_TRUE(QRectF({}, face.size).adjusted(-0.01, -0.01, 0.01, 0.01).contains(face.codeAt));
    EXPECT_GE(face.module, kSmallestModule - 1e-9);
    EXPECT_LE(face.module, kLargestModule + 1e-9);
    EXPECT_NEAR(face.codeAt.width(), (face.code.side + 2 * kQuietModules) * face.module, 1e-6);
    for (const LabelLine& line : face.lines) {
        EXPECT_TRUE(inside.contains(inkOf(line))) << line.text.toStdString();
        EXPECT_GE(line.letters.mm, kSmallestLetters - 1e-9) << line.text.toStdString();
        all.push_back(inkOf(line));
    }
    for (const LabelBox& box : face.boxes) {
        EXPECT_TRUE(inside.contains(box.at)) << box.number;
        EXPECT_GE(box.at.width(), kSmallestBox - 1e-9);
        all.push_back(box.at);
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (std::size_t j = i + 1; j < all.size(); ++j)
            EXPECT_FALSE(all[i].adjusted(0.001, 0.001, -0.001, -0.001).intersects(all[j]))
                << i << " and " << j << " of " << face.lines.size()
                << " lines: " << allOf(face).toStdString();
    }
    ASSERT_FALSE(face.lines.empty());
    EXPECT_GE(face.lines.front().letters.mm * kCapitals, kNameCapitals - 1e-9);
    // What must stand on it does, whole.
    const QString text = allOf(face);
    for (const QString& one : {words.name, words.contents, words.mixed, words.discardBy,
                               words.notForDrinking, words.contains})
        EXPECT_TRUE(text.contains(one.simplified())) << one.toStdString() << "\n"
                                                     << text.toStdString();
    EXPECT_TRUE(face.code.text.startsWith(words.code.front()));
}

} // namespace

TEST(LabelLayout, everySolutionOfANewBookFitsEverySheet)
{
    StarterShelf shelf;
    const auto bottles = shelf.bottles();
    ASSERT_GE(bottles.size(), 12U);
    for (const LabelSheet& sheet : labelSheets()) {
        for (const ledger::Judged& bottle : bottles) {
            SCOPED_TRACE(sheet.id.toStdString() + ", " + bottle.batch.solution->name);
            const LabelWords words = labelWords(bottle, britishWording());
            const auto face = labelFace(words, sheet.label);
            ASSERT_TRUE(face);
            expectSound(*face, words);
        }
    }
}

TEST(LabelLayout, aLargerLabelHasLargerLettersAndSaysMore)
{
    const auto small = labelFace(sampleLabel(), {63.5, 38.1});
    const auto large = labelFace(sampleLabel(), {105, 74});
    ASSERT_TRUE(small && large);
    EXPECT_GT(large->lines.front().letters.mm, small->lines.front().letters.mm);
    EXPECT_TRUE(large->leftOut.empty());
    EXPECT_LE(large->leftOut.size(), small->leftOut.size());
    EXPECT_EQ(large->boxes.size(), 10U);
    EXPECT_TRUE(large->boxes[2].done);
    EXPECT_FALSE(large->boxes[3].done);
    EXPECT_EQ(large->code.linesLeftOut, 0);
}

TEST(LabelLayout, whatDoesNotFitIsLeftOutWholeAndInOrder)
{
    LabelWords words = sampleLabel();
    std::size_t before = 0;
    bool refused = false;
    for (int i = 0; i < 40 && !refused; ++i) {
        const auto face = labelFace(words, {70, 36});
        refused = !face;
        if (refused)
            break;
        expectSound(*face, words);
        EXPECT_GE(face->leftOut.size(), before);
        before = face->leftOut.size();
        // Boxes stay as long as anything else can go; without them the others are left out as
        // before.
        std::vector<LabelPart> others = face->leftOut;
        if (face->boxes.empty()) {
            ASSERT_EQ(others.back(), LabelPart::Boxes);
            others.pop_back();
        }
        for (std::size_t part = 0; part < others.size(); ++part)
            EXPECT_EQ(others[part], LabelPart(part));
        words.contains += QStringLiteral(" And more of it.");
    }
    EXPECT_TRUE(refused); // rather than cut
    // Numbers for boxes may gain too little, so close to the end.
    EXPECT_GE(before, std::size_t(kLabelParts) - 1);
}

TEST(LabelLayout, moreFilmsThanBoxesHaveRoomForStandInNumbers)
{
    LabelWords words = sampleLabel();
    words.films = 400;
    words.filmsInWords = QStringLiteral("3 of 400 films done");
    const auto face = labelFace(words, {70, 36});
    ASSERT_TRUE(face);
    EXPECT_TRUE(face->boxes.empty());
    EXPECT_TRUE(allOf(*face).contains("3 of 400 films done"));
    words.films = 24;
    const auto large = labelFace(words, {105, 74});
    ASSERT_TRUE(large);
    EXPECT_EQ(large->boxes.size(), 24U);
    expectSound(*large, words);
}

// A bottle of a hundred films lost its vessel and its cautions to boxes that had no room anyway.
TEST(LabelLayout, boxesThatHaveNoRoomAreNoReasonToLeaveOutAnythingElse)
{
    LabelWords words = sampleLabel();
    words.films = 118;
    words.filmsInWords = QStringLiteral("98 of 118 films done");
    const auto face = labelFace(words, {105, 48});
    ASSERT_TRUE(face);
    expectSound(*face, words);
    EXPECT_EQ(face->leftOut, std::vector<LabelPart>{LabelPart::Boxes});
    for (const QString& said : {words.filmsInWords, words.vessel, words.care, words.wear})
        EXPECT_TRUE(allOf(*face).contains(said)) << said.toStdString();
}

// What stands on a developer's label takes more room in a language of long words: it was refused on
// the size that is offered first.
TEST(LabelLayout, longWordsOfAnotherLanguageFitTheSmallestLabels)
{
    LabelWords words = sampleLabel();
    words.name = QStringLiteral("Entw 25");
    words.contents = QStringLiteral("MQ-Borax-Entwickler, Stammlösung · 940 ml");
    words.mixed = QStringLiteral("angesetzt am 11. Okt. 2026");
    words.discardBy = QStringLiteral("entsorgen bis 12. März 2027");
    words.notForDrinking =
        QStringLiteral("FOTOLÖSUNG, NICHT TRINKEN. Von Kindern und Tieren fernhalten.");
    words.contains = QStringLiteral("Enthält Metol (H302 H317 H410), Hydrochinon (H302 H317 H318 "
                                    "H341 H351 H410), Borax (H360): siehe Sicherheitsdatenblatt.");
    words.filmsInWords = QStringLiteral("9 von 9 Filmen fertig");
    words.films = 9;
    words.code = {kSampleId, words.name, words.contents, words.mixed, words.discardBy};
    for (const LabelSheet& sheet : labelSheets()) {
        SCOPED_TRACE(sheet.id.toStdString());
        const auto face = labelFace(words, sheet.label);
        ASSERT_TRUE(face);
        expectSound(*face, words);
    }
}

TEST(LabelLayout, aNameTooLongIsRefusedAndALongOneTakesTwoLines)
{
    LabelWords words = sampleLabel();
    words.name = QStringLiteral("Tuesday course developer");
    const auto two = labelFace(words, {70, 36});
    ASSERT_TRUE(two);
    expectSound(*two, words);
    words.name = QString(300, u'W');
    const auto none = labelFace(words, {70, 36});
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error(), LabelProblem::WordsTooLong);
    words.code = {QString(2000, u'x')};
    EXPECT_EQ(labelFace(words, {70, 36}).error(), LabelProblem::CodeTooLarge);
}

TEST(LabelLayout, aNameIsWrittenSmallerBeforeAWordOfItIsBroken)
{
    LabelWords words = sampleLabel();
    words.name = QStringLiteral("Wässerungshilfe 12");
    for (const QSizeF& size : {QSizeF(101.6, 84.7), QSizeF(70, 36)}) {
        const auto face = labelFace(words, size);
        ASSERT_TRUE(face);
        expectSound(*face, words);
        EXPECT_TRUE(face->lines.front().text.startsWith("Wässerungshilfe")) << size.width();
    }
}

TEST(LabelLayout, whatCannotBeSeenIsWrittenOut)
{
    LabelWords words = sampleLabel();
    words.name = QStringLiteral("Dev\n1 \u202etxt");
    const auto face = labelFace(words, {105, 74});
    ASSERT_TRUE(face);
    words.name = seenText(words.name);
    EXPECT_EQ(words.name, "Dev\\n1 \\u202etxt");
    EXPECT_EQ(face->lines.front().text, words.name.section(u' ', 0, 0)) << "broken where it may be";
    expectSound(*face, words);
}

TEST(LabelLayout, labelsOfASheetLieOnItAndDoNotOverlap)
{
    for (const LabelSheet& sheet : labelSheets()) {
        SCOPED_TRACE(sheet.id.toStdString());
        const QRectF paper(QPointF(-0.01, -0.01), sheet.sheet + QSizeF(0.02, 0.02));
        for (int i = 0; i < sheet.labels(); ++i) {
            EXPECT_TRUE(paper.contains(sheet.place(i))) << i;
            for (int j = i + 1; j < sheet.labels(); ++j) {
                const QRectF both = sheet.place(i) & sheet.place(j);
                EXPECT_LT(both.width() * both.height(), 1e-6) << i << " and " << j;
            }
        }
        EXPECT_EQ(labelSheet(sheet.id), &sheet);
    }
    EXPECT_EQ(labelSheet("7x7"), nullptr);
}

TEST(LabelWords, theyAreThoseOfTheBottle)
{
    StarterShelf shelf;
    const LabelWords words = labelWords(shelf.bottles().front(), britishWording());
    EXPECT_EQ(words.name, "Batch 1");
    EXPECT_EQ(words.contents, "MQ borax developer, stock · 1,000\u00a0ml");
    EXPECT_EQ(words.mixed, "mixed 7 Dec 2026");
    EXPECT_TRUE(words.discardBy.startsWith("discard by ")) << words.discardBy.toStdString();
    EXPECT_EQ(words.films, 10); // 10 films a litre, a litre
    EXPECT_EQ(words.filmsDone, 0);
    EXPECT_EQ(words.wear, "add 10 % of the first time for each film before");
    EXPECT_TRUE(words.contains.contains("metol (H302 H317 H410)")) << words.contains.toStdString();
    EXPECT_TRUE(words.contains.contains("borax (H360)"));
    EXPECT_TRUE(words.contains.contains("data sheet"));
    EXPECT_TRUE(words.notForDrinking.contains("NOT FOR DRINKING"));
    EXPECT_TRUE(words.statements.contains("H317: may cause an allergic skin reaction"));
    EXPECT_EQ(words.code.front().size(), 36);
}

} // namespace ullage::app
