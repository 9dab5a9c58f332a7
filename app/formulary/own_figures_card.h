// What the darkroom's own tests say of a solution, beside what the packet says. Nothing is taken
// over by itself.
#pragma once

#include "app/charts/chart.h"
#include "app/widgets/card.h"
#include "app/words/units.h"
#include "core/formulary/solution.h"
#include "core/ledger/own_record.h"

class QLabel;
class QPushButton;

namespace ullage::app
{

class ChartView;

/// Hidden while nothing is offered.
class OwnFiguresCard : public Card
{
    Q_OBJECT

public:
    explicit OwnFiguresCard(QWidget* parent = nullptr);

    /// `bottles` of the solution were looked at.
    void setRecord(const formulary::Solution& solution, const ledger::OwnRecord& record,
                   int bottles, const Wording& wording);
    void clear();
    /// "Your 14 tests in 5 bottles say 22 films a litre (18 – 27); the packet says 20."
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QPushButton* useButton() const { return m_use; }

signals:
    /// The figure is to be taken over: `changed` is the solution with it and with its source.
    void useWanted(const ullage::formulary::Solution& changed);

private:
    QLabel* m_sentence;
    ChartView* m_chart;
    QPushButton* m_use;
    std::optional<formulary::Solution> m_changed;
};

/// The solution with the figure in place of its own, and the source that says so: "own tests, n of
/// m bottles, to DATE"; empty where none is offered. `today` is written as YYYY-MM-DD.
std::optional<formulary::Solution> withOwnFigure(const formulary::Solution& solution,
                                                 const ledger::OwnRecord& record, int bottles,
                                                 const std::string& today);
/// The tests as dots, what they say as a line with its span.
ChartSpec ownFigureChart(const ledger::OwnRecord& record, const Wording& wording);

} // namespace ullage::app
