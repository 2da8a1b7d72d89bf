#include "wall_lines.hpp"

#include <algorithm>
#include <numeric>

namespace boardmark::report {

std::string_view name_of(core::Top top) {
    switch (top) {
    case core::Top::level:
        return "level";
    case core::Top::stepped:
        return "stepped";
    case core::Top::sloping:
        return "sloping";
    }
    return "";
}

std::string_view name_of(core::ShownFaces faces) {
    return faces == core::ShownFaces::one ? "one face" : "both faces";
}

int openings_of(const core::WallRun& run) {
    return std::accumulate(
        run.openings.begin(), run.openings.end(), 0,
        [](int sum, const core::Opening& opening) { return sum + opening.count; });
}

double lowest_m(const core::WallRun& run) {
    return std::ranges::min(run.heights, {}, &core::HeightAt::height_m).height_m;
}

std::optional<double> hardest_tie_kn(const core::WallPlan& plan) {
    std::optional<double> hardest;
    for (const core::FormForces& forces : plan.forces) {
        if (const auto load_kn = core::hardest_tie_kn(forces)) {
            hardest = std::max(hardest.value_or(0), *load_kn);
        }
    }
    return hardest;
}

} // namespace boardmark::report
