// A film and what it went through, in finished words.
#pragma once

#include "app/widgets/verdict_mark.h"
#include "app/words/explanation.h"
#include "app/words/factor_row.h"
#include "app/words/units.h"
#include "core/ledger/charges.h"
#include "core/ledger/film_trace.h"

#include <QString>

#include <vector>

namespace ullage::app
{

/// A bottle as it was just before the film.
struct FilmBottleView {
    QString id;
    QString name;
    QString
        then; ///< "MQ borax developer · 7 films a litre before, time × 1.70 · standing 12 % used"
    VerdictLook verdict = VerdictLook::Good;
    QString verdictText; ///< "Then: good"
};

struct FilmMarkView {
    ledger::FilmMark mark; ///< one that stands
    QString text;          ///< "Thin: by half"
    QString when;          ///< "2 Nov, 19:30, by Ada"
};

struct FilmView {
    QString id;
    QString name;   ///< "Harbour 400"; "A film" where it has none
    QString detail; ///< "120 · EI 400 · roll 3"
    QString run;    ///< "2 Nov, 19:30, by Ada"; says so where the run was taken back
    QString marks;  ///< "thin, uneven"; may be empty
    std::vector<FilmMarkView> standing;
    std::vector<FilmBottleView> bottles; ///< in order of entry; empty where the run was taken back
    std::vector<FactorRow> times;        ///< steps, planned and real
    QString conditions;                  ///< "20.5 °C, tank Two reels"; may be empty
};

/// Figures are the bottles' own of just before the film; moments are worded as seen from `now`.
FilmView filmView(const ledger::FilmTrace& film, chemistry::Instant now, const Wording& wording);

/// A bottle that the film went through, as it is now.
struct FilmBottleCost {
    QString name;
    ledger::Cost cost;     ///< so far
    chemistry::Films done; ///< in all, so far
    bool inUse = true;
};
/// "Its chemistry cost 0.84 EUR so far."; empty where nothing is known of it.
QString filmCostText(chemistry::Films film, const std::vector<FilmBottleCost>& bottles,
                     const QLocale& locale);
/// The same for "Where from?".
Explanation explainFilmCost(chemistry::Films film, const std::vector<FilmBottleCost>& bottles,
                            const Wording& wording);

} // namespace ullage::app
