// Paints one bottle: outline by material and size, true level, hatched ullage, cap and label.
#pragma once

#include "app/widgets/bottle_view.h"

#include <QColor>
#include <QPointF>

class QPainter;

namespace ullage::app
{

enum class BottleLabel { Tape, None };

/// The colour of what is in the bottle: by kind of solution, darker as it is used up.
QColor liquidColour(const BottleView& bottle);

/// The shape that is drawn for it (a squeezed bottle narrowed to liquid and air).
BottleShape shapeOf(const BottleView& bottle);

/// Paints it standing on `foot` (the middle of its base), `scale` times its natural size.
void paintBottle(QPainter& painter, const QPointF& foot, double scale, const BottleView& bottle,
                 BottleLabel label = BottleLabel::Tape);

/// Whether its label has room for the whole name at that scale.
bool tapeHoldsName(const BottleView& bottle, double scale);

/// The tallest bottle there can be with its cap, at scale 1.
inline constexpr double kTallestBottle = 206;

} // namespace ullage::app
