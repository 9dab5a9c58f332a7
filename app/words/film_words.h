// Films in words: what is wrong with them, the steps they went through, and what the book notes of
// both in codes.
#pragma once

#include "app/words/units.h"
#include "core/ledger/entry.h"
#include "core/ledger/film_mark.h"
#include "core/ledger/run_times.h"

#include <QString>

namespace ullage::app
{

/// "thin", "not clear": as it stands in a sentence.
QString filmFaultName(ledger::FilmFault fault);
/// The same at the start of a line: "Thin".
QString filmFaultTitle(ledger::FilmFault fault);

/// "thin: less than half of what it should be". The note may be empty.
QString filmMarkText(const ledger::FilmMark& mark);

/// "Harbour 400 · 120 · EI 200 · roll 3"; "A film" where nothing is known of it.
QString filmText(const ledger::FilmRecord& film, const QLocale& locale);

/// "Develop", "Pour back" for the codes of run_times.h; others as they are.
QString stepCodeName(const std::string& kind);

/// That a test was asked for, and why.
QString testAskedText(const ledger::TestAsked& asked);
/// A note as it was typed, or in words the times of a run that one of before is made of.
QString noteText(const ledger::Noted& note);

} // namespace ullage::app
