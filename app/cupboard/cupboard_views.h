// What the Cupboard shows, as plain values made of a snapshot of the book by pure functions.
#pragma once

#include "app/cupboard/can_views.h"
#include "app/cupboard/cupboard_actions.h"
#include "app/cupboard/need_views.h"
#include "app/words/units.h"
#include "core/ledger/cupboard_state.h"

#include <QString>

#include <vector>

namespace ullage::app
{

struct CupboardFact {
    QString label;
    QString value;
};

/// One kind of thing in the list. Whole packets of a kind, opened by nobody, are one row; whatever
/// is opened or counted by its weight stands by itself.
struct CupboardRow {
    QString id;                     ///< of the one in it that ends first
    std::vector<std::string> items; ///< all of them, soonest ended first
    QString group;                  ///< heading that it stands under
    QString name;
    QString detail; ///< how much, and until when
    ledger::Keeps keeps = ledger::Keeps::Fine;
    std::vector<CupboardFact> facts; ///< for its card
    RefusedCupboardActions refused;
};

/// A moment's cupboard, and what is needed to word it.
struct CupboardSnapshot {
    ledger::CupboardState state;
    chemistry::Instant now;
};

struct CupboardShown {
    QString summary; ///< beside the title
    std::vector<CupboardRow> rows;
    bool empty = true; ///< nothing stands here and nothing is known to come
    std::vector<CanView> cans;
    QString yearTitle; ///< over what went through the cans this year
    QStringList year;
    QStringList handed; ///< over in it
    NeedsView needs;
};

/// In the order in which they are listed: by group, then by name.
std::vector<CupboardRow> cupboardRows(const CupboardSnapshot& snapshot,
                                      const formulary::Formulary& formulary,
                                      const Wording& wording);
CupboardShown cupboardShown(const CupboardSnapshot& snapshot, const NeedsSnapshot& needs,
                            const formulary::Formulary& formulary, const Wording& wording);

} // namespace ullage::app
