#include "app/widgets/card.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"

#include <QPainter>
#include <QVBoxLayout>

namespace ullage::app
{

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

} // namespace ullage::app
