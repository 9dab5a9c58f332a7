// Reads what was printed as somebody else would: by rendering the PDF and by looking at it.
#pragma once

#include <QByteArray>
#include <QImage>
#include <QRectF>
#include <QString>

namespace ullage::app::testing
{

/// One page, from 0, at `dpi`; null where there is none.
QImage rendered(const QByteArray& pdf, int page, int dpi);
/// What the square code in a picture says; empty where none is read.
QString decoded(const QImage& picture);
/// A part of a page rendered at `dpi`, in mm.
QImage part(const QImage& page, const QRectF& mm, int dpi);
/// Where anything dark stands in a picture, in its pixels; empty for nothing.
QRect darkIn(const QImage& picture);
double toMillimetres(double pixels, int dpi);

} // namespace ullage::app::testing
