// What can hurt, said where the work is. Short, and deferring to the packet, the safety data sheet,
// local rules and licensed firms. Each caution is a function of its own; the lists below put
// together what belongs to a deed.
#pragma once

#include "core/formulary/solution.h"

#include <QStringList>

namespace ullage::app
{

struct Cautions {
    // Mixing.
    static QString powders(); ///< mask, gloves, eyes, moving air
    static QString powderIntoWater();
    static QString acidIntoWater();
    static QString wholePacket();
    // Handling.
    static QString developerOnSkin();
    static QString glacialAcid();
    static QString noCleaners();
    static QString acidAndSulfite();
    static QString bathsApart(); ///< each bath back to its own bottle
    static QString glovesAndEyes();
    // Keeping.
    static QString foodBottles();
    static QString labelAndLock();
    static QString kitchenTools();
    // Ending.
    static QString silver();
    static QString septicTank();
    static QString wasteCode(formulary::Role role); ///< empty for roles without one
    static QString licensed();
    // Always.
    static QString packetFirst();
};

QStringList mixingCautions(formulary::Role role);
QStringList runningCautions();
QStringList storingCautions();
/// For discarding, spilling and drawing off.
QStringList disposalCautions(formulary::Role role);

/// Everything, as titled groups, for the page of cautions.
struct CautionGroup {
    QString title;
    QStringList cautions;
};
QList<CautionGroup> allCautions();

} // namespace ullage::app
