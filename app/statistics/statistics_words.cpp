#include "app/statistics/statistics_words.h"

#include "app/words/money_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/chemistry/constants.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <map>

namespace ullage::app
{

using namespace ledger;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Statistics)
};

constexpr std::size_t kMostMonths = 36;

QString nameOf(const std::string& solution, const formulary::Formulary& formulary)
{
    const auto found = formulary.solution(solution);
    return shownName(found ? found->name : solution);
}

QString monthName(std::chrono::year_month month, bool first, const QLocale& locale)
{
    const int number = static_cast<int>(static_cast<unsigned>(month.month()));
    const QString name = locale.standaloneMonthName(number, QLocale::ShortFormat);
    return first || number == 1
               ? Words::tr("%1 %2", "month, year").arg(name).arg(static_cast<int>(month.year()))
               : name;
}

// From the first month in which film was developed to the last one.
std::vector<MonthSum> withFilm(const std::vector<MonthSum>& months)
{
    const auto hasFilm = [](const MonthSum& month) { return month.films > chemistry::Films(0); };
    const auto first = std::find_if(months.begin(), months.end(), hasFilm);
    const auto last = std::find_if(months.rbegin(), months.rend(), hasFilm).base();
    return first < last ? std::vector<MonthSum>(first, last) : std::vector<MonthSum>();
}

QString causeName(EndCause cause)
{
    switch (cause) {
    case EndCause::Films:
        return Words::tr("Spent by film");
    case EndCause::Time:
        return Words::tr("Spent by time");
    case EndCause::Test:
        return Words::tr("Failed a test");
    case EndCause::Accident:
        return Words::tr("Accident");
    case EndCause::Early:
        break;
    }
    return Words::tr("Still good");
}

} // namespace

ChartSpec filmsChart(const Statistics& statistics, const Wording& wording)
{
    ChartSpec spec;
    const auto months = withFilm(statistics.months);
    const bool years = months.size() > kMostMonths;
    spec.title = years ? Words::tr("Films developed, by year") : Words::tr("Films developed");
    spec.x = ChartX::Categories;
    spec.xName = years ? Words::tr("year") : Words::tr("month");
    spec.y = ChartY::Number;
    spec.yText = [wording](double films) { return filmsText(chemistry::Films(films), wording); };
    ChartSeries series{.name = Words::tr("films"),
                       .kind = SeriesKind::Bars,
                       .ink = ChartInk::Films,
                       .inLegend = false};
    std::map<int, double> byYear;
    double most = 0;
    for (const MonthSum& month : months) {
        const double films = month.films.value();
        byYear[static_cast<int>(month.month.year())] += films;
        if (years)
            continue;
        const bool first = spec.categories.isEmpty();
        spec.categories << monthName(month.month, first, wording.locale);
        series.points.emplace_back(static_cast<double>(series.points.size()), films);
        most = std::max(most, films);
    }
    if (years) {
        for (const auto& [year, films] : byYear) {
            spec.categories << QString::number(year);
            series.points.emplace_back(static_cast<double>(series.points.size()), films);
            most = std::max(most, films);
        }
    }
    const double count = static_cast<double>(std::max<std::size_t>(1, series.points.size()));
    const QString all = filmsText(statistics.developed, wording);
    const QString mean = numberText(statistics.developed.value() / count, 1, wording.locale);
    spec.summary = years ? Words::tr("%1, %2 a year.").arg(all, mean)
                         : Words::tr("%1, %2 a month.").arg(all, mean);
    spec.series = {series};
    return spec;
}

std::vector<BarRow> filmRows(const Statistics& statistics, const formulary::Formulary& formulary,
                             const Wording& wording)
{
    std::vector<BarRow> rows;
    for (const SolutionStatistics& one : statistics.solutions) {
        if (one.films > chemistry::Films(0))
            rows.push_back({nameOf(one.solution, formulary), one.films.value(),
                            filmsText(one.films, wording)});
    }
    return rows;
}

std::vector<BarRow> lifeRows(const Statistics& statistics, const formulary::Formulary& formulary,
                             const Wording& wording)
{
    std::vector<BarRow> rows;
    for (const SolutionStatistics& one : statistics.solutions) {
        if (one.ended == 0)
            continue;
        const int days = static_cast<int>(std::lround(one.meanLife.value()));
        const QString life = Words::tr("%Ln day(s)", nullptr, days);
        const QString of = Words::tr("%Ln bottle(s)", nullptr, one.ended);
        const double films = std::round(one.meanFilms.value() * 10) / 10;
        const QString each = (films <= 1 ? Words::tr("%1 film each") : Words::tr("%1 films each"))
                                 .arg(numberText(films, 1, wording.locale));
        rows.push_back({nameOf(one.solution, formulary), one.meanLife.value(),
                        Words::tr("%1 · %2 · %3", "life, bottles, films").arg(life, of, each)});
    }
    std::stable_sort(rows.begin(), rows.end(),
                     [](const BarRow& a, const BarRow& b) { return a.value > b.value; });
    return rows;
}

std::vector<BarRow> endRows(const Statistics& statistics, const Wording& wording)
{
    std::vector<BarRow> rows;
    int all = 0;
    for (const int count : statistics.ends)
        all += count;
    for (std::size_t i = 0; all > 0 && i < kEndCauses; ++i) {
        const int count = statistics.ends[i];
        rows.push_back({causeName(static_cast<EndCause>(i)), static_cast<double>(count),
                        Words::tr("%1 · %2", "bottles, share")
                            .arg(Words::tr("%Ln bottle(s)", nullptr, count),
                                 percentText(static_cast<double>(count) / all, wording.locale))});
    }
    return rows;
}

std::vector<BarRow> costRows(const Statistics& statistics, const formulary::Formulary& formulary,
                             const Wording& wording)
{
    std::vector<BarRow> rows;
    for (const CostPerFilm& cost : statistics.costs) {
        rows.push_back({nameOf(cost.solution, formulary), cost.perFilm.value(),
                        Words::tr("%1 · %2", "cost, bottles")
                            .arg(moneyText(cost.perFilm, cost.currency, wording.locale),
                                 Words::tr("%Ln bottle(s)", nullptr, cost.batches))});
    }
    return rows;
}

std::vector<Explanation> statisticsFigures(const Statistics& statistics, const Wording& wording)
{
    const QLocale& locale = wording.locale;
    int ended = 0;
    for (const int count : statistics.ends)
        ended += count;
    const auto counted = [](const QString& title, const QString& value, const QString& equation) {
        Explanation why;
        why.title = title;
        why.value = value;
        why.equation = equation;
        why.hasGrade = false;
        return why;
    };
    std::vector<Explanation> all;
    Explanation films = counted(
        Words::tr("Films"), filmsText(statistics.developed, wording),
        Words::tr("Counted where they were developed, so that stop bath and fixer do not count "
                  "them again. One film is 80 square inches: a 135-36 or a 120. By solution every "
                  "bath counts what went through it."));
    films.constants = {explained(Words::tr("One film"), chemistry::kFilmArea, locale)};
    all.push_back(std::move(films));
    const QString bottles = Words::tr("%Ln bottle(s)", nullptr, ended);
    all.push_back(counted(Words::tr("How long bottles lasted"), bottles,
                          Words::tr("Mean of the days from mixing to the end, and of the films "
                                    "done, of the bottles that ended in the period.")));
    all.push_back(counted(
        Words::tr("Why bottles ended"), bottles,
        Words::tr("The most serious reason against the bottle when it was discarded or used up: "
                  "accident, failed test, film or time. “Still good” where there was none.")));
    Explanation costs = counted(
        Words::tr("Chemistry for one film"),
        Words::tr("%Ln solution(s)", nullptr, static_cast<int>(statistics.costs.size())),
        Words::tr("What bottles that ended in the period got from the cupboard, by what was taken "
                  "of each thing and its price when it was bought, ÷ films they did. What was "
                  "poured on into another bottle took its part along."));
    costs.notes << Words::tr("Bottles still in use are left out: their films are not all done.");
    if (statistics.costUnknown > 0)
        costs.notes << Words::tr("%Ln bottle(s) left out: not all that went in has a price.",
                                 nullptr, statistics.costUnknown);
    all.push_back(std::move(costs));
    return all;
}

} // namespace ullage::app
