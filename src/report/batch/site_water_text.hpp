#pragma once

#include <boardmark/core/batch/site_water.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include "../writing/flow.hpp"

#include <string>

namespace boardmark::report {

/// "exposure", "strength" or "mix", for JSON.
std::string name_of(core::WaterLimit limit);

/// What goes in at the mixer, what stays back, how much may be added on site and what that does.
Flow text_of_site_water(const core::SiteWater& water, const TextStyle& style);

} // namespace boardmark::report
