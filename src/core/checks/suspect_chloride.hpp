#pragma once

#include <boardmark/core/mix/proportions.hpp>

namespace boardmark::core {

/// Why an admixture may hold calcium chloride.
enum class SuspectChloride {
    no,
    hastens,         ///< setting, by its kind or its standard, and is not stated to be free of it
    not_told,        ///< it does not state its chloride
    more_than_trace, ///< it states more chloride than one that is called free of it
};

/// Whether an admixture hastens setting, by its kind or its standard.
bool hastens_setting(const Material& admixture);

/// @param trace_percent the most chloride of an admixture that is called free of it
SuspectChloride suspect_chloride(const Ingredient& ingredient, double trace_percent);

/// Of all admixtures the one that is suspected first: by what it states, then by what it is.
const Material* suspect_of_chloride(const Proportions& proportions, double trace_percent);

} // namespace boardmark::core
