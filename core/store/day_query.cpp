#include "core/store/day_query.h"

#include <QStringList>

#include <algorithm>

namespace ullage::store
{

namespace
{

QString utf8(const std::string& text) { return QString::fromStdString(text); }

// For LIKE with '\' as the escape: what contains the text anywhere.
QString containing(QString text)
{
    text.replace(u'\\', QStringLiteral("\\\\"));
    text.replace(u'%', QStringLiteral("\\%"));
    text.replace(u'_', QStringLiteral("\\_"));
    return u'%' + text + u'%';
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
            QStringLiteral("NOT (+e.kind = 'noted' AND json_extract(e.body, '$.text') GLOB "
                           "'run-times *[0-9]/[0-9]* run=*')")};
        if (kinds && !m_filter.kinds.empty())
            terms << QStringLiteral("+e.kind IN ") + list(m_filter.kinds);
        if (m_filter.batch.empty())
            terms << QStringLiteral(
                "(e.run IS NULL OR +e.kind <> 'processed' OR NOT EXISTS (SELECT 1 FROM entry o "
                "WHERE o.run = e.run AND o.kind = 'processed' AND o.seq < e.seq))");
        if (!m_filter.text.empty())
            terms << words();
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

    // SQLite folds the case of ASCII letters only, so other letters are also looked for in both.
    QString like(const QString& what)
    {
        const QString text = utf8(m_filter.text);
        QStringList forms{text, text.toLower(), text.toUpper()};
        const bool plain = std::all_of(text.begin(), text.end(),
                                       [](QChar letter) { return letter.unicode() < 0x80; });
        if (plain)
            forms = QStringList{text};
        forms.removeDuplicates();
        QStringList terms;
        for (const QString& form : forms)
            terms << what + QStringLiteral(" LIKE ") + value(containing(form)) +
                         QStringLiteral(" ESCAPE '\\'");
        return u'(' + terms.join(QStringLiteral(" OR ")) + u')';
    }

    QString words()
    {
        QStringList own;
        for (const char* field : {"text", "why", "how", "name", "by", "note"})
            own << QStringLiteral("coalesce(json_extract(e.body, '$.%1'), '')")
                       .arg(QLatin1String(field));
        // The line is asked first, which is much cheaper; where it has escapes it may not tell.
        const QString line = like(QStringLiteral("e.body"));
        QStringList terms{QStringLiteral("((%1 OR instr(e.body, char(92)) > 0) AND %2)")
                              .arg(line, like(own.join(QStringLiteral(" || char(10) || "))))};
        // The bottle: this one's, or another one's of the same run.
        QString bottles =
            QStringLiteral("SELECT b.id FROM batch b WHERE ") + like(QStringLiteral("b.name"));
        if (!m_filter.textSolutions.empty())
            bottles += QStringLiteral(" OR b.solution IN ") + list(m_filter.textSolutions);
        terms << QStringLiteral("e.batch IN (%1)").arg(bottles);
        QString again =
            QStringLiteral("SELECT b.id FROM batch b WHERE ") + like(QStringLiteral("b.name"));
        if (!m_filter.textSolutions.empty())
            again += QStringLiteral(" OR b.solution IN ") + list(m_filter.textSolutions);
        terms << QStringLiteral("(e.run IS NOT NULL AND EXISTS (SELECT 1 FROM entry o "
                                "WHERE o.run = e.run AND o.batch IN (%1)))")
                     .arg(again);
        const QString film =
            QStringLiteral("coalesce(json_extract(f.body, '$.name'), '') || char(10) || "
                           "coalesce(json_extract(f.body, '$.notes'), '') || char(10) || "
                           "coalesce(json_extract(f.body, '$.format'), '')");
        terms << QStringLiteral("(e.run IS NOT NULL AND EXISTS (SELECT 1 FROM entry f "
                                "WHERE f.run = e.run AND f.type = 'film' AND %1))")
                     .arg(like(film));
        terms << QStringLiteral("(e.film IS NOT NULL AND EXISTS (SELECT 1 FROM entry f "
                                "WHERE f.type = 'film' AND f.id = e.film AND %1))")
                     .arg(like(film));
        if (!m_filter.textKinds.empty())
            terms << QStringLiteral("+e.kind IN ") + list(m_filter.textKinds);
        return u'(' + terms.join(QStringLiteral(" OR ")) + u')';
    }

    const DayFilter& m_filter;
};

const QString kRows = QStringLiteral("SELECT e.seq, e.at_ms, e.body, e.batch, e.person FROM entry e"
                                     " WHERE ");
const QString kNewestFirst = QStringLiteral(" ORDER BY e.at_ms DESC, e.seq DESC");

// One kind has an index that gives the order; several are merged from as many walks. With anything
// rarer in the filter, or words to look for, the kinds are only tested.
bool byKind(const DayFilter& filter)
{
    return !filter.kinds.empty() && filter.batch.empty() && filter.person.empty() &&
           filter.text.empty();
}

} // namespace

Query dayRows(const DayFilter& filter, const std::optional<DayKey>& after,
              const std::optional<DayKey>& downTo, int limit)
{
    Builder builder(filter);
    QString sql;
    if (byKind(filter)) {
        QStringList walks;
        for (const std::string& kind : filter.kinds) {
            // In this order: the values are bound as they are written.
            const QString stretch = builder.stretch(after, downTo, kind);
            const QString rest = builder.rest(false);
            walks << QStringLiteral("SELECT * FROM (") + kRows + stretch + QStringLiteral(" AND ") +
                         rest + kNewestFirst + QStringLiteral(" LIMIT %1)").arg(limit);
        }
        sql =
            walks.join(QStringLiteral(" UNION ALL ")) + QStringLiteral(" ORDER BY 2 DESC, 1 DESC");
    } else {
        const QString stretch = builder.stretch(after, downTo);
        sql = kRows + stretch + QStringLiteral(" AND ") + builder.rest(true) + kNewestFirst;
    }
    sql += QStringLiteral(" LIMIT %1").arg(limit);
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
