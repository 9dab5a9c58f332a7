#include "app/bench/template_codec.h"

#include <algorithm>

namespace ullage::app
{

using chemistry::Millilitres;
using chemistry::Seconds;
using namespace json;

QJsonObject agitationToJson(const ledger::Agitation& agitation)
{
    return {{"kind", text(ledger::code(agitation.kind))},
            {"first_s", agitation.first.value()},
            {"each_s", agitation.each.value()},
            {"every_s", agitation.every.value()}};
}

std::optional<ledger::Agitation> agitationFromJson(const QJsonObject& object)
{
    const auto& codes = ledger::kAgitationCodes;
    const auto kind = std::find(codes.begin(), codes.end(), plain(object["kind"]));
    if (kind == codes.end())
        return std::nullopt;
    const ledger::Agitation agitation{static_cast<ledger::AgitationKind>(kind - codes.begin()),
                                      Seconds(object["first_s"].toDouble()),
                                      Seconds(object["each_s"].toDouble()),
                                      Seconds(object["every_s"].toDouble())};
    return ledger::check(agitation) ? std::optional(agitation) : std::nullopt;
}

QJsonObject tankToJson(const ledger::Tank& tank)
{
    return {{"name", text(tank.name)},
            {"volume_ml", tank.volume.value()},
            {"places", array(tank.places, [](const ledger::TankPlaces& place) {
                 QJsonObject o{{"format", text(place.format)}, {"most", place.most}};
                 if (place.each)
                     o["each_ml"] = place.each->value();
                 return o;
             })}};
}

ledger::Tank tankFromJson(const QJsonObject& object)
{
    ledger::Tank tank{plain(object["name"]), Millilitres(object["volume_ml"].toDouble()), {}};
    for (const QJsonValue& value : object["places"].toArray()) {
        const QJsonObject o = value.toObject();
        ledger::TankPlaces place{plain(o["format"]), o["most"].toInt(1), {}};
        if (const auto each = optional(o["each_ml"]))
            place.each = Millilitres(*each);
        tank.places.push_back(place);
    }
    return tank;
}

QJsonObject templateToJson(const ledger::RunTemplate& sheet)
{
    return {{"name", text(sheet.name)},
            {"id", text(sheet.id)},
            {"steps", array(sheet.steps, [](const ledger::TemplateStep& step) {
                 return QJsonObject{{"kind", text(ledger::code(step.kind))},
                                    {"time_s", step.time.value()},
                                    {"changes", step.changes},
                                    {"agitation", agitationToJson(step.agitation)}};
             })}};
}

std::optional<ledger::RunTemplate> templateFromJson(const QJsonObject& object)
{
    ledger::RunTemplate sheet{plain(object["name"]), plain(object["id"]), {}};
    for (const QJsonValue& value : object["steps"].toArray()) {
        const QJsonObject o = value.toObject();
        const auto kind = ledger::stepFromCode(plain(o["kind"]));
        const auto agitation = agitationFromJson(o["agitation"].toObject());
        if (!kind || !agitation)
            return std::nullopt;
        sheet.steps.push_back(
            {*kind, Seconds(o["time_s"].toDouble()), o["changes"].toInt(), *agitation});
    }
    return ledger::check(sheet) ? std::optional(sheet) : std::nullopt;
}

} // namespace ullage::app
