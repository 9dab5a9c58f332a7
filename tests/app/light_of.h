// How much light a widget gives off, as it is painted.
#pragma once

#include <QImage>
#include <QPixmap>
#include <QWidget>

#include <algorithm>

namespace ullage::app
{

struct Light {
    int red = 0;    ///< of its brightest pixel, 0 to 255
    int others = 0; ///< green or blue, of another pixel perhaps
};

inline Light lightOf(QWidget& widget)
{
    const QImage image = widget.grab().toImage();
    Light light;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QRgb pixel = image.pixel(x, y);
            light.red = std::max(light.red, qRed(pixel));
            light.others = std::max({light.others, qGreen(pixel), qBlue(pixel)});
        }
    }
    return light;
}

} // namespace ullage::app
