// Raw chemicals in words: names of salts, their forms, what to weigh.
#pragma once

#include "core/chemistry/formula.h"

#include <QLocale>
#include <QString>

namespace ullage::app
{

/// "sodium sulfite" for a salt the core knows, else the name as it was entered.
QString chemicalName(const std::string& name);
/// "sodium sulfite" for what chemicalName() calls it in the user's language, however it is written;
/// empty for what is none of those.
QString chemicalCalled(const QString& written);
/// "anhydrous", "heptahydrate" …; empty for empty.
QString saltFormName(std::string_view form);
/// Both, "sodium sulfite, anhydrous"; the name alone where there is only one form.
QString partName(const chemistry::Ingredient& ingredient);
/// "50 g", "2.5 g", "28 ml".
QString amountText(const chemistry::Ingredient& ingredient, const QLocale& locale);

} // namespace ullage::app
