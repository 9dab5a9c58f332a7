// The parts of decoding, one function a type of line. Each leaves its refusal in `fields`.
#pragma once

#include "core/ledger/entry.h"
#include "core/store/fields.h"

namespace ullage::store
{

formulary::Solution decodeSolution(Fields& fields);
formulary::Vessel decodeVessel(Fields& fields);
ledger::FilmRecord decodeFilm(Fields& fields);
ledger::Packet decodePacket(Fields& fields);
/// A chemical without an id has its name for one.
ledger::Chemical decodeChemical(Fields& fields);
formulary::DevelopmentFigure decodeFigure(Fields& fields);
ledger::FilmMark decodeMark(Fields& fields);
ledger::Event decodeEvent(Fields& fields);

} // namespace ullage::store
