#include "app/statistics/statistics_charts.h"

#include "app/charts/chart.h"
#include "app/charts/chart_view.h"
#include "app/statistics/statistics_words.h"
#include "app/widgets/card.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"

#include <QGridLayout>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kChartHeight = 210;

} // namespace

StatisticsCharts::StatisticsCharts(QWidget* parent)
    : QWidget(parent), m_filmsCard(new Card({}, this)), m_films(makeChartView(m_filmsCard)),
      m_summary(new PlainLabel(m_filmsCard))
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(Space::kGap);
    m_films->setMinimumHeight(kChartHeight);
    setTone(m_summary, Tone::Quiet);
    m_filmsCard->body()->addWidget(m_films, 1);
    m_filmsCard->body()->addWidget(m_summary);
    m_solutions = addBars();
    m_lives = addBars();
    m_ends = addBars();
    m_costs = addBars();
    grid->addWidget(m_filmsCard, 0, 0, 1, 2);
    grid->addWidget(m_solutions.card, 1, 0);
    grid->addWidget(m_lives.card, 1, 1);
    grid->addWidget(m_ends.card, 2, 0);
    grid->addWidget(m_costs.card, 2, 1);
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    grid->setRowStretch(0, 1);
}

StatisticsCharts::Bars StatisticsCharts::addBars()
{
    Bars bars{new Card({}, this), nullptr, nullptr};
    bars.rows = new BarRows(bars.card);
    bars.none = new PlainLabel(bars.card);
    bars.none->setWordWrap(true);
    setTone(bars.none, Tone::Quiet);
    bars.card->body()->addWidget(bars.rows);
    bars.card->body()->addWidget(bars.none);
    bars.card->body()->addStretch(1);
    return bars;
}

void StatisticsCharts::showBars(const Bars& bars, const QString& title,
                                const std::vector<BarRow>& rows, const QString& none)
{
    bars.card->setTitle(title);
    bars.rows->setRows(rows);
    bars.rows->setVisible(!rows.empty());
    bars.none->setText(none);
    bars.none->setVisible(rows.empty());
}

void StatisticsCharts::showStatistics(const ledger::Statistics& so,
                                      const formulary::Formulary& formulary, const Wording& wording)
{
    const ChartSpec films = filmsChart(so, wording);
    m_filmsCard->setTitle(films.title);
    m_films->setChart(films);
    m_films->setVisible(!films.categories.isEmpty());
    m_summary->setText(films.categories.isEmpty() ? tr("No film was developed in this period.")
                                                  : films.summary);
    showBars(m_solutions, tr("Films by solution"), filmRows(so, formulary, wording),
             tr("No film in this period."));
    showBars(m_lives, tr("How long bottles lasted, from mixing to their end"),
             lifeRows(so, formulary, wording), tr("No bottle ended in this period."));
    showBars(m_ends, tr("Why bottles ended"), endRows(so, wording),
             tr("No bottle ended in this period."));
    showBars(m_costs, tr("Chemistry for one film"), costRows(so, formulary, wording),
             tr("Not known: no bottle that did film and ended in this period has a price for all "
                "that went in."));
}

} // namespace ullage::app
