#include "app/widgets/elided_box.h"

#include "app/widgets/plain_text.h"

#include <QHelpEvent>
#include <QStyleOptionComboBox>
#include <QStylePainter>

namespace ullage::app
{

QString ElidedBox::seen() const
{
    QStyleOptionComboBox option;
    initStyleOption(&option);
    const QRect room =
        style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this);
    return oneLine(currentText(), fontMetrics(), room.width());
}

bool ElidedBox::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip && toolTip().isEmpty() && seen() != currentText()) {
        showPlainToolTip(static_cast<QHelpEvent*>(event)->globalPos(), currentText(), this);
        return true;
    }
    return QComboBox::event(event);
}

void ElidedBox::paintEvent(QPaintEvent* /*event*/)
{
    QStylePainter painter(this);
    painter.setPen(palette().color(QPalette::Text));
    QStyleOptionComboBox option;
    initStyleOption(&option);
    painter.drawComplexControl(QStyle::CC_ComboBox, option);
    option.currentText = seen();
    painter.drawControl(QStyle::CE_ComboBoxLabel, option);
}

} // namespace ullage::app
