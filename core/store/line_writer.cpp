#include "core/store/line_writer.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QString>
#include <QUtf8StringView>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace ullage::store
{

QByteArray numberText(double number)
{
    constexpr double kExactWhole = 9'007'199'254'740'992; // 2^53
    if (number == std::floor(number) && std::abs(number) < kExactWhole) {
        return QByteArray::number(static_cast<qint64>(number));
    }
    std::array<char, 32> buffer{};
    const auto [end, failure] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number);
    Q_ASSERT(failure == std::errc());
    return {buffer.data(), end - buffer.data()};
}

QByteArray jsonText(std::string_view text)
{
    // Names of fields, ids and codes need no escapes; most of what is written is that.
    const bool plain = std::all_of(text.begin(), text.end(), [](char c) {
        return c >= ' ' && c <= '~' && c != '"' && c != '\\';
    });
    if (plain) {
        QByteArray written;
        written.reserve(static_cast<qsizetype>(text.size()) + 2);
        written += '"';
        written.append(text.data(), static_cast<qsizetype>(text.size()));
        return written += '"';
    }
    const auto value = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
    return QJsonDocument(QJsonArray{value}).toJson(QJsonDocument::Compact).mid(1).chopped(1);
}

LineWriter& LineWriter::raw(std::string_view key, const QByteArray& value)
{
    if (!m_text.isEmpty()) {
        m_text += ',';
    }
    m_text += jsonText(key) + ':' + value;
    return *this;
}

LineWriter& LineWriter::text(std::string_view key, std::string_view value)
{
    return raw(key, jsonText(value));
}

LineWriter& LineWriter::number(std::string_view key, double value)
{
    return raw(key, numberText(value));
}

LineWriter& LineWriter::truth(std::string_view key, bool value)
{
    return raw(key, value ? "true" : "false");
}

LineWriter& LineWriter::textIf(std::string_view key, std::string_view value)
{
    return value.empty() ? *this : text(key, value);
}

} // namespace ullage::store
