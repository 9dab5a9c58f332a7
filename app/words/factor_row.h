// One line of a reckoning in words.
#pragma once

#include <QString>

namespace ullage::app
{

/// One line of a reckoning: what it is and its figure.
struct FactorRow {
    QString label;
    QString value;
    bool total = false; ///< set bold, as the last line of a sum
    bool operator==(const FactorRow&) const = default;
};

} // namespace ullage::app
