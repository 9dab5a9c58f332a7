// An amount of money, exact: the decimal text as it was written.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace ullage::ledger
{

class Decimal
{
public:
    Decimal() = default; ///< 0
    /// Digits, and after a point up to six more ("12", "9.80"); a minus before it is read too, so
    /// that a range can refuse it. Empty for anything else.
    static std::optional<Decimal> from(std::string_view text);
    /// What a number says that was not written as text; empty for one that has no such form.
    static std::optional<Decimal> from(double number);

    [[nodiscard]] const std::string& text() const { return m_text; }
    /// For ranges and for reckoning a share; sums of money are not made of these.
    [[nodiscard]] double value() const;

    friend bool operator==(const Decimal&, const Decimal&) = default;

private:
    std::string m_text = "0";
};

inline constexpr const char* kDecimalForm = "a decimal number as text, such as \"9.80\"";

} // namespace ullage::ledger
