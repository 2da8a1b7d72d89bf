#include "placed_box.hpp"

#include "../basis/tolerance.hpp"

#include <algorithm>
#include <numeric>

namespace boardmark::core {

std::vector<PlacedBox> placed_boxes(const WallRun& run, const Profile& profile) {
    std::vector<PlacedBox> placed;
    for (const Opening& opening : run.openings) {
        for (const FaceBox& box : boxes_of(opening, profile)) {
            placed.push_back({opening, box});
        }
    }
    return placed;
}

bool at_one_height(const PlacedBox& one, const PlacedBox& other) {
    const bool known = one.opening.sill_m && other.opening.sill_m;
    return !known ||
           (below(one.box.low_m, other.box.high_m) && below(other.box.low_m, one.box.high_m));
}

bool at_one_station(const FaceBox& one, const FaceBox& other) {
    return below(one.from_m, other.to_m) && below(other.from_m, one.to_m);
}

void visit_pairs_at_one_station(
    const std::vector<PlacedBox>& placed,
    const std::function<void(std::size_t one, std::size_t other)>& visit) {
    std::vector<std::size_t> along(placed.size());
    std::iota(along.begin(), along.end(), std::size_t{0});
    std::ranges::stable_sort(along, {}, [&](std::size_t i) { return placed[i].box.from_m; });
    for (auto one = along.begin(); one != along.end(); ++one) {
        for (auto other = one + 1; other != along.end(); ++other) {
            if (!below(placed[*other].box.from_m, placed[*one].box.to_m)) {
                break; // nor does any that begins farther on
            }
            if (at_one_station(placed[*one].box, placed[*other].box)) {
                visit(*one, *other);
            }
        }
    }
}

std::vector<OverHead> over_head(const FaceBox& box, const Profile& profile) {
    std::vector<OverHead> over;
    for (const Stretch& stretch : profile.stretches) {
        const double from_m = std::max(stretch.from_m, box.from_m);
        const double to_m = std::min(stretch.to_m, box.to_m);
        if (below(from_m, to_m)) {
            const auto [least_m, most_m] =
                std::minmax({stretch.height_at(from_m), stretch.height_at(to_m)});
            over.push_back({least_m - box.high_m, most_m - box.high_m});
        }
    }
    return over;
}

} // namespace boardmark::core
