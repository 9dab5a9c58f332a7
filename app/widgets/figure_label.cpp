#include "app/widgets/figure_label.h"

#include "app/widgets/figures.h"

#include <QEvent>
#include <QFontMetricsF>
#include <QPainter>

#include <cmath>

namespace ullage::app
{

FigureLabel::FigureLabel(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void FigureLabel::setText(const QString& text)
{
    if (text == m_text)
        return;
    m_text = text;
    setAccessibleName(text);
    updateGeometry();
    update();
}

void FigureLabel::setAlignment(Qt::Alignment alignment)
{
    m_alignment = alignment;
    update();
}

QSize FigureLabel::sizeHint() const
{
    return {static_cast<int>(std::ceil(figuresWidth(font(), m_text))),
            static_cast<int>(std::ceil(QFontMetricsF(font()).height()))};
}

void FigureLabel::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setFont(font());
    painter.setPen(palette().color(foregroundRole()));
    drawFigures(painter, rect(), m_alignment, m_text);
}

void FigureLabel::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::FontChange)
        updateGeometry();
    QWidget::changeEvent(event);
}

} // namespace ullage::app
