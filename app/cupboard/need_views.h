// What will be needed, for the strip of weeks and the list of what to buy: a plan in words.
#pragma once

#include "app/words/units.h"
#include "core/cupboard/needs_request.h"
#include "core/ledger/batch.h"
#include "core/ledger/cupboard_state.h"

#include <QStringList>

#include <vector>

namespace ullage::app
{

using cupboard::PlanFor;

struct NeedBar {
    cupboard::StretchKind kind = cupboard::StretchKind::Stands;
    double from = 0; ///< of the strip, 0 to 1
    double to = 1;
    int lane = 0; ///< bars of one solution that are there at once stand under one another
    QString text;
    QStringList shorter; ///< of it, in turn, where there is no room for all
    QString spoken;      ///< the same with its days, for a tool tip and a screen reader
};

struct NeedRow {
    QString name;
    QString detail; ///< "12 films"
    formulary::Role role = formulary::Role::Other;
    int lanes = 1;
    std::vector<NeedBar> bars;
};

/// Film that comes, on the strip.
struct WorkTick {
    double at = 0; ///< 0 to 1
    double films = 0;
    QString name;
    QString spoken;
    bool atPace = false; ///< not known to come: it usually does
};

struct StripView {
    struct Week {
        double at = 0;
        QString day;
    };
    std::vector<Week> weeks;
    std::vector<WorkTick> work;
    QString pace; ///< how much comes besides the known work, "12 films"; empty if none does
    std::vector<NeedRow> rows;
    QString nothing; ///< why there are none
};

/// One of the known works that come yet, to be changed or taken away.
struct WorkLine {
    QString id;
    QString text; ///< "Course · 8 Dec, 19:00 · 8 films · every second week"; when it comes next
    bool repeats = false;
};

struct BuyLine {
    QString text; ///< "Acid fixer, 1,000 ml × 2"
    QString by;
    QString cost;    ///< empty: not known
    QString perFilm; ///< "0.84 EUR for each film", or empty
};

struct BuyView {
    std::vector<BuyLine> lines;
    QString together; ///< the sum, each currency by itself
    QString note;     ///< what the sum leaves out, or that there is nothing to buy
};

struct NeedsView {
    StripView strip;
    std::vector<WorkLine> works;
    BuyView buy;
    QString usualPace; ///< "what usually comes: about 2.3 films a week"
    QString summary;   ///< "enough for the known work until 5 Jan"; or empty
    QString leftOut;   ///< the bottles that are not counted on, and why; or empty
};

/// What a plan is worded with.
struct NeedsSnapshot {
    PlanFor planFor;
    cupboard::PlanRequest request;
    Result<cupboard::Plan> plan;
    std::vector<ledger::Batch> batches;
    std::vector<ledger::Work> works;
    cupboard::FilmPace usual;
    std::vector<ledger::Unread> leftOut;
};

/// Reckons the plan, as the command line does. `batches`: as cupboard::Needs has them.
NeedsSnapshot needsSnapshot(std::vector<ledger::Batch> batches,
                            const formulary::Formulary& formulary,
                            const ledger::CupboardState& state, chemistry::Instant now,
                            const PlanFor& planFor);
/// The same of what was read.
NeedsSnapshot needsSnapshot(cupboard::Needs needs, const PlanFor& planFor);
NeedsView needsView(const NeedsSnapshot& snapshot, const formulary::Formulary& formulary,
                    const Wording& wording);

} // namespace ullage::app
