#pragma once

#include <boardmark/core/layout/elevation.hpp>

#include <optional>

namespace boardmark::core {

/// The least distance between an end where two boards of one course meet and one in the two courses
/// below, along the boards, m; of boards that stand, to the two before. Ends at joints, corners and
/// openings run through all courses and do not count. Nothing where no two courses have such ends.
std::optional<double> least_stagger_m(const Elevation& elevation);

} // namespace boardmark::core
