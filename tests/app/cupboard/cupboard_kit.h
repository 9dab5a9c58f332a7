// A desk with things in its cupboard.
#pragma once

#include "app/cupboard/cupboard_views.h"
#include "tests/app/desk.h"

#include <QtGlobal>

namespace ullage::app
{

/// What was entered in one action, its ids as they are in the line.
inline void shelve(Desk& desk, std::vector<ledger::CupboardLine> lines)
{
    if (const auto done = desk.door().add(std::move(lines)); !done)
        qFatal("not entered: %s %s", done.error().field.c_str(), done.error().text.c_str());
}

inline void happen(Desk& desk, const ledger::Happening& what)
{
    if (const auto done = desk.door().recordOf(what, desk.now()); !done)
        qFatal("not recorded: %s %s", done.error().field.c_str(), done.error().text.c_str());
}

inline ledger::Packet powder(const std::string& id, const std::string& useBy = {})
{
    ledger::Packet packet;
    packet.id = id;
    packet.solution = "starter-mq-borax";
    packet.makes = chemistry::Millilitres(1000);
    packet.useBy = useBy;
    packet.cost = ledger::Decimal::from("8.40");
    packet.currency = "EUR";
    packet.lot = "H041";
    return packet;
}

inline ledger::Packet concentrate(const std::string& id, double ml)
{
    ledger::Packet packet;
    packet.id = id;
    packet.solution = "starter-acid-fixer";
    packet.form = formulary::Form::Liquid;
    packet.volume = chemistry::Millilitres(ml);
    packet.makes = chemistry::Millilitres(ml * 5);
    packet.keepsOpened = chemistry::Days(60);
    return packet;
}

inline ledger::Chemical chemical(const std::string& id, double grams)
{
    ledger::Chemical made;
    made.id = id;
    made.name = "Sodium sulfite, dry";
    made.cas = "7757-83-7";
    made.grams = grams;
    made.hazards = {"H319"};
    return made;
}

inline CupboardSnapshot snapshotOf(Desk& desk)
{
    auto state = desk.door().cupboard();
    if (!state)
        qFatal("the cupboard cannot be read");
    return {std::move(*state), desk.now()};
}

inline NeedsSnapshot needsOf(Desk& desk, const PlanFor& planFor)
{
    std::vector<ledger::Batch> batches;
    for (const Bottle& bottle : desk.door().bottles())
        batches.push_back(bottle.batch);
    return needsSnapshot(std::move(batches), *desk.door().formulary(), snapshotOf(desk).state,
                         desk.now(), planFor);
}

} // namespace ullage::app
