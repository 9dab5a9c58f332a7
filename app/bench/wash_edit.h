// How the film is washed: the published ways with their sources, or fill and dump with what it
// leaves; and how warm the tap is.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QWidget>

#include "app/widgets/quantity_edit.h"
#include "app/words/units.h"
#include "core/ledger/wash_plan.h"

class QComboBox;
class QLabel;
class QSpinBox;

namespace ullage::app
{

class WashEdit : public QWidget
{
    Q_OBJECT

public:
    explicit WashEdit(const Wording& wording, QWidget* parent = nullptr);

    void setWording(const Wording& wording);
    [[nodiscard]] ledger::WashPlan plan() const;
    void setKind(ledger::WashKind kind);
    /// The fixer's temperature and the tank's volume: the first warns of a colder or warmer tap,
    /// the second is what a filling holds until the user says otherwise.
    void setRun(std::optional<chemistry::Celsius> fixer, chemistry::Millilitres tank);
    /// What stands against the figures typed; empty for nothing.
    [[nodiscard]] QString problem() const;
    [[nodiscard]] QString note() const;
    [[nodiscard]] QString warning() const;

signals:
    void changed();

private:
    void refresh();

    Wording m_wording;
    std::optional<chemistry::Celsius> m_fixer;
    bool m_ownFilling = false;
    QComboBox* m_kind;
    QuantityField<chemistry::Celsius>* m_water;
    QWidget* m_dumps;
    QSpinBox* m_fills;
    QuantityField<chemistry::Millilitres>* m_filling;
    QuantityField<chemistry::Millilitres>* m_carried;
    QLabel* m_note;
    QLabel* m_warning;
};

/// What fill and dump leaves: "1 part in 160,000"; beyond a million only that.
QString shareLeftText(double share, const QLocale& locale);

} // namespace ullage::app
