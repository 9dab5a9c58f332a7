// Where a figure is from, as a word in a ring; the word alone tells them apart.
#pragma once

#include "app/words/figure_words.h"

#include <QColor>
#include <QRectF>

class QPainter;

namespace ullage::app
{

inline constexpr double kBadgeHeight = 22;
/// Its natural width, by its word.
double badgeWidth(MaybeGrade grade);

QColor gradeColour(MaybeGrade grade);

/// A badge of its natural size in the middle of `rect`. No source is a dashed ring.
void paintGrade(QPainter& painter, const QRectF& rect, MaybeGrade grade);

} // namespace ullage::app
