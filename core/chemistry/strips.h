// Control strips: is the developer where it was, and if not, what development time would make up.
//
// An individuals chart after NIST/SEMATECH e-Handbook 6.3.2.2: centre = mean, limits = centre ± 3 ×
// mean moving range / 1.128.
//
// The time factor is an assumption, not a measurement: near the usual time, density is taken to
// grow as time to the power kStripResponse (1: in proportion). Graded common practice; it is
// proposed and never applied by itself, not for a reading within the limits, and not beyond
// kStripMost.
#pragma once

#include "core/chemistry/result.h"

#include <optional>
#include <span>
#include <vector>

namespace ullage::chemistry
{

struct ControlChart {
    double centre = 0;
    double meanMovingRange = 0;
    double lower = 0;
    double upper = 0;
};

/// From two readings or more; empty otherwise.
std::optional<ControlChart> controlChart(std::span<const double> readings);

enum class ControlMark {
    Within,
    Beyond,  ///< outside the limits
    OneSide, ///< the eighth or later in a row on one side of the centre
};

/// One mark for each reading, judged by `chart` (which may be of earlier readings).
std::vector<ControlMark> controlMarks(const ControlChart& chart, std::span<const double> readings);

/// Factor on the development time that would bring `density` to `reference`:
/// (reference/density)^(1/response). Refuses densities outside 0.1 to 4, a response outside 0.2 to
/// 2, and a factor beyond kStripMost either way (NotSuitable: look for the cause).
Result<double> stripFactor(double density, double reference, double response);

/// The same with the assumed response; empty while the reading lies within the chart's limits.
Result<std::optional<double>> proposedFactor(const ControlChart& chart, double density,
                                             double reference);

} // namespace ullage::chemistry
