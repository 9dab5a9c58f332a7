// All that is known of what is chosen in the cupboard, and what can be done with it.
#pragma once

#include "app/cupboard/cupboard_views.h"
#include "app/widgets/card.h"

class QGridLayout;
class QPushButton;

namespace ullage::app
{

class ItemCard : public Card
{
    Q_OBJECT

public:
    /// The actions outlive it.
    explicit ItemCard(CupboardActions& actions, QWidget* parent = nullptr);

    /// Null: nothing is chosen.
    void setRow(const CupboardRow* row);

private:
    QWidget* m_facts = nullptr;
    CupboardActions* m_actions;
    QVBoxLayout* m_place;
};

} // namespace ullage::app
