// What contradicts in an import, in words.
#pragma once

#include "app/words/units.h"
#include "core/formulary/formulary.h"
#include "core/ledger/contradiction.h"

#include <QString>

#include <map>
#include <string_view>

namespace ullage::app
{

/// For the command line: "party.jsonl:12: used_ml: … It stands against “e5” of the book."
QString contradictionLine(const ledger::Contradiction& contradiction);
/// "party.jsonl:12: “Dev 1” may be the bottle “Dev 14” of the book: …"
QString likelySameLine(const ledger::LikelySame& same, const QString& file);

/// "Solution", "Bottle", "Film"; a type without a name as the journal spells it.
QString entryTypeName(std::string_view type);

/// What stands on a line, for the window: "2 Nov, 19:30 · Drew off 20 ml", "Solution MQ borax".
QString entryText(const ledger::Entry& entry, const formulary::Formulary& formulary,
                  chemistry::Instant now, const Wording& wording);

/// Why it contradicts, and what it stands against, for the window.
QString contradictionText(const ledger::Contradiction& contradiction,
                          const formulary::Formulary& formulary, chemistry::Instant now,
                          const Wording& wording);
QString likelySameText(const ledger::LikelySame& same, chemistry::Instant now,
                       const Wording& wording);

/// What would come in, by what it is: "3 bottles mixed, 40 loads of film, 120 other events".
QString comingText(const std::map<std::string_view, int>& coming);

/// "Leave it out", "Change its time…", "Take ours back".
QString wayOutText(ledger::WayOut way);

} // namespace ullage::app
