// The pages that are printed, made of what the book says. Pure functions; nothing is reckoned here.
#pragma once

#include "app/paper/paper_document.h"
#include "app/words/units.h"
#include "core/cupboard/needs.h"
#include "core/ledger/cupboard_state.h"
#include "core/ledger/run_plan.h"

#include <QDate>

#include <map>
#include <string>
#include <vector>

namespace ullage::app
{

/// What every page is told.
struct PaperAbout {
    QString book; ///< its name, for the line below the title
    chemistry::Instant now;
    Wording wording;
};

/// For the wall: the bottles in use, what is to be discarded first on top. `bottles` as of now.
PaperDocument shelfPaper(const std::vector<ledger::Judged>& bottles, const PaperAbout& about);

/// All of one bottle: its figures, its cautions, its curves and what happened to it. `events`: its
/// own that happened, by their turn.
PaperDocument cardPaper(const ledger::Judged& bottle, const std::vector<ledger::Event>& events,
                        const formulary::Formulary& formulary, const PaperAbout& about);

/// What to buy, with boxes to tick, and what to mix from what is here.
PaperDocument shoppingPaper(const cupboard::Plan& plan, const formulary::Formulary& formulary,
                            const PaperAbout& about);

/// The cans with what is in them, for whoever collects waste, with lines to sign on. `batches`: by
/// id, every batch that was poured in and is known.
PaperDocument handOverPaper(const std::vector<ledger::CanHere>& cans,
                            const std::map<std::string, ledger::Batch>& batches,
                            const PaperAbout& about);

/// A batch with its events that happened, for the month's report.
struct MonthBatch {
    ledger::Batch batch; ///< as of the end of the month, or of now
    std::vector<ledger::Event> events;
};

/// What a month adds up to. A film is counted where it was developed, so that stop bath and fixer
/// do not count it again; in the list of solutions each counts what went through it.
struct MonthFigures {
    std::map<QString, double> byPerson; ///< films developed; under the empty name: nobody said
    std::map<std::string, double> bySolution; ///< films put through it, by its id
    double developed = 0;
    std::vector<const MonthBatch*> mixed; ///< in the month
    std::vector<const MonthBatch*> ended;
    ledger::Money spent; ///< on what was bought in the month
};
/// `first` is the first day of the month on the user's calendar.
MonthFigures monthFigures(const std::vector<MonthBatch>& batches,
                          const ledger::CupboardState& cupboard, QDate first);

PaperDocument monthPaper(const std::vector<MonthBatch>& batches,
                         const ledger::CupboardState& cupboard,
                         const formulary::Formulary& formulary, QDate first,
                         const PaperAbout& about);

} // namespace ullage::app
