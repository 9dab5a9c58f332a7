#include "app/widgets/figures.h"
#include "app/widgets/tally.h"
#include "app/widgets/theme.h"
#include "app/widgets/verdict_label.h"
#include "app/widgets/verdict_mark.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

#include <set>

using namespace ullage::app;

namespace
{

QImage shapeOf(VerdictLook look)
{
    QImage image(56, 56, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    paintVerdictShape(painter, image.rect(), look);
    return image;
}

// Separate dark runs along one row of the painted tally.
int strokesAcross(double films, double rowShare)
{
    QImage image(600, 40, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setPen(Qt::black);
    paintTally(painter, QRectF(10, 10, 580, 20), Qt::AlignLeft, films);
    painter.end();
    const int y = 10 + static_cast<int>(20 * rowShare);
    int runs = 0;
    bool dark = false;
    for (int x = 0; x < image.width(); ++x) {
        const bool now = qGray(image.pixel(x, y)) < 128;
        runs += now && !dark;
        dark = now;
    }
    return runs;
}

} // namespace

TEST(VerdictMark, EveryVerdictHasItsOwnShapeWhenColourIsTakenAway)
{
    std::set<QByteArray> outlines;
    for (const auto look : {VerdictLook::Good, VerdictLook::NearItsEnd, VerdictLook::TestFirst,
                            VerdictLook::Discard, VerdictLook::Resting}) {
        const QImage alpha = shapeOf(look).convertToFormat(QImage::Format_Alpha8);
        outlines.insert(QByteArray(reinterpret_cast<const char*>(alpha.bits()),
                                   static_cast<int>(alpha.sizeInBytes())));
    }
    EXPECT_EQ(outlines.size(), 5u);
}

TEST(VerdictMark, LabelSaysItsWord)
{
    VerdictLabel label;
    label.setLook(VerdictLook::NearItsEnd);
    EXPECT_EQ(label.accessibleName(), QStringLiteral("Near its end"));
    label.setText(QStringLiteral("Why: Good"));
    EXPECT_EQ(label.accessibleName(), QStringLiteral("Why: Good"));
}

TEST(Tally, GroupsOfFiveAndAShortStrokeForAPart)
{
    EXPECT_EQ(tallyStrokes(0).whole, 0);
    EXPECT_EQ(tallyStrokes(7).whole, 7);
    EXPECT_FALSE(tallyStrokes(7).part);
    EXPECT_TRUE(tallyStrokes(2.0 / 3).part);
    EXPECT_FALSE(tallyStrokes(1.0 / 3 + 1.0 / 3 + 1.0 / 3).part);
    EXPECT_EQ(tallyStrokes(0.9999999).whole, 1);
    EXPECT_FALSE(tallyStrokes(25).number);
    EXPECT_TRUE(tallyStrokes(26).number);
}

TEST(Tally, PaintsAsManyStrokesAsFilms)
{
    // At the very top the crossing stroke of a group is below, so only uprights are met.
    for (int films = 1; films <= 25; ++films)
        EXPECT_EQ(strokesAcross(films, 0.02), films - films / 5) << films;
    EXPECT_EQ(strokesAcross(0, 0.5), 0);
    EXPECT_EQ(strokesAcross(3.5, 0.1), 3);
    EXPECT_EQ(strokesAcross(3.5, 0.8), 4);
}

TEST(Tally, SaysTheCount)
{
    EXPECT_EQ(tallyText(0), QStringLiteral("not used yet"));
    EXPECT_EQ(tallyText(2 + 1.0 / 3), QStringLiteral("2⅓ films"));
    EXPECT_EQ(tallyText(0, true), QStringLiteral("films not known"));
    EXPECT_TRUE(tallyText(3, true).startsWith(QStringLiteral("at least 3 film")));
    EXPECT_GT(tallyWidth(0, 13, true), 0) << "a box stands for those that nobody counted";
    EXPECT_GT(tallyWidth(3, 13, true), tallyWidth(3, 13) + tallyWidth(0, 13, true));
}

TEST(Figures, DigitsKeepTheirPlaces)
{
    const QFont font = Theme::font(TextRole::Hero);
    EXPECT_DOUBLE_EQ(figuresWidth(font, QStringLiteral("11:11")),
                     figuresWidth(font, QStringLiteral("48:06")));
}
