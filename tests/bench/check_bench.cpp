// Checking a large book, beside the plainest reading of the same rows that SQLite's own interface
// can do: within one run on one machine, so that only the ratio counts.
//
// ULLAGE_BENCH_EVENTS says how many events (a million), in batches of fifty.
#include "core/store/chain.h"
#include "core/store/integrity.h"
#include "core/store/journal_writer.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QElapsedTimer>
#include <QTemporaryDir>

#include <benchmark/benchmark.h>
#include <sqlite3.h>
#include <sys/resource.h>

#include <cstdio>
#include <cstdlib>

using namespace ullage;
using namespace ullage::store;

namespace
{

constexpr int kEach = 50; // events a batch
constexpr int kInUse = 100;
constexpr std::int64_t kStart = 1'577'872'800'000; // 2020-01-01T10:00:00Z
constexpr std::int64_t kHour = 3'600'000;
constexpr int kStepBefore = 4;
const QByteArray kPerson("the one at the sink"); // of a run

int events()
{
    const int asked = qEnvironmentVariableIntValue("ULLAGE_BENCH_EVENTS");
    return asked > 0 ? asked : 1'000'000;
}

// A bench that goes on after a failure would measure nothing.
template <class T>
T need(Result<T> result)
{
    if (!result) {
        std::fprintf(stderr, "%s\n", result.error().text.c_str());
        std::abort();
    }
    if constexpr (!std::is_void_v<T>) {
        return std::move(*result);
    }
}

void run(sqlite3* database, const char* sql)
{
    if (sqlite3_exec(database, sql, nullptr, nullptr, nullptr) != SQLITE_OK) {
        std::fprintf(stderr, "%s\n", sqlite3_errmsg(database));
        std::abort();
    }
}

QByteArray moment(std::int64_t ms)
{
    const auto at = std::chrono::sys_time<std::chrono::milliseconds>(std::chrono::milliseconds(ms));
    const auto day = std::chrono::floor<std::chrono::days>(at);
    const std::chrono::year_month_day date(day);
    const auto minute = std::chrono::floor<std::chrono::minutes>(at - day).count();
    return QString::asprintf("%04d-%02u-%02uT%02d:%02d:00Z", static_cast<int>(date.year()),
                             static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                             static_cast<int>(minute / 60), static_cast<int>(minute % 60))
        .toUtf8();
}

// A book of the step before the chain, as quickly as rows can be written; the step then checks and
// hashes it.
class Large
{
public:
    Large()
    {
        StoreOptions before;
        before.access = Access::Create;
        before.steps.resize(kStepBefore);
        need(SqlStore::open(path, before)).reset();
        fill();
        QElapsedTimer timer;
        timer.start();
        store = need(SqlStore::open(path));
        std::printf("schema step with its check: %.1f s\n", double(timer.elapsed()) / 1000);
    }

    QTemporaryDir folder;
    QString path = folder.filePath(QStringLiteral("large.ullage"));
    std::unique_ptr<SqlStore> store;

private:
    void fill()
    {
        sqlite3* raw = nullptr;
        sqlite3_open(path.toUtf8().constData(), &raw);
        run(raw, "PRAGMA synchronous = OFF; BEGIN;"
                 "INSERT INTO action (mode, what, subject) VALUES (3, 'import', '');"
                 "INSERT INTO entry (type, id, action, body) VALUES ('solution', 'mq', 1, "
                 R"('{"type":"solution","id":"mq","name":"MQ","role":"developer",)"
                 R"("capacity_films_per_litre":1000,"wear":{"rule":"per-film","percent":10},)"
                 R"("keeping":{"full_days":182.625,"half_days":60.875}}');)"
                 "INSERT INTO entry (type, id, action, body) VALUES ('vessel', 'b1', 1, "
                 R"('{"type":"vessel","id":"b1","name":"Amber","capacity_ml":1030,)"
                 R"("material":"glass"}'))");
        sqlite3_prepare_v2(raw,
                           "INSERT INTO entry (type, id, action, batch, kind, at_ms, volume_ml, "
                           "films, run, person, body) "
                           "VALUES ('event', ?, 1, ?, ?, ?, ?, ?, ?, ?, ?)",
                           -1, &m_insert, nullptr);
        const int batches = events() / kEach;
        for (int batch = 0; batch < batches; ++batch) {
            fillBatch(batch, batch < batches - kInUse);
        }
        sqlite3_finalize(m_insert);
        run(raw, "INSERT INTO batch SELECT batch, 'Dev ' || batch, 'mq', min(at_ms), "
                 "max(CASE WHEN kind = 'discarded' THEN at_ms END) FROM entry "
                 "WHERE batch IS NOT NULL GROUP BY batch; COMMIT");
        sqlite3_close(raw);
    }

    void fillBatch(int batch, bool ends)
    {
        const QByteArray id = "d" + QByteArray::number(batch);
        std::int64_t at = kStart + batch * kHour;
        for (int i = 0; i < kEach; ++i, at += kHour) {
            if (i == 0) {
                put(id, i, "mixed", at, 1000, {}, {},
                    R"("solution":"mq","vessel":"b1","volume_ml":1000,"name":"Dev )" + id + '"');
            } else if (ends && i + 1 == kEach) {
                put(id, i, "discarded", at, {}, {}, {}, R"("how":"poured into the waste can")");
            } else if (i % 2 == 0) {
                const QByteArray run = "run-" + id + '-' + QByteArray::number(i);
                put(id, i, "processed", at, 500, 1, run,
                    R"("films":[{"format":"135-36","count":1}],"used_ml":500,"run":")" + run +
                        R"(","by":")" + kPerson + '"');
            } else {
                put(id, i, "noted", at, {}, {}, {},
                    R"("text":"clear as day, a little darker than last time; agitated every )"
                    R"(minute, dried over night")");
            }
        }
    }

    void put(const QByteArray& batch, int number, const char* kind, std::int64_t at,
             std::optional<double> volume, std::optional<double> films, const QByteArray& run,
             const QByteArray& rest)
    {
        const QByteArray id = batch + "-e" + QByteArray::number(number);
        const QByteArray body = R"({"type":"event","id":")" + id + R"(","batch":")" + batch +
                                R"(","kind":")" + kind + R"(","at":")" + moment(at) + "\"," + rest +
                                '}';
        const auto text = [&](int place, const QByteArray& value) {
            sqlite3_bind_text(m_insert, place, value.constData(), int(value.size()),
                              SQLITE_TRANSIENT);
        };
        const auto real = [&](int place, std::optional<double> value) {
            value ? sqlite3_bind_double(m_insert, place, *value)
                  : sqlite3_bind_null(m_insert, place);
        };
        text(1, id);
        text(2, batch);
        text(3, kind);
        sqlite3_bind_int64(m_insert, 4, at);
        real(5, volume);
        real(6, films);
        run.isEmpty() ? (void)sqlite3_bind_null(m_insert, 7) : text(7, run);
        run.isEmpty() ? (void)sqlite3_bind_null(m_insert, 8) : text(8, kPerson);
        text(9, body);
        if (sqlite3_step(m_insert) != SQLITE_DONE) {
            std::abort();
        }
        sqlite3_reset(m_insert);
    }

    sqlite3_stmt* m_insert = nullptr;
};

Large& large()
{
    static Large made;
    return made;
}

void check(benchmark::State& state)
{
    SqlStore& store = *large().store;
    for (auto _ : state) {
        const auto found = need(checkBook(store));
        if (!found.findings.empty()) {
            std::fprintf(stderr, "%s %s\n", found.findings.front().subject.c_str(),
                         found.findings.front().text.c_str());
            std::abort();
        }
    }
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    state.counters["peak_MB"] = double(used.ru_maxrss) / 1024;
    state.SetItemsProcessed(state.iterations() * events());
}
BENCHMARK(check)->Unit(benchmark::kMillisecond)->Iterations(1);

void chainOnly(benchmark::State& state)
{
    Connection& connection = large().store->connection();
    for (auto _ : state) {
        benchmark::DoNotOptimize(need(verifyChain(connection)));
    }
    state.SetItemsProcessed(state.iterations() * events());
}
BENCHMARK(chainOnly)->Unit(benchmark::kMillisecond)->Iterations(1);

void exportVerified(benchmark::State& state)
{
    class Nowhere : public QIODevice
    {
        qint64 readData(char*, qint64) override { return -1; }
        qint64 writeData(const char*, qint64 length) override { return length; }
    };
    Nowhere device;
    device.open(QIODevice::WriteOnly);
    for (auto _ : state) {
        benchmark::DoNotOptimize(need(exportJournal(*large().store, device)));
    }
    state.SetItemsProcessed(state.iterations() * events());
}
BENCHMARK(exportVerified)->Unit(benchmark::kMillisecond)->Iterations(1);

void sqliteOwnCheck(benchmark::State& state)
{
    Connection& connection = large().store->connection();
    for (auto _ : state) {
        benchmark::DoNotOptimize(need(connection.text(QStringLiteral("PRAGMA integrity_check"))));
    }
}
BENCHMARK(sqliteOwnCheck)->Unit(benchmark::kMillisecond)->Iterations(1);

void readAllRaw(benchmark::State& state)
{
    sqlite3* raw = nullptr;
    sqlite3_open(large().path.toUtf8().constData(), &raw);
    for (auto _ : state) {
        sqlite3_stmt* rows = nullptr;
        sqlite3_prepare_v2(raw, "SELECT * FROM entry ORDER BY seq", -1, &rows, nullptr);
        const int columns = sqlite3_column_count(rows);
        qint64 bytes = 0;
        while (sqlite3_step(rows) == SQLITE_ROW) {
            for (int i = 0; i < columns; ++i) {
                bytes += sqlite3_column_bytes(rows, i);
            }
        }
        sqlite3_finalize(rows);
        benchmark::DoNotOptimize(bytes);
    }
    sqlite3_close(raw);
    state.SetItemsProcessed(state.iterations() * events());
}
BENCHMARK(readAllRaw)->Unit(benchmark::kMillisecond)->Iterations(1);

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
