// A test of a bottle: a clearing test, a control strip, or a look (and smell, and leader test).
//
// A strip out of control gets a factor on the development time proposed, with how it comes about.
// It is the user's to accept; without that the time stays as it is.
#pragma once

#include "app/dialogs/deed_dialog.h"
#include "app/widgets/theme.h"
#include "core/ledger/strip_record.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;

namespace ullage::app
{

class TestDialog : public BottleDialog
{
    Q_OBJECT

public:
    enum class Kind { Clearing, Strip, Look };

    TestDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent = nullptr);

    /// One offered for the role: Clearing for a fixer, Strip for a developer, Look for all.
    void setKind(Kind kind);
    /// What the figures typed so far mean; empty while they mean nothing.
    [[nodiscard]] QString judgement() const;
    /// The factor proposed for the strip typed in; empty for none.
    [[nodiscard]] std::optional<double> proposedFactor() const { return m_proposed; }

protected:
    bool fieldsAreFine() override;
    Result<void> act() override;

private:
    [[nodiscard]] Kind kind() const;
    void showFields();
    void judge();
    [[nodiscard]] std::optional<bool> passed() const;
    [[nodiscard]] ledger::StripRecord recordBefore() const;
    void fillReferences();
    QString judgeStrip(Tone& tone);
    QString proposalText(const ledger::StripProposal& proposal, double reference) const;

    std::optional<double> m_proposed;
    QComboBox* m_kind;
    QuantityEdit* m_seconds;
    QuantityEdit* m_temperature;
    QuantityEdit* m_density;
    QComboBox* m_reference;
    QCheckBox* m_accept;
    QuantityEdit* m_factor;
    QComboBox* m_what;
    QComboBox* m_passed;
    QLabel* m_judgement;
};

} // namespace ullage::app
