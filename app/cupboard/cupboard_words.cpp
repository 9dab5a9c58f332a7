#include "app/cupboard/cupboard_words.h"

#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"

#include <QCoreApplication>

#include <cmath>

namespace ullage::app
{

namespace
{

struct CupboardWords {
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
        return CupboardWords::tr("%1, concentrate").arg(name);
    return item.makes ? CupboardWords::tr("%1, %2", "solution, what a packet makes")
                            .arg(name, volumeText(*item.makes, wording))
                      : name;
}

QString itemAmountText(ledger::ItemKind kind, double amount, const QString& unit,
                       const Wording& wording)
{
    switch (kind) {
    case ledger::ItemKind::Powder:
        return amount == std::floor(amount)
                   ? CupboardWords::tr("%Ln packet(s)", nullptr, static_cast<int>(amount))
                   : CupboardWords::tr("part of a packet, %1 of it")
                         .arg(percentText(amount, wording.locale));
    case ledger::ItemKind::Liquid:
        return volumeText(chemistry::Millilitres(amount), wording);
    case ledger::ItemKind::Chemical:
        return CupboardWords::tr("%1 g").arg(
            numberText(amount, amount < 10 ? 2 : 1, wording.locale));
    case ledger::ItemKind::Supply:
        break;
    }
    const QString number = numberText(amount, 2, wording.locale);
    return unit.isEmpty()
               ? number
               : CupboardWords::tr("%1 %2", "amount, unit of a supply").arg(number, unit);
}

QString leftText(const ledger::ItemHere& here, const QString& unit, const Wording& wording)
{
    return here.stock.left ? itemAmountText(here.item.kind, *here.stock.left, unit, wording)
                           : CupboardWords::tr("amount not known");
}

QString keepsText(const ledger::ItemHere& here, chemistry::Instant now, const Wording& wording)
{
    using ledger::Keeps;
    const ledger::Shelflife& life = here.life;
    if (!life.until)
        return here.stock.openedAt ? CupboardWords::tr("opened %1")
                                         .arg(dayText(*here.stock.openedAt, now, wording.locale))
                                   : QString();
    if (life.byOpening) {
        const QString day = dayText(*life.until, now, wording.locale);
        if (life.keeps == Keeps::Past)
            return CupboardWords::tr("opened too long, kept to %1").arg(day);
        const double left = chemistry::daysBetween(now, *life.until).value();
        return CupboardWords::tr("opened, keeps %Ln more day(s), to %1", nullptr,
                                 static_cast<int>(std::floor(left)))
            .arg(day);
    }
    const QString day = dayWords(here.item.useBy, wording.locale);
    switch (life.keeps) {
    case Keeps::Past:
        return CupboardWords::tr("past its date since %1").arg(day);
    case Keeps::EndsSoon:
        return CupboardWords::tr("ends soon: use by %1").arg(day);
    case Keeps::Fine:
        break;
    }
    return CupboardWords::tr("use by %1").arg(day);
}

QString dayWords(const std::string& day, const QLocale& locale)
{
    const QString text = QString::fromStdString(day);
    const QDate date = QDate::fromString(text, Qt::ISODate);
    return date.isValid() ? yearDateText(date, locale) : text;
}

} // namespace ullage::app
