#include "app/sheet/sheet_mapping.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kVersion = 1;
const std::array<QString, 3> kOrders{QStringLiteral("day-month-year"),
                                     QStringLiteral("month-day-year"),
                                     QStringLiteral("year-month-day")};

Error wrong(const char* field, const QString& value, const QString& allowed)
{
    return {.code = ErrorCode::UnknownKind,
            .field = field,
            .text = value.toStdString(),
            .allowed = allowed.toStdString()};
}

QString allCodes()
{
    QStringList all;
    for (const std::string_view code : kSheetFieldCodes) {
        all << QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size()));
    }
    return all.join(QStringLiteral(", "));
}

Result<void> readReading(const QJsonObject& from, SheetMapping& into)
{
    if (const auto encoding = from.value(QLatin1String("encoding")); encoding.isString()) {
        into.reading.encoding = encoding.toString().toStdString();
    }
    if (const auto delimiter = from.value(QLatin1String("delimiter")); delimiter.isString()) {
        const QString text = delimiter.toString();
        const auto* found =
            std::find_if(store::kSheetDelimiters.begin(), store::kSheetDelimiters.end(),
                         [&](char16_t one) { return text == QChar(one); });
        if (found == store::kSheetDelimiters.end()) {
            return refuse(wrong("delimiter", text, QStringLiteral("; , | \\t")));
        }
        into.reading.delimiter =
            static_cast<store::SheetDelimiter>(found - store::kSheetDelimiters.begin());
    }
    into.headingRow = from.value(QLatin1String("heading_row")).toInt();
    if (const auto decimal = from.value(QLatin1String("decimal")); decimal.isString()) {
        const QString text = decimal.toString();
        if (text != u"," && text != u".") {
            return refuse(wrong("decimal", text, QStringLiteral(", .")));
        }
        into.decimalComma = text == u",";
    }
    if (const auto days = from.value(QLatin1String("days")); days.isString()) {
        const auto* found = std::find(kOrders.begin(), kOrders.end(), days.toString());
        if (found == kOrders.end()) {
            return refuse(wrong("days", days.toString(),
                                QStringList(kOrders.begin(), kOrders.end()).join(u", ")));
        }
        into.order = static_cast<DayOrder>(found - kOrders.begin());
    }
    return {};
}

} // namespace

QByteArray mappingText(const SheetMapping& mapping)
{
    QJsonObject made{{QStringLiteral("ullage-sheet"), kVersion},
                     {QStringLiteral("heading_row"), mapping.headingRow},
                     {QStringLiteral("decimal"), mapping.decimalComma ? "," : "."},
                     {QStringLiteral("days"), kOrders[static_cast<std::size_t>(mapping.order)]}};
    if (mapping.reading.encoding) {
        made.insert(QStringLiteral("encoding"), QString::fromStdString(*mapping.reading.encoding));
    }
    if (mapping.reading.delimiter) {
        made.insert(
            QStringLiteral("delimiter"),
            QString(QChar(
                store::kSheetDelimiters[static_cast<std::size_t>(*mapping.reading.delimiter)])));
    }
    QJsonArray columns;
    for (const SheetColumnMeans& column : mapping.columns) {
        const std::string_view code = sheetCode(column.field);
        columns.append(
            QJsonObject{{QStringLiteral("heading"), column.heading},
                        {QStringLiteral("field"),
                         QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size()))}});
    }
    made.insert(QStringLiteral("columns"), columns);
    QJsonObject solutions;
    for (const auto& [sheet, ours] : mapping.solutions) {
        solutions.insert(sheet, ours);
    }
    made.insert(QStringLiteral("solutions"), solutions);
    return QJsonDocument(made).toJson();
}

Result<SheetMapping> readMapping(const QByteArray& text)
{
    QJsonParseError problem;
    const QJsonDocument document = QJsonDocument::fromJson(text, &problem);
    if (!document.isObject()) {
        return refuse({.code = ErrorCode::Malformed,
                       .field = "mapping",
                       .text = problem.errorString().toStdString(),
                       .allowed = "JSON"});
    }
    const QJsonObject from = document.object();
    const QJsonValue version = from.value(QLatin1String("ullage-sheet"));
    if (version.toInt() != kVersion) {
        return refuse(wrong("ullage-sheet", version.toVariant().toString(), QStringLiteral("1")));
    }
    SheetMapping made;
    if (auto fine = readReading(from, made); !fine) {
        return tl::unexpected(fine.error());
    }
    for (const QJsonValue& one : from.value(QLatin1String("columns")).toArray()) {
        const QString code = one[QLatin1String("field")].toString();
        const auto field = sheetFieldFromCode(code.toStdString());
        if (!field) {
            return refuse(wrong("field", code, allCodes()));
        }
        made.columns.push_back({one[QLatin1String("heading")].toString(), *field});
    }
    const QJsonObject solutions = from.value(QLatin1String("solutions")).toObject();
    for (auto at = solutions.begin(); at != solutions.end(); ++at) {
        made.solutions.insert({at.key(), at.value().toString()});
    }
    return made;
}

bool fitsHeadings(const SheetMapping& mapping, const QStringList& headings)
{
    return mapping.columns.size() == static_cast<std::size_t>(headings.size()) &&
           std::equal(headings.begin(), headings.end(), mapping.columns.begin(),
                      [](const QString& heading, const SheetColumnMeans& column) {
                          return heading.compare(column.heading, Qt::CaseInsensitive) == 0;
                      });
}

} // namespace ullage::app
