#include "app/widgets/factor_rows.h"

#include "app/widgets/figures.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QPainter>

namespace ullage::app
{

FactorRows::FactorRows(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
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

QSize FactorRows::sizeHint() const { return {300, m_rowHeight * static_cast<int>(m_rows.size())}; }

QSize FactorRows::minimumSizeHint() const { return {160, sizeHint().height()}; }

void FactorRows::paintEvent(QPaintEvent*)
{
    const Colours& c = colours();
    QPainter painter(this);
    QRectF line(0, 0, width(), m_rowHeight);
    for (const FactorRow& row : m_rows) {
        QFont value = Theme::font(TextRole::Strong);
        value.setPixelSize(13);
        if (row.total)
            value.setWeight(QFont::Bold);
        painter.setFont(value);
        painter.setPen(c.ink);
        const double taken = figuresWidth(value, row.value);
        drawFigures(painter, line, Qt::AlignRight | Qt::AlignVCenter, row.value);
        const QFont label = row.total ? value : Theme::font(TextRole::Body);
        painter.setFont(label);
        painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                         oneLine(row.label, QFontMetricsF(label), width() - taken - 12));
        painter.setPen(QPen(c.hairline, 1));
        painter.drawLine(QPointF(0, line.bottom() - 0.5), QPointF(width(), line.bottom() - 0.5));
        line.translate(0, m_rowHeight);
    }
}

} // namespace ullage::app
