#include "app/widgets/screen_room.h"

#include <QScreen>
#include <QStyle>
#include <QWidget>

#include <algorithm>

namespace ullage::app
{

namespace
{

// Until the system has put a frame around it nobody knows how thick that will be.
QMargins frameOf(const QWidget& window)
{
    if (window.windowFlags().testFlag(Qt::FramelessWindowHint))
        return {};
    const QRect inner = window.geometry();
    const QRect outer = window.frameGeometry();
    if (outer != inner)
        return {inner.left() - outer.left(), inner.top() - outer.top(),
                outer.right() - inner.right(), outer.bottom() - inner.bottom()};
    const int edge =
        window.style()->pixelMetric(QStyle::PM_MdiSubWindowFrameWidth, nullptr, &window);
    const int title = window.style()->pixelMetric(QStyle::PM_TitleBarHeight, nullptr, &window);
    return {edge, title + edge, edge, edge};
}

} // namespace

QSize roomOnScreen(const QWidget& window)
{
    return window.screen()->availableGeometry().marginsRemoved(frameOf(window)).size();
}

void keepOnScreen(QWidget& window)
{
    if (window.windowState() & (Qt::WindowMaximized | Qt::WindowFullScreen | Qt::WindowMinimized))
        return;
    const QSize room = roomOnScreen(window);
    if (window.width() > room.width() || window.height() > room.height()) {
        const bool sizedByUser = window.testAttribute(Qt::WA_Resized);
        window.resize(window.size().boundedTo(room));
        window.setAttribute(Qt::WA_Resized, sizedByUser);
    }
    const QRect screen = window.screen()->availableGeometry().marginsRemoved(frameOf(window));
    QRect place = window.geometry();
    place.moveRight(std::min(place.right(), screen.right()));
    place.moveBottom(std::min(place.bottom(), screen.bottom()));
    place.moveLeft(std::max(place.left(), screen.left()));
    place.moveTop(std::max(place.top(), screen.top()));
    if (place.topLeft() != window.geometry().topLeft())
        window.move(window.pos() + place.topLeft() - window.geometry().topLeft());
}

} // namespace ullage::app
