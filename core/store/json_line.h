// One line of a journal as strict JSON.
//
// Qt's parser is lenient where a journal must not be: of two equal keys it keeps one, and it lets
// lone surrogates and raw control characters through. So a line is scanned here first, and every
// value is kept as it was written too: what the program has no use for goes back out unchanged.
#pragma once

#include "core/chemistry/result.h"

#include <QByteArray>
#include <QJsonObject>
#include <QString>

#include <vector>

namespace ullage::store
{

struct JsonLine {
    /// Both may be views into `text`.
    struct Field {
        QByteArray key; ///< UTF-8
        QByteArray raw; ///< the value's text as written
    };
    QByteArray text; ///< the whole line
    QJsonObject object;
    std::vector<Field> fields; ///< in the order written

    /// Null if there is no such field.
    [[nodiscard]] const Field* find(QLatin1String key) const;
};

/// Refuses anything but one JSON object in UTF-8: BadEncoding; Malformed (the field named where
/// there is one) for bad syntax, a key twice in one object, or a surrogate without its partner;
/// NotFinite for NaN, Infinity and numbers a double cannot hold.
Result<JsonLine> readJsonLine(const QByteArray& text);

/// Objects and arrays in one another that a line may have.
inline constexpr int kMostNested = 32;

} // namespace ullage::store
