// Beside the clock: what is in the tank, how its time came about, and what to be careful with.
#pragma once

#include "app/words/units.h"
#include "core/ledger/run_state.h"

#include <QWidget>

class QLabel;

namespace ullage::app
{

class Card;
class CautionBox;
class FactorRows;

class TankSide : public QWidget
{
    Q_OBJECT

public:
    explicit TankSide(QWidget* parent = nullptr);

    void setRun(const ledger::RunState& state, const Wording& wording);

private:
    QLabel* m_films;
    FactorRows* m_factors;
    CautionBox* m_cautions;
};

} // namespace ullage::app
