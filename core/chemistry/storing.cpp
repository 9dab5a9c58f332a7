#include "core/chemistry/storing.h"

namespace ullage::chemistry
{

std::optional<StoreWarning> storeWarning(Celsius temperature, bool fixer)
{
    if (temperature.value() < kColdStore.value) {
        return StoreWarning::TooCold;
    }
    return fixer && temperature.value() > kWarmFixer.value ? std::optional(StoreWarning::TooWarm)
                                                           : std::nullopt;
}

} // namespace ullage::chemistry
