// What a person typed into a line of the book, apart from the codes that the program put there.
#pragma once

#include "core/ledger/contradiction.h"

#include <QByteArray>

#include <array>
#include <string>
#include <string_view>

namespace ullage::store
{

/// Reasons that the program itself enters; they are shown in the user's language.
inline constexpr std::array<std::string_view, 5> kWhyCodes{
    "undone", "top-up", "make-room", ledger::kRetimedReason, ledger::kSettledReason};

/// Fields that hold a person's own words, whatever the type of line.
inline constexpr std::array<std::string_view, 13> kOwnWords{
    "name", "text", "why",   "how",    "note",   "notes",   "by",
    "lot",  "to",   "place", "format", "method", "document"};

struct PersonsText {
    QByteArray text;         ///< folded (search_words.h), one field a line
    std::string fault;       ///< of a mark, or of what asked for a test; or empty
    std::string why;         ///< one of kWhyCodes, or empty
    std::string name;        ///< as written, or empty
    std::string solution;    ///< id, or empty
    std::string item;        ///< id of what of the cupboard it is about or was made from, or empty
    bool testAsked = false;  ///< asks for a test
    bool takesBack = false;  ///< takes another event back
    bool timesOfRun = false; ///< only the times of a run: not shown by itself
};

/// Of a line of any type. Nothing for one that cannot be read.
PersonsText personsText(const QByteArray& line);

} // namespace ullage::store
