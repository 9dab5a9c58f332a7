// The formulary that a new book begins with, and a few invented development times.
#pragma once

#include "core/formulary/formulary.h"

namespace ullage::app::sample
{

/// Reads resources/starter.jsonl; an empty formulary if it cannot be read.
formulary::Formulary starterFormulary();

/// The same with times of invented films.
formulary::Formulary formularyWithTimes();

} // namespace ullage::app::sample
