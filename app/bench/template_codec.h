// Tanks, agitation and templates as JSON: for the settings and for the run in hand.
#pragma once

#include "core/ledger/run_sheet.h"
#include "core/ledger/tank.h"

#include <QJsonArray>
#include <QJsonObject>
#include <QString>

#include <optional>
#include <string_view>
#include <vector>

namespace ullage::app
{

QJsonObject agitationToJson(const ledger::Agitation& agitation);
/// Nothing for an unknown kind or figures that ledger::check() refuses.
std::optional<ledger::Agitation> agitationFromJson(const QJsonObject& object);

QJsonObject tankToJson(const ledger::Tank& tank);
/// What is missing stays empty: ledger::check() tells.
ledger::Tank tankFromJson(const QJsonObject& object);

QJsonObject templateToJson(const ledger::RunTemplate& sheet);
/// Nothing for one that ledger::check() refuses.
std::optional<ledger::RunTemplate> templateFromJson(const QJsonObject& object);

/// Between JSON and the core's plain values.
namespace json
{

inline QString text(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}
/// Empty for what is no text.
inline std::string plain(const QJsonValue& value) { return value.toString().toStdString(); }
/// Empty for what is no number.
inline std::optional<double> optional(const QJsonValue& value)
{
    return value.isDouble() ? std::optional(value.toDouble()) : std::nullopt;
}
template <class Item, class Write>
QJsonArray array(const std::vector<Item>& items, Write write)
{
    QJsonArray made;
    for (const Item& item : items)
        made.append(write(item));
    return made;
}

} // namespace json

} // namespace ullage::app
