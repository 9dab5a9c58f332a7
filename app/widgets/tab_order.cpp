#include "app/widgets/tab_order.h"

#include <QLayout>
#include <QScrollArea>

#include <vector>

namespace ullage::app
{

namespace
{

using Stops = std::vector<QWidget*>;

void collect(QLayout* layout, Stops& stops);

void collect(QWidget* widget, Stops& stops)
{
    // Who hands the keys on to a part is no stop, its parts are.
    const bool handsOn = widget->focusProxy() && widget->isAncestorOf(widget->focusProxy());
    const bool isStop = (widget->focusPolicy() & Qt::TabFocus) && !(handsOn && widget->layout());
    if (isStop)
        stops.push_back(widget);
    // What scrolls by the keys is a stop, and so is what lies in it.
    if (auto* scroll = qobject_cast<QScrollArea*>(widget); scroll && scroll->widget())
        collect(scroll->widget(), stops);
    else if (!isStop && widget->layout())
        collect(widget->layout(), stops);
}

void collect(QLayout* layout, Stops& stops)
{
    for (int i = 0; i < layout->count(); ++i) {
        QLayoutItem* item = layout->itemAt(i);
        if (item->widget())
            collect(item->widget(), stops);
        else if (item->layout())
            collect(item->layout(), stops);
    }
}

} // namespace

void orderTabs(QWidget& root)
{
    Stops stops;
    collect(&root, stops);
    for (std::size_t i = 1; i < stops.size(); ++i)
        QWidget::setTabOrder(stops[i - 1], stops[i]);
}

} // namespace ullage::app
