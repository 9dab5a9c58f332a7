// Codes as lines, settings and commands spell them, in the order of their enum.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace ullage::formulary
{

/// The value whose code that is; nothing for an unknown one.
template <class Enum, std::size_t count>
constexpr std::optional<Enum> fromCode(const std::array<std::string_view, count>& codes,
                                       std::string_view code)
{
    const auto found = std::find(codes.begin(), codes.end(), code);
    return found == codes.end() ? std::nullopt
                                : std::optional(static_cast<Enum>(found - codes.begin()));
}

} // namespace ullage::formulary
