// "Mix a batch": from packet to bottle in seven steps, a set's bottles one after the other. Nothing
// is logged before the last.
#pragma once

#include "app/dialogs/volume_question.h"
#include "app/mixing/mixing_set.h"
#include "app/paper/weighing_paper.h"
#include "app/session/door.h"
#include "core/ledger/run_clock.h"

#include <QStringList>
#include <QWidget>

#include <array>

class QLabel;
class QPushButton;
class QScrollArea;
class QStackedWidget;

namespace ullage::app
{

class Card;
class CautionBox;
class ChoiceStep;
class CoolStep;
class DissolveStep;
class FactorRows;
class MixingStepList;
class PageHeader;
class WaterStep;
class WhereFromButton;
class WordsStep;

/// A refusal is told in a dialog, and what was typed stays.
class MixingPage : public QWidget
{
    Q_OBJECT

public:
    using Step = MixingStage;
    static constexpr int kSteps = 7;

    /// What the guide's own clocks count by: goes on in sleep and never jumps, whatever the
    /// machine's clock is set to; the door's if `steady` is empty. The door must outlive the page.
    /// Where language or units change, the mixing under way goes on where it is.
    MixingPage(Door& door, ledger::SteadyClock steady, QWidget* parent = nullptr);

    /// Begins at the first step; arguments as of ChoiceStep::setFormulary(). Fields keep what was
    /// typed before, so there is a page for each mixing.
    void begin(const formulary::Formulary& formulary,
               const std::vector<std::shared_ptr<const formulary::Vessel>>& freeVessels,
               const QStringList& names);

    [[nodiscard]] Step step() const { return m_at.stage; }
    /// Which of the set is in hand, as MixingSpot counts them.
    [[nodiscard]] int bottle() const { return m_at.bottle; }
    /// One step on, if this one is fulfilled; the sixth, of a set that of its last bottle, logs,
    /// and stays where it is if that is refused; the seventh is finished().
    void next();
    /// One step back; from the first the guide is left, from the last there is none.
    void back();

    [[nodiscard]] MixingSet* set() const { return m_set; }
    // Of one bottle of the set.
    [[nodiscard]] ChoiceStep* choice(int bottle = 0) const;
    [[nodiscard]] WaterStep* water(int bottle = 0) const;
    [[nodiscard]] DissolveStep* dissolve(int bottle = 0) const;
    [[nodiscard]] CoolStep* done(int bottle = 0) const;
    [[nodiscard]] QPushButton* nextButton() const { return m_next; }
    [[nodiscard]] QPushButton* labelButton() const { return m_label; }
    /// Ids of the logged batches; none before.
    [[nodiscard]] QStringList logged() const { return m_logged; }
    /// What it is about, for where it is not seen: "Mixing Dev 2 · 9:44", the time to the next
    /// shake, of a set that of the first which is not clear; "Cooling Dev 2" once it is logged.
    /// Empty while nothing has been begun, and when there is nothing more to be seen of it.
    [[nodiscard]] QString inHand() const;

signals:
    /// The plain dialog is wanted instead.
    void plainLogWanted();
    /// Just now; the last step is shown.
    void batchesLogged(const QStringList& batches);
    /// What is weighed out for one of them is wanted on paper.
    void weighingSheetWanted(const ullage::app::WeighingSheet& sheet);
    /// The last step, and their labels are wanted.
    void labelsWanted(const QStringList& batches);
    /// Done or given up; `batch` is the first that was logged, empty if nothing was.
    void finished(const QString& batch);

private:
    void makePages();
    void goTo(const MixingSpot& spot);
    void wordAnew();
    void retranslate();
    void showState();
    void showSafety();
    void showBecomes();
    [[nodiscard]] std::vector<Explanation> figures() const;
    [[nodiscard]] QString stepText() const;
    [[nodiscard]] QString nextText() const;
    bool sureWithWhatLacks();
    bool log();

    Door* m_door;
    Wording m_wording;
    PageHeader* m_header;
    MixingStepList* m_list;
    QStackedWidget* m_stack;
    MixingSet* m_set;
    MixingSpot m_at;
    std::array<std::array<int, kSteps>, MixingSet::kMost> m_pages{}; ///< places in the stack
    QPushButton* m_plain;
    Card* m_steps;
    QScrollArea* m_cautions;
    Card* m_becomesCard;
    WordsStep* m_safety;
    QLabel* m_problem;
    QPushButton* m_back;
    QPushButton* m_next;
    QPushButton* m_label; ///< of the last step
    WhereFromButton* m_ask;
    std::array<VolumeQuestion, MixingSet::kMost> m_littleQuestions;
    std::array<QString, MixingSet::kMost> m_sureOfLacks; ///< what the user was sure of
    CautionBox* m_caution;
    std::array<QLabel*, MixingSet::kMost> m_becomesName{};
    std::array<QLabel*, MixingSet::kMost> m_becomesWhat{};
    FactorRows* m_becomes;
    QStringList m_logged;
};

} // namespace ullage::app
