#include "app/words/number_reading.h"

#include <cmath>
#include <vector>

namespace ullage::app
{

namespace
{

constexpr QChar kArabicDecimal(0x066b);
constexpr QChar kArabicGroup(0x066c);

// A run of digits and the sign before it: none before the first.
struct Piece {
    QChar sign;
    QString digits;
};

bool isApostrophe(QChar c) { return c == u'\'' || c == u'’'; }

// What may stand between thousands and is never a decimal sign.
bool onlyGroups(QChar sign) { return sign == u' ' || isApostrophe(sign) || sign == kArabicGroup; }

bool isSign(QChar c) { return c == u'.' || c == u',' || c == kArabicDecimal || onlyGroups(c); }

bool isMinus(QChar c) { return c == u'-' || c == QChar(0x2212); }

std::optional<double> numberOf(const QString& plain)
{
    QLocale c(QLocale::C);
    c.setNumberOptions(QLocale::RejectGroupSeparator);
    bool ok = false;
    const double value = c.toDouble(plain, &ok);
    return ok && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

// Whether pieces up to `end` are thousands: one to three digits, no nought first, then threes.
bool areGroups(const std::vector<Piece>& pieces, std::size_t end)
{
    const QString& first = pieces.front().digits;
    if (first.isEmpty() || first.size() > 3 || first.startsWith(u'0'))
        return false;
    for (std::size_t i = 1; i < end; ++i) {
        if (pieces[i].digits.size() != 3 || pieces[i].sign != pieces[1].sign ||
            pieces[i].sign == kArabicDecimal)
            return false;
    }
    return true;
}

QString joined(const std::vector<Piece>& pieces, std::size_t end)
{
    QString digits;
    for (std::size_t i = 0; i < end; ++i)
        digits += pieces[i].digits;
    return digits;
}

std::optional<std::vector<Piece>> piecesOf(const QString& text)
{
    std::vector<Piece> pieces(1);
    for (const QChar c : text) {
        if (c.isDigit())
            pieces.back().digits += QChar(u'0' + c.digitValue());
        else if (isSign(c))
            pieces.push_back({isApostrophe(c) ? QChar(u'\'') : c, {}});
        else
            return std::nullopt;
    }
    return pieces;
}

} // namespace

bool belongsToNumber(QChar c) { return c.isDigit() || isSign(c) || isMinus(c) || c == u'+'; }

ReadNumber readNumber(const QString& text, const QLocale& locale)
{
    QString digits = text.trimmed();
    const bool below = !digits.isEmpty() && isMinus(digits[0]);
    if (below || digits.startsWith(u'+'))
        digits.remove(0, 1);
    const auto pieces = piecesOf(digits);
    if (!pieces)
        return {};
    const QString minus = below ? QStringLiteral("-") : QString();
    const std::size_t count = pieces->size();
    const auto decimal = [&](std::size_t whole) {
        return numberOf(minus + joined(*pieces, whole) + u'.' + pieces->back().digits);
    };
    if (count == 1)
        return {numberOf(minus + pieces->front().digits), {}};

    const QChar last = pieces->back().sign;
    const auto thousands = areGroups(*pieces, count) ? numberOf(minus + joined(*pieces, count))
                                                     : std::optional<double>();
    if (thousands && (count > 2 || onlyGroups(last)))
        return {thousands, {}};
    if (onlyGroups(last) ||
        (count > 2 && (last == (*pieces)[1].sign || !areGroups(*pieces, count - 1))))
        return {};
    const auto parts = decimal(count - 1);
    if (!thousands || !parts)
        return {parts, {}};
    if (locale.groupSeparator() == QString(last))
        return {thousands, parts};
    return {parts, thousands, true};
}

} // namespace ullage::app
