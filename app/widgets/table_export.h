// "Export table…" of a table that is shown: the same for every one of them.
#pragma once

#include <QObject>
#include <QString>

class QAbstractItemView;
class QAction;
class QWidget;

namespace ullage::app
{

struct ShownTable;

/// Asks for a file and writes the table as CSV, whole or not at all; tells how many rows it has, or
/// why it could not be written.
class TableExport : public QObject
{
    Q_OBJECT

public:
    static void run(QWidget* parent, const ShownTable& table);

    /// Gives a view the entry, by the mouse and the menu key; `name` is the table's, that of the
    /// view (accessibleName()) where it is empty. The entry is the view's.
    static QAction* offer(QAbstractItemView* view, const QString& name = {});

    /// The file's name to begin with: the table's, in letters that every file system takes.
    static QString fileName(const QString& table);
};

} // namespace ullage::app
