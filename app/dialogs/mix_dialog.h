// Mixing a batch: what, into which bottle, how much and when; what it will become stands beside.
#pragma once

#include "app/dialogs/deed_dialog.h"
#include "app/dialogs/volume_question.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/vessel_fields.h"
#include "core/ledger/cupboard_state.h"
#include "core/ledger/mix_preview.h"

#include <optional>
#include <string>
#include <vector>

class QLabel;
class QCheckBox;
class QComboBox;
class QLineEdit;

namespace ullage::app
{

class Card;
class CautionBox;
class FactorRows;
class FoundForm;

/// What was chosen elsewhere; what is not known is empty, or 0. Without a solution, what it is for.
struct MixChoice {
    std::string solution;
    std::string vessel;
    chemistry::Millilitres volume;
    std::optional<formulary::Role> role = {};
    std::optional<chemistry::Instant> at = {}; ///< when it was mixed; now without
};

/// A new bottle can be described along with it and is entered in the same action. Until the user
/// types one, the volume is usualVolume() and the name the next free one.
class MixDialog : public DeedDialog
{
    Q_OBJECT

public:
    explicit MixDialog(Door& door, QWidget* parent = nullptr);

    /// Begins with that, as far as it can be chosen here.
    void beginWith(const MixChoice& choice);
    /// Id of the batch that was mixed; empty before.
    [[nodiscard]] QString mixed() const { return m_mixed; }
    /// When it is said to have been mixed; empty while that is now.
    [[nodiscard]] std::optional<chemistry::Instant> datedBack() const;
    /// What does not fit or will cost keeping time, as shown; empty if nothing.
    [[nodiscard]] QString warnings() const;

protected:
    bool restIsFine() override;
    [[nodiscard]] std::optional<std::vector<ledger::Event>> wouldEnter() const override;
    [[nodiscard]] QString nothingFollows() const override;
    Result<void> act() override;

private:
    void buildForm();
    void buildSide();
    void fillSolutions();
    void fillBottles(const std::string& choose);
    void fillPackets();
    void solutionChanged();
    void vesselChanged();
    void refresh();
    void showPreview(const ledger::MixPreview& preview);
    [[nodiscard]] QStringList warningsFor(const Result<ledger::MixPreview>& preview) const;

    [[nodiscard]] bool newVessel() const;
    /// Empty for none, and of a bottle found.
    [[nodiscard]] std::optional<chemistry::Films> filmsBefore() const;
    [[nodiscard]] ledger::KnownBefore knownBefore() const;
    /// As far as it is described; a volume that cannot be read is 0.
    [[nodiscard]] ledger::NewBatch newBatch(const std::string& vessel) const;
    [[nodiscard]] std::shared_ptr<const formulary::Solution> solution() const;
    /// The chosen one, or the new one as far as it is described.
    [[nodiscard]] std::optional<formulary::Vessel> vessel() const;

    QComboBox* m_solution;
    QComboBox* m_packet; ///< of the cupboard; hidden where none is for the solution
    QComboBox* m_vessel;
    VesselFields m_new; ///< the bottle that is yet to be entered
    QuantityField<chemistry::Millilitres>* m_volume;
    QLineEdit* m_name;
    QuantityField<chemistry::Films>* m_filmsBefore; ///< of a bottle that was in use before the book
    WhenEdit* m_whenMixed;
    QCheckBox* m_found;
    FoundForm* m_foundForm; ///< shown where it was found
    QCheckBox* m_dissolved;
    QLabel* m_warnings;
    Card* m_become;
    QLabel* m_becomeWhat;
    FactorRows* m_rows;
    CautionBox* m_cautions;
    QStringList m_taken;                   ///< names of all batches
    std::vector<ledger::Packet> m_packets; ///< that may be mixed from
    std::vector<ledger::ItemHere> m_items; ///< of the cupboard: how long they keep
    bool m_volumeTyped = false;
    bool m_nameTyped = false;
    VolumeQuestion m_littleQuestion;
    QString m_mixed;
};

} // namespace ullage::app
