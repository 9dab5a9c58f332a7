// A clearing test at the bench: drop a piece of film leader into the fixer, stop when it is clear.
#pragma once

#include "app/widgets/quantity_edit.h"
#include "core/ledger/event.h"
#include "core/ledger/run_clock.h"

#include <QWidget>

#include <optional>

class QPushButton;
class QTimer;

namespace ullage::app
{

class ClearingBox : public QWidget
{
    Q_OBJECT

public:
    ClearingBox(const QString& bottle, ledger::SteadyClock steady, const Wording& wording,
                QWidget* parent = nullptr);

    void setTemperature(std::optional<chemistry::Celsius> temperature);

signals:
    void tested(const ullage::ledger::ClearingTested& test);

private:
    void startOrStop();
    void check();

    ledger::SteadyClock m_steady;
    std::optional<std::chrono::milliseconds> m_started;
    QuantityField<chemistry::Seconds>* m_time;
    QuantityField<chemistry::Celsius>* m_temperature;
    QPushButton* m_watch;
    QPushButton* m_enter;
    QTimer* m_timer;
};

} // namespace ullage::app
