#include "app/window/table_place.h"

#include "app/session/file_names.h"
#include "app/widgets/prompts.h"
#include "app/widgets/table_export.h"
#include "app/window/book_files.h"
#include "app/window/main_window.h"

#include <algorithm>

namespace ullage::app
{

namespace
{

Page pageOf(BookTable table)
{
    switch (table) {
    case BookTable::Bottles:
    case BookTable::AllBottles:
        return Page::Shelf;
    case BookTable::Cupboard:
    case BookTable::Shopping:
    case BookTable::Work:
    case BookTable::Cans:
        return Page::Cupboard;
    case BookTable::Solutions:
        return Page::Formulary;
    case BookTable::Months:
    case BookTable::BySolution:
    case BookTable::Ends:
        break;
    }
    return Page::DayBook;
}

} // namespace

TablePlace::TablePlace(const WindowParts& parts, BookFiles& files, QObject* parent)
    : QObject(parent), m_parts(parts), m_files(files)
{
}

std::vector<BookTable> TablePlace::offered() const
{
    std::vector<BookTable> tables;
    for (int i = 0; i < kBookTables; ++i)
        tables.push_back(static_cast<BookTable>(i));
    std::stable_partition(tables.begin(), tables.end(), [page = m_parts.window.page()](auto table) {
        return pageOf(table) == page;
    });
    return tables;
}

void TablePlace::exportTable()
{
    if (!m_parts.session.isOpen())
        return;
    const QString title = tr("Export a table");
    const auto tables = offered();
    QStringList names;
    for (const BookTable table : tables)
        names << bookTableName(table);
    const auto chosen = prompts().choose(&m_parts.window, title, tr("Which table"), names);
    if (!chosen)
        return;
    exportThe(tables[static_cast<std::size_t>(*chosen)]);
}

void TablePlace::exportThe(BookTable table)
{
    if (!m_parts.session.isOpen())
        return;
    const QString title = tr("Export a table");
    const auto file = prompts().saveFile(
        &m_parts.window, title, TableExport::fileName(bookTableName(table)), tr("Tables (*.csv)"));
    if (!file || m_files.isOpenBook(title, withEnding(*file, kTableEnding)))
        return;
    m_files.run(
        title,
        tableJob(m_parts.session.path(), withEnding(*file, kTableEnding), table,
                 m_parts.session.now(), m_parts.wording(),
                 m_planFor ? m_planFor() : cupboard::PlanFor{.weeks = cupboard::kWeeksAhead}),
        [](int rows) { return tr("%Ln row(s) written.", nullptr, rows); });
}

} // namespace ullage::app
