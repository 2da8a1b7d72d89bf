#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/wall/cast_part.hpp>

#include "../basis/conversions.hpp"
#include "../basis/tolerance.hpp"
#include "behind_niche.hpp"
#include "placed_box.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// What is left of the thickness behind niches, those of the other face with them.
double behind_niches_mm(const WallRun& run) {
    double narrowest_mm = run.thickness_mm;
    for (const BehindNiche& behind : behind_niches(run)) {
        narrowest_mm = std::min(narrowest_mm, behind.left_mm);
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
    std::vector<const PlacedBox*> holes; // by where they begin
    for (const PlacedBox& hole : placed) {
        if (hole.through()) {
            holes.push_back(&hole);
        }
    }
    const auto begin_m = [](const PlacedBox* hole) { return hole->box.from_m; };
    std::ranges::sort(holes, {}, begin_m);
    for (const PlacedBox* hole : holes) {
        take(hole->box.from_m);
        take(run.length_m - hole->box.to_m);
        auto other = std::ranges::lower_bound(holes, hole->box.to_m, {}, begin_m);
        for (; other != holes.end() && begin_m(*other) - hole->box.to_m < narrowest_m; ++other) {
            if (at_one_height(*hole, **other)) {
                take(begin_m(*other) - hole->box.to_m);
            }
        }
    }
    return mm_in_m * narrowest_m;
}

/// Concrete above the head of an opening, where it has a sill that is stated. A sloping top that
/// the head cuts through tapers to nothing there.
double lintel_m(const PlacedBox& hole, const Profile& profile) {
    double narrowest_m = profile.greatest_height_m;
    for (const OverHead& over : over_head(hole.box, profile)) {
        if (above(over.most_m, 0)) {
            narrowest_m = std::min(narrowest_m, std::max(over.least_m, 0.0));
        }
    }
    return narrowest_m;
}

/// Strips above and below openings through the wall, and between those above each other. A sill
/// that is not stated leaves above and below together no more than the rest of the height.
double narrowest_strip_mm(const WallRun& run, const std::vector<PlacedBox>& placed,
                          const Profile& profile) {
    double narrowest_m = run.thickness_mm / mm_in_m;
    const auto take = [&](double height_m) {
        narrowest_m = above(height_m, 0) ? std::min(narrowest_m, height_m) : narrowest_m;
    };
    for (const PlacedBox& hole : placed) {
        if (!hole.through()) {
            continue;
        }
        if (!hole.opening.sill_m) {
            take(2 * hole.box.low_m);
            continue;
        }
        take(hole.box.low_m);
        narrowest_m = std::min(narrowest_m, lintel_m(hole, profile));
    }
    const auto is_placed_hole = [](const PlacedBox& box) {
        return box.through() && box.opening.sill_m;
    };
    visit_pairs_at_one_station(placed, [&](std::size_t i, std::size_t k) {
        if (is_placed_hole(placed[i]) && is_placed_hole(placed[k])) {
            take(placed[k].box.low_m - placed[i].box.high_m);
            take(placed[i].box.low_m - placed[k].box.high_m);
        }
    });
    return mm_in_m * narrowest_m;
}

/// Keys whose absence may make a run narrower than what is counted.
std::vector<std::string> open_places(const WallRun& run) {
    std::vector<std::string> keys;
    for (const Opening& opening : run.openings) {
        const std::string path = "walls." + run.name + ".openings." + opening.name;
        if (opening.at_m.empty()) {
            keys.push_back(path + ".at");
        }
        if (!opening.depth_mm && !opening.sill_m) {
            keys.push_back(path + ".sill");
        }
    }
    return keys;
}

CastPart part_of(const WallRun& run, double relief_mm) {
    const Profile profile = profile_of(run);
    const auto placed = placed_boxes(run, profile);
    const int lined = run.shows == ShownFaces::both ? 2 : 1;
    return {.kind = CastKind::run,
            .name = run.name,
            .height_m = greatest_height_m(run),
            .plan_m2 = run.length_m * run.bottom_thickness_mm / mm_in_m,
            .between_forms_mm = std::min({behind_niches_mm(run), narrowest_pier_mm(run, placed),
                                          narrowest_strip_mm(run, placed, profile)}),
            .relief_mm = lined * relief_mm,
            .assumed = open_places(run)};
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
