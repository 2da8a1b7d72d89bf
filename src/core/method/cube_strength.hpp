#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/mix/requirements.hpp>

#include <string>

namespace boardmark::core {

/// The specified strength of cubes, for methods that know no other. Unresolved where it is stated
/// by cylinders: `restated_by` turns requirements over where a class pairs the two.
Outcome<double> specified_cube_mpa(const Requirements& requirements, const std::string& method);

} // namespace boardmark::core
