// Entering an entry anew with other values: what was entered with it is taken back, and the new
// entries come in its place, as one deed. Later entries stay where they still fit; else it is
// refused and says which does not.
#pragma once

#include "app/dialogs/happening_dialog.h"
#include "app/widgets/quantity_edit.h"

namespace ullage::app
{

/// Whether its values can be corrected: mixings, runs, and all that has a form of its own. Not what
/// is the other half of a filling: that is corrected in the bottle that was filled.
bool canCorrect(const ledger::Event& event);

class CountBox;

class CorrectDialog : public HappeningDialog
{
    Q_OBJECT

public:
    /// `what` names the entry. `entered`: what stands for it, the entry first, and what was entered
    /// with it; of a run the events of all baths.
    CorrectDialog(Door& door, const QString& what, std::vector<ledger::Event> entered,
                  QWidget* parent = nullptr);

protected:
    [[nodiscard]] std::string batch() const override { return m_entered.front().batch; }
    bool restIsFine() override;
    [[nodiscard]] std::optional<std::vector<ledger::Event>> wouldEnter() const override;
    Result<void> act() override;

private:
    void addMixing(const ledger::Mixed& mixed);
    void addRun(const ledger::Processed& run);
    [[nodiscard]] bool isPrincipal(const ledger::Event& event) const;
    [[nodiscard]] bool isHalfOfTopUp(const ledger::Event& event) const;
    [[nodiscard]] chemistry::Instant correctedMoment() const;
    [[nodiscard]] std::optional<ledger::Happening> corrected(const ledger::Event& event) const;
    /// What comes instead; empty while fields are missing.
    [[nodiscard]] std::optional<std::vector<ledger::Event>> instead() const;
    [[nodiscard]] std::vector<std::string> goes() const;

    std::vector<ledger::Event> m_entered;
    FieldForm* m_fields = nullptr; ///< of a mixing or a run
    QLineEdit* m_name = nullptr;
    QuantityField<chemistry::Millilitres>* m_volume = nullptr;
    std::vector<CountBox*> m_counts;
    QuantityField<chemistry::SquareCentimetres>* m_area = nullptr;
    QuantityField<chemistry::Millilitres>* m_used = nullptr;
    QuantityField<chemistry::Millilitres>* m_lost = nullptr;
    QLineEdit* m_why = nullptr;
};

} // namespace ullage::app
