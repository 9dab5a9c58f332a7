// Before the run: films, tank, thermometer and times on the left, the bottles proposed in the
// middle, the sheet that comes of it on the right.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QWidget>

#include "app/bench/bench_memory.h"
#include "app/bench/run_sheet_paper.h"
#include "app/dialogs/load_question.h"
#include "app/session/door.h"
#include "app/widgets/quantity_edit.h"
#include "core/ledger/next_load.h"
#include "core/ledger/run_clock.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;
class QSpinBox;

namespace ullage::app
{

class BathCards;
class Card;
class CautionBox;
class FilmsEdit;
class LeafletTimeEdit;
class StepList;
class TankEdit;
class TimesApartBox;
class WashEdit;
class WhereFromButton;

class PlanView : public QWidget
{
    Q_OBJECT

public:
    PlanView(Door& host, BenchMemory& memory, ledger::SteadyClock steady,
             QWidget* parent = nullptr);

    /// Reads the bottles anew and reckons again.
    void refresh();
    /// A fresh plan; films of a split that are still to come, if there are any.
    void startAnew();
    /// Where a plan begins: at the films.
    [[nodiscard]] QWidget* firstForKeys() const;
    /// While a run is waiting to be taken up again no other can start.
    void setBlocked(bool blocked);
    /// Takes a bottle for its bath ("Log a run" on the shelf).
    void choose(const std::string& batch);
    /// What would be gone by, for paper; nothing while it cannot be done like this.
    [[nodiscard]] std::optional<PlannedRun> planned() const;

signals:
    void printWanted();
    void ready(const ullage::ledger::RunState& state);
    void refused(const QString& why);
    void exchangeWanted(const std::string& first);

private:
    QWidget* loadSide();
    QWidget* bottleSide();
    QWidget* sheetSide();
    [[nodiscard]] ledger::LoadWishes wishes() const;
    [[nodiscard]] QString typedProblem() const; ///< the first figure that is none; empty
    void reckonNow();
    void showSheet(const ledger::LoadWishes& wishes);
    void showOnce();
    void showSplit();
    void takeFirstPart();
    void splitByTime();
    void takeNow(const std::vector<ledger::RunFilm>& now,
                 const std::vector<ledger::RunFilm>& later);
    void start();
    void fillTemplates();
    void editTemplate();
    [[nodiscard]] formulary::TimeFor timeWanted() const;
    [[nodiscard]] std::vector<formulary::FilmWanted> filmsTyped() const;
    [[nodiscard]] const formulary::Formulary& times() const;
    [[nodiscard]] QString firstToDo(const ledger::LoadWishes& wishes) const;

    Door* m_host;
    BenchMemory* m_memory;
    ledger::SteadyClock m_steady;
    std::vector<ledger::Judged> m_judged;
    ledger::NextLoad m_next;
    std::map<ledger::BathPlace, std::string> m_chosen;
    LoadQuestion m_question;
    std::vector<ledger::RunFilm> m_later; ///< of a split load, still to come
    std::vector<ledger::RunTemplate> m_templates;
    std::string m_developer; ///< the solution that a time was last wanted for
    bool m_blocked = false;
    /// Somebody said whether the developer taken now is poured away; else as the bottle is used.
    bool m_onceSaid = false;

    FilmsEdit* m_films;
    TankEdit* m_tank;
    QuantityField<chemistry::Celsius>* m_temperature;
    LeafletTimeEdit* m_base;
    TimesApartBox* m_apart;
    QSpinBox* m_parts;
    QCheckBox* m_oneShot;
    QCheckBox* m_tabular;
    QComboBox* m_template;
    WashEdit* m_wash;
    WhereFromButton* m_ask;
    BathCards* m_baths;
    Card* m_splitBox;
    QLabel* m_split;
    StepList* m_list;
    QWidget* m_steps; ///< the list, to scroll
    QLabel* m_first;  ///< in place of the list: what to do first
    QLabel* m_note;
    QLabel* m_problem;
    QPushButton* m_print;
    QPushButton* m_start;
};

} // namespace ullage::app
