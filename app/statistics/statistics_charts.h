// The statistics as quiet charts and bars, a card each.
#pragma once

#include "app/statistics/bar_rows.h"
#include "app/words/units.h"
#include "core/formulary/formulary.h"
#include "core/ledger/statistics.h"

#include <QWidget>

#include <vector>

class QLabel;

namespace ullage::app
{

class Card;
class ChartView;

/// Keeps nothing of what it is shown. A card without figures says why it has none.
class StatisticsCharts : public QWidget
{
    Q_OBJECT

public:
    explicit StatisticsCharts(QWidget* parent = nullptr);

    void showStatistics(const ledger::Statistics& statistics, const formulary::Formulary& formulary,
                        const Wording& wording);

private:
    struct Bars {
        Card* card = nullptr;
        BarRows* rows = nullptr;
        QLabel* none = nullptr;
    };
    Bars addBars();
    static void showBars(const Bars& bars, const QString& title, const std::vector<BarRow>& rows,
                         const QString& none);

    Card* m_filmsCard;
    ChartView* m_films;
    QLabel* m_summary;
    Bars m_solutions;
    Bars m_lives;
    Bars m_ends;
    Bars m_costs;
};

} // namespace ullage::app
