// "Export a table…" of the File menu: every table of the book, wherever it is shown.
#pragma once

#include <QObject>

#include "app/window/book_tables.h"
#include "app/window/window_parts.h"

#include <functional>
#include <vector>

namespace ullage::app
{

class BookFiles;

/// For the window's thread. Asks which table and which file; reads and writes on a thread.
class TablePlace : public QObject
{
    Q_OBJECT

public:
    TablePlace(const WindowParts& parts, BookFiles& files, QObject* parent = nullptr);

    void exportTable();
    /// The same of one that was chosen.
    void exportThe(BookTable table);
    /// What the shopping list is planned for; half a year until it is said.
    void setPlanFor(std::function<cupboard::PlanFor()> planFor) { m_planFor = std::move(planFor); }
    /// As they are offered: what the page in view shows comes first.
    [[nodiscard]] std::vector<BookTable> offered() const;

private:
    WindowParts m_parts;
    BookFiles& m_files;
    std::function<cupboard::PlanFor()> m_planFor;
};

} // namespace ullage::app
