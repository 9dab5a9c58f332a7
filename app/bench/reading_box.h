// A reading of the thermometer during a run: what it would change is shown before it is accepted.
#pragma once

#include "app/widgets/quantity_edit.h"
#include "core/ledger/run_clock.h"

#include <QStringList>
#include <QWidget>

class QLabel;
class QPushButton;

namespace ullage::app
{

class ReadingBox : public QWidget
{
    Q_OBJECT

public:
    explicit ReadingBox(QWidget* parent = nullptr);

    /// Opens on a run; `titles` names its steps. The run must outlive the opening.
    void open(ledger::RunClock& run, const QStringList& titles, const Wording& wording);
    void close();
    [[nodiscard]] bool isOpen() const { return m_run != nullptr; }
    /// Accepts what is shown, if it can be.
    void take();
    /// The preview moves on with the clock.
    void tick();

signals:
    void taken();
    void closed();

private:
    void preview();

    ledger::RunClock* m_run = nullptr;
    QStringList m_titles;
    Wording m_wording;
    QuantityField<chemistry::Celsius>* m_field;
    QLabel* m_preview;
    QPushButton* m_take;
};

} // namespace ullage::app
