#include "core/chemistry/pace.h"

#include "core/chemistry/films.h"

#include <boost/math/special_functions/beta.hpp>
#include <cmath>

namespace ullage::chemistry
{

int loadsLeft(Films left, Films meanLoad)
{
    if (left.value() <= kFilmSlack || meanLoad.value() <= 0) {
        return 0;
    }
    return static_cast<int>(std::ceil(left / meanLoad - kFilmSlack));
}

Days waitFor(int loads, const Pace& pace, double probability)
{
    const double y = boost::math::ibeta_inv(loads, kPacePriorLoads + pace.loads, probability);
    return (kPacePriorTime + pace.observed) * (y / (1 - y));
}

double chanceWithin(int loads, const Pace& pace, Days time)
{
    if (time.value() <= 0) {
        return 0;
    }
    const double x = time / (time + kPacePriorTime + pace.observed);
    return boost::math::ibeta(loads, kPacePriorLoads + pace.loads, x);
}

} // namespace ullage::chemistry
