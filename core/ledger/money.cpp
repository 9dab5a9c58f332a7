#include "core/ledger/money.h"

#include <algorithm>
#include <cmath>

namespace ullage::ledger
{

namespace
{

constexpr std::size_t kPlaces = 6; // as many as a Decimal has
constexpr std::size_t kHundredths = 2;
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
    for (; decimals < kPlaces; ++decimals) {
        number *= 10;
    }
    return text.starts_with('-') ? -number : number;
}

// The millionths of the last of so many decimals.
std::int64_t stepOf(std::size_t decimals)
{
    std::int64_t step = kOne;
    for (; decimals > 0; --decimals) {
        step /= 10;
    }
    return step;
}

std::int64_t rounded(long double millionths, std::int64_t step)
{
    return std::llround(millionths / static_cast<long double>(step)) * step;
}

} // namespace

void Money::add(const Decimal& amount, const std::string& currency, int times)
{
    Sum& sum = m_sums[currency];
    sum.millionths += millionthsOf(amount.text()) * times;
    sum.decimals = std::max(sum.decimals, decimalsOf(amount.text()));
}

Money& Money::operator+=(const Money& other)
{
    for (const auto& [currency, more] : other.m_sums) {
        Sum& sum = m_sums[currency];
        sum.millionths += more.millionths;
        sum.decimals = std::max(sum.decimals, more.decimals);
    }
    return *this;
}

Money& Money::operator-=(const Money& other)
{
    for (const auto& [currency, less] : other.m_sums) {
        Sum& sum = m_sums[currency];
        sum.millionths -= less.millionths;
        sum.decimals = std::max(sum.decimals, less.decimals);
    }
    return *this;
}

std::map<std::string, Decimal> Money::sums() const
{
    std::map<std::string, Decimal> found;
    for (const auto& [currency, sum] : m_sums) {
        const std::int64_t size = sum.millionths < 0 ? -sum.millionths : sum.millionths;
        std::string text = std::to_string(size / kOne);
        if (sum.decimals > 0) {
            std::string rest = std::to_string(size % kOne);
            rest.insert(0, kPlaces - rest.size(), '0');
            text += '.' + rest.substr(0, sum.decimals);
        }
        text.insert(0, sum.millionths < 0 ? "-" : "");
        found.emplace(currency, Decimal::from(text).value_or(Decimal()));
    }
    return found;
}

// Each part ends where the weights up to it end, rounded: so what one is rounded up the next one
// lacks, and the last one ends at the sum itself.
std::vector<Money> Money::split(const std::vector<double>& weights) const
{
    long double all = 0;
    for (const double weight : weights) {
        all += weight;
    }
    std::vector<Money> parts(weights.size());
    for (const auto& [currency, sum] : m_sums) {
        const std::size_t decimals = std::max(kHundredths, sum.decimals);
        const auto whole = static_cast<long double>(sum.millionths);
        long double until = 0;
        std::int64_t given = 0;
        for (std::size_t i = 0; i < weights.size(); ++i) {
            until += weights[i];
            const std::int64_t end =
                until >= all ? sum.millionths : rounded(whole * (until / all), stepOf(decimals));
            parts[i].m_sums[currency] = {end - given, decimals};
            given = end;
        }
    }
    return parts;
}

Money Money::share(double part, Rounding rounding) const
{
    Money found;
    for (const auto& [currency, sum] : m_sums) {
        const bool fine = rounding == Rounding::Fine;
        const std::size_t decimals = fine ? sum.decimals : std::max(kHundredths, sum.decimals);
        const auto amount = static_cast<long double>(sum.millionths) * part;
        found.m_sums[currency] = {rounded(amount, fine ? 1 : stepOf(decimals)), decimals};
    }
    return found;
}

Money Money::forEachOf(double count) const
{
    Money found;
    for (const auto& [currency, sum] : m_sums) {
        const auto each = static_cast<long double>(sum.millionths) / count;
        std::size_t decimals = std::max(kHundredths, sum.decimals);
        while (decimals < kPlaces &&
               std::fabs(each) < 10 * static_cast<long double>(stepOf(decimals))) {
            ++decimals;
        }
        found.m_sums[currency] = {rounded(each, stepOf(decimals)),
                                  each == 0 ? kHundredths : decimals};
    }
    return found;
}

} // namespace ullage::ledger
