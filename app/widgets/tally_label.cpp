#include "app/widgets/tally_label.h"

#include "app/widgets/tally.h"

#include <QEvent>
#include <QPainter>

#include <cmath>

namespace ullage::app
{

TallyLabel::TallyLabel(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setFilms(0);
}

void TallyLabel::setFilms(double films)
{
    m_films = films;
    setAccessibleName(tallyText(films));
    updateGeometry();
    update();
}

QSize TallyLabel::sizeHint() const
{
    return {static_cast<int>(std::ceil(tallyWidth(m_films, 13))) + 4, 17};
}

void TallyLabel::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setPen(palette().color(foregroundRole()));
    paintTally(painter, QRectF(2, 2, width() - 4, 13), Qt::AlignLeft, m_films);
}

void TallyLabel::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        setAccessibleName(tallyText(m_films));
    QWidget::changeEvent(event);
}

} // namespace ullage::app
