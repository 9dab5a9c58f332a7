// What to buy, by when, for the known work of some weeks or for so many films.
#pragma once

#include "app/cupboard/need_views.h"
#include "app/widgets/card.h"

class QComboBox;

namespace ullage::app
{

class CountBox;

class BuyCard : public Card
{
    Q_OBJECT

public:
    explicit BuyCard(QWidget* parent = nullptr);

    void setBuy(const BuyView& view);
    [[nodiscard]] PlanFor planFor() const;
    void setPlanFor(const PlanFor& planFor);

signals:
    void planForChanged();
    /// The list on paper, or as a table.
    void printRequested();
    void tableRequested();

private:
    void showFilms();

    QComboBox* m_for;
    CountBox* m_films;
    QWidget* m_lines = nullptr;
    QVBoxLayout* m_place;
};

} // namespace ullage::app
