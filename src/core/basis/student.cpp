#include "student.hpp"

#include <boost/math/distributions/students_t.hpp>

namespace boardmark::core {

double student_quantile(double probability, double degrees_of_freedom) {
    // Plain doubles: the same result on every machine.
    using Plain = boost::math::policies::policy<boost::math::policies::promote_double<false>>;
    return quantile(boost::math::students_t_distribution<double, Plain>{degrees_of_freedom},
                    probability);
}

} // namespace boardmark::core
