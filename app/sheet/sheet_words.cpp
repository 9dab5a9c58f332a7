#include "app/sheet/sheet_words.h"

#include "app/words/error_words.h"
#include "app/words/printable_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace ullage::app
{

namespace
{

const std::array kSheetEndings{QLatin1String(".csv"), QLatin1String(".tsv"), QLatin1String(".txt")};

struct SheetWords {
    Q_DECLARE_TR_FUNCTIONS(SheetWords)
};

QString quoted(const QString& name) { return SheetWords::tr("“%1”", "a name").arg(name); }

} // namespace

bool isSheetName(const QString& name)
{
    return std::any_of(kSheetEndings.begin(), kSheetEndings.end(), [&](QLatin1String ending) {
        return name.endsWith(ending, Qt::CaseInsensitive);
    });
}

QStringList openQuestions(const SheetOpen& open)
{
    QStringList questions;
    if (open.encoding) {
        questions << SheetWords::tr("Which encoding it has: letters with accents may be wrong.");
    }
    if (open.delimiter) {
        questions << SheetWords::tr("Which sign stands between the cells.");
    }
    if (open.decimal) {
        questions << SheetWords::tr("Whether a comma or a point stands before decimals.");
    }
    if (open.days) {
        questions << SheetWords::tr("Whether 3/4 is the 3rd of April or the 4th of March.");
    }
    return questions;
}

QString refusalLine(const SheetRefusal& refusal, const QString& file)
{
    Error error = refusal.error;
    error.file = file.toStdString();
    error.line = refusal.row;
    const QString line = errorLine(error);
    return refusal.column.isEmpty() ? line
                                    : SheetWords::tr("%1 (column “%2”)", "what is wrong (where)")
                                          .arg(line, shortened(refusal.column));
}

QStringList understoodLines(const SheetMapping& mapping)
{
    const QStringList between{SheetWords::tr("semicolons"), SheetWords::tr("commas"),
                              SheetWords::tr("tabs"), SheetWords::tr("bars")};
    const QStringList days{SheetWords::tr("day, month, year"), SheetWords::tr("month, day, year"),
                           SheetWords::tr("year, month, day")};
    const auto delimiter = mapping.reading.delimiter.value_or(store::SheetDelimiter::Comma);
    QStringList lines{
        SheetWords::tr("Read as %1: %2 between the cells, %3 before decimals, days as %4.",
                       "encoding, semicolons, a comma, day and month")
            .arg(QString::fromStdString(mapping.reading.encoding.value_or("UTF-8")),
                 between[static_cast<int>(delimiter)],
                 mapping.decimalComma ? SheetWords::tr("a comma") : SheetWords::tr("a point"),
                 days[static_cast<int>(mapping.order)])};
    for (const SheetColumnMeans& column : mapping.columns) {
        if (!column.heading.isEmpty()) {
            lines << SheetWords::tr("“%1”: %2", "heading of a column: what it is")
                         .arg(shortened(column.heading), sheetFieldName(column.field));
        }
    }
    return lines;
}

QString unusedText(const SheetMapping& mapping, const store::SheetTable& table)
{
    QStringList unused;
    for (std::size_t i = 0; i < mapping.columns.size(); ++i) {
        const auto says = [&](const QStringList& row) {
            return !saysNothing(row.value(static_cast<qsizetype>(i)));
        };
        const auto first =
            std::min(table.rows.size(), static_cast<std::size_t>(mapping.headingRow));
        if (mapping.columns[i].field == SheetField::Unused &&
            std::any_of(table.rows.begin() + static_cast<std::ptrdiff_t>(first), table.rows.end(),
                        says)) {
            const QString& heading = mapping.columns[i].heading;
            unused << quoted(heading.isEmpty() ? SheetWords::tr("Column %1").arg(i + 1)
                                               : shortened(heading));
        }
    }
    return unused.isEmpty() ? QString()
                            : SheetWords::tr("Columns that are not used: %1.")
                                  .arg(unused.join(QStringLiteral(", ")));
}

QString noColumnText(const SheetComing& coming)
{
    QStringList names;
    for (const SheetField field : coming.noColumn) {
        names << quoted(sheetFieldName(field));
    }
    return names.isEmpty() ? QString()
                           : SheetWords::tr("No column is known to be: %1.")
                                 .arg(names.join(QStringLiteral(", ")));
}

QString placed(const QString& file, int row, const QString& what)
{
    return file + u':' + QString::number(row) + QStringLiteral(": ") + what;
}

QString cameInOtherwise()
{
    return SheetWords::tr("This row came in before, and the book has it otherwise now. Undo that "
                          "import, or correct the entry in the Day book.");
}

QString comingText(const SheetComing& coming)
{
    QStringList parts;
    const auto add = [&](std::size_t count, const QString& words) {
        if (count > 0) {
            parts << words;
        }
    };
    const auto number = [](const std::vector<SheetRow>& rows) {
        return static_cast<int>(rows.size());
    };
    add(coming.bottles.size(), SheetWords::tr("%n bottle(s)", nullptr, number(coming.bottles)));
    add(coming.films.size(), SheetWords::tr("%n row(s) of film", nullptr, number(coming.films)));
    add(coming.tests.size(), SheetWords::tr("%n test(s)", nullptr, number(coming.tests)));
    return parts.join(QStringLiteral(", "));
}

} // namespace ullage::app
