#include "app/mixing/blend_bar.h"

#include "app/widgets/theme.h"
#include "app/words/number_text.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace ullage::app
{

BlendBar::BlendBar(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void BlendBar::setBlend(const std::optional<chemistry::Blend>& blend, const Wording& wording,
                        const QString& why)
{
    m_blend = blend;
    m_why = why;
    m_hot.clear();
    m_cold.clear();
    if (blend) {
        m_hot = tr("%1 hot", "volume of water").arg(volumeText(blend->hot, wording));
        m_cold = tr("%1 cold", "volume of water").arg(volumeText(blend->cold, wording));
    }
    setAccessibleName(blend ? tr("%1, %2", "hot, cold").arg(m_hot, m_cold) : why);
    update();
}

void BlendBar::paintEvent(QPaintEvent*)
{
    const Colours& c = colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF bar = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
    QPainterPath outline;
    outline.addRoundedRect(bar, Space::kRadius, Space::kRadius);
    painter.setClipPath(outline);
    painter.fillRect(bar, c.raised);
    QFont font = Theme::font(TextRole::Strong);
    painter.setFont(font);
    painter.setPen(c.ink);
    if (!m_blend) {
        painter.setPen(c.quiet);
        painter.drawText(bar.adjusted(18, 0, -18, 0), Qt::AlignLeft | Qt::AlignVCenter, m_why);
        return;
    }
    const double total = m_blend->hot.value() + m_blend->cold.value();
    const double share = total > 0 ? m_blend->hot.value() / total : 0;
    QRectF hot = bar;
    hot.setWidth(bar.width() * share);
    painter.fillRect(hot, blend(c.card, c.honey, 0.6));
    painter.fillRect(bar.adjusted(hot.width(), 0, 0, 0), blend(c.card, c.blue, 0.28));
    painter.drawText(bar.adjusted(18, 0, -18, 0), Qt::AlignLeft | Qt::AlignVCenter, m_hot);
    painter.drawText(bar.adjusted(18, 0, -18, 0), Qt::AlignRight | Qt::AlignVCenter, m_cold);
}

} // namespace ullage::app
