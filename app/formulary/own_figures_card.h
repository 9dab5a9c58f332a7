// What the darkroom's own tests say of a solution, beside what the packet says. Nothing is taken
// over by itself.
#pragma once

#include "app/formulary/own_figures.h"
#include "app/widgets/card.h"

class QButtonGroup;
class QLabel;
class QPushButton;

namespace ullage::app
{

class ChartView;
class WhereFromButton;

/// One figure at a time, with a switch where the tests say more than one. Hidden while nothing is
/// offered.
class OwnFiguresCard : public Card
{
    Q_OBJECT

public:
    explicit OwnFiguresCard(QWidget* parent = nullptr);

    void setOffers(std::vector<OwnOffer> offers);
    void clear();
    /// Shows that one, if it is offered.
    void choose(ledger::OwnKind kind);
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QPushButton* useButton() const { return m_use; }
    [[nodiscard]] WhereFromButton* whereFrom() const { return m_ask; }

signals:
    /// The figure is to be taken over: `changed` is the solution with it and with its source.
    void useWanted(const ullage::formulary::Solution& changed);

private:
    [[nodiscard]] const OwnOffer* shown() const;
    void show(std::size_t which);

    QWidget* m_switch;
    QButtonGroup* m_kinds;
    QLabel* m_sentence;
    ChartView* m_chart;
    QPushButton* m_use;
    WhereFromButton* m_ask;
    std::vector<OwnOffer> m_offers;
    std::size_t m_shown = 0;
};

} // namespace ullage::app
