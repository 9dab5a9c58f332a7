// One number as people type it: digits of any script, thousands in groups, decimals after a point
// or a comma.
//
// A single sign before exactly three digits means thousands to some and decimals to others. Where
// it is the locale's sign between thousands it means those; else neither goes before the other,
// and whoever knows what the number may be tells them apart, or asks.
#pragma once

#include <QLocale>
#include <QString>

#include <optional>

namespace ullage::app
{

struct ReadNumber {
    std::optional<double> value; ///< finite; none if it is no number
    std::optional<double> other; ///< what it can mean as well
    bool open = false;           ///< `other` is meant as readily as `value`
};

/// `text` holds the number alone; spaces of any width are `' '` in it.
ReadNumber readNumber(const QString& text, const QLocale& locale);

/// Whether a number can go on with it: a digit, a sign before it, or a sign within it.
bool belongsToNumber(QChar c);

} // namespace ullage::app
