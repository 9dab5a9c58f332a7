// Makes a bottle, or gives one anew with other figures, showing what its wall and cap let in.
#pragma once

#include "app/session/door.h"
#include "app/widgets/form_dialog.h"
#include "app/widgets/quantity_edit.h"

#include "app/widgets/vessel_fields.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace ullage::app
{

class ExplanationView;

/// A bottle that is in the book is not changed: another takes its place, and what stands in it
/// keeps its figures until it is moved. Ranges as of formulary::Vessel; wall, permeability and cap
/// may stay empty for the usual ones.
class VesselEditor : public FormDialog
{
    Q_OBJECT

public:
    /// For a new one.
    VesselEditor(Door& door, const Wording& wording, QWidget* parent = nullptr)
        : VesselEditor(formulary::Vessel(), door, wording, parent)
    {
    }
    /// `start` is the bottle whose place the saved one takes, or one without an id for a new one.
    VesselEditor(const formulary::Vessel& start, Door& door, const Wording& wording,
                 QWidget* parent = nullptr);

    /// What stands in the fields, without an id, unchecked; a capacity that cannot be read is 0.
    [[nodiscard]] formulary::Vessel vessel() const;
    [[nodiscard]] QLineEdit* name() const { return m_fields.name; }
    [[nodiscard]] QuantityField<chemistry::Millilitres>* capacity() const
    {
        return m_fields.capacity;
    }
    [[nodiscard]] QComboBox* material() const { return m_fields.material; }
    [[nodiscard]] QuantityField<chemistry::Millimetres>* wall() const { return m_wall; }
    [[nodiscard]] QPushButton* saveButton() const { return deedButton(); }
    /// Id of what was saved; empty before.
    [[nodiscard]] QString saved() const { return m_saved; }
    /// The first thing wrong, as a sentence; empty if core's check passes.
    [[nodiscard]] QString problem() const;

protected:
    bool fieldsAreFine() override;
    Result<void> act() override;
    void showError(const Error& error) override;

private:
    void showState();
    void fill(const formulary::Vessel& vessel);

    Door* m_door;
    formulary::Vessel m_start;
    QString m_saved;
    VesselFields m_fields;
    QLabel* m_hint;
    QuantityField<chemistry::Millimetres>* m_wall;
    QuantityEdit* m_permeability;
    QuantityField<chemistry::CubicCentimetresPerDay>* m_cap;
    ExplanationView* m_why;
};

} // namespace ullage::app
