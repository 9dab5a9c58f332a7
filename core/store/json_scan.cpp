#include "core/store/json_scan.h"

#include "core/store/json_line.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QSet>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace ullage::store
{

namespace
{

constexpr qsizetype kMostShown = 60; // bytes of the offending text that an error quotes

QByteArrayView shownPart(QByteArrayView text)
{
    return text.first(std::min(text.size(), kMostShown));
}

bool isDigit(char c) { return c >= '0' && c <= '9'; }

} // namespace

JsonScan::JsonScan(QByteArrayView text, Sink sink) : m_text(text), m_sink(std::move(sink)) {}

Result<void> JsonScan::object()
{
    spaces();
    if (peek() != '{') {
        malformed("one JSON object on a line");
        return refuse(m_error);
    }
    if (!objectBody(0)) {
        return refuse(m_error);
    }
    spaces();
    if (m_at < m_text.size()) {
        malformed("one JSON object on a line");
        return refuse(m_error);
    }
    return {};
}

bool JsonScan::malformed(const char* allowed)
{
    m_error.code = ErrorCode::Malformed;
    m_error.field = m_path.join('.').toStdString();
    m_error.allowed = allowed;
    const auto rest = shownPart(m_text.sliced(std::min(m_at, m_text.size())));
    // Cutting may split a character; what is left of it is dropped.
    m_error.text = QString::fromUtf8(rest).remove(QChar::ReplacementCharacter).toStdString();
    return false;
}

bool JsonScan::notFinite(QByteArrayView text)
{
    m_error.code = ErrorCode::NotFinite;
    m_error.field = m_path.join('.').toStdString();
    m_error.text = shownPart(text).toByteArray().toStdString();
    return false;
}

void JsonScan::spaces()
{
    while (m_at < m_text.size() && (peek() == ' ' || peek() == '\t' || peek() == '\r')) {
        ++m_at;
    }
}

bool JsonScan::take(char c)
{
    if (m_at >= m_text.size() || m_text[m_at] != c) {
        return false;
    }
    ++m_at;
    return true;
}

bool JsonScan::word(QByteArrayView text)
{
    if (!m_text.sliced(m_at).startsWith(text)) {
        return false;
    }
    m_at += text.size();
    return true;
}

bool JsonScan::value(int depth)
{
    switch (peek()) {
    case '{':
        return objectBody(depth + 1);
    case '[':
        return arrayBody(depth + 1);
    case '"':
        return string();
    default:
        break;
    }
    if (word("true") || word("false") || word("null")) {
        return true;
    }
    for (const char* text : {"NaN", "nan", "Infinity", "-Infinity", "inf", "-inf", "+Infinity"}) {
        if (m_text.sliced(m_at).startsWith(text)) {
            return notFinite(text);
        }
    }
    return number();
}

bool JsonScan::objectBody(int depth)
{
    if (depth > kMostNested) {
        return malformed("no more than 32 objects and arrays in one another");
    }
    take('{');
    QSet<QString> keys;
    spaces();
    if (take('}')) {
        return true;
    }
    while (true) {
        spaces();
        if (peek() != '"') {
            return malformed("a field's name in double quotes");
        }
        const qsizetype keyAt = m_at;
        if (!string()) {
            return false;
        }
        const QString key = textOf(m_text.sliced(keyAt, m_at - keyAt));
        m_path.append(key);
        if (keys.contains(key)) {
            return malformed("each field once");
        }
        keys.insert(key);
        spaces();
        if (!take(':')) {
            return malformed("a colon after the field's name");
        }
        spaces();
        const qsizetype valueAt = m_at;
        if (!value(depth)) {
            return false;
        }
        if (depth == 0) {
            m_sink(key, m_text.sliced(valueAt, m_at - valueAt));
        }
        m_path.removeLast();
        spaces();
        if (take('}')) {
            return true;
        }
        if (!take(',')) {
            return malformed("a comma or the end of the object");
        }
    }
}

bool JsonScan::arrayBody(int depth)
{
    if (depth > kMostNested) {
        return malformed("no more than 32 objects and arrays in one another");
    }
    take('[');
    spaces();
    if (take(']')) {
        return true;
    }
    while (true) {
        spaces();
        if (!value(depth)) {
            return false;
        }
        spaces();
        if (take(']')) {
            return true;
        }
        if (!take(',')) {
            return malformed("a comma or the end of the array");
        }
    }
}

bool JsonScan::string()
{
    take('"');
    while (m_at < m_text.size()) {
        const auto c = static_cast<unsigned char>(m_text[m_at]);
        if (c == '"') {
            ++m_at;
            return true;
        }
        if (c < 0x20) {
            return malformed("control characters written as \\u0000 to \\u001f");
        }
        if (c != '\\') {
            ++m_at;
        } else if (!escape()) {
            return false;
        }
    }
    return malformed("a text that ends with a double quote");
}

bool JsonScan::escape()
{
    const qsizetype start = m_at;
    ++m_at;
    const char c = peek();
    if (c != 'u') {
        if (!QByteArrayView("\"\\/bfnrt").contains(c) || c == '\0') {
            return malformed("an escape that JSON knows");
        }
        ++m_at;
        return true;
    }
    ushort first = 0;
    ushort second = 0;
    if (!unit(first)) {
        return malformed("four hexadecimal digits after \\u");
    }
    if (QChar::isLowSurrogate(first)) {
        m_at = start;
        return malformed("surrogates in pairs");
    }
    if (QChar::isHighSurrogate(first) &&
        !(take('\\') && peek() == 'u' && unit(second) && QChar::isLowSurrogate(second))) {
        m_at = start;
        return malformed("surrogates in pairs");
    }
    return true;
}

// Reads the "uXXXX" of an escape.
bool JsonScan::unit(ushort& out)
{
    if (m_text.size() - m_at < 5) {
        return false;
    }
    const char* from = m_text.data() + m_at + 1;
    const auto [end, failure] = std::from_chars(from, from + 4, out, 16);
    if (failure != std::errc() || end != from + 4) {
        return false;
    }
    m_at += 5;
    return true;
}

bool JsonScan::number()
{
    const qsizetype start = m_at;
    take('-');
    const bool zero = peek() == '0';
    const qsizetype whole = m_at;
    while (isDigit(peek())) {
        ++m_at;
    }
    bool good = m_at > whole && (!zero || m_at == whole + 1);
    if (good && take('.')) {
        good = isDigit(peek());
        while (isDigit(peek())) {
            ++m_at;
        }
    }
    if (good && (peek() == 'e' || peek() == 'E')) {
        ++m_at;
        if (peek() == '+' || peek() == '-') {
            ++m_at;
        }
        good = isDigit(peek());
        while (isDigit(peek())) {
            ++m_at;
        }
    }
    if (!good) {
        m_at = start;
        return malformed("a JSON value");
    }
    double read = 0;
    const char* from = m_text.data() + start;
    const auto [end, failure] = std::from_chars(from, m_text.data() + m_at, read);
    // Too large and too small for a double alike: neither can be kept.
    return failure == std::errc() && std::isfinite(read)
               ? true
               : notFinite(m_text.sliced(start, m_at - start));
}

QString JsonScan::textOf(QByteArrayView rawString) const
{
    if (!rawString.contains('\\')) {
        return QString::fromUtf8(rawString.sliced(1, rawString.size() - 2));
    }
    const auto wrapped = QJsonDocument::fromJson("[" + rawString.toByteArray() + "]");
    return wrapped.array().at(0).toString();
}

} // namespace ullage::store
