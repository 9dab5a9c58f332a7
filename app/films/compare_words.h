// What films have in common, in words.
#pragma once

#include "app/words/units.h"
#include "core/ledger/film_cause.h"

#include <QString>

#include <functional>
#include <string>

namespace ullage::app
{

/// The name of a bottle by its id; for one that is not known, what is to stand in its place.
using BottleName = std::function<QString(const std::string&)>;

/// "Developed in Dev 4", "The developer had done 8 films a litre or more".
QString traitText(const ledger::TraitFound& found, const BottleName& bottle,
                  const Wording& wording);

/// "Develop: 0:59 of 10:34".
QString offPlanText(const ledger::OffPlan& off);
/// "1 of 2 marked".
QString offPlanCounts(const ledger::OffPlan& off);

/// "3 of 3 marked · 1 of 12 good", counted among the films of which it is known.
QString traitCounts(const ledger::TraitFound& found);

/// "Not why they are thin: it comes after the image is developed and takes nothing of it."
QString ruledOutText(const ledger::RuledOut& ruledOut);

/// How much the comparison rests on: "3 films marked, 12 good ones."
QString comparedText(const ledger::FilmComparison& compared);

} // namespace ullage::app
