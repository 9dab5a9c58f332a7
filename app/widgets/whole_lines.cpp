#include "app/widgets/whole_lines.h"

#include <QEvent>
#include <QLayout>
#include <QScrollBar>

namespace ullage::app
{

WholeLines::WholeLines(QWidget* content, QWidget* parent) : QScrollArea(parent)
{
    setFrameShape(QFrame::NoFrame);
    setWidget(content);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setAutoFillBackground(false);
    content->setAutoFillBackground(false);
    content->installEventFilter(this);
}

void WholeLines::fit()
{
    const QLayout* layout = widget() ? widget()->layout() : nullptr;
    const int line = fontMetrics().lineSpacing();
    if (!layout || line <= 0)
        return;
    verticalScrollBar()->setSingleStep(line);
    const int needed = layout->hasHeightForWidth() ? layout->totalMinimumHeightForWidth(width())
                                                   : layout->totalMinimumSize().height();
    const int below = needed > height() ? height() % line : 0;
    if (below == m_below)
        return;
    m_below = below;
    setViewportMargins(0, 0, 0, below);
}

bool WholeLines::event(QEvent* event)
{
    if (event->type() == QEvent::Resize || event->type() == QEvent::FontChange)
        fit();
    return QScrollArea::event(event);
}

bool WholeLines::eventFilter(QObject* watched, QEvent* event)
{
    const bool handled = QScrollArea::eventFilter(watched, event);
    if (watched == widget() && event->type() == QEvent::LayoutRequest)
        fit();
    return handled;
}

} // namespace ullage::app
