// A packet of the cupboard in a line to choose from.
#pragma once

#include "app/words/units.h"
#include "core/ledger/cupboard_state.h"
#include "core/ledger/entry.h"

#include <QString>

#include <vector>

namespace ullage::app
{

/// "packet for 1,000 ml · lot H041 · use by 31/03/2028", "concentrate for 2,500 ml".
QString packetText(const ledger::Packet& packet, const Wording& wording);
/// The same with what speaks against it or asks for it first, by what stands in the cupboard
/// (CupboardState::items): that it is past its date, or stands open and until when, or too long.
QString packetText(const ledger::Packet& packet, const std::vector<ledger::ItemHere>& items,
                   const Wording& wording);

} // namespace ullage::app
