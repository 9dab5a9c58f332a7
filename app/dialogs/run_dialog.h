// Running film, in its simple form: what film, through which bottles, how warm; how long it takes;
// and everything logged at once.
#pragma once

#include "app/dialogs/bath_table.h"
#include "app/dialogs/deed_dialog.h"
#include "app/dialogs/load_question.h"
#include "app/widgets/quantity_edit.h"
#include "app/words/next_film.h"
#include "core/ledger/run_state.h"

class QLabel;
class QPushButton;
class QSpinBox;

namespace ullage::app
{

class Card;
class FactorRows;
class FigureLabel;
class FilmsEdit;
class LeafletTimeEdit;
class TimesApartBox;
class TopUpOffers;

/// The developing time is that of the moment given, so that a run entered late is timed by its own
/// wear. What was typed (times by developer, thermometer, volumes) is remembered once it is logged.
class RunDialog : public DeedDialog
{
    Q_OBJECT

public:
    /// `first` is chosen for its role, if it is given and may be used.
    RunDialog(Door& door, const Bottle* first, QWidget* parent = nullptr);

    /// The developing time shown, "12:35" or a factor; empty without a developer or a temperature.
    [[nodiscard]] QString timeShown() const;
    /// Above the buttons, until it is logged: why this has to be asked.
    void say(const QString& why) { setRefusal(why); }
    /// Of time, bottles and load, one sentence each; none of them hinders logging.
    [[nodiscard]] QStringList warnings() const { return m_warned; }

protected:
    bool restIsFine() override;
    [[nodiscard]] std::optional<std::vector<ledger::Event>> wouldEnter() const override;
    Result<void> act() override;
    /// After one part of a split load the next one stands in the fields.
    void done(int result) override;

private:
    void buildForm();
    void buildSide();
    void refresh();
    void splitByTime();
    void exchange();
    void showLater();
    [[nodiscard]] ledger::NextLoad next();
    [[nodiscard]] const std::vector<ledger::Judged>& bottlesThen();
    [[nodiscard]] NextFilm developing(const ledger::NextLoad& next) const;
    void addBottleWarnings(const ledger::NextLoad& next, QStringList& warnings) const;
    [[nodiscard]] QString fixing(const ledger::NextLoad& next) const;
    void offerTopUps();
    [[nodiscard]] ledger::FilmRun run() const;

    FilmsEdit* m_films;
    QuantityField<chemistry::Celsius>* m_thermometer;
    LeafletTimeEdit* m_times;
    QSpinBox* m_parts;
    TimesApartBox* m_apart;
    QLabel* m_laterNote;
    std::vector<ledger::RunFilm> m_later; ///< of a load that was split, to be logged next
    BathTable* m_baths;
    TopUpOffers* m_topUps;
    Card* m_develop;
    FigureLabel* m_time;
    QLabel* m_note;
    FactorRows* m_rows;
    QLabel* m_fix;
    QLabel* m_warnings;
    QPushButton* m_exchange;
    std::string m_due; ///< first of two fixing baths that is to make room, or empty
    QStringList m_warned;
    LoadQuestion m_question;
    std::string m_developer;            ///< solution that a time was last wanted for
    std::vector<ledger::Judged> m_then; ///< the bottles as they were at m_thenAt
    std::optional<chemistry::Instant> m_thenAt;
};

} // namespace ullage::app
