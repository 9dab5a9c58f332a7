// First step of mixing: what, from how much powder, into which bottle, under which name.
#pragma once

#include "app/mixing/mixing_plan.h"
#include "app/widgets/quantity_edit.h"
#include "core/ledger/cupboard_state.h"

#include <QStringList>
#include <QWidget>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace ullage::app
{

class FormulaTable;
class LiquidEdit;

/// Until the user types one, the name is the next free one of the role, and the volume a round one
/// that the bottle holds; choosing a packet that says what it makes sets the volume to that.
class ChoiceStep : public QWidget
{
    Q_OBJECT

public:
    explicit ChoiceStep(const Wording& wording, QWidget* parent = nullptr);

    /// The language or the units changed; what is typed stays.
    void setWording(const Wording& wording);

    /// `freeVessels` are the bottles that hold nothing; `names` of all batches ever; `packets`
    /// those not yet used: a solution that has one is mixed from it unless the user chooses
    /// otherwise. With a `role`, its solutions alone. All are copied. What was typed before stays:
    /// name, volume and powder; and so does what was chosen, as far as it is still there.
    void setFormulary(const formulary::Formulary& formulary,
                      const std::vector<std::shared_ptr<const formulary::Vessel>>& freeVessels,
                      const QStringList& names, const std::vector<ledger::Packet>& packets = {},
                      std::optional<formulary::Role> role = {});
    /// What stands in the cupboard: where a formula is offered and a salt is there in another form
    /// than it means, that one is taken to be at hand.
    void setItems(const std::vector<ledger::ItemHere>& items);
    /// What the cupboard lacks of what is to be weighed out, a line each.
    void setLacking(const QStringList& lines);
    /// Another mixing: what is weighed, and in which forms, is chosen anew with the next formulary.
    void forgetWeighing() { m_weighed.clear(); }
    /// This packet of the cupboard, and its solution; false for one that cannot be mixed from.
    bool choosePacket(const QString& id);
    /// What stands in the fields, finished or not.
    [[nodiscard]] MixingPlan plan() const;
    /// Why one cannot go on, in words; empty if one can. Asks planProblem() last.
    [[nodiscard]] QString problem() const;

    [[nodiscard]] QComboBox* solution() const { return m_solution; }
    [[nodiscard]] QComboBox* vessel() const { return m_vessel; }
    /// 1 to 100 000 mL, required.
    [[nodiscard]] QuantityField<chemistry::Millilitres>* makes() const { return m_makes; }
    /// Grams, 0 to 100 000; may stay empty.
    [[nodiscard]] QuantityEdit* powder() const { return m_powder; }
    /// Hidden for a solution without a packet, and while it is weighed out.
    [[nodiscard]] QComboBox* packet() const { return m_packet; }
    /// Weigh it out; hidden for a solution whose composition is no formula.
    [[nodiscard]] QCheckBox* raw() const { return m_raw; }
    [[nodiscard]] FormulaTable* formula() const { return m_formula; }
    /// Says what lacks; hidden where nothing does.
    [[nodiscard]] QLabel* lacking() const { return m_lacking; }
    /// The weigh-out sheet; hidden but for raw chemicals.
    [[nodiscard]] QPushButton* sheetButton() const { return m_sheet; }
    /// Hidden for what comes as a powder.
    [[nodiscard]] LiquidEdit* liquid() const { return m_liquid; }
    [[nodiscard]] QLineEdit* name() const { return m_name; }

protected:
    void resizeEvent(QResizeEvent* event) override;

signals:
    /// Something that plan() or problem() tells may be another.
    void changed();
    /// The weigh-out sheet is wanted on paper.
    void sheetWanted();

private:
    void retranslate();
    void preferWhatIsHere();
    [[nodiscard]] QString vesselText(const formulary::Vessel& vessel) const;
    void solutionChosen();
    void vesselChosen();
    void packetChosen();
    void showWays();
    [[nodiscard]] bool isLiquid() const;
    [[nodiscard]] const ledger::Packet* chosenPacket() const;
    /// The one that is used up by the mixing, if one is.
    [[nodiscard]] const ledger::Packet* wholePacket() const;
    void showUsualVolume();

    Wording m_wording;
    std::vector<std::shared_ptr<const formulary::Solution>> m_solutions;
    std::vector<std::shared_ptr<const formulary::Vessel>> m_vessels;
    QStringList m_names;
    std::vector<ledger::Packet> m_packets;
    std::vector<ledger::ItemHere> m_items;
    formulary::Formulary m_formulary;
    QFormLayout* m_form;
    QComboBox* m_solution;
    QComboBox* m_vessel;
    QuantityField<chemistry::Millilitres>* m_makes;
    QuantityEdit* m_powder;
    QComboBox* m_packet;
    QCheckBox* m_raw;
    FormulaTable* m_formula;
    QLabel* m_lacking;
    QPushButton* m_sheet;
    LiquidEdit* m_liquid;
    QLineEdit* m_name;
    std::string m_weighed; ///< the solution whose formula stands in the table
    std::vector<std::pair<QLabel*, QWidget*>> m_labels; ///< of the fields, from above
    bool m_above = false;                               ///< where these stand
    bool m_ownName = false;                             ///< the user typed one
    bool m_ownVolume = false;                           ///< likewise
};

} // namespace ullage::app
