#include "core/store/journal_reader.h"

#include "core/store/journal_codec.h"
#include "core/store/line_reader.h"

#include <unordered_map>

namespace ullage::store
{

using namespace ledger;

namespace
{

bool blank(const QByteArray& line) { return line.trimmed().isEmpty(); }

// Reads one journal into an import that is under way.
class Reading
{
public:
    Reading(Book::Import& import, SqlStore& store, QIODevice& device, bool first)
        : m_import(&import), m_store(&store), m_lines(device), m_first(first)
    {
    }

    Result<Imported> all()
    {
        while (true) {
            const auto line = m_lines.next();
            if (!line) {
                return placed(line.error());
            }
            if (!*line) {
                return end();
            }
            if (blank(**line)) {
                continue;
            }
            if (auto fine = take(**line); !fine) {
                return placed(fine.error());
            }
        }
    }

private:
    Result<void> take(const QByteArray& text)
    {
        auto line = decodeLine(text);
        if (!line) {
            return tl::unexpected(line.error());
        }
        if (auto* header = std::get_if<Header>(&*line)) {
            if (m_header) {
                return refuse({.code = ErrorCode::Conflict,
                               .field = "type",
                               .text = "book",
                               .allowed = "one book line, the first"});
            }
            m_header = QByteArray::fromStdString(header->body);
            return {};
        }
        if (!m_header) {
            return refuse(noHeader(std::string(std::get<Entry>(*line).type())));
        }
        const Entry& entry = std::get<Entry>(*line);
        if (entry.event() || std::holds_alternative<FilmRecord>(entry.what) ||
            std::holds_alternative<FilmMark>(entry.what) ||
            std::holds_alternative<RunTimes>(entry.what)) {
            m_lineOf.emplace(std::string(entry.type()) + ' ' + entry.id(), m_lines.line());
        }
        ++m_imported.lines;
        return m_import->add(entry);
    }

    Result<Imported> end()
    {
        if (!m_header) {
            return placed(noHeader({}), 1);
        }
        if (m_first && !sameContent(currentHeader(*m_header), defaultHeader())) {
            if (auto fine = m_store->putNote(kHeaderNote, *m_header); !fine) {
                return tl::unexpected(fine.error());
            }
        }
        const auto added = m_import->finish();
        if (!added) {
            return placed(added.error(), lineOf(m_import->culprit()));
        }
        m_imported.added = *added;
        return m_imported;
    }

    // Only events and what belongs to films are found out once the whole is known.
    [[nodiscard]] int lineOf(const std::string& id) const
    {
        for (const char* type : {"event ", "film ", "film-mark ", "run-times "}) {
            if (const auto found = m_lineOf.find(type + id); found != m_lineOf.end()) {
                return found->second;
            }
        }
        return 0;
    }

    [[nodiscard]] static Error noHeader(std::string found)
    {
        return {.code = found.empty() ? ErrorCode::Missing : ErrorCode::Malformed,
                .field = "type",
                .text = std::move(found),
                .allowed = R"({"type":"book","format":"ullage-journal","version":2} first)"};
    }

    [[nodiscard]] tl::unexpected<Error> placed(Error error, int line) const
    {
        error.line = line;
        return refuse(std::move(error));
    }
    [[nodiscard]] tl::unexpected<Error> placed(Error error) const
    {
        return placed(std::move(error), m_lines.line());
    }

    Book::Import* m_import;
    SqlStore* m_store;
    LineReader m_lines;
    bool m_first; ///< nothing is in the book yet: this journal's first line becomes the book's
    std::optional<QByteArray> m_header;
    std::unordered_map<std::string, int> m_lineOf;
    Imported m_imported;
};

} // namespace

Result<Imported> importJournal(Book& book, SqlStore& store, QIODevice& device, const QString& name)
{
    const auto import = book.import();
    if (!import) {
        return tl::unexpected(import.error());
    }
    const auto last = store.lastEntry();
    if (!last) {
        return tl::unexpected(last.error());
    }
    auto done = Reading(**import, store, device, *last == 0).all();
    if (!done) {
        done.error().file = name.toStdString();
    }
    return done;
}

} // namespace ullage::store
