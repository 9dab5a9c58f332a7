// An import beside bare SQLite: the same rows, read from the book that the import made, inserted
// through SQLite's own interface into the same table with its indexes and triggers, in one
// transaction. Both in one run on one machine, so that the ratio counts; each in a process of its
// own, so that memory counts.
//
//   ullage_import_bench [EVENTS [BATCHES [OPEN]]]
#include "core/store/journal_reader.h"
#include "tests/bench/season_journal.h"

#include <QCoreApplication>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <sqlite3.h>

#include <chrono>
#include <cstdio>
#include <cstdlib>

using namespace ullage;
using namespace ullage::store;

namespace
{

using Steady = std::chrono::steady_clock;
constexpr int kChunk = 20'000; // rows held in memory between two measured stretches

[[noreturn]] void fail(const char* what)
{
    std::fprintf(stderr, "%s\n", what);
    std::exit(1);
}

void need(bool good, const char* what)
{
    if (!good) {
        fail(what);
    }
}

double since(Steady::time_point start)
{
    return std::chrono::duration<double>(Steady::now() - start).count();
}

// The most memory this process ever held, in MB.
double peakMemory()
{
    QFile status(QStringLiteral("/proc/self/status"));
    need(status.open(QIODevice::ReadOnly), "no /proc");
    for (const QByteArray& line : status.readAll().split('\n')) {
        if (line.startsWith("VmHWM:")) {
            return line.mid(6).trimmed().split(' ').front().toDouble() / 1024;
        }
    }
    return 0;
}

chemistry::Instant now() { return std::chrono::sys_days(std::chrono::year(2027) / 1 / 1); }

int importIt(const QString& journal, const QString& path)
{
    auto store = SqlStore::open(path, {.access = Access::Create});
    need(store.has_value(), "no book");
    auto book = ledger::Book::open(**store, now, [] { return std::string("none"); });
    need(book.has_value(), "no book");
    QFile file(journal);
    need(file.open(QIODevice::ReadOnly), "no journal");
    const auto start = Steady::now();
    const auto done = importJournal(**book, **store, file, journal);
    const double seconds = since(start);
    if (!done) {
        std::fprintf(stderr, "line %d: %s %s\n", done.error().line, done.error().field.c_str(),
                     done.error().text.c_str());
        return 1;
    }
    std::printf("%d %.3f %.1f\n", done->added, seconds, peakMemory());
    return 0;
}

void run(sqlite3* database, const char* sql)
{
    if (sqlite3_exec(database, sql, nullptr, nullptr, nullptr) != SQLITE_OK) {
        fail(sqlite3_errmsg(database));
    }
}

// Inserts the entries of the book at `from` into a new book's table.
int insertThem(const QString& from, const QString& path)
{
    need(SqlStore::open(path, {.access = Access::Create}).has_value(), "no book");
    sqlite3* source = nullptr;
    sqlite3* target = nullptr;
    need(sqlite3_open(from.toUtf8().constData(), &source) == SQLITE_OK, "no source");
    need(sqlite3_open(path.toUtf8().constData(), &target) == SQLITE_OK, "no target");
    run(target, "PRAGMA foreign_keys = ON; PRAGMA recursive_triggers = ON;"
                "PRAGMA synchronous = FULL; PRAGMA trusted_schema = OFF;"
                "PRAGMA cache_size = -65536; BEGIN IMMEDIATE;"
                "INSERT INTO action (mode, what, subject) VALUES (3, 'import', '')");
    sqlite3_stmt* rows = nullptr;
    need(sqlite3_prepare_v2(source, "SELECT * FROM entry ORDER BY seq", -1, &rows, nullptr) ==
             SQLITE_OK,
         "no entries");
    const int columns = sqlite3_column_count(rows);
    QByteArray sql = "INSERT INTO entry VALUES (?";
    for (int i = 1; i < columns; ++i) {
        sql += ",?";
    }
    sqlite3_stmt* insert = nullptr;
    need(sqlite3_prepare_v2(target, sql + ")", -1, &insert, nullptr) == SQLITE_OK, "no insert");
    double seconds = 0;
    int count = 0;
    std::vector<sqlite3_value*> chunk;
    bool more = true;
    while (more) {
        while (chunk.size() < std::size_t(kChunk) * std::size_t(columns)) {
            if (sqlite3_step(rows) != SQLITE_ROW) {
                more = false; // asked once more it would begin again
                break;
            }
            for (int i = 0; i < columns; ++i) {
                chunk.push_back(sqlite3_value_dup(sqlite3_column_value(rows, i)));
            }
        }
        const auto start = Steady::now();
        for (std::size_t at = 0; at < chunk.size(); at += std::size_t(columns)) {
            for (int i = 0; i < columns; ++i) {
                sqlite3_bind_value(insert, i + 1, chunk[at + std::size_t(i)]);
            }
            if (sqlite3_step(insert) != SQLITE_DONE) {
                fail(sqlite3_errmsg(target));
            }
            sqlite3_reset(insert);
            ++count;
        }
        seconds += since(start);
        for (sqlite3_value* value : chunk) {
            sqlite3_value_free(value);
        }
        chunk.clear();
    }
    sqlite3_finalize(insert);
    sqlite3_finalize(rows);
    const auto start = Steady::now();
    run(target, "COMMIT");
    seconds += since(start);
    sqlite3_close(source);
    sqlite3_close(target);
    std::printf("%d %.3f %.1f\n", count, seconds, peakMemory());
    return 0;
}

struct Measured {
    double count = 0;
    double seconds = 0;
    double megabytes = 0;
};

Measured measured(const QStringList& words)
{
    QProcess process;
    process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    process.start(QCoreApplication::applicationFilePath(), words);
    need(process.waitForFinished(-1) && process.exitCode() == 0, "a part failed");
    const auto said = process.readAllStandardOutput().trimmed().split(' ');
    need(said.size() == 3, "a part said nothing");
    return {said[0].toDouble(), said[1].toDouble(), said[2].toDouble()};
}

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    const QStringList words = QCoreApplication::arguments().mid(1);
    if (words.size() == 3 && words[0] == QLatin1String("import")) {
        return importIt(words[1], words[2]);
    }
    if (words.size() == 3 && words[0] == QLatin1String("insert")) {
        return insertThem(words[1], words[2]);
    }
    bench::SeasonSize size;
    int* const sizes[] = {&size.events, &size.batches, &size.open};
    for (int i = 0; i < std::min<int>(3, static_cast<int>(words.size())); ++i) {
        *sizes[i] = words[i].toInt();
    }
    const QTemporaryDir folder;
    const QString journal = folder.filePath(QStringLiteral("season.jsonl"));
    {
        QFile file(journal);
        need(file.open(QIODevice::WriteOnly), "no room");
        bench::SeasonJournal(size).write(file);
        std::printf("journal: %.0f MB\n", double(file.size()) / 1e6);
    }
    const QString book = folder.filePath(QStringLiteral("season.ullage"));
    const Measured import = measured({QStringLiteral("import"), journal, book});
    const Measured bare =
        measured({QStringLiteral("insert"), book, folder.filePath(QStringLiteral("bare.ullage"))});
    std::printf("import: %.0f entries in %.1f s (%.0f a second), at most %.0f MB of memory\n",
                import.count, import.seconds, import.count / import.seconds, import.megabytes);
    std::printf("bare SQLite: %.0f rows in %.1f s (%.0f a second)\n", bare.count, bare.seconds,
                bare.count / bare.seconds);
    std::printf("the import has %.2f of its speed\n",
                (import.count / import.seconds) / (bare.count / bare.seconds));
    return 0;
}
