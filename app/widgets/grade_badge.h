// Where a figure is from, as a word in a ring; the word alone tells them apart.
#pragma once

#include "app/words/figure_words.h"

#include <QColor>
#include <QRectF>

class QPainter;

namespace ullage::app
{

inline constexpr double kBadgeHeight = 22;

/// The most that a badge takes in the language; its ring is as wide as its word.
double widestBadge();

QColor gradeColour(MaybeGrade grade);

/// A badge at the right of `rect`, half way up. No source is a dashed ring.
void paintGrade(QPainter& painter, const QRectF& rect, MaybeGrade grade);

} // namespace ullage::app
