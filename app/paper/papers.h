// The pages that are printed, made of what the book says. Pure functions; nothing is reckoned here.
#pragma once

#include "app/paper/paper_document.h"
#include "app/words/units.h"
#include "core/cupboard/needs.h"
#include "core/cupboard/plan_for.h"
#include "core/ledger/cupboard_state.h"
#include "core/ledger/run_plan.h"
#include "core/ledger/statistics.h"

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
/// own that happened, by their turn; `cost` so far.
PaperDocument cardPaper(const ledger::Judged& bottle, const std::vector<ledger::Event>& events,
                        const ledger::Cost& cost, const formulary::Formulary& formulary,
                        const PaperAbout& about);

/// What to buy, with boxes to tick, and what to mix from what is here. `planFor`: what it was
/// planned for.
PaperDocument shoppingPaper(const cupboard::Plan& plan, const cupboard::PlanFor& planFor,
                            const formulary::Formulary& formulary, const PaperAbout& about);

/// The cans with what is in them, for whoever collects waste, with lines to sign on. `batches`: by
/// id, every batch that was poured in and is known.
PaperDocument handOverPaper(const std::vector<ledger::CanHere>& cans,
                            const std::map<std::string, ledger::Batch>& batches,
                            const PaperAbout& about);

/// What a month adds up to: films by person and solution, bottles, what they cost, what was bought.
/// `so` is of that month, with its lists of bottles; `month` its first day.
PaperDocument monthPaper(const ledger::Statistics& so, const formulary::Formulary& formulary,
                         QDate month, const PaperAbout& about);

/// The same tables of any period, without the lists; `period` says which in words.
PaperDocument statisticsPaper(const ledger::Statistics& so, const formulary::Formulary& formulary,
                              const QString& period, const PaperAbout& about);

} // namespace ullage::app
