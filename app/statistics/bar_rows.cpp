#include "app/statistics/bar_rows.h"

#include "app/widgets/figures.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QPainter>
#include <QStringList>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kRow = 40;
constexpr double kBar = 7;

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
    updateGeometry();
    update();
}

QSize BarRows::sizeHint() const { return {280, kRow * static_cast<int>(m_rows.size())}; }

QSize BarRows::minimumSizeHint() const { return {160, sizeHint().height()}; }

void BarRows::paintEvent(QPaintEvent*)
{
    const Colours& c = colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    double most = 0;
    for (const BarRow& row : m_rows)
        most = std::max(most, row.value);
    QRectF line(0, 0, width(), kRow);
    for (const BarRow& row : m_rows) {
        QFont strong = Theme::font(TextRole::Strong);
        strong.setPixelSize(13);
        const QRectF words = line.adjusted(0, 2, 0, -16);
        painter.setFont(strong);
        painter.setPen(c.ink);
        const double taken = figuresWidth(strong, row.text);
        drawFigures(painter, words, Qt::AlignRight | Qt::AlignVCenter, row.text);
        const QFont body = Theme::font(TextRole::Body);
        painter.setFont(body);
        painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine,
                         oneLine(row.name, QFontMetricsF(body), words.width() - taken - 12));
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
        line.translate(0, kRow);
    }
}

} // namespace ullage::app
