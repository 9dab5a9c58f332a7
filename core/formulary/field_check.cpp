#include "core/formulary/field_check.h"

namespace ullage::formulary::detail
{

Result<void> checkNumber(const FieldDescription& is, double value)
{
    // Only a refusal needs the names as texts of their own.
    if (value >= is.low && value <= is.high && (!is.whole || value == std::floor(value))) {
        return {};
    }
    if (auto fine = checkRange(is.name.data(), value, is.low, is.high, is.unit.data()); !fine) {
        return fine;
    }
    return refuse({.code = ErrorCode::OutOfRange,
                   .field = std::string(is.name),
                   .allowed = "a whole number",
                   .number = value,
                   .low = std::ceil(is.low),
                   .high = is.high,
                   .unit = std::string(is.unit)});
}

Result<void> checkCount(const FieldDescription& is, std::size_t pieces)
{
    if (is.most == 0 || pieces <= is.most) {
        return {};
    }
    return refuse({.code = ErrorCode::OutOfRange,
                   .field = std::string(is.name),
                   .number = static_cast<double>(pieces),
                   .low = 1,
                   .high = static_cast<double>(is.most)});
}

tl::unexpected<Error> missing(const FieldDescription& is)
{
    return refuse({.code = ErrorCode::Missing, .field = std::string(is.name)});
}

Result<void> inside(Result<void> fine, const FieldDescription& outer)
{
    fine.error().field = std::string(outer.name) + '.' + fine.error().field;
    return fine;
}

} // namespace ullage::formulary::detail
