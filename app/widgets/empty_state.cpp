#include "app/widgets/empty_state.h"

#include "app/widgets/bottle_painter.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kPicture = 190; // above the words
constexpr int kTextWidth = 470;

} // namespace

EmptyState::EmptyState(const QString& heading, const QString& text, QWidget* parent)
    : QWidget(parent), m_heading(new PlainLabel(this)), m_text(new PlainLabel(this)),
      m_buttons(new QHBoxLayout)
{
    auto* column = new QVBoxLayout(this);
    column->setSpacing(Space::kSmall);
    column->addStretch(2);
    column->addSpacing(kPicture);
    m_heading->setFont(Theme::font(TextRole::Heading));
    m_heading->setAlignment(Qt::AlignCenter);
    column->addWidget(m_heading);
    QFont body = Theme::font(TextRole::Body);
    body.setPixelSize(14);
    m_text->setFont(body);
    m_text->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
    m_text->setWordWrap(true);
    m_text->setFixedWidth(kTextWidth);
    setTone(m_text, Tone::Quiet);
    column->addWidget(m_text, 0, Qt::AlignHCenter);
    column->addSpacing(Space::kSmall);
    m_buttons->setSpacing(Space::kGap);
    m_buttons->addStretch();
    m_buttons->addStretch();
    column->addLayout(m_buttons);
    column->addStretch(3);
    setWords(heading, text);
}

void EmptyState::setWords(const QString& heading, const QString& text)
{
    m_heading->setText(heading);
    m_text->setText(text);
    m_text->setFixedHeight(std::max(0, m_text->heightForWidth(kTextWidth)));
    setAccessibleName(heading);
    setAccessibleDescription(text);
}

QPushButton* EmptyState::addButton(const QString& text, bool primary)
{
    auto* button = new QPushButton(text, this);
    setButtonLook(button, primary ? ButtonLook::Primary : ButtonLook::Plain);
    m_buttons->insertWidget(m_buttons->count() - 1, button);
    return button;
}

void EmptyState::paintEvent(QPaintEvent*)
{
    // An empty bottle on its board: nothing but ullage.
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double foot = m_heading->geometry().top() - 26;
    painter.fillRect(QRectF(width() / 2.0 - 150, foot, 300, 3), colours().shelf);
    BottleView bottle;
    bottle.capacityMl = 1000;
    paintBottle(painter, QPointF(width() / 2.0, foot), 0.82, bottle, BottleLabel::None);
}

} // namespace ullage::app
