#include "core/chemistry/pace.h"

#include "core/chemistry/films.h"

#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/gamma.hpp>
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

RateBelief belief(const Pace& pace)
{
    return {kPacePriorLoads + pace.loads, kPacePriorTime + pace.observed};
}

double chanceSlowerThan(const RateBelief& belief, Days between)
{
    return boost::math::gamma_p(belief.shape, belief.time / between);
}

Days waitFor(int loads, const Pace& pace, double probability)
{
    const auto [shape, time] = belief(pace);
    const double y = boost::math::ibeta_inv(loads, shape, probability);
    return time * (y / (1 - y));
}

double chanceWithin(int loads, const Pace& pace, Days time)
{
    if (time.value() <= 0) {
        return 0;
    }
    const auto [shape, watched] = belief(pace);
    return boost::math::ibeta(loads, shape, time / (time + watched));
}

} // namespace ullage::chemistry
