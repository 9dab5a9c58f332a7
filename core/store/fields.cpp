#include "core/store/fields.h"

#include "core/ledger/typed_text.h"
#include "core/store/instant_text.h"

#include <QJsonDocument>

#include <algorithm>

namespace ullage::store
{

namespace
{

constexpr int kMostShown = 60; // characters

} // namespace

std::string shown(const QJsonValue& value)
{
    const auto wrapped = QJsonDocument(QJsonArray{value}).toJson(QJsonDocument::Compact);
    QString text = QString::fromUtf8(wrapped).mid(1).chopped(1);
    if (text.size() > kMostShown) {
        text = text.left(kMostShown) + QChar(0x2026);
    }
    return text.toStdString();
}

Fields::Fields(QJsonObject object, std::optional<Error>& refusal, std::string way)
    : m_object(std::move(object)), m_refusal(&refusal), m_way(std::move(way))
{
}

bool Fields::has(const char* key) const { return m_object.contains(QLatin1String(key)); }

void Fields::refuseWith(Error error, const char* key)
{
    if (!*m_refusal) {
        error.field = m_way + key;
        *m_refusal = std::move(error);
    }
}

QJsonValue Fields::get(const char* key, bool required)
{
    const QJsonValue value = m_object.value(QLatin1String(key));
    if (value.isUndefined() && required) {
        refuseWith({.code = ErrorCode::Missing}, key);
    }
    return value;
}

std::string Fields::textOf(const char* key, const QJsonValue& value)
{
    if (value.isUndefined()) {
        return {};
    }
    if (!value.isString()) {
        refuseWith({.code = ErrorCode::Malformed, .text = shown(value), .allowed = "a text"}, key);
        return {};
    }
    std::string text = value.toString().toStdString();
    if (!ledger::canBeKept(text)) {
        refuseWith(
            {.code = ErrorCode::Malformed, .text = shown(value), .allowed = ledger::kTextToKeep},
            key);
        return {};
    }
    return text;
}

std::string Fields::text(const char* key) { return textOf(key, get(key, true)); }

std::string Fields::textIf(const char* key) { return textOf(key, get(key, false)); }

double Fields::number(const char* key)
{
    const QJsonValue value = get(key, true);
    if (!value.isUndefined() && !value.isDouble()) {
        refuseWith({.code = ErrorCode::NotANumber, .text = shown(value), .allowed = "a number"},
                   key);
    }
    return value.toDouble();
}

bool Fields::truth(const char* key)
{
    const QJsonValue value = get(key, true);
    if (!value.isUndefined() && !value.isBool()) {
        refuseWith({.code = ErrorCode::Malformed, .text = shown(value), .allowed = "true, false"},
                   key);
    }
    return value.toBool();
}

ledger::Decimal Fields::decimal(const char* key)
{
    const QJsonValue value = get(key, true);
    const auto read = value.isDouble()   ? ledger::Decimal::from(value.toDouble())
                      : value.isString() ? ledger::Decimal::from(value.toString().toStdString())
                                         : std::nullopt;
    if (!read && !value.isUndefined()) {
        refuseWith(
            {.code = ErrorCode::NotANumber, .text = shown(value), .allowed = ledger::kDecimalForm},
            key);
    }
    return read.value_or(ledger::Decimal());
}

std::vector<std::string> Fields::textsIf(const char* key)
{
    const QJsonValue value = get(key, false);
    if (value.isUndefined()) {
        return {};
    }
    if (value.isString()) {
        return {textOf(key, value)};
    }
    if (!value.isArray()) {
        refuseWith(
            {.code = ErrorCode::Malformed, .text = shown(value), .allowed = "a list of texts"},
            key);
    }
    std::vector<std::string> found;
    const QJsonArray list = value.toArray();
    for (const auto& one : list) {
        found.push_back(textOf(key, one));
    }
    return found;
}

std::size_t Fields::choice(const char* key, std::span<const std::string_view> codes)
{
    const std::string read = text(key);
    const auto found = std::find(codes.begin(), codes.end(), read);
    if (found != codes.end()) {
        return static_cast<std::size_t>(found - codes.begin());
    }
    std::string allowed;
    for (const std::string_view code : codes) {
        allowed.append(allowed.empty() ? "" : ", ").append(code);
    }
    refuseWith({.code = ErrorCode::UnknownKind, .text = read, .allowed = std::move(allowed)}, key);
    return 0;
}

chemistry::Instant Fields::moment(const char* key)
{
    const std::string read = text(key);
    const auto at = instantFromText(QString::fromStdString(read));
    if (!at) {
        refuseWith({.code = ErrorCode::Malformed, .text = read, .allowed = kInstantForm}, key);
    }
    return at.value_or(chemistry::Instant{});
}

std::string Fields::dateIf(const char* key)
{
    std::string read = textIf(key);
    if (!read.empty() && !dateFromText(QString::fromStdString(read))) {
        refuseWith({.code = ErrorCode::Malformed, .text = read, .allowed = kDateForm}, key);
    }
    return read;
}

void Fields::texts(const char* key, std::map<std::string, std::string>& into)
{
    Fields all = inner(key);
    for (auto one = all.m_object.begin(); one != all.m_object.end(); ++one) {
        const std::string name = one.key().toStdString();
        into[name] = all.textOf(name.c_str(), one.value());
    }
}

Fields Fields::inner(const char* key)
{
    const QJsonValue value = get(key, true);
    if (!value.isUndefined() && !value.isObject()) {
        refuseWith({.code = ErrorCode::Malformed, .text = shown(value), .allowed = "an object"},
                   key);
    }
    return {value.toObject(), *m_refusal, m_way + key + '.'};
}

QJsonArray Fields::list(const char* key)
{
    const QJsonValue value = get(key, true);
    if (!value.isUndefined() && !value.isArray()) {
        refuseWith({.code = ErrorCode::Malformed, .text = shown(value), .allowed = "a list"}, key);
    }
    return value.toArray();
}

Fields Fields::element(const char* key, const QJsonValue& value)
{
    if (!value.isObject()) {
        refuseWith(
            {.code = ErrorCode::Malformed, .text = shown(value), .allowed = "a list of objects"},
            key);
    }
    return {value.toObject(), *m_refusal, m_way + key + '.'};
}

} // namespace ullage::store
