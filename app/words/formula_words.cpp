#include "app/words/formula_words.h"

#include "app/words/number_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <utility>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Formulas)
};

constexpr std::array<std::pair<std::string_view, const char*>, 11> kSalts{{
    {"acetic acid", QT_TRANSLATE_NOOP("Formulas", "acetic acid")},
    {"sodium-sulfite", QT_TRANSLATE_NOOP("Formulas", "sodium sulfite")},
    {"sodium-carbonate", QT_TRANSLATE_NOOP("Formulas", "sodium carbonate")},
    {"sodium-thiosulfate", QT_TRANSLATE_NOOP("Formulas", "sodium thiosulfate")},
    {"sodium-sulfate", QT_TRANSLATE_NOOP("Formulas", "sodium sulfate")},
    {"borax", QT_TRANSLATE_NOOP("Formulas", "borax")},
    {"citric-acid", QT_TRANSLATE_NOOP("Formulas", "citric acid")},
    {"potassium-alum", QT_TRANSLATE_NOOP("Formulas", "potassium alum")},
    {"metol", QT_TRANSLATE_NOOP("Formulas", "metol")},
    {"hydroquinone", QT_TRANSLATE_NOOP("Formulas", "hydroquinone")},
    {"phenidone", QT_TRANSLATE_NOOP("Formulas", "phenidone")},
}};

constexpr std::array<std::pair<std::string_view, const char*>, 6> kForms{{
    {"anhydrous", QT_TRANSLATE_NOOP("Formulas", "anhydrous")},
    {"monohydrate", QT_TRANSLATE_NOOP("Formulas", "monohydrate")},
    {"pentahydrate", QT_TRANSLATE_NOOP("Formulas", "pentahydrate")},
    {"heptahydrate", QT_TRANSLATE_NOOP("Formulas", "heptahydrate")},
    {"decahydrate", QT_TRANSLATE_NOOP("Formulas", "decahydrate")},
    {"dodecahydrate", QT_TRANSLATE_NOOP("Formulas", "dodecahydrate")},
}};

template <class Table>
QString wordFor(const Table& table, std::string_view code)
{
    for (const auto& [known, word] : table) {
        if (known == code)
            return Words::tr(word);
    }
    return QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size()));
}

} // namespace

// A list of chemicals writes with a blank what a formula writes with a hyphen.
QString chemicalName(const std::string& name)
{
    std::string hyphened = name;
    std::replace(hyphened.begin(), hyphened.end(), ' ', '-');
    const QString found = wordFor(kSalts, hyphened);
    return found == QString::fromStdString(hyphened) ? wordFor(kSalts, name) : found;
}

QString chemicalCalled(const QString& written)
{
    const QString wanted = written.simplified();
    for (const auto& [known, word] : kSalts) {
        if (wanted.compare(Words::tr(word), Qt::CaseInsensitive) == 0)
            return QString::fromUtf8(known.data(), static_cast<qsizetype>(known.size()))
                .replace(u'-', u' ');
    }
    return {};
}

QString saltFormName(std::string_view form) { return wordFor(kForms, form); }

QString partName(const chemistry::Ingredient& ingredient)
{
    const QString name = chemicalName(ingredient.name);
    const QString form = saltFormName(ingredient.form);
    return form.isEmpty() ? name : Words::tr("%1, %2", "salt, its form").arg(name, form);
}

QString amountText(const chemistry::Ingredient& ingredient, const QLocale& locale)
{
    const QString number =
        numberText(ingredient.amount, chemistry::scaleDecimals(ingredient.amount), locale);
    return ingredient.unit == chemistry::AmountUnit::Gram ? Words::tr("%1 g").arg(number)
                                                          : Words::tr("%1 ml").arg(number);
}

} // namespace ullage::app
