// "Export a table…" of the File menu: every table of the book, wherever it is shown.
#pragma once

#include <QObject>

#include "app/window/book_tables.h"
#include "app/window/window_parts.h"

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
    /// As they are offered: what the page in view shows comes first.
    [[nodiscard]] std::vector<BookTable> offered() const;

private:
    WindowParts m_parts;
    BookFiles& m_files;
};

} // namespace ullage::app
