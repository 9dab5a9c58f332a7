#include "core/ledger/mixture.h"

#include <algorithm>

namespace ullage::ledger
{

using chemistry::Films;
using chemistry::litres;
using chemistry::Millilitres;

namespace
{

// Freshly made solution makes up what is missing.
void dilute(Batch& batch, double share)
{
    batch.wear *= share;
    batch.silver *= share;
    batch.bromide *= share;
    batch.carriedAge *= share;
    batch.standing = chemistry::toppedUp(batch.standing, share, saturation(*batch.solution));
}

double lifeSpent(const Batch& batch)
{
    return batch.limits ? batch.standing.aged / batch.limits->age : batch.carriedAge;
}

// When something of `donor`'s clock was, by the clock of `batch`.
chemistry::Days onClockOf(const Batch& batch, const Batch& donor, chemistry::Days time)
{
    return time + chemistry::daysBetween(batch.mixedAt, donor.mixedAt);
}

void add(chemistry::Routes& to, const chemistry::Routes& what)
{
    to.pouring += what.pouring;
    to.bottleAir += what.bottleAir;
    to.wall += what.wall;
    to.cap += what.cap;
    to.openVessel += what.openVessel;
}

} // namespace

void addFilms(Batch& batch, Films units, Films felt)
{
    const auto volume = litres(batch.volume);
    const auto& solution = *batch.solution;
    batch.wear += felt / volume;
    batch.silver +=
        chemistry::GramsPerLitre(felt.value() * solution.silverPerFilm / volume.value());
    batch.bromide +=
        chemistry::MilligramsPerLitre(units.value() * solution.bromidePerFilm / volume.value());
    batch.filmsDone += units;
}

// A fresh bottle becomes part of another one of the same solution.
void takeFrom(Batch& batch, const Batch& donor)
{
    batch.wear = donor.wear;
    batch.silver = donor.silver;
    batch.bromide = donor.bromide;
    add(batch.standing.taken, donor.standing.taken);
    batch.standing.aged = donor.standing.aged;
    batch.carriedAge = donor.carriedAge;
    batch.madeAt = donor.madeAt;
    batch.keepsFrom = onClockOf(batch, donor, donor.keepsFrom);
    if (donor.spentAfter) {
        batch.spentAfter = onClockOf(batch, donor, *donor.spentAfter);
    }
    batch.tests = donor.tests;
    batch.testMarks = donor.testMarks;
    batch.lapsedTests = donor.lapsedTests;
    batch.passes = donor.passes;
    batch.failures = donor.failures;
    batch.stripFactor = donor.stripFactor;
    batch.stripAt = donor.stripAt;
    batch.contaminated = donor.contaminated;
    batch.dissolved = donor.dissolved;
    batch.historyUnknown = donor.historyUnknown;
    batch.pouredUnknown = donor.pouredUnknown;
    batch.dateKnown = donor.dateKnown;
    batch.filmsKnown = donor.filmsKnown;
}

// What is known of a bottle found is counted: closed and at 20 °C since the day that was said.
void takeAsFound(Batch& batch, const Mixed& mixed)
{
    batch.historyUnknown = true;
    batch.dateKnown = mixed.mixedOn.has_value();
    batch.filmsKnown = mixed.assumed.has_value();
    batch.wear = mixed.assumed.value_or(chemistry::FilmsPerLitre());
    if (!mixed.mixedOn) {
        return;
    }
    batch.madeAt = *mixed.mixedOn;
    batch.keepsFrom = -chemistry::daysBetween(*mixed.mixedOn, batch.mixedAt);
    batch.standing.aged = -batch.keepsFrom;
    if (batch.limits && *batch.standingUsed() >= 1) {
        const double byAir = batch.standing.taken.total() / batch.limits->oxygen;
        batch.spentAfter = batch.keepsFrom + batch.limits->age * (1 - byAir);
    }
}

// `volume` of another bottle on top of what is there.
void pourIn(Batch& batch, const Batch& donor, Millilitres volume)
{
    const double mine = batch.volume / (batch.volume + volume);
    const double theirs = 1 - mine;
    batch.wear = batch.wear * mine + donor.wear * theirs;
    batch.silver = batch.silver * mine + donor.silver * theirs;
    batch.bromide = batch.bromide * mine + donor.bromide * theirs;
    // Another solution may live longer: what mixes is the share of life spent.
    const double spent = lifeSpent(batch) * mine + lifeSpent(donor) * theirs;
    if (batch.limits) {
        batch.standing.aged = batch.limits->age * spent;
    } else {
        batch.carriedAge = spent;
    }
    batch.standing.taken *= mine;
    chemistry::Routes taken = donor.standing.taken;
    taken.pouring += saturation(*batch.solution);
    taken *= theirs;
    add(batch.standing.taken, taken);
    batch.contaminated = batch.contaminated || donor.contaminated;
    batch.failures.insert(batch.failures.end(), donor.failures.begin(), donor.failures.end());
    batch.pouredUnknown = batch.pouredUnknown || donor.inDoubt();
    batch.passes.clear();
    batch.lapsedTests = batch.tests.size();
    batch.keepsFrom = std::min(batch.keepsFrom, onClockOf(batch, donor, donor.keepsFrom));
    batch.volume += volume;
}

// Each film's measure of replenisher takes that film's wear away, and makes it all younger.
void pourInReplenisher(Batch& batch, Millilitres volume)
{
    const Millilitres after = batch.volume + volume;
    const Films done = batch.wear * litres(batch.volume);
    const Films credit(volume / *batch.solution->replenishPerFilm);
    dilute(batch, batch.volume / after);
    batch.wear = std::max(Films(0), done - credit) / litres(after);
    batch.replenished += volume;
    const auto now = chemistry::daysBetween(batch.mixedAt, batch.asOf);
    batch.keepsFrom += (now - batch.keepsFrom) * (volume / after);
    batch.volume = after;
}

void pourInFresh(Batch& batch, Millilitres volume)
{
    const Millilitres after = batch.volume + volume;
    dilute(batch, batch.volume / after);
    batch.volume = after;
}

} // namespace ullage::ledger
