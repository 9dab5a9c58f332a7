// Sums of money, exact, each currency by itself.
#pragma once

#include "core/ledger/decimal.h"

#include <cstdint>
#include <map>
#include <string>

namespace ullage::cupboard
{

/// Amounts are never converted: what is in two currencies has two sums.
class Money
{
public:
    /// `times` of an amount. A sum must stay below 1 000 000 000 000, as a Decimal must.
    void add(const ledger::Decimal& amount, const std::string& currency, int times = 1);

    /// The sum of each currency, with as many decimals as the amount that had most.
    [[nodiscard]] std::map<std::string, ledger::Decimal> sums() const;
    [[nodiscard]] bool empty() const { return m_sums.empty(); }

private:
    struct Sum {
        std::int64_t millionths = 0;
        std::size_t decimals = 0;
    };
    std::map<std::string, Sum> m_sums;
};

} // namespace ullage::cupboard
