#include "app/bench/step_list.h"

#include "app/widgets/figures.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <utility>

namespace ullage::app
{

namespace
{

constexpr double kLeast = 36;
constexpr double kMost = 60;
constexpr double kMark = 22;
constexpr double kMargin = 12;
constexpr double kTitleAt = kMargin + kMark + 12;
constexpr double kApart = 10; // between title and time

} // namespace

StepList::StepList(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Run sheet"));
}

void StepList::setRows(std::vector<StepRow> rows)
{
    if (rows == m_rows)
        return;
    const bool counted = rows.size() != m_rows.size();
    m_rows = std::move(rows);
    QStringList words;
    for (const StepRow& row : m_rows)
        words << (row.current   ? tr("Now: %1, %2")
                  : row.skipped ? tr("Skipped: %1, %2")
                  : row.done    ? tr("Done: %1, %2")
                                : QStringLiteral("%1, %2"))
                     .arg(row.title, row.time);
    setAccessibleDescription(words.join(u'\n'));
    if (counted)
        updateGeometry();
    update();
}

double StepList::rowHeight() const
{
    return m_rows.empty() ? kMost
                          : std::clamp(double(height()) / double(m_rows.size()), kLeast, kMost);
}

QRect StepList::rowRect(int row) const
{
    return QRectF(0, rowHeight() * row, width(), rowHeight()).toRect();
}

QSize StepList::sizeHint() const { return {300, int(kMost * double(m_rows.size()))}; }

QSize StepList::minimumSizeHint() const { return {200, int(kLeast * double(m_rows.size()))}; }

void StepList::paintRow(QPainter& painter, int index, bool small) const
{
    const StepRow& row = m_rows[std::size_t(index)];
    const Colours& c = colours();
    const QRectF rect(0, rowHeight() * index, width(), rowHeight());
    if (row.current) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(c.selected);
        painter.drawRoundedRect(rect.adjusted(0, 2, 0, -2), Space::kRadius, Space::kRadius);
    }
    const QRectF mark(kMargin, rect.center().y() - kMark / 2, kMark, kMark);
    const bool over = row.done || row.skipped;
    painter.setPen(over || row.current ? QPen(Qt::NoPen) : QPen(c.border, 1));
    painter.setBrush(row.current ? c.brown : row.done ? c.green : c.raised);
    painter.drawEllipse(mark);
    if (over) {
        painter.setPen(
            QPen(row.done ? c.card : c.quiet, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        const QPointF m = mark.center();
        if (row.done)
            painter.drawPolyline(
                QPolygonF{m + QPointF(-4, 0), m + QPointF(-1, 3), m + QPointF(4, -3)});
        else
            painter.drawLine(m + QPointF(-4, 0), m + QPointF(4, 0));
    } else {
        QFont number = Theme::font(TextRole::Small);
        number.setWeight(QFont::Bold);
        painter.setFont(number);
        painter.setPen(row.current ? c.card : c.quiet);
        painter.drawText(mark, Qt::AlignCenter, QString::number(index + 1));
    }
    QFont font = Theme::font(TextRole::Strong);
    font.setWeight(row.current ? QFont::Bold : over ? QFont::Normal : QFont::Medium);
    font.setStrikeOut(row.skipped);
    painter.setFont(font);
    painter.setPen(over ? c.quiet : c.ink);
    const double wide = figuresWidth(font, row.time);
    drawFigures(painter, rect.adjusted(0, 0, -kMargin, 0), Qt::AlignRight | Qt::AlignVCenter,
                row.time);
    if (small) {
        font.setPixelSize(Theme::font(TextRole::Small).pixelSize());
        painter.setFont(font);
    }
    const QRectF words(kTitleAt, rect.top(), width() - kTitleAt - kMargin - wide - kApart,
                       rect.height());
    // A step that is too long for its line takes two: its last word may be what matters.
    const QFontMetricsF metrics(font);
    QStringList lines = brokenLines(row.title, metrics, words.width());
    const QString first = lines.takeFirst();
    const double half = lines.isEmpty() ? 0 : metrics.lineSpacing() / 2;
    painter.drawText(words.translated(0, -half), Qt::AlignLeft | Qt::AlignVCenter,
                     oneLine(first, metrics, words.width()));
    if (!lines.isEmpty())
        painter.drawText(words.translated(0, half), Qt::AlignLeft | Qt::AlignVCenter,
                         oneLine(lines.join(u' '), metrics, words.width()));
}

void StepList::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    // One size for all: a sheet of mixed sizes is read as if the larger steps weighed more.
    QFont bold = Theme::font(TextRole::Strong);
    bold.setWeight(QFont::Bold);
    const bool small = std::any_of(m_rows.begin(), m_rows.end(), [&](const StepRow& row) {
        return kTitleAt + figuresWidth(bold, row.title) + kApart + figuresWidth(bold, row.time) +
                   kMargin >
               width();
    });
    for (int i = 0; i < int(m_rows.size()); ++i)
        paintRow(painter, i, small);
}

} // namespace ullage::app
