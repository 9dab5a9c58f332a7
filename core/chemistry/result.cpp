#include "core/chemistry/result.h"

#include <cmath>

namespace ullage
{

Result<void> checkRange(const char* field, double value, double low, double high, const char* unit)
{
    if (!std::isfinite(value)) {
        Error error{.code = ErrorCode::NotFinite, .field = field, .number = value};
        error.low = low;
        error.high = high;
        error.unit = unit;
        return refuse(std::move(error));
    }
    if (value < low || value > high) {
        Error error{.code = ErrorCode::OutOfRange, .field = field, .number = value};
        error.low = low;
        error.high = high;
        error.unit = unit;
        return refuse(std::move(error));
    }
    return {};
}

} // namespace ullage
