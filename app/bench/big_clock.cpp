#include "app/bench/big_clock.h"

#include "app/widgets/figures.h"
#include "app/widgets/theme.h"
#include "app/words/number_text.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

using chemistry::Seconds;

namespace
{

constexpr int kUnderHeight = 34;

} // namespace

QString clockText(Seconds left)
{
    // A second is shown until it is over, on the way down and on the way up.
    if (left.value() > -1e-9)
        return timeText(Seconds(std::ceil(left.value() - 1e-6)));
    return QStringLiteral("+") + timeText(Seconds(std::floor(-left.value() + 1e-6)));
}

BigClock::BigClock(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Time left"));
}

void BigClock::show(Seconds left, State state, const QString& under)
{
    const QString text = clockText(left);
    if (text == m_text && state == m_state && under == m_under)
        return;
    m_text = text;
    m_state = state;
    m_under = under;
    setAccessibleDescription(text + QStringLiteral(", ") + under);
    update();
}

QFont BigClock::digits() const
{
    QFont font = Theme::font(TextRole::Hero);
    constexpr int kProbe = 100;
    font.setPixelSize(kProbe);
    // The widest time of this length, so that the size holds still while digits change.
    QString widest = m_text.isEmpty() ? QStringLiteral("0:00") : m_text;
    for (QChar& c : widest)
        c = c.isDigit() ? QChar(u'0') : c;
    const double byWidth = width() * 0.94 / figuresWidth(font, widest);
    const double byHeight =
        std::max(20, height() - kUnderHeight) * 0.98 / QFontMetricsF(font).capHeight() * 0.9;
    font.setPixelSize(std::clamp(int(kProbe * std::min(byWidth, byHeight)), 24, 2000));
    return font;
}

int BigClock::digitHeight() const { return int(QFontMetricsF(digits()).capHeight()); }

void BigClock::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Colours& c = colours();
    painter.setFont(digits());
    painter.setPen(m_state == State::Over ? c.red : m_state == State::Held ? c.quiet : c.ink);
    const double cap = QFontMetricsF(painter.font()).capHeight();
    const double top = std::max(0.0, (height() - kUnderHeight - cap) / 2);
    // Centred on the digits themselves: the font's own line is taller than they are.
    drawFigures(painter, QRectF(0, top - cap, width(), 3 * cap), Qt::AlignCenter, m_text);
    QFont under = Theme::font(TextRole::Heading);
    under.setWeight(QFont::Normal);
    under.setPixelSize(std::clamp(int(cap * 0.12), 15, 26));
    painter.setFont(under);
    painter.setPen(m_state == State::Over ? c.red : c.quiet);
    painter.drawText(QRectF(0, top + cap + 6, width(), height() - top - cap - 6),
                     Qt::AlignHCenter | Qt::AlignVCenter, m_under);
}

} // namespace ullage::app
