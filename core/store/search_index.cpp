#include "core/store/search_index.h"

#include "core/store/each_row.h"
#include "core/store/search_file.h"

#include <QFileInfo>
#include <QStringList>

#include <algorithm>
#include <functional>

namespace ullage::store
{

namespace
{

constexpr int kFew = 4000;             // documents that are looked at all at once
constexpr std::size_t kManyWords = 4;  // of more than these not all trigrams are asked for
constexpr std::size_t kTrigramsOf = 4; // each of many

bool newer(const DayKey& a, const DayKey& b)
{
    return std::pair(a.atMs, a.seq) > std::pair(b.atMs, b.seq);
}

// Newest first, each once.
void putInOrder(std::vector<DayKey>& keys)
{
    std::sort(keys.begin(), keys.end(), newer);
    keys.erase(std::unique(keys.begin(), keys.end()), keys.end());
}

// Some of them, the last among them, where names of one kind differ most.
std::vector<QByteArray> spread(const std::vector<QByteArray>& all)
{
    std::vector<QByteArray> some;
    for (std::size_t i = 1; i <= kTrigramsOf; ++i) {
        some.push_back(all[i * all.size() / kTrigramsOf - 1]);
    }
    return some;
}

// All trigrams of one of the words; of many words some of each, as all of them would cost more than
// looking at what they have too much. Empty if a word is too short.
QString matching(const std::vector<FoldedWord>& words)
{
    QStringList either;
    for (const FoldedWord& word : words) {
        QStringList all;
        const auto trigrams = word.trigrams();
        const bool thin = words.size() > kManyWords && trigrams.size() > kTrigramsOf;
        for (const QByteArray& three : thin ? spread(trigrams) : trigrams) {
            all << u'"' + QString::fromUtf8(three).replace(u'"', QLatin1String("\"\"")) + u'"';
        }
        if (all.isEmpty()) {
            return {};
        }
        either << u'(' + all.join(QLatin1String(" AND ")) + u')';
    }
    return either.join(QLatin1String(" OR "));
}

struct Block {
    std::int64_t id = 0;
    std::int64_t oldestMs = 0;
    std::int64_t newestMs = 0;
};

} // namespace

struct SearchIndex::Statements {
    explicit Statements(const Connection& on)
        : standing(on, QStringLiteral("SELECT (SELECT value FROM standing WHERE key = 'last'), "
                                      "(SELECT value FROM standing WHERE key = 'mark')")),
          count(on, QStringLiteral("SELECT count(*) FROM (SELECT rowid FROM words "
                                   "WHERE words MATCH ? LIMIT ?)")),
          few(on, QStringLiteral("SELECT d.at_ms, d.seq FROM words CROSS JOIN doc d "
                                 "ON d.id = words.rowid WHERE words MATCH ? LIMIT ?")),
          blocks(on, QStringLiteral("SELECT id, oldest_ms, newest_ms FROM block")),
          ofBlock(on, QStringLiteral("SELECT d.at_ms, d.seq FROM words CROSS JOIN doc d "
                                     "ON d.id = words.rowid WHERE words MATCH ? "
                                     "AND words.rowid >= ? AND words.rowid < ?"))
    {
    }
    Statement standing;
    Statement count;
    Statement few;
    Statement blocks;
    Statement ofBlock;

    static Result<void> addKeys(Result<Rows> rows, const std::optional<DayKey>& after,
                                std::vector<DayKey>& into, int* seen = nullptr)
    {
        return eachRow(std::move(rows), [&](const Rows& row) -> Result<void> {
            const DayKey key{row.number(0), row.number(1)};
            if (!after || newer(*after, key)) {
                into.push_back(key);
            }
            if (seen) {
                ++*seen;
            }
            return {};
        });
    }
};

SearchIndex::SearchIndex(std::unique_ptr<Connection> connection, QString file)
    : m_connection(std::move(connection)), m_file(std::move(file)),
      m_statements(std::make_unique<Statements>(*m_connection))
{
}

SearchIndex::~SearchIndex() { m_statements.reset(); } // before the connection they are prepared on

std::unique_ptr<SearchIndex> SearchIndex::open(SqlStore& book, const QString& folder)
{
    if (folder.isEmpty()) {
        return nullptr;
    }
    const QString file = searchIndexFile(book, folder);
    std::unique_ptr<Connection> connection;
    if (openSearchFile(file, false, connection) != SearchFileState::Fine) {
        return nullptr;
    }
    return std::unique_ptr<SearchIndex>(new SearchIndex(std::move(connection), file));
}

QString searchIndexFile(SqlStore& book, const QString& folder)
{
    return searchFile(folder, searchName(book));
}

bool SearchIndex::isSpent() const { return m_failed || QFileInfo::exists(nextSearchFile(m_file)); }

std::optional<std::int64_t> SearchIndex::upTo(SqlStore& book)
{
    std::int64_t last = 0;
    QString mark;
    const auto fine = eachRow(m_statements->standing.run(), [&](const Rows& row) -> Result<void> {
        last = QString::fromStdString(row.text(0)).toLongLong();
        mark = QString::fromStdString(row.text(1));
        return {};
    });
    if (!fine) {
        m_failed = true;
        return std::nullopt;
    }
    const auto there = searchMark(book, last);
    return there && *there == mark ? std::optional(last) : std::nullopt;
}

std::optional<int> SearchIndex::count(const std::vector<FoldedWord>& words, int most)
{
    const QString match = matching(words);
    if (match.isEmpty() || m_failed) {
        return std::nullopt;
    }
    int found = 0;
    const auto fine =
        eachRow(m_statements->count.runWith({match, most}), [&](const Rows& row) -> Result<void> {
            found = static_cast<int>(row.number(0));
            return {};
        });
    m_failed = !fine;
    return fine ? std::optional(found) : std::nullopt;
}

std::optional<SearchIndex::Found> SearchIndex::newest(const std::vector<FoldedWord>& words,
                                                      const std::optional<DayKey>& after,
                                                      int wanted)
{
    const QString match = matching(words);
    if (match.isEmpty() || m_failed) {
        return std::nullopt;
    }
    m_failed = true; // unless it comes out well
    Found found;
    int seen = 0;
    if (!Statements::addKeys(m_statements->few.runWith({match, kFew}), after, found.keys, &seen)) {
        return std::nullopt;
    }
    if (seen < kFew) {
        putInOrder(found.keys);
        found.all = true;
        m_failed = false;
        return found;
    }
    found.keys.clear();
    std::vector<Block> blocks;
    const auto fine = eachRow(m_statements->blocks.run(), [&](const Rows& row) -> Result<void> {
        const Block block{row.number(0), row.number(1), row.number(2)};
        if (!after || block.oldestMs <= after->atMs) {
            blocks.push_back(block);
        }
        return {};
    });
    if (!fine) {
        return std::nullopt;
    }
    std::sort(blocks.begin(), blocks.end(),
              [](const Block& a, const Block& b) { return a.newestMs > b.newestMs; });
    for (const Block& block : blocks) {
        if (static_cast<int>(found.keys.size()) >= wanted) {
            putInOrder(found.keys);
            // What no block to come can have anything newer than.
            const auto certain =
                std::find_if(found.keys.begin(), found.keys.end(),
                             [&](const DayKey& key) { return key.atMs <= block.newestMs; });
            if (certain - found.keys.begin() >= wanted) {
                found.keys.erase(certain, found.keys.end());
                m_failed = false;
                return found;
            }
        }
        const std::int64_t first = block.id * kSearchBlock;
        if (!Statements::addKeys(m_statements->ofBlock.runWith(
                                     {match, qlonglong{first}, qlonglong{first + kSearchBlock}}),
                                 after, found.keys)) {
            return std::nullopt;
        }
    }
    putInOrder(found.keys);
    found.all = true;
    m_failed = false;
    return found;
}

} // namespace ullage::store
