#include "core/store/cupboard_table.h"

#include "core/store/each_row.h"
#include "core/store/stored_moment.h"

namespace ullage::store
{

using namespace ledger;

namespace
{

// A mixing's packet stands on its line only; a line that is no JSON is told of elsewhere.
QString packetOf(const char* entry)
{
    return QStringLiteral("CASE WHEN json_valid(%1.body) THEN json_extract(%1.body, '$.packet') "
                          "END")
        .arg(QLatin1String(entry));
}

// Not by name taken back; what takes a taking back is folded.
QString stands(const char* entry)
{
    return QStringLiteral("%1.id NOT IN (SELECT voids FROM entry WHERE kind = 'voided' AND voids "
                          "IS NOT NULL)")
        .arg(QLatin1String(entry));
}

// Entries `e` among the events that `first` finds, those that take these back, and those that take
// such a taking back.
QString about(const QString& first)
{
    const QString which =
        QStringLiteral("e.type = 'event' AND e.id IN (WITH RECURSIVE about(id) AS (%1 UNION SELECT "
                       "taking.id FROM entry AS taking JOIN about ON taking.voids = about.id WHERE "
                       "taking.type = 'event') SELECT id FROM about) ORDER BY e.seq")
            .arg(first);
    return LineProof::select(which.toLatin1().constData());
}

QString aboutItem()
{
    return about(QStringLiteral("SELECT one.id FROM entry AS one WHERE one.item = ? AND one.type = "
                                "'event' UNION SELECT mixing.id FROM entry AS mixing WHERE "
                                "mixing.kind = 'mixed' AND %1 = ?")
                     .arg(packetOf("mixing")));
}

QString aboutItems()
{
    return about(QStringLiteral("SELECT one.id FROM entry AS one WHERE one.item IS NOT NULL AND "
                                "one.type = 'event' UNION SELECT mixing.id FROM entry AS mixing "
                                "WHERE mixing.kind = 'mixed' AND %1 IS NOT NULL")
                     .arg(packetOf("mixing")));
}

// What a taking is for stands on its line only.
QString takenFor()
{
    return QStringLiteral("SELECT DISTINCT item FROM entry WHERE item IS NOT NULL AND kind = "
                          "'taken' AND CASE WHEN json_valid(body) THEN json_extract(body, "
                          "'$.for') END = ?");
}

QString ended()
{
    return QStringLiteral("SELECT one.item FROM entry AS one WHERE one.kind = 'thrown-away' AND "
                          "one.item IS NOT NULL AND one.at_ms <= ? AND %1 UNION SELECT %2 FROM "
                          "entry AS mixing WHERE mixing.kind = 'mixed' AND mixing.at_ms <= ? AND "
                          "%2 IS NOT NULL AND %3")
        .arg(stands("one"), packetOf("mixing"), stands("mixing"));
}

} // namespace

CupboardTable::CupboardTable(Connection& connection)
    : m_proof(connection),
      m_lines(connection,
              LineProof::select("e.type IN ('packet', 'chemical', 'supply', 'barcode', 'work', "
                                "'container') ORDER BY e.seq")),
      m_linesOfAction(connection,
                      LineProof::select("e.action = ? AND e.type IN ('packet', 'chemical', "
                                        "'supply', 'barcode', 'work', 'container') ORDER BY "
                                        "e.seq")),
      m_onItem(connection, aboutItem()), m_onItems(connection, aboutItems()),
      m_takenFor(connection, takenFor()),
      m_onContainer(connection, about(QStringLiteral("SELECT one.id FROM entry AS one WHERE "
                                                     "one.container = ? AND one.type = 'event'"))),
      m_ended(connection, ended())
{
}

Result<std::vector<Entry>> CupboardTable::lines() { return linesFrom(m_lines.run()); }

Result<std::vector<Entry>> CupboardTable::linesOfAction(std::int64_t action)
{
    return linesFrom(m_linesOfAction.run(action));
}

Result<std::vector<Entry>> CupboardTable::linesFrom(Result<Rows> rows)
{
    return madeOfRows(std::move(rows), [&](const Rows& row) { return m_proof.entry(row); });
}

Result<std::vector<Event>> CupboardTable::eventsFrom(Result<Rows> rows)
{
    return madeOfRows(std::move(rows), [&](const Rows& row) { return m_proof.of<Event>(row); });
}

Result<std::vector<Event>> CupboardTable::eventsOnItem(const std::string& item)
{
    return eventsFrom(m_onItem.run(item, item));
}

Result<std::vector<Event>> CupboardTable::eventsOnItems() { return eventsFrom(m_onItems.run()); }

Result<std::vector<std::string>> CupboardTable::itemsTakenFor(const std::string& batch)
{
    return firstTexts(m_takenFor.run(batch));
}

Result<std::vector<Event>> CupboardTable::eventsOnContainer(const std::string& container)
{
    return eventsFrom(m_onContainer.run(container));
}

Result<std::vector<std::string>> CupboardTable::itemsEnded(chemistry::Instant at)
{
    return firstTexts(m_ended.run(millisecondsOf(at), millisecondsOf(at)));
}

} // namespace ullage::store
