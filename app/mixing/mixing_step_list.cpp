#include "app/mixing/mixing_step_list.h"

#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr double kTallestRow = 92;
constexpr double kLowestRow = 56;
constexpr double kDot = 24;
constexpr double kDetailLine = 17;

} // namespace

MixingStepList::MixingStepList(QWidget* parent) : QWidget(parent) { setFocusPolicy(Qt::TabFocus); }

void MixingStepList::setSteps(const std::vector<MixingStep>& steps)
{
    m_steps = steps;
    describe();
    updateGeometry();
    update();
}

void MixingStepList::setCurrent(int step)
{
    m_current = step;
    describe();
    update();
}

QSize MixingStepList::sizeHint() const
{
    return {270, static_cast<int>(kLowestRow * static_cast<double>(m_steps.size()))};
}

QSize MixingStepList::minimumSizeHint() const
{
    constexpr int kNarrowest = 140;
    return {kNarrowest, sizeHint().height()};
}

double MixingStepList::rowHeight() const
{
    const auto count = std::max<double>(1, static_cast<double>(m_steps.size()));
    return std::clamp(height() / count, kLowestRow, kTallestRow);
}

void MixingStepList::describe()
{
    if (m_current < 0 || m_current >= static_cast<int>(m_steps.size()))
        return;
    const MixingStep& step = m_steps[static_cast<std::size_t>(m_current)];
    setAccessibleName(tr("Step %1 of %2: %3")
                          .arg(m_current + 1)
                          .arg(static_cast<int>(m_steps.size()))
                          .arg(step.name));
    setAccessibleDescription(step.detail);
}

void MixingStepList::paintEvent(QPaintEvent*)
{
    const Colours& c = colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double tall = rowHeight();
    for (int i = 0; i < static_cast<int>(m_steps.size()); ++i) {
        const MixingStep& step = m_steps[static_cast<std::size_t>(i)];
        const QRectF row(0, i * tall, width(), tall);
        const bool now = i == m_current;
        const bool done = i < m_current;
        if (now) {
            painter.setPen(hasFocus() ? QPen(c.focus, 2) : Qt::NoPen);
            painter.setBrush(c.selected);
            const double spare = std::max(2.0, (tall - 76) / 2);
            painter.drawRoundedRect(row.adjusted(1, spare, -1, -spare), Space::kRadius,
                                    Space::kRadius);
        }
        QRectF dot(12, row.center().y() - kDot, kDot, kDot);
        painter.setPen(done || now ? Qt::NoPen : QPen(c.border, 1));
        painter.setBrush(done ? c.green : now ? c.brown : c.paper);
        painter.drawEllipse(dot);
        QFont font = Theme::font(TextRole::Small);
        font.setWeight(QFont::Bold);
        painter.setFont(font);
        painter.setPen(done || now ? c.card : c.quiet);
        painter.drawText(dot, Qt::AlignCenter,
                         done ? QStringLiteral("✓") : QLocale().toString(i + 1));
        const QRectF words = row.adjusted(48, 0, -8, 0);
        font = Theme::font(now ? TextRole::Strong : TextRole::Body);
        font.setPixelSize(15);
        painter.setPen(done ? c.quiet : c.ink);
        if (QFontMetricsF(font).horizontalAdvance(step.name) > words.width()) {
            // A name that takes two lines takes the detail's place.
            font.setPixelSize(14);
            painter.setFont(font);
            painter.drawText(QRectF(words.left(), dot.top() + 2, words.width(), kDot + 18),
                             Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, step.name);
            continue;
        }
        painter.setFont(font);
        painter.drawText(QRectF(words.left(), dot.top(), words.width(), kDot),
                         Qt::AlignLeft | Qt::AlignVCenter, step.name);
        font = Theme::font(TextRole::Small);
        painter.setFont(font);
        painter.setPen(c.quiet);
        const QFontMetricsF metrics(font);
        QRectF line(words.left(), dot.bottom() + 1, words.width(), kDetailLine);
        // A low window has no room for another; what is over is told by an ellipsis.
        const QStringList broken = brokenLines(step.detail, metrics, words.width());
        const bool two = broken.size() > 1 && line.top() + 2 * kDetailLine <= row.bottom();
        const QStringList lines =
            two ? QStringList{broken.front(), broken.mid(1).join(u' ')} : QStringList{step.detail};
        for (const QString& detail : lines) {
            painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                             oneLine(detail, metrics, words.width()));
            line.translate(0, kDetailLine - 2);
        }
    }
}

void MixingStepList::mouseReleaseEvent(QMouseEvent* event)
{
    const int step = static_cast<int>(event->position().y() / rowHeight());
    if (step >= 0 && step < m_current)
        emit stepWanted(step);
}

void MixingStepList::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Up && m_current > 0) {
        emit stepWanted(m_current - 1);
        return;
    }
    QWidget::keyPressEvent(event);
}

void MixingStepList::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    update();
}

void MixingStepList::focusOutEvent(QFocusEvent* event)
{
    QWidget::focusOutEvent(event);
    update();
}

} // namespace ullage::app
