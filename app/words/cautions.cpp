#include "app/words/cautions.h"

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
    return Words::tr("Developer can make skin allergic for good. Its hydroquinone and metol carry "
                     "hazard statements H302, H317, H318, H341, H351 and H410. Wear gloves; rinse "
                     "splashes off at once.");
}

QString Cautions::glacialAcid()
{
    return Words::tr("Glacial acetic acid burns skin and eyes and catches fire (H226, H314). Use "
                     "it diluted wherever you can buy it so.");
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

QString Cautions::foodBottles()
{
    return Words::tr("Never in a bottle that looks like food or drink, unless a label covers it.");
}

QString Cautions::labelAndLock()
{
    return Words::tr("Label it “photographic solution, not for drinking”, with date and contents. "
                     "Keep it away from children and animals.");
}

QString Cautions::kitchenTools()
{
    return Words::tr("Spoons, jugs and heaters used here never go back to the kitchen.");
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

QStringList mixingCautions(formulary::Role role)
{
    using formulary::Role;
    QStringList list;
    if (role != Role::WettingAgent)
        list << Cautions::powders() << Cautions::powderIntoWater();
    if (role == Role::Developer)
        list << Cautions::wholePacket() << Cautions::developerOnSkin();
    if (role == Role::Stop)
        list << Cautions::acidIntoWater() << Cautions::glacialAcid();
    if (role == Role::Stop || role == Role::Fixer)
        list << Cautions::acidAndSulfite();
    list << Cautions::noCleaners() << Cautions::labelAndLock() << Cautions::foodBottles()
         << Cautions::kitchenTools() << Cautions::packetFirst();
    return list;
}

QStringList runningCautions()
{
    return {Cautions::glovesAndEyes(), Cautions::bathsApart(), Cautions::noCleaners(),
            Cautions::silver()};
}

QStringList storingCautions()
{
    return {Cautions::foodBottles(), Cautions::labelAndLock(), Cautions::kitchenTools()};
}

QStringList disposalCautions(formulary::Role role)
{
    QStringList list;
    if (role == formulary::Role::Fixer)
        list << Cautions::silver();
    list << Cautions::septicTank();
    if (const QString code = Cautions::wasteCode(role); !code.isEmpty())
        list << code;
    list << Cautions::noCleaners();
    if (role == formulary::Role::Fixer)
        list << Cautions::licensed();
    list << Cautions::packetFirst();
    return list;
}

QList<CautionGroup> allCautions()
{
    using C = Cautions;
    using formulary::Role;
    return {
        {Words::tr("Mixing"),
         {C::powders(), C::powderIntoWater(), C::acidIntoWater(), C::wholePacket()}},
        {Words::tr("Handling"),
         {C::glovesAndEyes(), C::developerOnSkin(), C::glacialAcid(), C::acidAndSulfite(),
          C::noCleaners(), C::bathsApart()}},
        {Words::tr("Keeping"), {C::foodBottles(), C::labelAndLock(), C::kitchenTools()}},
        {Words::tr("Getting rid of it"),
         {C::silver(), C::septicTank(), C::wasteCode(Role::Developer), C::wasteCode(Role::Fixer),
          C::licensed()}},
        {Words::tr("Always"), {C::packetFirst()}},
    };
}

} // namespace ullage::app
