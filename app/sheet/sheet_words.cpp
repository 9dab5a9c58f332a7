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

QString sumsText(const SheetComing& coming)
{
    QStringList rows;
    for (const int row : coming.sums) {
        rows << QString::number(row);
    }
    return rows.isEmpty() ? QString()
                          : SheetWords::tr("%n row(s) only add others up and are left out: %1.",
                                           nullptr, static_cast<int>(rows.size()))
                                .arg(rows.join(u", "));
}

} // namespace ullage::app
