#include "core/store/journal_codec.h"

#include <QJsonDocument>

#include <gtest/gtest.h>

using namespace ullage;
using namespace ullage::ledger;
using namespace ullage::store;

namespace
{

Entry read(const QByteArray& text)
{
    const auto line = decodeLine(text);
    EXPECT_TRUE(line) << text.constData() << ": " << (line ? "" : line.error().field);
    return line ? std::get<Entry>(*line) : Entry{};
}

template <class T>
T happening(const QByteArray& rest)
{
    const Entry entry =
        read(R"({"type":"event","id":"e","batch":"b","at":"2026-06-01T10:00:00Z",)" + rest + "}");
    return std::get<T>(std::get<Event>(entry.what).what);
}

Error refusal(const QByteArray& text)
{
    const auto line = decodeLine(text);
    EXPECT_FALSE(line) << text.constData();
    return line ? Error{} : line.error();
}

Error eventRefusal(const QByteArray& rest)
{
    return refusal(R"({"type":"event","id":"e","batch":"b","at":"2026-06-01T10:00:00Z",)" + rest +
                   "}");
}

} // namespace

TEST(JournalCodec, ReadsASolutionWithEverything)
{
    const auto entry = read(
        R"({"type":"solution","id":"s","name":"Süd","role":"wash-aid","capacity_films_per_litre":12.5,)"
        R"("wear":{"rule":"steps","steps":[{"from_films_per_litre":1,"factor":1.1}]},)"
        R"("keeping":{"full_days":182.625,"half_days":60.875,"tray_hours":24},"q10":1.8,)"
        R"("oxygen_factor":0.5,"silver_g_per_film":0.15,"bromide_mg_per_film":40,)"
        R"("fresh_clearing_s":30,"silver_limit_g_per_litre":1.5,"tabular_factor":3,"replenish_ml_per_film":90,"replaces":"old",)"
        R"("sources":{"q10":"a test"}})");
    const auto& solution = std::get<formulary::Solution>(entry.what);
    EXPECT_EQ(solution.name, "Süd");
    EXPECT_EQ(solution.role, formulary::Role::WashAid);
    EXPECT_EQ(solution.capacity, chemistry::FilmsPerLitre(12.5));
    ASSERT_EQ(solution.wear.steps.size(), 1u);
    EXPECT_EQ(solution.wear.steps[0].factor, 1.1);
    EXPECT_EQ(solution.keeping.half, chemistry::Days(60.875));
    EXPECT_EQ(solution.keeping.tray, chemistry::Hours(24));
    EXPECT_EQ(solution.q10, 1.8);
    EXPECT_EQ(solution.oxygenFactor, 0.5);
    EXPECT_EQ(solution.silverPerFilm, 0.15);
    EXPECT_EQ(solution.bromidePerFilm, 40);
    EXPECT_EQ(solution.freshClearing, chemistry::Seconds(30));
    EXPECT_EQ(solution.silverLimit, chemistry::GramsPerLitre(1.5));
    EXPECT_EQ(solution.tabularFactor, 3);
    EXPECT_EQ(solution.replenishPerFilm, chemistry::Millilitres(90));
    EXPECT_EQ(solution.replaces, "old");
    EXPECT_EQ(solution.sources.at("q10"), "a test");
    EXPECT_EQ(std::get<formulary::Solution>(read(encode({solution, {}})).what), solution);
}

TEST(JournalCodec, TakesTheStepsOfWearInAnyOrder)
{
    const auto entry = read(
        R"({"type":"solution","id":"s","name":"S","role":"developer","wear":{"rule":"steps","steps":)"
        R"([{"from_films_per_litre":4,"factor":1.3},{"from_films_per_litre":2,"factor":1.1}]}})");
    const auto& wear = std::get<formulary::Solution>(entry.what).wear;
    EXPECT_TRUE(chemistry::check(wear));
    EXPECT_EQ(chemistry::wearFactor(wear, chemistry::FilmsPerLitre(3)), 1.1);
    EXPECT_LT(entry.body.find("\"factor\":1.3"), entry.body.find("\"factor\":1.1"));
}

TEST(JournalCodec, HasDefaultsForASolutionThatSaysLittle)
{
    const auto entry = read(R"({"type":"solution","id":"s","name":"S","role":"stop"})");
    EXPECT_EQ(std::get<formulary::Solution>(entry.what),
              (formulary::Solution{.id = "s", .name = "S", .role = formulary::Role::Stop}));
    EXPECT_EQ(entry.body, R"({"type":"solution","id":"s","name":"S","role":"stop"})");
}

TEST(JournalCodec, ReadsEveryKindOfEvent)
{
    const auto mixed = happening<Mixed>(
        R"("kind":"mixed","solution":"s","vessel":"v","volume_ml":1000,"name":"N","packet":"p",)"
        R"("history":"unknown")");
    EXPECT_EQ(mixed.solution, "s");
    EXPECT_EQ(mixed.vessel, "v");
    EXPECT_EQ(mixed.volume.value(), 1000);
    EXPECT_EQ(mixed.packet, "p");
    EXPECT_TRUE(mixed.historyUnknown);

    const auto processed = happening<Processed>(
        R"("kind":"processed","films":[{"format":"120","count":2},{"format":"4x5","count":3}],)"
        R"("used_ml":500,"lost_ml":12.5,"one_shot":true,"run":"r")");
    ASSERT_EQ(processed.load.films.size(), 2u);
    EXPECT_EQ(processed.load.films[1], (FilmCount{"4x5", 3}));
    EXPECT_EQ(processed.used->value(), 500);
    EXPECT_EQ(processed.lost.value(), 12.5);
    EXPECT_TRUE(processed.oneShot);
    EXPECT_EQ(processed.run, "r");
    const auto area = happening<Processed>(R"("kind":"processed","area_cm2":516.13)");
    EXPECT_EQ(area.load.area->value(), 516.13);
    EXPECT_FALSE(area.used);

    EXPECT_EQ(happening<ToppedUp>(R"("kind":"topped-up","volume_ml":30,"from":"c")").from, "c");
    EXPECT_EQ(happening<Drawn>(R"("kind":"drawn","volume_ml":30,"why":"w")").why, "w");
    EXPECT_EQ(happening<Moved>(R"("kind":"moved","vessel":"v2")").vessel, "v2");
    happening<Opened>(R"("kind":"opened")");
    EXPECT_EQ(
        happening<StoodOpen>(R"("kind":"stood-open","hours":2,"area_cm2":500)").surface.value(),
        500);
    EXPECT_EQ(happening<StoredAt>(R"("kind":"stored-at","temperature_c":17.5)").temperature.value(),
              17.5);
    EXPECT_EQ(happening<ClearingTested>(R"("kind":"clearing-test","seconds":55,"temperature_c":21)")
                  .time.value(),
              55);
    const auto strip =
        happening<StripTested>(R"("kind":"strip-test","density":1.2,"factor":1.05,"passed":false)");
    EXPECT_EQ(strip.factor, 1.05);
    EXPECT_EQ(strip.passed, false);
    EXPECT_FALSE(happening<StripTested>(R"("kind":"strip-test")").passed);
    EXPECT_EQ(happening<Looked>(R"("kind":"looked","passed":true,"why":"colour")").why, "colour");
    EXPECT_EQ(happening<Contaminated>(R"("kind":"contaminated","why":"w")").why, "w");
    happening<Dissolved>(R"("kind":"dissolved")");
    EXPECT_EQ(happening<Noted>(R"("kind":"noted","text":"t")").text, "t");
    EXPECT_EQ(happening<Discarded>(R"("kind":"discarded","how":"h")").how, "h");
    EXPECT_EQ(happening<Voided>(R"("kind":"voided","voids":"e0","why":"w")").voids, "e0");
    EXPECT_EQ(happening<OpenedPacket>(R"("kind":"opened-packet","packet":"p")").item, "p");
}

TEST(JournalCodec, ReadsTheCupboardAndFilms)
{
    const auto packet = std::get<Packet>(
        read(R"({"type":"packet","id":"p","solution":"s","makes_ml":1000,"lot":"A7",)"
             R"("bought":"2024-01-02","use_by":"2026-01-31","cost":8.5,"currency":"EUR"})")
            .what);
    EXPECT_EQ(packet.makes->value(), 1000);
    EXPECT_EQ(packet.useBy, "2026-01-31");
    EXPECT_EQ(packet.cost, Decimal::from("8.5")) << "version 1 had a number";
    const auto film = std::get<FilmRecord>(
        read(R"({"type":"film","id":"f","run":"r","format":"120","name":"Harbour","ei":100,)"
             R"("notes":"fog"})")
            .what);
    EXPECT_EQ(film.exposureIndex, 100);
    const auto chemical = std::get<Chemical>(
        read(R"({"type":"chemical","name":"sodium sulfite","cas":"7757-83-7","grams":500})").what);
    EXPECT_EQ(chemical.id, "sodium sulfite");
    EXPECT_EQ(chemical.grams, 500);
}

TEST(JournalCodec, PutsFieldsInOrderAndKeepsWhatItDoesNotKnow)
{
    const auto entry = read(
        R"({"zebra":{"deep":[1,2.50]},"at":"2026-06-01T12:00:00+02:00","kind":"opened","batch":"b",)"
        R"("id":"e","type":"event","apple":12345678901234567890})");
    EXPECT_EQ(entry.body,
              R"({"type":"event","id":"e","batch":"b","kind":"opened","at":"2026-06-01T10:00:00Z",)"
              R"("zebra":{"deep":[1,2.50]},"apple":12345678901234567890})");
}

TEST(JournalCodec, LeavesOptionalFieldsAsTheyWereGiven)
{
    const QByteArray given =
        R"({"type":"event","id":"e","batch":"b","kind":"processed","at":"2026-06-01T10:00:00Z",)"
        R"("films":[{"format":"120","count":1}],"lost_ml":0,"one_shot":false})";
    EXPECT_EQ(encode(read(given)), given);
}

TEST(JournalCodec, NamesFieldValueAndWhatIsAllowed)
{
    struct Case {
        const char* rest;
        ErrorCode code;
        const char* field;
        const char* text;
    };
    const Case cases[] = {
        {R"("kind":"drawn","volume_ml":"30")", ErrorCode::NotANumber, "volume_ml", "\"30\""},
        {R"("kind":"drawn","volume_ml":null)", ErrorCode::NotANumber, "volume_ml", "null"},
        {R"("kind":"drawn","volume_ml":true)", ErrorCode::NotANumber, "volume_ml", "true"},
        {R"("kind":"drawn")", ErrorCode::Missing, "volume_ml", ""},
        {R"("kind":"drawn","volume_ml":3,"why":7)", ErrorCode::Malformed, "why", "7"},
        {R"("kind":"drawn","volume_ml":3,"why":"a\u0000b")", ErrorCode::Malformed, "why",
         R"("a\u0000b")"},
        {R"("kind":"drunk")", ErrorCode::UnknownKind, "kind", "drunk"},
        {R"("volume_ml":3)", ErrorCode::Missing, "kind", ""},
        {R"("kind":"moved","vessel":3)", ErrorCode::Malformed, "vessel", "3"},
        {R"("kind":"looked","passed":"yes")", ErrorCode::Malformed, "passed", "\"yes\""},
        {R"("kind":"mixed","solution":"s","vessel":"v","volume_ml":1,"history":"bought")",
         ErrorCode::UnknownKind, "history", "bought"},
        {R"("kind":"processed","films":{})", ErrorCode::Malformed, "films", "{}"},
        {R"("kind":"processed","films":[3])", ErrorCode::Malformed, "films", "3"},
        {R"("kind":"processed","films":[{"format":"120"}])", ErrorCode::Missing, "films.count", ""},
        {R"("kind":"processed","films":[{"count":1}])", ErrorCode::Missing, "films.format", ""},
        {R"("kind":"opened","air_ml":"none")", ErrorCode::NotANumber, "air_ml", "\"none\""},
    };
    for (const Case& one : cases) {
        const Error error = eventRefusal(one.rest);
        EXPECT_EQ(error.code, one.code) << one.rest;
        EXPECT_EQ(error.field, one.field) << one.rest;
        EXPECT_EQ(error.text, one.text) << one.rest;
    }
    const Error kind = eventRefusal(R"("kind":"drunk")");
    EXPECT_NE(kind.allowed.find("topped-up"), std::string::npos);
}

TEST(JournalCodec, RefusesDefinitionsThatLackOrConfuseFields)
{
    const std::pair<const char*, const char*> cases[] = {
        {R"({"id":"x"})", "type"},
        {R"({"type":"recipe","id":"x"})", "type"},
        {R"({"type":7})", "type"},
        {R"({"type":"vessel","id":"v","name":"V","material":"glass"})", "capacity_ml"},
        {R"({"type":"vessel","id":"v","name":"V","capacity_ml":1,"material":"wood"})", "material"},
        {R"({"type":"vessel","id":"v","name":"V","capacity_ml":1,"material":"pet","squeezed":1})",
         "squeezed"},
        {R"({"type":"solution","id":"s","name":"S"})", "role"},
        {R"({"type":"solution","id":"s","name":"S","role":"tea"})", "role"},
        {R"({"type":"solution","id":"s","name":"S","role":"stop","wear":"none"})", "wear"},
        {R"({"type":"solution","id":"s","name":"S","role":"stop","wear":{}})", "wear.rule"},
        {R"({"type":"solution","id":"s","name":"S","role":"stop","wear":{"rule":"per-film"}})",
         "wear.percent"},
        {R"({"type":"solution","id":"s","name":"S","role":"stop","wear":{"rule":"steps"}})",
         "wear.steps"},
        {R"({"type":"solution","id":"s","name":"S","role":"stop","wear":{"rule":"steps","steps":[]}})",
         "wear.steps"},
        {R"({"type":"solution","id":"s","name":"S","role":"stop","keeping":{"full_days":"long"}})",
         "keeping.full_days"},
        {R"({"type":"solution","id":"s","name":"S","role":"stop","sources":{"q10":1}})",
         "sources.q10"},
        {R"({"type":"film","id":"f"})", "run"},
        {R"({"type":"packet","id":"p"})", "solution"},
        {R"({"type":"packet","id":"p","solution":"s","bought":"soon"})", "bought"},
        {R"({"type":"chemical"})", "name"},
        {R"({"type":"book","version":1})", "format"},
        {R"({"type":"book","format":"diary","version":1})", "format"},
        {R"({"type":"book","format":"ullage-journal"})", "version"},
        {R"({"type":"book","format":"ullage-journal","version":"1"})", "version"},
        {R"({"type":"book","format":"ullage-journal","version":0})", "version"},
    };
    for (const auto& [text, field] : cases) {
        EXPECT_EQ(refusal(text).field, field) << text;
    }
}

TEST(JournalCodec, NamesTheVersionThatANewerJournalNeeds)
{
    EXPECT_TRUE(decodeLine(R"({"type":"book","format":"ullage-journal","version":1})"));
    EXPECT_TRUE(decodeLine(R"({"type":"book","format":"ullage-journal","version":2})"));
    const Error error = refusal(R"({"type":"book","format":"ullage-journal","version":3})");
    EXPECT_EQ(error.code, ErrorCode::NewerBook);
    EXPECT_EQ(error.number, 3);
}

TEST(JournalCodec, WritesNumbersSoThatTheyReadBackTheSame)
{
    Event event{"e", "b", {}, Drawn{chemistry::Millilitres(0.1 + 0.2), {}}, {}};
    for (const double number : {0.1 + 0.2, 1.0 / 3, 1e6, 1e-7, 123456789.0, 1e22, 2.5}) {
        event.what = Drawn{chemistry::Millilitres(number), {}};
        const auto back = read(encode({event, {}}));
        EXPECT_EQ(std::get<Drawn>(std::get<Event>(back.what).what).volume.value(), number);
    }
    event.what = Drawn{chemistry::Millilitres(1'000'000), {}};
    EXPECT_EQ(encode({event, {}}), R"({"type":"event","id":"e","batch":"b","kind":"drawn",)"
                                   R"("at":"1970-01-01T00:00:00Z","volume_ml":1000000})");
}

TEST(JournalCodec, ComparesContentByValue)
{
    EXPECT_TRUE(sameContent(R"({"a":1.0,"b":[1e2]})", R"({"b":[100],"a":1})"));
    EXPECT_FALSE(sameContent(R"({"a":1})", R"({"a":2})"));
    EXPECT_FALSE(sameContent(R"({"a":1})", R"({"a":"1"})"));
    EXPECT_FALSE(sameContent(R"({"a":1})", R"({"a":1,"b":0})"));
}

TEST(JournalCodec, ReadsADevelopmentTimeWithEverything)
{
    const auto entry = read(
        R"({"type":"development-time","id":"t","film":"Quay 400","developer":"mq","dilution":"1+1",)"
        R"("ei":800,"times":[{"temperature_c":20,"seconds":570},{"temperature_c":24,"seconds":420}],)"
        R"("source":"the leaflet","notes":"n","replaces":"old"})");
    const auto& figure = std::get<formulary::DevelopmentFigure>(entry.what);
    EXPECT_EQ(figure.film, "Quay 400");
    EXPECT_EQ(figure.developer, "mq");
    EXPECT_EQ(figure.dilution, "1+1");
    EXPECT_EQ(figure.exposureIndex, 800);
    ASSERT_EQ(figure.times.size(), 2u);
    EXPECT_EQ(figure.times[1].temperature, chemistry::Celsius(24));
    EXPECT_EQ(figure.times[1].time, chemistry::Seconds(420));
    EXPECT_EQ(figure.source, "the leaflet");
    EXPECT_EQ(figure.notes, "n");
    EXPECT_EQ(figure.replaces, "old");
    EXPECT_FALSE(figure.withdrawn);
    EXPECT_EQ(encode({entry.what, {}}), QByteArray::fromStdString(entry.body));
}

TEST(JournalCodec, AWithdrawnDevelopmentTimeNeedsNoTimes)
{
    const auto entry = read(
        R"({"type":"development-time","id":"t","film":"f","developer":"mq","replaces":"old","withdrawn":true})");
    EXPECT_TRUE(std::get<formulary::DevelopmentFigure>(entry.what).withdrawn);
    EXPECT_EQ(encode({entry.what, {}}), QByteArray::fromStdString(entry.body));
    EXPECT_EQ(refusal(R"({"type":"development-time","id":"t","film":"f","developer":"mq"})").field,
              "times");
    EXPECT_EQ(refusal(R"({"type":"development-time","id":"t","film":"f","developer":"mq",)"
                      R"("times":[{"temperature_c":"20","seconds":1}]})")
                  .field,
              "times.temperature_c");
}
