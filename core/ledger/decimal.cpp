#include "core/ledger/decimal.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace ullage::ledger
{

namespace
{

constexpr std::size_t kMostWhole = 12; // with six places still exact in 64 bits
constexpr std::size_t kMostPlaces = 6;

bool digits(std::string_view text, std::size_t most)
{
    return !text.empty() && text.size() <= most &&
           std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

} // namespace

std::optional<Decimal> Decimal::from(std::string_view text)
{
    const std::string_view unsignedPart = text.substr(text.rfind('-', 0) == 0 ? 1 : 0);
    const auto point = unsignedPart.find('.');
    const bool places = point != std::string_view::npos;
    if (!digits(unsignedPart.substr(0, point), kMostWhole) ||
        (places && !digits(unsignedPart.substr(point + 1), kMostPlaces))) {
        return std::nullopt;
    }
    Decimal made;
    made.m_text = std::string(text);
    return made;
}

std::optional<Decimal> Decimal::from(double number)
{
    if (!std::isfinite(number)) {
        return std::nullopt;
    }
    std::array<char, 64> buffer{};
    const auto [end, failure] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number,
                                              std::chars_format::fixed);
    if (failure != std::errc()) {
        return std::nullopt;
    }
    return from(std::string_view(buffer.data(), static_cast<std::size_t>(end - buffer.data())));
}

double Decimal::value() const
{
    double read = 0;
    std::from_chars(m_text.data(), m_text.data() + m_text.size(), read);
    return read;
}

} // namespace ullage::ledger
