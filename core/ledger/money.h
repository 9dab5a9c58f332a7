// Sums of money, exact, each currency by itself.
#pragma once

#include "core/ledger/decimal.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// Amounts are never converted: what is in two currencies has two sums. A sum must stay below
/// 1 000 000 000 000, as a Decimal must.
class Money
{
public:
    /// `times` of an amount.
    void add(const Decimal& amount, const std::string& currency, int times = 1);
    Money& operator+=(const Money& other);
    Money& operator-=(const Money& other);

    /// The sum of each currency, with as many decimals as the amount that had most.
    [[nodiscard]] std::map<std::string, Decimal> sums() const;
    [[nodiscard]] bool empty() const { return m_sums.empty(); }

    /// Parts in proportion to `weights`, each 0 or more and not all 0, that add up to all of it
    /// exactly. Each is rounded to hundredths, or as fine as an amount was written, so that a
    /// column of them adds up as it is shown; a part does not change when one behind it does while
    /// all weights add up to the same.
    [[nodiscard]] std::vector<Money> split(const std::vector<double>& weights) const;

    enum class Rounding {
        Written, ///< as split() rounds
        Fine,    ///< to the last place that is kept, for what is reckoned on with
    };
    /// `part` of it, 0 to 1.
    [[nodiscard]] Money share(double part, Rounding rounding = Rounding::Written) const;

    /// What one of `count`, above 0, costs: to hundredths, or as fine as an amount was written, and
    /// finer where that would leave less than two figures of it.
    [[nodiscard]] Money forEachOf(double count) const;

    friend bool operator==(const Money&, const Money&) = default;

private:
    struct Sum {
        std::int64_t millionths = 0;
        std::size_t decimals = 0;
        friend bool operator==(const Sum&, const Sum&) = default;
    };
    std::map<std::string, Sum> m_sums;
};

} // namespace ullage::ledger
