// What is drawn and said of one bottle: plain values and finished sentences, so that whoever draws
// it knows nothing of the ledger.
#pragma once

#include "app/widgets/bottle_shape.h"
#include "app/widgets/verdict_mark.h"
#include "core/formulary/solution.h"

#include <QMetaType>
#include <QString>

#include <optional>

namespace ullage::app
{

using SolutionLook = formulary::Role;

struct BottleView {
    QString id;           ///< the batch
    QString name;         ///< "Dev 14"
    QString mixedText;    ///< "mixed 2 Nov"
    QString mixedDate;    ///< "2 Nov", for a label too narrow for more
    QString solutionName; ///< "MQ borax developer, stock"
    QString vesselName;   ///< "Amber 1"
    SolutionLook solution = SolutionLook::Developer;
    BottleMaterial material = BottleMaterial::Glass;
    double capacityMl = 1000; ///< of the vessel, brim-full
    double volumeMl = 0;
    bool squeezed = false;  ///< the air is pressed out at every closing
    double airMl = 0;       ///< air left in a squeezed bottle; others follow from the volume
    double filmsDone = 0;   ///< film units, thirds and quarters included
    bool uncounted = false; ///< other films went through it before: filmsDone is the least
    double standing = 0;    ///< share of life used by standing, 0 to 1 and above
    /// Share of capacity used by film, 0 to 1 and above; empty where nobody knows it.
    std::optional<double> wear = 0;
    VerdictLook verdict = VerdictLook::Good;
    QString mark;        ///< beside the verdict's shape, where it is not the verdict's own word
    bool unread = false; ///< not as it was entered: only its name is known
    QString headline;    ///< "5 films left"
    QString subline;     ///< "until 1 May"
    double urgency = 0;  ///< the most urgent bottle stands first
};

} // namespace ullage::app

Q_DECLARE_METATYPE(ullage::app::BottleView)
