#include "app/words/cautions.h"

#include "app/words/hazards.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Cautions)
};

} // namespace

QString Cautions::powders()
{
    return Words::tr("Dust mask, gloves, eye protection; moving air. Pour low and slowly.");
}

QString Cautions::powderIntoWater()
{
    return Words::tr("Powder into water, never water onto powder.");
}

QString Cautions::acidIntoWater() { return Words::tr("Acid into water, never water into acid."); }

QString Cautions::wholePacket()
{
    return Words::tr("The whole packet at once: a packet is not the same throughout.");
}

QString Cautions::developerOnSkin()
{
    return Words::tr("Developer can make skin allergic for good. Wear gloves; rinse splashes off "
                     "at once.");
}

QString Cautions::borax()
{
    return Words::tr("Borax may damage fertility and the unborn child (H360): check its data "
                     "sheet.");
}

QString Cautions::glacialAcid()
{
    return Words::tr("Glacial acetic acid burns skin and eyes (H314), and its vapour can catch "
                     "fire (H226): no flame near it. Buy it diluted where you can.");
}

QString Cautions::noCleaners()
{
    return Words::tr("Never mix with bleach, ammonia or other cleaners.");
}

QString Cautions::acidAndSulfite()
{
    return Words::tr("Acid with sulfite or thiosulfate frees sulfur dioxide: never pour stop bath "
                     "concentrate into developer or fixer; keep air moving.");
}

QString Cautions::bathsApart()
{
    return Words::tr("Each bath back to its own bottle, never one into the other.");
}

QString Cautions::glovesAndEyes()
{
    return Words::tr("Gloves and eye protection on; air moving through the room.");
}

QString Cautions::noEating()
{
    return Words::tr("No eating, drinking or smoking; wash your hands afterwards.");
}

QString Cautions::eyes()
{
    return Words::tr("Into the eyes: rinse with water for several minutes and get medical help.");
}

QString Cautions::fanTowards()
{
    return Words::tr("To smell a solution, fan its air towards you; never sniff at the bottle.");
}

QString Cautions::warmingBath()
{
    return Words::tr("A bottle that stands in a warming bath: loosen its cap.");
}

QString Cautions::redScreen()
{
    return Words::tr("The red screen fogs panchromatic film outside a closed tank.");
}

QString Cautions::foodBottles() { return Words::tr("Never in a food or drink bottle."); }

QString Cautions::labelAndLock()
{
    return Words::tr("Label it “photographic solution, not for drinking”, with date and contents. "
                     "Keep it away from children and animals.");
}

QString Cautions::kitchenTools()
{
    return Words::tr("Spoons, jugs and heaters used here never go back to the kitchen.");
}

QString Cautions::inertGas()
{
    return Words::tr("Filling up with gas: inert gas only (nitrogen, argon), never lighter gas.");
}

QString Cautions::acidPressure()
{
    return Words::tr("Acid baths can build pressure: open the cap slowly.");
}

QString Cautions::oneCanEach()
{
    return Words::tr("One can for each kind of solution. Acid with sulfite or thiosulfate frees "
                     "sulfur dioxide; alkali with a rapid (ammonium) fixer frees ammonia.");
}

QString Cautions::silver()
{
    return Words::tr("Used fixer carries silver: collect it for silver recovery. (The US limit for "
                     "hazardous waste is 5.0 mg of silver a litre: 40 CFR 261.24, D011.)");
}

QString Cautions::septicTank()
{
    return Words::tr("Never into a septic tank. Your local authority decides what may go down a "
                     "drain.");
}

QString Cautions::wasteCode(formulary::Role role)
{
    if (role == formulary::Role::Developer)
        return Words::tr("EU waste code for used developer: %1.")
            .arg(QStringLiteral("09\u00a001\u00a001*"));
    if (role == formulary::Role::Fixer)
        return Words::tr("EU waste code for used fixer: %1.")
            .arg(QStringLiteral("09\u00a001\u00a004*"));
    return {};
}

QString Cautions::licensed()
{
    return Words::tr("Silver recovery and any handling in bulk belong to licensed firms.");
}

QString Cautions::packetFirst()
{
    return Words::tr("The packet, its safety data sheet and your local rules come first.");
}

QStringList mixingCautions(const formulary::Solution& solution, MixedFrom from)
{
    using formulary::Role;
    const Role role = solution.role;
    QStringList list;
    const bool liquid = solution.form == formulary::Form::Liquid;
    if (liquid)
        list << Cautions::glovesAndEyes();
    else if (role != Role::WettingAgent)
        list << Cautions::powders() << Cautions::powderIntoWater();
    if (role == Role::Developer && !liquid && from == MixedFrom::Packet)
        list << Cautions::wholePacket();
    if (role == Role::Developer)
        list << Cautions::developerOnSkin();
    if (role == Role::Stop || (liquid && role == Role::Fixer))
        list << Cautions::acidIntoWater();
    list << hazardCautions(solution, Strength::AsBought);
    if (role == Role::Stop || role == Role::Fixer)
        list << Cautions::acidAndSulfite();
    list << Cautions::noCleaners() << Cautions::noEating() << Cautions::eyes()
         << Cautions::warmingBath() << Cautions::labelAndLock() << Cautions::foodBottles()
         << Cautions::kitchenTools() << Cautions::inertGas() << Cautions::packetFirst();
    return list;
}

QStringList runningCautions()
{
    return {Cautions::glovesAndEyes(), Cautions::bathsApart(), Cautions::noCleaners(),
            Cautions::noEating(),      Cautions::eyes(),       Cautions::warmingBath(),
            Cautions::silver()};
}

QStringList storingCautions(formulary::Role role)
{
    QStringList list{Cautions::foodBottles(), Cautions::labelAndLock(), Cautions::kitchenTools(),
                     Cautions::inertGas()};
    if (role == formulary::Role::Stop || role == formulary::Role::Fixer)
        list << Cautions::acidPressure();
    return list;
}

QStringList toppingUpCautions(formulary::Role role)
{
    QStringList list{Cautions::glovesAndEyes()};
    if (role == formulary::Role::Stop || role == formulary::Role::Fixer)
        list << Cautions::acidAndSulfite();
    return list << Cautions::noEating() << Cautions::eyes() << Cautions::inertGas();
}

QStringList pouringCautions(formulary::Role role)
{
    QStringList list{Cautions::glovesAndEyes()};
    if (role == formulary::Role::Developer)
        list << Cautions::developerOnSkin();
    return list << Cautions::noEating() << Cautions::eyes();
}

QStringList filteringCautions(formulary::Role role)
{
    return pouringCautions(role) << Cautions::kitchenTools();
}

QStringList disposalCautions(const formulary::Solution& solution)
{
    const formulary::Role role = solution.role;
    QStringList list{Cautions::oneCanEach()};
    if (role == formulary::Role::Fixer)
        list << Cautions::silver();
    list << Cautions::septicTank();
    if (const QString code = Cautions::wasteCode(role); !code.isEmpty())
        list << code;
    list << hazardCautions(solution, Strength::AsMixed);
    list << Cautions::glovesAndEyes() << Cautions::noCleaners() << Cautions::noEating()
         << Cautions::eyes();
    if (role == formulary::Role::Fixer)
        list << Cautions::licensed();
    list << Cautions::packetFirst();
    return list;
}

QStringList clearingTestCautions()
{
    return {Cautions::glovesAndEyes(), Cautions::bathsApart(), Cautions::noEating(),
            Cautions::eyes()};
}

QStringList stripTestCautions()
{
    return {Cautions::glovesAndEyes(), Cautions::developerOnSkin(), Cautions::noEating(),
            Cautions::eyes()};
}

QStringList lookCautions()
{
    return {Cautions::fanTowards(), Cautions::glovesAndEyes(), Cautions::noEating(),
            Cautions::eyes()};
}

QList<CautionGroup> allCautions()
{
    using C = Cautions;
    using formulary::Role;
    return {
        {Words::tr("Mixing"),
         {C::powders(), C::powderIntoWater(), C::acidIntoWater(), C::wholePacket()}},
        {Words::tr("Handling"),
         {C::glovesAndEyes(), C::noEating(), C::eyes(), C::fanTowards(), C::developerOnSkin(),
          C::acidAndSulfite(), C::noCleaners(), C::bathsApart(), C::warmingBath(), C::redScreen()}},
        {Words::tr("What is in it"), everyHazard()},
        {Words::tr("Keeping"),
         {C::foodBottles(), C::labelAndLock(), C::kitchenTools(), C::inertGas(),
          C::acidPressure()}},
        {Words::tr("Getting rid of it"),
         {C::oneCanEach(), C::silver(), C::septicTank(), C::wasteCode(Role::Developer),
          C::wasteCode(Role::Fixer), C::licensed()}},
        {Words::tr("Always"), {C::packetFirst()}},
    };
}

} // namespace ullage::app
