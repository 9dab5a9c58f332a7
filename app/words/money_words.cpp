#include "app/words/money_words.h"

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

} // namespace ullage::app
