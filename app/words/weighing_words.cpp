#include "app/words/weighing_words.h"

#include "app/words/formula_words.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Weighing)
};

QString gramsText(double grams, const QLocale& locale)
{
    return amountText({{}, {}, grams, chemistry::AmountUnit::Gram}, locale);
}

} // namespace

std::vector<std::string> namesOfPart(const chemistry::Ingredient& part)
{
    const QString name = chemicalName(part.name);
    const QString form = saltFormName(part.form);
    if (form.isEmpty())
        return {name.toStdString()};
    return {partName(part).toStdString(), QStringLiteral("%1 %2").arg(name, form).toStdString()};
}

QString weighingLine(std::size_t number, const cupboard::WeighedPart& part, const QLocale& locale)
{
    return Words::tr("%1. %2: %3", "number, chemical, amount")
        .arg(locale.toString(static_cast<qulonglong>(number)), partName(part.part),
             amountText(part.part, locale));
}

QString hereText(const cupboard::WeighedPart& part, const QLocale& locale)
{
    if (part.part.unit != chemistry::AmountUnit::Gram)
        return QStringLiteral("–");
    if (!part.kept)
        return Words::tr("none", "of a chemical");
    if (!part.uncounted)
        return gramsText(part.here, locale);
    return part.here > 0 ? Words::tr("%1, and some not counted").arg(gramsText(part.here, locale))
                         : Words::tr("not counted", "a chemical in the cupboard");
}

QString lacksText(const cupboard::WeighedPart& part, const QLocale& locale)
{
    return part.lacks > 0 ? gramsText(part.lacks, locale) : QString();
}

QStringList lackingLines(const cupboard::WeighOut& out, const QLocale& locale)
{
    QStringList lines;
    if (!out.isLacking())
        return lines;
    for (const cupboard::WeighedPart& part : out.parts) {
        if (part.lacks <= 0)
            continue;
        lines << (part.kept ? Words::tr("%1: %2 missing (in the cupboard: %3)",
                                        "chemical, amount, amount")
                                  .arg(partName(part.part), lacksText(part, locale),
                                       hereText(part, locale))
                            : Words::tr("%1: %2 missing, none in the cupboard", "chemical, amount")
                                  .arg(partName(part.part), lacksText(part, locale)));
    }
    return lines;
}

} // namespace ullage::app
