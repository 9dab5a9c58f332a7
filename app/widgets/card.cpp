#include "app/widgets/card.h"

#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

// A line that ends in an ellipsis where there is no room for all of it.
class ElidedLabel : public PlainLabel
{
public:
    using PlainLabel::PlainLabel;

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        painter.setPen(palette().color(foregroundRole()));
        painter.setFont(font());
        painter.drawText(contentsRect(), Qt::AlignLeft | Qt::AlignVCenter,
                         oneLine(text(), fontMetrics(), contentsRect().width()));
    }
};

} // namespace

Card::Card(const QString& title, QWidget* parent)
    : QFrame(parent), m_title(new PlainLabel(this)), m_body(new QVBoxLayout)
{
    setFrameShape(QFrame::NoFrame);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(Space::kInset, 13, Space::kInset, 15);
    column->setSpacing(Space::kSmall);
    m_title->setFont(Theme::font(TextRole::CardTitle));
    setTone(m_title, Tone::Quiet);
    column->addWidget(m_title);
    m_body->setContentsMargins(0, 0, 0, 0);
    m_body->setSpacing(Space::kSmall);
    column->addLayout(m_body, 1);
    setTitle(title);
}

void Card::setTitle(const QString& title)
{
    m_title->setText(title);
    m_title->setVisible(!title.isEmpty());
    setAccessibleName(title);
}

void Card::setGround(Ground ground)
{
    m_ground = ground;
    setTone(m_title, ground == Ground::Caution ? Tone::Near : Tone::Quiet);
    update();
}

void Card::paintEvent(QPaintEvent*)
{
    const Colours& c = colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_ground == Ground::Caution ? c.cautionBorder
                        : m_ground == Ground::Calm  ? c.calm
                                                    : c.border,
                        1));
    painter.setBrush(m_ground == Ground::Caution ? c.caution
                     : m_ground == Ground::Calm  ? c.calm
                                                 : c.card);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), Space::kCardRadius,
                            Space::kCardRadius);
}

CautionBox::CautionBox(const QString& heading, QWidget* parent)
    : Card(heading, parent), m_text(new PlainLabel(this))
{
    setGround(Ground::Caution);
    m_text->setWordWrap(true);
    m_text->setTextInteractionFlags(Qt::TextSelectableByMouse);
    body()->addWidget(m_text);
    body()->addStretch();
}

void CautionBox::setLines(const QStringList& lines) { m_text->setText(lines.join(u"\n\n")); }

PageHeader::PageHeader(const QString& title, QWidget* parent)
    : QWidget(parent), m_title(new PlainLabel(this)), m_detail(new ElidedLabel(this)),
      m_row(new QHBoxLayout(this))
{
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(Space::kGap);
    m_title->setFont(Theme::font(TextRole::PageTitle));
    QFont detail = Theme::font(TextRole::Body);
    detail.setPixelSize(14);
    m_detail->setFont(detail);
    m_detail->setContentsMargins(0, 5, 0, 0);
    m_detail->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    setTone(m_detail, Tone::Quiet);
    m_row->addWidget(m_title);
    m_row->addWidget(m_detail, 1);
    setTitle(title);
    setFixedHeight(38);
}

void PageHeader::setTitle(const QString& title)
{
    m_title->setText(title);
    setAccessibleName(title);
}

void PageHeader::setDetail(const QString& detail)
{
    m_detail->setText(detail);
    setPlainToolTip(m_detail, detail);
}

QPushButton* PageHeader::addButton(const QString& text, bool primary)
{
    auto* button = new QPushButton(text, this);
    button->setFixedHeight(38);
    QFont font = Theme::font(TextRole::Strong);
    button->setFont(font);
    button->setMinimumWidth(142);
    setButtonLook(button, primary ? ButtonLook::Primary : ButtonLook::Plain);
    m_row->addWidget(button);
    return button;
}

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
