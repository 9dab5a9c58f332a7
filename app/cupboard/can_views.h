// What the Cupboard shows of the cans for waste.
#pragma once

#include "app/words/units.h"
#include "core/ledger/cupboard_state.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace ullage::app
{

struct CanView {
    QString id;
    QString name;
    QString kind;      ///< what it is for
    QString contents;  ///< "6.4 l of 10 l · about 14 g of silver"
    double filled = 0; ///< 0 to 1
    bool full = false; ///< then `warning` says so
    QString warning;   ///< empty for none
    ledger::Waste holds = ledger::Waste::Other;
};

std::vector<CanView> canViews(const ledger::CupboardState& state, const Wording& wording);

/// What was poured in and handed over in the year of `now`, a line for each kind of waste that
/// there was any of.
QStringList yearLines(const ledger::CupboardState& state, chemistry::Instant now,
                      const Wording& wording);

/// What was handed over in that year, the last first: the day, which can, how much, to whom, and
/// the document.
QStringList handedLines(const ledger::CupboardState& state, chemistry::Instant now,
                        const Wording& wording);

} // namespace ullage::app
