#include "app/formulary/own_figures_card.h"

#include "app/charts/chart_view.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/words/number_text.h"

#include <QDate>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

constexpr int kChartHeight = 150;

// How much a film a litre adds, as a share of what a fresh bath needs.
double slopeOf(const ledger::OwnRecord& record, double figure)
{
    return record.capacity ? 1 / figure : figure / 100;
}

QString packetText(const formulary::Solution& solution, bool capacity, const Wording& wording)
{
    const auto published = formulary::capacityOf(solution);
    return numberText(capacity && published ? published->value() : solution.wear.percent, 1,
                      wording.locale);
}

} // namespace

std::optional<formulary::Solution> withOwnFigure(const formulary::Solution& solution,
                                                 const ledger::OwnRecord& record, int bottles,
                                                 const std::string& today)
{
    const auto& figure = record.capacity ? record.capacity : record.wear;
    if (!figure)
        return std::nullopt;
    formulary::Solution made = solution;
    const double rounded = std::round(figure->value * 10) / 10;
    if (record.capacity)
        made.capacity = chemistry::FilmsPerLitre(rounded);
    else
        made.wear.percent = rounded;
    made.sources[record.capacity ? "capacity" : "wear"] =
        "own tests, " + std::to_string(figure->bottles) + " of " + std::to_string(bottles) +
        " bottles, to " + today;
    return made;
}

ChartSpec ownFigureChart(const ledger::OwnRecord& record, const Wording& wording)
{
    ChartSpec spec;
    const auto& figure = record.capacity ? record.capacity : record.wear;
    if (!figure)
        return spec;
    spec.title = record.capacity ? OwnFiguresCard::tr("Clearing time, of the fresh one")
                                 : OwnFiguresCard::tr("Time needed, of the first film's");
    spec.summary = spec.title;
    spec.x = ChartX::Numbers;
    spec.xName = OwnFiguresCard::tr("films per litre");
    spec.xTitle = spec.xName;
    spec.y = ChartY::Number;
    spec.yUnit = QStringLiteral("×");
    ChartSeries dots{.name = OwnFiguresCard::tr("your tests"),
                     .kind = SeriesKind::Points,
                     .ink = ChartInk::Next};
    double last = 1;
    double highest = 1;
    for (const ledger::OwnTest& test : record.tests) {
        dots.points.emplace_back(test.wear.value(), test.times);
        last = std::max(last, test.wear.value());
        highest = std::max(highest, test.times);
    }
    std::sort(dots.points.begin(), dots.points.end(),
              [](const QPointF& a, const QPointF& b) { return a.x() < b.x(); });
    spec.xMax = std::ceil(last);
    const auto at = [&](double value) { return 1 + slopeOf(record, value) * spec.xMax; };
    const double low = std::min(at(figure->low), at(figure->high));
    const double high = std::max(at(figure->low), at(figure->high));
    spec.yMin = 0;
    spec.yMax = std::ceil(std::max(highest, high) * 2) / 2;
    for (int i = 0; i <= 4; ++i) {
        const double x = spec.xMax * i / 4;
        spec.xLabels.push_back({x, numberText(x, 1, wording.locale)});
    }
    spec.series = {{.name = OwnFiguresCard::tr("span, 8 in 10"),
                    .kind = SeriesKind::Area,
                    .ink = ChartInk::Fan,
                    .points = {{0, 1}, {spec.xMax, high}},
                    .lower = {{0, 1}, {spec.xMax, low}}},
                   {.name = OwnFiguresCard::tr("what they say"),
                    .kind = SeriesKind::Line,
                    .ink = ChartInk::Films,
                    .points = {{0, 1}, {spec.xMax, at(figure->value)}}},
                   dots};
    return spec;
}

OwnFiguresCard::OwnFiguresCard(QWidget* parent)
    : Card(tr("Your own tests"), parent), m_sentence(new PlainLabel(this)),
      m_chart(makeChartView(this)), m_use(new QPushButton(tr("Use it…"), this))
{
    m_sentence->setWordWrap(true);
    m_chart->setFixedHeight(kChartHeight);
    setButtonLook(m_use, ButtonLook::Quiet);
    setPlainToolTip(m_use, tr("A new version of the solution, for what is mixed from now on"));
    body()->addWidget(m_sentence);
    body()->addWidget(m_chart);
    body()->addWidget(m_use, 0, Qt::AlignLeft);
    connect(m_use, &QPushButton::clicked, this, [this] {
        if (m_changed)
            emit useWanted(*m_changed);
    });
    hide();
}

void OwnFiguresCard::setRecord(const formulary::Solution& solution, const ledger::OwnRecord& record,
                               int bottles, const Wording& wording)
{
    const auto& figure = record.capacity ? record.capacity : record.wear;
    m_changed = withOwnFigure(solution, record, bottles,
                              QDate::currentDate().toString(Qt::ISODate).toStdString());
    setVisible(m_changed.has_value());
    if (!figure)
        return;
    const auto number = [&](double value) { return numberText(value, 1, wording.locale); };
    const QString where = tr("in %n bottle(s)", nullptr, figure->bottles);
    const bool capacity = record.capacity.has_value();
    const QString said =
        capacity ? tr("Your %n test(s) %1 say %2 films a litre (%3 – %4); the packet says %5.",
                      nullptr, figure->tests)
                 : tr("Your %n strip(s) %1 say + %2 % a film (%3 – %4); the packet says %5.",
                      nullptr, figure->tests);
    m_sentence->setText(said.arg(where, number(figure->value), number(figure->low),
                                 number(figure->high), packetText(solution, capacity, wording)));
    m_chart->setChart(ownFigureChart(record, wording));
}

void OwnFiguresCard::clear()
{
    m_changed.reset();
    m_sentence->clear();
    hide();
}

QString OwnFiguresCard::sentence() const { return m_sentence->text(); }

} // namespace ullage::app
