#include "app/widgets/table_export.h"

#include "app/session/file_names.h"
#include "app/session/whole_file.h"
#include "app/widgets/prompts.h"
#include "app/widgets/shown_table.h"
#include "app/words/error_words.h"
#include "app/words/units.h"

#include <QAbstractItemView>
#include <QAction>
#include <QEvent>
#include <QRegularExpression>

namespace ullage::app
{

namespace
{

/// Words itself anew with the view that it belongs to.
class ExportEntry : public QAction
{
public:
    explicit ExportEntry(QAbstractItemView* view) : QAction(view)
    {
        word();
        view->installEventFilter(this);
    }

    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() == QEvent::LanguageChange)
            word();
        return QAction::eventFilter(watched, event);
    }

private:
    void word() { setText(TableExport::tr("&Export table…")); }
};

} // namespace

QString TableExport::fileName(const QString& table)
{
    static const QRegularExpression other(QStringLiteral("[^\\p{L}\\p{N}]+"),
                                          QRegularExpression::UseUnicodePropertiesOption);
    QString name = table.toLower();
    name.replace(other, QStringLiteral("-"));
    while (name.endsWith(u'-'))
        name.chop(1);
    return name + kTableEnding;
}

void TableExport::run(QWidget* parent, const ShownTable& table)
{
    const QString title = tr("Export a table");
    const auto file = prompts().saveFile(parent, title, fileName(table.name), tr("Tables (*.csv)"));
    if (!file)
        return;
    const auto written = writeWhole(withEnding(*file, kTableEnding), csvOf(table));
    if (!written)
        return prompts().fail(parent, title, errorSentence(written.error(), {{}, QLocale()}));
    prompts().tell(parent, title,
                   tr("%Ln row(s) written.", nullptr, static_cast<int>(table.rows.size())));
}

QAction* TableExport::offer(QAbstractItemView* view, const QString& name)
{
    auto* entry = new ExportEntry(view);
    view->addAction(entry);
    view->setContextMenuPolicy(Qt::ActionsContextMenu);
    connect(entry, &QAction::triggered, view, [view, name] {
        ShownTable table = tableOf(*view);
        if (!name.isEmpty())
            table.name = name;
        run(view, table);
    });
    return entry;
}

} // namespace ullage::app
