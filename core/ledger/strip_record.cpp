#include "core/ledger/strip_record.h"

#include "core/chemistry/process_constants.h"

#include <algorithm>
#include <span>

namespace ullage::ledger
{

using chemistry::ControlMark;

std::vector<std::size_t> StripRecord::outOfControl() const
{
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        if (marks[i] != ControlMark::Within) {
            found.push_back(i);
        }
    }
    return found;
}

std::vector<std::size_t> StripRecord::overridden() const
{
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        if (marks[i] == ControlMark::Beyond && readings[i].strip.passed == true) {
            found.push_back(i);
        }
    }
    return found;
}

std::optional<bool> StripRecord::preset(double density) const
{
    return next ? std::optional(density >= next->lower && density <= next->upper) : std::nullopt;
}

StripRecord stripRecord(std::vector<StripReading> readings)
{
    StripRecord record;
    std::stable_sort(readings.begin(), readings.end(),
                     [](const auto& a, const auto& b) { return a.strip.at < b.strip.at; });
    record.readings = std::move(readings);
    std::vector<double> densities;
    for (const StripReading& reading : record.readings) {
        densities.push_back(reading.strip.density);
    }
    record.marks.assign(densities.size(), ControlMark::Within);
    record.judgedBy.resize(densities.size());
    if (densities.size() < kStripsForLimits) {
        return record;
    }
    const std::span<const double> all(densities);
    const auto first = chemistry::controlChart(all.first(kStripsForLimits));
    const auto firstMarks = chemistry::controlMarks(*first, all.first(kStripsForLimits));
    std::vector<double> within;
    for (std::size_t i = 0; i < densities.size(); ++i) {
        const bool together = i < kStripsForLimits;
        record.judgedBy[i] = together ? first : chemistry::controlChart(within);
        record.marks[i] = together
                              ? firstMarks[i]
                              : chemistry::controlMarks(*record.judgedBy[i], all.first(i + 1))[i];
        if (record.marks[i] != ControlMark::Beyond) {
            within.push_back(densities[i]);
        }
    }
    record.next = chemistry::controlChart(within);
    return record;
}

std::vector<std::size_t> overriddenIn(const StripRecord& record, const std::string& batch)
{
    auto found = record.overridden();
    std::erase_if(found, [&](std::size_t i) { return record.readings[i].batch != batch; });
    return found;
}

std::optional<std::size_t> referenceStrip(const StripRecord& record, const std::string& batch)
{
    std::optional<std::size_t> other;
    for (std::size_t i = 0; i < record.readings.size(); ++i) {
        const StripReading& reading = record.readings[i];
        if (reading.strip.wear > kReferenceWear) {
            continue;
        }
        if (reading.batch == batch) {
            return i;
        }
        other = i;
    }
    return other;
}

Result<std::optional<StripProposal>> proposal(const StripRecord& record, double density,
                                              double reference, double inForce)
{
    if (!record.next) {
        return std::nullopt;
    }
    const auto correction = chemistry::proposedFactor(*record.next, density, reference);
    if (!correction) {
        return tl::unexpected(correction.error());
    }
    if (!*correction) {
        return std::nullopt;
    }
    const double factor = **correction * inForce;
    const double most = chemistry::kStripMost.value;
    if (factor > most || factor < 1 / most) {
        return refuse({.code = ErrorCode::NotSuitable,
                       .field = "factor",
                       .number = factor,
                       .low = 1 / most,
                       .high = most});
    }
    return StripProposal{**correction, factor};
}

} // namespace ullage::ledger
