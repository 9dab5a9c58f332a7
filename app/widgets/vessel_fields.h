// The fields that a bottle is described with wherever one is entered; how they stand is for whoever
// shows them.
#pragma once

#include "app/widgets/quantity_edit.h"
#include "core/formulary/vessel.h"

class QCheckBox;
class QComboBox;
class QWidget;

namespace ullage::app
{

struct VesselFields {
    VesselFields(const Wording& wording, QWidget* parent);

    QLineEdit* name;
    QuantityField<chemistry::Millilitres>* capacity;
    QComboBox* material;
    QCheckBox* squeezed;

    // What they are called.
    [[nodiscard]] static QString nameLabel();
    [[nodiscard]] static QString capacityLabel();
    [[nodiscard]] static QString materialLabel();

    /// What stands in them, without an id, unchecked; a capacity that cannot be read is 0.
    [[nodiscard]] formulary::Vessel vessel() const;
};

} // namespace ullage::app
