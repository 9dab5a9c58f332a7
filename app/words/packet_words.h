// A packet of the cupboard in a line to choose from.
#pragma once

#include "app/words/units.h"
#include "core/ledger/entry.h"

#include <QString>

namespace ullage::app
{

/// "packet for 1,000 ml · lot H041 · use by 31/03/2028", "concentrate for 2,500 ml".
QString packetText(const ledger::Packet& packet, const Wording& wording);

} // namespace ullage::app
