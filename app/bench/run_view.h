// The run itself: the sheet, the clock and what is in the tank.
//
// Space holds and goes on, Enter goes to the next step (asked once more when it comes far too
// early), S skips, B goes back, T takes a reading.
// The view drives a RunClock that it does not own, and says when something changed that must be
// saved.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QWidget>

#include "app/bench/bench_memory.h"
#include "app/bench/sounds.h"
#include "app/widgets/theme.h"
#include "app/words/units.h"
#include "core/ledger/run_clock.h"

class QCheckBox;
class QLabel;
class QPushButton;
class QScrollArea;

namespace ullage::app
{

class AgitationStrip;
class BigClock;
class Card;
class CuePanel;
class ReadingBox;
class StepList;
class TankSide;

/// A run under way: its sheet, the clock, what to do now, and what comes next.
class RunView : public QWidget
{
    Q_OBJECT

public:
    explicit RunView(Sounds& sounds, QWidget* parent = nullptr);

    /// The run must outlive the view's use of it; null to let it go.
    void setRun(ledger::RunClock* run, const Wording& wording);
    /// Which of the cues are heard and seen.
    void setCues(BenchCues cues);
    /// Only the clock, as large as the window.
    void setFull(bool full);
    [[nodiscard]] bool isFull() const { return m_full; }
    /// A line under the sheet: that the run could not be saved, or that the screen may go dark.
    void setTrouble(const QString& text);

    // What the keys do.
    void space();       ///< starts the run, holds its clock, or lets it go on
    void enter();       ///< takes an open reading; else the next step, asking once if far too early
    void skip();        ///< leaves this step out
    void back();        ///< to the step before
    void takeReading(); ///< asks for the thermometer's figure
    /// True if there was something to close.
    bool escape();

public slots:
    /// Looks at the clock; called ten times a second.
    void tick();

signals:
    void stepChanged();                            ///< the run is to be saved
    void finished();                               ///< the last step is over
    void cuesChanged(ullage::app::BenchCues cues); ///< by the person, to be remembered
    void fullWanted(bool full);
    void darkRoomWanted(); ///< red light only, on or off

protected:
    void changeEvent(QEvent* event) override;

private:
    QWidget* sheetCard();
    QWidget* clockCard();
    QWidget* buttons();
    QWidget* tools();
    void showStep();
    void showClock();
    void showNext();
    void sound();
    [[nodiscard]] QString bottle(const ledger::RunStep& step) const;
    [[nodiscard]] QStringList titles() const;
    [[nodiscard]] QString pourWords(const ledger::RunState& state, const QStringList& names) const;

    Sounds* m_sounds;
    ledger::RunClock* m_run = nullptr;
    Wording m_wording;
    BenchCues m_cues;
    bool m_full = false;

    // What was heard last, so that every cue sounds once.
    std::size_t m_heardStep = 0;
    bool m_heardAgitate = false;
    bool m_heardSoon = false;
    bool m_heardOver = false;
    int m_asked = 0; ///< ticks for which another Next leaves the step far too early

    QWidget* m_sheet;
    StepList* m_list;
    QScrollArea* m_scroll;
    QLabel* m_footer;
    QLabel* m_trouble;
    QLabel* m_title;
    QLabel* m_count;
    BigClock* m_clock;
    AgitationStrip* m_strip;
    CuePanel* m_cue;
    ReadingBox* m_reading;
    QLabel* m_caution;
    QLabel* m_pour;
    QPushButton* m_hold;
    QPushButton* m_skip;
    QPushButton* m_next;
    ButtonLook m_nextLook = ButtonLook::Primary;
    QPushButton* m_back;
    QPushButton* m_thermometer;
    QPushButton* m_fullButton;
    QCheckBox* m_sound;
    QCheckBox* m_visual;
    QLabel* m_hint;
    QWidget* m_cueRow;
    TankSide* m_side;
    QWidget* m_sideRoom;
};

} // namespace ullage::app
