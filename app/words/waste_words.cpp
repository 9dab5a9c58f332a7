#include "app/words/waste_words.h"

#include "app/words/number_text.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WasteWords)
};

} // namespace

QString wasteName(ledger::Waste waste)
{
    switch (waste) {
    case ledger::Waste::Developer:
        return Words::tr("Developer");
    case ledger::Waste::Fixer:
        return Words::tr("Fixer");
    case ledger::Waste::Stop:
        return Words::tr("Stop bath");
    case ledger::Waste::Wash:
        return Words::tr("Wash aid and wetting agent");
    case ledger::Waste::Other:
        break;
    }
    return Words::tr("Other");
}

QStringList doubtWords(const std::vector<ledger::PouringDoubt>& doubts)
{
    QStringList words;
    for (const ledger::PouringDoubt doubt : doubts) {
        switch (doubt) {
        case ledger::PouringDoubt::OtherKind:
            words << Words::tr("This can is for another kind of waste.");
            break;
        case ledger::PouringDoubt::SulfurDioxide:
            words << Words::tr("Acid and sulfite or thiosulfate come together in it: that frees "
                               "sulfur dioxide. Take another can.");
            break;
        case ledger::PouringDoubt::Ammonia:
            words << Words::tr("Alkali and an ammonium fixer come together in it: that frees "
                               "ammonia. Take another can.");
            break;
        }
    }
    return words;
}

QString silverText(double grams, bool atLeast, const QLocale& locale)
{
    const QString amount = numberText(grams, grams < 10 ? 1 : 0, locale);
    return atLeast ? Words::tr("at least about %1 g").arg(amount)
                   : Words::tr("about %1 g").arg(amount);
}

} // namespace ullage::app
