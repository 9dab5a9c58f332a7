// Correcting a run: the same fields as where a forgotten one is added, filled with what was
// entered. Films that stay keep their lines, and with them their marks.
#pragma once

#include "app/daybook/bath_rows.h"
#include "app/daybook/correcting_dialog.h"
#include "app/daybook/run_films.h"
#include "app/dialogs/load_question.h"

#include <map>

namespace ullage::app
{

class FilmForm;

class CorrectRunDialog : public CorrectingDialog
{
    Q_OBJECT

public:
    /// `entered` begins with a processing: the events of all baths of its run, and what was entered
    /// with them.
    CorrectRunDialog(Door& door, const QString& what, std::vector<ledger::Event> entered,
                     QWidget* parent = nullptr);

protected:
    bool restIsFine() override;
    [[nodiscard]] std::optional<std::vector<ledger::Event>> instead() const override;
    [[nodiscard]] std::vector<ledger::FilmRecord> filmLines() const override;
    Result<void> act() override;

private:
    [[nodiscard]] const ledger::Processed& first() const;
    /// The bath of this run that an event is; null for what else was entered with it.
    [[nodiscard]] const ledger::Processed* bathOf(const ledger::Event& event) const;
    [[nodiscard]] std::vector<ledger::Bath> bathsEntered() const;
    void readFilms();
    void fillBottles();
    [[nodiscard]] RunFilmsNow filmsNow() const;
    /// Those it was entered with, and each new one before the first that comes later in a run.
    [[nodiscard]] std::vector<ledger::Bath> inTurn(const std::vector<ledger::Bath>& baths) const;
    /// The id of the run; one of its own where it had none, and now goes through several bottles or
    /// has films of which something is said.
    [[nodiscard]] std::string runId(const ledger::FilmRun& run) const;
    [[nodiscard]] ledger::Processed corrected(const ledger::Bath& bath, const ledger::FilmRun& run,
                                              const ledger::Processed* was) const;
    [[nodiscard]] QString problemOfGone() const;
    [[nodiscard]] bool sureOfLoad();

    FilmForm* m_film;
    std::map<std::string, formulary::Role> m_roles; ///< of the bottles in the list
    std::vector<RunFilmRow> m_rows;
    std::vector<ledger::RunFilm> m_were; ///< the rows as the form shows them
    std::optional<Error> m_unread;       ///< why nobody knows the films of the run
    std::string m_newRun;
    LoadQuestion m_question;
};

} // namespace ullage::app
