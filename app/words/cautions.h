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
    static QString noCleaners();
    static QString acidAndSulfite();
    static QString bathsApart(); ///< each bath back to its own bottle
    static QString glovesAndEyes();
    static QString noEating();   ///< nor drinking, nor smoking; wash hands
    static QString eyes();       ///< what to do when it got into them
    static QString fanTowards(); ///< how to smell a solution
    static QString warmingBath();
    static QString redScreen();
    // What single chemicals are; said of a solution by hazardCautions() (hazards.h).
    static QString borax();
    static QString glacialAcid();
    // Keeping.
    static QString foodBottles();
    static QString labelAndLock();
    static QString kitchenTools();
    static QString inertGas();
    static QString acidPressure();
    // Ending.
    static QString oneCanEach(); ///< and which gases come of mixing them
    static QString silver();
    static QString septicTank();
    static QString wasteCode(formulary::Role role); ///< empty for roles without one
    static QString licensed();
    // Always.
    static QString packetFirst();
};

/// What it is mixed from: a packet is used whole, jars are not.
enum class MixedFrom { Packet, RawChemicals };
QStringList mixingCautions(const formulary::Solution& solution, MixedFrom from = MixedFrom::Packet);
QStringList runningCautions();
QStringList storingCautions(formulary::Role role);
/// For adding fresh solution to what is in a bottle.
QStringList toppingUpCautions(formulary::Role role);
/// For pouring from bottle to bottle.
QStringList pouringCautions(formulary::Role role);
/// For pouring it through a filter.
QStringList filteringCautions(formulary::Role role);
/// For discarding, spilling and drawing off.
QStringList disposalCautions(const formulary::Solution& solution);
QStringList clearingTestCautions();
QStringList stripTestCautions();
/// For looking at it and smelling it.
QStringList lookCautions();

/// Everything, as titled groups, for the page of cautions.
struct CautionGroup {
    QString title;
    QStringList cautions;
};
QList<CautionGroup> allCautions();

} // namespace ullage::app
