// Codes on packets: whether one was typed or scanned right, and which kind of thing it stands for.
#pragma once

#include "core/ledger/cupboard_state.h"

#include <string>
#include <string_view>
#include <vector>

namespace ullage::cupboard
{

enum class CodeForm {
    Ean13,      ///< thirteen digits, and the last agrees with the others
    WrongDigit, ///< thirteen digits, and it does not: read or typed wrong
    Other,      ///< no such number; taken as it is
};

/// The form of a code; blanks in it do not count. The last of thirteen digits is what the sum of
/// the others, those at even places three times, lacks to a multiple of ten (GS1 General
/// Specifications 7.9, from memory).
CodeForm formOf(std::string_view code);

/// The code without blanks: as it is kept and looked for.
std::string bareCode(std::string_view code);

/// What a code was taught to stand for, the last time that somebody said so; null if nobody did.
const ledger::Barcode* kindOf(const std::vector<ledger::Barcode>& barcodes, std::string_view code);

} // namespace ullage::cupboard
