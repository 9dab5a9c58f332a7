#include "core/store/integrity.h"

#include "core/ledger/batch.h"
#include "core/ledger/references.h"
#include "core/store/each_row.h"
#include "core/store/event_columns.h"
#include "core/store/journal_codec.h"

#include <algorithm>
#include <map>
#include <set>

namespace ullage::store
{

using namespace ledger;

namespace
{

constexpr const char* kEntries = "SELECT type, id, batch, kind, at_ms, volume_ml, films, run, "
                                 "voids, body, person, film, from_batch, to_batch, item, container "
                                 "FROM entry ORDER BY seq";

std::optional<std::string> textIf(const Rows& row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(row.text(column));
}

std::optional<double> realIf(const Rows& row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(row.real(column));
}

EventColumns storedColumns(const Rows& row)
{
    EventColumns columns;
    columns.batch = textIf(row, 2);
    columns.kind = textIf(row, 3);
    columns.atMs = row.isNull(4) ? std::nullopt : std::optional(row.number(4));
    columns.volume = realIf(row, 5);
    columns.films = realIf(row, 6);
    columns.run = textIf(row, 7);
    columns.voids = textIf(row, 8);
    columns.person = textIf(row, 10);
    columns.film = textIf(row, 11);
    columns.fromBatch = textIf(row, 12);
    columns.toBatch = textIf(row, 13);
    columns.item = textIf(row, 14);
    columns.container = textIf(row, 15);
    return columns;
}

class Check
{
public:
    explicit Check(SqlStore& store) : m_store(&store) {}

    Result<BookCheck> all()
    {
        for (const auto step : {&Check::file, &Check::entries, &Check::folds, &Check::leftOver}) {
            if (auto fine = (this->*step)(); !fine) {
                return tl::unexpected(fine.error());
            }
        }
        return m_check;
    }

private:
    void found(Error error, const std::string& subject)
    {
        error.subject = subject;
        m_check.findings.push_back(std::move(error));
    }
    void unknown(const char* field, const std::string& id, const std::string& subject)
    {
        found({.code = ErrorCode::UnknownId, .field = field, .text = id}, subject);
    }

    // What SQLite itself has to say.
    Result<void> file()
    {
        for (const char* pragma : {"PRAGMA integrity_check", "PRAGMA foreign_key_check"}) {
            const bool keys = QByteArrayView(pragma).endsWith("foreign_key_check");
            Statement statement(m_store->connection(), QString::fromLatin1(pragma));
            auto fine = eachRow(statement.run(), [&](const Rows& row) -> Result<void> {
                if (keys) {
                    found(storeFailure(QStringLiteral("a row of table %1 points nowhere")
                                           .arg(QString::fromStdString(row.text(0)))),
                          {});
                } else if (row.text(0) != "ok") {
                    found(storeFailure(QString::fromStdString(row.text(0))), {});
                }
                return {};
            });
            if (!fine) {
                return fine;
            }
        }
        return {};
    }

    Result<void> entries()
    {
        Statement statement(m_store->connection(), QString::fromLatin1(kEntries));
        auto fine = eachRow(statement.run(), [&](const Rows& row) -> Result<void> {
            entry(row);
            return {};
        });
        if (!fine) {
            return fine;
        }
        for (const Named& named : m_later) {
            const bool film = named.field->refers == formulary::Refers::Film;
            if (!(film ? m_films : m_runs).contains(named.id)) {
                unknown(named.field->name.data(), named.id, named.by);
            }
        }
        return {};
    }

    void entry(const Rows& row)
    {
        ++m_check.entries;
        const std::string id = row.text(1);
        auto line = decodeLine(row.bytes(9));
        if (!line) {
            found(line.error(), id);
            return;
        }
        auto* entry = std::get_if<Entry>(&*line);
        if (!entry || entry->type() != row.text(0) || entry->id() != id) {
            found({.code = ErrorCode::Conflict, .field = "id", .text = id}, id);
            return;
        }
        const EventColumns stored = storedColumns(row);
        if (auto* event = std::get_if<Event>(&entry->what)) {
            ++m_check.events;
            const bool mayBeSilent = std::holds_alternative<Voided>(event->what);
            if (mayBeSilent && event->batch.empty()) {
                event->batch = stored.batch.value_or(std::string());
            }
        }
        if (eventColumns(*entry) != stored) {
            found({.code = ErrorCode::Conflict, .field = "kind", .text = id}, id);
        }
        references(*entry);
    }

    // Solutions and vessels of events are looked up by the folds.
    void references(const Entry& entry)
    {
        using formulary::Refers;
        keep(check(entry), entry.id());
        eachReference(entry, [&](const formulary::FieldDescription& is, const std::string& id) {
            const bool byFold =
                entry.event() && (is.refers == Refers::Solution || is.refers == Refers::Vessel);
            if (is.refers == Refers::Film || is.refers == Refers::Run) {
                m_later.push_back({&is, id, entry.id()});
            } else if (!byFold && is.name != "batch" && !stands(entry, is, id)) {
                unknown(is.name.data(), id, entry.id());
            }
        });
        take(entry);
    }

    // Whether what is named stands before the entry.
    [[nodiscard]] bool stands(const Entry& entry, const formulary::FieldDescription& is,
                              const std::string& id) const
    {
        using formulary::Refers;
        switch (is.refers) {
        case Refers::Batch:
            return m_mixed.contains(id);
        case Refers::Event:
            return m_events.contains(id);
        case Refers::FilmMark: {
            const auto taken = m_marks.find(id);
            return taken != m_marks.end() && taken->second == std::get<FilmMark>(entry.what).film;
        }
        case Refers::Same:
            return m_ids.contains(key(entry.type(), id));
        default:
            break;
        }
        const auto types = typesNamed(is.refers);
        return std::any_of(types.begin(), types.end(), [&](std::string_view type) {
            return m_ids.contains(key(type, id)) || (is.refers == Refers::Kind && id == type);
        });
    }

    [[nodiscard]] static std::string key(std::string_view type, const std::string& id)
    {
        return std::string(type) + ' ' + id;
    }

    // What later entries may name.
    void take(const Entry& entry)
    {
        if (const Event* event = entry.event()) {
            m_events.insert(event->id);
            m_batches.insert(event->batch);
            if (std::holds_alternative<Mixed>(event->what)) {
                m_mixed.insert(event->batch);
            } else if (const auto* processed = std::get_if<Processed>(&event->what)) {
                m_runs.insert(processed->run);
            }
            return;
        }
        if (const auto* film = std::get_if<FilmRecord>(&entry.what)) {
            m_films.insert(film->id);
            return;
        }
        if (const auto* mark = std::get_if<FilmMark>(&entry.what)) {
            m_marks.emplace(mark->id, mark->film);
            return;
        }
        m_ids.insert(key(entry.type(), entry.id()));
        std::visit(
            [&](const auto& what) {
                if constexpr (requires { m_formulary.add(what); }) {
                    m_formulary.add(what);
                }
            },
            entry.what);
    }

    void keep(const Result<void>& checked, const std::string& subject)
    {
        if (!checked) {
            found(checked.error(), subject);
        }
    }

    Result<void> folds()
    {
        m_batches.erase(std::string()); // events about the cupboard
        for (const std::string& id : m_batches) {
            const auto entered = m_store->eventsOf(id);
            if (!entered) {
                found(entered.error(), id);
                continue;
            }
            const auto state = m_store->batch(id);
            if (!state) {
                return tl::unexpected(state.error());
            }
            const auto live = happened(*entered);
            Fold fold(m_formulary);
            bool whole = true;
            for (const Event& event : live) {
                if (auto fine = fold.apply(event); !fine) {
                    found(fine.error(), event.id);
                    whole = false;
                    break;
                }
            }
            if (whole && !agrees(*state, live.empty() ? nullptr : &fold.batch())) {
                found({.code = ErrorCode::Conflict, .field = "batch", .text = id}, id);
            }
            m_check.batches += live.empty() ? 0 : 1;
        }
        return {};
    }

    [[nodiscard]] static bool agrees(const std::optional<BatchState>& state, const Batch* batch)
    {
        if (!state || !batch) {
            return !state && !batch;
        }
        return state->name == batch->name && state->solution == batch->solution->id &&
               state->mixedAt == batch->mixedAt && state->endedAt == batch->endedAt;
    }

    // Rows of the derived table for which there are no events.
    Result<void> leftOver()
    {
        Statement statement(m_store->connection(), QStringLiteral("SELECT id FROM batch"));
        return eachRow(statement.run(), [&](const Rows& row) -> Result<void> {
            if (!m_batches.contains(row.text(0))) {
                unknown("batch", row.text(0), row.text(0));
            }
            return {};
        });
    }

    SqlStore* m_store;
    BookCheck m_check;
    formulary::Formulary m_formulary;
    std::set<std::string> m_ids; ///< type and id of whatever is defined
    std::set<std::string> m_events;
    std::set<std::string> m_batches;
    std::set<std::string> m_mixed;
    std::set<std::string> m_runs;
    struct Named {
        const formulary::FieldDescription* field;
        std::string id;
        std::string by;
    };
    std::vector<Named> m_later; ///< films and runs, which may stand after what names them
    std::set<std::string> m_films;
    std::map<std::string, std::string> m_marks; ///< mark → film
};

} // namespace

Result<BookCheck> checkBook(SqlStore& store) { return Check(store).all(); }

} // namespace ullage::store
