// Text without the blanks around it.
#pragma once

#include <string_view>

namespace ullage::formulary
{

/// Without the blanks and tabs at its ends.
inline std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view kBlanks = " \t";
    const auto first = text.find_first_not_of(kBlanks);
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

} // namespace ullage::formulary
