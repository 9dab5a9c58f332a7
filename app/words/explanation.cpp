#include "app/words/explanation.h"

#include "app/words/constant_words.h"
#include "app/words/number_text.h"
#include "app/words/source_words.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Explanations)
};

} // namespace

QStringList Explanation::lines() const
{
    QStringList all{title, value, equation};
    for (const ExplainedInput& input : inputs)
        all << Words::tr("%1: %2", "name, value").arg(input.name, input.value);
    for (const ExplainedConstant& constant : constants) {
        QString line = Words::tr("%1: %2", "name, value").arg(constant.name, constant.value);
        if (!constant.range.isEmpty())
            line += Words::tr(" (range %1)").arg(constant.range);
        const QString word = gradeName(constant.grade);
        line += constant.source.isEmpty()
                    ? QStringLiteral(" — ") + word
                    : Words::tr(" — %1: %2", "grade, source").arg(word, constant.source);
        all << line;
    }
    all << notes;
    if (hasGrade)
        all << gradeMeaning(grade);
    all.removeAll(QString());
    return all;
}

ExplainedConstant explained(const QString& name, const chemistry::Constant& constant,
                            const QLocale& locale)
{
    ExplainedConstant result;
    result.name = name;
    result.value = plainNumber(constant.value, locale);
    if (!constant.unit.empty())
        result.value += u'\u00a0' + constantUnit(constant.unit);
    if (constant.low != constant.high)
        result.range = Words::tr("%1 – %2").arg(plainNumber(constant.low, locale),
                                                plainNumber(constant.high, locale));
    result.source = constantSource(constant.source);
    result.grade = constant.grade;
    return result;
}

ExplainedConstant explained(const formulary::Solution& solution, formulary::Figure figure,
                            const Wording& wording)
{
    ExplainedConstant result;
    result.name = figureName(figure);
    result.value = figureText(solution, figure, wording);
    if (result.value.isEmpty())
        result.value = Words::tr("not known");
    const std::string line = formulary::sourceLine(solution, figure);
    result.source = sourceOnly(line);
    result.grade = formulary::gradeOf(line);
    return result;
}

ExplainedConstant explainedWear(const formulary::Solution& solution, const Wording& wording)
{
    ExplainedConstant result;
    result.name = wearName();
    result.value = wearText(solution.wear, wording);
    const std::string line = formulary::sourceLine(solution, "wear");
    result.source = sourceOnly(line);
    result.grade = formulary::gradeOf(line);
    return result;
}

void gradeByConstants(Explanation& explanation)
{
    MaybeGrade grade = chemistry::Grade::Computed;
    for (const ExplainedConstant& constant : explanation.constants)
        grade = formulary::lesser(grade, constant.grade);
    explanation.grade = grade;
}

} // namespace ullage::app
