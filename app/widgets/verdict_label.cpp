#include "app/widgets/verdict_label.h"

#include "app/widgets/theme.h"
#include "app/words/verdict_words.h"

#include <QEvent>
#include <QFontMetricsF>
#include <QPainter>

#include <cmath>

namespace ullage::app
{

VerdictLabel::VerdictLabel(QWidget* parent) : QWidget(parent)
{
    QFont bold = Theme::font(TextRole::Strong);
    bold.setWeight(QFont::Bold);
    setFont(bold);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    describe();
}

void VerdictLabel::setLook(VerdictLook look)
{
    m_look = look;
    describe();
}

void VerdictLabel::setText(const QString& text)
{
    m_text = text;
    describe();
}

void VerdictLabel::describe()
{
    setAccessibleName(m_text.isEmpty() ? verdictWord(m_look) : m_text);
    updateGeometry();
    update();
}

QSize VerdictLabel::sizeHint() const
{
    const QFontMetricsF metrics(font());
    const QString text = m_text.isEmpty() ? verdictWord(m_look) : m_text;
    return {static_cast<int>(
                std::ceil(metrics.horizontalAdvance(text) + metrics.ascent() + kVerdictGap + 4)),
            static_cast<int>(std::ceil(metrics.height()))};
}

void VerdictLabel::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setFont(font());
    paintMarkedText(painter, rect(), m_look, m_text.isEmpty() ? verdictWord(m_look) : m_text);
}

void VerdictLabel::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        describe();
    QWidget::changeEvent(event);
}

} // namespace ullage::app
