// Which tank: the remembered ones, and a dialog for what one holds.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include "app/widgets/asking_dialog.h"
#include "app/widgets/quantity_edit.h"

#include "app/bench/bench_memory.h"
#include "app/words/units.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace ullage::app
{

/// Name, volume and places by format of one tank.
class TankDialog : public AskingDialog
{
    Q_OBJECT

public:
    TankDialog(const ledger::Tank& tank, const Wording& wording, QWidget* parent = nullptr);

    /// Its volume is 10 mL to 100 L, a place takes 0 to 100 films of a format and 1 mL to 100 L for
    /// each. Keeping waits for a name.
    [[nodiscard]] ledger::Tank tank() const;

private:
    struct Place {
        std::string format;
        QSpinBox* most;
        QuantityField<chemistry::Millilitres>* each;
    };
    void check();

    QLineEdit* m_name;
    QuantityField<chemistry::Millilitres>* m_volume;
    std::vector<Place> m_places;
    QPushButton* m_keep;
};

/// The tank of the next run. What is chosen, made or changed is remembered at once.
class TankEdit : public QWidget
{
    Q_OBJECT

public:
    TankEdit(BenchMemory& memory, const Wording& wording, QWidget* parent = nullptr);

    /// The one that is chosen; where none was remembered, the first of those that everybody has.
    [[nodiscard]] ledger::Tank tank() const;
    /// Names and volumes again, in its units; the choice stays.
    void setWording(const Wording& wording);

signals:
    void changed(); ///< another one is chosen, or this one was changed and remembered

private:
    void fill();
    void edit(const ledger::Tank& tank, bool isNew);

    BenchMemory* m_memory;
    Wording m_wording;
    std::vector<ledger::Tank> m_tanks;
    QComboBox* m_list;
};

} // namespace ullage::app
