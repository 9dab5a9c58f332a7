#include "app/formulary/own_figures.h"

#include "app/formulary/own_figures_card.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "core/chemistry/process_constants.h"
#include "core/formulary/implied.h"

#include <algorithm>
#include <cmath>

namespace ullage::app
{

using formulary::Figure;
using ledger::OwnKind;

namespace
{

double roundedOwn(OwnKind kind, double value)
{
    return kind == OwnKind::Keeping ? std::round(value) : std::round(value * 10) / 10;
}

// The packet's half-full time, or what its full-bottle time alone gives by the model.
chemistry::Days halfFullBefore(const formulary::Solution& solution)
{
    const auto limits = formulary::keepingLimits(solution);
    return solution.keeping.half ? *solution.keeping.half
                                 : *formulary::halfTimeFor(solution, limits->oxygen);
}

double ownValueBefore(const formulary::Solution& solution, OwnKind kind)
{
    switch (kind) {
    case OwnKind::Capacity:
        return formulary::capacityOf(solution)->value();
    case OwnKind::Wear:
        return solution.wear.percent;
    default:
        return halfFullBefore(solution).value();
    }
}

QString ownNumber(OwnKind kind, double value, const QLocale& locale)
{
    return numberText(value, kind == OwnKind::Keeping ? 0 : 1, locale);
}

QString ownSentence(const formulary::Solution& solution, OwnKind kind,
                    const chemistry::OwnFigure& figure, const QLocale& locale)
{
    const QString where = OwnFiguresCard::tr("in %n bottle(s)", nullptr, figure.bottles);
    QString said;
    switch (kind) {
    case OwnKind::Capacity:
        said = OwnFiguresCard::tr(
            "Your %n test(s) %1 say %2 films a litre (%3 – %4); the packet says %5.", nullptr,
            figure.tests);
        break;
    case OwnKind::Wear:
        said = OwnFiguresCard::tr(
            "Your %n control strip(s) %1 say + %2 % a film (%3 – %4); the packet says %5.", nullptr,
            figure.tests);
        break;
    case OwnKind::Keeping:
        said =
            solution.keeping.half
                ? OwnFiguresCard::tr(
                      "Your %n look(s) and control strips %1 say that it keeps %2 days half full "
                      "(%3 – %4); the packet says %5.",
                      nullptr, figure.tests)
                : OwnFiguresCard::tr(
                      "Your %n look(s) and control strips %1 say that it keeps %2 days half full "
                      "(%3 – %4); without them the model says %5.",
                      nullptr, figure.tests);
        break;
    }
    return said.arg(where, ownNumber(kind, figure.value, locale),
                    ownNumber(kind, figure.low, locale), ownNumber(kind, figure.high, locale),
                    ownNumber(kind, ownValueBefore(solution, kind), locale));
}

std::optional<formulary::Solution> withOwn(const formulary::Solution& solution, OwnKind kind,
                                           const chemistry::OwnFigure& figure, int bottles,
                                           QDate today)
{
    formulary::Solution made = solution;
    const double value = roundedOwn(kind, figure.value);
    std::string source;
    switch (kind) {
    case OwnKind::Capacity:
        made.capacity = chemistry::FilmsPerLitre(value);
        source = formulary::bounds(Figure::Capacity).source;
        break;
    case OwnKind::Wear:
        made.wear.percent = value;
        source = "wear";
        break;
    case OwnKind::Keeping:
        made.keeping.half = chemistry::Days(value);
        source = formulary::bounds(Figure::KeepsHalf).source;
        break;
    }
    made.sources[source] = "own tests, " + std::to_string(figure.bottles) + " of " +
                           std::to_string(bottles) + " bottles, to " +
                           today.toString(Qt::ISODate).toStdString();
    return formulary::check(made) ? std::optional(made) : std::nullopt;
}

// How much a film a litre adds, as a share of what a fresh bath needs.
double ownSlope(OwnKind kind, double figure)
{
    return kind == OwnKind::Capacity ? 1 / figure : figure / 100;
}

ChartSeries ownDots(std::vector<QPointF> points)
{
    std::stable_sort(points.begin(), points.end(),
                     [](const QPointF& a, const QPointF& b) { return a.x() < b.x(); });
    return {.name = OwnFiguresCard::tr("your tests"),
            .kind = SeriesKind::Points,
            .ink = ChartInk::Next,
            .points = std::move(points)};
}

ChartSeries ownSpan(std::vector<QPointF> upper, std::vector<QPointF> lower)
{
    return {.name = OwnFiguresCard::tr("span, 8 in 10"),
            .kind = SeriesKind::Area,
            .ink = ChartInk::Fan,
            .points = std::move(upper),
            .lower = std::move(lower),
            .figures = AreaFigures::Edges};
}

ChartSeries ownLine(std::vector<QPointF> points)
{
    return {.name = OwnFiguresCard::tr("what they say"),
            .kind = SeriesKind::Line,
            .ink = ChartInk::Films,
            .points = std::move(points)};
}

// Times against films: a straight line from the fresh bath's.
ChartSpec slopeChart(const ledger::OwnRecord& record, OwnKind kind)
{
    const chemistry::OwnFigure& figure = *record.of(kind);
    ChartSpec spec;
    spec.title = kind == OwnKind::Capacity ? OwnFiguresCard::tr("Clearing time, of the fresh one")
                                           : OwnFiguresCard::tr("Time needed, of the first film's");
    spec.x = ChartX::Numbers;
    spec.xName = OwnFiguresCard::tr("films per litre");
    spec.y = ChartY::Number;
    spec.yUnit = QStringLiteral("×");
    std::vector<QPointF> dots;
    double last = 1;
    double highest = 1;
    for (const ledger::OwnTest& test : record.tests) {
        dots.emplace_back(test.wear.value(), test.times);
        last = std::max(last, test.wear.value());
        highest = std::max(highest, test.times);
    }
    spec.xMax = std::ceil(last);
    const auto at = [&](double value) { return 1 + ownSlope(kind, value) * spec.xMax; };
    const double low = std::min(at(figure.low), at(figure.high));
    const double high = std::max(at(figure.low), at(figure.high));
    spec.yMax = std::ceil(std::max(highest, high) * 2) / 2;
    spec.series = {ownSpan({{0, 1}, {spec.xMax, high}}, {{0, 1}, {spec.xMax, low}}),
                   ownLine({{0, 1}, {spec.xMax, at(figure.value)}}), ownDots(std::move(dots))};
    return spec;
}

// Passed or not against days: what passed stands at the top, what failed at the foot.
ChartSpec keepingTestsChart(const ledger::OwnRecord& record)
{
    ChartSpec spec;
    spec.title = OwnFiguresCard::tr("Chance to pass a test, half full");
    spec.x = ChartX::Numbers;
    spec.xName = OwnFiguresCard::tr("days half full");
    spec.y = ChartY::Percent;
    spec.yMax = 1;
    spec.xMax = 1;
    std::vector<QPointF> line;
    std::vector<QPointF> low;
    std::vector<QPointF> high;
    for (const ledger::OwnChance& chance : record.chances) {
        const double days = chance.halfFull.value();
        spec.xMax = std::max(spec.xMax, std::ceil(days));
        line.emplace_back(days, chance.chance);
        low.emplace_back(days, chance.low);
        high.emplace_back(days, chance.high);
    }
    std::vector<QPointF> dots;
    for (const ledger::OwnTrial& trial : record.trials) {
        dots.emplace_back(trial.halfFull.value(), trial.passed ? 1.0 : 0.0);
        spec.xMax = std::max(spec.xMax, std::ceil(trial.halfFull.value()));
    }
    spec.series = {ownSpan(std::move(high), std::move(low)), ownLine(std::move(line)),
                   ownDots(std::move(dots))};
    return spec;
}

ChartSpec ownChart(const ledger::OwnRecord& record, OwnKind kind, const QString& sentence)
{
    ChartSpec spec =
        kind == OwnKind::Keeping ? keepingTestsChart(record) : slopeChart(record, kind);
    spec.summary = sentence;
    spec.xTitle = spec.xName;
    return spec;
}

QString equationOfOwn(OwnKind kind)
{
    switch (kind) {
    case OwnKind::Capacity:
        return OwnFiguresCard::tr(
            "Clearing time at 20 °C ÷ that of a fresh bath, of the same film in the same bottle = "
            "1 + films a litre ÷ capacity: the line through all tests. It begins at the packet's "
            "figure, and each test pulls it towards itself.");
    case OwnKind::Wear:
        return OwnFiguresCard::tr(
            "Time that would have given the reference density ÷ time of the first film = 1 + films "
            "a litre × this: the line through all control strips. It begins at the packet's "
            "figure, and each control strip pulls it towards itself.");
    default:
        return OwnFiguresCard::tr(
            "Each bottle's last pass and first failure, beside the air and the age that had spent "
            "it by then. It begins at the limit that the keeping times give, a factor of two "
            "either way, and each of them pulls it towards itself.");
    }
}

void addOwnConstants(Explanation& why, const formulary::Solution& solution, OwnKind kind,
                     const Wording& wording)
{
    const QLocale& locale = wording.locale;
    switch (kind) {
    case OwnKind::Capacity:
        why.constants = {explained(solution, Figure::Capacity, wording),
                         explained(OwnFiguresCard::tr("A clearing test varies by"),
                                   chemistry::kOwnClearing, locale)};
        return;
    case OwnKind::Wear:
        why.constants = {
            explainedWear(solution, wording),
            explained(OwnFiguresCard::tr("A control strip's time varies by"), chemistry::kOwnStrip,
                      locale),
            explained(OwnFiguresCard::tr("Density to time"), chemistry::kStripResponse, locale)};
        return;
    case OwnKind::Keeping:
        break;
    }
    why.constants = {explained(solution, Figure::KeepsFull, wording)};
    if (solution.keeping.half)
        why.constants.push_back(explained(solution, Figure::KeepsHalf, wording));
    why.constants.push_back(
        explained(OwnFiguresCard::tr("A bottle's end varies by"), chemistry::kOwnTrial, locale));
    why.constants.push_back(explained(OwnFiguresCard::tr("Passed or failed by mistake"),
                                      chemistry::kOwnMistake, locale));
}

Explanation explainOwn(const formulary::Solution& solution, const ledger::OwnRecord& record,
                       OwnKind kind, const Wording& wording)
{
    const QLocale& locale = wording.locale;
    const chemistry::OwnFigure& figure = *record.of(kind);
    const auto number = [&](double value) { return ownNumber(kind, value, locale); };
    Explanation why;
    why.equation = equationOfOwn(kind);
    switch (kind) {
    case OwnKind::Capacity:
        why.title = OwnFiguresCard::tr("Capacity by your tests");
        why.value = OwnFiguresCard::tr("%1 films a litre").arg(number(figure.value));
        break;
    case OwnKind::Wear:
        why.title = OwnFiguresCard::tr("Wear by your control strips");
        why.value = OwnFiguresCard::tr("+ %1 % a film").arg(number(figure.value));
        break;
    case OwnKind::Keeping:
        why.title = OwnFiguresCard::tr("Keeping by your looks and control strips");
        why.value = OwnFiguresCard::tr("%n day(s) half full", nullptr,
                                       static_cast<int>(std::lround(figure.value)));
        break;
    }
    why.inputs = {
        {OwnFiguresCard::tr("Tests"), locale.toString(figure.tests)},
        {OwnFiguresCard::tr("Bottles they were made in"), locale.toString(figure.bottles)},
        {OwnFiguresCard::tr("8 times in 10 within"),
         OwnFiguresCard::tr("%1 – %2").arg(number(figure.low), number(figure.high))}};
    if (kind == OwnKind::Keeping) {
        why.inputs.push_back(
            {OwnFiguresCard::tr("Oxygen it can take"),
             oxygenText(chemistry::MillimolesPerLitre(record.oxygen->value), locale)});
        why.notes << OwnFiguresCard::tr(
            "Bottles that films had worn to 80 %, bottles found and precipitates "
            "say nothing of it.");
    }
    why.notes << OwnFiguresCard::tr(
        "All bottles of a solution are taken as alike. No figure is used before you say so.");
    addOwnConstants(why, solution, kind, wording);
    gradeByConstants(why);
    return why;
}

} // namespace

std::vector<OwnOffer> ownOffers(const formulary::Solution& solution,
                                const ledger::OwnRecord& record, int bottles, QDate today,
                                const Wording& wording)
{
    std::vector<OwnOffer> offers;
    for (const OwnKind kind : ledger::kOwnKinds) {
        if (!record.of(kind))
            continue;
        OwnOffer offer{.kind = kind,
                       .sentence = ownSentence(solution, kind, *record.of(kind), wording.locale),
                       .why = explainOwn(solution, record, kind, wording),
                       .changed = withOwn(solution, kind, *record.of(kind), bottles, today)};
        offer.chart = ownChart(record, kind, offer.sentence);
        offers.push_back(std::move(offer));
    }
    return offers;
}

} // namespace ullage::app
