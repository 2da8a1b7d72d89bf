#pragma once

#include <boardmark/core/mix/proportions.hpp>

namespace boardmark::core {

/// Whether an admixture hastens setting, by its kind or its standard.
bool hastens_setting(const Material& admixture);

/// Of all admixtures the one that may hold calcium chloride first of all: one that hastens setting
/// and states chloride, one that states more than a trace, one that states none. Or nullptr.
///
/// @param trace_percent the most chloride of an admixture that is called free of it
const Material* suspect_of_chloride(const Proportions& proportions, double trace_percent);

} // namespace boardmark::core
