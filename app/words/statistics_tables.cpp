#include "app/words/statistics_tables.h"

#include "app/words/local_calendar.h"
#include "app/words/moment_text.h"
#include "app/words/money_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"

#include <QCoreApplication>

#include <cmath>
#include <map>
#include <set>
#include <utility>

namespace ullage::app
{

using namespace ledger;

namespace
{

struct StatisticsTr {
    Q_DECLARE_TR_FUNCTIONS(StatisticsTables)
};

using Row = std::vector<FiguresCell>;

QString solutionName(const std::string& id, const formulary::Formulary& formulary)
{
    const auto found = formulary.solution(id);
    return shownName(found ? found->name : id);
}

FiguresCell counted(int count, const QLocale& locale) { return {locale.toString(count), count}; }

FiguresCell films(chemistry::Films films, const QLocale& locale)
{
    return {filmCountText(films.value(), locale), films.value()};
}

// Columns of money: one for each currency, or one alone where none is known.
class MoneyColumns
{
public:
    MoneyColumns(QString title, const QLocale& locale) : m_title(std::move(title)), m_locale(locale)
    {
    }

    void know(const Money& money)
    {
        for (const auto& [currency, sum] : money.sums())
            m_currencies.insert(currency);
    }
    void addTo(FiguresTable& table) const
    {
        for (const std::string& currency : currencies())
            table.columns.push_back({currency.empty()
                                         ? m_title
                                         : StatisticsTr::tr("%1, %2", "cost, currency")
                                               .arg(m_title, QString::fromStdString(currency))});
    }
    void addTo(Row& row, const Cost& cost) const
    {
        const auto sums = cost.money.sums();
        for (const std::string& currency : currencies()) {
            const auto sum = sums.find(currency);
            if (sum == sums.end()) {
                const bool nothingKnown = !cost.whole && sums.empty();
                row.push_back({nothingKnown ? StatisticsTr::tr("not known") : QString()});
                continue;
            }
            const QString amount = moneyText(sum->second, {}, m_locale);
            if (cost.whole)
                row.push_back({amount, QString::fromStdString(sum->second.text())});
            else
                row.push_back({StatisticsTr::tr("at least %1").arg(amount)});
        }
    }

private:
    [[nodiscard]] std::set<std::string> currencies() const
    {
        return m_currencies.empty() ? std::set<std::string>{""} : m_currencies;
    }

    QString m_title;
    QLocale m_locale;
    std::set<std::string> m_currencies;
};

MoneyColumns costColumns(const Cost& all, const QLocale& locale)
{
    MoneyColumns columns(StatisticsTr::tr("Costs"), locale);
    columns.know(all.money);
    return columns;
}

// What one film cost a bottle; not known as long as not all of its cost is.
Cost eachFilm(const Cost& cost, chemistry::Films done)
{
    if (!cost.whole)
        return {{}, false};
    return done > chemistry::Films(0) ? Cost{cost.money.forEachOf(done.value()), true} : Cost{};
}

FiguresCell dayCell(chemistry::Instant moment, const QLocale& locale)
{
    const QDate day = localDate(moment);
    return {yearDateText(day, locale), day.toString(Qt::ISODate)};
}

} // namespace

QString monthTitle(std::chrono::year_month month, const QLocale& locale)
{
    const QDate first = firstOf(month);
    return StatisticsTr::tr("%1 %2", "month, year")
        .arg(locale.standaloneMonthName(first.month()))
        .arg(first.year());
}

QString endCauseName(EndCause cause)
{
    switch (cause) {
    case EndCause::Films:
        return StatisticsTr::tr("Spent by film");
    case EndCause::Time:
        return StatisticsTr::tr("Spent by time");
    case EndCause::Test:
        return StatisticsTr::tr("Failed a test");
    case EndCause::Accident:
        return StatisticsTr::tr("Accident");
    case EndCause::Early:
        break;
    }
    return StatisticsTr::tr("Still good");
}

FiguresTable monthTable(const Statistics& so, const Wording& wording)
{
    const QLocale& locale = wording.locale;
    FiguresTable table;
    table.title = StatisticsTr::tr("Month by month");
    table.none = StatisticsTr::tr("Nothing happened in this period.");
    table.columns = {{StatisticsTr::tr("Month"), false},
                     {StatisticsTr::tr("Films developed")},
                     {StatisticsTr::tr("Bottles mixed")},
                     {StatisticsTr::tr("Bottles ended")}};
    const MoneyColumns cost = costColumns(so.cost, locale);
    MoneyColumns bought(StatisticsTr::tr("Bought"), locale);
    bought.know(so.bought);
    cost.addTo(table);
    bought.addTo(table);
    const auto add = [&](FiguresCell name, chemistry::Films developed, const auto& sums) {
        Row row{std::move(name), films(developed, locale), counted(sums.mixed, locale),
                counted(sums.ended, locale)};
        cost.addTo(row, sums.cost);
        bought.addTo(row, {sums.bought, sums.unpriced == 0});
        table.rows.push_back(std::move(row));
    };
    for (const MonthSum& month : so.months) {
        add({monthTitle(month.month, locale),
             firstOf(month.month).toString(QStringLiteral("yyyy-MM"))},
            month.films, month);
    }
    table.total = !table.rows.empty();
    if (table.total)
        add({StatisticsTr::tr("Together")}, so.developed, so);
    return table;
}

FiguresTable solutionTable(const Statistics& so, const formulary::Formulary& formulary,
                           const Wording& wording)
{
    const QLocale& locale = wording.locale;
    FiguresTable table;
    table.title = StatisticsTr::tr("By solution");
    table.none = StatisticsTr::tr("No film in this period.");
    table.columns = {{StatisticsTr::tr("Solution"), false},
                     {StatisticsTr::tr("Films through it")},
                     {StatisticsTr::tr("Bottles ended")},
                     {StatisticsTr::tr("Days they lasted")},
                     {StatisticsTr::tr("Films each")}};
    const MoneyColumns cost = costColumns(so.cost, locale);
    MoneyColumns each(StatisticsTr::tr("Each film"), locale);
    std::map<std::string, Cost> perFilm;
    for (const CostPerFilm& one : so.costs)
        perFilm[one.solution].money.add(one.perFilm, one.currency);
    for (const auto& [solution, film] : perFilm)
        each.know(film.money);
    cost.addTo(table);
    each.addTo(table);
    for (const SolutionStatistics& one : so.solutions) {
        Row row{{solutionName(one.solution, formulary)},
                films(one.films, locale),
                counted(one.ended, locale)};
        if (one.ended > 0) {
            row.push_back(
                {locale.toString(std::lround(one.meanLife.value())), one.meanLife.value()});
            row.push_back({numberText(one.meanFilms.value(), 1, locale), one.meanFilms.value()});
        } else {
            row.insert(row.end(), 2, FiguresCell());
        }
        cost.addTo(row, one.cost);
        const auto film = perFilm.find(one.solution);
        each.addTo(row, film == perFilm.end() ? Cost{{}, one.ended == 0} : film->second);
        table.rows.push_back(std::move(row));
    }
    table.total = !table.rows.empty();
    if (table.total) {
        Row row{{StatisticsTr::tr("Together")}, {}, counted(so.ended, locale), {}, {}};
        cost.addTo(row, so.cost);
        each.addTo(row, {});
        table.rows.push_back(std::move(row));
    }
    return table;
}

FiguresTable personTable(const Statistics& so, const Wording& wording)
{
    const QLocale& locale = wording.locale;
    FiguresTable table;
    table.title = StatisticsTr::tr("By person");
    table.none = StatisticsTr::tr("No film was developed.");
    table.columns = {{StatisticsTr::tr("Who"), false}, {StatisticsTr::tr("Films developed")}};
    const MoneyColumns cost = costColumns(so.cost, locale);
    cost.addTo(table);
    const auto add = [&](const QString& name, const FiguresCell& done, const Cost& part) {
        Row row{{name}, done};
        cost.addTo(row, part);
        table.rows.push_back(std::move(row));
    };
    for (const PersonSum& one : so.people) {
        add(one.person.empty() ? StatisticsTr::tr("nobody named")
                               : QString::fromStdString(one.person),
            films(one.films, locale), one.cost);
    }
    if (so.withoutFilm != Cost{})
        add(StatisticsTr::tr("Bottles that did no film"), {}, so.withoutFilm);
    table.total = !table.rows.empty();
    if (table.total)
        add(StatisticsTr::tr("Together"), films(so.developed, locale), so.cost);
    return table;
}

FiguresTable endTable(const Statistics& so, const Wording& wording)
{
    FiguresTable table;
    table.title = StatisticsTr::tr("Why bottles ended");
    table.none = StatisticsTr::tr("No bottle ended.");
    table.columns = {{StatisticsTr::tr("Cause"), false}, {StatisticsTr::tr("Bottles")}};
    if (so.ended == 0)
        return table;
    for (std::size_t i = 0; i < kEndCauses; ++i)
        table.rows.push_back(
            {{endCauseName(static_cast<EndCause>(i))}, counted(so.ends[i], wording.locale)});
    table.rows.push_back({{StatisticsTr::tr("Together")}, counted(so.ended, wording.locale)});
    table.total = true;
    return table;
}

FiguresTable mixedTable(const Statistics& so, const formulary::Formulary& formulary,
                        const Wording& wording)
{
    const QLocale& locale = wording.locale;
    FiguresTable table;
    table.title = StatisticsTr::tr("Mixed");
    table.none = StatisticsTr::tr("Nothing was mixed.");
    table.columns = {{StatisticsTr::tr("Bottle"), false},
                     {StatisticsTr::tr("Contents"), false},
                     {StatisticsTr::tr("On"), false},
                     {StatisticsTr::tr("Volume mixed")}};
    Cost all;
    chemistry::Millilitres volume{0};
    for (const BottleSum& one : so.mixedBottles) {
        all += one.cost;
        volume += one.mixedVolume;
    }
    MoneyColumns cost(StatisticsTr::tr("Costs so far"), locale);
    cost.know(all.money);
    cost.addTo(table);
    const auto add = [&](Row row, chemistry::Millilitres mixed, const Cost& paid) {
        row.push_back({volumeText(mixed, wording)});
        cost.addTo(row, paid);
        table.rows.push_back(std::move(row));
    };
    for (const BottleSum& one : so.mixedBottles)
        add({{QString::fromStdString(one.name)},
             {solutionName(one.solution, formulary)},
             dayCell(one.mixedAt, locale)},
            one.mixedVolume, one.cost);
    table.total = !table.rows.empty();
    if (table.total)
        add({{StatisticsTr::tr("Together")}, {}, {}}, volume, all);
    return table;
}

FiguresTable endedTable(const Statistics& so, const formulary::Formulary& formulary,
                        const Wording& wording)
{
    const QLocale& locale = wording.locale;
    FiguresTable table;
    table.title = StatisticsTr::tr("Ended");
    table.none = StatisticsTr::tr("No bottle ended.");
    table.columns = {{StatisticsTr::tr("Bottle"), false},
                     {StatisticsTr::tr("Contents"), false},
                     {StatisticsTr::tr("On"), false},
                     {StatisticsTr::tr("Films done")}};
    const MoneyColumns cost = costColumns(so.cost, locale);
    MoneyColumns each(StatisticsTr::tr("Each film"), locale);
    chemistry::Films done{0};
    for (const BottleSum& one : so.endedBottles) {
        each.know(eachFilm(one.cost, one.films).money);
        done += one.films;
    }
    cost.addTo(table);
    each.addTo(table);
    const auto add = [&](Row row, chemistry::Films did, const Cost& paid, const Cost& film) {
        row.push_back(films(did, locale));
        cost.addTo(row, paid);
        each.addTo(row, film);
        table.rows.push_back(std::move(row));
    };
    for (const BottleSum& one : so.endedBottles)
        add({{QString::fromStdString(one.name)},
             {solutionName(one.solution, formulary)},
             dayCell(one.endedAt.value_or(one.mixedAt), locale)},
            one.films, one.cost, eachFilm(one.cost, one.films));
    table.total = !table.rows.empty();
    if (table.total)
        add({{StatisticsTr::tr("Together")}, {}, {}}, done, so.cost, {});
    return table;
}

QStringList statisticsNotes(const Statistics& so, const Wording& wording)
{
    QStringList notes;
    notes << StatisticsTr::tr("A bottle’s cost counts when it ends, by the films that each person "
                              "put through it.");
    if (so.inUse > 0) {
        const QString cost = costText(so.inUseCost, wording.locale);
        notes << StatisticsTr::tr("%Ln bottle(s) still in use, not counted yet. Cost so far: %1.",
                                  nullptr, so.inUse)
                     .arg(cost.isEmpty() ? moneyText(Decimal(), {}, wording.locale) : cost);
    }
    if (so.unpriced > 0)
        notes << StatisticsTr::tr("%Ln thing(s) bought without a price: not in the sum.", nullptr,
                                  so.unpriced);
    if (so.boughtUndated > 0)
        notes << StatisticsTr::tr("%Ln thing(s) with a price but no day of purchase: in no month.",
                                  nullptr, so.boughtUndated);
    return notes;
}

} // namespace ullage::app
