#include "core/store/journal_reader.h"

#include "core/ledger/dependents.h"
#include "core/store/journal_codec.h"
#include "core/store/line_reader.h"

#include <QElapsedTimer>

namespace ullage::store
{

using namespace ledger;

namespace
{

constexpr int kLinesBetween = 256;     // looks at the clock
constexpr qint64 kMsBetween = 50;      // tellings of how far it is
constexpr std::int64_t kWhole = 1000;  // of what is told
constexpr double kReadingShare = 0.75; // of the whole; the rest is judging
// A large import touches every page of the indexes in turn: this much is kept of them, in KiB.
constexpr int kCache = 64 * 1024;

// Holds more of the book in memory while it lives.
class LargeCache
{
public:
    explicit LargeCache(Connection& connection) : m_connection(&connection)
    {
        const auto before = connection.number(QStringLiteral("PRAGMA cache_size"));
        m_before = before.value_or(0);
        set(-kCache);
    }
    ~LargeCache()
    {
        if (m_before != 0) {
            set(m_before);
        }
    }
    LargeCache(const LargeCache&) = delete;
    LargeCache& operator=(const LargeCache&) = delete;

private:
    // A cache that stays small is slow, not wrong.
    void set(std::int64_t size)
    {
        (void)m_connection->run(QStringLiteral("PRAGMA cache_size = %1").arg(size));
    }

    Connection* m_connection;
    std::int64_t m_before = 0;
};

Error noHeader(std::string found)
{
    return {.code = found.empty() ? ErrorCode::Missing : ErrorCode::Malformed,
            .field = "type",
            .text = std::move(found),
            .allowed = R"({"type":"book","format":"ullage-journal","version":2} first)"};
}

tl::unexpected<Error> placed(Error error, int line)
{
    error.line = line;
    return refuse(std::move(error));
}

// Whether a line says more than that it is one.
bool blank(const QByteArray& line) { return line.trimmed().isEmpty(); }

// Goes through the lines of a journal after its first, which must be a header.
class Lines
{
public:
    explicit Lines(QIODevice& device) : m_device(&device), m_lines(device) {}

    /// The next that is no header, or why it cannot be read; nothing after the last. Fails where
    /// the rest cannot be read either.
    Result<std::optional<Result<Entry>>> next()
    {
        while (true) {
            const auto text = m_lines.next();
            if (!text) {
                return placed(text.error(), line());
            }
            if (!*text) {
                return m_header ? Result<std::optional<Result<Entry>>>(std::nullopt)
                                : placed(noHeader({}), 1);
            }
            if (blank(**text)) {
                continue;
            }
            auto read = decodeLine(**text);
            if (!m_header) {
                if (auto fine = takeHeader(read); !fine) {
                    return placed(fine.error(), line());
                }
                continue;
            }
            if (!read) {
                return std::optional<Result<Entry>>(tl::unexpected(read.error()));
            }
            if (std::holds_alternative<Header>(*read)) {
                return std::optional<Result<Entry>>(
                    refuse({.code = ErrorCode::Conflict,
                            .field = "type",
                            .text = "book",
                            .allowed = "one book line, the first"}));
            }
            return std::optional<Result<Entry>>(std::move(std::get<Entry>(*read)));
        }
    }

    [[nodiscard]] int line() const { return m_lines.line(); }
    [[nodiscard]] const std::optional<QByteArray>& header() const { return m_header; }
    /// Whether fillings have to stand on both sides.
    [[nodiscard]] bool pairs() const { return m_pairs; }
    [[nodiscard]] double share() const
    {
        const qint64 size = m_device->isSequential() ? 0 : m_device->size();
        return size > 0 ? static_cast<double>(m_device->pos()) / static_cast<double>(size) : 0;
    }

private:
    Result<void> takeHeader(const Result<Line>& read)
    {
        if (!read) {
            return tl::unexpected(read.error());
        }
        const auto* header = std::get_if<Header>(&*read);
        if (!header) {
            return refuse(noHeader(std::string(std::get<Entry>(*read).type())));
        }
        m_header = QByteArray::fromStdString(header->body);
        m_pairs = header->pairs;
        return {};
    }

    QIODevice* m_device;
    LineReader m_lines;
    std::optional<QByteArray> m_header;
    bool m_pairs = false;
};

// Reads one journal into an import that is under way.
class Reading
{
public:
    Reading(Book::Import& import, SqlStore& store, QIODevice& device, const ImportOptions& options,
            const std::set<int>& leftOut)
        : m_import(&import), m_store(&store), m_lines(device), m_options(&options),
          m_leftOut(&leftOut)
    {
        m_told.start();
    }

    Result<ImportOutcome> all(bool first)
    {
        if (auto fine = lines(); !fine) {
            return tl::unexpected(fine.error());
        }
        if (m_lines.pairs()) {
            m_import->askForPairs();
        }
        const auto goOn = [this](std::size_t done, std::size_t all) {
            return tell([&] {
                return kReadingShare +
                       (1 - kReadingShare) * static_cast<double>(done) / static_cast<double>(all);
            });
        };
        if (auto fine = m_import->judge(goOn); !fine) {
            return tl::unexpected(fine.error());
        }
        m_outcome.added = m_import->added();
        m_outcome.contradictions = m_import->contradictions();
        m_outcome.contradictionCount = m_import->contradictionCount();
        m_outcome.likelySame = m_import->likelySame();
        if (m_outcome.contradictionCount > 0 || m_options->trial ||
            (m_options->sameRefuse && !m_outcome.likelySame.empty())) {
            return std::move(m_outcome);
        }
        if (first && !sameContent(currentHeader(*m_lines.header()), defaultHeader())) {
            if (auto fine = m_store->putNote(kHeaderNote, *m_lines.header()); !fine) {
                return tl::unexpected(fine.error());
            }
        }
        if (const auto done = m_import->finish(); !done) {
            return tl::unexpected(done.error());
        }
        m_outcome.entered = true;
        return std::move(m_outcome);
    }

private:
    Result<void> lines()
    {
        while (true) {
            auto next = m_lines.next();
            if (!next) {
                return tl::unexpected(next.error());
            }
            if (!*next) {
                return {};
            }
            if (auto fine = take(std::move(**next)); !fine) {
                return fine;
            }
            if (m_lines.line() % kLinesBetween == 0 &&
                !tell([this] { return kReadingShare * m_lines.share(); })) {
                return refuse({.code = ErrorCode::Cancelled});
            }
        }
    }

    Result<void> take(Result<Entry> read)
    {
        const int line = m_lines.line();
        if (m_leftOut->contains(line)) {
            ++m_outcome.leftOut;
            return {};
        }
        ++m_outcome.lines;
        if (!read) {
            m_import->unreadable(std::move(read.error()), line);
            return {};
        }
        const Event* event = read->event();
        const std::string_view kind = event ? event->kind() : read->type();
        const int before = m_import->added();
        if (auto fine = m_import->add(std::move(*read), line); !fine) {
            return placed(std::move(fine.error()), line);
        }
        if (m_import->added() > before) {
            ++m_outcome.coming[kind];
        }
        return {};
    }

    template <class Share>
    bool tell(Share share)
    {
        if (!m_options->watch || m_told.elapsed() < kMsBetween) {
            return true;
        }
        m_told.restart();
        return m_options->watch({static_cast<std::int64_t>(share() * kWhole), kWhole});
    }

    Book::Import* m_import;
    SqlStore* m_store;
    Lines m_lines;
    const ImportOptions* m_options;
    const std::set<int>* m_leftOut;
    ImportOutcome m_outcome;
    QElapsedTimer m_told;
};

Result<std::set<int>> allLeftOut(SqlStore& store, QIODevice& device, const std::set<int>& leftOut)
{
    const qint64 start = device.pos();
    auto all = withDependents(leftOut, store, [&](const TakeLine& take) -> Result<void> {
        device.seek(start);
        Lines lines(device);
        while (true) {
            const auto next = lines.next();
            if (!next) {
                return tl::unexpected(next.error());
            }
            if (!*next) {
                return {};
            }
            if (**next) {
                if (auto fine = take(***next, lines.line()); !fine) {
                    return fine;
                }
            }
        }
    });
    device.seek(start);
    return all;
}

Result<ImportOutcome> read(Book& book, SqlStore& store, QIODevice& device,
                           const ImportOptions& options)
{
    Settlement settled = options.settled;
    if (!settled.leftOut.empty()) {
        auto all = allLeftOut(store, device, settled.leftOut);
        if (!all) {
            return tl::unexpected(all.error());
        }
        settled.leftOut = std::move(*all);
    }
    const LargeCache cache(store.connection());
    const auto import = book.import(settled, options.undoAs.toStdString());
    if (!import) {
        return tl::unexpected(import.error());
    }
    const auto last = store.lastEntry();
    if (!last) {
        return tl::unexpected(last.error());
    }
    return Reading(**import, store, device, options, settled.leftOut).all(*last == 0);
}

} // namespace

Result<ImportOutcome> readJournal(Book& book, SqlStore& store, QIODevice& device,
                                  const ImportOptions& options)
{
    auto outcome = read(book, store, device, options);
    if (!outcome) {
        outcome.error().file = options.name.toStdString();
        return outcome;
    }
    for (Contradiction& contradiction : outcome->contradictions) {
        contradiction.error.file = options.name.toStdString();
    }
    return outcome;
}

Result<Imported> importJournal(Book& book, SqlStore& store, QIODevice& device, const QString& name)
{
    auto outcome = readJournal(book, store, device, {.name = name, .settled = {}});
    if (!outcome) {
        return tl::unexpected(outcome.error());
    }
    if (outcome->contradictionCount > 0) {
        return refuse(std::move(outcome->contradictions.front().error));
    }
    return Imported{outcome->lines, outcome->added};
}

} // namespace ullage::store
