#include "core/store/json_line.h"

#include "core/store/json_scan.h"

#include <QJsonDocument>
#include <QUtf8StringView>

namespace ullage::store
{

namespace
{

constexpr std::size_t kUsualFields = 12;

} // namespace

const JsonLine::Field* JsonLine::find(QLatin1String key) const
{
    for (const Field& field : fields) {
        if (field.key == key) {
            return &field;
        }
    }
    return nullptr;
}

Result<JsonLine> readJsonLine(const QByteArray& text)
{
    if (!text.isValidUtf8()) {
        return refuse({.code = ErrorCode::BadEncoding, .allowed = "UTF-8"});
    }
    JsonLine line;
    line.text = text;
    line.fields.reserve(kUsualFields);
    JsonScan scan(line.text, [&line](const QByteArray& key, QByteArrayView raw) {
        line.fields.push_back({key, QByteArray::fromRawData(raw.data(), raw.size())});
    });
    if (auto fine = scan.object(); !fine) {
        return refuse(fine.error());
    }
    QJsonParseError failure;
    const auto document = QJsonDocument::fromJson(text, &failure);
    if (failure.error != QJsonParseError::NoError || !document.isObject()) {
        return refuse({.code = ErrorCode::Malformed,
                       .text = failure.errorString().toStdString(),
                       .allowed = "one JSON object on a line"});
    }
    line.object = document.object();
    return line;
}

} // namespace ullage::store
