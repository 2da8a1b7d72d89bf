#pragma once

namespace boardmark::core {

/// The value that Student's t stays below with a probability.
///
/// @param probability above 0 and below 1
/// @param degrees_of_freedom at least 1
double student_quantile(double probability, double degrees_of_freedom);

} // namespace boardmark::core
