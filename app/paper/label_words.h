// What stands on a bottle's label, in words.
#pragma once

#include "app/words/units.h"
#include "core/ledger/run_plan.h"

#include <QString>
#include <QStringList>

namespace ullage::app
{

/// Finished words of one label. What is empty is not on it.
struct LabelWords {
    QString name;
    QString contents;     ///< "MQ borax developer, stock · 1,000 ml"
    QString mixed;        ///< "mixed 7 Dec 2026"
    QString discardBy;    ///< "discard by 7 Jun 2027", or that no date is known
    int films = 0;        ///< boxes to tick: whole films that it does in all; 0 for none
    int filmsDone = 0;    ///< of them
    QString filmsInWords; ///< the same in numbers, for where the boxes have no room
    QString wear;         ///< "add 10 % of the first time for each film before"
    QString vessel;       ///< "in Amber 1"
    QString notForDrinking;
    QString contains;       ///< chemicals with their hazard statements
    QStringList statements; ///< what those statements say, one each
    QString care;           ///< gloves and the like
    QStringList code;       ///< lines of the square code; the first is the batch's id
};

/// `bottle` as of now.
LabelWords labelWords(const ledger::Judged& bottle, const Wording& wording);

} // namespace ullage::app
