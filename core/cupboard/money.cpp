#include "core/cupboard/money.h"

#include <algorithm>

namespace ullage::cupboard
{

namespace
{

constexpr std::size_t kDecimals = 6; // as many as a Decimal has
constexpr std::int64_t kOne = 1'000'000;

std::size_t decimalsOf(const std::string& text)
{
    const auto point = text.find('.');
    return point == std::string::npos ? 0 : text.size() - point - 1;
}

std::int64_t millionthsOf(const std::string& text)
{
    std::int64_t number = 0;
    std::size_t decimals = 0;
    bool behind = false;
    for (const char c : text) {
        if (c == '.') {
            behind = true;
        } else if (c >= '0' && c <= '9') {
            number = number * 10 + (c - '0');
            decimals += behind ? 1 : 0;
        }
    }
    for (; decimals < kDecimals; ++decimals) {
        number *= 10;
    }
    return text.starts_with('-') ? -number : number;
}

} // namespace

void Money::add(const ledger::Decimal& amount, const std::string& currency, int times)
{
    Sum& sum = m_sums[currency];
    sum.millionths += millionthsOf(amount.text()) * times;
    sum.decimals = std::max(sum.decimals, decimalsOf(amount.text()));
}

std::map<std::string, ledger::Decimal> Money::sums() const
{
    std::map<std::string, ledger::Decimal> found;
    for (const auto& [currency, sum] : m_sums) {
        const std::int64_t size = sum.millionths < 0 ? -sum.millionths : sum.millionths;
        std::string text = std::to_string(size / kOne);
        if (sum.decimals > 0) {
            std::string rest = std::to_string(size % kOne);
            rest.insert(0, kDecimals - rest.size(), '0');
            text += '.' + rest.substr(0, sum.decimals);
        }
        text.insert(0, sum.millionths < 0 ? "-" : "");
        found.emplace(currency, ledger::Decimal::from(text).value_or(ledger::Decimal()));
    }
    return found;
}

} // namespace ullage::cupboard
