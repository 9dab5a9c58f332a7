#include "core/chemistry/pace.h"

#include "core/chemistry/films.h"

#include <algorithm>
#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

namespace ullage::chemistry
{

namespace
{

// y/(1 − y) of the Beta(a, b) quantile y. Solved for by itself: the library's inverse finds no root
// for some shapes, Beta(5, 5) at one half among them, and throws.
double quantileOdds(double a, double b, double probability)
{
    const auto over = [&](double odds) {
        // Each end by its own small share, so that neither is lost beside 1.
        const double share = odds < 1 ? boost::math::ibeta(a, b, odds / (1 + odds))
                                      : boost::math::ibetac(b, a, 1 / (1 + odds));
        return share - probability;
    };
    constexpr double kStep = 2;
    std::uintmax_t iterations = 500;
    const auto [low, high] = boost::math::tools::bracket_and_solve_root(
        over, a / b, kStep, true, boost::math::tools::eps_tolerance<double>(50), iterations);
    return (low + high) / 2;
}

} // namespace

int loadsLeft(Films left, Films meanLoad)
{
    if (left.value() <= kFilmSlack || meanLoad.value() <= 0) {
        return 0;
    }
    constexpr double kCountless = 1e9;
    return static_cast<int>(std::min(kCountless, std::ceil(left / meanLoad - kFilmSlack)));
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
    return time * quantileOdds(loads, shape, probability);
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
