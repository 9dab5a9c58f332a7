#include "app/widgets/bottle_painter.h"

#include "app/widgets/hatch.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QFontMetricsF>
#include <QLinearGradient>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

constexpr double kOutline = 1.9;
constexpr QColor kNotKnown(0x9D, 0x9D, 0x99);

bool large(const BottleView& bottle) { return bottle.capacityMl >= 2000; }

void paintCap(QPainter& painter, const BottleShape& shape, const BottleView& bottle)
{
    const bool wide = bottle.material != BottleMaterial::Glass;
    const double width = shape.neckWidth() + (wide ? 7 : 4);
    const double height = wide ? 15 : 12;
    const QRectF cap(-width / 2, -shape.height() - height + 2, width, height);
    const QColor ink = colours().ink;
    const bool solid = bottle.material == BottleMaterial::Glass;
    painter.setPen(solid ? Qt::NoPen : QPen(ink, kOutline));
    painter.setBrush(solid ? ink : blend(colours().glass, ink, 0.16));
    painter.drawRoundedRect(cap, 3, 3);
    if (solid)
        return;
    // The ribs of a moulded cap.
    painter.setPen(QPen(blend(colours().glass, ink, 0.6), 1));
    const int ribs = std::max(3, static_cast<int>(width / 6));
    for (int i = 1; i < ribs; ++i) {
        const double x = cap.left() + width * i / ribs;
        painter.drawLine(QPointF(x, cap.top() + 4), QPointF(x, cap.bottom() - 3));
    }
}

// What only one material has: a jug's grip, the foot of PET, graduation on PP. Drawn over the
// liquid, thin, and never part of the volume.
void paintFeatures(QPainter& painter, const BottleShape& shape, const BottleView& bottle)
{
    const QColor line = blend(colours().glass, colours().ink, 0.55);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(line, 1.1, Qt::SolidLine, Qt::RoundCap));
    switch (bottle.material) {
    case BottleMaterial::Pet:
        for (const double part : {0.095, 0.70}) {
            const double y = shape.height() * part;
            const double r = shape.radiusAt(y) - 2;
            QPainterPath rib(QPointF(-r, -y));
            rib.quadTo(0, -y + 4, r, -y);
            painter.drawPath(rib);
        }
        break;
    case BottleMaterial::Pp:
        for (int mark = 1; mark <= 7; ++mark) {
            const double y = shape.levelOf(shape.innerMl() * mark / 10.0);
            const double r = shape.radiusAt(y) - 3;
            painter.drawLine(QPointF(r, -y), QPointF(r - (mark % 2 == 0 ? 9 : 5), -y));
        }
        break;
    case BottleMaterial::Hdpe:
        if (large(bottle)) { // the grip
            const double r = shape.width() / 2;
            const QRectF grip(r * 0.30, -shape.height() * 0.76, r * 0.44, shape.height() * 0.17);
            painter.setBrush(colours().glass);
            painter.setPen(QPen(colours().ink, 1.4));
            painter.drawRoundedRect(grip, grip.width() / 2, grip.width() / 2);
        } else {
            const double y = shape.height() * 0.745;
            painter.drawLine(QPointF(-shape.radiusAt(y) + 5, -y),
                             QPointF(shape.radiusAt(y) - 5, -y));
        }
        break;
    case BottleMaterial::Glass:
    case BottleMaterial::Ldpe:
        break;
    }
}

QFont fitted(const QString& text, QFont font, double width, int smallest)
{
    while (font.pixelSize() > smallest && QFontMetricsF(font).horizontalAdvance(text) > width)
        font.setPixelSize(font.pixelSize() - 1);
    return font;
}

double tapeWidth(const BottleShape& shape)
{
    const double body = 2 * shape.radiusAt(shape.labelHeight()); // narrower when squeezed
    return std::round(std::max({body * 0.91, shape.width() * 0.7, 62.0}));
}

constexpr double kTapeInset = 8; // of its words, both sides

// Words on a smaller bottle are not smaller in the same measure: they are read from as far away.
int tapePixels(double pixels, double scale)
{
    constexpr double kMost = 1.35;
    return static_cast<int>(std::round(pixels * std::clamp(1 / scale, 1.0, kMost)));
}

QFont tapeName(const QString& name, double room, double scale)
{
    QFont font = Theme::font(TextRole::Strong);
    font.setPixelSize(tapePixels(12, scale));
    font.setWeight(QFont::Bold);
    return fitted(name, font, room, tapePixels(9, scale));
}

void paintTape(QPainter& painter, const BottleShape& shape, const BottleView& bottle, double scale)
{
    const Colours& c = colours();
    const double width = tapeWidth(shape);
    const QRectF tape(-width / 2, -std::round(shape.labelHeight() + 22), width, 44);
    painter.setPen(QPen(c.tapeBorder, 1));
    painter.setBrush(c.tape);
    painter.drawRoundedRect(tape, 2, 2);
    const double room = width - kTapeInset;
    const QFont name = tapeName(bottle.name, room, scale);
    constexpr auto kPlaced = Qt::AlignCenter | Qt::TextSingleLine | Qt::TextDontClip;
    painter.setFont(name);
    painter.setPen(c.tapeInk);
    painter.drawText(tape.adjusted(4, 5, -4, -24), kPlaced,
                     oneLine(bottle.name, QFontMetricsF(name), room));
    QFont date = Theme::font(TextRole::Axis);
    date.setWeight(QFont::Medium);
    date.setPixelSize(tapePixels(date.pixelSize(), scale));
    const int smallest = tapePixels(9, scale);
    const QFont whole = fitted(bottle.mixedText, date, room, smallest);
    const bool fits = QFontMetricsF(whole).horizontalAdvance(bottle.mixedText) <= room;
    const QString mixed = fits || bottle.mixedDate.isEmpty() ? bottle.mixedText : bottle.mixedDate;
    date = fitted(mixed, date, room, smallest);
    painter.setFont(date);
    painter.setPen(c.tapeQuiet);
    painter.drawText(tape.adjusted(4, 24, -4, -5), kPlaced,
                     oneLine(mixed, QFontMetricsF(date), room));
}

QColor dye(const BottleView& bottle)
{
    const double wear = bottle.wear.value_or(0);
    const double used = std::clamp(std::max(bottle.standing, 0.5 * wear), 0.0, 1.0);
    switch (bottle.solution) {
    case SolutionLook::Developer:
        return blend(QColor("#CF9B57"), QColor("#8A5520"), used);
    case SolutionLook::Stop:
        // Indicator stop baths turn when they are spent; only a verdict says that they are.
        return bottle.verdict == VerdictLook::Discard ? QColor("#8F79AE") : QColor("#E3C94F");
    case SolutionLook::Fixer:
        return blend(QColor("#BCC9CF"), QColor("#868E91"),
                     std::clamp(std::max(bottle.standing, wear), 0.0, 1.0));
    case SolutionLook::WashAid:
        return blend(QColor("#A6C0B0"), QColor("#7F9A8B"), used);
    case SolutionLook::WettingAgent:
        return QColor("#D6E2E4");
    case SolutionLook::Other:
        return blend(QColor("#CFC6B8"), QColor("#A1978A"), used);
    }
    return {};
}

} // namespace

QColor liquidColour(const BottleView& bottle)
{
    // Where nobody knows what went through it no colour tells how spent it is.
    const QColor colour = bottle.wear ? dye(bottle) : blend(dye(bottle), kNotKnown, 0.62);
    // Under a safelight everything is red; how dark it is still tells a spent bottle.
    return Theme::instance().isDarkRoom() ? QColor(qGray(colour.rgb()) / 2, 0, 0) : colour;
}

BottleShape shapeOf(const BottleView& bottle)
{
    if (!bottle.squeezed)
        return BottleShape(bottle.material, bottle.capacityMl);
    const double air = std::max(bottle.airMl, bottle.capacityMl * 0.02);
    return BottleShape(bottle.material, bottle.capacityMl,
                       std::min(bottle.capacityMl, bottle.volumeMl + air));
}

bool tapeHoldsName(const BottleView& bottle, double scale)
{
    const double room = tapeWidth(shapeOf(bottle)) - kTapeInset;
    return QFontMetricsF(tapeName(bottle.name, room, scale)).horizontalAdvance(bottle.name) <= room;
}

void paintBottle(QPainter& painter, const QPointF& foot, double scale, const BottleView& bottle,
                 BottleLabel label)
{
    const Colours& c = colours();
    const BottleShape shape = shapeOf(bottle);
    const QPainterPath outline = shape.outline();
    const double half = shape.width() / 2 + 2;
    const double level = shape.levelOf(bottle.volumeMl);

    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(foot);
    painter.scale(scale, scale);

    painter.save();
    painter.setClipPath(outline, Qt::IntersectClip);
    const QRectF inside(-half, -shape.height(), 2 * half, shape.height());
    painter.fillRect(inside, c.glass);
    if (level < shape.height())
        paintHatch(painter, inside.adjusted(0, 0, 0, -level), c.hatch, 5.2, 1.1);
    if (level > 0) {
        const QRectF liquid(-half, -level, 2 * half, level);
        const QColor colour = liquidColour(bottle);
        painter.fillRect(liquid, colour);
        // A little roundness: the sides of a filled bottle look darker than its middle.
        QLinearGradient round(-half, 0, half, 0);
        round.setColorAt(0, QColor(0, 0, 0, 30));
        round.setColorAt(0.16, QColor(0, 0, 0, 0));
        round.setColorAt(0.84, QColor(0, 0, 0, 0));
        round.setColorAt(1, QColor(0, 0, 0, 38));
        painter.fillRect(liquid, round);
        QColor surface(Theme::instance().isDarkRoom() ? "#000000" : "#20262B");
        surface.setAlphaF(0.42F);
        painter.setPen(QPen(surface, 1.4));
        painter.drawLine(QPointF(-half, -level), QPointF(half, -level));
    }
    painter.restore();

    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.ink, kOutline, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(outline);
    paintFeatures(painter, shape, bottle);
    paintCap(painter, shape, bottle);
    if (label == BottleLabel::Tape)
        paintTape(painter, shape, bottle, scale);
    painter.restore();
}

} // namespace ullage::app
