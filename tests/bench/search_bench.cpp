// Looking for words in a million entries: by the index, on foot, and the plainest query that
// SQLite's own interface can ask of a full-text table of the same texts, within one run on one
// machine.
#include "core/store/day_book.h"
#include "core/store/digest.h"
#include "core/store/search_index.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QTemporaryDir>

#include <benchmark/benchmark.h>
#include <sqlite3.h>

#include <array>
#include <cstdio>
#include <cstdlib>

using namespace ullage;
using namespace ullage::store;

namespace
{

constexpr int kEvents = 1'000'000;
constexpr int kEach = 50; // events a batch, the mixing first
constexpr std::int64_t kMinute = 60'000;
constexpr int kPage = 200;

// A bench that goes on after a failure would measure nothing.
template <class T>
T need(Result<T> result)
{
    if (!result) {
        std::fprintf(stderr, "%s\n", result.error().text.c_str());
        std::abort();
    }
    return std::move(*result);
}

void run(sqlite3* database, const char* sql)
{
    if (sqlite3_exec(database, sql, nullptr, nullptr, nullptr) != SQLITE_OK) {
        std::fprintf(stderr, "%s\n", sqlite3_errmsg(database));
        std::abort();
    }
}

// Rows as the store would put them, each with its hash: a page shows proven lines only.
class Inserter
{
public:
    explicit Inserter(sqlite3* database)
    {
        sqlite3_prepare_v2(database,
                           "INSERT INTO entry (type, id, action, batch, kind, at_ms, run, person, "
                           "body, hash) VALUES (?, ?, 1, ?, ?, ?, ?, ?, ?, ?)",
                           -1, &m_insert, nullptr);
    }
    ~Inserter() { sqlite3_finalize(m_insert); }
    Inserter(const Inserter&) = delete;
    Inserter& operator=(const Inserter&) = delete;

    void put(const char* type, const QByteArray& id, const QByteArray& batch, const char* kind,
             std::int64_t at, const QByteArray& run, const QByteArray& by, const QByteArray& rest)
    {
        QByteArray body = QByteArray(R"({"type":")") + type + R"(","id":")" + id + '"';
        const auto add = [&](const char* key, const QByteArray& value) {
            if (!value.isEmpty()) {
                body += QByteArray(",\"") + key + "\":\"" + value + '"';
            }
        };
        add("batch", batch);
        add("kind", kind);
        if (kind) {
            add("at", "2026-06-01T10:00:00Z");
        }
        add("run", run);
        add("by", by);
        body += rest + '}';
        bind(1, type);
        bind(2, id);
        bind(3, batch);
        bind(4, kind);
        if (kind) {
            sqlite3_bind_int64(m_insert, 5, at);
        } else {
            sqlite3_bind_null(m_insert, 5);
        }
        bind(6, run);
        bind(7, by);
        bind(8, body);
        m_hash = m_hasher.next(m_hash, type, id, body);
        sqlite3_bind_blob(m_insert, 9, m_hash.data(), static_cast<int>(m_hash.size()),
                          SQLITE_TRANSIENT);
        if (sqlite3_step(m_insert) != SQLITE_DONE) {
            std::abort();
        }
        sqlite3_reset(m_insert);
    }

private:
    void bind(int place, const QByteArray& text)
    {
        if (text.isEmpty()) {
            sqlite3_bind_null(m_insert, place);
        } else {
            sqlite3_bind_text(m_insert, place, text.constData(), -1, SQLITE_TRANSIENT);
        }
    }
    sqlite3_stmt* m_insert = nullptr;
    LineHasher m_hasher;
    Digest m_hash = kNothing;
};

// Twenty thousand bottles of forty solutions, each mixed, used in twelve runs with the bottle
// beside it, and noted upon; one entry in fifty is of long ago.
struct Million {
    QTemporaryDir folder;
    QString path = folder.filePath(QStringLiteral("million.ullage"));
    QString cache = folder.filePath(QStringLiteral("cache"));
    std::unique_ptr<SqlStore> store;
    std::unique_ptr<SearchIndex> index;
    sqlite3* raw = nullptr;

    Million()
    {
        store = need(SqlStore::open(path, {.access = Access::Create}));
        sqlite3_open(path.toUtf8().constData(), &raw);
        run(raw, "PRAGMA synchronous = OFF; BEGIN;"
                 "INSERT INTO action (mode, what, subject) VALUES (3, 'x', 'x')");
        {
            Inserter entries(raw);
            for (int i = 0; i < 40; ++i) {
                const QByteArray number = QByteArray::number(i);
                entries.put("solution", "s" + number, {}, nullptr, 0, {}, {},
                            R"(,"role":"developer","name":"Borax developer, stock )" + number +
                                '"');
            }
            for (int i = 0; i < kEvents; ++i) {
                put(entries, i);
            }
        }
        run(raw, "INSERT INTO batch (id, name, solution, mixed_ms) SELECT batch, "
                 "json_extract(body, '$.name'), "
                 "json_extract(body, '$.solution'), at_ms FROM entry WHERE kind = 'mixed';"
                 "COMMIT");
        QElapsedTimer timer;
        timer.start();
        need(SearchKeeper::catchUp(*store, cache));
        index = SearchIndex::open(*store, cache);
        std::printf("index of %d entries: %.1f s, %.0f MB beside a book of %.0f MB\n", kEvents,
                    static_cast<double>(timer.elapsed()) / 1000,
                    static_cast<double>(QFileInfo(searchIndexFile(*store, cache)).size()) / 1e6,
                    static_cast<double>(QFileInfo(path).size()) / 1e6);
    }
    ~Million() { sqlite3_close(raw); }
    Million(const Million&) = delete;
    Million& operator=(const Million&) = delete;

    static void put(Inserter& entries, int i)
    {
        static const std::array<QByteArray, 4> people{"Ada", "Bo", "Carla", "Dmitri"};
        static const std::array<QByteArray, 3> films{"Harbour 400", "Pier 100", "North Light 3200"};
        const auto at = (i % 50 == 49 ? i / 2 : i) * kMinute;
        const QByteArray id = QByteArray::number(i);
        const int batch = i / kEach;
        const QByteArray name = "b" + QByteArray::number(batch);
        const QByteArray by = people[static_cast<std::size_t>(i) % people.size()];
        const QByteArray runId = "r" + QByteArray::number(i / 4);
        if (i % kEach == 0) {
            entries.put("event", id, name, "mixed", at, {}, by,
                        R"(,"solution":"s)" + QByteArray::number(batch % 40) +
                            R"(","vessel":"v","volume_ml":1000,"name":"Dev )" +
                            QByteArray::number(batch) + '"');
        } else if (i % 4 == 3) {
            entries.put("film", "f" + id, {}, nullptr, 0, runId, {},
                        R"(,"format":"120","name":")" +
                            films[static_cast<std::size_t>(i) % films.size()] + R"( roll )" +
                            QByteArray::number(i / 7) + '"');
        } else if (i % 4 == 1) {
            entries.put("event", id, name, "noted", at, {}, by,
                        R"(,"text":"water from the tap, note )" + id + '"');
        } else {
            entries.put("event", id, name, "processed", at, runId, by,
                        R"(,"films":[{"format":"120","count":1}])");
        }
    }
};

Million& million()
{
    static Million made;
    return made;
}

DayFilter looking(const char* words) { return {.words = dayWords(QString::fromUtf8(words))}; }

void firstPage(benchmark::State& state, const DayFilter& filter, bool byIndex)
{
    Million& on = million();
    std::size_t rows = 0;
    for (auto _ : state) {
        // As the window does: a day book of its own for each search.
        DayBook days(*on.store, byIndex ? on.index.get() : nullptr);
        std::optional<DayKey> after;
        rows = 0;
        while (true) {
            const DayPage page = need(days.page(filter, after, kPage - static_cast<int>(rows)));
            rows += page.entries.size();
            for (const DayEntry& entry : page.entries) {
                if (entry.fault) {
                    std::abort(); // a refused row is cheaper than a shown one
                }
            }
            if (!page.more || rows >= kPage) {
                break;
            }
            after = page.last;
        }
    }
    state.counters["rows"] = static_cast<double>(rows);
}

void rawMatch(benchmark::State& state, const char* match)
{
    Million& on = million();
    sqlite3* raw = nullptr;
    sqlite3_open(searchIndexFile(*on.store, on.cache).toUtf8().constData(), &raw);
    int rows = 0;
    for (auto _ : state) {
        sqlite3_stmt* found = nullptr;
        sqlite3_prepare_v2(raw, "SELECT rowid FROM words WHERE words MATCH ? LIMIT 200", -1, &found,
                           nullptr);
        sqlite3_bind_text(found, 1, match, -1, SQLITE_STATIC);
        rows = 0;
        while (sqlite3_step(found) == SQLITE_ROW) {
            ++rows;
        }
        sqlite3_finalize(found);
    }
    sqlite3_close(raw);
    state.counters["rows"] = rows;
}

DayFilter runsOnly()
{
    DayFilter filter = looking("harbour");
    filter.kinds = {"processed"};
    return filter;
}
DayFilter longAgo()
{
    DayFilter filter = looking("water");
    filter.until = chemistry::Instant(std::chrono::milliseconds(1000 * kMinute));
    return filter;
}
DayFilter roleOf(const char* role)
{
    DayFilter filter = looking(role);
    for (int i = 0; i < 40; ++i) {
        filter.words[0].solutions.push_back("s" + std::to_string(i));
    }
    return filter;
}
DayFilter kindOf(const char* name, const char* kind)
{
    DayFilter filter = looking(name);
    filter.words[0].kinds = {kind};
    return filter;
}

#define ULLAGE_SEARCH(name, filter)                                                                \
    BENCHMARK_CAPTURE(firstPage, name, filter, true)->Unit(benchmark::kMillisecond)
ULLAGE_SEARCH(rareWord, looking("999997"));
ULLAGE_SEARCH(commonWord, looking("water"));
ULLAGE_SEARCH(commonWordLongAgo, longAgo());
ULLAGE_SEARCH(bottle, looking("Dev 1234"));
ULLAGE_SEARCH(manyBottles, looking("Dev 14"));
ULLAGE_SEARCH(filmName, looking("harbour"));
ULLAGE_SEARCH(filmNameInRuns, runsOnly());
ULLAGE_SEARCH(solutionName, looking("borax stock"));
ULLAGE_SEARCH(oldestBottleOfCommonName, looking("Dev 0 stock"));
ULLAGE_SEARCH(person, looking("Carla"));
ULLAGE_SEARCH(twoWords, looking("carla 99999"));
ULLAGE_SEARCH(roleShownByTheProgram, roleOf("entwickler"));
ULLAGE_SEARCH(kindShownByTheProgram, kindOf("gemischt", "mixed"));
ULLAGE_SEARCH(nothingLikeIt, looking("nowhere"));
ULLAGE_SEARCH(commonPartsRareWhole, looking("tap, wat"));
BENCHMARK_CAPTURE(rawMatch, rareWord, R"("999" AND "997")")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(rawMatch, commonWord, R"("wat" AND "ate" AND "ter")")
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(rawMatch, filmName, R"("har" AND "arb" AND "rbo" AND "bou" AND "our")")
    ->Unit(benchmark::kMillisecond);

// Without an index, or with words too short for one.
BENCHMARK_CAPTURE(firstPage, twoLetters, looking("Bo"), true)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(firstPage, commonOnFoot, looking("water"), false)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(firstPage, nothingOnFoot, looking("nowhere"), false)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1);

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
