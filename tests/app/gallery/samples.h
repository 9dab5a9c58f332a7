// Invented bottles for pictures and tests.
#pragma once

#include "app/charts/chart.h"
#include "app/shelf/selected_bottle.h"
#include "app/widgets/bottle_view.h"

#include <vector>

namespace ullage::app::samples
{

/// Up to 60 bottles of every kind, material, size and verdict.
std::vector<BottleView> bottles(int count);

/// What the shelf says of one of them.
SelectedBottle selected(const BottleView& bottle);

ChartSpec whatIsLeft();
ChartSpec timeForEachFilm();
ChartSpec clearing();

} // namespace ullage::app::samples
