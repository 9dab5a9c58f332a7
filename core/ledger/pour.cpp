#include "core/ledger/pour.h"

namespace ullage::ledger
{

Pour pourOf(const BathNeed& need, const std::optional<Tank>& tank)
{
    const chemistry::Millilitres whole = tank ? tank->volume : need.volume;
    return {need.volume, whole - need.volume};
}

} // namespace ullage::ledger
