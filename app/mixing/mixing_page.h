// "Mix a batch": from packet to bottle in seven steps. Nothing is logged before the last.
#pragma once

#include "app/dialogs/volume_question.h"
#include "app/mixing/mixing_plan.h"
#include "app/session/door.h"
#include "app/words/explanation.h"
#include "core/ledger/run_clock.h"

#include <QStringList>
#include <QWidget>

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
class MixingBottle;
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

    [[nodiscard]] Step step() const;
    /// One step on, if this one is fulfilled; the sixth logs the batch, and stays where it is if
    /// that is refused; the seventh is finished().
    void next();
    /// One step back; from the first the guide is left, from the last there is none.
    void back();

    [[nodiscard]] ChoiceStep* choice() const;
    [[nodiscard]] WaterStep* water() const;
    [[nodiscard]] DissolveStep* dissolve() const;
    [[nodiscard]] CoolStep* done() const;
    [[nodiscard]] QPushButton* nextButton() const { return m_next; }
    [[nodiscard]] QPushButton* labelButton() const { return m_label; }
    /// Id of the logged batch; empty before.
    [[nodiscard]] QString logged() const { return m_logged; }
    /// What it is about, for where it is not seen: "Mixing Dev 2 · 9:44", the time to the next
    /// shake; "Cooling Dev 2" once it is logged. Empty while nothing has been begun, and when
    /// there is nothing more to be seen of it.
    [[nodiscard]] QString inHand() const;

signals:
    /// The plain dialog is wanted instead.
    void plainLogWanted();
    /// It was logged just now; the last step is shown.
    void batchLogged(const QString& batch);
    /// The last step, and its label is wanted.
    void labelWanted(const QString& batch);
    /// Done or given up; `batch` is empty if nothing was logged.
    void finished(const QString& batch);

private:
    void goTo(Step step);
    void wordAnew();
    void retranslate();
    void showState();
    void showSafety();
    [[nodiscard]] std::vector<Explanation> figures() const;
    [[nodiscard]] QString problem() const;
    bool log();

    Door* m_door;
    Wording m_wording;
    PageHeader* m_header;
    MixingStepList* m_list;
    QStackedWidget* m_stack;
    MixingBottle* m_bottle;
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
    VolumeQuestion m_littleQuestion;
    CautionBox* m_caution;
    QLabel* m_becomesName;
    QLabel* m_becomesWhat;
    FactorRows* m_becomes;
    QString m_logged;
};

} // namespace ullage::app
