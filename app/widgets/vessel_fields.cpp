#include "app/widgets/vessel_fields.h"

#include "app/words/formulary_words.h"
#include "core/formulary/field_of.h"
#include "core/formulary/vessel_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(VesselFields)
};

} // namespace

QString VesselFields::nameLabel() { return Words::tr("Name of the new bottle"); }

QString VesselFields::capacityLabel() { return Words::tr("Holds, to the brim"); }

QString VesselFields::materialLabel() { return Words::tr("Made of"); }

VesselFields::VesselFields(const Wording& wording, QWidget* parent)
    : name(new QLineEdit(parent)),
      capacity(new QuantityField<chemistry::Millilitres>(
          formulary::fieldOf(&formulary::Vessel::capacity), capacityLabel(), wording, parent)),
      material(new QComboBox(parent)),
      squeezed(new QCheckBox(Words::tr("Air is always squeezed out"), parent))
{
    name->setPlaceholderText(Words::tr("Amber 1"));
    name->setMaxLength(static_cast<int>(formulary::fieldOf(&formulary::Vessel::name).longest));
    for (int i = 0; i < static_cast<int>(formulary::kMaterialCodes.size()); ++i)
        material->addItem(materialName(static_cast<formulary::Material>(i)), i);
}

formulary::Vessel VesselFields::vessel() const
{
    formulary::Vessel vessel;
    vessel.name = name->text().trimmed().toStdString();
    vessel.capacity = capacity->quantity().value_or(chemistry::Millilitres());
    vessel.material = static_cast<formulary::Material>(material->currentData().toInt());
    vessel.squeezed = squeezed->isChecked();
    return vessel;
}

} // namespace ullage::app
