#include "core/store/reference_check.h"

namespace ullage::store
{

using formulary::Refers;

namespace
{

Result<bool> any(Result<Rows> rows) { return rows ? rows->next() : tl::unexpected(rows.error()); }

} // namespace

ReferenceCheck::ReferenceCheck(Connection& connection, const formulary::Formulary& formulary,
                               const std::function<void(Error)>& found)
    : m_formulary(&formulary), m_found(&found),
      m_has(connection, QStringLiteral("SELECT 1 FROM entry WHERE type = ? AND id = ?")),
      m_hadBefore(connection,
                  QStringLiteral("SELECT 1 FROM entry WHERE type = ? AND id = ? AND seq < ?")),
      m_run(connection,
            QStringLiteral("SELECT 1 FROM entry WHERE run = ? AND type = 'event' LIMIT 1")),
      m_mixed(connection,
              QStringLiteral("SELECT 1 FROM entry WHERE batch = ? AND kind = 'mixed' LIMIT 1")),
      m_event(connection, QStringLiteral("SELECT 1 FROM entry WHERE type = 'event' AND id = ? AND "
                                         "seq < ? AND coalesce(batch, '') = ?")),
      m_mark(connection, QStringLiteral("SELECT 1 FROM entry WHERE type = 'film-mark' AND id = ? "
                                        "AND seq < ? AND film = ?"))
{
}

Result<void> ReferenceCheck::check(const EntryRow& row)
{
    const bool event = row.entry->event() != nullptr;
    Result<void> fine;
    ledger::eachReference(
        *row.entry, [&](const formulary::FieldDescription& is, const std::string& id) {
            const bool byFold = event && (is.refers == Refers::Solution ||
                                          is.refers == Refers::Vessel || is.name == "batch");
            if (!fine || byFold) {
                return;
            }
            const auto known = knows(is, id, row);
            if (!known) {
                fine = tl::unexpected(known.error());
            } else if (!*known) {
                (*m_found)(row.about(
                    {.code = ErrorCode::UnknownId, .field = std::string(is.name), .text = id}));
            }
        });
    return fine;
}

Result<bool> ReferenceCheck::knows(const formulary::FieldDescription& field, const std::string& id,
                                   const EntryRow& row)
{
    switch (field.refers) {
    case Refers::Nothing:
        return true;
    case Refers::Solution:
        return m_formulary->solution(id) != nullptr;
    case Refers::Same:
        return any(m_hadBefore.run(row.type, id, row.number));
    case Refers::Event:
        return any(m_event.run(id, row.number, row.batch));
    case Refers::FilmMark: {
        const auto* mark = std::get_if<ledger::FilmMark>(&row.entry->what);
        return any(m_mark.run(id, row.number, mark ? mark->film : std::string()));
    }
    default:
        break;
    }
    if (const auto last = m_last.find(field.refers); last != m_last.end() && last->second == id) {
        return true;
    }
    Result<bool> known = false;
    if (field.refers == Refers::Run) {
        known = any(m_run.run(id));
    } else if (field.refers == Refers::Batch) {
        known = any(m_mixed.run(id));
    }
    for (const std::string_view type : ledger::typesNamed(field.refers)) {
        const bool kind = field.refers == Refers::Kind && id == type;
        if (kind || !known || *known) {
            return kind ? true : known;
        }
        known = any(m_has.run(std::string(type), id));
    }
    if (known && *known) {
        m_last[field.refers] = id;
    }
    return known;
}

} // namespace ullage::store
