#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/many/variable.hpp>

namespace boardmark::core {

/// The step in which a figure of a mix is ordered: common practice, no source.
double step_of(const Variable& variable, UnitSystem system);

} // namespace boardmark::core
