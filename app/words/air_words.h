// How far a date can be believed, and what would keep the air out, in words.
#pragma once

#include "app/words/units.h"
#include "core/ledger/air_advice.h"
#include "core/ledger/range.h"

#include <QString>
#include <QStringList>

namespace ullage::app
{

/// "about 3 Apr (Feb – Jul)": the date and the months in which 80 % of the sampled dates lie; one
/// month alone is not written as a span. The years stand where they differ from the date's.
QString discardSpanText(const ledger::DateRange& range, chemistry::Instant now,
                        const QLocale& locale);

/// "Squeeze the air out: about 5 weeks more." One sentence for every remedy that gains a week or
/// more, best first; one that says so where none does.
QStringList helpSentences(const ledger::AirAdvice& advice, chemistry::Instant now,
                          const Wording& wording);

/// "air in the bottle", "past the cap".
QString routeName(ledger::Route route);
/// "Most of its oxygen came with the air in the bottle (62 %)."
QString routeSentence(const ledger::Batch& batch, const Wording& wording);

/// What speaks against where it is stored; empty if nothing does.
QString storeSentence(const ledger::Batch& batch, const Wording& wording);

} // namespace ullage::app
