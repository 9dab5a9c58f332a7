// What films that are compared have in common: counts, medians, and how their steps went.
#pragma once

#include "core/ledger/film_compare.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace ullage::ledger
{

using FilmTraces = std::vector<FilmTrace>;
/// A figure of a film, empty where it is not known.
using FilmFigure = std::function<std::optional<double>(const FilmTrace&)>;
/// Whether a film has something, empty where that is not known.
using FilmHas = std::function<std::optional<bool>(const FilmTrace&)>;

/// How many are known to have it or not, and how many have it.
TraitCount countOf(const FilmTraces& films, const FilmHas& has);

/// Planned and real seconds of all steps of a kind; empty where nothing was planned.
std::optional<OffPlan> stepsOf(const FilmTrace& film, const std::string& kind);

/// The share by which they went over; 0 for a few seconds, which are nobody's doing.
std::optional<double> overPlan(const FilmTrace& film, const std::string& kind);

/// `good` without those of a run that a marked one was of: a film that nobody marked is no witness
/// for the tank that it shared with one that is.
FilmTraces fromOtherRuns(const FilmTraces& good, const FilmTraces& marked);

/// Of those that are known; empty where none is.
std::optional<double> medianOf(const FilmTraces& films, const FilmFigure& figure);

} // namespace ullage::ledger
