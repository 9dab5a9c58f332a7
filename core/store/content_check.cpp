#include "core/store/content_check.h"

#include "core/ledger/batch.h"
#include "core/store/batch_check.h"
#include "core/store/each_row.h"
#include "core/store/entry_row.h"
#include "core/store/event_columns.h"
#include "core/store/journal_codec.h"
#include "core/store/read_view.h"
#include "core/store/reference_check.h"

namespace ullage::store
{

using namespace ledger;

namespace
{

class Content
{
public:
    Content(Connection& connection, bool trusted, const std::function<void(Error)>& found,
            const Watch& watch)
        : m_connection(&connection), m_reader(trusted), m_trusted(trusted), m_found(&found),
          m_watch(&watch), m_references(connection, m_formulary, found)
    {
    }

    Result<ContentCheck> all()
    {
        const auto view = ReadView::open(*m_connection);
        if (!view) {
            return tl::unexpected(view.error());
        }
        return definitions().and_then([&] { return batches(); }).map([&] { return m_check; });
    }

private:
    // Everything that belongs to no batch, in order of entry.
    Result<void> definitions()
    {
        Statement rows(*m_connection, EntryRow::select("batch IS NULL ORDER BY seq"));
        return eachRow(rows.run(), [&](const Rows& row) -> Result<void> {
            if (auto fine = tick(); !fine) {
                return fine;
            }
            const EntryRow stored = m_reader.read(row, *m_found);
            return stored.entry ? define(stored) : Result<void>{};
        });
    }

    Result<void> define(const EntryRow& stored)
    {
        keep(check(*stored.entry), stored);
        m_check.events += stored.entry->event() ? 1 : 0;
        return m_references.check(stored).map([&] {
            std::visit(
                [&](const auto& what) {
                    if constexpr (requires { m_formulary.add(what); }) {
                        m_formulary.add(what);
                    }
                },
                stored.entry->what);
        });
    }

    Result<void> batches()
    {
        BatchCheck check(*m_connection, m_formulary, m_references, m_trusted, *m_found);
        Statement rows(*m_connection, EntryRow::select("batch IS NOT NULL ORDER BY batch, seq"));
        return eachRow(rows.run(),
                       [&](const Rows& row) -> Result<void> {
                           if (auto fine = tick(); !fine) {
                               return fine;
                           }
                           ++m_check.events;
                           return check.take(m_reader.read(row, *m_found));
                       })
            .and_then([&] { return check.end(); })
            .map([&] { m_check.batches = check.mixed(); });
    }

    Result<void> tick()
    {
        return m_check.entries++ % kPiecesUnwatched == 0 ? goOn(*m_watch, {m_check.entries, 0})
                                                         : Result<void>{};
    }

    void keep(const Result<void>& checked, const EntryRow& stored)
    {
        if (!checked) {
            (*m_found)(stored.about(checked.error()));
        }
    }

    Connection* m_connection;
    EntryRowReader m_reader;
    bool m_trusted;
    const std::function<void(Error)>* m_found;
    const Watch* m_watch;
    ContentCheck m_check;
    formulary::Formulary m_formulary;
    ReferenceCheck m_references; ///< by what m_formulary holds so far
};

} // namespace

Result<ContentCheck> checkContent(Connection& connection, bool trusted,
                                  const std::function<void(Error)>& found, const Watch& watch)
{
    return Content(connection, trusted, found, watch).all();
}

} // namespace ullage::store
