#include "core/chemistry/strips.h"

#include "core/chemistry/process_constants.h"

#include <cmath>

namespace ullage::chemistry
{

std::optional<ControlChart> controlChart(std::span<const double> readings)
{
    if (readings.size() < 2) {
        return std::nullopt;
    }
    ControlChart chart;
    const double count = static_cast<double>(readings.size());
    for (std::size_t i = 0; i < readings.size(); ++i) {
        chart.centre += readings[i] / count;
        if (i > 0) {
            chart.meanMovingRange += std::abs(readings[i] - readings[i - 1]) / (count - 1);
        }
    }
    const double reach = kSigmas.value * chart.meanMovingRange / kMovingRange.value;
    chart.lower = chart.centre - reach;
    chart.upper = chart.centre + reach;
    return chart;
}

std::vector<ControlMark> controlMarks(const ControlChart& chart, std::span<const double> readings)
{
    std::vector<ControlMark> marks;
    int run = 0; // readings in a row on one side; the sign tells which
    for (const double reading : readings) {
        if (reading > chart.centre) {
            run = run > 0 ? run + 1 : 1;
        } else if (reading < chart.centre) {
            run = run < 0 ? run - 1 : -1;
        } else {
            run = 0;
        }
        if (reading > chart.upper || reading < chart.lower) {
            marks.push_back(ControlMark::Beyond);
        } else if (std::abs(run) >= kRunOnOneSide.value) {
            marks.push_back(ControlMark::OneSide);
        } else {
            marks.push_back(ControlMark::Within);
        }
    }
    return marks;
}

Result<double> stripFactor(double density, double reference, double response)
{
    for (const auto& [field, value] : {std::pair{"density", density}, {"reference", reference}}) {
        if (auto fine = checkRange(field, value, 0.1, 4, ""); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    if (auto fine = checkRange("response", response, 0.2, 2, ""); !fine) {
        return tl::unexpected(fine.error());
    }
    const double factor = std::pow(reference / density, 1 / response);
    if (factor > kStripMost.value || factor < 1 / kStripMost.value) {
        Error error{.code = ErrorCode::NotSuitable, .field = "density", .number = density};
        error.low = reference / std::pow(kStripMost.value, response);
        error.high = reference * std::pow(kStripMost.value, response);
        return refuse(std::move(error));
    }
    return factor;
}

Result<std::optional<double>> proposedFactor(const ControlChart& chart, double density,
                                             double reference)
{
    if (density >= chart.lower && density <= chart.upper) {
        return std::nullopt;
    }
    return stripFactor(density, reference, kStripResponse.value).map([](double factor) {
        return std::optional(factor);
    });
}

} // namespace ullage::chemistry
