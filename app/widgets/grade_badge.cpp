#include "app/widgets/grade_badge.h"

#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

QFont badgeFont()
{
    QFont font = Theme::font(TextRole::Small);
    font.setWeight(QFont::DemiBold);
    return font;
}

double ringWidth(MaybeGrade grade)
{
    return std::ceil(QFontMetricsF(badgeFont()).horizontalAdvance(gradeName(grade))) + kBadgeHeight;
}

} // namespace

double widestBadge()
{
    using chemistry::Grade;
    double widest = ringWidth({});
    for (const Grade grade :
         {Grade::Published, Grade::Computed, Grade::CommonPractice, Grade::FromMemory})
        widest = std::max(widest, ringWidth(grade));
    return widest;
}

QColor gradeColour(MaybeGrade grade)
{
    const Colours& c = colours();
    if (!grade)
        return c.red;
    switch (*grade) {
    case chemistry::Grade::Published:
        return c.green;
    case chemistry::Grade::Computed:
        return c.blue;
    case chemistry::Grade::CommonPractice:
        return c.amber;
    case chemistry::Grade::FromMemory:
        break;
    }
    return c.quiet;
}

void paintGrade(QPainter& painter, const QRectF& rect, MaybeGrade grade)
{
    QRectF ring(0, 0, std::min(ringWidth(grade), rect.width()), kBadgeHeight);
    ring.moveCenter(rect.center());
    ring.moveRight(rect.right());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(
        QPen(gradeColour(grade), 1.4, grade ? Qt::SolidLine : Qt::DashLine, Qt::FlatCap));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(ring.adjusted(0.8, 0.8, -0.8, -0.8), kBadgeHeight / 2 - 1,
                            kBadgeHeight / 2 - 1);
    painter.setFont(badgeFont());
    painter.drawText(ring, Qt::AlignCenter,
                     oneLine(gradeName(grade), QFontMetricsF(badgeFont()), ring.width() - 8));
    painter.restore();
}

} // namespace ullage::app
