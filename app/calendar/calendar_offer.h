// What the events of a calendar could be as known work, for a person to say which of them are.
#pragma once

#include "core/formulary/formulary.h"
#include "core/ledger/cupboard_state.h"
#include "core/store/calendar_text.h"

#include <QLocale>
#include <QString>

#include <vector>

namespace ullage::app
{

struct OfferedWork {
    ledger::Work work;   ///< as it would be entered
    bool known = false;  ///< the book has this event already: it would be given anew
    bool likely = false; ///< known, written by this program, or it names films or a solution
};

/// Events that the book does not have yet, or has otherwise, in their order; one that neither comes
/// any more nor is known is passed over. How many films, and the developer, are taken from an
/// event's words where it has no field of ours ("8 films, MQ borax developer"). Of a number that is
/// also a film's format ("120 films") nobody can tell: it is passed over.
std::vector<OfferedWork> offeredWork(const std::vector<store::CalendarEvent>& events,
                                     const ledger::CupboardState& cupboard,
                                     const formulary::Formulary& formulary, chemistry::Instant now);

/// Names the events that were left out as the calendar was read (readCalendar()), and says why;
/// empty for none.
QString notReadText(const std::vector<Error>& leftOut, const QLocale& locale);

} // namespace ullage::app
