#include "app/statistics/bar_rows.h"

#include "app/widgets/figures.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QEvent>
#include <QPainter>
#include <QStringList>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kRow = 40;
constexpr int kLine = 20; // more where values stand below names
constexpr double kApart = 12;
constexpr double kBar = 7;

QFont valueFont()
{
    QFont strong = Theme::font(TextRole::Strong);
    strong.setPixelSize(13);
    return strong;
}

} // namespace

BarRows::BarRows(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void BarRows::setRows(const std::vector<BarRow>& rows)
{
    m_rows.assign(rows.begin(),
                  rows.begin() + static_cast<std::ptrdiff_t>(std::min(rows.size(), kMost)));
    QStringList words;
    for (const BarRow& row : m_rows)
        words << QStringLiteral("%1: %2").arg(row.name, row.text);
    setAccessibleName(words.join(QStringLiteral(", ")));
    fit();
    updateGeometry();
    update();
}

// One of them below, all below: values are read down the column.
void BarRows::fit()
{
    const QFontMetricsF body(Theme::font(TextRole::Body));
    const bool below = std::any_of(m_rows.begin(), m_rows.end(), [&](const BarRow& row) {
        return body.horizontalAdvance(row.name) + kApart + figuresWidth(valueFont(), row.text) >
               width();
    });
    if (below == m_below)
        return;
    m_below = below;
    updateGeometry();
    update();
}

void BarRows::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit();
}

void BarRows::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        fit();
}

int BarRows::rowHeight() const { return m_below ? kRow + kLine : kRow; }

QSize BarRows::sizeHint() const { return {280, rowHeight() * static_cast<int>(m_rows.size())}; }

QSize BarRows::minimumSizeHint() const { return {160, sizeHint().height()}; }

void BarRows::paintEvent(QPaintEvent*)
{
    const Colours& c = colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    double most = 0;
    for (const BarRow& row : m_rows)
        most = std::max(most, row.value);
    const QFont strong = valueFont();
    const QFont body = Theme::font(TextRole::Body);
    QRectF line(0, 0, width(), rowHeight());
    for (const BarRow& row : m_rows) {
        const QRectF words = line.adjusted(0, 2, 0, m_below ? -16 - kLine : -16);
        const QRectF value = m_below ? words.translated(0, kLine - 2) : words;
        painter.setFont(strong);
        painter.setPen(c.ink);
        drawFigures(painter, value, (m_below ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter,
                    row.text);
        const double taken = m_below ? 0 : figuresWidth(strong, row.text) + kApart;
        painter.setFont(body);
        painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine,
                         oneLine(row.name, QFontMetricsF(body), words.width() - taken));
        const QRectF ground(line.left(), line.bottom() - 13, line.width(), kBar);
        painter.setPen(Qt::NoPen);
        painter.setBrush(c.hairline);
        painter.drawRoundedRect(ground, kBar / 2, kBar / 2);
        if (row.value > 0 && most > 0) {
            QRectF bar = ground;
            bar.setWidth(std::max(kBar, ground.width() * row.value / most));
            painter.setBrush(c.brown);
            painter.drawRoundedRect(bar, kBar / 2, kBar / 2);
        }
        line.translate(0, rowHeight());
    }
}

} // namespace ullage::app
