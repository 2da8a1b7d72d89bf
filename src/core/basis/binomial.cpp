#include "binomial.hpp"
#include "plain_doubles.hpp"

#include <boost/math/distributions/binomial.hpp>

namespace boardmark::core {

ProbabilityRange probability_range(std::size_t times, std::size_t trials) {
    using Binomial = boost::math::binomial_distribution<double, PlainDoubles>;
    constexpr double each_side = 0.025;
    const auto happened = static_cast<double>(times);
    const auto tried = static_cast<double>(trials);
    return {times == 0 ? 0 : Binomial::find_lower_bound_on_p(tried, happened, each_side),
            times == trials ? 1 : Binomial::find_upper_bound_on_p(tried, happened, each_side)};
}

} // namespace boardmark::core
