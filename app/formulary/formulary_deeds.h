// What the Formulary page needs done to the book. The window fills it in; tests do as they like.
#pragma once

#include "core/formulary/formulary.h"

#include <functional>
#include <string>

namespace ullage::app
{

/// All four must be there. What is added is refused as by Book::add().
struct FormularyDeeds {
    std::function<Result<void>(const formulary::Solution&)> addSolution;
    std::function<Result<void>(const formulary::Vessel&)> addVessel;
    std::function<Result<void>(const formulary::DevelopmentFigure&)> addFigure;
    std::function<std::string()> newId; ///< one that the book has not
};

} // namespace ullage::app
