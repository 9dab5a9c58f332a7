#include "app/words/money_words.h"

#include "app/words/number_text.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace ullage::app
{

namespace
{

struct MoneyWords {
    Q_DECLARE_TR_FUNCTIONS(MoneyWords)
};

constexpr qsizetype kHundredths = 2;

} // namespace

// By its digits, not as a number: a double has too few of them.
QString moneyText(const ledger::Decimal& amount, const std::string& currency, const QLocale& locale)
{
    const QString text = QString::fromStdString(amount.text());
    const QString whole = text.section(u'.', 0, 0);
    const QString places = text.section(u'.', 1).leftJustified(kHundredths, u'0');
    QString shown = locale.toString(whole.toLongLong());
    if (whole == QLatin1String("-0"))
        shown.prepend(locale.negativeSign());
    shown += locale.decimalPoint();
    for (const QChar digit : places)
        shown += locale.toString(digit.digitValue());
    return currency.empty() ? shown
                            : shown + QStringLiteral("\u00a0") + QString::fromStdString(currency);
}

QString moneyText(const ledger::Money& money, const QLocale& locale)
{
    QStringList sums;
    for (const auto& [currency, sum] : money.sums())
        sums << moneyText(sum, currency, locale);
    return sums.join(MoneyWords::tr(" + ", "between sums of two currencies"));
}

QString costText(const ledger::Cost& cost, const QLocale& locale)
{
    const QString known = moneyText(cost.money, locale);
    if (cost.whole)
        return known;
    return known.isEmpty() ? MoneyWords::tr("not known") : MoneyWords::tr("at least %1").arg(known);
}

QString bottleCostText(const ledger::Cost& cost, chemistry::Films done, const QLocale& locale)
{
    if (cost.money.empty())
        return {};
    const QString known = costText(cost, locale);
    return cost.whole && done > chemistry::Films(0)
               ? MoneyWords::tr("Cost %1 so far, %2 for each film done.")
                     .arg(known, moneyText(cost.money.forEachOf(done.value()), locale))
               : MoneyWords::tr("Cost %1 so far.").arg(known);
}

QString endedCostText(const ledger::Cost& cost, chemistry::Films done, const QLocale& locale)
{
    if (cost.money.empty())
        return {};
    const QString known = costText(cost, locale);
    return cost.whole && done > chemistry::Films(0)
               ? MoneyWords::tr("Cost %1, %2 for each film done.")
                     .arg(known, moneyText(cost.money.forEachOf(done.value()), locale))
               : MoneyWords::tr("Cost %1.").arg(known);
}

Explanation explainCost(const ledger::Cost& cost, chemistry::Films done, const Wording& wording)
{
    Explanation why;
    why.title = MoneyWords::tr("Cost so far");
    const QString known = costText(cost, wording.locale);
    why.value = known.isEmpty() ? MoneyWords::tr("not known") : known;
    why.equation = MoneyWords::tr(
        "The price of each thing from the cupboard when it was bought × what was taken of it ÷ "
        "what "
        "was bought; a packet of powder whole. What was poured in from another bottle brings its "
        "part along, what was poured on into another takes it.");
    why.inputs = {{MoneyWords::tr("Films done"), filmsText(done, wording)}};
    if (!cost.whole)
        why.notes << MoneyWords::tr("Not all that went in has a price in the cupboard.");
    why.hasGrade = false;
    return why;
}

} // namespace ullage::app
