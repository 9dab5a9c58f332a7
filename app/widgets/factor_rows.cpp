#include "app/widgets/factor_rows.h"

#include "app/widgets/figures.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QPainter>
#include <QResizeEvent>

namespace ullage::app
{

namespace
{

constexpr int kUsualWidth = 300;
constexpr int kApart = 12;      // label and figure, at least
constexpr int kSecondLine = 18; // what a row is taller for each line more

} // namespace

FactorRows::FactorRows(QWidget* parent) : QWidget(parent)
{
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void FactorRows::setRows(const std::vector<FactorRow>& rows)
{
    m_rows = rows;
    QStringList words;
    for (const FactorRow& row : rows)
        words << QStringLiteral("%1: %2").arg(row.label, row.value);
    setAccessibleName(words.join(QStringLiteral(", ")));
    updateGeometry();
    update();
}

void FactorRows::setRowHeight(int height)
{
    m_rowHeight = height;
    updateGeometry();
    update();
}

QFont FactorRows::fontOf(const FactorRow& row)
{
    QFont font = Theme::font(TextRole::Strong);
    font.setPixelSize(13);
    if (row.total)
        font.setWeight(QFont::Bold);
    return font;
}

// What a figure is of is shown whole, on as many lines as it takes; the figure stands on the last
// of them, or on one of its own where that has no room for it.
QStringList FactorRows::linesOf(const FactorRow& row, int width)
{
    const QFont font = fontOf(row);
    const QFontMetricsF label(row.total ? font : Theme::font(TextRole::Body));
    const double figure = figuresWidth(font, row.value) + kApart;
    if (label.horizontalAdvance(row.label) + figure <= width)
        return {row.label};
    QStringList lines = brokenLines(row.label, label, width);
    if (label.horizontalAdvance(lines.back()) + figure > width)
        lines << QString();
    return lines;
}

int FactorRows::heightForWidth(int width) const
{
    int height = 0;
    for (const FactorRow& row : m_rows)
        height += m_rowHeight + kSecondLine * static_cast<int>(linesOf(row, width).size() - 1);
    return height;
}

QSize FactorRows::sizeHint() const { return {kUsualWidth, heightForWidth(kUsualWidth)}; }

QSize FactorRows::minimumSizeHint() const
{
    const bool laidOut = testAttribute(Qt::WA_WState_Created);
    return {160, heightForWidth(laidOut ? width() : kUsualWidth)};
}

void FactorRows::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    if (event->oldSize().width() != width() && heightForWidth(width()) != height())
        updateGeometry();
}

void FactorRows::paintEvent(QPaintEvent*)
{
    const Colours& c = colours();
    QPainter painter(this);
    QRectF line(0, 0, width(), m_rowHeight);
    for (const FactorRow& row : m_rows) {
        const QFont value = fontOf(row);
        const QFont label = row.total ? value : Theme::font(TextRole::Body);
        painter.setPen(c.ink);
        painter.setFont(label);
        const QStringList lines = linesOf(row, width());
        for (qsizetype i = 0; i < lines.size(); ++i) {
            if (i > 0)
                line.translate(0, kSecondLine);
            painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                             oneLine(lines[i], QFontMetricsF(label), width()));
        }
        painter.setFont(value);
        drawFigures(painter, line, Qt::AlignRight | Qt::AlignVCenter, row.value);
        painter.setPen(QPen(c.hairline, 1));
        painter.drawLine(QPointF(0, line.bottom() - 0.5), QPointF(width(), line.bottom() - 0.5));
        line.translate(0, m_rowHeight);
    }
}

} // namespace ullage::app
