#include "core/store/csv_cell.h"

#include <algorithm>
#include <array>

namespace ullage::store
{

namespace
{

constexpr char kMark = '\'';

// Does a spreadsheet take this for a formula, were the apostrophes in front of it not there?
bool runs(QByteArrayView utf8)
{
    constexpr std::array kSigns{"=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠"};
    while (utf8.startsWith(kMark)) {
        utf8 = utf8.sliced(1);
    }
    return std::any_of(kSigns.begin(), kSigns.end(),
                       [&](const char* sign) { return utf8.startsWith(sign); });
}

} // namespace

QByteArray csvText(QByteArray utf8)
{
    if (runs(utf8)) {
        utf8.prepend(kMark);
    }
    const auto anyOf = [&](const char* signs) {
        return std::any_of(utf8.begin(), utf8.end(),
                           [&](char c) { return QByteArrayView(signs).contains(c); });
    };
    const bool quotes = anyOf(",\"\r\n\t;") || utf8.startsWith(' ') || utf8.endsWith(' ');
    return quotes ? '"' + utf8.replace('"', "\"\"") + '"' : utf8;
}

QByteArray csvTyped(const QByteArray& content)
{
    return content.startsWith(kMark) && runs(content) ? content.mid(1) : content;
}

} // namespace ullage::store
