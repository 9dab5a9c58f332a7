#include "app/paper/weighing_paper.h"

#include "app/paper/paper_parts.h"
#include "app/words/cautions.h"
#include "app/words/formula_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "app/words/weighing_words.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct WeighingWords {
    Q_DECLARE_TR_FUNCTIONS(WeighingPaper)
};

PaperTable partsTable(const cupboard::WeighOut& out, const QLocale& locale)
{
    PaperTable table;
    table.columns = {{QString(), false, true},
                     {WeighingWords::tr("In this order")},
                     {WeighingWords::tr("Weigh"), true}};
    if (out.keepsChemicals) {
        table.columns.push_back({WeighingWords::tr("In the cupboard"), true});
        table.columns.push_back({WeighingWords::tr("Lacks"), true});
    }
    for (const cupboard::WeighedPart& part : out.parts) {
        QStringList row{QString(), partName(part.part), amountText(part.part, locale)};
        if (out.keepsChemicals)
            row << hereText(part, locale) << lacksText(part, locale);
        table.rows.push_back(row);
    }
    return table;
}

} // namespace

PaperDocument weighingPaper(const WeighingSheet& sheet, const PaperAbout& about)
{
    PaperDocument document;
    document.title = WeighingWords::tr("To weigh out: %1").arg(sheet.name);
    document.under = underOf(about);
    document.letters = 4;
    document.blocks.emplace_back(
        PaperWords{WeighingWords::tr("%1 of %2, into %3", "volume, solution, bottle")
                       .arg(volumeText(sheet.makes, about.wording), shownName(sheet.solution->name),
                            shownName(sheet.vessel->name)),
                   true});
    document.blocks.emplace_back(
        PaperWords{WeighingWords::tr("One after the other, each when the one before has "
                                     "dissolved; what is measured goes in at its place.")});
    document.blocks.emplace_back(partsTable(sheet.out, about.wording.locale));
    if (sheet.out.isLacking())
        document.blocks.emplace_back(PaperWords{
            WeighingWords::tr("The cupboard has too little of what stands under “Lacks”: buy it, "
                              "or count the jar, before anything is opened."),
            true});
    document.blocks.emplace_back(PaperHeading{WeighingWords::tr("Before anything is opened")});
    for (const QString& caution : mixingCautions(*sheet.solution, MixedFrom::RawChemicals))
        document.blocks.emplace_back(PaperWords{caution});
    for (const QString& label : {WeighingWords::tr("Weighed out by"), WeighingWords::tr("On")})
        document.blocks.emplace_back(PaperBlank{label});
    return document;
}

} // namespace ullage::app
