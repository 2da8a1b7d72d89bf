#pragma once

#include <boardmark/core/wall/wall_plan.hpp>

#include <optional>
#include <string_view>

namespace boardmark::report {

std::string_view name_of(core::Top top);
std::string_view name_of(core::ShownFaces faces);

/// The openings of a run, each counted as often as it stands there.
int openings_of(const core::WallRun& run);

double lowest_m(const core::WallRun& run);

/// The load of the hardest loaded tie of all walls. Nothing without ties.
std::optional<double> hardest_tie_kn(const core::WallPlan& plan);

} // namespace boardmark::report
