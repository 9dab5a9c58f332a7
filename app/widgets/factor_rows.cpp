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
constexpr int kSecondLine = 18; // what a row of two lines is taller

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

// The figure is shown whole, and so is what it is of: on two lines where one is too short.
bool FactorRows::takesTwoLines(const FactorRow& row, int width)
{
    const QFont font = fontOf(row);
    const QFontMetricsF label(row.total ? font : Theme::font(TextRole::Body));
    return label.horizontalAdvance(row.label) + figuresWidth(font, row.value) + kApart > width;
}

int FactorRows::heightForWidth(int width) const
{
    int height = 0;
    for (const FactorRow& row : m_rows)
        height += m_rowHeight + (takesTwoLines(row, width) ? kSecondLine : 0);
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
        const bool two = takesTwoLines(row, width());
        const QFont value = fontOf(row);
        const QFont label = row.total ? value : Theme::font(TextRole::Body);
        const double room = two ? width() : width() - figuresWidth(value, row.value) - kApart;
        painter.setPen(c.ink);
        painter.setFont(label);
        painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                         oneLine(row.label, QFontMetricsF(label), room));
        if (two)
            line.translate(0, kSecondLine);
        painter.setFont(value);
        drawFigures(painter, line, Qt::AlignRight | Qt::AlignVCenter, row.value);
        painter.setPen(QPen(c.hairline, 1));
        painter.drawLine(QPointF(0, line.bottom() - 0.5), QPointF(width(), line.bottom() - 0.5));
        line.translate(0, m_rowHeight);
    }
}

} // namespace ullage::app
