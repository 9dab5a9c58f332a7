#include "core/store/journal_codec.h"

#include "core/ledger/coded_notes.h"
#include "core/store/decode_parts.h"
#include "core/store/instant_text.h"
#include "core/store/line_writer.h"

#include <QJsonDocument>

#include <algorithm>

namespace ullage::store
{

using namespace ledger;

namespace
{

constexpr std::string_view kBook = "book";
constexpr std::array<std::string_view, 3> kHeaderOrder{"type", "format", "version"};
constexpr const char* kUnpaired = "unpaired";

constexpr auto typesOfLines()
{
    std::array<std::string_view, kTypeCodes.size() + 1> all{kBook};
    std::copy(kTypeCodes.begin(), kTypeCodes.end(), all.begin() + 1);
    return all;
}
constexpr auto kLineTypes = typesOfLines();

// A moment on a line, which is written in UTC whatever zone it was given in.
struct Moment {
    std::string_view field;
    chemistry::Instant at;
};

std::vector<Moment> momentsOf(const Entry& entry)
{
    std::vector<Moment> found;
    eachEntryField(entry, [&](const formulary::FieldDescription& is, const auto& member) {
        using Member = std::remove_cvref_t<decltype(member)>;
        if constexpr (std::is_same_v<Member, chemistry::Instant>) {
            found.push_back({is.name, member});
        } else if constexpr (std::is_same_v<Member, std::optional<chemistry::Instant>>) {
            if (member) {
                found.push_back({is.name, *member});
            }
        }
    });
    return found;
}

// The line with its fields in order and its moments in UTC, values as written.
std::string canonical(const JsonLine& line, std::span<const std::string_view> order,
                      const std::vector<Moment>& moments)
{
    LineWriter out;
    const auto put = [&](const JsonLine::Field& field) {
        const std::string key = field.key.toStdString();
        const auto moment = std::find_if(moments.begin(), moments.end(),
                                         [&](const Moment& one) { return one.field == key; });
        if (moment != moments.end()) {
            out.text(key, instantText(moment->at).toStdString());
        } else {
            out.raw(key, field.raw);
        }
    };
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
    static constexpr std::array<std::string_view, 1> kFormats{kJournalFormat};
    fields.choice("format", kFormats);
    const double version = fields.number("version");
    if (version > kJournalVersion) {
        fields.refuseWith({.code = ErrorCode::NewerBook,
                           .allowed = numberText(kJournalVersion).toStdString(),
                           .number = version},
                          "version");
    } else if (version != 1 && version != kJournalVersion) {
        fields.refuseWith(
            {.code = ErrorCode::OutOfRange, .number = version, .low = 1, .high = kJournalVersion},
            "version");
    }
}

// The order of the line as it is written, whatever it is taken for.
std::span<const std::string_view> orderOf(const JsonLine& line, std::size_t type)
{
    const std::string kind = line.object.value(QLatin1String("kind")).toString().toStdString();
    const auto found = std::find(kKindCodes.begin(), kKindCodes.end(), kind);
    return describe(type, found == kKindCodes.end()
                              ? 0
                              : static_cast<std::size_t>(found - kKindCodes.begin()))
        .order;
}

void rename(QJsonObject& line, const char* from, const char* to)
{
    const QLatin1String key(from);
    if (line.contains(key) && !line.contains(QLatin1String(to))) {
        line.insert(QLatin1String(to), line.take(key));
    }
}

// A line as version 2 would have said it.
QJsonObject modern(QJsonObject line)
{
    const QString kind = line.value(QLatin1String("kind")).toString();
    if (kind == QLatin1String("opened-packet")) {
        rename(line, "packet", "item");
    } else if (kind == QLatin1String("noted")) {
        const auto asked =
            testAskedFromNote(line.value(QLatin1String("text")).toString().toStdString());
        if (asked) {
            line.remove(QLatin1String("text"));
            line.insert(QLatin1String("kind"), QLatin1String("test-asked"));
            line.insert(QLatin1String("mark"), QString::fromUtf8(code(asked->mark)));
            line.insert(QLatin1String("film"), QString::fromStdString(asked->film));
        }
    }
    const auto cost = line.find(QLatin1String("cost"));
    if (cost != line.end() && cost->isDouble()) {
        if (const auto exact = Decimal::from(cost->toDouble())) {
            *cost = QString::fromStdString(exact->text());
        }
    }
    return line;
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
    const std::size_t type = fields.choice("type", kLineTypes);
    Entry entry;
    if (!refusal && type == 0) {
        checkHeader(fields);
    } else if (!refusal) {
        entry.what = decodeWhat(fields, type - 1);
    }
    if (refusal) {
        return refuse(std::move(*refusal));
    }
    if (type == 0) {
        const bool pairs = json->object[QLatin1String("version")].toDouble() > 1 &&
                           !json->object[QLatin1String(kUnpaired)].toBool();
        return Header{canonical(*json, kHeaderOrder, {}), pairs};
    }
    entry.body = canonical(*json, orderOf(*json, type - 1), momentsOf(entry));
    return entry;
}

QByteArray currentHeader(const QByteArray& kept, bool unpaired)
{
    const auto json = readJsonLine(kept);
    if (!json) {
        return currentHeader(defaultHeader(), unpaired);
    }
    LineWriter line;
    for (const JsonLine::Field& field : json->fields) {
        if (field.key == QLatin1String("version")) {
            line.number("version", kJournalVersion);
            if (unpaired) {
                line.raw(kUnpaired, "true");
            }
        } else if (field.key != QLatin1String(kUnpaired)) {
            line.raw(field.key.toStdString(), field.raw);
        }
    }
    return line.object();
}

Result<Entry> decodeStored(const QByteArray& text)
{
    std::optional<Error> refusal;
    Fields fields(QJsonDocument::fromJson(text).object(), refusal);
    const std::size_t type = fields.choice("type", kTypeCodes);
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
    return modern(QJsonDocument::fromJson(one).object()) ==
           modern(QJsonDocument::fromJson(other).object());
}

} // namespace ullage::store
