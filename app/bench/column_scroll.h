// A column of cards that scrolls when it is taller than its place, and is never narrower than what
// stands in it.
#pragma once

#include "app/widgets/edge_fade.h"
#include "app/widgets/scroll_room.h"

#include <QEvent>

namespace ullage::app
{

class ColumnScroll : public ScrollRoom
{
    Q_OBJECT

public:
    explicit ColumnScroll(QWidget* inside, FadeGround ground = FadeGround::Page)
        : ScrollRoom(inside)
    {
        fadeEdges(*this, ground);
        setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    }

    [[nodiscard]] QSize minimumSizeHint() const override
    {
        constexpr int kBar = 12;
        return {widget()->minimumSizeHint().width() + kBar, 80};
    }

protected:
    bool event(QEvent* event) override
    {
        // Of what stands in it without a layout of its own the place hears in this way.
        if (event->type() == QEvent::LayoutRequest)
            fit();
        return ScrollRoom::event(event);
    }
};

} // namespace ullage::app
