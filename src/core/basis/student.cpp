#include "student.hpp"
#include "plain_doubles.hpp"

#include <boost/math/distributions/students_t.hpp>

namespace boardmark::core {

double student_quantile(double probability, double degrees_of_freedom) {
    return quantile(boost::math::students_t_distribution<double, PlainDoubles>{degrees_of_freedom},
                    probability);
}

} // namespace boardmark::core
