// The figures that say how a solution is used: once and poured away, fixed with for so long at
// least, replenished up to so much.
#pragma once

#include "app/formulary/figure_rows.h"

#include <optional>

namespace ullage::app
{

enum class UseFigure {
    OnceForAFilm,  ///< what a film takes of it, used once and poured away
    KindOfFixer,   ///< acid or alkaline
    ShortestFix,   ///< fixing time that the packet does not go below
    MostTurnovers, ///< replenisher in times the volume first mixed
};

/// Its row with its source, under the name of its field in the journal; empty where the solution
/// says nothing of it.
std::optional<FigureRow> useRow(UseFigure figure, const formulary::Solution& solution,
                                const Wording& wording);

} // namespace ullage::app
