// The chosen solution: what it is made of, every figure with its source, and what can be done.
#pragma once

#include "app/formulary/figure_list.h"
#include "app/widgets/card.h"

class QLabel;
class QPushButton;

namespace ullage::app
{

class SolutionCard : public Card
{
    Q_OBJECT

public:
    explicit SolutionCard(QWidget* parent = nullptr);

    /// Copies what it shows.
    void setSolution(const formulary::Solution& solution, const Wording& wording);
    [[nodiscard]] FigureList* figures() const { return m_figures; }

protected:
    bool event(QEvent* event) override;

signals:
    /// Change it, or begin a new one with its figures.
    void editWanted();
    void copyWanted();

private:
    QLabel* m_name;
    QLabel* m_composition;
    FigureList* m_figures;
    QPushButton* m_edit;
};

} // namespace ullage::app
