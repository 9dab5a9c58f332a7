// A column of cards that scrolls when it is taller than its place, and is never narrower than what
// stands in it.
#pragma once

#include <QEvent>
#include <QScrollArea>

namespace ullage::app
{

class ColumnScroll : public QScrollArea
{
    Q_OBJECT

public:
    explicit ColumnScroll(QWidget* inside, QWidget* parent = nullptr) : QScrollArea(parent)
    {
        setWidget(inside);
        setWidgetResizable(true);
        setFrameShape(QFrame::NoFrame);
        setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        setFocusPolicy(Qt::NoFocus);
        viewport()->setAutoFillBackground(false);
        inside->setAutoFillBackground(false);
        inside->installEventFilter(this);
    }

    [[nodiscard]] QSize minimumSizeHint() const override
    {
        constexpr int kBar = 12;
        return {widget()->minimumSizeHint().width() + kBar, 80};
    }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() == QEvent::LayoutRequest)
            updateGeometry();
        return QScrollArea::eventFilter(watched, event);
    }
};

} // namespace ullage::app
