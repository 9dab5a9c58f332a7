// Appending, importing and reporting through the store, and the same rows through SQLite's own
// interface, for comparison within one run on one machine.
#include "core/store/journal_reader.h"
#include "core/store/journal_writer.h"
#include "core/store/report_json.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QTemporaryDir>

#include <benchmark/benchmark.h>
#include <sqlite3.h>

#include <cstdlib>

using namespace ullage;
using namespace ullage::store;

namespace
{

chemistry::Instant now() { return std::chrono::sys_days(std::chrono::year(2027) / 1 / 1); }

// A bench that goes on after a failure would measure nothing.
template <class T>
T need(Result<T> result)
{
    if (!result) {
        std::abort();
    }
    if constexpr (!std::is_void_v<T>) {
        return std::move(*result);
    }
}

QByteArray event(const QByteArray& id, const QByteArray& batch, int minute, const QByteArray& rest)
{
    const auto at =
        std::chrono::sys_days(std::chrono::year(2026) / 1 / 1) + std::chrono::minutes(minute);
    const auto day = std::chrono::floor<std::chrono::days>(at);
    const std::chrono::year_month_day date(day);
    const auto minutes = static_cast<int>((at - day).count());
    const QByteArray text =
        QString::asprintf("%04d-%02u-%02uT%02d:%02d:00Z", static_cast<int>(date.year()),
                          static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                          minutes / 60, minutes % 60)
            .toUtf8();
    return R"({"type":"event","id":")" + id + R"(","batch":")" + batch + R"(","kind":)" + rest +
           R"(,"at":")" + text + "\"}\n";
}

QByteArray journal(int batches, int eventsEach)
{
    QByteArray text =
        R"({"type":"book","format":"ullage-journal","version":1})"
        "\n"
        R"({"type":"solution","id":"mq","name":"MQ","role":"developer","capacity_films_per_litre":1000,"wear":{"rule":"per-film","percent":10},"keeping":{"full_days":182.625,"half_days":60.875}})"
        "\n"
        R"({"type":"vessel","id":"b1","name":"Amber","capacity_ml":1030,"material":"glass"})"
        "\n";
    for (int batch = 0; batch < batches; ++batch) {
        const QByteArray id = "d" + QByteArray::number(batch);
        text += event(id + "-m", id, batch,
                      R"("mixed","solution":"mq","vessel":"b1","volume_ml":1000)");
        for (int i = 0; i < eventsEach; ++i) {
            text += event(id + '-' + QByteArray::number(i), id, batch + i * 60 + 1,
                          R"("processed","films":[{"format":"135-36","count":1}])");
        }
    }
    return text;
}

struct Opened {
    QTemporaryDir folder;
    std::unique_ptr<SqlStore> store;
    std::unique_ptr<ledger::Book> book;
    int ids = 0;

    Opened()
    {
        store = need(SqlStore::open(folder.filePath("b.ullage"), {.access = Access::Create}));
        book = need(ledger::Book::open(*store, now,
                                       [this] { return std::to_string(++ids).insert(0, 1, 'i'); }));
    }
    void import(QByteArray text)
    {
        QBuffer device(&text);
        device.open(QIODevice::ReadOnly);
        need(importJournal(*book, *store, device, {}));
    }
};

// The file that the store would make, opened through SQLite's own interface.
struct Raw {
    QTemporaryDir folder;
    sqlite3* database = nullptr;
    sqlite3_stmt* insert = nullptr;
    int ids = 0;

    Raw()
    {
        const QString path = folder.filePath("b.ullage");
        need(SqlStore::open(path, {.access = Access::Create})).reset();
        sqlite3_open(path.toUtf8().constData(), &database);
        run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;"
            "INSERT INTO action (mode, what, subject) VALUES (3, 'x', 'x')");
        sqlite3_prepare_v2(database,
                           "INSERT INTO entry (type, id, action, batch, kind, at_ms, body) VALUES "
                           "('event', ?, 1, 'b', 'noted', 5, ?)",
                           -1, &insert, nullptr);
    }
    ~Raw()
    {
        sqlite3_finalize(insert);
        sqlite3_close(database);
    }
    Raw(const Raw&) = delete;
    Raw& operator=(const Raw&) = delete;
    void run(const char* sql) const
    {
        if (sqlite3_exec(database, sql, nullptr, nullptr, nullptr) != SQLITE_OK) {
            std::abort();
        }
    }
    void put(const QByteArray& body)
    {
        const QByteArray id = QByteArray::number(++ids);
        sqlite3_bind_text(insert, 1, id.constData(), -1, SQLITE_TRANSIENT);
        sqlite3_bind_text(insert, 2, body.constData(), -1, SQLITE_TRANSIENT);
        if (sqlite3_step(insert) != SQLITE_DONE) {
            std::abort();
        }
        sqlite3_reset(insert);
    }
};

const QByteArray kBody =
    event("x", "b", 1, R"("processed","films":[{"format":"135-36","count":1}])").chopped(1);

// One deed, one transaction, on the disk when it returns.
void appendOne(benchmark::State& state)
{
    Opened opened;
    opened.import(journal(1, 0));
    for (auto _ : state) {
        need(opened.book->record("d0", ledger::Noted{"a note"}, {now(), {}}));
    }
}
BENCHMARK(appendOne)->Unit(benchmark::kMicrosecond)->Iterations(500);

void appendOneRaw(benchmark::State& state)
{
    Raw raw;
    for (auto _ : state) {
        raw.run("BEGIN IMMEDIATE");
        raw.put(kBody);
        raw.run("COMMIT");
    }
}
BENCHMARK(appendOneRaw)->Unit(benchmark::kMicrosecond)->Iterations(500);

void importJournalOf(benchmark::State& state)
{
    const auto batches = static_cast<int>(state.range(0));
    const QByteArray text = journal(batches, 19);
    for (auto _ : state) {
        state.PauseTiming();
        auto opened = std::make_unique<Opened>();
        state.ResumeTiming();
        opened->import(text);
        state.PauseTiming();
        opened.reset();
        state.ResumeTiming();
    }
    state.SetItemsProcessed(state.iterations() * batches * 20);
}
BENCHMARK(importJournalOf)->Arg(50)->Arg(500)->Unit(benchmark::kMillisecond);

void importRaw(benchmark::State& state)
{
    const auto rows = static_cast<int>(state.range(0)) * 20;
    for (auto _ : state) {
        state.PauseTiming();
        auto raw = std::make_unique<Raw>();
        state.ResumeTiming();
        raw->run("BEGIN IMMEDIATE");
        for (int i = 0; i < rows; ++i) {
            raw->put(kBody);
        }
        raw->run("COMMIT");
        state.PauseTiming();
        raw.reset();
        state.ResumeTiming();
    }
    state.SetItemsProcessed(state.iterations() * rows);
}
BENCHMARK(importRaw)->Arg(50)->Arg(500)->Unit(benchmark::kMillisecond);

// A fresh program on a book with much history: what start-up and `ullage report` wait for.
void reportOfOpenBatches(benchmark::State& state)
{
    Opened opened;
    opened.import(journal(static_cast<int>(state.range(0)), 19));
    for (auto _ : state) {
        auto book = need(ledger::Book::open(*opened.store, now, [] { return std::string("x"); }));
        benchmark::DoNotOptimize(reportJson(need(book->batches(now()))));
    }
}
BENCHMARK(reportOfOpenBatches)->Arg(6)->Arg(60)->Unit(benchmark::kMillisecond);

void exportAll(benchmark::State& state)
{
    Opened opened;
    opened.import(journal(500, 19));
    for (auto _ : state) {
        QBuffer device;
        device.open(QIODevice::WriteOnly);
        benchmark::DoNotOptimize(need(exportJournal(*opened.store, device)));
    }
    state.SetItemsProcessed(state.iterations() * 10'000);
}
BENCHMARK(exportAll)->Unit(benchmark::kMillisecond);

void readAllRaw(benchmark::State& state)
{
    Raw raw;
    raw.run("BEGIN IMMEDIATE");
    for (int i = 0; i < 10'000; ++i) {
        raw.put(kBody);
    }
    raw.run("COMMIT");
    for (auto _ : state) {
        sqlite3_stmt* all = nullptr;
        sqlite3_prepare_v2(raw.database, "SELECT body FROM entry ORDER BY seq", -1, &all, nullptr);
        qint64 bytes = 0;
        while (sqlite3_step(all) == SQLITE_ROW) {
            bytes += sqlite3_column_bytes(all, 0);
        }
        sqlite3_finalize(all);
        benchmark::DoNotOptimize(bytes);
    }
    state.SetItemsProcessed(state.iterations() * 10'000);
}
BENCHMARK(readAllRaw)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
