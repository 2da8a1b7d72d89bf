#include "binomial.hpp"

#include <boost/math/distributions/binomial.hpp>

namespace boardmark::core {

ProbabilityRange probability_range(std::size_t times, std::size_t trials) {
    // Plain doubles: the same result on every machine.
    using Plain = boost::math::policies::policy<boost::math::policies::promote_double<false>>;
    using Binomial = boost::math::binomial_distribution<double, Plain>;
    constexpr double each_side = 0.025;
    const auto happened = static_cast<double>(times);
    const auto tried = static_cast<double>(trials);
    return {times == 0 ? 0 : Binomial::find_lower_bound_on_p(tried, happened, each_side),
            times == trials ? 1 : Binomial::find_upper_bound_on_p(tried, happened, each_side)};
}

} // namespace boardmark::core
