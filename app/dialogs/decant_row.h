// One of the bottles that a batch is decanted into: which, how much, and what it is called.
#pragma once

#include "app/dialogs/bottle_choice.h"
#include "app/dialogs/field_form.h"
#include "app/widgets/quantity_edit.h"

class QComboBox;
class QLineEdit;

namespace ullage::app
{

class DecantRow : public FieldForm
{
    Q_OBJECT

public:
    explicit DecantRow(const Wording& wording, QWidget* parent = nullptr);

    /// Offers these vessels, each by its id; the one chosen before stays so if it is among them.
    void setVessels(const std::vector<VesselChoice>& vessels);
    void chooseVessel(const std::string& id);
    void setVolume(chemistry::Millilitres volume);
    void setName(const QString& name);

    /// Empty for none.
    [[nodiscard]] std::string vessel() const;
    /// Empty while it cannot be read.
    [[nodiscard]] std::optional<chemistry::Millilitres> volume() const;
    [[nodiscard]] QString name() const;
    [[nodiscard]] QWidget* first() const;

private:
    QComboBox* m_vessel;
    QuantityField<chemistry::Millilitres>* m_volume;
    QLineEdit* m_name;
};

} // namespace ullage::app
