// Words for what stands in the cupboard: what is left of it, until when, days.
#pragma once

#include "app/words/item_words.h"
#include "app/words/units.h"
#include "core/ledger/cupboard_state.h"

#include <QString>

namespace ullage::app
{

/// What is left of it; "amount not known" where nothing says.
QString leftText(const ledger::ItemHere& here, const QString& unit, const Wording& wording);
/// Until when, in words that tell by themselves what is wrong: "past its date since 5 Sep 2026",
/// "opened, keeps 12 more days, to 3 Dec"; empty where no date is known.
QString keepsText(const ledger::ItemHere& here, chemistry::Instant now, const Wording& wording);
/// A day as the journal has it ("2027-02-28") in the user's words; any other text as it is.
QString dayWords(const std::string& day, const QLocale& locale);

} // namespace ullage::app
