#include "core/store/report_json.h"
#include "tests/core/store/temp_book.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;
using chemistry::Celsius;
using chemistry::Films;
using chemistry::Seconds;

namespace
{

ledger::Batch developer(TempBook& book)
{
    EXPECT_TRUE(book.import(kStart));
    const auto at = std::chrono::sys_days(std::chrono::year(2026) / 6 / 10);
    return *book.book->batch("dev-1", at);
}

constexpr chemistry::TimeAtTemperature kPair{Celsius(20), Seconds(570)};

} // namespace

TEST(ReportJson, HasTheKeysInTheirOrder)
{
    TempBook book;
    const ledger::Batch batch = developer(book);
    const QByteArray text = reportJson({&batch, 1});
    qsizetype last = 0;
    for (const char* key : {"batch",
                            "name",
                            "solution",
                            "volume_ml",
                            "films_done",
                            "wear_films_per_litre",
                            "films_left",
                            "wear_factor",
                            "age_days",
                            "oxygen_mmol_per_litre",
                            "oxygen_limit_mmol_per_litre",
                            "age_part",
                            "air_part",
                            "standing_used",
                            "silver_g_per_litre",
                            "bromide_mg_per_litre",
                            "openings",
                            "air_ml",
                            "discard_by",
                            "verdict",
                            "reasons",
                            "last_film",
                            "clearing",
                            "fix_s"}) {
        const qsizetype at = text.indexOf('"' + QByteArray(key) + "\":");
        EXPECT_GT(at, last) << key;
        last = at;
    }
    const auto one = QJsonDocument::fromJson(text).array().at(0).toObject();
    EXPECT_EQ(one.size(), 24);
    EXPECT_EQ(one["volume_ml"].toDouble(), 980);
    EXPECT_EQ(one["wear_factor"].toDouble(), 1.2);
    EXPECT_TRUE(one["clearing"].isNull());
    EXPECT_TRUE(one["fix_s"].isNull());
    EXPECT_EQ(reportJson({}), "[]\n");
}

TEST(ReportJson, SaysNullForWhatIsNotKnown)
{
    TempBook book;
    ASSERT_TRUE(book.import(
        kHead + R"({"type":"solution","id":"s","name":"Stop","role":"stop"})" + "\n" + kVessel +
        R"({"type":"event","id":"m","batch":"b","kind":"mixed","at":"2026-06-01T10:00:00Z","solution":"s","vessel":"b1","volume_ml":500})"));
    const auto batches = book.book->batches(testNow());
    const auto one = QJsonDocument::fromJson(reportJson(*batches)).array().at(0).toObject();
    for (const char* key : {"films_left", "oxygen_limit_mmol_per_litre", "age_part", "air_part",
                            "standing_used", "discard_by", "last_film", "clearing", "fix_s"}) {
        EXPECT_TRUE(one.value(QLatin1String(key)).isNull()) << key;
    }
    EXPECT_EQ(one["verdict"].toString(), "good");
}

TEST(NextTime, MultipliesFactorByFactor)
{
    TempBook book;
    auto batch = developer(book);
    batch.stripFactor = 1.05;
    const auto next = nextTime(batch, {&kPair, 1}, Celsius(20), Films(1));
    ASSERT_TRUE(next);
    EXPECT_EQ(next->base, Seconds(570));
    EXPECT_DOUBLE_EQ(next->wear, 1.2);
    EXPECT_DOUBLE_EQ(next->time.value(), 570 * 1.2 * 1.05);
    EXPECT_TRUE(next->warnings.empty());
    const auto json = QJsonDocument::fromJson(timeJson(*next)).object();
    EXPECT_EQ(json.keys(),
              (QStringList{"base_s", "seconds", "strip", "temperature_c", "warnings", "wear"}));
}

TEST(NextTime, Warns)
{
    TempBook book;
    const auto batch = developer(book);
    const auto next = nextTime(batch, {&kPair, 1}, Celsius(26), Films(9));
    ASSERT_TRUE(next);
    EXPECT_EQ(next->warnings, (std::vector<std::string_view>{"outside-usual-range", "extrapolated",
                                                             "not-enough-films-left"}));
}

TEST(NextTime, RefusesWhatGivesNoTime)
{
    TempBook book;
    auto batch = developer(book);
    EXPECT_FALSE(nextTime(batch, {&kPair, 1}, Celsius(200), Films(1)));
    EXPECT_FALSE(nextTime(batch, {}, Celsius(20), Films(1)));
    auto stop = *batch.solution;
    stop.role = formulary::Role::Stop;
    auto other = batch;
    other.solution = std::make_shared<formulary::Solution>(stop);
    EXPECT_EQ(nextTime(other, {&kPair, 1}, Celsius(20), Films(1)).error().code,
              ErrorCode::NotSuitable);
    batch.end = ledger::BatchEnd::Discarded;
    EXPECT_EQ(nextTime(batch, {&kPair, 1}, Celsius(20), Films(1)).error().code,
              ErrorCode::AfterEnd);
}
