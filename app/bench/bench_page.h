// The Bench: plan a run, keep its time, log it whole.
//
// The run in hand is saved at every step and every few seconds, on a thread; a page that is made
// while such a file lies there offers to go on. In the run: Space holds and goes on, Enter is next,
// S skips, B goes back, T takes a reading, F shows the clock alone, D turns everything deep red on
// black, Esc leaves the full view and then the red.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QWidget>

#include "app/bench/bench_memory.h"
#include "app/bench/finish_view.h"
#include "app/bench/run_keeper.h"
#include "app/bench/run_sheet_paper.h"
#include "app/bench/sounds.h"
#include "app/bench/wake_lock.h"
#include "app/session/door.h"
#include "core/ledger/run_clock.h"

#include <memory>
#include <optional>
#include <vector>

class QLabel;
class QPushButton;
class QShortcut;
class QStackedWidget;
class QTimer;

namespace ullage::app
{

class Card;
class PageHeader;
class PlanView;
class RunView;

struct BenchClocks {
    ledger::SteadyClock steady;
    ledger::Clock wall;
};

class BenchPage : public QWidget
{
    Q_OBJECT

public:
    enum class Stage { Plan, Run, Finish };

    /// `host`, `memory` and `sounds` must outlive the page.
    BenchPage(Door& host, BenchMemory& memory, Sounds& sounds, BenchClocks clocks,
              QWidget* parent = nullptr);
    ~BenchPage() override;

    [[nodiscard]] Stage stage() const;
    [[nodiscard]] bool isRunInHand() const { return m_run != nullptr || m_found.has_value(); }
    /// Null unless a run is in hand.
    [[nodiscard]] ledger::RunClock* run() { return m_run.get(); }
    [[nodiscard]] bool isFullView() const { return m_full; }
    /// What the keys are for when the page is opened.
    [[nodiscard]] QWidget* firstForKeys() const;

    /// Opens the plan with this bottle taken ("Log a run" on the shelf).
    void plan(const std::string& batch);
    /// Another book is open: the run in hand stays with the old one, to be found there again.
    void bookChanged();
    /// Takes the run that was found up where it is by now; nothing if there is none.
    void goOn();
    /// Writes the run in hand; returns when it is on disk.
    void save();
    /// The run that is planned, or in hand, for paper; nothing where there is none.
    [[nodiscard]] std::optional<PlannedRun> sheet() const;
    /// Returns when all that was handed over to be written is on disk.
    void waitUntilWritten() { m_keeper->wait(); }

public slots:
    void tick();
    void setFullView(bool full);
    void setDarkRoom(bool on);

signals:
    /// The window should hide everything but this page, and fill the screen.
    void fullViewChanged(bool full);
    /// The run was logged, under this id.
    void logged(const std::string& run);
    /// The sheet of the run is to be printed.
    void printWanted();
    /// The first of two fixing baths, to be exchanged.
    void exchangeWanted(const std::string& first);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void makeKeys();
    void makeBanner();
    void lookForRun();
    void showStage(Stage stage);
    void showHeader();
    void begin(const ledger::RunState& state);
    void keep();
    void written(const Result<void>& done);
    void showBanner(const QString& text, bool canGoOn);
    void logAsFar();
    void dropFound();
    void ask(FinishView::Why why);
    void logRun();
    void drop();
    void forgetRun();
    void wake();

    Door* m_host;
    BenchMemory* m_memory;
    BenchClocks m_clocks;
    std::unique_ptr<RunKeeper> m_keeper;
    std::unique_ptr<ledger::RunClock> m_run;
    std::optional<ledger::RunState> m_found; ///< left by a crash, not yet decided upon
    WakeLock m_wake;
    bool m_full = false;
    int m_ticks = 0;

    PageHeader* m_header;
    QPushButton* m_abandon;
    QPushButton* m_dark;
    Card* m_banner;
    QLabel* m_bannerText;
    QPushButton* m_bannerGoOn;
    QPushButton* m_bannerLog;
    QPushButton* m_bannerDrop;
    QStackedWidget* m_stages;
    PlanView* m_plan;
    RunView* m_view;
    FinishView* m_finish;
    std::vector<QShortcut*> m_keys; ///< of the run alone
    QTimer* m_timer;
};

} // namespace ullage::app
