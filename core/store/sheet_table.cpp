#include "core/store/sheet_table.h"

#include "core/store/csv_cell.h"

#include <QRegularExpression>
#include <QStringDecoder>

#include <algorithm>
#include <map>
#include <memory>
#include <unicode/ucnv.h>
#include <unicode/ucsdet.h>

namespace ullage::store
{

namespace
{

constexpr std::size_t kRowsLookedAt = 200; // enough to tell the delimiter
constexpr int kSureEnough = 30;            // of the detector's hundred
constexpr double kNearlyAsGood = 0.8;      // of how well the best delimiter fits

struct EncodingFound {
    std::string name;
    bool open = false;
};

bool isUtf8(const QByteArray& bytes)
{
    QStringDecoder decoder(QStringDecoder::Utf8);
    const QString text = decoder(bytes);
    return !decoder.hasError() && !text.contains(QChar(u'\0'));
}

// Text of Latin letters in UTF-16 has a NUL in every other byte.
std::optional<std::string> utf16Without(const QByteArray& bytes)
{
    std::array<qsizetype, 2> nuls{};
    for (qsizetype i = 0; i < bytes.size(); ++i) {
        nuls[static_cast<std::size_t>(i % 2)] += bytes[i] == '\0' ? 1 : 0;
    }
    const qsizetype half = bytes.size() / 2;
    if (nuls[1] > half / 2 && nuls[0] < half / 10) {
        return "UTF-16LE";
    }
    if (nuls[0] > half / 2 && nuls[1] < half / 10) {
        return "UTF-16BE";
    }
    return std::nullopt;
}

EncodingFound encodingOf(const QByteArray& bytes)
{
    UErrorCode code = U_ZERO_ERROR;
    std::int32_t mark = 0;
    if (const char* name = ucnv_detectUnicodeSignature(
            bytes.constData(), static_cast<std::int32_t>(bytes.size()), &mark, &code)) {
        return {name};
    }
    if (isUtf8(bytes)) {
        return {"UTF-8"};
    }
    if (const auto wide = utf16Without(bytes)) {
        return {*wide};
    }
    code = U_ZERO_ERROR;
    const std::unique_ptr<UCharsetDetector, decltype(&ucsdet_close)> detector(ucsdet_open(&code),
                                                                              &ucsdet_close);
    ucsdet_setText(detector.get(), bytes.constData(), static_cast<std::int32_t>(bytes.size()),
                   &code);
    const UCharsetMatch* match = U_SUCCESS(code) ? ucsdet_detect(detector.get(), &code) : nullptr;
    if (!match || U_FAILURE(code)) {
        return {"windows-1252", true};
    }
    std::string name = ucsdet_getName(match, &code);
    const int sure = ucsdet_getConfidence(match, &code);
    if (name.starts_with("UTF-") || sure < kSureEnough) {
        return {"windows-1252", true}; // it was neither above
    }
    // Every text in ISO 8859-1 is the same in windows-1252, and files say the one for the other.
    return {name == "ISO-8859-1" ? "windows-1252" : name, false};
}

Result<QString> decoded(const QByteArray& bytes, const std::string& encoding)
{
    UErrorCode code = U_ZERO_ERROR;
    const std::unique_ptr<UConverter, decltype(&ucnv_close)> converter(
        ucnv_open(encoding.c_str(), &code), &ucnv_close);
    if (U_FAILURE(code)) {
        return refuse({.code = ErrorCode::UnknownKind, .field = "encoding", .text = encoding});
    }
    ucnv_setToUCallBack(converter.get(), UCNV_TO_U_CALLBACK_STOP, nullptr, nullptr, nullptr, &code);
    std::u16string text(static_cast<std::size_t>(bytes.size()) + 1, u'\0');
    const auto length =
        ucnv_toUChars(converter.get(), text.data(), static_cast<std::int32_t>(text.size()),
                      bytes.constData(), static_cast<std::int32_t>(bytes.size()), &code);
    if (U_FAILURE(code)) {
        return refuse({.code = ErrorCode::BadEncoding, .field = "sheet", .text = encoding});
    }
    text.resize(static_cast<std::size_t>(length));
    if (text.find(u'\0') != std::u16string::npos) {
        return refuse({.code = ErrorCode::BadEncoding, .field = "sheet", .text = encoding});
    }
    QString made = QString::fromStdU16String(text);
    if (made.startsWith(QChar(QChar::ByteOrderMark))) {
        made.remove(0, 1);
    }
    return made;
}

QString cell(const QString& content)
{
    return QString::fromUtf8(csvTyped(content.toUtf8())).trimmed();
}

// Rows of the text, at most `most`. A quote that is not doubled ends what is quoted; one within an
// unquoted cell is a quote.
std::vector<QStringList> rowsOf(const QString& text, QChar delimiter, std::size_t most)
{
    std::vector<QStringList> rows;
    QStringList row;
    QString content;
    bool quoted = false;
    const auto endRow = [&] {
        row << cell(content);
        content.clear();
        rows.push_back(row);
        row.clear();
    };
    for (qsizetype i = 0; i < text.size() && rows.size() < most; ++i) {
        const QChar c = text[i];
        if (quoted) {
            if (c != u'"') {
                content += c;
            } else if (i + 1 < text.size() && text[i + 1] == u'"') {
                content += c;
                ++i;
            } else {
                quoted = false;
            }
        } else if (c == u'"' && content.trimmed().isEmpty()) {
            content.clear();
            quoted = true;
        } else if (c == delimiter) {
            row << cell(content);
            content.clear();
        } else if (c == u'\n' || c == u'\r') {
            i += c == u'\r' && i + 1 < text.size() && text[i + 1] == u'\n' ? 1 : 0;
            endRow();
        } else {
            content += c;
        }
    }
    if (rows.size() < most && (!content.isEmpty() || !row.isEmpty())) {
        endRow();
    }
    return rows;
}

// How well a delimiter fits: rows of the number of cells that most have, times the delimiters in
// such a row, less where rows stand without one. A decimal comma stands in many rows, often as
// regularly as the true one, but not in the headings.
double fit(const std::vector<QStringList>& rows)
{
    std::map<qsizetype, int> counts;
    int divided = 0;
    for (const QStringList& row : rows) {
        ++counts[row.size()];
        divided += row.size() > 1 ? 1 : 0;
    }
    int best = 0;
    for (const auto& [cells, count] : counts) {
        best = std::max(best, count * static_cast<int>(cells - 1));
    }
    return rows.empty() ? 0
                        : best * static_cast<double>(divided) / static_cast<double>(rows.size());
}

// Some spreadsheets say the delimiter on a line before all rows, which they do not show: "sep=;".
std::optional<SheetDelimiter> takeSaidDelimiter(QString& text)
{
    static const QRegularExpression line(QStringLiteral("^\"?sep=(.)\"?(?:\r\n|\r|\n|$)"),
                                         QRegularExpression::CaseInsensitiveOption);
    const auto found = line.match(text);
    const auto said = std::find(kSheetDelimiters.begin(), kSheetDelimiters.end(),
                                found.hasMatch() ? found.captured(1)[0].unicode() : u'\0');
    if (said == kSheetDelimiters.end()) {
        return std::nullopt;
    }
    text.remove(0, found.capturedLength());
    return static_cast<SheetDelimiter>(said - kSheetDelimiters.begin());
}

struct DelimiterFound {
    SheetDelimiter delimiter = SheetDelimiter::Comma;
    bool open = false;
};

DelimiterFound delimiterOf(const QString& text)
{
    std::array<double, kSheetDelimiters.size()> fits{};
    for (std::size_t i = 0; i < fits.size(); ++i) {
        fits[i] = fit(rowsOf(text, kSheetDelimiters[i], kRowsLookedAt));
    }
    const auto best = std::max_element(fits.begin(), fits.end());
    if (*best <= 0) {
        return {}; // one column, whatever stands between
    }
    const bool rival = std::any_of(fits.begin(), fits.end(), [&](const double& other) {
        return &other != &*best && other >= kNearlyAsGood * *best;
    });
    return {static_cast<SheetDelimiter>(best - fits.begin()), rival};
}

} // namespace

Result<SheetTable> readTable(const QByteArray& bytes, const SheetAsked& asked)
{
    if (bytes.size() > kMostSheetBytes) {
        return refuse({.code = ErrorCode::TooLong,
                       .field = "sheet",
                       .number = static_cast<double>(bytes.size()),
                       .high = static_cast<double>(kMostSheetBytes)});
    }
    SheetTable table;
    const EncodingFound encoding =
        asked.encoding ? EncodingFound{*asked.encoding} : encodingOf(bytes);
    table.encoding = encoding.name;
    table.encodingOpen = encoding.open;
    auto text = decoded(bytes, table.encoding);
    if (!text) {
        return tl::unexpected(text.error());
    }
    const auto said = takeSaidDelimiter(*text);
    const DelimiterFound delimiter = asked.delimiter ? DelimiterFound{*asked.delimiter}
                                     : said          ? DelimiterFound{*said}
                                                     : delimiterOf(*text);
    table.delimiter = delimiter.delimiter;
    table.delimiterOpen = delimiter.open;
    table.rows = rowsOf(*text, kSheetDelimiters[static_cast<std::size_t>(table.delimiter)],
                        kMostSheetRows + 1);
    if (table.rows.size() > kMostSheetRows) {
        return refuse({.code = ErrorCode::TooLong,
                       .field = "sheet",
                       .number = static_cast<double>(table.rows.size()),
                       .high = static_cast<double>(kMostSheetRows)});
    }
    const bool empty =
        std::all_of(table.rows.begin(), table.rows.end(), [](const QStringList& row) {
            return std::all_of(row.begin(), row.end(),
                               [](const QString& one) { return one.isEmpty(); });
        });
    if (empty) {
        return refuse({.code = ErrorCode::Missing, .field = "sheet"});
    }
    return table;
}

} // namespace ullage::store
