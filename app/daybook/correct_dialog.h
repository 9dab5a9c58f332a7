// Correcting what happened to a bottle: a mixing, and all that has a form of its own.
#pragma once

#include "app/daybook/correcting_dialog.h"
#include "app/widgets/quantity_edit.h"

class QComboBox;

namespace ullage::app
{

/// The form that asks for it; empty for what has none.
std::optional<HappeningKind> formOf(const ledger::Event& event);

class CorrectDialog : public CorrectingDialog
{
    Q_OBJECT

public:
    /// `entered` begins with a mixing, or with what has a form.
    CorrectDialog(Door& door, const QString& what, std::vector<ledger::Event> entered,
                  QWidget* parent = nullptr);

protected:
    bool restIsFine() override;
    [[nodiscard]] std::optional<std::vector<ledger::Event>> instead() const override;

private:
    void addMixing(const ledger::Mixed& mixed);
    void addSolutions(const std::string& chosen);
    void addVessels(const std::string& chosen);
    [[nodiscard]] bool isHalfOfTopUp(const ledger::Event& event) const;
    [[nodiscard]] std::optional<ledger::Happening> corrected(const ledger::Event& event) const;

    FieldForm* m_fields = nullptr;   ///< of a mixing
    QComboBox* m_solution = nullptr; ///< none where what was taken for it gives it
    QComboBox* m_vessel = nullptr;
    QLineEdit* m_name = nullptr;
    QuantityField<chemistry::Millilitres>* m_volume = nullptr;
};

} // namespace ullage::app
