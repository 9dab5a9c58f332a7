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

class TankEdit : public QWidget
{
    Q_OBJECT

public:
    TankEdit(BenchMemory& memory, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] ledger::Tank tank() const;
    void setWording(const Wording& wording);

signals:
    void changed();

private:
    void fill();
    void edit(const ledger::Tank& tank, bool isNew);

    BenchMemory* m_memory;
    Wording m_wording;
    std::vector<ledger::Tank> m_tanks;
    QComboBox* m_list;
};

} // namespace ullage::app
