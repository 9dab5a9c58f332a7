#include "app/words/item_words.h"

#include "app/words/number_text.h"
#include "app/words/shown_names.h"

#include <QCoreApplication>

#include <cmath>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Cupboard)
};

} // namespace

QString itemName(const ledger::Item& item, const formulary::Formulary& formulary,
                 const Wording& wording)
{
    if (item.solution.empty())
        return shownName(item.name);
    const auto solution = formulary.solution(item.solution);
    const QString name = shownName(solution ? solution->name : item.solution);
    if (item.kind == ledger::ItemKind::Liquid)
        return Words::tr("%1, concentrate").arg(name);
    return item.makes ? Words::tr("%1, %2", "solution, what a packet makes")
                            .arg(name, volumeText(*item.makes, wording))
                      : name;
}

QString itemAmountText(ledger::ItemKind kind, double amount, const QString& unit,
                       const Wording& wording)
{
    switch (kind) {
    case ledger::ItemKind::Powder:
        return amount == std::floor(amount)
                   ? Words::tr("%Ln packet(s)", nullptr, static_cast<int>(amount))
                   : Words::tr("part of a packet, %1 of it")
                         .arg(percentText(amount, wording.locale));
    case ledger::ItemKind::Liquid:
        return volumeText(chemistry::Millilitres(amount), wording);
    case ledger::ItemKind::Chemical:
        return Words::tr("%1 g").arg(numberText(amount, amount < 10 ? 2 : 1, wording.locale));
    case ledger::ItemKind::Supply:
        break;
    }
    const QString number = numberText(amount, 2, wording.locale);
    return unit.isEmpty() ? number
                          : Words::tr("%1 %2", "amount, unit of a supply").arg(number, unit);
}

} // namespace ullage::app
