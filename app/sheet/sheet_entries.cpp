#include "app/sheet/sheet_entries.h"

#include "app/sheet/sheet_records.h"
#include "core/store/journal_codec.h"

#include <algorithm>
#include <map>

namespace ullage::app
{

namespace
{

constexpr int kFewColumns = 2; // of these a row may well have one alone

// A kind that is none is refused.
std::optional<RowKind> rowKindOf(SheetCells& cells)
{
    using F = SheetField;
    if (const QString said = cells.text(F::Kind); !said.isEmpty()) {
        const auto kind = rowKindFrom(said);
        if (!kind) {
            cells.refuse(F::Kind, {.code = ErrorCode::UnknownKind,
                                   .field = "kind",
                                   .text = said.toStdString(),
                                   .allowed = "bottle, film, test"});
        }
        return kind;
    }
    if (cells.has(F::Films) || cells.has(F::Format)) {
        return RowKind::FilmRow;
    }
    if (cells.hasFigures() || (cells.has(F::Passed) && !cells.has(F::ExposureIndex))) {
        return RowKind::TestRow;
    }
    return cells.has(F::Film) || cells.has(F::ExposureIndex) ? RowKind::FilmRow
                                                             : RowKind::BottleRow;
}

class Rows
{
public:
    Rows(const store::SheetTable& table, const SheetMapping& mapping, const SheetKnown& known)
        : m_table(table), m_mapping(mapping), m_known(known), m_records(mapping, known, m_coming)
    {
    }

    SheetComing read()
    {
        m_coming.journal = store::defaultHeader() + '\n';
        m_coming.rows = {0};
        eachRow(true);
        eachRow(false);
        std::stable_sort(
            m_coming.refused.begin(), m_coming.refused.end(),
            [](const SheetRefusal& a, const SheetRefusal& b) { return a.row < b.row; });
        return std::move(m_coming);
    }

private:
    // Bottles first: a film's row may stand above that of its bottle.
    void eachRow(bool bottles)
    {
        m_seen.clear();
        for (std::size_t i = static_cast<std::size_t>(m_mapping.headingRow);
             i < m_table.rows.size(); ++i) {
            SheetCells cells(m_table.rows[i], static_cast<int>(i) + 1, m_mapping, m_known.now);
            if (isNoRecord(cells, m_table.rows[i])) {
                if (bottles) {
                    passOver(cells, m_table.rows[i]);
                }
                continue;
            }
            // The same words twice are two rows.
            const QString said = m_table.rows[i].join(QChar(0x1f));
            const QString key = said + QChar(0x1e) + QString::number(m_seen[said]++);
            const auto kind = rowKindOf(cells);
            if (kind && (*kind == RowKind::BottleRow) == bottles) {
                take(cells, *kind, m_records.read(cells, *kind, key));
            } else if (!kind && bottles) {
                take(cells, RowKind::BottleRow, {});
            }
        }
    }

    // What people write between their records: sums, the headings once more, a year by itself.
    [[nodiscard]] bool isNoRecord(const SheetCells& cells, const QStringList& row) const
    {
        const auto said = std::count_if(row.begin(), row.end(),
                                        [](const QString& cell) { return !saysNothing(cell); });
        const auto used = std::count_if(
            m_mapping.columns.begin(), m_mapping.columns.end(),
            [](const SheetColumnMeans& column) { return column.field != SheetField::Unused; });
        if (cells.used().isEmpty() || isSum(cells, row) || (said == 1 && used > kFewColumns)) {
            return true;
        }
        for (std::size_t i = 0; i < m_mapping.columns.size(); ++i) {
            const QString cell = row.value(static_cast<qsizetype>(i)).simplified();
            if (!cell.isEmpty() && cell != m_mapping.columns[i].heading) {
                return false;
            }
        }
        return true;
    }

    // Says so somewhere, and no bottle, fixer or day beside that.
    static bool isSum(const SheetCells& cells, const QStringList& row)
    {
        using F = SheetField;
        for (const F field : {F::BottleName, F::Fixer, F::Date}) {
            if (const QString said = cells.text(field); !said.isEmpty() && !isTotal(said)) {
                return false;
            }
        }
        return std::any_of(row.begin(), row.end(), isTotal);
    }

    void passOver(const SheetCells& cells, const QStringList& row)
    {
        QStringList said;
        for (const QString& cell : row) {
            if (!saysNothing(cell)) {
                said << cell.simplified();
            }
        }
        if (!said.isEmpty()) {
            m_coming.passedOver.push_back({cells.row(), said});
        }
    }

    void take(const SheetCells& cells, RowKind kind, const std::vector<ledger::Entry>& lines)
    {
        if (!cells.fine()) {
            m_coming.refused.insert(m_coming.refused.end(), cells.refused().begin(),
                                    cells.refused().end());
            return;
        }
        for (const ledger::Entry& entry : lines) {
            m_coming.journal += store::encode(entry) + '\n';
            m_coming.rows.push_back(cells.row());
        }
        auto& list = kind == RowKind::BottleRow ? m_coming.bottles
                     : kind == RowKind::FilmRow ? m_coming.films
                                                : m_coming.tests;
        list.push_back({cells.row(), cells.used()});
    }

    const store::SheetTable& m_table;
    const SheetMapping& m_mapping;
    const SheetKnown& m_known;
    std::map<QString, int> m_seen;
    SheetComing m_coming;
    SheetRecords m_records;
};

} // namespace

SheetComing entriesOf(const store::SheetTable& table, const SheetMapping& mapping,
                      const SheetKnown& known)
{
    return Rows(table, mapping, known).read();
}

} // namespace ullage::app
