#include "pier.hpp"

#include "../basis/tolerance.hpp"
#include "profile.hpp"

#include <algorithm>
#include <vector>

namespace boardmark::core {
namespace {

/// What ends a part of a wall at one side: an opening, what is missing above a lower top, an end.
struct Gap {
    FaceBox box;
    double height_m; ///< less than the box's where nobody states at which height it stands
};

/// Between two stations.
double longest_leg_m(const WallRun& run, double from_m, double to_m) {
    double longest_m = 0;
    for (const Corner& corner : run.corners_at) {
        if (corner.station_m > from_m && corner.station_m < to_m) {
            longest_m = std::max(longest_m, corner.station_m - from_m);
            from_m = corner.station_m;
        }
    }
    return std::max(longest_m, to_m - from_m);
}

void add_gaps(const Opening& opening, const Profile& profile, std::vector<Gap>& gaps) {
    if (opening.depth_mm || opening.at_m.empty()) {
        return;
    }
    for (FaceBox box : boxes_of(opening, profile)) {
        if (!opening.sill_m) {
            box.low_m = 0;
            box.high_m = profile.greatest_height_m;
        }
        gaps.push_back({box, std::min(opening.height_mm / 1000, box.height_m())});
    }
}

/// All that ends a part of the run, from left to right.
std::vector<Gap> gaps_of(const WallRun& run) {
    const Profile profile = profile_of(run);
    const double top_m = profile.greatest_height_m;
    std::vector<Gap> gaps{{{0, 0, 0, top_m}, top_m},
                          {{run.length_m, run.length_m, 0, top_m}, top_m}};
    for (const Stretch& stretch : profile.stretches) {
        const double low_m = std::max(stretch.from_height_m, stretch.to_height_m);
        if (below(low_m, top_m)) {
            gaps.push_back({{stretch.from_m, stretch.to_m, low_m, top_m}, top_m - low_m});
        }
    }
    for (const Opening& opening : run.openings) {
        add_gaps(opening, profile, gaps);
    }
    std::ranges::sort(gaps, {}, [](const Gap& gap) { return gap.box.from_m; });
    return gaps;
}

/// Over which height two gaps stand opposite each other.
double height_between_m(const Gap& left, const Gap& right) {
    const double opposite_m =
        std::min(left.box.high_m, right.box.high_m) - std::max(left.box.low_m, right.box.low_m);
    return std::min({left.height_m, right.height_m, opposite_m});
}

bool is_the_whole(const Gap& left, const Gap& right, const WallRun& run) {
    return !above(left.box.to_m, 0) && !below(right.box.from_m, run.length_m);
}

/// Keeps the shorter one. What is no higher than it is long or thick is no pier (common practice,
/// no source).
void keep_shorter(const PierPlan& pier, double height_m, std::optional<PierPlan>& shortest) {
    const double side_m = std::max(pier.plan.long_side_m, pier.plan.short_side_m);
    if (above(height_m, side_m) && (!shortest || side_m < shortest->plan.long_side_m)) {
        shortest = pier;
        shortest->plan.long_side_m = side_m;
        shortest->plan.short_side_m = std::min(pier.plan.long_side_m, pier.plan.short_side_m);
    }
}

/// Visits the parts between two gaps that are no longer than the run is high.
void visit_parts(const WallRun& run, const std::vector<Gap>& gaps, const auto& visit) {
    const double top_m = greatest_height_m(run);
    for (std::size_t left = 0; left < gaps.size(); ++left) {
        for (std::size_t right = left + 1; right < gaps.size(); ++right) {
            const double length_m = gaps[right].box.from_m - gaps[left].box.to_m;
            if (length_m > top_m) {
                break; // and all that stand farther to the right: none is higher than long
            }
            if (above(length_m, 0) && !is_the_whole(gaps[left], gaps[right], run)) {
                visit(gaps[left], gaps[right]);
            }
        }
    }
}

/// Whether nothing is cast at a gap, from the footing to the top beside it.
bool parts_the_form(const Gap& gap, const Profile& profile) {
    return !above(gap.box.low_m, 0) && !below(gap.height_m, gap.box.height_m()) &&
           !below(gap.box.high_m, profile.highest_along_m(gap.box));
}

/// Where openings of the whole height leave forms of their own, the shortest of them.
std::optional<double> shortest_form_m(const std::vector<Gap>& gaps, const Profile& profile) {
    std::optional<double> shortest_m;
    double from_m = 0;
    bool parted = false;
    for (const Gap& gap : gaps) {
        const bool is_end = gap.box.width_m() == 0;
        if (!is_end && !parts_the_form(gap, profile)) {
            continue;
        }
        const double length_m = gap.box.from_m - from_m;
        parted = parted || !is_end;
        if (above(length_m, 0)) {
            shortest_m = std::min(shortest_m.value_or(length_m), length_m);
        }
        from_m = std::max(from_m, gap.box.to_m);
    }
    return parted ? shortest_m : std::nullopt;
}

} // namespace

std::optional<PierPlan> shortest_pier(const WallRun& run) {
    const double thickness_m = run.bottom_thickness_mm / 1000;
    const double top_m = greatest_height_m(run);
    constexpr double whatever_height_m = 1e6;
    std::optional<PierPlan> shortest;
    visit_parts(run, gaps_of(run), [&](const Gap& left, const Gap& right) {
        const double leg_m = longest_leg_m(run, left.box.to_m, right.box.from_m);
        keep_shorter({{leg_m, thickness_m}}, height_between_m(left, right), shortest);
    });
    if (const double leg_m = longest_leg_m(run, 0, run.length_m); below(leg_m, run.length_m)) {
        keep_shorter({{leg_m, thickness_m}}, whatever_height_m, shortest);
    }
    for (const Opening& opening : run.openings) {
        if (!opening.depth_mm && opening.at_m.empty()) {
            keep_shorter({{thickness_m, thickness_m}, true}, opening.height_mm / 1000, shortest);
        }
    }
    if (run.corners > 0 && run.corners_at.empty()) {
        keep_shorter({{run.length_m / (run.corners + 1), thickness_m}, true}, top_m, shortest);
    }
    return shortest;
}

std::optional<double> smallest_part_m2(const WallRun& run) {
    const double thickness_m = std::min(run.thickness_mm, run.bottom_thickness_mm) / 1000;
    const std::vector<Gap> gaps = gaps_of(run);
    std::optional<double> shortest_m = shortest_form_m(gaps, profile_of(run));
    const auto keep = [&](double length_m, double height_m) {
        if (above(height_m, std::max(length_m, thickness_m))) {
            shortest_m = std::min(shortest_m.value_or(length_m), length_m);
        }
    };
    visit_parts(run, gaps, [&](const Gap& left, const Gap& right) {
        keep(right.box.from_m - left.box.to_m, height_between_m(left, right));
    });
    for (const Opening& opening : run.openings) {
        if (!opening.depth_mm && opening.at_m.empty()) {
            keep(std::min(thickness_m, run.length_m), opening.height_mm / 1000);
        }
    }
    return shortest_m ? std::optional{*shortest_m * thickness_m} : std::nullopt;
}

} // namespace boardmark::core
