#include "app/widgets/tally.h"

#include "app/widgets/hatch.h"
#include "app/widgets/tally_label.h"
#include "app/widgets/theme.h"
#include "app/words/number_text.h"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

// Proportions of the marks, as parts of the height of a stroke.
constexpr double kStep = 0.38;
constexpr double kGroupGap = 0.77;
constexpr double kOverhang = 0.23; // of the crossing stroke, at both ends

double groupWidth(double height) { return (3 * kStep + 2 * kOverhang) * height; }

double unknownWidth(double height) { return 2 * groupWidth(height); }

QFont numberFont(double height)
{
    QFont font = Theme::font(TextRole::Strong);
    font.setPixelSize(std::max(8, static_cast<int>(std::lround(height * 1.05))));
    return font;
}

QString numberText(double films) { return filmCountText(films, QLocale()); }

void paintGroup(QPainter& painter, double x, double top, double height)
{
    const double first = x + kOverhang * height;
    for (int i = 0; i < 4; ++i) {
        const double at = first + i * kStep * height;
        painter.drawLine(QPointF(at, top), QPointF(at, top + height));
    }
    painter.drawLine(QPointF(x, top + 0.77 * height),
                     QPointF(x + groupWidth(height), top + 0.23 * height));
}

} // namespace

TallyStrokes tallyStrokes(double films)
{
    constexpr double kSlack = 1e-3;
    TallyStrokes strokes;
    if (!(films > 0))
        return strokes;
    strokes.number = films > kMostTallied + kSlack;
    strokes.whole = static_cast<int>(std::floor(films + kSlack));
    strokes.part = films - strokes.whole > kSlack;
    return strokes;
}

double tallyWidth(double films, double height, bool uncounted)
{
    if (uncounted) {
        const double counted = tallyWidth(films, height);
        return unknownWidth(height) + (counted > 0 ? kGroupGap * height + counted : 0);
    }
    const TallyStrokes strokes = tallyStrokes(films);
    if (strokes.number)
        return groupWidth(height) + kGroupGap * height / 2 +
               QFontMetricsF(numberFont(height)).horizontalAdvance(numberText(films));
    const int groups = strokes.whole / 5;
    const int rest = strokes.whole % 5 + (strokes.part ? 1 : 0);
    if (groups == 0 && rest == 0)
        return 0;
    double width = groups * groupWidth(height) + std::max(0, groups - 1) * kGroupGap * height;
    if (rest > 0)
        width += (groups > 0 ? kGroupGap * height : 0) + (rest - 1) * kStep * height;
    return width;
}

void paintTally(QPainter& painter, const QRectF& rect, Qt::Alignment alignment, double films,
                bool uncounted)
{
    const TallyStrokes strokes = tallyStrokes(films);
    if (strokes.whole == 0 && !strokes.part && !uncounted)
        return;
    const double height = rect.height();
    const double width = tallyWidth(films, height, uncounted);
    double x = rect.left();
    if (alignment & Qt::AlignHCenter)
        x = rect.center().x() - width / 2;
    else if (alignment & Qt::AlignRight)
        x = rect.right() - width;

    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor ink = painter.pen().color();
    if (uncounted) {
        const QRectF before(x, rect.top(), unknownWidth(height), height);
        paintHatch(painter, before, ink, 4.2, 1.1);
        painter.setPen(QPen(ink, 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(before);
        x += before.width() + kGroupGap * height;
    }
    painter.setPen(QPen(ink, std::max(1.2, height * 0.138), Qt::SolidLine, Qt::RoundCap));
    if (strokes.number) {
        paintGroup(painter, x, rect.top(), height);
        painter.setFont(numberFont(height));
        painter.setPen(ink);
        painter.drawText(QRectF(x + groupWidth(height) + kGroupGap * height / 2,
                                rect.top() - height, width, 3 * height),
                         Qt::AlignLeft | Qt::AlignVCenter, numberText(films));
        painter.restore();
        return;
    }
    for (int group = 0; group < strokes.whole / 5; ++group) {
        paintGroup(painter, x, rect.top(), height);
        x += groupWidth(height) + kGroupGap * height;
    }
    for (int i = 0; i < strokes.whole % 5; ++i) {
        painter.drawLine(QPointF(x, rect.top()), QPointF(x, rect.bottom()));
        x += kStep * height;
    }
    if (strokes.part)
        painter.drawLine(QPointF(x, rect.bottom() - 0.45 * height), QPointF(x, rect.bottom()));
    painter.restore();
}

QString tallyText(double films, bool uncounted)
{
    const TallyStrokes strokes = tallyStrokes(films);
    if (uncounted)
        return strokes.whole == 0 && !strokes.part
                   ? TallyLabel::tr("films not known")
                   : TallyLabel::tr("at least %1", "films").arg(tallyText(films));
    if (strokes.whole == 0 && !strokes.part)
        return TallyLabel::tr("not used yet");
    if (!strokes.part)
        return TallyLabel::tr("%n film(s)", nullptr, strokes.whole);
    return TallyLabel::tr("%1 films").arg(numberText(films));
}

} // namespace ullage::app
