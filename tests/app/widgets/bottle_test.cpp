#include "app/widgets/bottle_painter.h"
#include "app/widgets/theme.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

#include <cmath>

using namespace ullage::app;

namespace
{

constexpr BottleMaterial kMaterials[]{BottleMaterial::Glass, BottleMaterial::Pet,
                                      BottleMaterial::Hdpe, BottleMaterial::Ldpe,
                                      BottleMaterial::Pp};

// What a person would measure on the picture: the inside widths of the bottle row by row, each
// taken as a disc, those below the painted level against all of them. It shares nothing with the
// code that finds the level: it counts pixels of the finished painting.
double paintedShare(const BottleView& bottle)
{
    constexpr double kScale = 8;
    constexpr int kWidth = 1300;
    constexpr int kHeight = 1700;
    QImage image(kWidth, kHeight, QImage::Format_RGB32);
    image.fill(QColor(255, 0, 255));
    QPainter painter(&image);
    paintBottle(painter, QPointF(kWidth / 2.0, kHeight - 60), kScale, bottle, BottleLabel::None);
    painter.end();

    const BottleShape shape = shapeOf(bottle);
    const int top = kHeight - 60 - static_cast<int>(std::lround(shape.height() * kScale));
    const QColor liquid = liquidColour(bottle);
    const auto isLiquid = [&](QRgb pixel) {
        return std::abs(qRed(pixel) - liquid.red()) < 6 &&
               std::abs(qGreen(pixel) - liquid.green()) < 6 &&
               std::abs(qBlue(pixel) - liquid.blue()) < 6;
    };
    // The level is the middle of the line that marks it.
    int level = top;
    while (level < kHeight - 60 && !isLiquid(image.pixel(kWidth / 2 - 60, level)))
        ++level;
    level -= static_cast<int>(std::lround(1.4 * kScale / 2));
    double all = 0;
    double below = 0;
    for (int y = top; y < kHeight - 60; ++y) {
        // From outside to the middle of the outline's stroke: half the stroke belongs to the
        // inside.
        int left = 0;
        while (left < kWidth && image.pixel(left, y) == qRgb(255, 0, 255))
            ++left;
        int right = kWidth - 1;
        while (right > left && image.pixel(right, y) == qRgb(255, 0, 255))
            --right;
        const double radius = std::max(0.0, (right - left + 1) / 2.0 - 1.9 * kScale / 2);
        all += radius * radius;
        if (y >= level)
            below += radius * radius;
    }
    return below / all;
}

} // namespace

TEST(Bottle, PaintedLevelMatchesTheVolume)
{
    for (const BottleMaterial material : kMaterials) {
        for (const double share : {0.1, 0.33, 0.5, 0.8, 0.95}) {
            BottleView bottle;
            bottle.material = material;
            bottle.capacityMl = 1030;
            bottle.volumeMl = share * bottle.capacityMl;
            EXPECT_NEAR(paintedShare(bottle), share, 0.01)
                << "material " << static_cast<int>(material) << " at " << share;
        }
    }
}

TEST(Bottle, EmptyAndBrimFull)
{
    const BottleShape shape(BottleMaterial::Glass, 1000);
    EXPECT_DOUBLE_EQ(shape.levelOf(0), 0);
    EXPECT_DOUBLE_EQ(shape.levelOf(-5), 0);
    EXPECT_DOUBLE_EQ(shape.levelOf(std::nan("")), 0);
    EXPECT_NEAR(shape.levelOf(1000), shape.height(), 1e-9);
    EXPECT_NEAR(shape.levelOf(2000), shape.height(), 1e-9);
}

TEST(Bottle, LevelIsNotTheHeightsShare)
{
    // The neck holds little: half the volume stands below half the height.
    for (const BottleMaterial material : kMaterials) {
        const BottleShape shape(material, 1000);
        EXPECT_LT(shape.levelOf(500), 0.48 * shape.height());
    }
}

TEST(Bottle, SqueezedIsNarrowedToWhatItHolds)
{
    for (const BottleMaterial material : kMaterials) {
        BottleView bottle;
        bottle.material = material;
        bottle.capacityMl = 1000;
        bottle.volumeMl = 700;
        bottle.airMl = 20;
        bottle.squeezed = true;
        const BottleShape shape = shapeOf(bottle);
        EXPECT_NEAR(shape.innerMl(), 720, 1);
        EXPECT_GT(shape.levelOf(700), 0.8 * shape.height());
        EXPECT_NEAR(paintedShare(bottle), 700.0 / 720, 0.015) << static_cast<int>(material);
    }
}

TEST(Bottle, CannotBeSqueezedFlat)
{
    const BottleShape shape(BottleMaterial::Pet, 1000, 50);
    EXPECT_GT(shape.innerMl(), 150) << "the rest is shown as air, not made to vanish";
    EXPECT_LT(shape.levelOf(50), shape.height() / 2);
}

TEST(Bottle, SilhouettesDiffer)
{
    for (const BottleMaterial a : kMaterials) {
        for (const BottleMaterial b : kMaterials) {
            if (a == b)
                continue;
            const BottleShape first(a, 1000);
            const BottleShape second(b, 1000);
            double difference = std::abs(first.height() - second.height());
            for (double part = 0; part <= 1; part += 0.02)
                difference =
                    std::max(difference, std::abs(first.radiusAt(part * first.height()) -
                                                  second.radiusAt(part * second.height())));
            EXPECT_GT(difference, 6);
        }
    }
}

TEST(Bottle, DeveloperDarkensWithStanding)
{
    BottleView bottle;
    bottle.standing = 0.1;
    const QColor young = liquidColour(bottle);
    bottle.standing = 0.9;
    EXPECT_LT(liquidColour(bottle).lightness(), young.lightness() - 20);
}

TEST(BottlePainter, TellsWhereItsLabelHasNoRoomForTheName)
{
    BottleView bottle;
    bottle.capacityMl = 1000;
    bottle.volumeMl = 900;
    bottle.name = QStringLiteral("Fix 14");
    EXPECT_TRUE(tapeHoldsName(bottle, 1));
    EXPECT_TRUE(tapeHoldsName(bottle, 0.75));
    bottle.name = QStringLiteral("Wash aid of the evening course 8");
    EXPECT_FALSE(tapeHoldsName(bottle, 1));
}
