// Amounts of money in words: exact, in the currency they were entered in, never added up across
// currencies; what is not known is said.
#pragma once

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

} // namespace ullage::app
