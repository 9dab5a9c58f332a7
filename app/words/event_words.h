// What happened and what was done, in words: events for a bottle's history and the day book,
// actions for the undo menu.
#pragma once

#include "app/words/units.h"
#include "core/formulary/formulary.h"
#include "core/ledger/event.h"
#include "core/ledger/store_port.h"

#include <QString>

#include <string_view>

namespace ullage::app
{

/// "2 × 135-36, 1 × 120"; an area as square centimetres.
QString loadText(const ledger::Load& load, const QLocale& locale);

/// The kind alone: "Mixed", "Film", "Clearing test".
QString eventKindName(const ledger::Event& event);
/// By its code (kKindCodes); an unknown one as it is.
QString eventKindName(std::string_view kind);

/// One line: "Mixed 1,000 ml of MQ borax developer in Amber 1". Unknown ids stand as they are.
QString eventText(const ledger::Event& event, const formulary::Formulary& formulary,
                  const Wording& wording);

/// What an action did, to stand after "Undo": "mixing Dev 15". Unknown codes stand as they are.
QString actionName(const ledger::Action& action);

/// "Undo mixing Dev 15", "Undo" for nothing; the same for redo.
QString undoText(const std::optional<ledger::Action>& action);
QString redoText(const std::optional<ledger::Action>& action);

/// What the program itself writes as a reason, of a taking back ("undone") or of a drawing
/// ("make-room"), in words; a user's own reason as it is.
QString whyText(const std::string& why);

} // namespace ullage::app
