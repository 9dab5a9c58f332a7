#include "core/chemistry/warming.h"

#include "core/chemistry/process_constants.h"

#include <algorithm>
#include <cmath>

namespace ullage::chemistry
{

Seconds timeConstant(Millilitres volume, Surroundings surroundings)
{
    const Constant& litre = surroundings == Surroundings::StirredBath ? kStirredBath : kRoomAir;
    return Seconds(litre.value * 60) * std::cbrt(litres(volume).value());
}

Result<Seconds> timeConstantFrom(Celsius first, Celsius second, Celsius around, Seconds between)
{
    const double ratio = (around - first) / (around - second);
    if (!std::isfinite(ratio) || ratio <= 1 || !(between.value() > 0)) {
        return refuse({.code = ErrorCode::Conflict,
                       .field = "temperature",
                       .allowed = "two readings that come nearer to the surroundings",
                       .number = second.value(),
                       .unit = "°C"});
    }
    return between / std::log(ratio);
}

Celsius temperatureAfter(Celsius start, Celsius around, Seconds time, Seconds constant)
{
    return around + (start - around) * std::exp(-(time / constant));
}

Result<Seconds> timeToReach(Celsius wanted, Celsius start, Celsius around, Seconds constant)
{
    if (wanted == start) {
        return Seconds(0);
    }
    const double ratio = (start - around) / (wanted - around);
    if (!std::isfinite(ratio) || ratio < 1) {
        Error error{
            .code = ErrorCode::OutOfRange, .field = "temperature", .number = wanted.value()};
        error.low = std::min(start.value(), around.value());
        error.high = std::max(start.value(), around.value());
        error.unit = "°C";
        return refuse(std::move(error));
    }
    return constant * std::log(ratio);
}

} // namespace ullage::chemistry
