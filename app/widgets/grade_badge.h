// How far a figure can be believed, as a letter in a ring; the letter alone tells them apart.
#pragma once

#include "app/words/figure_words.h"

#include <QColor>
#include <QRectF>

class QPainter;

namespace ullage::app
{

inline constexpr double kBadgeWidth = 28;
inline constexpr double kBadgeHeight = 22;

QColor gradeColour(MaybeGrade grade);

/// A badge of its natural size in the middle of `rect`. No source is a dashed ring.
void paintGrade(QPainter& painter, const QRectF& rect, MaybeGrade grade);

} // namespace ullage::app
