// What a month, or any period, adds up to.
#include "app/paper/paper_parts.h"

#include "app/words/money_words.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct StatisticsPapers {
    Q_DECLARE_TR_FUNCTIONS(StatisticsPapers)
};

void addNotes(PaperDocument& document, const ledger::Statistics& so, const PaperAbout& about)
{
    document.blocks.emplace_back(PaperHeading{StatisticsPapers::tr("How it is counted")});
    for (const QString& note : statisticsNotes(so, about.wording))
        document.blocks.emplace_back(PaperWords{note});
}

} // namespace

PaperDocument monthPaper(const ledger::Statistics& so, const formulary::Formulary& formulary,
                         QDate month, const PaperAbout& about)
{
    const Wording& wording = about.wording;
    PaperDocument document;
    document.title = StatisticsPapers::tr("%1 %2", "month, year")
                         .arg(wording.locale.standaloneMonthName(month.month()))
                         .arg(month.year());
    document.under = underOf(about);
    addTable(document, personTable(so, wording));
    addTable(document, solutionTable(so, formulary, wording));
    addTable(document, mixedTable(so, formulary, wording));
    addTable(document, endedTable(so, formulary, wording));
    document.blocks.emplace_back(PaperHeading{StatisticsPapers::tr("Bought")});
    document.blocks.emplace_back(PaperWords{
        so.bought.empty()
            ? StatisticsPapers::tr("Nothing with a price was bought.")
            : StatisticsPapers::tr("Together %1.").arg(moneyText(so.bought, wording.locale))});
    addNotes(document, so, about);
    return document;
}

PaperDocument statisticsPaper(const ledger::Statistics& so, const formulary::Formulary& formulary,
                              const QString& period, const PaperAbout& about)
{
    const Wording& wording = about.wording;
    PaperDocument document;
    document.title = StatisticsPapers::tr("Statistics · %1", "period").arg(period);
    document.under = underOf(about);
    addTable(document, monthTable(so, wording));
    addTable(document, solutionTable(so, formulary, wording));
    addTable(document, personTable(so, wording));
    addTable(document, endTable(so, wording));
    addNotes(document, so, about);
    return document;
}

} // namespace ullage::app
