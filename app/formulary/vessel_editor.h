// Makes a bottle, showing what its wall and cap let in.
#pragma once

#include "app/formulary/formulary_deeds.h"
#include "app/words/units.h"

#include <QDialog>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace ullage::app
{

class EditorFoot;
class ExplanationView;
class QuantityEdit;

/// Only new ones: a bottle that is in the book is not changed. Ranges as of formulary::Vessel;
/// wall, permeability and cap may stay empty for the usual ones.
class VesselEditor : public QDialog
{
    Q_OBJECT

public:
    VesselEditor(FormularyDeeds deeds, const Wording& wording, QWidget* parent = nullptr);

    /// What stands in the fields, without an id, unchecked; a capacity that cannot be read is 0.
    [[nodiscard]] formulary::Vessel vessel() const;
    [[nodiscard]] QLineEdit* name() const { return m_name; }
    [[nodiscard]] QuantityEdit* capacity() const { return m_capacity; }
    [[nodiscard]] QComboBox* material() const { return m_material; }
    [[nodiscard]] QuantityEdit* wall() const { return m_wall; }
    [[nodiscard]] QPushButton* saveButton() const;
    /// The first thing wrong, as a sentence; empty if core's check passes.
    [[nodiscard]] QString problem() const;

    /// Enters it and closes; stays open with everything typed if it is refused, and says why.
    void accept() override;

private:
    void showState();

    FormularyDeeds m_deeds;
    Wording m_wording;
    QLineEdit* m_name;
    QuantityEdit* m_capacity;
    QComboBox* m_material;
    QLabel* m_hint;
    QuantityEdit* m_wall;
    QuantityEdit* m_permeability;
    QuantityEdit* m_cap;
    QCheckBox* m_squeezed;
    ExplanationView* m_why;
    EditorFoot* m_foot;
};

} // namespace ullage::app
