// Where a figure is from, as a word in a ring; the word alone tells them apart.
#pragma once

#include "app/words/figure_words.h"

#include <QColor>
#include <QRectF>

class QPainter;

namespace ullage::app
{

/// The most that a badge takes; its ring is as wide as its word.
inline constexpr double kBadgeWidth = 124;
inline constexpr double kBadgeHeight = 22;

QColor gradeColour(MaybeGrade grade);

/// A badge at the right of `rect`, half way up. No source is a dashed ring.
void paintGrade(QPainter& painter, const QRectF& rect, MaybeGrade grade);

} // namespace ullage::app
