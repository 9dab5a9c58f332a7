// Waste in words: what cans are for, what speaks against pouring into one, silver.
#pragma once

#include "core/ledger/can_stock.h"

#include <QLocale>
#include <QString>
#include <QStringList>

namespace ullage::app
{

/// "Developer", "Fixer": what a can is for.
QString wasteName(ledger::Waste waste);

/// What speaks against pouring a solution into a can, a sentence each.
QStringList doubtWords(const std::vector<ledger::PouringDoubt>& doubts);

/// "about 14 g"; "at least about 14 g" where some of it is not known.
QString silverText(double grams, bool atLeast, const QLocale& locale);

} // namespace ullage::app
