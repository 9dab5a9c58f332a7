// Writes one JSON object field by field, in the order asked for.
#pragma once

#include <QByteArray>

#include <string_view>

namespace ullage::store
{

/// Unrounded: the shortest text that reads back as the same number; whole numbers without exponent.
QByteArray numberText(double number);
/// With quotes and escapes.
QByteArray jsonText(std::string_view text);

class LineWriter
{
public:
    LineWriter& raw(std::string_view key, const QByteArray& value);
    LineWriter& text(std::string_view key, std::string_view value);
    LineWriter& number(std::string_view key, double value);
    LineWriter& truth(std::string_view key, bool value);

    /// Nothing is written for an empty text.
    LineWriter& textIf(std::string_view key, std::string_view value);

    /// The object so far.
    [[nodiscard]] QByteArray object() const { return '{' + m_text + '}'; }

private:
    QByteArray m_text;
};

} // namespace ullage::store
