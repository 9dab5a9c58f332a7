// The square code on a label, which a telephone reads: a QR code (ISO/IEC 18004) made by
// libqrencode.
#pragma once

#include <QStringList>

#include <optional>
#include <vector>

namespace ullage::app
{

/// White that a reader wants round a code, in modules (ISO/IEC 18004, from memory).
inline constexpr int kQuietModules = 4;

/// Black and white modules of a square code, without the white round it.
struct SquareCode {
    int side = 0;            ///< modules on a side; 0 for no code
    std::vector<bool> black; ///< side × side, row by row
    QString text;            ///< what it says
    int linesLeftOut = 0;    ///< of the lines it was to say, from the end
    [[nodiscard]] bool at(int column, int row) const
    {
        return black[static_cast<std::size_t>(row * side + column)];
    }
};

/// A code of `lines`, the first one's letters exactly as they are, with as many of the others as a
/// code of `mostModules` on a side, the white round it counted in, has room for. Where there is
/// room it mends 15 % of what cannot be read, else 7 %. Empty where not even the first line fits.
std::optional<SquareCode> squareCode(const QStringList& lines, int mostModules);

} // namespace ullage::app
