// The day book over a million events, beside the plainest statement that SQLite's own interface can
// run for the same rows: within one run on one machine, so that only the ratio counts.
#include "core/store/day_book.h"
#include "core/store/digest.h"

#include <QCoreApplication>
#include <QTemporaryDir>

#include <benchmark/benchmark.h>
#include <sqlite3.h>

#include <cstdio>
#include <cstdlib>

using namespace ullage;
using namespace ullage::store;

namespace
{

constexpr int kEvents = 1'000'000;
constexpr int kEach = 50; // events a batch
constexpr std::int64_t kMinute = 60'000;

// A bench that goes on after a failure would measure nothing.
template <class T>
T need(Result<T> result)
{
    if (!result) {
        std::abort();
    }
    return std::move(*result);
}

void run(sqlite3* database, const char* sql)
{
    if (sqlite3_exec(database, sql, nullptr, nullptr, nullptr) != SQLITE_OK) {
        std::abort();
    }
}

struct Million {
    QTemporaryDir folder;
    QString path = folder.filePath(QStringLiteral("million.ullage"));
    std::unique_ptr<SqlStore> store;
    sqlite3* raw = nullptr;

    Million()
    {
        store = need(SqlStore::open(path, {.access = Access::Create}));
        sqlite3_open(path.toUtf8().constData(), &raw);
        run(raw, "PRAGMA synchronous = OFF; BEGIN;"
                 "INSERT INTO action (mode, what, subject) VALUES (3, 'x', 'x')");
        sqlite3_stmt* insert = nullptr;
        sqlite3_prepare_v2(raw,
                           "INSERT INTO entry (type, id, action, batch, kind, at_ms, run, body, "
                           "hash) VALUES ('event', ?, 1, ?, ?, ?, ?, ?, ?)",
                           -1, &insert, nullptr);
        LineHasher hasher;
        Digest hash = kNothing;
        for (int i = 0; i < kEvents; ++i) {
            const QByteArray id = QByteArray::number(i);
            const QByteArray batch = "b" + QByteArray::number(i / kEach);
            const bool film = i % 2 == 0;
            const QByteArray run = "r" + QByteArray::number(i / 4); // two baths each
            const QByteArray head = R"({"type":"event","id":")" + id + R"(","batch":")" + batch +
                                    R"(","kind":")" + (film ? "processed" : "noted") +
                                    R"(","at":"2026-06-01T10:00:00Z",)";
            const QByteArray body =
                film ? head + R"("films":[{"format":"120","count":1}],"run":")" + run + "\"}"
                     : head + R"("text":"note )" + id + "\"}";
            sqlite3_bind_text(insert, 1, id.constData(), -1, SQLITE_TRANSIENT);
            sqlite3_bind_text(insert, 2, batch.constData(), -1, SQLITE_TRANSIENT);
            sqlite3_bind_text(insert, 3, film ? "processed" : "noted", -1, SQLITE_STATIC);
            sqlite3_bind_int64(insert, 4, i * kMinute);
            if (film) {
                sqlite3_bind_text(insert, 5, run.constData(), -1, SQLITE_TRANSIENT);
            } else {
                sqlite3_bind_null(insert, 5);
            }
            sqlite3_bind_text(insert, 6, body.constData(), -1, SQLITE_TRANSIENT);
            hash = hasher.next(hash, "event", id, body);
            sqlite3_bind_blob(insert, 7, hash.data(), static_cast<int>(hash.size()),
                              SQLITE_TRANSIENT);
            if (sqlite3_step(insert) != SQLITE_DONE) {
                std::abort();
            }
            sqlite3_reset(insert);
        }
        sqlite3_finalize(insert);
        run(raw, "INSERT INTO batch (id, name, solution, mixed_ms) SELECT DISTINCT batch, 'Dev ' "
                 "|| batch, 'mq', 0 "
                 "FROM entry; COMMIT");
    }
    ~Million() { sqlite3_close(raw); }
    Million(const Million&) = delete;
    Million& operator=(const Million&) = delete;
};

Million& million()
{
    static Million made;
    return made;
}

void rawRows(benchmark::State& state, const char* sql)
{
    sqlite3* raw = million().raw;
    for (auto _ : state) {
        sqlite3_stmt* rows = nullptr;
        sqlite3_prepare_v2(raw, sql, -1, &rows, nullptr);
        qint64 bytes = 0;
        while (sqlite3_step(rows) == SQLITE_ROW) {
            bytes += sqlite3_column_bytes(rows, 0);
        }
        sqlite3_finalize(rows);
        benchmark::DoNotOptimize(bytes);
    }
}

void pageOf(benchmark::State& state, const DayFilter& filter, const std::optional<DayKey>& after)
{
    DayBook days(*million().store);
    for (auto _ : state) {
        const DayPage page = need(days.page(filter, after, 200));
        for (const DayEntry& entry : page.entries) {
            if (entry.fault) { // a refused row is cheaper than a shown one
                std::fprintf(stderr, "%s %s\n", entry.fault->subject.c_str(),
                             entry.fault->text.c_str());
                std::abort();
            }
        }
    }
}

// The first page and one from the middle cost the same: that is the point.
void firstPage(benchmark::State& state) { pageOf(state, {}, {}); }
void middlePage(benchmark::State& state)
{
    pageOf(state, {}, DayKey{kEvents / 2 * kMinute, kEvents / 2});
}
void lastPage(benchmark::State& state) { pageOf(state, {}, DayKey{300 * kMinute, 300}); }
void pageOfABottle(benchmark::State& state) { pageOf(state, {.batch = "b77"}, {}); }
void pageOfAKind(benchmark::State& state) { pageOf(state, {.kinds = {"noted"}}, {}); }
void rawFirstPage(benchmark::State& state)
{
    rawRows(state, "SELECT body FROM entry WHERE at_ms IS NOT NULL ORDER BY at_ms DESC LIMIT 200");
}
BENCHMARK(firstPage)->Unit(benchmark::kMicrosecond);
BENCHMARK(middlePage)->Unit(benchmark::kMicrosecond);
BENCHMARK(lastPage)->Unit(benchmark::kMicrosecond);
BENCHMARK(pageOfABottle)->Unit(benchmark::kMicrosecond);
BENCHMARK(pageOfAKind)->Unit(benchmark::kMicrosecond);
BENCHMARK(rawFirstPage)->Unit(benchmark::kMicrosecond);

void countAll(benchmark::State& state)
{
    DayBook days(*million().store);
    for (auto _ : state) {
        benchmark::DoNotOptimize(need(days.count({})));
    }
}
BENCHMARK(countAll)->Unit(benchmark::kMillisecond)->Iterations(2);

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
