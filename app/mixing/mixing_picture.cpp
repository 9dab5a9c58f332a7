#include "app/mixing/mixing_picture.h"

#include "app/widgets/bottle_painter.h"
#include "app/widgets/theme.h"
#include "app/words/number_text.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr double kCap = 16;
constexpr double kAround = 10;
constexpr double kLargest = 1.4; // times its natural size
constexpr double kSmallest = 0.55;
constexpr double kTick = 16; // of the mark, beside the bottle
constexpr double kBeforeWords = 6;

} // namespace

MixingPicture::MixingPicture(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void MixingPicture::setBottle(const MixingPlan& plan, chemistry::Millilitres holds,
                              chemistry::Millilitres mark, const Wording& wording)
{
    m_bottle = {};
    m_bottle.solution = plan.solution->role;
    m_bottle.material = plan.vessel->material;
    m_bottle.capacityMl = plan.vessel->capacity.value();
    m_bottle.volumeMl = std::min(holds, plan.vessel->capacity).value();
    m_markMl = mark.value();
    m_markText = m_markMl > 0 ? volumeText(mark, wording) : QString();
    update();
}

void MixingPicture::paintEvent(QPaintEvent*)
{
    const BottleShape shape = shapeOf(m_bottle);
    const double tall = shape.height() + kCap;
    const QFont font = Theme::font(TextRole::Strong);
    const double words = QFontMetricsF(font).horizontalAdvance(m_markText) + 2;
    const double beside = m_markMl > 0 ? kTick + kBeforeWords + words : 0;
    const double scale = std::min({kLargest, (height() - 2 * kAround) / tall,
                                   (width() / 2.0 - beside) / (shape.width() / 2)});
    if (scale < kSmallest)
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QPointF foot(width() / 2.0, (height() + tall * scale) / 2);
    paintBottle(painter, foot, scale, m_bottle, BottleLabel::None);
    if (m_markMl <= 0)
        return;
    const double level = shape.levelOf(m_markMl);
    const double half = shape.radiusAt(level) * scale;
    const double y = foot.y() - level * scale;
    const double right = foot.x() + shape.width() * scale / 2 + kTick;
    painter.setPen(QPen(colours().ink, 1.5, Qt::DashLine));
    painter.drawLine(QPointF(foot.x() - half, y), QPointF(right, y));
    painter.setFont(font);
    painter.setPen(colours().ink);
    painter.drawText(QRectF(right + kBeforeWords, y - 12, words, 24),
                     Qt::AlignLeft | Qt::AlignVCenter, m_markText);
}

} // namespace ullage::app
