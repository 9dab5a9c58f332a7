// Amounts of money in words: exact, in the currency they were entered in, never added up across
// currencies; what is not known is said.
#pragma once

#include "app/words/explanation.h"
#include "app/words/units.h"
#include "core/chemistry/quantities.h"
#include "core/ledger/charges.h"
#include "core/ledger/money.h"

#include <QLocale>
#include <QString>

#include <string>

namespace ullage::app
{

/// "9.80 EUR", with the locale's signs and hundredths at the least; without a currency the amount
/// alone.
QString moneyText(const ledger::Decimal& amount, const std::string& currency,
                  const QLocale& locale);
/// The sum of each currency: "9.80 EUR + 12.00 SEK"; empty without any.
QString moneyText(const ledger::Money& money, const QLocale& locale);
/// "9.80 EUR", "at least 9.80 EUR" where not all of it is known, "not known" where nothing is;
/// empty where there is nothing that could cost.
QString costText(const ledger::Cost& cost, const QLocale& locale);

/// "Cost 8.40 EUR so far, 0.84 EUR for each film done." of a bottle; empty where nothing is known.
QString bottleCostText(const ledger::Cost& cost, chemistry::Films done, const QLocale& locale);
/// "Cost 8.40 EUR, 0.84 EUR for each film done." of a bottle that has ended; the same otherwise.
QString endedCostText(const ledger::Cost& cost, chemistry::Films done, const QLocale& locale);
/// The same for "Where from?"; "not known" where it is not.
Explanation explainCost(const ledger::Cost& cost, chemistry::Films done, const Wording& wording);

} // namespace ullage::app
