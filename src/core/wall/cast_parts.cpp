#include <boardmark/core/cast_part.hpp>
#include <boardmark/core/proportion.hpp>

#include "../tolerance.hpp"
#include "profile.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

constexpr double mm_in_m = 1000;

struct PlacedBox {
    const Opening& opening;
    FaceBox box;
};

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

bool back_to_back(const PlacedBox& one, const PlacedBox& other) {
    return &one.opening != &other.opening && at_one_height(one, other) &&
           below(one.box.from_m, other.box.to_m) && below(other.box.from_m, one.box.to_m);
}

/// What is left of the thickness behind niches, those of the other face with them.
double behind_niches_mm(const WallRun& run, const Profile& profile,
                        const std::vector<PlacedBox>& placed) {
    double narrowest_mm = run.thickness_mm;
    for (const PlacedBox& niche : placed) {
        if (!niche.opening.depth_mm) {
            continue;
        }
        const double upper_m = niche.opening.sill_m ? niche.box.high_m : profile.greatest_height_m;
        const double left_mm = mm_in_m * profile.thickness_at(upper_m) - *niche.opening.depth_mm;
        double behind_mm = 0;
        for (const PlacedBox& other : placed) {
            if (other.opening.depth_mm && back_to_back(niche, other)) {
                behind_mm = std::max(behind_mm, *other.opening.depth_mm);
            }
        }
        narrowest_mm = std::min(narrowest_mm, left_mm - behind_mm);
    }
    return narrowest_mm;
}

/// Piers between openings through the wall, and between those and its ends.
double narrowest_pier_mm(const WallRun& run, const std::vector<PlacedBox>& placed) {
    double narrowest_m = run.length_m;
    const auto take = [&](double width_m) {
        if (above(width_m, 0)) {
            narrowest_m = std::min(narrowest_m, width_m);
        }
    };
    for (const PlacedBox& hole : placed) {
        if (hole.opening.depth_mm) {
            continue;
        }
        take(hole.box.from_m);
        take(run.length_m - hole.box.to_m);
        for (const PlacedBox& other : placed) {
            if (!other.opening.depth_mm && at_one_height(hole, other)) {
                take(other.box.from_m - hole.box.to_m);
            }
        }
    }
    return mm_in_m * narrowest_m;
}

CastPart part_of(const WallRun& run, double relief_mm) {
    const Profile profile = profile_of(run);
    const auto placed = placed_boxes(run, profile);
    const int lined = run.shows == ShownFaces::both ? 2 : 1;
    CastPart part{.kind = CastKind::run,
                  .name = run.name,
                  .height_m = greatest_height_m(run),
                  .plan_m2 = run.length_m * run.bottom_thickness_mm / mm_in_m,
                  .between_forms_mm = std::min(behind_niches_mm(run, profile, placed),
                                               narrowest_pier_mm(run, placed)),
                  .relief_mm = lined * relief_mm};
    for (const Opening& opening : run.openings) {
        if (opening.at_m.empty()) {
            part.assumed.push_back("walls." + run.name + ".openings." + opening.name + ".at");
        }
    }
    return part;
}

CastPart part_of(const Footing& footing, const WallRun& run) {
    return {.kind = CastKind::footing,
            .name = "footing of " + run.name,
            .height_m = footing.depth_mm / mm_in_m,
            .plan_m2 = run.length_m * footing.width_mm / mm_in_m,
            .between_forms_mm = footing.width_mm,
            .slab_mm = footing.depth_mm,
            .cover_mm = footing.cover_mm};
}

CastPart part_of(const Planter& planter, double relief_mm) {
    const double middle_m =
        2 * (planter.length_m + planter.width_m) - 4 * planter.thickness_mm / mm_in_m;
    CastPart part{.kind = CastKind::planter,
                  .name = planter.name,
                  .height_m = planter.height_m,
                  .plan_m2 = middle_m * planter.thickness_mm / mm_in_m,
                  .between_forms_mm = planter.thickness_mm,
                  .relief_mm = relief_mm};
    if (planter.floor_mm > 0) {
        part.slab_mm = planter.floor_mm;
    }
    return part;
}

CastPart part_of(const BenchTop& bench, double relief_mm) {
    return {.kind = CastKind::bench,
            .name = bench.name,
            .height_m = bench.thickness_mm / mm_in_m,
            .plan_m2 = bench.length_m * bench.depth_mm / mm_in_m,
            .between_forms_mm = bench.depth_mm,
            .slab_mm = bench.thickness_mm,
            .relief_mm = relief_mm,
            .cover_mm = bench.cover_mm,
            .soffit = bench.overhang_mm > 0 || bench.span_m.value_or(1) > 0};
}

} // namespace

double CastPart::thinnest_mm() const {
    return std::min(between_forms_mm, slab_mm.value_or(between_forms_mm));
}

Relief relief_of(const Wall& wall) {
    if (wall.boards) {
        return {wall.boards->relief_mm, wall.boards->relief_stated};
    }
    return {0, !requirements_of(wall.mix).board_marked};
}

std::vector<CastPart> cast_parts(const Wall& wall) {
    const Relief relief = relief_of(wall);
    std::vector<CastPart> parts;
    const auto add_formed = [&](CastPart part) {
        if (!relief.stated) {
            part.assumed.emplace_back("boards.relief");
        }
        parts.push_back(std::move(part));
    };
    for (const WallRun& run : wall.runs) {
        add_formed(part_of(run, relief.mm));
        if (run.footing) {
            parts.push_back(part_of(*run.footing, run));
        }
    }
    for (const Planter& planter : wall.planters) {
        add_formed(part_of(planter, relief.mm));
    }
    for (const BenchTop& bench : wall.benches) {
        add_formed(part_of(bench, relief.mm));
    }
    return parts;
}

} // namespace boardmark::core
