#include "app/daybook/looking_strip.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"

#include <QHBoxLayout>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>

namespace ullage::app
{

namespace
{

constexpr int kQuickMs = 500;
constexpr int kBarWidth = 120;

} // namespace

LookingStrip::LookingStrip(QWidget* parent)
    : QWidget(parent), m_label(new PlainLabel(this)), m_bar(new QProgressBar(this)),
      m_button(new QPushButton(this)), m_later(new QTimer(this))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(Space::kSmall);
    setTone(m_label, Tone::Quiet);
    m_bar->setFixedWidth(kBarWidth);
    m_bar->setTextVisible(false);
    m_bar->setRange(0, 100);
    row->addWidget(m_label);
    row->addWidget(m_bar);
    row->addWidget(m_button);
    row->addStretch(1);
    m_later->setSingleShot(true);
    m_later->setInterval(kQuickMs);
    connect(m_later, &QTimer::timeout, this, &QWidget::show);
    connect(m_button, &QPushButton::clicked, this, &LookingStrip::pressed);
    hide();
}

QString LookingStrip::text() const
{
    return isVisibleTo(parentWidget()) ? m_label->text() : QString();
}

void LookingStrip::setWords(const QString& text, const QString& button)
{
    m_label->setText(text);
    m_button->setText(button);
    m_bar->setAccessibleName(text);
}

void LookingStrip::showProgress(const QString& text, const QString& button, int done)
{
    setWords(text, button);
    m_bar->setVisible(done >= 0);
    m_bar->setValue(done);
    if (!isVisibleTo(parentWidget()) && !m_later->isActive())
        m_later->start();
}

void LookingStrip::showRest(const QString& text, const QString& button)
{
    setWords(text, button);
    m_bar->hide();
    m_later->stop();
    show();
}

void LookingStrip::rest()
{
    m_later->stop();
    hide();
}

} // namespace ullage::app
