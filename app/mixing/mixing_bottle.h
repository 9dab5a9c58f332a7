// One bottle on its way through the guide: what was chosen for it, and its pages from the water to
// the label.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QObject>

#include "app/mixing/mixing_plan.h"
#include "app/widgets/quantity_edit.h"
#include "app/words/explanation.h"
#include "core/cupboard/weighing.h"
#include "core/ledger/book.h"

#include <functional>
#include <vector>

class QLabel;

namespace ullage::app
{

class ChoiceStep;
class CoolStep;
class DissolveStep;
class MixingPicture;
class WaterStep;
class WordsStep;

/// Its pages are nobody's until they are put into a layout.
class MixingBottle : public QObject
{
    Q_OBJECT

public:
    /// `now` as BathClockBox::Now has it.
    MixingBottle(std::function<chemistry::Instant()> now, const Wording& wording,
                 QObject* parent = nullptr);

    /// Nothing is poured yet, and no air said. What was chosen stays.
    void begin();
    /// The language or the units changed; what is typed and read stays.
    void setWording(const Wording& wording);
    /// The plan is what is chosen now, finished or not.
    void readChoice();
    /// It was chosen: the pages after it go by the plan. Going back and on again without a change
    /// keeps what was typed there.
    void settle();
    /// Holds what is to be weighed out for it against what stands in the cupboard, where `promised`
    /// goes to other bottles. Nothing for a packet or a liquid.
    void weigh(const std::vector<ledger::ItemHere>& items,
               const std::vector<ledger::NewBatch::Take>& promised);
    /// Words its pages by the plan and by what has been done.
    void fillWords();
    /// It is full and closed, and cools from now on.
    void closed();

    [[nodiscard]] const MixingPlan& plan() const { return m_plan; }
    /// As it was held against the cupboard last.
    [[nodiscard]] const cupboard::WeighOut& weighOut() const { return m_out; }
    /// Why one cannot go on from this step, in words; empty if one can.
    [[nodiscard]] QString problem(MixingStage stage) const;
    /// Where the figures of a step are from.
    [[nodiscard]] std::vector<Explanation> figures(MixingStage stage) const;
    /// As it is to be logged, its air with it, and what it takes from the cupboard.
    [[nodiscard]] ledger::NewBatch batch() const;
    /// Something in it is still to be shaken.
    [[nodiscard]] bool isDissolving() const;
    /// "Mixing Dev 2 · 9:44", the time to the next shake.
    [[nodiscard]] QString inHand() const;

    [[nodiscard]] ChoiceStep* choice() const { return m_choice; }
    [[nodiscard]] WaterStep* water() const { return m_water; }
    [[nodiscard]] DissolveStep* dissolve() const { return m_dissolve; }
    [[nodiscard]] WordsStep* topUp() const { return m_topUp; }
    [[nodiscard]] WordsStep* closing() const { return m_closing; }
    [[nodiscard]] CoolStep* cooling() const { return m_cooling; }

signals:
    /// Something that plan() or problem() tells may be another.
    void changed();
    /// Its weigh-out sheet is wanted on paper.
    void sheetWanted();

private:
    void drawBottle();

    Wording m_wording;
    MixingPlan m_plan;
    cupboard::WeighOut m_out;
    ChoiceStep* m_choice;
    WaterStep* m_water;
    DissolveStep* m_dissolve;
    WordsStep* m_topUp;
    WordsStep* m_closing;
    QLabel* m_airLabel;
    QuantityField<chemistry::Millilitres>* m_air;
    CoolStep* m_cooling;
    MixingPicture* m_dissolving; ///< what each of three steps is about
    MixingPicture* m_filling;
    MixingPicture* m_full;
};

} // namespace ullage::app
