#include "app/words/error_words.h"
#include "core/store/json_line.h"
#include "core/store/json_scan.h"
#include "tests/fuzz/fuzz_targets.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace ullage::fuzz
{

using namespace store;

void need(bool holds, const char* what)
{
    if (!holds) {
        throw Broken(what);
    }
}

namespace
{

// The same fields written again, each value as it stood.
QByteArray again(const JsonLine& line)
{
    QByteArray text = "{";
    for (const JsonLine::Field& field : line.fields) {
        const auto key =
            QJsonDocument(QJsonArray{QString::fromUtf8(field.key)}).toJson(QJsonDocument::Compact);
        text += (text.size() > 1 ? "," : "") + key.sliced(1).chopped(1) + ':' + field.raw;
    }
    return text + '}';
}

} // namespace

void scanJson(const QByteArray& text)
{
    // The scanner alone sees bytes that are no UTF-8 as well.
    int fields = 0;
    const auto scanned =
        JsonScan(text, [&fields](const QString&, QByteArrayView) { ++fields; }).object();
    const auto line = readJsonLine(text);
    need(scanned || !line, "read what the scanner refuses");
    if (!line) {
        need(!app::errorLine(line.error()).isEmpty(), "a refusal without words");
        return;
    }
    need(line->object.size() == fields, "another number of fields");
    need(static_cast<int>(line->fields.size()) == fields, "another number of raw fields");
    for (const JsonLine::Field& field : line->fields) {
        const auto value = QJsonDocument::fromJson('[' + field.raw + ']');
        need(value.isArray() && value.array().size() == 1, "a raw value that is not one value");
        need(value.array().at(0) == line->object.value(field.key), "a raw value that differs");
    }
    const auto second = readJsonLine(again(*line));
    need(second && second->object == line->object, "not the same when written again");
}

} // namespace ullage::fuzz
