// Hazard statements of single chemicals, as their safety data sheets carry them.
#pragma once

#include "core/formulary/solution.h"

#include <QStringList>

#include <vector>

namespace ullage::app
{

/// A line for each chemical that carries statements.
QStringList everyHazard();

/// How it is handled: what it is mixed from, or the solution in its bottle.
enum class Strength { AsBought, AsMixed };
/// Hazard statements of what a solution contains: of the chemicals in its composition line and in
/// its list of chemicals, and of nothing else. As mixed, only of those whose share reaches the
/// limit from which a mixture is classified by it; a share that is not known counts as reached.
QStringList hazardCautions(const formulary::Solution& solution, Strength strength);

/// A chemical of a solution and the hazard statements that it carries by itself.
struct HazardousChemical {
    QString name;           ///< in the user's language
    QStringList statements; ///< codes: "H302"
};
/// All that a solution contains, however little of it: what a label names.
std::vector<HazardousChemical> hazardousChemicals(const formulary::Solution& solution);
/// Their statements in words (hazard_statements.h), each once.
QStringList statementsOf(const std::vector<HazardousChemical>& chemicals);

} // namespace ullage::app
