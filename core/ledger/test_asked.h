// That somebody asked for a test of a bottle, as the book keeps it: a note on the bottle.
//
// The journal has no event for it, and a note is what every reader of the book understands. Its
// text is made of codes, so that it can be read back and worded in any language:
//   test-asked thin film=ID
// Until a test is made after it, the bottle's verdict is to test it first.
#pragma once

#include "core/ledger/film_mark.h"

#include <optional>
#include <string>

namespace ullage::ledger
{

struct TestAsked {
    FilmFault fault{}; ///< what was wrong with the negatives
    std::string film;  ///< id of one of the films
};

std::string testAskedNote(const TestAsked& asked);

/// Nothing for any other note.
std::optional<TestAsked> readTestAskedNote(const std::string& note);

} // namespace ullage::ledger
