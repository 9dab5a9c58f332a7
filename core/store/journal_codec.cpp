#include "core/store/journal_codec.h"

#include "core/store/decode_parts.h"
#include "core/store/field_order.h"
#include "core/store/instant_text.h"
#include "core/store/line_writer.h"

#include <QJsonDocument>

#include <algorithm>

namespace ullage::store
{

using namespace ledger;

namespace
{

// The line with its fields in order and its moment in UTC, values as written.
std::string canonical(const JsonLine& line, std::string_view type,
                      std::optional<chemistry::Instant> at)
{
    LineWriter out;
    const auto put = [&](const JsonLine::Field& field) {
        const std::string key = field.key.toStdString();
        if (at && key == "at") {
            out.text("at", instantText(*at).toStdString());
        } else {
            out.raw(key, field.raw);
        }
    };
    const auto order = fieldOrder(type);
    for (const std::string_view key : order) {
        const auto* field =
            line.find(QLatin1String(key.data(), static_cast<qsizetype>(key.size())));
        if (field) {
            put(*field);
        }
    }
    for (const JsonLine::Field& field : line.fields) {
        if (std::find(order.begin(), order.end(), field.key.toStdString()) == order.end()) {
            put(field);
        }
    }
    return out.object().toStdString();
}

void checkHeader(Fields& fields)
{
    static constexpr std::array<std::string_view, 1> kFormats{"ullage-journal"};
    fields.choice("format", kFormats);
    const double version = fields.number("version");
    if (version > kJournalVersion) {
        fields.refuseWith({.code = ErrorCode::NewerBook,
                           .allowed = numberText(kJournalVersion).toStdString(),
                           .number = version},
                          "version");
    } else if (version != kJournalVersion) {
        fields.refuseWith({.code = ErrorCode::OutOfRange,
                           .number = version,
                           .low = kJournalVersion,
                           .high = kJournalVersion},
                          "version");
    }
}

// `type` is a place in kTypeCodes, not the first.
decltype(Entry::what) decodeWhat(Fields& fields, std::size_t type)
{
    switch (type) {
    case 1:
        return decodeSolution(fields);
    case 2:
        return decodeVessel(fields);
    case 3:
        return decodeFilm(fields);
    case 4:
        return decodePacket(fields);
    case 5:
        return decodeChemical(fields);
    case 7:
        return decodeFigure(fields);
    case 8:
        return decodeMark(fields);
    default:
        return decodeEvent(fields);
    }
}

std::optional<chemistry::Instant> momentOf(const Entry& entry)
{
    if (const Event* event = entry.event()) {
        return event->at;
    }
    const auto* mark = std::get_if<FilmMark>(&entry.what);
    return mark ? std::optional(mark->at) : std::nullopt;
}

} // namespace

Result<Line> decodeLine(const QByteArray& text)
{
    const auto json = readJsonLine(text);
    if (!json) {
        return refuse(json.error());
    }
    std::optional<Error> refusal;
    Fields fields(json->object, refusal);
    const std::size_t type = fields.choice("type", kTypeCodes);
    Entry entry;
    if (!refusal && type == 0) {
        checkHeader(fields);
    } else if (!refusal) {
        entry.what = decodeWhat(fields, type);
    }
    if (refusal) {
        return refuse(std::move(*refusal));
    }
    std::string body = canonical(*json, kTypeCodes[type], momentOf(entry));
    if (type == 0) {
        return Header{std::move(body)};
    }
    entry.body = std::move(body);
    return entry;
}

Result<Entry> decodeStored(const QByteArray& text)
{
    std::optional<Error> refusal;
    Fields fields(QJsonDocument::fromJson(text).object(), refusal);
    const std::size_t type = fields.choice("type", std::span(kTypeCodes).subspan(1)) + 1;
    Entry entry;
    if (!refusal) {
        entry.what = decodeWhat(fields, type);
    }
    if (refusal) {
        return refuse(std::move(*refusal));
    }
    entry.body = text.toStdString();
    return entry;
}

bool sameContent(const QByteArray& one, const QByteArray& other)
{
    if (one == other) {
        return true;
    }
    return QJsonDocument::fromJson(one) == QJsonDocument::fromJson(other);
}

} // namespace ullage::store
