#pragma once

#include <boost/math/policies/policy.hpp>

namespace boardmark::core {

/// Statistics in plain doubles: the same result on every machine. Floats are named too, though none is used,
/// because the library's inner functions are compiled for both: one copy of them instead of two.
using PlainDoubles = boost::math::policies::policy<boost::math::policies::promote_float<false>,
                                                   boost::math::policies::promote_double<false>>;

} // namespace boardmark::core
