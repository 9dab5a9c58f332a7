#include "app/window/book_tables.h"

#include "app/cupboard/cupboard_words.h"
#include "app/cupboard/work_words.h"
#include "app/session/whole_file.h"
#include "app/statistics/statistics_words.h"
#include "app/words/formulary_words.h"
#include "app/words/local_calendar.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "app/words/verdict_words.h"
#include "app/words/waste_words.h"
#include "core/cupboard/needs_request.h"
#include "core/ledger/book.h"
#include "core/ledger/statistics_reader.h"
#include "core/ledger/verdict.h"

#include <QCoreApplication>

#include <cmath>

namespace ullage::app
{

using chemistry::Instant;

namespace
{

struct TableWords {
    Q_DECLARE_TR_FUNCTIONS(BookTables)
};

struct Asked {
    ledger::Book& book;
    Instant now;
    const Wording& wording;
    const cupboard::PlanFor& planFor;

    [[nodiscard]] QString volumeHeading(const QString& name) const
    {
        return withUnit(name, volumeUnitName(wording));
    }
    [[nodiscard]] QString solution(const std::string& id) const
    {
        const auto found = book.formulary().solution(id);
        return shownName(found ? found->name : id);
    }
    [[nodiscard]] TableCell volume(chemistry::Millilitres of) const
    {
        return shownVolume(of, wording);
    }
};

TableCell text(const std::string& of) { return QString::fromStdString(of); }

TableCell day(const std::optional<Instant>& moment)
{
    return moment ? TableCell(localDate(*moment).toString(Qt::ISODate)) : TableCell();
}

TableCell moment(const std::optional<Instant>& of) { return of ? TableCell(*of) : TableCell(); }

template <class Quantity>
TableCell figure(const std::optional<Quantity>& of)
{
    return of ? TableCell(of->value()) : TableCell();
}

TableCell percent(const std::optional<double>& share)
{
    return share ? TableCell(std::round(*share * 100)) : TableCell();
}

// Exact, as it was written.
TableCell amount(const std::optional<ledger::Decimal>& of)
{
    return of ? TableCell(QString::fromStdString(of->text())) : TableCell();
}

Result<ShownTable> bottlesTable(const Asked& asked, bool ended)
{
    const auto batches = asked.book.batches(asked.now, ended);
    if (!batches)
        return tl::unexpected(batches.error());
    ShownTable table;
    table.headings = {TableWords::tr("Bottle"),
                      TableWords::tr("Solution"),
                      TableWords::tr("Stands in"),
                      asked.volumeHeading(TableWords::tr("Volume")),
                      TableWords::tr("Mixed"),
                      TableWords::tr("Films done"),
                      TableWords::tr("Films left"),
                      withUnit(TableWords::tr("Used by age and air"), QStringLiteral("%")),
                      TableWords::tr("Discard by"),
                      TableWords::tr("Verdict")};
    if (ended)
        table.headings << TableWords::tr("Ended");
    for (const ledger::Batch& batch : *batches) {
        const auto so = ledger::assess(batch);
        std::vector<TableCell> row{text(batch.name),
                                   shownName(batch.solution->name),
                                   shownName(batch.vessel->name),
                                   asked.volume(batch.volume),
                                   batch.dateKnown ? TableCell(batch.madeAt) : TableCell(),
                                   batch.filmsDone.value(),
                                   so.filmsLeft ? TableCell(usableFilms(so.filmsLeft->value()))
                                                : TableCell(),
                                   percent(so.standingUsed),
                                   day(so.discardBy),
                                   batch.inUse() ? TableCell(verdictWord(so.shown)) : TableCell()};
        if (ended)
            row.push_back(moment(batch.endedAt));
        table.rows.push_back(std::move(row));
    }
    return table;
}

QString amountUnit(const ledger::ItemHere& here, const Wording& wording)
{
    switch (here.item.kind) {
    case ledger::ItemKind::Powder:
        return TableWords::tr("packets");
    case ledger::ItemKind::Liquid:
        return volumeUnitName(wording);
    case ledger::ItemKind::Chemical:
        return TableWords::tr("g");
    case ledger::ItemKind::Supply:
        break;
    }
    const auto* supply = std::get_if<ledger::Supply>(&here.line);
    return supply ? QString::fromStdString(supply->unit) : QString();
}

Result<ShownTable> cupboardTable(const Asked& asked)
{
    const auto state = asked.book.cupboard(asked.now);
    if (!state)
        return tl::unexpected(state.error());
    ShownTable table;
    table.headings = {TableWords::tr("What"),     TableWords::tr("Left"),
                      TableWords::tr("Unit"),     TableWords::tr("Opened"),
                      TableWords::tr("Use by"),   TableWords::tr("Bought"),
                      TableWords::tr("Lot"),      TableWords::tr("Cost"),
                      TableWords::tr("Currency"), TableWords::tr("Place")};
    for (const ledger::ItemHere& here : state->items) {
        TableCell left;
        if (here.stock.left)
            left = here.item.kind == ledger::ItemKind::Liquid
                       ? asked.volume(chemistry::Millilitres(*here.stock.left))
                       : TableCell(*here.stock.left);
        const auto place = std::visit([](const auto& line) { return line.place; }, here.line);
        table.rows.push_back({itemName(here.item, asked.book.formulary(), asked.wording), left,
                              amountUnit(here, asked.wording), moment(here.stock.openedAt),
                              day(here.life.until), text(here.bought), text(here.lot),
                              amount(here.cost), text(here.currency), text(place)});
    }
    return table;
}

Result<ShownTable> shoppingTable(const Asked& asked)
{
    const auto needs = cupboard::readNeeds(asked.book, asked.now, asked.planFor, wallClock());
    if (!needs)
        return tl::unexpected(needs.error());
    for (const ledger::Unread& one : needs->leftOut) {
        if (!one.solution.empty()) // a can says nothing of what to buy
            return tl::unexpected(one.why);
    }
    const auto plan = cupboard::planNeeds(needs->request);
    if (!plan)
        return tl::unexpected(plan.error());
    ShownTable table;
    table.headings = {TableWords::tr("What"),
                      TableWords::tr("Packets"),
                      asked.volumeHeading(TableWords::tr("Each makes")),
                      TableWords::tr("Buy by"),
                      TableWords::tr("Each costs"),
                      TableWords::tr("A film costs"),
                      TableWords::tr("Currency")};
    for (const cupboard::ToBuy& buy : plan->toBuy) {
        const auto film = cupboard::costOfFilm(buy).sums();
        table.rows.push_back(
            {asked.solution(buy.solution), static_cast<double>(buy.packets),
             asked.volume(buy.makes), day(buy.by), amount(buy.each),
             amount(film.empty() ? std::nullopt : std::optional(film.begin()->second)),
             text(buy.currency)});
    }
    return table;
}

Result<ShownTable> workTable(const Asked& asked)
{
    const auto state = asked.book.cupboard(asked.now);
    if (!state)
        return tl::unexpected(state.error());
    ShownTable table;
    table.headings = {TableWords::tr("Work"), TableWords::tr("First on"), TableWords::tr("Films"),
                      TableWords::tr("How often"), TableWords::tr("Developer")};
    for (const ledger::Work& work : state->works)
        table.rows.push_back({text(work.name), TableCell(work.at), figure(work.films),
                              ruleWords(work.rule, asked.wording.locale),
                              work.developer.empty() ? QString() : asked.solution(work.developer)});
    return table;
}

Result<ShownTable> cansTable(const Asked& asked)
{
    const auto state = asked.book.cupboard(asked.now);
    if (!state)
        return tl::unexpected(state.error());
    ShownTable table;
    table.headings = {TableWords::tr("Can"),
                      TableWords::tr("For"),
                      asked.volumeHeading(TableWords::tr("Holds")),
                      asked.volumeHeading(TableWords::tr("In it")),
                      withUnit(TableWords::tr("Silver"), TableWords::tr("g")),
                      TableWords::tr("Silver is"),
                      TableWords::tr("Place")};
    for (const ledger::CanHere& here : state->cans)
        table.rows.push_back({text(here.can.name), wasteName(here.can.holds),
                              asked.volume(here.can.capacity), asked.volume(here.stock.volume),
                              here.stock.silver,
                              here.stock.silverAtLeast ? TableWords::tr("at least this much")
                                                       : TableWords::tr("calculated"),
                              text(here.can.place)});
    return table;
}

Result<ShownTable> solutionsTable(const Asked& asked)
{
    ShownTable table;
    table.headings = {
        TableWords::tr("Solution"),
        TableWords::tr("What it does"),
        withUnit(TableWords::tr("Capacity"), TableWords::tr("films per litre")),
        withUnit(TableWords::tr("Keeps in a full bottle"), TableWords::tr("days")),
        withUnit(TableWords::tr("Keeps half full"), TableWords::tr("days")),
        withUnit(TableWords::tr("Keeps in a tray"), TableWords::tr("hours")),
        asked.volumeHeading(TableWords::tr("Replenisher for a film")),
    };
    for (const auto& solution : asked.book.formulary().currentSolutions())
        table.rows.push_back(
            {shownName(solution->name), roleName(solution->role),
             figure(formulary::capacityOf(*solution)), figure(solution->keeping.full),
             figure(solution->keeping.half), figure(solution->keeping.tray),
             solution->replenishPerFilm ? asked.volume(*solution->replenishPerFilm) : TableCell()});
    return table;
}

Result<ShownTable> statisticsTable(BookTable which, const Asked& asked, store::SqlStore& store)
{
    ledger::StatisticsRequest request;
    request.now = asked.now;
    request.calendar = localCalendar();
    const auto read = ledger::readStatistics(store, request);
    if (!read)
        return tl::unexpected(read.error());
    if (!*read)
        return refuse({.code = ErrorCode::Cancelled});
    const ledger::Statistics& sums = **read;
    ShownTable table;
    if (which == BookTable::Months) {
        table.headings = {TableWords::tr("Month"), TableWords::tr("Films developed")};
        for (const auto& one : sums.months)
            table.rows.push_back(
                {QDate(static_cast<int>(one.month.year()),
                       static_cast<int>(static_cast<unsigned>(one.month.month())), 1)
                     .toString(QStringLiteral("yyyy-MM")),
                 one.films.value()});
        return table;
    }
    if (which == BookTable::Ends) {
        table.headings = {TableWords::tr("Why they ended"), TableWords::tr("Bottles ended")};
        for (const BarRow& row : endRows(sums, asked.wording))
            table.rows.push_back({row.name, row.value});
        return table;
    }
    table.headings = {TableWords::tr("Solution"), TableWords::tr("Films"),
                      TableWords::tr("Bottles ended"),
                      withUnit(TableWords::tr("Mean time to the end"), TableWords::tr("days")),
                      TableWords::tr("Mean films to the end")};
    for (const auto& one : sums.solutions)
        table.rows.push_back({asked.solution(one.solution), one.films.value(),
                              static_cast<double>(one.ended),
                              one.ended > 0 ? TableCell(one.meanLife.value()) : TableCell(),
                              one.ended > 0 ? TableCell(one.meanFilms.value()) : TableCell()});
    return table;
}

Result<ShownTable> read(BookTable which, const Asked& asked, store::SqlStore& store)
{
    switch (which) {
    case BookTable::Bottles:
    case BookTable::AllBottles:
        return bottlesTable(asked, which == BookTable::AllBottles);
    case BookTable::Cupboard:
        return cupboardTable(asked);
    case BookTable::Shopping:
        return shoppingTable(asked);
    case BookTable::Work:
        return workTable(asked);
    case BookTable::Cans:
        return cansTable(asked);
    case BookTable::Solutions:
        return solutionsTable(asked);
    case BookTable::Months:
    case BookTable::BySolution:
    case BookTable::Ends:
        break;
    }
    return statisticsTable(which, asked, store);
}

} // namespace

QString bookTableName(BookTable table)
{
    switch (table) {
    case BookTable::Bottles:
        return TableWords::tr("Bottles in use");
    case BookTable::AllBottles:
        return TableWords::tr("Every bottle that ever was");
    case BookTable::Cupboard:
        return TableWords::tr("The cupboard");
    case BookTable::Shopping:
        return TableWords::tr("Shopping list");
    case BookTable::Work:
        return TableWords::tr("Known work");
    case BookTable::Cans:
        return TableWords::tr("Cans for waste");
    case BookTable::Solutions:
        return TableWords::tr("Solutions");
    case BookTable::Months:
        return TableWords::tr("Films by month");
    case BookTable::BySolution:
        return TableWords::tr("Films and lives by solution");
    case BookTable::Ends:
        break;
    }
    return TableWords::tr("Why bottles ended");
}

Result<ShownTable> bookTable(BookTable table, store::SqlStore& store, Instant now,
                             const Wording& wording, const cupboard::PlanFor& planFor)
{
    const auto book = ledger::Book::open(
        store, [now] { return now; }, [] { return std::string(); });
    if (!book)
        return tl::unexpected(book.error());
    auto made = read(table, {**book, now, wording, planFor}, store);
    if (made)
        made->name = bookTableName(table);
    return made;
}

BookJob tableJob(const QString& path, const QString& file, BookTable table, chemistry::Instant now,
                 const Wording& wording, const cupboard::PlanFor& planFor)
{
    return [=]() -> Result<int> {
        auto store = store::SqlStore::open(path, {.access = store::Access::Read});
        if (!store)
            return tl::unexpected(store.error());
        const auto made = bookTable(table, **store, now, wording, planFor);
        if (!made)
            return tl::unexpected(made.error());
        if (const auto written = writeWhole(file, csvOf(*made)); !written)
            return tl::unexpected(written.error());
        return static_cast<int>(made->rows.size());
    };
}

} // namespace ullage::app
