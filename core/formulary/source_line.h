// A source line taken apart: how far it can be believed, and where the figure is from.
//
// One line of text holds both, so that a journal needs no second field: "common practice: ten to
// fifteen films". These words are the line's code, whatever language it is shown in.
#pragma once

#include "core/chemistry/constants.h"

#include <optional>
#include <string>
#include <string_view>

namespace ullage::formulary
{

struct SourceLine {
    std::optional<chemistry::Grade> grade; ///< none where the line does not tell
    std::string text;                      ///< without the grade's words if a colon parts them

    friend bool operator==(const SourceLine&, const SourceLine&) = default;
};

/// Its grade is gradeOf()'s. "computed: from X" has the text "from X"; "computed from X", which is
/// one sentence, keeps all of its words. Never fails.
SourceLine splitSource(std::string_view line);

/// The line that splitSource() takes apart into just this grade and, but for blanks at its ends,
/// this text: the grade's words stand before a text that does not tell the grade itself, as one
/// that names a publication does. Empty for neither; without a grade the text alone.
std::string joinSource(const SourceLine& source);

} // namespace ullage::formulary
