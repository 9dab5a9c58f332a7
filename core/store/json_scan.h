// The strict half of reading JSON: syntax only, no values.
#pragma once

#include "core/chemistry/result.h"

#include <QByteArray>
#include <QByteArrayView>
#include <QSet>

#include <functional>
#include <vector>

namespace ullage::store
{

/// Walks one JSON text in UTF-8 and refuses what RFC 8259 does not allow, besides what
/// readJsonLine() names. Memory: the keys of the objects it is inside of.
class JsonScan
{
public:
    /// Told of every field of the outermost object: its key in UTF-8 and the value's text. Both may
    /// stand in the text that is scanned and are of use as long as that is.
    using Sink = std::function<void(const QByteArray& key, QByteArrayView raw)>;

    JsonScan(QByteArrayView text, Sink sink);
    /// Scans the whole text, which must be one object and nothing after it.
    Result<void> object();

private:
    bool value(int depth);
    bool objectBody(int depth);
    bool arrayBody(int depth);
    bool string();
    bool escape();
    bool unit(ushort& out);
    bool number();
    bool word(QByteArrayView text);
    void spaces();
    bool take(char c);
    [[nodiscard]] char peek() const { return m_at < m_text.size() ? m_text[m_at] : '\0'; }
    bool malformed(const char* allowed);
    bool notFinite(QByteArrayView text);
    bool newKey(std::size_t firstOfObject, QSet<QByteArray>& known) const;
    [[nodiscard]] std::string way() const;

    QByteArrayView m_text;
    Sink m_sink;
    qsizetype m_at = 0;
    std::vector<QByteArray> m_keys;  ///< of the objects it is inside of, outermost first
    std::vector<std::size_t> m_path; ///< those on the way to where the scan is
    Error m_error{.code = ErrorCode::Malformed};
};

} // namespace ullage::store
