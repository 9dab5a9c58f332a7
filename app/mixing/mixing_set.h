// What is mixed in one go: one bottle, or a developer with its stop bath, its fixer, or both.
//
// Of a set all bottles are chosen first, then one after the other is mixed, and all are logged as
// one deed.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QObject>

#include "app/mixing/mixing_bottle.h"
#include "app/session/door.h"

#include <QStringList>

#include <array>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

class QCheckBox;
class QLabel;
class QWidget;

namespace ullage::app
{

/// Where one is in the guide. Safety is one step for all, as the first bottle's; so is Done.
struct MixingSpot {
    MixingStage stage = MixingStage::Choice;
    int bottle = 0; ///< 0 the first, 1 the stop bath, 2 the fixer
    friend bool operator==(const MixingSpot&, const MixingSpot&) = default;
};

class MixingSet : public QObject
{
    Q_OBJECT

public:
    static constexpr int kMost = 3; ///< bottles

    /// `now` as BathClockBox::Now has it; `page`: on which the boxes and headings will stand. The
    /// door must outlive it.
    MixingSet(Door& door, const std::function<chemistry::Instant()>& now, const Wording& wording,
              QWidget* page);

    /// Begins anew; arguments as of ChoiceStep::setFormulary().
    void begin(const formulary::Formulary& formulary,
               const std::vector<std::shared_ptr<const formulary::Vessel>>& freeVessels,
               const QStringList& names);
    /// The language or the units changed; what is typed and read stays.
    void setWording(const Wording& wording);

    /// Those that are mixed this time, in their order; the first at the least.
    [[nodiscard]] std::vector<int> bottles() const;
    [[nodiscard]] bool isSet() const { return bottles().size() > 1; }
    /// What it is for, of one that goes with a developer; empty for the first.
    [[nodiscard]] static std::optional<formulary::Role> roleOf(int bottle);
    /// Which of them it is, from 1.
    [[nodiscard]] int number(int bottle) const;
    [[nodiscard]] MixingBottle& bottle(int at) const
    {
        return *m_bottles[static_cast<std::size_t>(at)];
    }
    /// Every step of this mixing in its order.
    [[nodiscard]] std::vector<MixingSpot> way() const;
    /// Leaves a step for one after it: what was chosen holds, and the next bottle is offered what
    /// is left to choose.
    void goOn(const MixingSpot& from, const MixingSpot& to);
    /// Which boxes are offered, and what all pages say, by what is chosen.
    void show(const MixingSpot& at);

    /// Why one cannot go on from there, in words; empty if one can.
    [[nodiscard]] QString problem(const MixingSpot& at) const;
    /// Cautions of all of them, none twice.
    [[nodiscard]] QStringList cautions() const;
    /// All of them as they are to be logged; what they take is there, by the cupboard as it is now.
    [[nodiscard]] std::vector<ledger::NewBatch> batches();
    [[nodiscard]] std::vector<Explanation> figures(const MixingSpot& at) const;
    /// As MixingPage::inHand() has it.
    [[nodiscard]] QString inHand(const MixingSpot& at) const;

    /// Whether the stop bath (1) or the fixer (2) is mixed too; hidden unless a developer is chosen
    /// and the formulary has one.
    [[nodiscard]] QCheckBox* tooBox(int bottle) const { return mate(bottle).too; }
    /// What stands above its choice.
    [[nodiscard]] QLabel* heading(int bottle) const { return mate(bottle).heading; }

signals:
    /// Something that one of the bottles tells, or which bottles there are, may be another.
    void changed();
    /// The weigh-out sheet of one of them is wanted on paper.
    void sheetWanted(int bottle);

private:
    /// What goes with the developer.
    struct Mate {
        QCheckBox* too = nullptr;
        QLabel* heading = nullptr;
    };

    [[nodiscard]] const Mate& mate(int bottle) const
    {
        return m_mates[static_cast<std::size_t>(bottle - 1)];
    }
    void offer(int bottle);
    void lookIntoCupboard();
    void weigh();

    Door* m_door;
    formulary::Formulary m_formulary;
    std::vector<std::shared_ptr<const formulary::Vessel>> m_freeVessels;
    QStringList m_names;
    std::vector<ledger::ItemHere> m_items; ///< of the cupboard, when it was last looked into
    std::array<MixingBottle*, kMost> m_bottles{};
    std::array<Mate, kMost - 1> m_mates;
};

} // namespace ullage::app
