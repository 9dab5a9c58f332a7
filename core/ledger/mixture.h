// What comes into a bottle, and what becomes of the solution by it. Nothing here can fail; volumes
// must fit. Rules: core/chemistry/README.md.
#pragma once

#include "core/ledger/batch.h"

namespace ullage::ledger
{

/// Films that were processed, and how many of them the bottle felt.
void addFilms(Batch& batch, chemistry::Films units, chemistry::Films felt);

/// A fresh bottle becomes part of another one of the same solution, as that one was then.
void takeFrom(Batch& batch, const Batch& donor);
/// A fresh bottle becomes one that was found: what is known of it is counted.
void takeAsFound(Batch& batch, const Mixed& mixed);

/// So much of another bottle, as that one was then, is poured in.
void pourIn(Batch& batch, const Batch& donor, chemistry::Millilitres volume);
/// So much of its solution's replenisher is.
void pourInReplenisher(Batch& batch, chemistry::Millilitres volume);
/// So much freshly made solution is.
void pourInFresh(Batch& batch, chemistry::Millilitres volume);

} // namespace ullage::ledger
