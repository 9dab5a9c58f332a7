#include "app/bench/agitation_strip.h"

#include "app/widgets/figures.h"
#include "app/widgets/theme.h"
#include "core/chemistry/time_units.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <array>
#include <cmath>

namespace ullage::app
{

using chemistry::Seconds;

AgitationStrip::AgitationStrip(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("Agitation of this step"));
}

void AgitationStrip::setStep(const ledger::Agitation& agitation, Seconds length)
{
    m_length = length;
    m_blocks = ledger::agitationBlocks(agitation, length);
    setAccessibleDescription(tr("%n spell(s) of agitation", nullptr, int(m_blocks.size())));
    update();
}

void AgitationStrip::setNow(Seconds elapsed)
{
    m_now = elapsed;
    update();
}

void AgitationStrip::paintScale(QPainter& painter, const QRectF& strip) const
{
    const double length = m_length.value();
    // Whole seconds or minutes, apart enough to be read.
    constexpr double kHalfFigure = 9;
    constexpr std::array kSteps{10.0, 20.0, 30.0, 60.0, 120.0, 300.0, 600.0, 1800.0};
    const double least = length > 120 ? 60 : 10; // minutes for a long step, seconds for a short one
    const auto wide = [&](double step) {
        return step >= least && strip.width() * step / length >= 34;
    };
    const auto found = std::find_if(kSteps.begin(), kSteps.end(), wide);
    const double step = found == kSteps.end() ? 3600 : *found;
    const bool minutes = step >= 60;
    painter.setFont(Theme::font(TextRole::Small));
    painter.setPen(colours().quiet);
    for (double at = 0; at <= length + 1e-9; at += step) {
        const double x =
            std::min(strip.left() + strip.width() * at / length, width() - kHalfFigure);
        drawFigures(painter, QRectF(x - 30, strip.bottom() + 6, 60, 20), Qt::AlignCenter,
                    QString::number(minutes ? chemistry::inMinutes(chemistry::Seconds(at)) : at));
    }
    painter.drawText(QRectF(strip.left(), 0, strip.width(), 20), Qt::AlignLeft | Qt::AlignVCenter,
                     m_blocks.empty() ? tr("no agitation") : tr("each block: agitate"));
    painter.drawText(QRectF(strip.left(), 0, strip.width(), 20), Qt::AlignRight | Qt::AlignVCenter,
                     minutes ? tr("minutes") : tr("seconds"));
}

void AgitationStrip::paintEvent(QPaintEvent*)
{
    if (m_length <= Seconds(0))
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = colours();
    const QRectF strip(6, 36, width() - 12, 44);
    const auto x = [&](Seconds at) {
        return strip.left() + strip.width() * std::clamp(at / m_length, 0.0, 1.0);
    };
    QPainterPath round;
    round.addRoundedRect(strip, 4, 4);
    painter.save();
    painter.setClipPath(round);
    painter.fillRect(strip, c.fan);
    painter.fillRect(QRectF(strip.topLeft(), QPointF(x(m_now), strip.bottom())), c.sand);
    for (const ledger::AgitationBlock& block : m_blocks) {
        const double from = x(block.from);
        const double until = std::max(x(block.until), from + 3);
        const double now = std::clamp(x(m_now), from, until);
        painter.fillRect(QRectF(QPointF(from, strip.top()), QPointF(now, strip.bottom())), c.brown);
        painter.fillRect(QRectF(QPointF(now, strip.top()), QPointF(until, strip.bottom())),
                         c.honey);
    }
    painter.restore();
    const double hand = x(m_now);
    painter.setPen(QPen(c.ink, 3, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(hand, strip.top() - 8), QPointF(hand, strip.bottom() + 8));
    painter.setPen(Qt::NoPen);
    painter.setBrush(c.ink);
    painter.drawPolygon(QPolygonF{QPointF(hand - 7, strip.top() - 16),
                                  QPointF(hand + 7, strip.top() - 16),
                                  QPointF(hand, strip.top() - 6)});
    paintScale(painter, strip);
}

} // namespace ullage::app
