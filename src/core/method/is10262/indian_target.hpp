#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/mix.hpp>

namespace boardmark::core {

struct MethodTables;
struct Tables;

/// The strength of cubes to aim at, recorded: the specified one and 1.65 deviations, in the newer
/// edition no less than its margin asks. A site's own deviation counts from 30 tests on,
/// where the code does not set its record aside by age or strength.
/// Unresolved where the strength is not of cubes, or no row reaches its grade.
Outcome<double> indian_target_mpa(const Mix& mix, const Tables& all, Worksheet& worksheet);

/// Why no ratio follows: the method leaves it to trials or to its chart, and nothing stands in.
Unresolved no_indian_ratio(double target_mpa, const MethodTables& method);

} // namespace boardmark::core
