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
constexpr double kNameLine = 18; // each beyond the first
constexpr double kDetailLine = 14.5;
constexpr double kBeforeDetail = 2;

QFont nameFont(bool now, bool small)
{
    QFont font = Theme::font(now ? TextRole::Strong : TextRole::Body);
    font.setPixelSize(small ? 14 : 15);
    return font;
}

// As many of the lines as there is room for; what is over is told by an ellipsis.
QStringList atMost(const QStringList& lines, qsizetype most)
{
    if (lines.size() <= most)
        return lines;
    if (most <= 0)
        return {};
    return lines.mid(0, most - 1) << lines.mid(most - 1).join(u' ');
}

// Where the first line stands: higher than usual if there are many.
double paintWords(QPainter& painter, const MixingStep& step, const QRectF& row, double usualTop,
                  bool now, const QColor& ink)
{
    const QRectF words = row.adjusted(48, 0, -8, 0);
    const bool broken =
        QFontMetricsF(nameFont(now, false)).horizontalAdvance(step.name) > words.width();
    const QFont font = nameFont(now, broken);
    const QFont small = Theme::font(TextRole::Small);
    const QStringList name = atMost(brokenLines(step.name, QFontMetricsF(font), words.width()), 2);
    const double named = kDot + static_cast<double>(name.size() - 1) * kNameLine;
    const auto most =
        static_cast<qsizetype>((words.height() - named - kBeforeDetail) / kDetailLine);
    QStringList detail;
    if (!step.detail.isEmpty())
        detail = brokenLines(step.detail, QFontMetricsF(small), words.width());
    // Under a name of two lines a piece of it would say nothing.
    detail = name.size() > 1 && detail.size() > most ? QStringList() : atMost(detail, most);
    const double tall =
        named +
        (detail.isEmpty() ? 0 : kBeforeDetail + static_cast<double>(detail.size()) * kDetailLine);
    QRectF line(words.left(), std::max(words.top(), std::min(usualTop, words.bottom() - tall)),
                words.width(), kDot);
    const double top = line.top();
    painter.setFont(font);
    painter.setPen(ink);
    for (const QString& part : name) {
        painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                         oneLine(part, QFontMetricsF(font), line.width()));
        line.translate(0, kNameLine);
    }
    line.translate(0, kDot - kNameLine + kBeforeDetail);
    line.setHeight(kDetailLine);
    painter.setFont(small);
    painter.setPen(colours().quiet);
    for (const QString& part : detail) {
        painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                         oneLine(part, QFontMetricsF(small), line.width()));
        line.translate(0, kDetailLine);
    }
    return top;
}

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
        const double top =
            paintWords(painter, step, row, row.center().y() - kDot, now, done ? c.quiet : c.ink);
        const QRectF dot(12, top, kDot, kDot);
        painter.setPen(done || now ? Qt::NoPen : QPen(c.border, 1));
        painter.setBrush(done ? c.green : now ? c.brown : c.paper);
        painter.drawEllipse(dot);
        QFont font = Theme::font(TextRole::Small);
        font.setWeight(QFont::Bold);
        painter.setFont(font);
        painter.setPen(done || now ? c.card : c.quiet);
        painter.drawText(dot, Qt::AlignCenter,
                         done ? QStringLiteral("✓") : QLocale().toString(i + 1));
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
