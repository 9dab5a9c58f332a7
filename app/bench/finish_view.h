// The end of a run, or of one that was given up: what each bottle lost and how it was closed.
#pragma once

#include "app/widgets/quantity_edit.h"
#include "app/words/units.h"
#include "core/ledger/run_state.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QPlainTextEdit;
class QPushButton;
class QVBoxLayout;

namespace ullage::app
{

class Card;
class CautionBox;
class TopUpOffers;

class FinishView : public QWidget
{
    Q_OBJECT

public:
    enum class Why { Finished, Abandoned };

    explicit FinishView(QWidget* parent = nullptr);

    /// Asks about the bottles of this run; those that film went into are ticked. A finished run
    /// must have its bottles logged, an abandoned one may be dropped.
    /// What the run asks to be topped up is offered for the bottles that have a rate.
    void ask(const ledger::RunState& state, Why why, const Wording& wording,
             std::vector<ledger::Judged> bottles = {});
    /// Why it could not be logged.
    void setRefusal(const QString& text);

    /// What was ticked: for each bottle what it lost (0 to what was poured from it) and its air
    /// now.
    [[nodiscard]] std::vector<ledger::BathClosing> closings() const;
    /// As they were typed; may be empty.
    [[nodiscard]] QString notes() const;

signals:
    void log();  ///< the run is to be entered as closings() and notes() say
    void drop(); ///< nothing of it is to be entered; only of an abandoned run
    void back(); ///< the clock goes on

private:
    struct Row {
        std::string batch;
        QCheckBox* used;
        QuantityField<chemistry::Millilitres>* lost; ///< null for a bath that is not poured back
        QComboBox* air;
        QuantityField<chemistry::Millilitres>* airLeft;
    };
    void addRow(const ledger::RunBath& bath, bool used);
    void refresh();
    [[nodiscard]] std::optional<chemistry::Millilitres> airLeft(const Row& row) const;
    [[nodiscard]] QWidget* times(const ledger::RunState& state);

    Wording m_wording;
    Why m_why = Why::Finished;
    chemistry::Films m_films;
    std::vector<ledger::Judged> m_judged;
    std::vector<Row> m_rows;
    Card* m_bottles;
    Card* m_times;
    TopUpOffers* m_topUps;
    QWidget* m_list = nullptr;
    QWidget* m_timeRows = nullptr;
    QPlainTextEdit* m_notes;
    CautionBox* m_cautions;
    QLabel* m_refusal;
    QPushButton* m_log;
    QPushButton* m_drop;
};

} // namespace ullage::app
