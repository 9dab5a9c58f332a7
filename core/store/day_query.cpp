#include "core/store/day_query.h"

#include <QStringList>

namespace ullage::store
{

namespace
{

QString utf8(const std::string& text) { return QString::fromStdString(text); }

// Whether one of its voidings holds. Undo voids a voiding and may be undone again itself.
QString isVoided(const QString& entry, int depth = 0)
{
    constexpr int kDeepest = 3;
    const QString by = entry + QStringLiteral("_by");
    QString sql = QStringLiteral("EXISTS (SELECT 1 FROM entry %2 WHERE %2.voids = %1.id "
                                 "AND %2.kind = 'voided'")
                      .arg(entry, by);
    if (depth < kDeepest)
        sql += QStringLiteral(" AND NOT ") + isVoided(by, depth + 1);
    return sql + u')';
}

class Builder
{
public:
    explicit Builder(const DayFilter& filter) : m_filter(filter) {}

    // Which entries in which stretch of the book, by what the indexes know.
    QString stretch(const std::optional<DayKey>& after, const std::optional<DayKey>& downTo,
                    const std::string& kind = {})
    {
        QStringList terms{QStringLiteral("e.at_ms IS NOT NULL")};
        // Before the range: the index that fits then also gives the order.
        if (!m_filter.batch.empty())
            terms << QStringLiteral("e.batch = ") + value(utf8(m_filter.batch));
        if (!m_filter.person.empty())
            terms << QStringLiteral("e.person = ") + value(utf8(m_filter.person));
        if (!kind.empty())
            terms << QStringLiteral("e.kind = ") + value(utf8(kind));
        if (m_filter.from)
            terms << QStringLiteral("e.at_ms >= ") + milliseconds(*m_filter.from);
        if (m_filter.until)
            terms << QStringLiteral("e.at_ms < ") + milliseconds(*m_filter.until);
        if (after)
            terms << key(*after, QStringLiteral("<"));
        if (downTo)
            terms << key(*downTo, QStringLiteral(">="));
        return terms.join(QStringLiteral(" AND "));
    }

    // What the indexes do not know.
    QString rest(bool kinds)
    {
        QStringList terms{
            QStringLiteral("+e.kind <> 'voided'"),
            // A mark that takes another back is told of with that one.
            QStringLiteral("NOT (+e.kind = 'film-mark' AND e.voids IS NOT NULL)"),
            // The times of a run are kept as a note; they are shown with the run.
            QStringLiteral("NOT (+e.kind = 'noted' AND CASE WHEN json_valid(e.body) THEN "
                           "json_extract(e.body, '$.text') GLOB "
                           "'run-times *[0-9]/[0-9]* run=*' ELSE 0 END)")};
        if (kinds && !m_filter.kinds.empty())
            terms << QStringLiteral("+e.kind IN ") + list(m_filter.kinds);
        QString run = QStringLiteral("NOT ") + enteredAnew(QStringLiteral("e"));
        if (m_filter.batch.empty())
            run += QStringLiteral(" AND NOT EXISTS (SELECT 1 FROM entry o WHERE o.run = e.run AND "
                                  "o.kind = 'processed' AND o.seq < e.seq AND NOT ") +
                   enteredAnew(QStringLiteral("o")) + u')';
        terms << QStringLiteral("(e.run IS NULL OR +e.kind <> 'processed' OR (%1))").arg(run);
        return terms.join(QStringLiteral(" AND "));
    }

    QVariantList values;

private:
    QString value(const QVariant& one)
    {
        values << one;
        return QStringLiteral("?");
    }
    QString milliseconds(chemistry::Instant at)
    {
        return value(qlonglong{at.time_since_epoch().count()});
    }
    QString key(const DayKey& key, const QString& sign)
    {
        const QString at = value(qlonglong{key.atMs});
        return QStringLiteral("(e.at_ms, e.seq) %1 (%2, %3)")
            .arg(sign, at, value(qlonglong{key.seq}));
    }
    QString list(const std::vector<std::string>& all)
    {
        QStringList marks;
        for (const std::string& one : all)
            marks << value(utf8(one));
        return u'(' + marks.join(u',') + u')';
    }

    const DayFilter& m_filter;
};

const QString kRows =
    QStringLiteral("SELECT ") + kDayRowColumns + QStringLiteral(" FROM entry e WHERE ");
const QString kNewestFirst = QStringLiteral(" ORDER BY e.at_ms DESC, e.seq DESC");

// One kind has an index that gives the order; several are merged from as many walks. With anything
// rarer in the filter the kinds are only tested.
bool byKind(const DayFilter& filter)
{
    return !filter.kinds.empty() && filter.batch.empty() && filter.person.empty();
}

} // namespace

QString enteredAnew(const QString& alias)
{
    const QString anew = alias + QStringLiteral("_anew");
    return QStringLiteral("(%3 AND EXISTS (SELECT 1 FROM entry %2 WHERE %2.run = %1.run AND "
                          "(+%2.batch = %1.batch OR +%2.action <> %1.action) AND "
                          "%2.kind = 'processed' AND %2.id <> %1.id AND NOT %4))")
        .arg(alias, anew, isVoided(alias), isVoided(anew));
}

DayRow dayRow(const Rows& rows)
{
    return {rows.number(0), rows.number(1), rows.bytes(2), rows.text(3), rows.text(4),
            rows.text(5),   rows.text(6),   rows.text(7),  rows.text(8)};
}

Query dayRows(const DayFilter& filter, const std::optional<DayKey>& after, int limit)
{
    Builder builder(filter);
    QString sql;
    if (byKind(filter)) {
        QStringList walks;
        for (const std::string& kind : filter.kinds) {
            // In this order: the values are bound as they are written.
            const QString stretch = builder.stretch(after, {}, kind);
            const QString rest = builder.rest(false);
            walks << QStringLiteral("SELECT * FROM (") + kRows + stretch + QStringLiteral(" AND ") +
                         rest + kNewestFirst + QStringLiteral(" LIMIT %1)").arg(limit);
        }
        sql =
            walks.join(QStringLiteral(" UNION ALL ")) + QStringLiteral(" ORDER BY 2 DESC, 1 DESC");
    } else {
        const QString stretch = builder.stretch(after, {});
        sql = kRows + stretch + QStringLiteral(" AND ") + builder.rest(true) + kNewestFirst;
    }
    sql += QStringLiteral(" LIMIT %1").arg(limit);
    return {sql, builder.values};
}

Query dayKeys(const DayFilter& filter, const std::optional<DayKey>& after, int limit,
              DayOrder order)
{
    Builder builder(filter);
    const QString sql =
        QStringLiteral("SELECT e.at_ms, e.seq FROM entry e WHERE ") + builder.stretch(after, {}) +
        (order == DayOrder::NewestFirst ? kNewestFirst
                                        : QStringLiteral(" ORDER BY e.at_ms, e.seq")) +
        QStringLiteral(" LIMIT %1").arg(limit);
    return {sql, builder.values};
}

Query dayRowsOf(const DayFilter& filter, const std::vector<DayKey>& keys)
{
    QStringList seqs;
    for (const DayKey& key : keys)
        seqs << QString::number(key.seq);
    Builder builder(filter);
    builder.values << QString(u'[' + seqs.join(u',') + u']');
    const QString stretch = builder.stretch({}, {});
    const QString sql = QStringLiteral("SELECT ") + kDayRowColumns +
                        QStringLiteral(" FROM json_each(?) one CROSS JOIN entry e "
                                       "ON e.seq = one.value WHERE ") +
                        stretch + QStringLiteral(" AND ") + builder.rest(true);
    return {sql, builder.values};
}

Query daySliceEnd(const DayFilter& filter, const std::optional<DayKey>& after, int size)
{
    Builder builder(filter);
    // The offset is bounded by the size of a slice and walks an index only.
    const QString sql = QStringLiteral("SELECT e.at_ms, e.seq FROM entry e WHERE ") +
                        builder.stretch(after, {}) + kNewestFirst +
                        QStringLiteral(" LIMIT 1 OFFSET %1").arg(size - 1);
    return {sql, builder.values};
}

Query dayCount(const DayFilter& filter, const std::optional<DayKey>& after,
               const std::optional<DayKey>& downTo)
{
    Builder builder(filter);
    const QString stretch = builder.stretch(after, downTo);
    const QString sql = QStringLiteral("SELECT count(*), min(e.at_ms) FROM entry e WHERE ") +
                        stretch + QStringLiteral(" AND ") + builder.rest(true);
    return {sql, builder.values};
}

} // namespace ullage::store
