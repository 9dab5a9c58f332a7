// The whole chain, link by link.
#include "core/store/chain.h"
#include "core/store/each_row.h"
#include "core/store/read_view.h"

#include <limits>

namespace ullage::store
{

namespace
{

constexpr const char* kChain =
    "SELECT seq, CAST(type AS BLOB), CAST(id AS BLOB), CAST(body AS BLOB), hash "
    "FROM entry WHERE seq >= ? AND seq <= ? ORDER BY seq";
constexpr std::int64_t kEnd = std::numeric_limits<std::int64_t>::max();

// A line whose hash does not fit waits for the next one: that tells whether the line was changed or
// its hash.
class Walk
{
public:
    Walk(Connection& connection, const ChainVisitor& visitor)
        : m_connection(&connection), m_visitor(&visitor)
    {
    }

    Result<ChainEnd> all()
    {
        const auto view = ReadView::open(*m_connection);
        if (!view) {
            return tl::unexpected(view.error());
        }
        return part(1, kEnd).map([&] { return m_end; });
    }

    // Those from `first` to `last`. Where entries stand before them, the first only lends its hash.
    Result<void> part(std::int64_t first, std::int64_t last)
    {
        m_lent = first > 1;
        m_whole = last == kEnd;
        Statement chain(*m_connection, QString::fromLatin1(kChain));
        return eachRow(chain.run(first, last), [&](const Rows& row) { return take(row); })
            .and_then([&] { return end(); });
    }

private:
    Result<void> take(const Rows& row)
    {
        if (m_end.entries % kPiecesUnwatched == 0) {
            if (auto fine = goOn(m_visitor->watch, {m_end.entries, 0}); !fine) {
                return fine;
            }
        }
        StoredLine line{
            .entry = row.number(0), .type = row.blob(1), .id = row.blob(2), .body = row.blob(3)};
        const auto stored = digestFromBytes(row.blob(4));
        if (std::exchange(m_lent, false) && stored) {
            m_stored = *stored;
            m_last = line.entry;
            return {};
        }
        ++m_end.entries;
        if (!stored) {
            // What our entries follow is the one before it: nothing of ours is put upon it.
            line.state = LineState::Foreign;
            return settle(LineState::Changed).and_then([&] { return pass(line); });
        }
        const auto follows = [&](const Digest& before) {
            if (m_hasher.next(before, line.type, line.id, line.body) == *stored) {
                line.state = LineState::AsEntered;
                return true;
            }
            if (m_hasher.nextFaulty(before, line.type, line.id, line.body) == *stored) {
                line.state = LineState::FaultyBefore;
                return true;
            }
            return false;
        };
        bool waits = false;
        Result<void> fine;
        if (follows(m_stored)) {
            fine = settle(LineState::Changed);
        } else if (m_waiting && follows(m_reckoned)) {
            fine = settle(LineState::HashChanged);
        } else {
            fine = settle(LineState::Changed);
            waits = line.entry == m_last + 1;
            if (waits) {
                m_reckoned = m_hasher.next(m_stored, line.type, line.id, line.body);
            } else {
                missing(m_last + 1, line.entry - 1);
            }
        }
        m_stored = *stored;
        m_last = line.entry;
        if (fine && waits) {
            m_waiting = std::move(line);
            return {};
        }
        return fine ? pass(line) : fine;
    }

    // The line that waits is told, as what it turned out to be.
    Result<void> settle(LineState as)
    {
        if (!m_waiting) {
            return {};
        }
        StoredLine line = *std::exchange(m_waiting, std::nullopt);
        line.state = as;
        return pass(line);
    }

    Result<void> pass(const StoredLine& line)
    {
        if (const char* wrong = damageOf(line.state)) {
            fault(notAsEntered(wrong, line.entry, line.type, line.id));
        }
        return m_visitor->line ? m_visitor->line(line) : Result<void>{};
    }

    void missing(std::int64_t first, std::int64_t last)
    {
        Error error = notAsEntered(damage::kMissing);
        error.low = static_cast<double>(first);
        error.high = static_cast<double>(last);
        fault(std::move(error));
    }

    void fault(Error error)
    {
        if (m_visitor->fault) {
            m_visitor->fault(std::move(error));
        }
    }

    // The book's own record of its last entry tells what is missing behind it.
    Result<void> end()
    {
        std::optional<QByteArray> text;
        Statement note(*m_connection,
                       QStringLiteral("SELECT CAST(value AS BLOB) FROM note WHERE key = ?"));
        auto fine = eachRow(note.run(QByteArray(kHeadNote)), [&](const Rows& row) -> Result<void> {
            text = row.blob(0);
            return {};
        });
        if (!fine) {
            return fine;
        }
        const auto record = text ? headFromText(*text) : std::nullopt;
        const bool here = record && record->entry == m_last;
        const bool onlyHash = here && record->hash == m_reckoned;
        if (auto told = settle(onlyHash ? LineState::HashChanged : LineState::Changed); !told) {
            return told;
        }
        m_end.head = {m_last, m_stored};
        if (!m_whole) {
            return {};
        }
        if (text && !record) {
            fault(notAsEntered(damage::kHead));
        } else if (record && record->entry > m_last) {
            missing(m_last + 1, record->entry);
        } else if (record && !(here && (record->hash == m_stored || record->hash == m_reckoned))) {
            fault(notAsEntered(damage::kHead));
        }
        return {};
    }

    Connection* m_connection;
    const ChainVisitor* m_visitor;
    LineHasher m_hasher;
    ChainEnd m_end;
    std::int64_t m_last = 0;      ///< number of the last entry of ours
    Digest m_stored = kNothing;   ///< its hash as it stands
    Digest m_reckoned = kNothing; ///< and as it should, while it waits
    std::optional<StoredLine> m_waiting;
    bool m_lent = false;
    bool m_whole = true;
};

} // namespace

Result<ChainEnd> walkChain(Connection& connection, const ChainVisitor& visitor)
{
    return Walk(connection, visitor).all();
}

Result<LineState> stateOf(Connection& connection, std::int64_t entry)
{
    LineState state = LineState::Changed;
    const ChainVisitor visitor{.line = [&](const StoredLine& line) -> Result<void> {
        state = line.entry == entry ? line.state : state;
        return {};
    }};
    // Two before it: the hash that the one before follows may be the one that was changed. And the
    // one after, which tells a changed line from a changed hash. Numbers may have gaps.
    std::vector<std::int64_t> before;
    std::int64_t after = entry;
    Statement earlier(connection, QStringLiteral("SELECT seq FROM entry WHERE seq < ? "
                                                 "ORDER BY seq DESC LIMIT 2"));
    Statement later(connection, QStringLiteral("SELECT seq FROM entry WHERE seq > ? "
                                               "ORDER BY seq LIMIT 1"));
    return eachRow(earlier.run(entry),
                   [&](const Rows& row) -> Result<void> {
                       before.push_back(row.number(0));
                       return {};
                   })
        .and_then([&] {
            return eachRow(later.run(entry), [&](const Rows& row) -> Result<void> {
                after = row.number(0);
                return {};
            });
        })
        .and_then([&] {
            const bool all = before.size() < 2; // then the walk begins where the chain does
            return Walk(connection, visitor).part(all ? 1 : before.back(), after);
        })
        .map([&] { return state; });
}

} // namespace ullage::store
