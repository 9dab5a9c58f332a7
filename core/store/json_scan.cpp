#include "core/store/json_scan.h"

#include "core/ledger/typed_text.h"
#include "core/store/json_line.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QSet>
#include <QString>

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

// U+FFFE or U+FFFF at the start of `text`.
bool isNoncharacter(QByteArrayView text)
{
    return text.startsWith("\xEF\xBF\xBE") || text.startsWith("\xEF\xBF\xBF");
}

bool isDigit(char c) { return c >= '0' && c <= '9'; }

// Lines of a journal have a dozen fields, which are compared; further ones are looked up.
constexpr std::size_t kFewKeys = 32;

// What a string says, in UTF-8. Without escapes that is what stands there, which is not copied.
QByteArray textOf(QByteArrayView rawString)
{
    if (!rawString.contains('\\')) {
        return QByteArray::fromRawData(rawString.data() + 1, rawString.size() - 2);
    }
    const auto wrapped = QJsonDocument::fromJson("[" + rawString.toByteArray() + "]");
    return wrapped.array().at(0).toString().toUtf8();
}

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
    m_error.field = way();
    m_error.allowed = allowed;
    const auto rest = shownPart(m_text.sliced(std::min(m_at, m_text.size())));
    // Cutting may split a character; what is left of it is dropped.
    m_error.text = QString::fromUtf8(rest).remove(QChar::ReplacementCharacter).toStdString();
    return false;
}

bool JsonScan::notFinite(QByteArrayView text)
{
    m_error.code = ErrorCode::NotFinite;
    m_error.field = way();
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
    const std::size_t first = m_keys.size();
    QSet<QByteArray> known;
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
        m_path.push_back(m_keys.size());
        m_keys.push_back(textOf(m_text.sliced(keyAt, m_at - keyAt)));
        if (!newKey(first, known)) {
            return malformed("each field once");
        }
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
            m_sink(m_keys[m_path.back()], m_text.sliced(valueAt, m_at - valueAt));
        }
        m_path.pop_back();
        spaces();
        if (take('}')) {
            m_keys.resize(first);
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
    if (m_text.sliced(std::min(m_at, m_text.size())).startsWith("\xEF\xBB\xBF")) {
        return malformed(ledger::kTextToKeep); // decoding would drop the mark of byte order
    }
    while (m_at < m_text.size()) {
        const auto c = static_cast<unsigned char>(m_text[m_at]);
        if (c == '"') {
            ++m_at;
            return true;
        }
        if (c < 0x20) {
            return malformed("control characters written as \\u0000 to \\u001f");
        }
        if (c == 0xEF && isNoncharacter(m_text.sliced(m_at))) { // in fields nobody knows, too
            return malformed(ledger::kTextToKeep);
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
    if (first >= 0xFFFE) {
        m_at = start;
        return malformed(ledger::kTextToKeep);
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

// Whether the last key differs from those before it in its object. `known` are all of them once
// there are many.
bool JsonScan::newKey(std::size_t firstOfObject, QSet<QByteArray>& known) const
{
    const std::size_t before = m_keys.size() - 1;
    if (before - firstOfObject > kFewKeys) {
        if (known.isEmpty()) {
            for (std::size_t i = firstOfObject; i < before; ++i) {
                known.insert(m_keys[i]);
            }
        }
        const auto had = known.size();
        known.insert(m_keys[before]);
        return known.size() > had;
    }
    for (std::size_t i = firstOfObject; i < before; ++i) {
        if (m_keys[i] == m_keys[before]) {
            return false;
        }
    }
    return true;
}

std::string JsonScan::way() const
{
    std::string names;
    for (const std::size_t key : m_path) {
        names += names.empty() ? "" : ".";
        names += m_keys[key].toStdString();
    }
    return names;
}

} // namespace ullage::store
