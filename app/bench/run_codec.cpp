#include "app/bench/run_codec.h"

#include "app/bench/template_codec.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace ullage::app
{

using chemistry::Celsius;
using chemistry::Instant;
using chemistry::Millilitres;
using chemistry::Seconds;
using namespace json;

namespace
{

const QString kFormatName = QStringLiteral("ullage-run");

qint64 number(Instant at) { return at.time_since_epoch().count(); }
Instant instant(const QJsonValue& value)
{
    return Instant(std::chrono::milliseconds(value.toInteger()));
}

QJsonObject write(const ledger::RunFilm& film)
{
    QJsonObject o{{"format", text(film.format)},
                  {"count", film.count},
                  {"name", text(film.name)},
                  {"notes", text(film.notes)}};
    if (film.exposureIndex)
        o["ei"] = *film.exposureIndex;
    return o;
}

ledger::RunFilm readFilm(const QJsonObject& o)
{
    return {plain(o["format"]), o["count"].toInt(), plain(o["name"]), optional(o["ei"]),
            plain(o["notes"])};
}

QJsonObject write(const ledger::RunBath& bath)
{
    return {{"role", text(formulary::code(bath.role))},
            {"batch", text(bath.batch)},
            {"name", text(bath.name)},
            {"used_ml", bath.used.value()},
            {"one_shot", bath.oneShot},
            {"wear", bath.wearBefore},
            {"second", bath.second}};
}

ledger::RunBath readBath(const QJsonObject& o)
{
    return {formulary::roleFromCode(plain(o["role"])).value_or(formulary::Role::Other),
            plain(o["batch"]),
            plain(o["name"]),
            Millilitres(o["used_ml"].toDouble()),
            o["one_shot"].toBool(),
            o["wear"].toDouble(),
            o["second"].toBool()};
}

QJsonObject write(const ledger::RunStep& step)
{
    QJsonObject o{{"kind", text(ledger::code(step.kind))},
                  {"changes", step.changes},
                  {"planned_s", step.planned.value()},
                  {"source", static_cast<int>(step.source)},
                  {"agitation", agitationToJson(step.agitation)},
                  {"batch", text(step.batch)},
                  {"caution", static_cast<int>(step.caution)}};
    if (step.pour) {
        o["stock_ml"] = step.pour->stock.value();
        o["water_ml"] = step.pour->water.value();
    }
    return o;
}

std::optional<ledger::Pour> readPour(const QJsonObject& o)
{
    const auto stock = optional(o["stock_ml"]);
    if (!stock)
        return std::nullopt;
    return ledger::Pour{chemistry::Millilitres(*stock),
                        chemistry::Millilitres(o["water_ml"].toDouble())};
}

Result<ledger::RunStep> readStep(const QJsonObject& o)
{
    const auto kind = ledger::stepFromCode(plain(o["kind"]));
    const int source = o["source"].toInt(-1);
    const int caution = o["caution"].toInt(-1);
    const auto agitation = agitationFromJson(o["agitation"].toObject());
    if (!kind || !agitation || source < 0 || source > int(ledger::TimeSource::ColdWash) ||
        caution < 0 || caution > int(ledger::StepCaution::Wetting))
        return refuse({.code = ErrorCode::Malformed, .field = "steps"});
    return ledger::RunStep{*kind,
                           o["changes"].toInt(1),
                           Seconds(o["planned_s"].toDouble()),
                           static_cast<ledger::TimeSource>(source),
                           *agitation,
                           plain(o["batch"]),
                           static_cast<ledger::StepCaution>(caution),
                           readPour(o)};
}

QJsonObject write(const ledger::StepTime& time)
{
    QJsonObject o{{"planned_s", time.planned.value()},
                  {"target_s", time.target.value()},
                  {"real_s", time.real.value()},
                  {"held_s", time.held.value()},
                  {"skipped", time.skipped}};
    if (time.began)
        o["began"] = number(*time.began);
    if (time.ended)
        o["ended"] = number(*time.ended);
    return o;
}

ledger::StepTime readTime(const QJsonObject& o)
{
    const auto moment = [&](const char* name) {
        return o.contains(QLatin1String(name)) ? std::optional(instant(o[QLatin1String(name)]))
                                               : std::nullopt;
    };
    return {Seconds(o["planned_s"].toDouble(-1)),
            Seconds(o["target_s"].toDouble(-1)),
            Seconds(o["real_s"].toDouble(-1)),
            Seconds(o["held_s"].toDouble(-1)),
            o["skipped"].toBool(),
            moment("began"),
            moment("ended")};
}

QJsonObject write(const ledger::DevelopingFactors& f)
{
    return {{"base_s", f.nearest.time.value()},
            {"base_c", f.nearest.temperature.value()},
            {"temperature", f.temperature},
            {"wear", f.wear},
            {"strip", f.strip},
            {"time_s", f.time.value()}};
}

ledger::DevelopingFactors readDeveloping(const QJsonObject& o)
{
    ledger::DevelopingFactors f{
        .nearest = {Celsius(o["base_c"].toDouble()), Seconds(o["base_s"].toDouble())},
        .temperature = o["temperature"].toDouble(1),
        .wear = o["wear"].toDouble(1),
        .strip = o["strip"].toDouble(1),
        .time = Seconds(o["time_s"].toDouble())};
    f.base.time = f.nearest.time * f.temperature;
    return f;
}

QJsonObject write(const ledger::FixingFactors& f)
{
    QJsonObject o{{"times", f.times},
                  {"cold", f.cold},
                  {"time_s", f.time.value()},
                  {"of_tests", f.from == ledger::ClearingFrom::Tests},
                  {"baths", f.baths}};
    if (f.clearing)
        o["clearing_s"] = f.clearing->value();
    return o;
}

ledger::FixingFactors readFixing(const QJsonObject& o)
{
    ledger::FixingFactors f{.times = o["times"].toDouble(2),
                            .cold = o["cold"].toDouble(1),
                            .time = Seconds(o["time_s"].toDouble()),
                            .baths = o["baths"].toInt(1)};
    if (const auto clearing = optional(o["clearing_s"])) {
        f.clearing = Seconds(*clearing);
        f.from = o["of_tests"].toBool(true) ? ledger::ClearingFrom::Tests
                                            : ledger::ClearingFrom::SolutionFigure;
    }
    return f;
}

void readSheet(const QJsonObject& o, ledger::RunSheet& sheet)
{
    for (const QJsonValue& value : o["pairs"].toArray())
        sheet.basis.pairs.push_back(
            {Celsius(value.toObject()["c"].toDouble()), Seconds(value.toObject()["s"].toDouble())});
    sheet.basis.q10 = o["q10"].toDouble(1.9);
    if (o.contains("developing"))
        sheet.developing = readDeveloping(o["developing"].toObject());
    if (o.contains("fixing"))
        sheet.fixing = readFixing(o["fixing"].toObject());
}

} // namespace

QByteArray runToJson(const ledger::RunState& state)
{
    QJsonObject o{
        {"type", kFormatName},
        {"version", kRunFormat},
        {"phase", text(ledger::code(state.phase))},
        {"current", static_cast<int>(state.current)},
        {"saved_at", number(state.savedAt)},
        {"temperature_c", state.temperature.value()},
        {"tank", tankToJson(state.tank)},
        {"films", array(state.films, [](const auto& film) { return write(film); })},
        {"baths", array(state.baths, [](const auto& bath) { return write(bath); })},
        {"steps", array(state.sheet.steps, [](const auto& step) { return write(step); })},
        {"times", array(state.times, [](const auto& time) { return write(time); })},
        {"pairs",
         array(state.sheet.basis.pairs,
               [](const auto& pair) {
                   return QJsonObject{{"c", pair.temperature.value()}, {"s", pair.time.value()}};
               })},
        {"q10", state.sheet.basis.q10},
        {"readings", array(state.readings, [](const ledger::Reading& reading) {
             return QJsonObject{{"at", number(reading.at)},
                                {"step", static_cast<int>(reading.step)},
                                {"c", reading.temperature.value()}};
         })}};
    if (state.sheet.developing)
        o["developing"] = write(*state.sheet.developing);
    if (state.sheet.fixing)
        o["fixing"] = write(*state.sheet.fixing);
    if (state.loggedAt)
        o["logged_at"] = number(*state.loggedAt);
    return QJsonDocument(o).toJson(QJsonDocument::Compact);
}

Result<ledger::RunState> runFromJson(const QByteArray& bytes)
{
    const QJsonObject o = QJsonDocument::fromJson(bytes).object();
    if (o["type"].toString() != kFormatName)
        return refuse({.code = ErrorCode::Malformed, .field = "type"});
    if (const int version = o["version"].toInt(); version > kRunFormat)
        return refuse({.code = ErrorCode::NewerBook, .number = version});
    ledger::RunState state;
    const auto phases = ledger::kRunPhaseCodes;
    const auto phase = std::find(phases.begin(), phases.end(), plain(o["phase"]));
    if (phase == phases.end() || o["current"].toInt(-1) < 0)
        return refuse({.code = ErrorCode::Malformed, .field = "phase"});
    state.phase = static_cast<ledger::RunPhase>(phase - phases.begin());
    state.current = static_cast<std::size_t>(o["current"].toInt());
    state.savedAt = instant(o["saved_at"]);
    state.temperature = Celsius(o["temperature_c"].toDouble(20));
    state.tank = tankFromJson(o["tank"].toObject());
    for (const QJsonValue& value : o["films"].toArray())
        state.films.push_back(readFilm(value.toObject()));
    for (const QJsonValue& value : o["baths"].toArray())
        state.baths.push_back(readBath(value.toObject()));
    for (const QJsonValue& value : o["steps"].toArray()) {
        auto step = readStep(value.toObject());
        if (!step)
            return tl::unexpected(step.error());
        state.sheet.steps.push_back(*step);
    }
    for (const QJsonValue& value : o["times"].toArray())
        state.times.push_back(readTime(value.toObject()));
    for (const QJsonValue& value : o["readings"].toArray()) {
        const QJsonObject reading = value.toObject();
        state.readings.push_back({instant(reading["at"]),
                                  static_cast<std::size_t>(reading["step"].toInt()),
                                  Celsius(reading["c"].toDouble())});
    }
    readSheet(o, state.sheet);
    if (o.contains("logged_at"))
        state.loggedAt = instant(o["logged_at"]);
    return ledger::check(state).map([&] { return state; });
}

} // namespace ullage::app
