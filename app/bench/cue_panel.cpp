#include "app/bench/cue_panel.h"

#include "app/widgets/figures.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace ullage::app
{

CuePanel::CuePanel(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("Cue"));
}

void CuePanel::show(const QString& cue, const QString& scheme, Mood mood, bool bold)
{
    if (cue == m_cue && scheme == m_scheme && mood == m_mood && bold == m_bold)
        return;
    m_cue = cue;
    m_scheme = scheme;
    m_mood = mood;
    m_bold = bold;
    setAccessibleDescription(cue + QStringLiteral(", ") + scheme);
    update();
}

void CuePanel::setLarge(bool large)
{
    m_scale = large ? 1.6 : 1;
    updateGeometry();
    update();
}

void CuePanel::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = colours();
    const QColor accent = m_mood == Mood::Urgent ? c.red : m_mood == Mood::Act ? c.brown : c.green;
    // In the dark room a filled panel would light it up; a heavy frame says the same.
    const bool fill = m_bold && m_mood != Mood::Calm && !Theme::instance().isDarkRoom();
    const bool frame = m_bold && m_mood != Mood::Calm && !fill;
    painter.setPen(frame ? QPen(accent, 4) : QPen(Qt::NoPen));
    painter.setBrush(fill ? accent : c.calm);
    painter.drawRoundedRect(QRectF(rect()).adjusted(2, 2, -2, -2), Space::kRadius, Space::kRadius);
    QFont font = Theme::font(TextRole::PageTitle);
    font.setPixelSize(int(26 * m_scale));
    while (font.pixelSize() > 14 && figuresWidth(font, m_cue) > width() - 24)
        font.setPixelSize(font.pixelSize() - 1);
    painter.setFont(font);
    painter.setPen(fill ? c.card : accent);
    const double middle = height() / 2.0;
    drawFigures(painter, QRectF(0, middle - 34 * m_scale, width(), 36 * m_scale), Qt::AlignCenter,
                m_cue);
    QFont small = Theme::font(TextRole::Body);
    small.setPixelSize(int(small.pixelSize() * m_scale));
    while (small.pixelSize() > 11 &&
           QFontMetricsF(small).horizontalAdvance(m_scheme) > width() - 16)
        small.setPixelSize(small.pixelSize() - 1);
    painter.setFont(small);
    painter.setPen(fill ? c.card : c.quiet);
    painter.drawText(QRectF(8, middle + 6 * m_scale, width() - 16, 24 * m_scale), Qt::AlignCenter,
                     oneLine(m_scheme, QFontMetricsF(small), width() - 16));
}

} // namespace ullage::app
