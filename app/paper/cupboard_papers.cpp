#include "app/paper/paper_parts.h"

#include "app/words/cautions.h"
#include "app/words/moment_text.h"
#include "app/words/money_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

namespace
{

struct CupboardPapers {
    Q_DECLARE_TR_FUNCTIONS(CupboardPapers)
};

QString solutionNamed(const formulary::Formulary& formulary, const std::string& id)
{
    const auto found = formulary.solution(id);
    return shownName(found ? found->name : id);
}

QString wasteName(ledger::Waste holds)
{
    switch (holds) {
    case ledger::Waste::Developer:
        return CupboardPapers::tr("used developer");
    case ledger::Waste::Fixer:
        return CupboardPapers::tr("used fixer");
    case ledger::Waste::Stop:
        return CupboardPapers::tr("used stop bath");
    case ledger::Waste::Wash:
        return CupboardPapers::tr("wash water");
    case ledger::Waste::Other:
        break;
    }
    return CupboardPapers::tr("other waste");
}

// By the first sentence of words: developer and fixer have codes of their own.
QString wasteCodeOf(ledger::Waste holds)
{
    if (holds == ledger::Waste::Developer)
        return Cautions::wasteCode(formulary::Role::Developer);
    if (holds == ledger::Waste::Fixer)
        return Cautions::wasteCode(formulary::Role::Fixer);
    return {};
}

QString silverText(double grams, bool atLeast, const QLocale& locale)
{
    const QString text = CupboardPapers::tr("%1 g").arg(numberText(grams, 1, locale));
    return atLeast ? CupboardPapers::tr("at least %1").arg(text) : text;
}

// What was poured in since it was last handed over.
PaperTable pouredTable(const ledger::CanStock& stock,
                       const std::map<std::string, ledger::Batch>& batches, const PaperAbout& about)
{
    PaperTable table;
    table.columns = {{CupboardPapers::tr("Poured in")},
                     {CupboardPapers::tr("From")},
                     {CupboardPapers::tr("Volume"), true},
                     {CupboardPapers::tr("Silver"), true}};
    table.none = CupboardPapers::tr("Nothing has been poured in since it was handed over.");
    const auto since = stock.handed.empty() ? chemistry::Instant::min() : stock.handed.back().at;
    for (const ledger::PouredDone& done : stock.poured) {
        if (done.at <= since)
            continue;
        const auto batch = batches.find(done.batch);
        const QString from = batch != batches.end() ? QString::fromStdString(batch->second.name)
                                                    : QString::fromStdString(done.batch);
        table.rows.push_back({paperDay(done.at, about), from,
                              volumeText(done.volume, about.wording),
                              done.silver ? silverText(*done.silver, false, about.wording.locale)
                                          : CupboardPapers::tr("not known")});
    }
    return table;
}

QString plannedFor(const cupboard::PlanFor& planFor, const QLocale& locale)
{
    using Kind = cupboard::Beside::Kind;
    if (planFor.films)
        return CupboardPapers::tr("for %1", "films")
            .arg(filmsText(chemistry::Films(*planFor.films), {{}, locale}));
    const QString weeks = CupboardPapers::tr("for the work of %Ln week(s)", nullptr, planFor.weeks);
    switch (planFor.beside.kind) {
    case Kind::Nothing:
        break;
    case Kind::Usual:
        return CupboardPapers::tr("%1 and what usually comes besides").arg(weeks);
    case Kind::Given:
        constexpr double kDaysOfWeek = 7;
        return CupboardPapers::tr("%1, at %2 films a week in all")
            .arg(weeks, numberText(planFor.beside.filmsPerDay * kDaysOfWeek, 1, locale));
    }
    return weeks;
}

} // namespace

PaperDocument shoppingPaper(const cupboard::Plan& plan, const cupboard::PlanFor& planFor,
                            const formulary::Formulary& formulary, const PaperAbout& about)
{
    const QLocale& locale = about.wording.locale;
    PaperDocument document;
    document.title = CupboardPapers::tr("Shopping list");
    document.under = CupboardPapers::tr("%1 · %2", "the book and the day, what it is planned for")
                         .arg(underOf(about), plannedFor(planFor, locale));
    document.letters = 4;
    PaperTable table;
    table.columns = {{QString(), false, true},
                     {CupboardPapers::tr("Packets"), true},
                     {CupboardPapers::tr("Of")},
                     {CupboardPapers::tr("Each makes"), true},
                     {CupboardPapers::tr("By")},
                     {CupboardPapers::tr("Each costs"), true},
                     {CupboardPapers::tr("A film"), true},
                     {CupboardPapers::tr("All"), true}};
    table.none = CupboardPapers::tr("Nothing needs to be bought for the work that is known.");
    for (const cupboard::ToBuy& buy : plan.toBuy) {
        ledger::Money all;
        if (buy.each)
            all.add(*buy.each, buy.currency, buy.packets);
        table.rows.push_back(
            {QString(), locale.toString(buy.packets), solutionNamed(formulary, buy.solution),
             volumeText(buy.makes, about.wording), paperDay(buy.by, about),
             buy.each ? moneyText(*buy.each, buy.currency, locale)
                      : CupboardPapers::tr("not known"),
             moneyText(cupboard::costOfFilm(buy), locale), moneyText(all, locale)});
    }
    if (!table.rows.empty() && !plan.cost.empty()) {
        table.rows.push_back({QString(), QString(), CupboardPapers::tr("Together"), QString(),
                              QString(), QString(), QString(), moneyText(plan.cost, locale)});
        table.total = true;
    }
    document.blocks.emplace_back(table);
    if (!plan.costKnown)
        document.blocks.emplace_back(
            PaperWords{CupboardPapers::tr("What has no price is not counted in.")});
    PaperTable mix;
    mix.columns = {{CupboardPapers::tr("Mix by")},
                   {CupboardPapers::tr("What")},
                   {CupboardPapers::tr("Volume"), true},
                   {CupboardPapers::tr("For"), true}};
    mix.none = CupboardPapers::tr("Nothing needs to be mixed for it.");
    std::vector<std::pair<chemistry::Instant, QStringList>> mixed;
    for (const cupboard::SolutionPlan& solution : plan.solutions) {
        for (const cupboard::Stretch& stretch : solution.stretches) {
            if (stretch.kind == cupboard::StretchKind::Mix)
                mixed.push_back(
                    {stretch.from,
                     {paperDay(stretch.from, about), solutionNamed(formulary, solution.solution),
                      volumeText(stretch.volume, about.wording),
                      filmsText(stretch.films, about.wording)}});
        }
    }
    std::stable_sort(mixed.begin(), mixed.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    for (auto& [at, row] : mixed)
        mix.rows.push_back(std::move(row));
    document.blocks.emplace_back(PaperHeading{CupboardPapers::tr("To mix from what is here")});
    document.blocks.emplace_back(mix);
    return document;
}

PaperDocument handOverPaper(const std::vector<ledger::CanHere>& cans,
                            const std::map<std::string, ledger::Batch>& batches,
                            const PaperAbout& about)
{
    PaperDocument document;
    document.title = CupboardPapers::tr("Waste to hand over");
    document.under = underOf(about);
    PaperTable table;
    table.columns = {{CupboardPapers::tr("Can")},
                     {CupboardPapers::tr("Holds")},
                     {CupboardPapers::tr("In it"), true},
                     {CupboardPapers::tr("Silver"), true},
                     {CupboardPapers::tr("Place")}};
    table.none = CupboardPapers::tr("There is no can for waste in the book.");
    chemistry::Millilitres volume{0};
    double silver = 0;
    bool atLeast = false;
    for (const ledger::CanHere& can : cans) {
        table.rows.push_back(
            {shownName(can.can.name), wasteName(can.can.holds),
             volumeText(can.stock.volume, about.wording),
             silverText(can.stock.silver, can.stock.silverAtLeast, about.wording.locale),
             QString::fromStdString(can.can.place)});
        volume = chemistry::Millilitres(volume.value() + can.stock.volume.value());
        silver += can.stock.silver;
        atLeast = atLeast || can.stock.silverAtLeast;
    }
    if (table.rows.size() > 1) {
        table.rows.push_back({CupboardPapers::tr("Together"), QString(),
                              volumeText(volume, about.wording),
                              silverText(silver, atLeast, about.wording.locale), QString()});
        table.total = true;
    }
    document.blocks.emplace_back(table);
    for (const ledger::CanHere& can : cans) {
        document.blocks.emplace_back(
            PaperHeading{CupboardPapers::tr("%1 · %2", "can, what it holds")
                             .arg(shownName(can.can.name), wasteName(can.can.holds))});
        if (const QString code = wasteCodeOf(can.can.holds); !code.isEmpty())
            document.blocks.emplace_back(PaperWords{code});
        document.blocks.emplace_back(pouredTable(can.stock, batches, about));
    }
    document.blocks.emplace_back(PaperWords{Cautions::oneCanEach()});
    document.blocks.emplace_back(PaperWords{Cautions::septicTank()});
    document.blocks.emplace_back(PaperWords{Cautions::licensed()});
    for (const QString& label : {CupboardPapers::tr("Handed over on"),
                                 CupboardPapers::tr("Received by"), CupboardPapers::tr("Document")})
        document.blocks.emplace_back(PaperBlank{label});
    return document;
}

} // namespace ullage::app
