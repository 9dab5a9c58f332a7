#include "core/cupboard/barcode.h"

#include <algorithm>

namespace ullage::cupboard
{

std::string bareCode(std::string_view code)
{
    std::string bare;
    std::copy_if(code.begin(), code.end(), std::back_inserter(bare),
                 [](char c) { return c != ' ' && c != '\t' && c != '\r' && c != '\n'; });
    return bare;
}

CodeForm formOf(std::string_view code)
{
    const std::string bare = bareCode(code);
    constexpr std::size_t kDigits = 13;
    const bool digits =
        std::all_of(bare.begin(), bare.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (bare.size() != kDigits || !digits) {
        return CodeForm::Other;
    }
    int sum = 0;
    for (std::size_t place = 0; place < kDigits; ++place) {
        sum += (bare[place] - '0') * (place % 2 == 1 ? 3 : 1);
    }
    return sum % 10 == 0 ? CodeForm::Ean13 : CodeForm::WrongDigit;
}

const ledger::Barcode* kindOf(const std::vector<ledger::Barcode>& barcodes, std::string_view code)
{
    const std::string bare = bareCode(code);
    const auto found =
        std::find_if(barcodes.rbegin(), barcodes.rend(), [&](const ledger::Barcode& barcode) {
            return bareCode(barcode.code) == bare;
        });
    return found == barcodes.rend() ? nullptr : &*found;
}

} // namespace ullage::cupboard
