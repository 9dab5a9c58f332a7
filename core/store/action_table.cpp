#include "core/store/action_table.h"

#include "core/store/each_row.h"

#include <algorithm>

namespace ullage::store
{

using namespace ledger;

ActionTable::ActionTable(const Connection& connection)
    : m_putAction(connection,
                  QStringLiteral(
                      "INSERT INTO action (mode, what, subject, of, seat) VALUES (?, ?, ?, ?, ?)")),
      m_actions(connection, QStringLiteral("SELECT id, mode, what, subject, of, seat FROM action "
                                           "ORDER BY id DESC LIMIT ?"))
{
}

Result<std::int64_t> ActionTable::put(const Action& action)
{
    const std::optional<std::int64_t> of = action.of == 0 ? std::nullopt : std::optional(action.of);
    const auto seat = action.seat.empty() ? std::nullopt : std::optional(action.seat);
    const auto rows =
        m_putAction.run(static_cast<int>(action.mode), action.what, action.subject, of, seat);
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    return m_putAction.lastId();
}

Result<std::vector<Action>> ActionTable::last(int count)
{
    std::vector<Action> found;
    return eachRow(m_actions.run(count),
                   [&](const Rows& row) -> Result<void> {
                       found.push_back({row.number(0), static_cast<ActionMode>(row.number(1)),
                                        row.text(2), row.text(3), row.number(4), row.text(5)});
                       return {};
                   })
        .map([&] {
            std::reverse(found.begin(), found.end());
            return std::move(found);
        });
}

} // namespace ullage::store
