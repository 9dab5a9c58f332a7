// Brings the index of a search up to its book.
#include "core/store/day_texts.h"
#include "core/store/each_row.h"
#include "core/store/search_file.h"
#include "core/store/search_index.h"

#include <algorithm>
#include <map>

namespace ullage::store
{

namespace
{

constexpr std::int64_t kAtOnce = 2000; // entries in one transaction of the cache
constexpr int kTries = 3;              // files that turn out to be of no use

using Outcome = SearchKeeper::Outcome;

struct Writer {
    explicit Writer(Connection& on)
        : connection(on), last(on, QStringLiteral("SELECT coalesce(max(id), -1) FROM doc")),
          putWords(on, QStringLiteral("INSERT INTO words (rowid, text) VALUES (?, ?)")),
          putDoc(on, QStringLiteral("INSERT INTO doc (id, at_ms, seq) VALUES (?, ?, ?)")),
          putBlock(on, QStringLiteral("INSERT INTO block (id, oldest_ms, newest_ms) "
                                      "VALUES (?, ?, ?) ON CONFLICT (id) DO UPDATE SET "
                                      "oldest_ms = min(oldest_ms, excluded.oldest_ms), "
                                      "newest_ms = max(newest_ms, excluded.newest_ms)")),
          putStanding(on, QStringLiteral("UPDATE standing SET value = ? WHERE key = ?"))
    {
    }
    Connection& connection;
    Statement last;
    Statement putWords;
    Statement putDoc;
    Statement putBlock;
    Statement putStanding;

    static Result<void> done(Result<Rows> rows)
    {
        return rows.map([](const Rows&) {});
    }

    Result<void> put(std::int64_t id, const DayRow& row, const QByteArray& text)
    {
        auto fine = done(putWords.run(id, text));
        fine = fine ? done(putDoc.run(id, row.atMs, row.seq)) : fine;
        return fine ? done(putBlock.run(id / kSearchBlock, row.atMs, row.atMs)) : fine;
    }
    Result<void> stand(std::int64_t at, const QString& mark)
    {
        auto fine = done(putStanding.run(std::to_string(at), std::string("last")));
        return fine ? done(putStanding.run(mark.toStdString(), std::string("mark"))) : fine;
    }
};

// Either the book failed, which is told, or the cache, which is an outcome.
struct Trouble {
    std::optional<Error> book;
    std::optional<Error> cache;
    bool useless = false; ///< the cache is another course's, or cannot be read
};

// One transaction of the cache; what it stands at afterwards.
std::optional<std::int64_t> oneStep(SqlStore& book, SearchIndex& index, DayTexts& texts,
                                    Writer& writer, std::int64_t all, Trouble& trouble)
{
    const auto from = index.upTo(book); // anew: somebody else may have been at it
    if (!from) {
        trouble.useless = true;
        return std::nullopt;
    }
    const std::int64_t to = std::min(*from + kAtOnce, all);
    if (to <= *from) {
        return from;
    }
    const auto rows = texts.rowsTouched(*from, to);
    const auto mark = searchMark(book, to);
    if (!rows || !mark) {
        trouble.book = rows ? mark.error() : rows.error();
        return std::nullopt;
    }
    std::int64_t id = -1;
    auto fine = eachRow(writer.last.run(), [&](const Rows& row) -> Result<void> {
        id = row.number(0);
        return {};
    });
    for (const DayRow& row : *rows) {
        const auto text = texts.textOf(row);
        if (!text) {
            trouble.book = text.error();
            return std::nullopt;
        }
        if (fine && !text->isEmpty()) {
            fine = writer.put(++id, row, *text);
        }
    }
    fine = fine ? writer.stand(to, *mark) : fine;
    if (!fine) {
        trouble.cache = fine.error();
        return std::nullopt;
    }
    return to;
}

} // namespace

Result<Outcome> SearchKeeper::catchUp(SqlStore& book, const QString& folder, const Watch& watch)
{
    QString file = searchIndexFile(book, folder);
    for (int tries = 0; tries < kTries; ++tries, file = nextSearchFile(file)) {
        std::unique_ptr<Connection> connection;
        const SearchFileState state = openSearchFile(file, true, connection);
        if (state == SearchFileState::Busy) {
            return Outcome::Busy;
        }
        if (state == SearchFileState::Newer || state == SearchFileState::Out) {
            return Outcome::Failed;
        }
        if (state == SearchFileState::Bad) {
            continue;
        }
        SearchIndex index(std::move(connection), file);
        Connection& cache = *index.m_connection;
        Writer writer(cache);
        DayTexts texts(book);
        Trouble trouble;
        while (!trouble.cache && !trouble.useless) {
            const auto all = book.lastEntry();
            if (!all) {
                return tl::unexpected(all.error());
            }
            if (const auto begun = cache.run(QStringLiteral("BEGIN IMMEDIATE")); !begun) {
                trouble.cache = begun.error();
                break;
            }
            const auto reached = oneStep(book, index, texts, writer, *all, trouble);
            const auto ended =
                cache.run(reached ? QStringLiteral("COMMIT") : QStringLiteral("ROLLBACK"));
            if (trouble.book) {
                return tl::unexpected(*trouble.book);
            }
            if (reached && !ended) {
                trouble.cache = ended.error();
            }
            if (!reached || !ended) {
                break;
            }
            const bool goOn = !watch || watch({*reached, *all});
            if (*reached >= *all) {
                return Outcome::UpToDate;
            }
            if (!goOn) {
                return Outcome::Stopped;
            }
        }
        if (trouble.useless) {
            continue;
        }
        if (saysSearchFileIsBusy(*trouble.cache)) {
            return Outcome::Busy;
        }
        if (!saysSearchFileIsBad(*trouble.cache)) {
            return Outcome::Failed;
        }
    }
    return Outcome::Failed;
}

} // namespace ullage::store
