// The report and the next load's time as JSON, for other programs: keys as the journal's document
// lists them, numbers unrounded, null for what is not known.
#pragma once

#include "core/chemistry/developing.h"
#include "core/ledger/book.h"
#include "core/ledger/next_load.h"

#include <QByteArray>

#include <span>
#include <string_view>
#include <vector>

namespace ullage::store
{

/// An array, one object a batch in the order given. Dates are in UTC. The fixing time is for films
/// with ordinary grains, at 20 °C. Those that are `unread` have their places among them: nothing is
/// told of them but name, solution and the reason "not-as-entered", with the number of the entry.
QByteArray reportJson(std::span<const ledger::Batch> batches,
                      std::span<const ledger::Unread> unread = {});

/// The time for the next load, factor by factor; not rounded.
struct NextTime {
    chemistry::Seconds base;
    double wear = 1;
    double strip = 1;
    chemistry::Celsius temperature;
    chemistry::Seconds time;
    std::vector<std::string_view> warnings; ///< codes, see nextTime()
    /// Between which it may lie as well, where it was carried by Q10; told, not written.
    std::optional<chemistry::CarriedRange> carried;
};

/// Refuses a batch that has ended (AfterEnd), one that is no developer (NotSuitable), and what
/// baseTime() refuses. Warnings: "outside-usual-range" and "extrapolated" (temperature),
/// "not-enough-films-left" (fewer than `films`), "test-first", "discard" (the verdict).
Result<NextTime> nextTime(const ledger::Batch& batch,
                          std::span<const chemistry::TimeAtTemperature> pairs,
                          chemistry::Celsius temperature, chemistry::Films films);

QByteArray timeJson(const NextTime& time);

} // namespace ullage::store
