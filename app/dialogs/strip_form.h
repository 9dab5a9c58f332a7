// The form of a control strip.
//
// A strip out of control gets a factor on the development time proposed, with how it comes about.
// It is the user's to accept; without that the time stays as it is.
#pragma once

#include "app/dialogs/happening_form.h"
#include "app/widgets/theme.h"
#include "core/ledger/strip_record.h"

class QCheckBox;
class QComboBox;

namespace ullage::app
{

/// One of density, factor and result is needed. The limits preset the result, until somebody
/// chooses another.
class StripForm : public HappeningForm
{
    Q_OBJECT

public:
    StripForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
    bool restIsFine() override;
    [[nodiscard]] Caution caution() const override;
    [[nodiscard]] QString judgement() const override;
    [[nodiscard]] QWidget* first() const override { return m_density; }
    /// The factor proposed for the strip typed in; empty for none.
    [[nodiscard]] std::optional<double> proposedFactor() const { return m_proposed; }

protected:
    void fill(const ledger::Happening& what) override;
    void bottleChanged() override;

private:
    void judge();
    void presetResult();
    [[nodiscard]] ledger::StripRecord recordBefore() const;
    void fillReferences();
    QString judgeStrip(Tone& tone);
    [[nodiscard]] QString proposalText(const ledger::StripProposal& proposal,
                                       double reference) const;

    std::optional<double> m_proposed;
    std::optional<bool> m_byLimits; ///< what the limits say of the density
    int m_preset = 0;               ///< place of the result that was preset last
    bool m_resultChosen = false;
    QuantityEdit* m_density;
    QComboBox* m_reference;
    QuantityEdit* m_factor;
    QComboBox* m_passed;
    QLabel* m_judgement;
    QCheckBox* m_accept;
};

} // namespace ullage::app
