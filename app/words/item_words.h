// A thing of the cupboard in words: what it is, and an amount of it in its own unit.
#pragma once

#include "app/words/units.h"
#include "core/formulary/formulary.h"
#include "core/ledger/cupboard.h"

#include <QString>

namespace ullage::app
{

/// What the thing is: its solution and what it makes ("Acid fixer, makes 1,000 ml"), or its own
/// name.
QString itemName(const ledger::Item& item, const formulary::Formulary& formulary,
                 const Wording& wording);
/// An amount in its unit: "2 packets", "640 ml", "380 g", "34 pieces". `unit` is a supply's own.
QString itemAmountText(ledger::ItemKind kind, double amount, const QString& unit,
                       const Wording& wording);

} // namespace ullage::app
