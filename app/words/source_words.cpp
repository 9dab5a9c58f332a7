#include "app/words/source_words.h"

#include "app/words/figure_words.h"
#include "app/words/shown_names.h"
#include "core/formulary/source_line.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Figures)
};

} // namespace

QString sourceOnly(const std::string& line)
{
    return shownSource(QString::fromStdString(formulary::splitSource(line).text));
}

QString sourceText(const std::string& line)
{
    const QString text = sourceOnly(line);
    const QString own = QString::fromStdString(formulary::splitSource(line).text);
    const auto grade = formulary::gradeOf(line);
    // Words that say their grade themselves do not get it twice.
    if (!grade || own == QString::fromStdString(line).trimmed() ||
        (*grade == chemistry::Grade::Published && !text.isEmpty()))
        return text;
    return text.isEmpty() ? gradeName(grade)
                          : Words::tr("%1: %2", "grade, source").arg(gradeName(grade), text);
}

} // namespace ullage::app
