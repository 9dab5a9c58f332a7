#include "app/widgets/page_room.h"

#include <QScrollBar>
#include <QStackedWidget>

#include <algorithm>

namespace ullage::app
{

PageRoom::PageRoom(QWidget* pages, QWidget* parent) : ScrollRoom(pages, parent)
{
    QList<QStackedWidget*> stacks = pages->findChildren<QStackedWidget*>();
    if (auto* stack = qobject_cast<QStackedWidget*>(pages))
        stacks << stack;
    for (const QStackedWidget* stack : stacks) {
        connect(stack, &QStackedWidget::currentChanged, this, [this] {
            horizontalScrollBar()->setValue(0);
            verticalScrollBar()->setValue(0);
            fit();
        });
    }
}

const QWidget& PageRoom::page() const
{
    const QWidget* page = widget();
    while (const auto* stack = qobject_cast<const QStackedWidget*>(page)) {
        if (!stack->currentWidget())
            break;
        page = stack->currentWidget();
    }
    return *page;
}

QSize PageRoom::leastAt(int width) const
{
    const QSize least = page().minimumSizeHint().expandedTo(page().minimumSize());
    return {std::max(width, least.width()), least.height()};
}

QSize PageRoom::sizeHint() const { return widget()->sizeHint(); }

} // namespace ullage::app
